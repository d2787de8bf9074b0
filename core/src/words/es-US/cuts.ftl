### Cuts: names of meats, stages and wraps.
