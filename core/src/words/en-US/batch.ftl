### Batches: the kitchen of a cook, and what its sums say. Weights, volumes and money come written out as text.

link-kitchen = Kitchen
kitchen-title = Kitchen
kitchen-to-sheet = One sheet to print
kitchen-row = { $row }. { $label }
kitchen-of-meat = { $name }: { $label }
kitchen-by = { $who } wrote it down { $when }.
# $part is rub, brine, mop, portions or shopping; $name is the earlier cook, $day its day.
kitchen-as-last-time = { $part } as last time ({ $name }, { $day })
kitchen-all = All of it
kitchen-for-meats = For these meats (none chosen: all)
kitchen-for = For { $weight }: { $meats }
kitchen-no-weight = No meat of it has a weight yet. Weigh one on its page, under “More about this meat”.
kitchen-left-out = Left out, for it has no weight or rhythm yet: { $meats }.
kitchen-part-name = What
kitchen-part-parts = Parts
kitchen-part-kind = Salt in it
kitchen-part-salt = Share of salt, %
kitchen-part-cup = A level cup of it, g

## Rub
kitchen-rub = Rub
kitchen-rub-none = No rub yet. A ratio says nothing until its parts are weights or cups: choose which.
kitchen-rub-how = One row for each part: half and half is 1 and 1. By cups, weigh a level cup of each part once; only table salt has a published weight.
kitchen-g-per-kg = Rub on a kilogram of meat, g (20 is common practice)
kitchen-basis = Parts are
kitchen-basis-weight = Weights
kitchen-basis-volume = Spoons or cups
kitchen-kind-unsalted = None
kitchen-kind-own-salt = It is our salt
kitchen-kind-table-salt = It is table salt
kitchen-kind-salted = Some: give the share
kitchen-by-weight = parts by weight, { $g } g on a kilogram
kitchen-by-volume = parts by cup, { $g } g on a kilogram
kitchen-also = Salt that comes otherwise: label, brine, injection, mop
kitchen-salt = Salt, all counted: { $all }, which is { $per_kg } on a kilogram of raw meat.
kitchen-salt-from = It comes from { $shares }.
kitchen-from-rub = the rub
kitchen-from-label = the label
kitchen-from-brine = the brine
kitchen-from-injection = the injection
kitchen-from-mop = the mop
kitchen-sodium = Sodium: { $mg } mg a portion { $people ->
    [one] for one person.
   *[other] for { $people } people.
} All that is put on counts as eaten.
kitchen-salt-below = Less salt than is common: 5 to 15 g on a kilogram (common practice).
kitchen-salt-above = More salt than is common, 5 to 15 g on a kilogram (common practice): leave salt out somewhere.
kitchen-also-solution = Label: up to so many % of a solution
kitchen-also-solution-salt = Salt in that solution, %
kitchen-also-sodium = Label: sodium, mg
kitchen-also-serving = in a serving of so many g (112 if empty)
kitchen-also-brine = Brine it took up: weight after less before
kitchen-also-brine-salt = Salt in that brine, %
kitchen-also-injection = Injected, weight
kitchen-also-injection-salt = Salt in the injection, %
kitchen-also-mop = Mop that goes on, weight
kitchen-also-mop-salt = Salt in the mop, %
kitchen-own-salt = Our salt
kitchen-own-salt-how = Level a cup of the crew's own salt and weigh it: kosher salts differ by half, and no government value tells them apart.
kitchen-salt-cup = A level cup of it, g

## Brine
kitchen-brine = Brine
kitchen-brine-none = No brine yet. “Five percent” is said of the water and of the brine: choose which.
kitchen-brine-how = Water such as 1 gal or 4 l. In the meat: so that meat and water end equally salty when it is left long enough.
kitchen-water = Water
kitchen-water-how-much = Water
kitchen-salt-name = Salt
kitchen-way = Percent of what
kitchen-way-meat = Of meat and water, left until even
kitchen-way-water = Of the water
kitchen-way-brine = Of the brine
kitchen-percent = Percent of salt
kitchen-of-own-salt = { $spoons } of our salt
kitchen-of-table-salt = { $spoons } of table salt
kitchen-strength = At first it is { $water } % of the water, { $brine } % of the brine.
kitchen-even = All of the meat is counted as if it were water (common practice); how long it takes is not told here.

