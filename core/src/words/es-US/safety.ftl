### Safety: cautions, each naming its source and deferring to local rules.
