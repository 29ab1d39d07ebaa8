# The reasoning of one verdict, step by step.
