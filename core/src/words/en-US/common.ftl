### Common: lists and what many screens share.

# Two items, or all items so far and the last one.
list-last = { $list } and { $item }
# The same where the last word begins with the sound of the joining word (Spanish "e").
list-last-alike = { $list } and { $item }
list-more = { $list }, { $item }
# Things that hold commas themselves.
list-apart = { $list }; { $item }
zone-unknown = The time zone “{ $zone }” is not known here, so times are shown in UTC. Choose a zone in settings.
