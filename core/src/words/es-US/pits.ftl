### Pits: kinds of pit and what is said of them.

pit-kind-stick-burner = Ahumador de leña
pit-kind-kettle = Asador redondo
pit-kind-drum = Tambo
pit-kind-ceramic = Cerámica
pit-kind-cabinet = Gabinete
pit-kind-pellet = De pellets
pit-kind-electric = Eléctrico

# Qué va dónde en cada asador.
pits-title = Asadores
pits-none = Todavía no hay carne, fuego ni sonda en un asador de esta cocción.
pits-where = Qué va dónde
pits-where-lead = Di el nivel o el lugar de cada carne. Lo que dejes igual se queda.
pits-spot = Nivel o lugar
pits-no-spot = sin lugar anotado
pits-submit = Así están ahora
pits-fed = Alimentado
pits-vent = Ventila movida
pits-opened = Abierto
pits-seen = Fuego atendido
spot-near-fire = cerca del fuego
spot-middle = en medio
spot-far-from-fire = lejos del fuego
spot-over-coals = sobre las brasas
spot-away-from-coals = lejos de las brasas
spot-upper = nivel de arriba
spot-middle-level = nivel de en medio
spot-lower = nivel de abajo
spot-front = al frente
spot-back = al fondo
button-turn-all = Volteaste todas
button-one-place-on = Todas un lugar adelante
link-pits = Asadores
