### The catalogue: the page of each cut, its other names, and what is known of it.

cuts-title = Meats and cuts
cuts-lead = What each is, how it is tried, and how long it takes.
cuts-find = Find a cut by any of its names
cuts-search = Find
cuts-none = No cut is found by “{ $sought }”. Try the animal, or another name of it, or see all.
cuts-all = All cuts
cuts-about = About this cut
cuts-which = “{ $sought }” can be any of these: { $cuts }. Choose one.
cuts-tests = What to try, in order
cuts-wrong = What goes wrong
cuts-made-of = What it is made of, raw, in 100 g

cut-fact-pit = Pit
cut-fact-time = Time
cut-fact-done = Done
cut-fact-minimum = Published minimum
cut-fact-read = Where to read
cut-fact-wet = Wetting
cut-fact-wrap = Wrap
cut-fact-rest = Rest
cut-fact-hold = Hold
cut-fact-first-check = First check
cut-fact-water = Water
cut-fact-protein = Protein
cut-fact-fat = Fat
cut-fact-ash = Ash

cut-time-at = { $time } at { $pit }
cut-time-how = Openings counted. Weight, weather and wind move it more than any table.
cut-skin = The skin of a bird crisps at { $crisp } and above. At { $slow } it takes longer and the skin stays tough.
cut-minimum = { $minimum }
cut-minimum-rest = { $minimum }, then { $rest } off the fire
cut-minimum-tough = Reached hours before this cut is good: it is tough there. No feel is believed below { $tender }.
cut-minimum-ground = Ground meat: the color says nothing, and nothing that is said of it lowers this.
cut-minimum-poultry = The coldest of three places, read by hand within ten minutes.
cut-minimum-whole = For whole muscle only. Injected, needled, rolled, or not known: { $raised }.
cut-read-by-hand = By hand. A probe that is left in only says when.
cut-read-any = By hand or by a probe that is left in; the coldest counts.
cut-wrap-none = Not wrapped
cut-hold-up-to = up to { $most }
cut-hold-how = Wrapped, and at { $hot } or above all the while.
cut-first-check = after { $wait }
cut-first-check-a-weight = after { $wait } for { $weight }
cut-grams = { $grams } g
cut-row = { $source }, row { $row }

cut-also-spare-ribs = ribs, rack, slab, side, spares, whole slab, pork ribs
cut-about-spare-ribs = Long bones from the belly side, with tips and a flap left on. Pull the membrane off the bone side. A heavy slab and a pit opened often take the longer time.
cut-wrap-spare-ribs = Many wrap the middle third, once rub and color are set; bare ribs take longer and keep a firmer bark.
cut-rest-spare-ribs = Loosely covered, so that the surface firms up before the knife.
cut-wrong-spare-ribs = Pulled by the clock they come off tough; wrapped too long the meat falls off in shreds. A thermometer that touches bone reads the bone.

cut-also-spare-ribs-trimmed = ribs, rack, slab, side, squared ribs, st louis, saint louis, trimmed ribs, pork ribs
cut-about-spare-ribs-trimmed = Spare ribs with tips and flap cut away, so that the slab is square and cooks evenly. The trimmings cook beside it and are done sooner.
cut-wrap-spare-ribs-trimmed = As whole spare ribs: many wrap the middle third, once rub and color are set.
cut-rest-spare-ribs-trimmed = Loosely covered, so that the surface firms up before the knife.
cut-wrong-spare-ribs-trimmed = The small end runs ahead: turn it away from the fire. Pulled by the clock they come off tough.

cut-also-baby-back-ribs = ribs, rack, slab, back ribs, loin ribs, babybacks, pork ribs
cut-about-baby-back-ribs = Short curved bones from along the loin: leaner and more even than spare ribs, and done sooner.
cut-wrap-baby-back-ribs = A short wrap, if any: they soften fast in it.
cut-rest-baby-back-ribs = Loosely covered, and to the table: they are lean and cool quickly.
cut-wrong-baby-back-ribs = An hour too long dries them; a wrap too long turns them to mush. The bend tells early: begin trying it in good time.

