### Cantidades, precios y ofertas.

# --- cantidades
price-range = { $least } a { $most }
price-amount = { $amount } { $unit }
price-money = { $amount } { $currency }
price-money-range = { $least } a { $most } { $currency }

unit-piece = piezas
    .one = pieza
unit-foot = pies
    .one = pie
unit-square-foot = pies cuadrados
    .one = pie cuadrado
unit-square = cuadros de 100 pies cuadrados
    .one = cuadro de 100 pies cuadrados
unit-place = lugares
    .one = lugar
unit-job = trabajos
    .one = trabajo
unit-hour = horas
    .one = hora
unit-ton = toneladas
    .one = tonelada
unit-load = cargas
    .one = carga
unit-roof-square = cuadros
    .one = cuadro
unit-layer = capas
    .one = capa
unit-pound = libras
    .one = libra
unit-cubic-yard = yardas cúbicas
    .one = yarda cúbica
unit-year = años
    .one = año
unit-time = veces
    .one = vez

# --- en qué se compra: cuántos, y .many para el encabezado de una columna
pack-bundle =
    { $count ->
        [one] { $count } paquete
       *[other] { $count } paquetes
    }
    .many = paquetes
pack-roll =
    { $count ->
        [one] { $count } rollo
       *[other] { $count } rollos
    }
    .many = rollos
pack-length =
    { $count ->
        [one] { $count } tramo
       *[other] { $count } tramos
    }
    .many = tramos
pack-box =
    { $count ->
        [one] { $count } caja
       *[other] { $count } cajas
    }
    .many = cajas
pack-sheet =
    { $count ->
        [one] { $count } panel
       *[other] { $count } paneles
    }
    .many = paneles
pack-tube =
    { $count ->
        [one] { $count } tubo
       *[other] { $count } tubos
    }
    .many = tubos
pack-can =
    { $count ->
        [one] { $count } lata
       *[other] { $count } latas
    }
    .many = latas
pack-piece =
    { $count ->
        [one] { $count } pieza
       *[other] { $count } piezas
    }
    .many = piezas

order-at-likely = Se pide lo que más probablemente hará falta
order-at-most = Se pide lo más que puede hacer falta; lo que sobra se devuelve

# --- lo que lleva un techo
item-strip-shingle = Tejas de tres lengüetas
item-laminated-shingle = Tejas laminadas
item-starter = Tira de arranque
item-cap = Tapas de cumbrera y limatesa
item-underlayment = Membrana
item-ice-barrier = Barrera contra hielo
item-drip-edge = Goterón
item-valley-metal = Metal para valles
item-valley-sheet = Forro para valles
item-step-flashing = Tapajuntas escalonado
item-head-flashing = Tapajuntas frontal
item-counter-flashing = Tapajuntas superior
item-kick-out = Desviadores
item-pipe-boot = Botas para tubos
item-cricket = Tejadillo
item-high-vent = Respiraderos altos
item-low-vent = Entradas de aire
item-nails = Clavos
item-deck-sheet = Paneles para el tablero
item-sealant = Sellador
item-cement = Cemento asfáltico
item-sized = { $item }, { $size }

# --- el trabajo en el techo
task-tear-off = Quitar la cubierta vieja, una capa
task-lay-shingles = Colocar las tejas
task-lay-starter = Hilera de arranque
task-lay-cap = Colocar las tapas de cumbrera y limatesa
task-lay-underlayment = Tender la membrana
task-lay-ice-barrier = Tender la barrera contra hielo
task-set-drip-edge = Colocar el goterón
task-line-valley = Forrar los valles
task-set-step-flashing = Tejer el tapajuntas escalonado
task-set-head-flashing = Colocar el tapajuntas frontal
task-set-counter-flashing = Empotrar y cerrar el tapajuntas superior
task-set-kick-out = Colocar los desviadores
task-set-boot = Colocar las botas de los tubos
task-build-cricket = Construir el tejadillo
task-set-vent = Colocar los respiraderos
task-set-up = Preparar, proteger y limpiar

# --- por qué tanto
need-shingles =
    { $cut ->
        [0] Colocadas pieza por pieza sobre este techo: { $field } para las vertientes. El { $waste } % de lo que cubren termina en el suelo.
       *[other] Colocadas pieza por pieza sobre este techo: { $field } para las vertientes, { $cut } más para arranque y tapas. El { $waste } % de lo que cubren termina en el suelo.
    }
