### Pits: kinds of pit and what is said of them.

pit-kind-stick-burner = Stick burner
pit-kind-kettle = Kettle
pit-kind-drum = Drum
pit-kind-ceramic = Ceramic
pit-kind-cabinet = Cabinet
pit-kind-pellet = Pellet
pit-kind-electric = Electric
