### Pits: kinds of pit and what is said of them.
