# The inside: deck from below, frame, air and insulation.

# --- split
defect-rafter-cracked = Viga o cercha agrietada
    .what = Una viga, una cercha o un tirante está agrietado o roto.
    .why = Sostiene el techo. Más peso encima, una capa nueva o mucha nieve, puede ser demasiado.
    .water = Por esto no entra agua. El techo de encima se hunde y se agrieta.
    .photo = La grieta de cerca con una cinta métrica, y la pieza entera.

# --- loose
defect-frame-spreading = Uniones de la estructura abiertas
    .what = Las vigas se separaron de la cumbrera o empujaron las paredes hacia afuera.
    .why = El techo se está aplanando poco a poco. Un ingeniero debe verlo antes de cualquier trabajo.
    .water = Por esto solo no entra agua.
    .photo = El hueco en la unión con una cinta métrica, o la pared contra una línea recta.

# --- missing
defect-attic-daylight = Luz del día por el techo
    .what = Desde el ático se ve luz del día a través del techo donde no hay respiradero.
    .why = Por donde entra la luz, entra también la lluvia.
    .water = La lluvia entra por donde entra la luz.
    .photo = El punto de luz desde el ático con la lámpara apagada, y una medida para encontrarlo desde afuera.
defect-frame-cut = Viga o cercha cortada
    .what = Se cortó una viga o parte de una cercha para un ducto, una trampilla o una chimenea, y no se reforzó alrededor.
    .why = Una cercha con una pieza cortada perdió la mayor parte de su fuerza.
    .water = Por esto no entra agua. El techo de encima se puede hundir.
    .photo = El corte de cerca, y la pieza entera.
defect-baffles-missing = Paso de aire del alero cerrado
    .what = El aislamiento llena el espacio bajo el techo en el alero. Al menos 1 pulgada debe quedar libre para el aire.
    .why = Al ático no le llega aire del alero. La humedad se queda, y en invierno se acumula hielo en el borde.
    .water = No entra lluvia. El aire húmedo de la casa gotea del tablero frío.
    .photo = Desde el ático, el alero con el aislamiento contra el tablero.
defect-intake-too-little = Muy poco aire desde abajo
    .what = Las aberturas del alero no alcanzan para el ático de arriba, o no hay.
    .why = Los respiraderos de la cumbrera no pueden sacar aire que no entra por abajo.
    .water = Por esto no entra lluvia. El aire húmedo se queda en el ático.
    .photo = Un tramo del alero desde abajo, y el tamaño de una abertura.

# --- misbuilt
defect-fan-into-attic = Ducto que termina en el ático
    .what = Un extractor de baño, de cocina o una secadora echa su aire húmedo al ático y no afuera.
    .why = Moja el tablero por debajo, y la pelusa de una secadora puede arder.
    .water = No entra lluvia. El aire húmedo del extractor gotea de regreso del tablero frío.
    .photo = La punta suelta del ducto en el ático, y el tablero que le queda encima.
defect-suspect-vermiculite = Aislamiento, tal vez vermiculita
    .what = Los granos sueltos, como piedritas grises, cafés o doradas, pueden ser vermiculita, que a menudo tiene asbesto.
    .why = Las agencias de salud aconsejan suponer que tiene asbesto y no tocarla. No entre al ático ni guarde nada ahí.
    .water = Por esto no entra agua. Pero decide quién puede trabajar en el ático.
    .photo = Desde la trampilla, sin entrar ni tocarla.
defect-frame-undersized = Estructura que se ve muy ligera
    .what = Las vigas se ven muy delgadas o muy separadas para su claro y para lo que cargan.
    .why = Una cubierta más pesada o una segunda capa necesita primero la opinión de un ingeniero.
    .water = Por esto no entra agua.
    .photo = Una cinta métrica sobre una viga y de una a la siguiente, y el claro.

# --- smothered
defect-intake-blocked = Entrada de aire tapada
    .what = Polvo, nidos u hojas tapan las entradas de aire del alero.
    .why = Al ático no le llega aire desde abajo, se queda húmedo y caliente, y envejece el techo por dentro.
    .water = No entra lluvia. El aire húmedo de la casa se queda en el ático.
    .photo = Las aberturas tapadas desde abajo, de cerca.
defect-animals-in-attic = Animales en el ático
    .what = Excremento, nidos o ruidos muestran que ahí viven pájaros, murciélagos, ardillas o mapaches.
    .why = Roen madera y cables. La ley protege a algunos, y cerrar el agujero con crías adentro lo empeora.
    .water = La lluvia entra por donde entran ellos.
    .photo = El excremento o el nido, y el agujero que usan.

# --- wet
defect-water-dripping = Agua entrando ahora
    .what = Gotea o corre agua por la parte de abajo del techo.
    .why = Está entrando mientras la vemos. Rara vez entra por donde gotea. La entrada está más arriba.
    .water = El agua entra más arriba de la gotera y corre por el tablero o por una viga.
    .photo = La gotera, y el rastro mojado hacia arriba hasta donde llega.
defect-deck-damp = Punto húmedo en el tablero
    .what = Un lugar del tablero, visto por debajo, está oscuro y húmedo.
    .why = Se mojó hace poco. La causa está encima o más arriba en la pendiente.
    .water = Con algunas lluvias entra agua cerca de este lugar.
    .photo = El punto con un medidor de humedad o una mano seca encima, y una medida para encontrarlo desde afuera.
defect-deck-mold = Moho o manchas oscuras en tablero
    .what = Gran parte del tablero, visto por debajo, está oscura de moho, sobre todo del lado frío.
    .why = Sube aire húmedo de la casa y no sale. Rara vez es culpa del techo.
    .water = Por esto no entra lluvia. La humedad viene de la casa.
    .photo = El lado oscuro y el lado limpio en una sola foto.
defect-nails-frosted = Puntas de clavo oxidadas o heladas
    .what = Las puntas de los clavos bajo el tablero están oxidadas, con escarcha o goteando.
    .why = El aire húmedo de la casa topa con los clavos fríos. Las gotas muchas veces se confunden con una gotera.
    .water = Por esto no entra lluvia. La humedad viene de la casa.
    .photo = Las puntas de los clavos de cerca, y las manchas debajo.
defect-insulation-wet = Aislamiento mojado o aplastado
    .what = En un lugar, el aislamiento está mojado, manchado o aplastado.
    .why = Ya no guarda el calor, y muestra dónde gotea el agua.
    .water = El agua entra encima de este lugar o más arriba en la pendiente.
    .photo = El lugar mojado, y el tablero justo encima.
defect-frame-rotten = Madera de viga blanda
    .what = La madera de una viga, una cercha o la cumbrera está blanda o podrida.
    .why = Lleva años mojada, y sostiene el techo.
    .water = Por esta madera ha corrido agua de una gotera de más arriba.
    .photo = Un destornillador metido en la madera blanda, y lo que queda encima.
defect-wet-around-chimney = Madera mojada en chimenea o tubo
    .what = La madera alrededor de la chimenea, el tubo o el tragaluz está oscura o mojada.
    .why = Ahí gotea la unión de afuera, o la chimenea misma.
    .water = El agua entra entre el techo y lo que lo atraviesa.
    .photo = El cerco mojado desde adentro, y el mismo lugar desde afuera.
