### Cuts: names of meats, stages and wraps.

cut-spare-ribs = Spare ribs
cut-pork-butt = Pork butt
cut-turkey-breast = Turkey breast
species-pork = Pork
species-turkey = Turkey

form-intact = whole muscle
form-injected = injected
form-tenderised = tenderized
form-ground = ground
form-rolled = rolled
form-stuffed = stuffed

wrap-kind-paper = paper
wrap-kind-foil = foil
wrap-kind-boat = foil boat
wrap-kind-pan = covered pan

# What decides that a cut is done.
done-by-feel = done by feel
done-by-feel-and-temperature = done by feel and temperature
done-by-temperature = done by temperature

stage-none = Not started
stage-trimmed = Trimmed
stage-brined = In brine
stage-rubbed = Rubbed
stage-resting = Resting in the cold
stage-on-pit = On { $pit }
stage-wrapped = Wrapped: { $wrap }
stage-unwrapped = Unwrapped, on the pit
stage-off = Off, resting
stage-held = Held hot
stage-cut-up = Cut
stage-served = Served
stage-put-away = Put away
stage-reheated = Reheated
