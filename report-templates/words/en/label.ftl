# What is said of a label.
