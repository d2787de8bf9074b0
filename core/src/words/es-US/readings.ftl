### Readings: thermometers, readings by hand and from files.