## Mop
kitchen-mop = Mop
kitchen-mop-none = No meat is to be wetted: none has a rhythm and a weight, or all are wrapped, glazed or off.
kitchen-mop-for = { $all } for { $hours } ahead, by the rhythms of these meats
kitchen-mop-how = One row for each part, by volume. How much is needed follows from the meats and how often they are wetted.
kitchen-wet = Kept wet for, from when the first is on (until the table if empty)
kitchen-spare = Stays in pot and brush, %
kitchen-pot = Pot for { $names }
kitchen-pot-poultry = A pot of its own for { $names }
kitchen-wettings = { $count ->
    [one] one wetting
   *[other] { $count } wettings
}
kitchen-own-pot = Raw poultry: each bird has a pot, mop and bowl of its own, and nothing else is wetted from it.
kitchen-pot-hot = Hold each pot at { $hot } or hotter, or boil it before it is used again (USDA).

## Portions
kitchen-portions = Portions
kitchen-portions-how = The share is each meat's part of what is eaten: 2 and 1 is twice as much of the first. Trim is what comes off before the fire; left empty, what is common for the cut.
kitchen-nobody = Nobody has said how many eat.
kitchen-no-meat = No meat yet. Add one under “Write down”.
kitchen-portions-for = { $people ->
    [one] One person eats
   *[other] { $people } people eat
} { $wanted } of cooked meat without bone, { $each } an adult (common practice)
kitchen-adults = Adults
kitchen-children = Children
kitchen-appetite = How hungry
kitchen-appetite-light = Many other dishes
kitchen-appetite-usual = Lunch with sides
kitchen-appetite-hearty = Meat above all
kitchen-share = share
kitchen-trim = trimmed off, %
kitchen-buy = Buy { $buy }; { $likely } if it yields as expected
kitchen-buy-more = Buy { $buy } more; { $likely } if it yields as expected
kitchen-buy-maybe = Enough as expected; buy { $buy } more to be sure
kitchen-on-plates = { $low } to { $high } on plates
kitchen-there = { $weight } is there
kitchen-yield-published = yield published for this cut
kitchen-yield-nearest = yield of the nearest published cut
kitchen-yield-common = yield by common practice
kitchen-yield-note = Yields are USDA's and, of brisket, of Kerth and others; buy by the low end.
kitchen-feeds = What is there feeds { $low } to { $high } adults.
kitchen-enough = That is enough even at the low end.
kitchen-not-enough = At the low end that is not enough.
kitchen-trimmings-expected = About { $weight } is trimmed off: weigh it in below.

## Shopping
kitchen-shopping = Shopping
kitchen-shopping-none = Nothing to shop for yet. Say how many eat, or write a rub, a mop or anything else down.
kitchen-shopping-all-there = All that is needed is there.
kitchen-shopping-how = Amounts such as 2 lb, 500 g, 1 qt, 750 ml or 3. A price needs what it is for: 3.49 for 1 lb.
kitchen-to-buy = To buy
kitchen-at-home = At home, enough
kitchen-home-has = { $amount } at home
kitchen-cost = To pay: { $cost }.
kitchen-plate = A plate: { $plate }.
kitchen-worth = With what is there already: { $worth }, a plate { $plate }.
kitchen-unpriced = Without a price, so it costs more: { $names }.
kitchen-item = Thing
kitchen-item-else = Something else: charcoal, wood, paper
kitchen-item-need = How much is needed
kitchen-item-home = At home
kitchen-item-price = Price, $
kitchen-item-per = for

## Trimmings
kitchen-trimmings = Trimmings kept
kitchen-trimmings-none = None weighed in yet.
kitchen-trimmings-how = For sausage, stock or tallow. They are raw: into the refrigerator at once.
kitchen-trimmings-all = { $weight } kept
kitchen-trimmings-several = Of several
kitchen-trimmings-what = What and what for

## The sheet
kitchen-sheet-how = Print this page: it fits one sheet, A4 or Letter.
kitchen-print = Print it
kitchen-people = { $people ->
    [one] For one person
   *[other] For { $people } people
}
kitchen-table-at = On the table { $time }
kitchen-jobs = To do
kitchen-job-buy = Buy what is listed
kitchen-job-brine = Make the brine
kitchen-job-rub = Weigh the rub and put it on
kitchen-job-mop = Mix the mop, pot by pot

