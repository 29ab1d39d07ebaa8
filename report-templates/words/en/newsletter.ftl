# The newsletter, on paper, on a screen and as text.
