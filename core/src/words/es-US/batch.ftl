### Cocina: lo que se mezcla, se reparte y se compra, y lo que dicen sus cuentas. Pesos, volúmenes y dinero llegan escritos.

link-kitchen = Cocina
kitchen-title = Cocina
kitchen-to-sheet = Una hoja para imprimir
kitchen-row = { $row }. { $label }
kitchen-of-meat = { $name }: { $label }
kitchen-by = { $who } lo anotó { $when }.
# $part es el sazonador, la salmuera, el baño, las porciones o las compras; $name es la comida anterior, $day su día.
kitchen-as-last-time = { $part } como la última vez ({ $name }, { $day })
kitchen-all = Todo
kitchen-for-meats = Para estas carnes (ninguna elegida: todas)
kitchen-for = Para { $weight }: { $meats }
kitchen-no-weight = Ninguna de sus carnes tiene peso todavía. Pesa una en su página, en «Más sobre esta carne».
kitchen-left-out = Queda fuera, porque todavía no tiene peso o ritmo: { $meats }.
kitchen-part-name = Qué
kitchen-part-parts = Partes
kitchen-part-kind = Sal que lleva
kitchen-part-salt = Proporción de sal, %
kitchen-part-cup = Una taza rasa, g

## Sazonador
kitchen-rub = Sazonador
kitchen-rub-none = Todavía no hay sazonador. Una proporción no dice nada hasta saber si sus partes son pesos o tazas: elige cuál.
kitchen-rub-how = Un renglón por parte: mitad y mitad es 1 y 1. Si es por tazas, pesa una vez una taza rasa de cada parte; solo la sal de mesa tiene un peso publicado.
kitchen-g-per-kg = Sazonador por kilogramo de carne, g (20 es práctica común)
kitchen-basis = Las partes son
kitchen-basis-weight = Pesos
kitchen-basis-volume = Cucharadas o tazas
kitchen-kind-unsalted = Ninguna
kitchen-kind-own-salt = Es nuestra sal
kitchen-kind-table-salt = Es sal de mesa
kitchen-kind-salted = Algo: da la proporción
kitchen-by-weight = partes por peso, { $g } g por kilogramo
kitchen-by-volume = partes por taza, { $g } g por kilogramo
kitchen-also = Sal que llega de otro lado: etiqueta, salmuera, inyección, baño
kitchen-salt = Sal, contando toda: { $all }, o sea { $per_kg } por kilogramo de carne cruda.
kitchen-salt-from = Viene de { $shares }.
kitchen-from-rub = el sazonador
kitchen-from-label = la etiqueta
kitchen-from-brine = la salmuera
kitchen-from-injection = la inyección
kitchen-from-mop = el baño
kitchen-sodium = Sodio: { $mg } mg por porción { $people ->
    [one] para una persona.
   *[other] para { $people } personas.
} Todo lo que se pone cuenta como comido.
kitchen-salt-below = Menos sal de lo común: de 5 a 15 g por kilogramo (práctica común).
kitchen-salt-above = Más sal de lo común, de 5 a 15 g por kilogramo (práctica común): quita sal de algún lado.
kitchen-also-solution = Etiqueta: hasta tanto % de una solución
kitchen-also-solution-salt = Sal en esa solución, %
kitchen-also-sodium = Etiqueta: sodio, mg
kitchen-also-serving = en una porción de tantos g (112 si queda vacío)
kitchen-also-brine = Salmuera que absorbió: peso después menos antes
kitchen-also-brine-salt = Sal en esa salmuera, %
kitchen-also-injection = Inyectado, peso
kitchen-also-injection-salt = Sal en la inyección, %
kitchen-also-mop = Baño que se le pone, peso
kitchen-also-mop-salt = Sal en el baño, %
kitchen-own-salt = Nuestra sal
kitchen-own-salt-how = Llena una taza rasa de la sal del equipo y pésala: las sales kosher varían a la mitad, y ningún valor oficial las distingue.
kitchen-salt-cup = Una taza rasa, g

## Salmuera
kitchen-brine = Salmuera
kitchen-brine-none = Todavía no hay salmuera. «Cinco por ciento» se dice del agua y de la salmuera: elige cuál.
kitchen-brine-how = Agua como 1 gal o 4 l. En la carne: para que carne y agua terminen igual de saladas si se deja el tiempo suficiente.
kitchen-water = Agua
kitchen-water-how-much = Agua
kitchen-salt-name = Sal
kitchen-way = Por ciento de qué
kitchen-way-meat = De carne y agua, hasta emparejarse
kitchen-way-water = Del agua
kitchen-way-brine = De la salmuera
kitchen-percent = Por ciento de sal
kitchen-of-own-salt = { $spoons } de nuestra sal
kitchen-of-table-salt = { $spoons } de sal de mesa
kitchen-strength = Al principio es { $water } % del agua, { $brine } % de la salmuera.
kitchen-even = Toda la carne se cuenta como si fuera agua (práctica común); cuánto tarda no se dice aquí.

