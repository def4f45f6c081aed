"""Commands for the bank and the course that is built from it."""