## Units
batch-two-ways = { $own } ({ $metric })
batch-milliliters = { $ml } ml
batch-liters = { $liters } l
batch-cups = { $count ->
    [one] { $amount } cup
   *[other] { $amount } cups
}
batch-quarts = { $amount } qt
batch-tablespoons = { $amount } tbsp
batch-teaspoons = { $amount } tsp
batch-money = ${ $amount }
batch-percent = { $percent } %

## What cannot be meant. What is said first is wrong; what comes next can be done now.
batch-outside = { $what }: { $value } does not fit. Give { $low } to { $high }.
batch-what-of = { $what }, “{ $name }”
batch-count = { $count } among { $list } does not fit. Give { $low } to { $high }.
batch-nobody = Nobody is to eat. Give the number of adults or of children.
batch-no-name = Something among { $list } has no name. Give each a name of its own.
batch-twice = “{ $name }” stands twice among { $list }. Give each a name of its own, or add them up.
batch-cup = What a cup of “{ $name }” weighs is not known. Weigh a level cup of yours and give its grams.
batch-saturated = So much salt does not dissolve: brine is full at 26.3 % of its weight. Take less salt or more water.
batch-mixed-units = “{ $name }” is counted in two units. Give what is needed, at home and priced in the same kind: by weight, by volume or by number.
batch-nothing = There is nothing to shop for. Give portions, a rub, a mop or something else.
batch-amount-unread = “{ $typed }” is not an amount. Type one such as 2 lb, 500 g, 1 qt, 750 ml or 3.
batch-price-unread = “{ $typed }” is not a price. Type one such as 3.49.
batch-percent-range = Type a share from { $low } to { $high } %.
batch-number-range = Type a whole number from { $low } to { $high }.
form-needed = This is missing. Fill it in, or leave the whole row empty.
form-rub-parts = A rub has at least one part. Type what it is and how many parts.
form-cup-needed = By cups, its weight is needed. Weigh a level cup of it and type the grams, or choose weights.
form-twice = That stands twice. Give each part a name of its own, or add them up.
batch-list-meats = the meats
batch-list-rub-parts = the parts of the rub
batch-list-salts = the other salts
batch-list-mop-parts = the parts of the mop
batch-list-extras = what else is needed
batch-list-at-home = what is at home
batch-list-prices = the prices
batch-what-meat = Meat in grams
batch-what-portions = Portions
batch-what-rub-per-kg = Grams of rub on a kilogram
batch-what-parts = Parts
batch-what-cup = Grams of a level cup
batch-what-salt-of-part = Thousandths of salt
batch-what-salt-of-liquid = Thousandths of salt in a liquid
batch-what-label-solution = Percent of the label's solution
batch-what-label-sodium = The label's sodium in 100 g, in milligrams
batch-what-taken-up = Grams of what was taken up
batch-what-water = Water in grams
batch-what-in-the-meat = Thousandths of salt in the meat
batch-what-of-the-water = Thousandths of salt, of the water
batch-what-of-the-brine = Thousandths of salt, of the brine
batch-what-ahead = Minutes ahead
batch-what-spare = Percent that stays in pot and brush
batch-what-every = Minutes between two wettings
batch-what-first = Minutes until the first wetting
batch-what-each-ml = Milliliters a wetting
batch-what-adults = Adults
batch-what-children = Children
batch-what-share = Share of what is eaten
batch-what-trim = Percent trimmed off
batch-what-amount = How much is needed
batch-what-at-home = How much is at home
batch-what-cents = Price in cents
batch-what-per = What a price is for

## Acts and entries
act-rub-planned = The rub is written down.
act-brine-planned = The brine is written down.
act-mop-planned = The mop is written down.
act-portions-planned = The portions are written down.
act-shopping-planned = The shopping is written down.
act-trimmings-kept = Kept { $weight } of trimmings.
error-trimmings-range = Trimmings weigh { $low } to { $high } g. Weigh them again, or write them down in two goes.
error-cup-range = A level cup weighs { $low } to { $high } g. Weigh it again, or leave it empty.
kind-batch-planned = Kitchen
kind-trimmings-kept = Trimmings kept
kind-salt-weighed = A cup of our salt
