### The watch: who has it, and the line with which it is handed over.

watch-title = The watch
watch-nobody = Nobody has the watch: every device rings.
watch-take-lead = Take the watch: from then on this device rings first. Read the line, change what is not so, then take it.
watch-leave-lead = You have the watch. Leave a line for whoever takes it next; it passes once they take it on a device of theirs.
watch-line = One line on the pits
watch-leave = Leave this line
watch-left = Left for the next at { $at }: “{ $note }”
watch-past = Before
watch-line-pit = { $pit } { $temp } at { $time }
watch-line-unread = { $pit } not read yet
watch-line-fed = { $line }, fed { $time }.
watch-line-end = { $line }.
watch-line-next = Next: { $verb }, { $what }, { $when }.
link-watch = The watch
