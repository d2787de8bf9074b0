### Hints: what a field of the settings does, in one sentence.

hint-pit-kind = Decides what to try when the fire is not as it should be, and which cautions stand there.
hint-grate = How much fits on it.
hint-alone = So long it does not wake whoever sleeps to see to the fire. Leave it empty where it is never left alone.
hint-band = Outside these it rings. Without a band, what is on the pit decides.
hint-wetting = What a new meat gets unless you say otherwise.
hint-altitude = Decides at which temperature water boils when a thermometer is checked in it.
