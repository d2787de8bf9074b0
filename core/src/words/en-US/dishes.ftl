### Dishes: what is not meat.

dishes-title = Dishes
dishes-none = No dish yet. Add what is not meat: beans, slaw, sauce.
dishes-add = Another dish
dishes-held = Held
dishes-hot = Hot
dishes-cold = Cold
dishes-note = A note on it
dishes-write = Write it down
dish-state-not-ready = Not ready yet
dish-state-ready = Ready since { $time }, { $lasting }
dish-held-hot = Held hot: read it now and then, { $hot } or above.
dish-held-cold = Held cold: read it now and then, { $cold } or below.
dish-two-hours = Ready for two hours: what was not kept out of { $cold } to { $hot } all that time is thrown away.
button-dish-ready = It is ready
button-dish-not-ready = Not ready after all
link-dishes = Dishes