cut-also-pork-butt = boston butt, shoulder, pork shoulder, blade roast, pulled pork, butt
cut-about-pork-butt = The upper shoulder, marbled and full of collagen; the most forgiving cut there is. It may stand at one temperature for hours while its water leaves.
cut-wrap-pork-butt = Paper or foil once the color is right shortens the stand; bare it takes longer and grows more bark.
cut-rest-pork-butt = Let it vent some minutes, then keep it wrapped; a long rest makes it pull better.
cut-wrong-pork-butt = Pulled at the first soft place it stays tough around the bone. Hurried at the end it stays tight: leave an hour of slack before the table.

cut-also-pork-picnic = picnic ham, picnic shoulder, arm shoulder, shoulder, pork shoulder, pulled pork
cut-about-pork-picnic = The lower shoulder with the arm bone and often the skin: leaner and more sinewy than the butt.
cut-wrap-pork-picnic = As the butt; foil or a covered pan helps its lean side.
cut-rest-pork-picnic = Wrapped, as long as a butt; take the skin off first and crisp it apart.
cut-wrong-pork-picnic = Skin left on keeps smoke and rub out: score it or take it off. Along the arm bone it lags: read there too.

cut-also-pork-belly = belly, fresh bacon, side pork, burnt ends
cut-about-pork-belly = A slab half of fat, without skin. Sliced when it is tender, or cut in cubes that go back on with a glaze.
cut-wrap-pork-belly = Cubes go in a covered pan for the last hour; a slab for slices is often left bare.
cut-rest-pork-belly = Rest it flat, so that the layers hold together under the knife.
cut-wrong-pork-belly = Stopped while the fat is still firm it eats like rubber. Glazed early, the sugar burns.

cut-also-pork-loin = loin roast, center loin, pork roast
cut-about-pork-loin = Lean all through: it has no collagen that a long cook would melt. Done at its published minimum and a rest, and no longer.
cut-rest-pork-loin = Off the fire, loosely covered: the rest is part of its published minimum.
cut-wrong-pork-loin = Cooked like a butt it turns to chalk. Meat sold in a solution is not whole muscle: say so, its minimum is higher.

cut-also-brisket = packer, whole packer, full brisket, beef brisket, texas
cut-about-brisket = Two muscles: a lean flat and a fat point over it. The flat decides when it comes off. It may stand at one temperature for hours.
cut-wrap-brisket = Paper keeps the bark dry, foil is faster and softer; most wrap when the color is right and the rub holds.
cut-rest-brisket = Let it vent until it stops cooking, then keep it wrapped and hot: a long rest does as much as the last hour of fire.
cut-wrong-brisket = Sliced at once it runs dry; stopped while the flat still grabs, it chews. The thin end of the flat runs ahead: turn it away from the fire.

cut-also-brisket-flat = flat, flat half, first cut, beef brisket
cut-about-brisket-flat = The lean half alone: even slices, little fat to help it.
cut-wrap-brisket-flat = Paper or foil early rather than late; a spoon of broth in the foil helps.
cut-rest-brisket-flat = Wrapped, and long: slices hold their juice better afterwards.
cut-wrong-brisket-flat = An hour too long and it crumbles. Bought trimmed bare of fat it dries on top: wrap it sooner.

cut-also-brisket-point = point, point half, second cut, deckle, burnt ends, beef brisket
cut-about-brisket-point = The fat half alone: hard to dry out, good for thick slices or cubes that go back on.
cut-wrap-brisket-point = As you like it: it has fat enough to go bare.
cut-rest-brisket-point = Wrapped; cubes that go back on are cut after a short rest.
cut-wrong-brisket-point = Taken off with the flat's feel it is still full of hard fat. Cubes left too long go from soft to greasy.

cut-also-plate-ribs = beef ribs, ribs, rack, slab, short ribs, plate short ribs, dino ribs
cut-about-plate-ribs = Three or four long bones under thick marbled meat: a brisket on the bone.
cut-wrap-plate-ribs = Often left bare; paper late, if the color runs ahead.
cut-rest-plate-ribs = Wrapped, until the juices stop running; then a bone each.
cut-wrong-plate-ribs = The meat over the bone is tender before the meat between: try both. Small ends dry out: fold foil over them.