need-starter = A lo largo de los aleros, y de los bordes inclinados donde así se elige.
need-cap = A lo largo de cada limatesa y cumbrera.
need-underlayment = Una capa sobre el tablero donde no hay barrera contra hielo; cada hilera cubre { $lap } de la de abajo.
need-underlayment-double = Dos capas donde la pendiente es menor de 4:12; cada hilera cubre la mitad de su ancho y 1 pulgada más de la de abajo.
need-underlayment-some-double = Dos capas en las vertientes de menos de 4:12, una capa en las demás.
need-ice-barrier =
    { $courses ->
        [one] Desde la orilla del alero hasta al menos 24 pulgadas hacia adentro de la pared: { $courses } hilera.
       *[other] Desde la orilla del alero hasta al menos 24 pulgadas hacia adentro de la pared: { $courses } hileras.
    }
need-drip-edge = A lo largo de aleros y bordes inclinados; cada tramo cubre { $lap } del siguiente.
need-valley-metal = A lo largo de cada valle, que queda abierto entre dos bordes cortados.
need-valley-sheet = A lo largo de cada valle, debajo de las tejas que lo cierran.
need-step-flashing = Una pieza por cada hilera de tejas junto a una pared o chimenea.
need-head-flashing = Donde el techo termina a nivel contra una pared o chimenea.
need-counter-flashing = Sobre el otro tapajuntas, empotrado en la pared o chimenea.
need-kick-out = Donde un alero termina en una pared, para echar el agua a la canaleta.
need-boot = Una por cada tubo, según la medida tomada.
need-boot-size-not-measured = Una por cada tubo; no se midió su tamaño.
need-cricket = Detrás de una chimenea de { $width } de ancho: un techo pequeño de { $height } de alto que reparte el agua.
need-vents = Debe quedar abierto { $share } del espacio ventilado: { $area } pulgadas cuadradas más, a { $each } por cada respiradero.
need-vents-renewed = Los que hay se cambian uno por uno.
need-nails = { $nails } en cada teja, dos en cada tapa; en peso, cerca de { $pounds }.
need-deck-sheets = Una previsión: el tablero se juzga cuando queda descubierto.
need-stated = Como lo indica el techador.

# --- lo que no se pudo contar
gap-ice-not-known = No se sabe si aquí se pide barrera contra hielo. Indíquelo en los ajustes del código.
gap-overhang = No se midió el voladizo de un alero. Mídalo, o dé uno para todo el techo.
gap-chimney-width = No se midió el ancho de la chimenea.
gap-vent-product = No se dio el área abierta de un respiradero.

takeoff-slope-at = la vertiente { $letter } con { $pitch }
takeoff-error-nothing-laid = No se cubre ninguna vertiente, así que no hay nada que contar. Elija primero las vertientes.
takeoff-error-other-plan = Las vertientes elegidas no son las de este plano. Elíjalas otra vez en el plano como está ahora.
takeoff-error-not-on-plan = Estas vertientes se deben cubrir, y el plano todavía no las muestra: { $slopes }. Mídalas, para que el plano las muestre.
takeoff-error-no-shingle = Aquí solo se cuentan tejas de asfalto. Esto es: { $covering }.
takeoff-error-too-low = Las tejas de asfalto no pueden ir por debajo de 2:12. Deje fuera { $slopes }, y cúbralo como techo plano.
takeoff-error-bad-supply = Un rollo o tramo debe ser más largo y ancho que su traslape, y un paquete debe contener algo. Corrija esto en la lista de precios: { $item }.

# --- lo que se quita, y lo que el techo carga
tear-off-error-asbestos = Una capa puede contener asbesto. No se toca ni se lleva: primero la revisa un oficio con licencia.
tear-off-error-layers = Nadie contó las capas de la vertiente { $letter }. Cuéntelas primero en un borde cortado.
tear-off-error-weight = No se sabe cuánto pesa esta cubierta: { $covering }. Diga qué es, o dé su peso.
tear-off-error-trailer = Un remolque debe cargar y contener más que nada, y los escombros deben pesar algo.
binding-weight = por el peso
binding-volume = por el volumen
tear-off-says = { $squares } con { $layers }: { $pounds }, { $yards }, { $loads }, con el límite { $by }
load-now = La vertiente { $letter } carga { $slope } libras por pie cuadrado sobre la pendiente, { $plan } a nivel.
load-with-another = Con otra capa la vertiente { $letter } cargaría { $plan } libras por pie cuadrado a nivel.
load-excepted = Esto no requiere otra revisión de la estructura.
load-not-excepted = Para esto hay que revisar primero la estructura.

