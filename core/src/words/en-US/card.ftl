### Cook cards: what is on one, beginning from one, and what is said of one that cannot be read.

card-title = Cook card
card-some-cook = A cook
card-some-pit = A pit
card-people = { $people ->
    [one] One eats
   *[other] { $people } eat
}
card-by-line = Card by { $by }
card-note-by = Begun from a cook card by { $by }.
card-serve-at = On the table at { $time }
card-serve-after = On the table { $after } after the start
card-pull = taken off at { $temp }
card-dishes = Dishes
card-dish-hot = held hot
card-dish-cold = held cold
card-notes = Notes
card-wish = A card is somebody's plan and no safety rule. Slowbend's own minimums and cautions hold whatever it says.
card-minimum-of = Safe minimum, { $meat }
card-how-scan = Scan this with a phone's own camera, copy the text it shows, and paste it under “Start from a card”.
card-how-file = This card is too long for a code: more than 1,000 bytes. Send the file or the text below instead.
card-code = The card as a code to scan
card-file = Save the file
card-print = To print it, use your browser's own print command: the page prints as a card.
card-text = The card as text, to send
card-words = The plan in plain words, to send
card-for = What goes on the card
card-by = Who wrote it (optional)
card-with-notes = The notes of this cook go along
card-make = Make the card
card-of-this = Cook card

### The form that begins a cook from a card
begin-title-card = Start from this card
begin-title-anew = Start it again
begin-lead-anew = Same meats, names and pits. Say when, weigh the meats, and change what differs this time.
begin-take-title = Start from a card
begin-take-lead = Paste the text of a cook card, or choose its file.
begin-take-text = The card's text
begin-take-file = Or its file
begin-take = Read the card
begin-serve-how = Such as 2 pm, 2 pm tomorrow, or Saturday noon
begin-left-out = Leave it out
begin-weight-last = Weight now
begin-start = Start the cook
begin-again = Start it again
begin-last = As last time
begin-last-lead = Same meats, names and pits as the cook before.
begin-no-meat = Every meat of the card is left out. Keep at least one, or start a cook of your own.
begin-add-pit = { $name } ({ $kind }), new here
begin-from-card = From a card
begin-from-card-lead = A plan that somebody handed you: pasted, scanned, or a file.

### What is said of a card that cannot be read
card-no-meats = This cook has no meats yet. Add one, then make its card.
card-empty = There is nothing in it. Paste the whole text of the card, from the first brace to the last.
card-long = That is longer than a cook card can be: { $limit } KB at most. Choose the card itself.
card-unread = This is not a whole cook card: it breaks off or goes wrong at line { $line }, character { $column }. Copy all of it, from the first brace to the last.
card-quotes = Its quotation marks were made curly on the way, so it cannot be read. Send it as a file, or scan the code.
card-none = This is no cook card: a card begins with "slowbend_card" and its version. Choose another file or text.
card-newer = A newer Slowbend wrote this card (version { $version }; this one reads version { $known }). Update Slowbend, or ask for the plan in plain words.
card-field = { $field }: { $reason }
card-missing = { $field } is missing. Add it to the card, or ask its author for a whole one.
card-unknown = { $field } is none that this Slowbend knows. Update Slowbend, or change it on the card.
card-shape = { $field } is not of the shape that a card has. See docs/cook-card.md, or ask its author for a whole one.
card-number = { $field } must be a whole number from { $low } to { $high }. Change it on the card.
card-text-long = { $field } is too long: { $limit } characters at most. Shorten it on the card.
card-list-long = { $field } has too many entries: { $limit } at most. Leave some out.
card-left-out = { $field } is no part of a card of this version and was left out.
card-cleaned = { $field } held letters that cannot be seen or that reorder others. They were taken out.
card-pit-cool = A pit on this card is held lower than { $span }, the range given for smoking meat. ({ $source })
error-rest-range = A rest is { $low } to { $high } minutes here: never shorter than the published one. ({ $source })
error-pit-meant-range = A pit is meant to be held from { $low } to { $high }, the first below the second: under that, food is not even held hot. ({ $source })
error-plan-long = That is more than one plan holds: { $limit } at most. Leave some out.

fact-meant-wrap = Wrap meant
fact-meant-rest = Rest meant
fact-meant-pit = Pit meant at
kind-piece-meant = Meant for it