cut-also-beef-back-ribs = beef ribs, ribs, rack, slab, back ribs, rib bones
cut-about-beef-back-ribs = The bones of the rib roast with the meat between them; how much is on them varies from slab to slab.
cut-wrap-beef-back-ribs = Foil for a part of the time softens the thin meat.
cut-rest-beef-back-ribs = Short, and covered: there is little meat to keep them warm.
cut-wrong-beef-back-ribs = A thin slab dries before it is tender: choose bones with meat on them, and wrap sooner. The bend tells little: the bones are stiff.

cut-also-tri-tip = tritip, bottom sirloin, santa maria, triangle roast
cut-about-tri-tip = A lean three-cornered roast with two directions of grain. Slow first, then a hot minute on each side for the crust.
cut-rest-tri-tip = Off the fire, loosely covered; then turn the knife where the grain turns.
cut-wrong-tri-tip = Many take it off redder than its published minimum; that is below it, and Slowbend does not call it done there. Sliced with the grain it chews.

cut-also-chicken-whole = bird, chicken, whole bird, fryer, broiler, roaster, spatchcock, beer can
cut-about-chicken-whole = Opened flat it cooks evenly and a third sooner. It needs a hot pit for its skin, and little smoke.
cut-rest-chicken-whole = Uncovered, so that the skin stays crisp.
cut-wrong-chicken-whole = The breast is dry by the time a cold thigh is safe: keep legs to the fire. Pink by the bone or clear juice tells nothing: only the three places do.

cut-also-chicken-half = bird, chicken, split chicken, half bird, halves
cut-about-chicken-half = Split along the back and breast, it lies flat, cooks evenly and is served as it is.
cut-rest-chicken-half = Uncovered, so that the skin stays crisp.
cut-wrong-chicken-half = Halves differ: read each one. The mop brush that touched it raw touches nothing else. Sugar in the sauce burns over direct coals: sauce at the end.

cut-also-chicken-thighs = bird, chicken, dark meat, thigh, quarters, legs
cut-about-chicken-thighs = Dark meat with some collagen: safe at the poultry minimum, better some degrees hotter, and hard to dry out.
cut-rest-chicken-thighs = Short and uncovered.
cut-wrong-chicken-thighs = Taken off at the bare minimum they are safe and rubbery. They differ in size: read the thickest, one from the coolest side, and one between.

cut-also-turkey-breast = bird, turkey, breast, turkey crown
cut-about-turkey-breast = Lean: every degree past its minimum costs juice. A brine, if any, goes before the rub, and the rub then needs no salt.
cut-rest-turkey-breast = Loosely covered; the middle goes on rising for some minutes.
cut-wrong-turkey-breast = Trusting one probe: it shows one place. Cooked long at a low pit, its skin stays like leather.

cut-also-lamb-shoulder = lamb, shoulder, mutton, pulled lamb
cut-about-lamb-shoulder = Collagen as in a pork butt, in a smaller cut with a stronger taste; easy on the smoke.
cut-wrap-lamb-shoulder = A covered pan or foil with a little broth for the last third.
cut-rest-lamb-shoulder = Wrapped, until it can be pulled by hand.
cut-wrong-lamb-shoulder = Its fat hardens as it cools: serve it hot, on warm plates. Rolled and tied meat has its outside inside: say so, its minimum is higher.

cut-also-sausages = sausage, links, brats, bratwurst, hot links, ground, pork sausage, beef sausage
cut-about-sausages = Ground meat in a casing: what was outside is all through it, so color tells nothing. For fresh links; smoked ones that were sold cooked are warmed through.
cut-rest-sausages = A few minutes, so that they do not spurt.
cut-wrong-sausages = A fire too hot splits the casing and the fat runs out. Prick none of them. Read along the length, from the end.

cut-also-poultry-sausages = sausage, links, chicken sausage, turkey sausage, ground, bird
cut-about-poultry-sausages = Ground poultry in a casing: the poultry minimum, whatever the color. Lean, so a gentle fire.
cut-rest-poultry-sausages = A few minutes, so that they do not spurt.
cut-wrong-poultry-sausages = Taken for pork links they come off too cold. Lean ones go dry fast once past their minimum.