# --- una oferta
gain-margin = Margen
gain-markup = Recargo
tax-on-materials = sobre lo que cuesta el material
tax-on-all = sobre todo el precio
cost-material = Materiales
cost-labour = Trabajo
cost-disposal = Acarreo y desecho
cost-permit = Permiso
offer-line-named = { $item }: { $name }
offer-line-at-pitch = { $work }, con { $pitch }
offer-line-sundries = Material menudo: { $remedy }
offer-line-tons = Desecho por tonelada
offer-line-loads = Acarreo por carga
offer-valid-until = Esta oferta vale hasta el { $date }.
offer-minimum = El precio se sube hasta nuestro cobro mínimo de { $amount } antes de impuestos.
offer-minimum-in-part = El extremo bajo del precio es nuestro cobro mínimo de { $amount } antes de impuestos.
offer-tax = Se incluye un impuesto sobre ventas de { $rate }, { $on }.
offer-nevertheless = No lo aconsejamos. Se ofrece porque: { $because }
offer-yearly = En una vida usual de { $years } cuesta { $cost } al año, con un interés de { $rate } ({ $source }).
offer-yearly-here = Aquí debería durar { $years }, según lo juzgamos: son { $cost } al año, con un interés de { $rate }.
offer-patching = Volver a parchar esto, cada vez por { $once }, haría falta { $times } en { $years }: { $sum } en total, que hoy valen { $now } con un interés de { $rate }.
offer-unsolved = Esto no arregla: { $part }.
offer-unsolved-by = Esto no arregla: { $part }. Eso viene con: { $course }.

left-out-other-trade = No nos toca a nosotros: { $part }. Llame a { $trade }.
left-out-not-ours = No es parte de nuestro trabajo: { $part }.
left-out-not-seen = No se vio, y por eso no se incluye: { $part }.
left-out-slopes = Vertientes que quedan como están: { $letters }.
left-out-untied = Techo que no es de ninguna vertiente que revisamos, y que aquí no se cuenta ni se cobra: { $letters }, en total { $area } pies cuadrados.
left-out-vent-area = No se calculó si el ático tiene bastantes respiraderos.
left-out-more-sheets =
    { $included ->
        [0] Cada panel para el tablero cuesta { $each } más antes de impuestos.
        [one] Cada panel para el tablero después del primero cuesta { $each } más antes de impuestos.
       *[other] Cada panel para el tablero después de { $included } cuesta { $each } más antes de impuestos.
    }

unpriced-material = Aún sin precio: la lista de precios no tiene fila para este material: { $item }.
unpriced-other-pack = Aún sin precio: el paquete de la lista de precios no es el que se colocó: { $item }.
unpriced-hours = Aún sin precio: la lista de precios no tiene horas para este trabajo: { $task }.
unpriced-hours-at = Aún sin precio: la lista de precios no tiene horas con { $pitch } para este trabajo: { $task }.
unpriced-remedy = Aún sin precio: la lista de precios no tiene fila para: { $remedy }.
unpriced-remedy-at = Aún sin precio: la lista de precios no tiene fila con { $pitch } para: { $remedy }.
unpriced-not-counted = Aún sin precio: cuente o mida los { $unit } de { $part } para: { $remedy }.
unpriced-no-remedy-named = Aún sin precio: diga qué se hace con { $part }.
unpriced-no-work-named = Aún sin precio: diga qué se hace.
unpriced-no-disposal = Aún sin precio: la lista de precios no dice nada del desecho.
unpriced-no-sheet-price = Aún sin precio: la lista de precios no tiene precio para un panel del tablero.
unpriced-no-takeoff = Aún sin precio: primero hay que medir el techo.
unpriced-no-tear-off = Aún sin precio: primero hay que calcular lo que se quita.
unpriced-gap = Aún sin precio: { $item }. { $why }