## Baño
kitchen-mop = Baño
kitchen-mop-none = No hay carne que bañar: ninguna tiene ritmo y peso, o todas están envueltas, glaseadas o fuera.
kitchen-mop-for = { $all } para { $hours } por delante, según los ritmos de estas carnes
kitchen-mop-how = Un renglón por parte, por volumen. Cuánto hace falta sale de las carnes y de cada cuánto se bañan.
kitchen-wet = Se bañan durante, desde que entra la primera (hasta la mesa si queda vacío)
kitchen-spare = Se queda en olla y brocha, %
kitchen-pot = Olla para { $names }
kitchen-pot-poultry = Una olla propia para { $names }
kitchen-wettings = { $count ->
    [one] un baño
   *[other] { $count } baños
}
kitchen-own-pot = Ave cruda: cada una tiene olla, brocha y tazón propios, y de ahí no se baña nada más.
kitchen-pot-hot = Mantén cada olla a { $hot } o más, o hiérvela antes de volver a usarla (USDA).

## Porciones
kitchen-portions = Porciones
kitchen-portions-how = La parte es lo que cada carne aporta a lo que se come: 2 y 1 es el doble de la primera. El recorte es lo que se quita antes del fuego; vacío, lo común del corte.
kitchen-nobody = Nadie ha dicho cuántos comen.
kitchen-no-meat = Todavía no hay carne. Agrega una en «Anotar».
kitchen-portions-for = { $people ->
    [one] Una persona come
   *[other] { $people } personas comen
} { $wanted } de carne cocida sin hueso, { $each } por adulto (práctica común)
kitchen-adults = Adultos
kitchen-children = Niños
kitchen-appetite = Cuánta hambre
kitchen-appetite-light = Muchos otros platillos
kitchen-appetite-usual = Comida con guarniciones
kitchen-appetite-hearty = Sobre todo carne
kitchen-share = parte
kitchen-trim = se recorta, %
kitchen-buy = Compra { $buy }; { $likely } si rinde lo esperado
kitchen-buy-more = Compra { $buy } más; { $likely } si rinde lo esperado
kitchen-buy-maybe = Alcanza según lo esperado; compra { $buy } más para no quedarte corto
kitchen-on-plates = De { $low } a { $high } en los platos
kitchen-there = hay { $weight }
kitchen-yield-published = rendimiento publicado para este corte
kitchen-yield-nearest = rendimiento del corte publicado más cercano
kitchen-yield-common = rendimiento por práctica común
kitchen-yield-note = Los rendimientos son del USDA y, del pecho de res, de Kerth y otros; se compra por el extremo bajo.
kitchen-feeds = Lo que hay alcanza para { $low } a { $high } adultos.
kitchen-enough = Alcanza aun en el extremo bajo.
kitchen-not-enough = En el extremo bajo no alcanza.
kitchen-trimmings-expected = Se recorta cerca de { $weight }: pésalo y anótalo abajo.

## Compras
kitchen-shopping = Compras
kitchen-shopping-none = Todavía no hay nada que comprar. Di cuántos comen, o anota un sazonador, un baño u otra cosa.
kitchen-shopping-all-there = Todo lo que hace falta ya está.
kitchen-shopping-how = Cantidades como 2 lb, 500 g, 1 qt, 750 ml o 3. Un precio necesita de cuánto es: 3.49 por 1 lb.
kitchen-to-buy = Por comprar
kitchen-at-home = En casa, suficiente
kitchen-home-has = { $amount } en casa
kitchen-cost = Por pagar: { $cost }.
kitchen-plate = Un plato: { $plate }.
kitchen-worth = Con lo que ya hay: { $worth }, el plato { $plate }.
kitchen-unpriced = Sin precio, así que cuesta más: { $names }.
kitchen-item = Cosa
kitchen-item-else = Otra cosa: carbón, leña, papel
kitchen-item-need = Cuánto hace falta
kitchen-item-home = En casa
kitchen-item-price = Precio, $
kitchen-item-per = por

## Recortes
kitchen-trimmings = Recortes guardados
kitchen-trimmings-none = Todavía no se ha pesado ninguno.
kitchen-trimmings-how = Para embutido, caldo o sebo. Están crudos: al refrigerador de inmediato.
kitchen-trimmings-all = { $weight } guardados
kitchen-trimmings-several = De varias
kitchen-trimmings-what = Qué son y para qué

## La hoja
kitchen-sheet-how = Imprime esta página: cabe en una hoja, A4 o carta.
kitchen-print = Imprimirla
kitchen-people = { $people ->
    [one] Para una persona
   *[other] Para { $people } personas
}
kitchen-table-at = En la mesa { $time }
kitchen-jobs = Por hacer
kitchen-job-buy = Comprar lo de la lista
kitchen-job-brine = Hacer la salmuera
kitchen-job-rub = Pesar el sazonador y ponerlo
kitchen-job-mop = Mezclar el baño, olla por olla

