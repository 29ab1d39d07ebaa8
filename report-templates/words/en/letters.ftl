# The letters to a maker: notice, correction, mail.