# --- lo mismo en una carta, para el dueño
still-to-come-item = Falta el precio de esto: { $item }.
still-to-come-work = Falta el precio de este trabajo: { $work }.
still-to-come-measure = Falta el precio de este trabajo: { $work } ({ $part }). Todavía hay que medir cuánto es.
still-to-come-part = Todavía hay que acordar qué se hace aquí, y con eso el precio: { $part }.
still-to-come-what = Todavía hay que acordar qué se hace exactamente, y con eso el precio.
still-to-come-disposal = Falta el precio de llevarse la cubierta vieja.
still-to-come-sheet = Falta el precio de los paneles nuevos para el tablero.
still-to-come-covering = Falta el precio de la cubierta nueva: para eso hay que medir el techo.
still-to-come-tear-off = Falta el precio de quitar la cubierta vieja.

offer-error-forbidden = Esto no se puede ofrecer: { $course }. { $reasons }
offer-error-no-reason = No aconsejamos esto: { $course }. Para ofrecerlo de todos modos, escriba por qué.
offer-error-not-refused = Nada se opone a esto: { $course }. Se ofrece donde el dictamen lo aconseja.
offer-error-other-structure = El techo que se midió es el de otra estructura.
offer-error-nothing-to-do = El dictamen no nombra nada que hacer, así que no hay nada que ofrecer.
worth-error-rate = El interés está entre 0 % y 50 % al año; este es { $rate }.
worth-error-time = Un tiempo está entre un mes y { $years } años.
worth-error-too-great = Una cantidad es demasiado grande para calcular. Revise las cantidades y los precios.

# --- lo que está mal en una lista de precios
price-list-at-whole = En toda la lista: { $what }
price-list-at-line = Línea { $line }: { $what }
price-list-at-cell = Línea { $line }, columna { $column }: { $what }
price-list-not-text = esto no es texto simple. Guarde la lista como CSV en UTF-8.
price-list-no-header = falta el encabezado. La primera línea nombra las columnas, empezando con "row" y "key".
price-list-semicolons = las celdas están separadas por punto y coma. Guarde la lista con comas.
price-list-no-such-column = no hay ninguna columna "{ $text }".
price-list-column-missing = falta la columna "{ $text }".
price-list-column-twice = la columna "{ $text }" está dos veces.
price-list-too-many-cells = hay más celdas que columnas. Una coma dentro de una celda necesita comillas alrededor de la celda.
price-list-open-quote = unas comillas no están cerradas.
price-list-no-such-row = "{ $text }" no es ninguna clase de fila.
price-list-no-such-key = "{ $text }" no se conoce aquí.
price-list-empty = esta celda no puede estar vacía.
price-list-no-meaning = "{ $text }" no significa nada en esta clase de fila. Deje la celda vacía.
price-list-not-a-number = "{ $text }" no es un número. Escriba solo cifras y un punto, como en 1250.50.
price-list-too-many-decimals = "{ $text }" tiene más de dos decimales.
price-list-out-of-range = "{ $text }" es demasiado pequeño o demasiado grande.
price-list-not-a-share = "{ $text }" no es un porcentaje. Escríbalo con su signo, como en 8.25 %.
price-list-share-out-of-range = "{ $text }" es un porcentaje demasiado grande.
price-list-not-a-length = "{ $text }" no es una longitud. Escriba 36 in, 10 ft o 900 mm.
price-list-not-a-pitch = "{ $text }" no es una pendiente. Escriba 6:12.
price-list-not-one-of = "{ $text }" no puede ir aquí. Escriba uno de estos: { $may }.
price-list-wrong-unit = "{ $text }" no es la unidad correcta. Esto se cuenta por { $unit }.
price-list-twice = la misma fila ya está en la línea { $line }.
price-list-margin-and-markup = la línea { $line } ya tiene un margen o recargo. Una lista tiene uno u otro.
price-list-no-such-band = ninguna banda se llama "{ $text }".
price-list-no-such-rate = ninguna tarifa se llama "{ $text }".
price-list-bands-out-of-order = las bandas van de plano a empinado, cada una termina en una pendiente mayor, y solo la última no termina.
price-list-waste-is-computed = el desperdicio de las tejas se calcula del techo. Deje la celda vacía.
price-list-pack-disagrees = el ancho y el largo del rollo dan { $text }. Deje vacía la cantidad o corríjala.
price-list-not-a-currency = "{ $text }" no es una moneda. Escriba sus tres letras, como en USD.
price-list-not-years = "{ $text }" no es un rango de años. Escríbalo como en 15-25.
price-list-row-missing = falta esta fila: { $text }.
