# Skylights and their flashing.

# --- split
defect-skylight-glass-cracked = Vidrio o domo agrietado
    .what = El vidrio o el domo de plástico está agrietado.
    .why = Deja entrar agua y puede ceder con la nieve o con una mano.
    .water = La lluvia pasa por la grieta al cuarto.
    .photo = La grieta de punta a punta, desde afuera y desde abajo.
defect-skylight-dome-crazed = Domo opaco y quebradizo
    .what = El domo de plástico se puso amarillo u opaco, con grietas finas.
    .why = Se volvió quebradizo y se rompe con granizo, frío o una mano descuidada.
    .water = Todavía no entra agua.
    .photo = El domo contra la luz, de cerca.
defect-skylight-gasket-perished = Empaque del tragaluz reseco
    .what = La tira de goma entre el vidrio y el marco está encogida, dura o agrietada.
    .why = Es lo que no deja entrar la lluvia por la orilla del vidrio.
    .water = La lluvia entra entre el vidrio y el marco, primero por las esquinas.
    .photo = La tira en una esquina, de cerca.

# --- loose
defect-skylight-loose = Tragaluz suelto en su marco
    .what = El tragaluz se mueve en su marco, o sus broches se soltaron.
    .why = El viento puede levantarlo, y cada movimiento abre sus sellos.
    .water = La lluvia con viento entra por debajo del borde suelto.
    .photo = El hueco en el borde, y una mano que lo mueve.
defect-skylight-flashing-loose = Tapajuntas de tragaluz levantado
    .what = El metal alrededor del tragaluz se levantó o se abrió en una esquina.
    .why = Las esquinas son las que más agua llevan y las que más se mueven.
    .water = El agua se mete bajo el metal por la esquina abierta.
    .photo = La esquina abierta de cerca, y el tragaluz entero.

# --- missing
defect-skylight-head-open = Sin metal arriba del tragaluz
    .what = Del lado de arriba del tragaluz no hay metal bajo las tejas.
    .why = Toda el agua que baja hacia el tragaluz choca contra ese borde.
    .water = El agua corre bajo las tejas y entra por encima del borde de arriba del marco.
    .photo = El borde de arriba con una teja levantada.

# --- misbuilt
defect-skylight-flashing-homemade = Tapajuntas que no es del tragaluz
    .what = El metal alrededor del tragaluz se dobló en el lugar y no ajusta con su marco.
    .why = Queda separado en las esquinas, donde las piezas deberían traslapar.
    .water = El agua entra por las esquinas con lluvia larga o con viento.
    .photo = Las cuatro esquinas, de cerca.
defect-skylight-too-flat = Tragaluz demasiado bajo
    .what = El tragaluz está demasiado bajo sobre el techo para su pendiente, o no tiene base alta donde la necesita.
    .why = El agua y las hojas se quedan contra el vidrio.
    .water = El agua se estanca en el borde de abajo del marco y entra por sus uniones.
    .photo = El tragaluz de lado, con una cinta métrica para la altura de su marco.
defect-skylight-shingles-tight = Tejas muy pegadas al tragaluz
    .what = Las tejas se pusieron pegadas al marco y no dejaron un canal para el agua.
    .why = En el hueco angosto se juntan gránulos y hojas que lo tapan.
    .water = El agua se represa junto al marco y corre bajo las tejas.
    .photo = El hueco entre las tejas y el marco, con una cinta métrica encima.

# --- smothered
defect-skylight-weeps-sealed = Ranuras de drenaje selladas
    .what = Las ranuras chicas que dejan salir el agua del marco se cerraron con sellador.
    .why = A todo tragaluz le entra un poco de agua, y por ahí la suelta. Cerrado, esa agua va al cuarto.
    .water = El agua que debía gotear hacia afuera del marco corre hacia adentro.
    .photo = Las ranuras del borde de abajo, de cerca, con el sellador adentro.
defect-skylight-leaves-above = Hojas arriba del tragaluz
    .what = Hay hojas y agujas de pino del lado de arriba del tragaluz.
    .why = Represan el agua contra el marco.
    .water = El agua se represa detrás de las hojas y entra por encima del marco.
    .photo = Lo que hay ahí, de lado.

# --- wet
defect-skylight-fogged = Vaho entre los vidrios
    .what = Hay neblina o gotas entre los dos vidrios.
    .why = Falló el sello del vidrio doble. Protege menos del frío, y el vaho no se va a quitar.
    .water = Por esto no entra lluvia.
    .photo = El vidrio empañado desde adentro, contra el cielo.
defect-skylight-condensation = Gotas del aire del cuarto
    .what = Gotea agua del tragaluz con frío, cuando no ha llovido.
    .why = El aire húmedo del cuarto topa con el vidrio frío. Muchas veces se confunde con una gotera.
    .water = No entra lluvia. El agua viene del aire de adentro.
    .photo = Las gotas en la cara de adentro del vidrio, y la fecha y el tiempo en el pie de foto.
defect-skylight-frame-rotten = Marco del tragaluz podrido
    .what = El marco de madera del tragaluz está blando u oscuro.
    .why = A él van sujetos el vidrio y sus broches.
    .water = Ha entrado agua por el vidrio, o ha bajado la del aire húmedo de adentro.
    .photo = Un destornillador metido en la madera blanda, y la esquina donde está.
