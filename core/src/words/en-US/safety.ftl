### Safety: cautions, each naming its source and deferring to local rules.

caution-charcoal-never-indoors = Burning charcoal gives off carbon monoxide, which has no smell and kills. Never in a home, garage, vehicle or tent.
caution-window-is-not-enough = An open window or a fan does not make charcoal indoors safe.
caution-coals-until-out = Coals give off carbon monoxide until they are out. Leave the pit outdoors until they are cold.
caution-raw-poultry-brush = A brush, mop or bowl that touched raw poultry touches nothing else.
caution-raw-marinade = Boil a marinade that held raw meat before it goes on cooked food.
caution-two-hours = No more than two hours between { $cold } and { $hot }; one hour when the air is above { $air }.
caution-hold-hot = Hold hot food at { $hot } or above.
caution-thaw-first = Thaw meat through in the refrigerator before it is smoked, never at room temperature.
caution-poultry-three-places = A probe left in poultry shows one place. Read three places by hand; the coldest counts.
caution-local-rules-first = Local rules and licensed practice come before anything said here.

source-usda-chart = USDA FSIS, Safe Minimum Internal Temperature Chart
source-food-code-raised = FDA Food Code 2022, 3-401.11(A)(2)
source-food-code-stuffed = FDA Food Code 2022, 3-401.11(A)(3)
source-food-code-time = FDA Food Code 2022, 3-501.19(B)
source-food-code-cooling = FDA Food Code 2022, 3-501.14(A)
source-fsis-appendix-a = USDA FSIS, Revised Appendix A, 2021
source-usda-two-hours = USDA, two-hour rule, 2016 and 2017
source-usda-smoking = USDA FSIS, Smoking Meat and Poultry
source-usda-marinade = USDA experts on marinating, as quoted
source-cpsc-charcoal = US CPSC, release 99-051, 1999; 16 CFR 1500.14(b)(6)
source-cpsc-5012 = US CPSC, document 5012
source-usda-sr26 = USDA food composition tables, SR26, 2013
source-common-practice = common practice, no source
source-own-caution = no source: our own caution

safe-safe = The safety minimum is shown
safe-not-safe = The safety minimum is not reached
safe-unknown = No reading shows the safety minimum yet
safe-far-from-done = Past the published minimum, far from done
safety-minimum = { $state }: { $minimum } ({ $source }).
safety-minimum-rest = { $state }: { $minimum }, then { $rest } of rest ({ $source }).
safety-defers = Local rules and licensed practice come first.

# What a person is about to do.
doing-preparing = Getting meat ready
doing-lighting-charcoal = Lighting or feeding charcoal
doing-putting-pit-away = Putting the pit away
doing-mopping-meat = Mopping meat
doing-mopping-poultry = Mopping poultry
doing-checking-meat = Checking meat
doing-checking-poultry = Checking poultry
doing-serving = Serving

caution-hold-cold = Hold cold food at { $cold } or below.
caution-smoker-air = Keep a smoker's air at { $smoker }; read the air with one thermometer and the food with another.
caution-fire-out-counts = How long each meat was, or may have been, between { $cold } and { $hot } is counted on the page of a fire that was out.
caution-wash-thermometer = A thermometer that was in raw poultry is washed with soap and hot water before it goes into anything else.
caution-wash-hands-and-phone = Raw poultry: wash hands, knives and what it was cut on, and wipe this phone, before you touch anything else.
caution-mop-pot-hot = Keep the mop pot at { $hot } or above, or boil it before it goes on again.
caution-raw-never-above = Raw poultry never sits over other food: what drips from it is raw too.
caution-smoker-in-the-open = A smoker stands in the open, in good light, away from trees, shrubs and buildings.
caution-no-sleep-near-coals = Nobody sleeps near burning coals: carbon monoxide has no smell.
caution-cold-ash = Leave ash until it is cold, a day or more, then into metal with a lid, away from buildings.
caution-burnt-outside = Burnt outside may be raw inside: read it by hand before you call it done.
caution-extinguisher-powder = Food that powder from an extinguisher, ash or burning plastic reached is thrown away.
caution-thick-smoke = Thick smoke makes food bitter. What else it does is not judged here.
caution-grease-fire = Burning fat: lid on, all vents shut. Never water: it throws the fire at you.
caution-extinguisher = Keep an extinguisher for burning fat within reach. A fire that does not die at once is left to the fire service.
source-usda-smoker-air = USDA and FDA on smoking meat, 2012, in reprints
doing-holding-dishes = Holding dishes
doing-pit-runs-cold = Bringing a pit back to its heat
doing-pit-runs-hot = Cooling a pit
doing-smoke-is-thick = Clearing the smoke
doing-flare-up = Putting out burning fat
doing-after-flare-up = After a flare-up
doing-fire-went-out = A fire that went out
doing-moving-poultry = Moving poultry
doing-going-to-sleep = Going to sleep

# What is not done with Slowbend.
refused-cold-smoking = Cold smoking is not done with Slowbend: the food would stay where bacteria grow, and only a controlled cure keeps it. Hold the pit above 140 °F, or follow a licensed process.
refused-jerky = Jerky is not done with Slowbend: dried meat needs a process that was proven first. Follow a licensed one.
refused-curing = Curing is not done with Slowbend: salt and nitrite have to be weighed by a proven recipe. Follow a licensed process, and give a meat that was cured elsewhere another name.
refused-fish-to-keep = Fish to keep is not done with Slowbend: without a proven process it can be deadly. Follow a licensed one.
refused-vacuum = Food stored without air is not done with Slowbend: what grows there cannot be smelled. Follow a licensed process.
