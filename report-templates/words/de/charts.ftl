# What stands in and beside the charts: axes, keys, and what is read aloud in their place.
