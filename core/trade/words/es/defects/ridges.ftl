# Ridges and hips, and the vents near them.

# --- split
defect-ridge-cap-cracked = Tapas agrietadas
    .what = Las tejas dobladas sobre la cumbrera o la limatesa se agrietaron en el doblez.
    .why = Son las que más sol y viento reciben. Una vez agrietadas, se quiebran en pedazos.
    .water = El agua pasa por la grieta a la unión que la tapa cubre.
    .photo = Una grieta de cerca, y a lo largo de la cumbrera o limatesa para mostrar cuántas hay.
defect-ridge-mortar-broken = Mortero de la cumbrera roto
    .what = El mortero bajo las tejas de la cumbrera o la limatesa está agrietado o se cae.
    .why = Sujeta las tejas y no deja entrar la lluvia por debajo.
    .water = La lluvia con viento se mete bajo las tejas.
    .photo = El mortero roto de cerca, y a lo largo de la cumbrera.
defect-ridge-vent-cracked = Respiradero de cumbrera roto
    .what = El respiradero a lo largo de la cumbrera está agrietado o aplastado.
    .why = Va sobre una ranura abierta en el techo.
    .water = La lluvia pasa por la grieta a la ranura.
    .photo = La grieta de cerca, y el largo de la cumbrera.
defect-roof-vent-cracked = Respiradero roto u oxidado
    .what = La campana del respiradero de techo está agrietada, oxidada o quebrada.
    .why = Tapa un agujero en el techo tan ancho como un plato.
    .water = La lluvia cae al ático por la rotura.
    .photo = La rotura de cerca, y el respiradero de lado.

# --- loose
defect-ridge-cap-loose = Tapas sueltas
    .what = Unas tapas de la cumbrera o limatesa se levantan con la mano o se corrieron.
    .why = Ahí el viento es más fuerte. Una tapa suelta se lleva la siguiente.
    .water = La lluvia con viento se mete bajo las tapas sueltas.
    .photo = Una mano que levanta una tapa, y a lo largo de la cumbrera para mostrar cuántas hay.
defect-ridge-vent-loose = Respiradero de cumbrera suelto
    .what = El respiradero a lo largo de la cumbrera se levanta, o sus clavos son muy cortos o se soltaron.
    .why = En una tormenta se puede desprender entero, y la ranura de abajo queda abierta.
    .water = La lluvia con viento se mete bajo el respiradero levantado.
    .photo = La parte levantada de lado, y un clavo sacado junto a una cinta métrica.
defect-roof-vent-loose = Respiradero de techo suelto
    .what = La base del respiradero se levantó, o sus clavos se soltaron.
    .why = El viento se lo puede llevar y dejar un agujero abierto.
    .water = El agua se mete bajo la base levantada.
    .photo = La base levantada de lado, y una mano que mueve el respiradero.
defect-vent-fan-stuck = Respiradero giratorio atorado
    .what = El respiradero giratorio no gira, se tambalea o rechina.
    .why = Mueve poco aire, y si se tambalea va aflojando su base.
    .water = Al principio no entra agua. Entra cuando la base ya se aflojó.
    .photo = El respiradero de lado, y una mano que lo hace girar.

# --- missing
defect-ridge-cap-missing = Tapas faltantes
    .what = Faltan tapas en la cumbrera o la limatesa.
    .why = Debajo de ellas queda abierta la unión de las dos vertientes.
    .water = La lluvia entra por la unión en lo alto del techo.
    .photo = El lugar descubierto de cerca, y a lo largo de la cumbrera.
defect-ridge-vent-end-open = Punta del respiradero abierta
    .what = La punta del respiradero de cumbrera no está cerrada.
    .why = La encuentran las avispas, los pájaros y la nieve con viento.
    .water = La lluvia y la nieve con viento entran por la punta.
    .photo = La punta abierta de cerca.
defect-roof-vent-screen-torn = Malla del respiradero rota
    .what = La malla del respiradero está rota o falta.
    .why = Al ático entran pájaros, ardillas y avispas, y hacen nido.
    .water = Por esto solo no entra lluvia.
    .photo = La malla rota de cerca, y el nido detrás si lo hay.
defect-roof-vent-missing = Respiradero perdido
    .what = Ya no está la campana de un respiradero, y el agujero de abajo quedó abierto.
    .why = Es un agujero abierto en el techo.
    .water = La lluvia cae directo al ático.
    .photo = El agujero abierto desde la escalera.