## Unidades
batch-two-ways = { $own } ({ $metric })
batch-milliliters = { $ml } ml
batch-liters = { $liters } l
batch-cups = { $count ->
    [one] { $amount } taza
   *[other] { $amount } tazas
}
batch-quarts = { $amount } qt
batch-tablespoons = { $amount } cda
batch-teaspoons = { $amount } cdta
batch-money = ${ $amount }
batch-percent = { $percent } %

## Lo que no puede ser. Primero se dice qué está mal; luego, qué se puede hacer ahora.
batch-outside = { $what }: { $value } no cabe. Da de { $low } a { $high }.
batch-what-of = { $what }, “{ $name }”
batch-count = { $count } entre { $list } no cabe. Da de { $low } a { $high }.
batch-nobody = Nadie va a comer. Da el número de adultos o de niños.
batch-no-name = Algo entre { $list } no tiene nombre. Dale a cada uno un nombre propio.
batch-twice = “{ $name }” está dos veces entre { $list }. Dale a cada uno un nombre propio, o súmalos.
batch-cup = No se sabe cuánto pesa una taza de “{ $name }”. Pesa una taza rasa de la tuya y da sus gramos.
batch-saturated = Tanta sal no se disuelve: la salmuera se llena al 26.3 % de su peso. Pon menos sal o más agua.
batch-mixed-units = “{ $name }” se cuenta en dos unidades. Da lo que hace falta, lo de casa y el precio en la misma clase: peso, volumen o unidades.
batch-nothing = No hay nada que comprar. Da porciones, un sazonador, un baño u otra cosa.
batch-amount-unread = “{ $typed }” no es una cantidad. Escribe una como 2 lb, 500 g, 1 qt, 750 ml o 3.
batch-price-unread = “{ $typed }” no es un precio. Escribe uno como 3.49.
batch-percent-range = Escribe una proporción de { $low } a { $high } %.
batch-number-range = Escribe un número entero de { $low } a { $high }.
form-needed = Falta esto. Llénalo, o deja vacío todo el renglón.
form-rub-parts = Un sazonador tiene al menos una parte. Escribe qué es y cuántas partes.
form-cup-needed = Por tazas hace falta su peso. Pesa una taza rasa y escribe los gramos, o elige pesos.
form-twice = Eso está dos veces. Dale a cada parte un nombre propio, o súmalas.
batch-list-meats = las carnes
batch-list-rub-parts = las partes del sazonador
batch-list-salts = las otras sales
batch-list-mop-parts = las partes del baño
batch-list-extras = lo demás que hace falta
batch-list-at-home = lo que hay en casa
batch-list-prices = los precios
batch-what-meat = Carne en gramos
batch-what-portions = Porciones
batch-what-rub-per-kg = Gramos de sazonador por kilogramo
batch-what-parts = Partes
batch-what-cup = Gramos de una taza rasa
batch-what-salt-of-part = Milésimas de sal
batch-what-salt-of-liquid = Milésimas de sal en un líquido
batch-what-label-solution = Por ciento de la solución de la etiqueta
batch-what-label-sodium = El sodio de la etiqueta en 100 g, en miligramos
batch-what-taken-up = Gramos de lo que se absorbió
batch-what-water = Agua en gramos
batch-what-in-the-meat = Milésimas de sal en la carne
batch-what-of-the-water = Milésimas de sal, del agua
batch-what-of-the-brine = Milésimas de sal, de la salmuera
batch-what-ahead = Minutos por delante
batch-what-spare = Por ciento que se queda en olla y brocha
batch-what-every = Minutos entre dos baños
batch-what-first = Minutos hasta el primer baño
batch-what-each-ml = Mililitros por baño
batch-what-adults = Adultos
batch-what-children = Niños
batch-what-share = Parte de lo que se come
batch-what-trim = Por ciento que se recorta
batch-what-amount = Cuánto hace falta
batch-what-at-home = Cuánto hay en casa
batch-what-cents = Precio en centavos
batch-what-per = De cuánto es un precio

## Actos y anotaciones
act-rub-planned = El sazonador quedó anotado.
act-brine-planned = La salmuera quedó anotada.
act-mop-planned = El baño quedó anotado.
act-portions-planned = Las porciones quedaron anotadas.
act-shopping-planned = Las compras quedaron anotadas.
act-trimmings-kept = Guardaste { $weight } de recortes.
error-trimmings-range = Los recortes pesan de { $low } a { $high } g. Pésalos otra vez, o anótalos en dos veces.
error-cup-range = Una taza rasa pesa de { $low } a { $high } g. Pésala otra vez, o déjalo vacío.
kind-batch-planned = Cocina
kind-trimmings-kept = Recortes guardados
kind-salt-weighed = Una taza de nuestra sal
