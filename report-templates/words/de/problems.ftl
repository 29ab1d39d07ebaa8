# What was found in lab files and registers, and what to do about it.
