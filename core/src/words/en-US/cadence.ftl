### Cadence: spritz, mop, glaze and openings.

cadence-none = Left alone
cadence-mop = Mop every { $every }
cadence-spritz = Spritz every { $every }

# Why nothing is to be done to a meat.
why-off-pit = It is off the pit.
why-not-on-pit = It is not on the pit yet.
why-wrapped = It is wrapped: no mop reaches it.
why-glazed = It is glazed: a mop would wash it off.
why-no-cadence = It is left alone.
