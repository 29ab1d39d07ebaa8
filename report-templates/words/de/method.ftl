# How was tested and decided, and where the figures come from.