defect-upper-vents-too-few = Pocos respiraderos arriba
    .what = Las aberturas cerca de la cumbrera no alcanzan para el ático de abajo.
    .why = El aire húmedo y caliente se queda en el ático. Envejece las tejas y la madera, y con frío gotea.
    .water = Por esto no entra lluvia.
    .photo = Todos los respiraderos de ese lado en una sola foto, y su etiqueta si la tienen.

# --- misbuilt
defect-ridge-lapped-into-wind = Tapas traslapadas contra el viento
    .what = Las tapas traslapan de manera que su borde abierto da hacia el viento de siempre.
    .why = El viento se mete bajo cada borde en lugar de pasar por encima.
    .water = El viento empuja la lluvia bajo las tapas.
    .photo = A lo largo de la cumbrera, con una flecha o nota de la dirección del viento de siempre.
defect-hip-lapped-wrong = Tapas de limatesa al revés
    .what = Las tapas de la limatesa se pusieron de arriba hacia abajo, y cada una quedó metida bajo la siguiente de abajo.
    .why = El agua que baja por la limatesa entra en cada traslape.
    .water = El agua se mete bajo cada tapa y llega a la unión de las vertientes.
    .photo = Tres o cuatro tapas de cerca, con un dedo que apunte pendiente abajo.
defect-ridge-end-open = Final de cumbrera abierto
    .what = Donde las limatesas llegan a la cumbrera, o en su punta, las últimas tapas dejan un hueco o clavos a la vista.
    .why = La unión de arriba se hace a mano, y es fácil hacerla con descuido.
    .water = La lluvia entra por el hueco o baja por los clavos a la vista.
    .photo = La unión desde arriba, de cerca.
defect-ridge-slot-not-cut = Respiradero sin ranura debajo
    .what = El respiradero se puso a lo largo de la cumbrera, pero la ranura del tablero nunca se cortó o es muy angosta.
    .why = Parece un respiradero y no mueve aire.
    .water = Por esto no entra lluvia. El aire húmedo se queda en el ático.
    .photo = Desde el ático, la cumbrera por debajo.
defect-vents-mixed = Dos tipos de respiradero mezclados
    .what = Se usan juntos un respiradero de cumbrera y otros respiraderos altos, o un ventilador eléctrico jala aire por ellos.
    .why = Entonces un respiradero jala el aire del otro y no del alero.
    .water = Un respiradero que mete aire puede meter con él lluvia y nieve.
    .photo = Los dos tipos en una sola foto.
defect-roof-vent-hole-not-cut = Respiradero sin agujero debajo
    .what = El respiradero está en el techo, pero el tablero de abajo está cerrado.
    .why = Parece un respiradero y no mueve aire.
    .water = Por esto no entra lluvia. El aire húmedo se queda en el ático.
    .photo = Desde el ático, el tablero donde arriba está el respiradero.

# --- smothered
defect-ridge-vent-blocked = Respiradero de cumbrera tapado
    .what = Polvo, pintura, hojas o aislamiento tapan el respiradero de la cumbrera.
    .why = El ático no puede sacar su aire húmedo y caliente.
    .water = Por esto no entra lluvia. Con frío, el aire húmedo gotea de regreso.
    .photo = El respiradero tapado de cerca, o por debajo desde el ático.
defect-roof-vent-blocked = Respiradero de techo tapado
    .what = Un nido, polvo o aislamiento tapa el respiradero.
    .why = El ático no puede sacar su aire húmedo y caliente.
    .water = Por esto no entra lluvia. Con frío, el aire húmedo gotea de regreso.
    .photo = La abertura tapada desde abajo o desde el ático.

# --- wet
defect-ridge-deck-soft = Madera blanda en la cumbrera
    .what = La madera a lo largo de la cumbrera o la limatesa está blanda u oscura.
    .why = A ella van clavadas las tapas y los respiraderos, y no va a sujetarlos.
    .water = Ha entrado agua por debajo de las tapas o por el respiradero.
    .photo = La madera blanda con una tapa levantada, o desde el ático.
defect-ridge-vent-lets-snow-in = Nieve o lluvia por el respiradero
    .what = Manchas o aislamiento mojado bajo el respiradero muestran que el viento mete lluvia o nieve.
    .why = El respiradero no tiene protección contra el viento, está muy bajo, o jala aire porque faltan entradas en el alero.
    .water = El viento mete lluvia y nieve por el respiradero.
    .photo = Desde el ático, la mancha o el aislamiento mojado bajo el respiradero.
