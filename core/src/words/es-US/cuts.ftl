### Cuts: names of meats, stages and wraps.

cut-spare-ribs = Costillas de cerdo
cut-pork-butt = Cabeza de lomo
cut-turkey-breast = Pechuga de pavo
species-pork = Cerdo
species-turkey = Pavo

form-intact = músculo entero
form-injected = inyectada
form-tenderised = ablandada
form-ground = molida
form-rolled = enrollada
form-stuffed = rellena

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
