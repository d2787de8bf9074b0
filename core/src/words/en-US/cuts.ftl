### Cuts: names of meats, stages and wraps.

cut-spare-ribs = Spare ribs
cut-spare-ribs-trimmed = Spare ribs, trimmed square
cut-baby-back-ribs = Baby back ribs
cut-pork-butt = Pork butt
cut-pork-picnic = Pork picnic
cut-pork-belly = Pork belly
cut-pork-loin = Pork loin
cut-brisket = Brisket, whole
cut-brisket-flat = Brisket flat
cut-brisket-point = Brisket point
cut-plate-ribs = Beef plate ribs
cut-beef-back-ribs = Beef back ribs
cut-tri-tip = Tri-tip
cut-chicken-whole = Whole chicken
cut-chicken-half = Half chicken
cut-chicken-thighs = Chicken thighs
cut-turkey-breast = Turkey breast
cut-lamb-shoulder = Lamb shoulder
cut-sausages = Fresh sausages, pork or beef
cut-poultry-sausages = Fresh sausages, chicken or turkey
species-pork = Pork
species-beef = Beef
species-chicken = Chicken
species-turkey = Turkey
species-lamb = Lamb
species-mixed = Pork or beef
species-poultry = Chicken or turkey

form-intact = whole muscle
form-injected = injected
form-tenderised = tenderized
form-ground = ground
form-rolled = rolled
form-stuffed = stuffed
form-unknown = not known if injected or tenderized

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
