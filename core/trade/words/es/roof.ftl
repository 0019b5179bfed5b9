### El techo medido: sus líneas, sus bordes y cómo se cubre.

line-eave = alero
line-rake = borde inclinado
line-ridge = cumbrera
line-hip = limatesa
line-valley = valle
line-wall = pared
line-step = pared lateral
line-pitch-change = cambio de pendiente
line-top = borde alto

edge-hip = alero
edge-gable = hastial
edge-wall = pared

valley-open = valle abierto
valley-closed-cut = valle cerrado, cortado por un lado

# --- angles
angle-no-reading = No se tomó ninguna lectura. Ponga el teléfono sobre la vertiente y léalo.
angle-no-inclination = { $degrees }° no es la inclinación de un techo.
angle-no-length = Una medida debe ser mayor que cero.
angle-too-short = La medida inclinada no puede ser más corta que la nivelada.
angle-too-steep = Ningún techo es tan inclinado.
angle-no-lean = { $degrees }° no es la inclinación de una escalera.
angle-no-ladder = Dé el largo y qué tan lejos está el pie, ponga el teléfono sobre un larguero, o diga a qué altura baja.
ladder-as-asked = { $degrees }°. Más o menos lo que pide la regla: el pie a un cuarto del largo de trabajo, que son 75.5° (29 CFR 1926.1053(b)(5)(i)).
ladder-move-in = { $degrees }°, más tendida que los 75.5° de la regla: puede resbalar. La regla pone el pie a { $base } de la pared (29 CFR 1926.1053(b)(5)(i)).
ladder-flat = { $degrees }°, más tendida que los 75.5° de la regla: puede resbalar. Acerque el pie (29 CFR 1926.1053(b)(5)(i)).
ladder-move-out = { $degrees }°, más parada que los 75.5° de la regla: puede caer hacia atrás. La regla pone el pie a { $base } de la pared (29 CFR 1926.1053(b)(5)(i)).
ladder-steep = { $degrees }°, más parada que los 75.5° de la regla: puede caer hacia atrás. Aleje el pie (29 CFR 1926.1053(b)(5)(i)).
ladder-rails = Para que sobresalga 3 pies de donde se apoya, la escalera debe medir al menos { $ladder } (29 CFR 1926.1053(b)(1)).
ladder-too-low = Así como está se apoya a { $reaches } de alto. Usted baja a { $landing }.
ladder-for-landing = Para bajar a { $landing } de alto, la regla pide: { $working } por la escalera hasta el borde, el pie a { $base }, una escalera de al menos { $ladder }.
ladder-caution = La regla habla solo del ángulo y del largo. Si el suelo aguanta, si está amarrada arriba, si los cables están lejos y si la escalera está entera, lo debe ver usted antes de subir.

# --- what is wrong with an outline
outline-rim = el contorno
    .start = El contorno
outline-hole = el hueco { $hole }
    .start = El hueco { $hole }
outline-rim-of = el contorno del cuerpo { $body }
    .start = El contorno del cuerpo { $body }
outline-hole-of = el hueco { $hole } del cuerpo { $body }
    .start = El hueco { $hole } del cuerpo { $body }
