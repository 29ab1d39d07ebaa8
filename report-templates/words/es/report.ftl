# What was found in the inbox.
