### Cuts: names of meats, stages and wraps.

cut-spare-ribs = Costillas de cerdo
cut-spare-ribs-trimmed = Costillas de cerdo recortadas en cuadro
cut-baby-back-ribs = Costillas de lomo de cerdo
cut-pork-butt = Cabeza de lomo
cut-pork-picnic = Espaldilla de cerdo
cut-pork-belly = Panceta de cerdo
cut-pork-loin = Lomo de cerdo
cut-brisket = Pecho de res entero
cut-brisket-flat = Pecho de res, parte plana
cut-brisket-point = Pecho de res, punta
cut-plate-ribs = Costilla cargada de res
cut-beef-back-ribs = Costillas de lomo de res
cut-tri-tip = Punta de sirloin
cut-chicken-whole = Pollo entero
cut-chicken-half = Medio pollo
cut-chicken-thighs = Muslos de pollo
cut-turkey-breast = Pechuga de pavo
cut-lamb-shoulder = Paleta de cordero
cut-sausages = Salchichas frescas de cerdo o res
cut-poultry-sausages = Salchichas frescas de pollo o pavo
species-pork = Cerdo
species-beef = Res
species-chicken = Pollo
species-turkey = Pavo
species-lamb = Cordero
species-mixed = Cerdo o res
species-poultry = Pollo o pavo

form-intact = músculo entero
form-injected = inyectada
form-tenderised = ablandada
form-ground = molida
form-rolled = enrollada
form-stuffed = rellena
form-unknown = no se sabe si fue inyectada o ablandada

wrap-kind-paper = papel
wrap-kind-foil = aluminio
wrap-kind-boat = barca de aluminio
wrap-kind-pan = charola tapada

done-by-feel = se decide al tacto
done-by-feel-and-temperature = se decide al tacto y por temperatura
done-by-temperature = se decide por temperatura

stage-none = Sin empezar
stage-trimmed = Recortada
stage-brined = En salmuera
stage-rubbed = Con el sazonador
stage-resting = Reposando en frío
stage-on-pit = En { $pit }
stage-wrapped = Envuelta: { $wrap }
stage-unwrapped = Sin envoltura, en el asador
stage-off = Fuera, reposando
stage-held = Se mantiene caliente
stage-cut-up = Cortada
stage-served = Servida
stage-put-away = Guardada
stage-reheated = Recalentada