outline-edge-of = lado { $edge } de { $ring }
outline-nothing = Todavía no se midió nada. Dibuje el contorno, o escriba sus vertientes.
outline-file = En { $path }: { $fault }
outline-no-json = Desde la línea { $line }, columna { $column }, esto no es JSON. Vea lo que está antes de este lugar.
outline-wants-text = Aquí va un texto, entre comillas.
outline-wants-number = Aquí va un número.
outline-wants-list = Aquí va una lista, entre corchetes.
outline-wants-object = Aquí van miembros, entre llaves.
outline-wants-position = Aquí va una posición: longitud y luego latitud.
outline-wants-degrees = Esto no es longitud y latitud en grados. Guarde la huella en WGS 84, como lo pide GeoJSON.
outline-wants-as-many = Debe haber una entrada por cada lado, y no más listas que contornos y huecos.
outline-missing = Aquí falta «{ $name }».
outline-unknown = «{ $name }» no se conoce aquí. Se conocen: { $known }.
outline-unit = «{ $text }» no es una unidad conocida. Escriba ft, m, in o mm.
outline-pitch = «{ $text }» no es una pendiente. Escriba 6/12 o 26.6°, entre plano y 60/12.
outline-length = «{ $text }» no es una medida. Escriba 12' 6" o 3.8 m.
outline-kind = Un «{ $text }» no tiene área. Hace falta un Polygon o MultiPolygon.
outline-no-pitch = Falta la pendiente: dé una para todo el techo, o una para cada lado.
outline-one-of = Dé una sola de estas: outline, rings, bodies, legs o planes.
outline-no-unit = Falta la unidad. Escriba "unit": "ft" al principio, o m, in o mm.
outline-file-empty = En este archivo no hay ningún contorno.
outline-no-outline = Una buhardilla está sobre un techo dibujado. Dé un contorno en vez de vertientes sueltas.
outline-wants-corner = Aquí va una esquina: hacia la derecha y luego desde la calle hacia el fondo, como [40, 28].
outline-wants-two-sides = Aquí van dos: el borde inclinado de la izquierda y luego el de la derecha.
outline-open = { $ring } está abierto: termina en { $at } y no donde empezó. Repita la primera esquina al final.
outline-too-few-corners =
    { $corners ->
        [one] { $ring } tiene { $corners } esquina. Un techo necesita al menos tres.
       *[other] { $ring } tiene { $corners } esquinas. Un techo necesita al menos tres.
    }
outline-edge-no-length = El lado { $edge } de { $ring } no mide nada: dos esquinas seguidas están en { $at }. Quite una.
outline-same-corner = Las esquinas { $edge } y { $other } de { $ring } están las dos en { $at }. Separe el techo ahí, o mueva una.
outline-spike = El lado { $edge } de { $ring } regresa sobre el lado anterior, en { $at }. Quite esa esquina.
outline-crossing = El lado { $edge } de { $ring } y el lado { $other } de { $otherring } se cruzan o se tocan en { $at }. Revise ahí el orden de las esquinas.
outline-hole-outside = { $ring } queda fuera del techo, en { $at }. Si es otro techo, hágalo un cuerpo aparte.
outline-hole-in-hole = { $ring } queda dentro de { $within }, en { $at }. Si es otro techo, hágalo un cuerpo aparte.
outline-flat = El lado { $edge } de { $ring } no tiene pendiente. De ahí debe subir una vertiente: dele una, o hágalo hastial o pared.
outline-overhang = El voladizo en el lado { $edge } de { $ring } es menor que cero, o mayor que 20 pies.
outline-overhangs-meet = Con los voladizos, el lado { $edge } y el lado { $other } de { $ring } chocan en { $at }. Reduzca un voladizo, o dibuje la orilla del techo.
outline-too-large = El contorno mide { $across } de lado a lado ({ $metres } m). Revise la unidad: ninguna casa es tan grande.
outline-too-far-apart = Los contornos miden juntos { $across } de lado a lado ({ $metres } m). Deje solo los edificios de una propiedad.
outline-too-small = El contorno mide { $across } de lado a lado ({ $metres } m). Revise la unidad: ninguna casa es tan chica. Los grados van en GeoJSON.
outline-never-closes = El techo nunca se cierra: hay demasiados lados verticales. Haga alero uno de estos: { $edges }.
outline-not-round = Las vueltas suman { $degrees }°, no 360°. Busque una esquina que falta o que va para el otro lado.
outline-ends-far-off = Los lados terminan a { $length } de donde empezaron, { $percent } % de la vuelta. Busque un lado que falta o mal leído: uno de esa medida, { $way }, lo cerraría.
outline-way-left = girado { $degrees }° a la izquierda del primer lado
outline-way-right = girado { $degrees }° a la derecha del primer lado
outline-way-along = en el sentido del primer lado
outline-not-on-roof = El cuerpo { $body } debe estar sobre un techo, pero ninguna de sus paredes queda sobre uno dibujado antes. Muévalo a la vertiente.
outline-buried = Nada del cuerpo { $body } se vería: queda por debajo de las vertientes donde está. Haga más altas sus paredes, o muévalo.
outline-no-measure = El número { $number } no es medida de una casa: un lado debe medir más que cero y menos de 1000 m, y una vuelta menos de 180°.
