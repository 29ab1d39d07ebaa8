# The programme summary.
