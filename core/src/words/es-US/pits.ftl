### Pits: kinds of pit and what is said of them.

pit-kind-stick-burner = Ahumador de leña
pit-kind-kettle = Asador redondo
pit-kind-drum = Tambo
pit-kind-ceramic = Cerámica
pit-kind-cabinet = Gabinete
pit-kind-pellet = De pellets
pit-kind-electric = Eléctrico
