### Cadence: spritz, mop, glaze and openings.

cadence-none = Sin baño ni rocío
cadence-mop = Baño cada { $every }
cadence-spritz = Rocío cada { $every }

why-off-pit = Está fuera del asador.
why-not-on-pit = Todavía no está en el asador.
why-wrapped = Está envuelta: ningún baño le llega.
why-glazed = Está glaseada: un baño lo lavaría.
why-no-cadence = No lleva baño ni rocío.
