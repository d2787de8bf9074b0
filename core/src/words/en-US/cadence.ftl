### Cadence: spritz, mop, glaze and openings.
