# What the screens say. Short: it is read at arm's length, in the sun.

quoted = “{ $text }”
part-which = { $kind }, { $which }
part-which-side = { $kind }, { $which }, { $side }
part-side = { $kind }, { $side }
slope-name = { $letter }, { $side }
choice-none = Sin nombrar
choice-as-it-is = Como está
choice-model-code = Como dice el código modelo

# Arrive

arrive-title = Llegada
arrive-find = Dirección, dueño o teléfono
arrive-find-button = Buscar
arrive-none = En el libro no hay nada parecido a “{ $find }”. Pruebe solo con la calle, el dueño o el teléfono.
arrive-add = ¿No está en el libro? Agréguela
arrive-add-button = Agregar
arrive-open = Visitas todavía abiertas
arrive-open-since = abierta desde el { $on }
arrive-today = Por ver o preguntar hoy
address-line = Número y calle
address-town = Ciudad
address-region = Estado
address-postcode = Código postal
owner-name = Dueño
owner-phone = Teléfono
found-address = { $town }
found-other-address = { $town } · también conocida como { $with }
found-like = { $town } · se escribe parecido
found-person = { $town } · { $with }
found-phone = { $town } · teléfono { $with }
found-near = { $town } · a { $with } de aquí

# Doorstep

doorstep-under = { $town } · { $owner }, desde { $year }
doorstep-under-no-owner = { $town }, desde { $year }
doorstep-asked = Lo que piden ahora
doorstep-said-then = Usted dijo el { $on }
doorstep-contradicts = Va en contra de lo que usted dijo entonces
doorstep-look-again = Vuelva a ver
doorstep-look-more = { $count } más para ver de nuevo
doorstep-open = ¿Qué piden ahora?
doorstep-open-button = Empezar la visita
doorstep-safety = Seguridad, y arriba
mark-advise = Qué aconsejar
advise-cures = lo cura
advise-buys-time = gana tiempo
layers-colour = Color de la capa de arriba
layers-between = Debajo de la capa de arriba hay
layers-rebuilt = ¿Este lugar se rehízo por separado?
work-exact = Qué tan segura es la fecha
work-on-that-day = Ese día
work-by-that-day = Ese día a más tardar
outcome-photo = El trabajo terminado
outcome-shutter = Foto del trabajo terminado
verdict-reasons-left = { $count ->
    [one] Una razón más
   *[other] { $count } razones más
 }
safety-temperature = ¿Qué temperatura hace?
safety-degrees = Grados Fahrenheit, o así: 20 C
doorstep-past = Última carta
request-words = En sus propias palabras
request-kind = De qué parte hablan
request-remedy = Qué quieren que se haga
request-leaking = ¿Está entrando agua ahora?
request-room = En qué cuarto
request-wet-when = Cuándo entra el agua
request-must-last = ¿Debe durar el techo, y no solo salir del paso?
request-sale = ¿Está en venta la casa?
request-scope = Cuánto hay que ver

# Property: what stands there, who lives there

property-title = El lugar
property-also = También conocido como
property-address = Dirección
property-also-add = Agregar otra dirección
property-about = Peligros, año, posición
property-dangers = Peligros en cada visita, uno por línea
property-built = Año en que se construyó
property-position = Posición: grados norte, grados este
property-people = Personas
property-person = { $name }, { $role }
property-person-add = Agregar una persona
person-name = Nombre
person-role = Qué relación tiene con el lugar
person-phones = Teléfonos, uno por línea
person-email = Correo electrónico
property-structures = Lo que hay ahí
structure-name = Nombre, si el tipo no basta
structure-gone = Demolida el
property-same = ¿El mismo lugar, anotado dos veces?
property-same-find = Buscarlo
property-same-none = No hay nada más parecido en el libro.
property-join-button = Es el mismo: unir
property-part-button = No es el mismo: separar
property-erase = Borrar este lugar
property-erase-says = Si el dueño lo pide: todas las palabras y fotos de este lugar se destruyen para siempre. Queda escrito que algo se borró. Esto no se puede deshacer.
property-erase-confirm = Escriba el número y la calle para seguir
property-erase-button = Borrar para siempre
position-here = Cerca de mí
position-failed = Este aparato no dice dónde está. Escriba la dirección.

# Safety

safety-title = Seguridad
safety-sky = El cielo ahora
weather-windy = Viento fuerte
ladder-check = Cómo está puesta la escalera
ladder-working = Por la escalera, del pie hasta donde se apoya, por ejemplo 20 ft
ladder-base = A nivel, del pie hasta la pared, por ejemplo 5 ft
ladder-leans = O su inclinación en grados: ponga el teléfono sobre un larguero; varias lecturas con comas
ladder-landing = A qué altura baja usted, por ejemplo 18 ft
ladder-tell = Qué dice la regla
safety-reach = ¿Cómo va a llegar?
safety-up = Arriba: empezar
safety-from-ground = Recorrer desde el suelo
safety-always = Estas preguntas detienen una subida; nunca reemplazan la capacitación, la ley local ni a un especialista con licencia.
back-doorstep = A la puerta

# Walk

walk-under = { $address } · { $scope } · { $structure }
walk-title = Recorrido: { $done } de { $all } paradas
walk-stop-done = completo, { $all } de { $all }
walk-stop-again = ver de nuevo { $again } de { $all }
walk-stop-not-yet = todavía no
walk-stop-open = { $answered } de { $all } con respuesta
walk-look-again = ver de nuevo: { $rung } en { $year }
walk-next = Sigue: { $stop }
walk-here = Aquí: { $stop }
walk-not-seen = Aquí no se ve, porque
walk-not-seen-why = sin ver: { $why }
walk-mark = Anotar
walk-add-part = Otra parte aquí
walk-more = Más
walk-close = Cerrar la visita
add-part-kind = Qué es
add-part-slope = En qué vertiente
add-part-which = Cuál, si hay varias
add-part-button = Anotarla
add-slope = Agregar vertiente: { $side }
add-structure = Agregar: { $structure }
shutter = Foto
shutter-keep = Guardar la foto
say-it = Dictar
say-words = Palabras
say-keep = Guardar las palabras
undo = Deshacer
back-walk = Recorrido
close-outside-scope = Cerrar: lo demás no era de esta visita
close-not-reached = Cerrar: lo demás no se alcanzó a ver

# Mark

mark-title = ¿Qué es?
mark-under-seen = { $part } · { $seen }
mark-then = Antes, el { $on }
mark-families = O por lo que se ve
mark-likely = Probable aquí
mark-as-in = como en { $year }
mark-take-off = Quitarlo
mark-seen = ¿Cómo se vio?
mark-not-seen = No se vio, porque
fact-measure = { $of }: { $length }
measure-title = Medida
measure-of = Qué
measure-length = Cuánto mide: 30 in, 2' 6", 0.76 m
measure-got = Con qué
measure-keep = Guardar la medida
layers-title = Contar las capas
layers-count = Cuántas cubiertas
layers-covering = De qué es la de arriba
layers-learned = Cómo se sabe
layers-where = Dónde: borde izquierdo, a 3 pies
layers-exposure = Exposición de la capa de arriba, si se lee en el borde
layers-butts = Líneas de corte desde el alero: 2 in, 5 in, 7 in
layers-keep = Guardar las capas
work-title = Trabajo hecho desde entonces
work-did = Qué se hizo
work-by = De quién es el trabajo
work-when = Cuándo, si se sabe
work-evidence = Cómo se sabe
work-keep = Guardar el trabajo
work-line = { $did }, { $when } · { $by }

# Tray

tray-title = Bandeja
tray-empty = La bandeja está vacía.
tray-photo = Foto en la bandeja
tray-taken = Tomada a las { $at }
tray-tie = Es de
tray-half = Todavía sin estado
tray-needs-rung = tiene foto o palabras; elija su estado
caption-words = Qué muestra

# Then and now

then-and-now-title = Antes y ahora
then-and-now-quiet = { $count ->
    [one] Una parte está
   *[other] { $count } partes están
 } en buen estado, hasta donde se vio antes y ahora.
then-and-now-patched = { $count ->
    [one] Un parche, el { $on }
   *[other] { $count } parches, el último el { $on }
 }
then-and-now-callback = Otra falla después de curar la causa · { $by }
then-found = El { $on }: { $defects }
now-found = Ahora: { $defects }
picture-of = { $part }, { $on }
corrected-line = Corregido el { $on }: { $why }
correct-title = Corregir el registro
correct-rung = El estado
correct-words = Las palabras
correct-why = Por qué se corrige
correct-keep = Escribir la corrección

# Verdict

verdict-title = Dictamen
verdict-under = { $address } · { $structure }
verdict-until = a más tardar el { $until }
verdict-forbidden = No se permite
verdict-refused = No se vende
verdict-look = Una revisión que podría cambiarlo
verdict-turns-to = Si { $answers }: { $course }.
verdict-cautions = Cuidado
verdict-unseen = Sin ver
verdict-letter = La carta
task-remedy = { $part }: { $remedy }
task-remedy-trade = { $part }: { $remedy } · { $trade }
task-trade = { $part } · { $trade }
task-part = { $part }
source-local = reforma local, { $place }
source-evidence = visto
source-practice = práctica del oficio
source-house-policy = norma de la casa
source-owner = según nos dijo usted

# Letter

letter-title = Carta
letter-preview = Lo que dice la primera página
letter-close-first = Primero cierre la visita: lo que no se anotó queda escrito como sin ver, nunca como en buen estado.
letter-write-english = Escribirla en inglés
letter-write-spanish = Escribirla en español
letter-sent = Cartas escritas
letter-of = Carta del { $on }
letter-overtaken = Ya no vale: se corrigió el { $on }
letter-open = Abrir el PDF
language-english = English
language-spanish = Español

# Outcome and reminders

outcome-title = Resultado
outcome-record = ¿Qué resultó?
outcome-came = Qué
outcome-letter = De qué carta
outcome-on = Cuándo
outcome-paid = Monto, si lo hay
outcome-keep = Guardarlo
outcome-line = { $came }, { $on }
outcome-amount = ${ $amount } { $words }
remind-title = Recordarme
remind-on = Cuándo
remind-because = Por qué
remind-keep = Guardar el recordatorio
reminders-title = Recordatorios
reminders-none = No hay nada pendiente.
reminders-calendar = Llevarlos a su calendario
reminder-line = { $because } · { $on }
reminder-done = Hecho

# Settings

settings-title = Ajustes
settings-firm = La empresa
settings-profile = El código donde usted trabaja
settings-policy = Normas de la casa
settings-keep = Guardar
settings-name = Nombre de la empresa
settings-person = Quién firma
settings-phone = Teléfono
settings-email = Correo electrónico
settings-address = Dirección
settings-licence = Licencia
settings-language = Idioma de las pantallas
settings-contract = El texto de su propio contrato
settings-notices = Sus avisos legales
settings-place = Jurisdicción
settings-edition = Código residencial (IRC), edición
settings-layers-allowed = Capas permitidas por reforma local
settings-ice-barrier = ¿Zona con antecedentes de hielo en el alero?
settings-hail = ¿Zona de granizo moderado o severo?
settings-climate-zone = Zona climática, del 1 al 8
settings-amendments = Otras reformas
settings-patch-limit = Parches por una misma causa antes de no vender más
settings-places-limit = Lugares separados para pensar en la vertiente entera
settings-no-repair-layers = Capas desde las que solo se asegura
settings-sells-recover = ¿Se vende cubierta sobre cubierta donde el código lo permite?
settings-callback-years = Años en que responde la empresa si un arreglo vuelve a gotear
settings-make-safe-weeks = Semanas que puede quedarse una protección temporal
settings-look-again-years = Años hasta volver a ver un techo en buen estado
settings-look-stands-months = Meses que vale una revisión limpia
settings-installer-answers-years = Años en que el instalador responde por un mal trabajo
layers-one = Una
layers-two = Dos

# Roof: the plan, and measuring it

roof-title = El techo
roof-none = Nadie ha medido este techo todavía. Sirve cualquiera de estas formas.
roof-area = Área
roof-squares = { $squares } cuadros; { $plan } pies cuadrados en plano
roof-height = Del alero a la cumbrera más alta
roof-exact = Qué tan exacto
roof-got = { $got }, con { $within } % de margen
roof-planes = Vertientes
roof-plane = { $pitch } · { $area } pies cuadrados
roof-lines = Líneas
roof-edges = Bordes del contorno
roof-edge = Borde { $number }, { $length }: { $is }
roof-edge-own = Su propia pendiente y voladizo
length-alone = { $length }
roof-measure = Medirlo
roof-box = Un rectángulo simple
roof-across = A lo largo de la calle, por ejemplo 42 ft
roof-deep = Hacia el fondo, por ejemplo 28 ft
roof-pitch = Pendiente, por ejemplo 6:12
roof-overhang = Cuánto sobresale el techo, por ejemplo 16 in
roof-ends = En los extremos
ends-hip = Limatesas por todos lados
ends-gable-sides = Hastiales a la izquierda y a la derecha
ends-gable-front = Hastiales adelante y atrás
roof-of = Las medidas van por
outline-walls = Las paredes
outline-roof = El borde del techo
roof-sides = Lado por lado, todo alrededor
roof-sides-how = Un lado por línea, el primero a lo largo de la calle hacia la derecha: su medida, luego I o D según el giro al final, luego hastial o pared si lo es, y su propia pendiente
roof-file = De un archivo
roof-file-how = Una huella en GeoJSON o un archivo de contorno
roof-street = La calle queda
street-south = Al sur
street-east = Al este
street-north = Al norte
street-west = Al oeste
roof-plane-add = Una vertiente sola
plane-side = Hacia dónde mira
plane-eave = A lo largo del alero
plane-high = A lo largo del borde alto; nada si termina en punta
plane-up = Del alero al borde alto, por la pendiente
plane-high-is = En el borde alto
plane-left = A su izquierda, vista desde abajo
plane-right = A su derecha
roof-slope-pitch = Pendiente de una vertiente
roof-slope = Cuál vertiente
roof-readings = Grados, varias lecturas con comas; o una pendiente como 6:12
roof-slope-rise = Pendiente de una vertiente por subida y avance
roof-rise = Recto hacia arriba, por ejemplo 8 in
roof-run = A nivel, para esa subida, por ejemplo 12 in
roof-slope-rafter = Pendiente de una vertiente por un cabio
roof-rafter = Por el cabio de la pared a la cumbrera, sin el voladizo, por ejemplo 16' 10"
roof-rafter-run = A nivel, de la pared hasta debajo de la cumbrera, por ejemplo 14 ft
roof-pitches = Pendientes medidas
roof-pitch-got = { $pitch } ({ $degrees }°) · { $got }, con { $within } % de margen
roof-walls = Paredes que están sobre él
roof-walls-area = { $area } pies cuadrados
roof-standing = Lo que está sobre él
roof-dormer = Una buhardilla sobre él
roof-dormer-off = Quitar la buhardilla { $number }
roof-dormer-told = { $wide } de frente, { $pitch }, alero a { $above } de la vertiente
roof-edge-of-dormer = Buhardilla, borde { $number }, { $length }: { $is }
dormer-faces = Su frente mira
dormer-shape = Su techo
dormer-gable = Un hastial sobre su frente
dormer-shed = Una sola vertiente, que baja hacia su frente
dormer-hip = A cuatro aguas sobre su frente
dormer-x = El medio de su frente: a la derecha de la esquina izquierda del frente
dormer-y = El medio de su frente: hacia el fondo, desde la misma esquina
dormer-wide = A lo largo de su frente, de pared a pared
dormer-above = En su frente, de la vertiente hasta su alero
dormer-deep = Hasta dónde llega hacia atrás; nada si entra en la vertiente
roof-laid = Las tejas como quedan puestas
roof-laid-says = { $pieces } tejas sobre las vertientes, a lo más { $courses } hileras una sobre otra.
roof-laid-of = Se ponen
roof-laid-field = En las vertientes
roof-laid-opened = { $opened } tejas; otros { $reused } lugares se llenan con recortes
roof-laid-bundles = Paquetes
roof-laid-bundles-of = { $bundles }, con { $starter } tejas para el arranque y { $cap } para tapas
roof-laid-bundles-alone = { $bundles }. El arranque y las tapas se compran aparte.
roof-laid-waste = Se corta y se tira
roof-laid-cut-off = { $waste } % de lo que se pone en las vertientes
roof-laid-extra = Más de lo que miden las vertientes
roof-laid-more = { $extra } %. Los libros agregan { $books }.
laid-books-range = de { $least } a { $most } %
laid-books-more = { $least } % o más
roof-untied = Aún de ninguna vertiente del recorrido: { $letters }. Mientras no diga abajo a qué vertiente pertenecen, no se juzgan, no se miden para pedir material y no se cotizan.
roof-tie = Diga a qué vertiente pertenece un tramo de techo
roof-plane-which = Cuál tramo de techo
roof-plane-named = { $name }: { $says }
roof-place-part = Dónde está una parte
roof-part = Cuál parte
roof-x = A la derecha de la esquina izquierda del frente
roof-y = Hacia el fondo, desde la misma esquina
roof-files = Archivos del plano
roof-file-svg = Imagen (SVG)
roof-file-dxf = Dibujo (DXF)
roof-file-geojson = Mapa (GeoJSON)
roof-file-planes = Vertientes en tabla (CSV)
roof-file-lines = Líneas en tabla (CSV)
roof-street-below = calle
roof-plan-title = Plano del techo
roof-plan-says = { $count ->
    [one] Una vertiente, { $squares } cuadros: { $slopes }.
   *[other] { $count } vertientes, { $squares } cuadros en total: { $slopes }.
 }
roof-plan-slope = { $letter } a { $pitch }

# Leak: where the water comes in

leak-title = ¿De dónde viene?
leak-how = Mida en el plano del cielo raso, desde la esquina izquierda del frente, vista desde la calle.
leak-where = ¿Dónde se ve?
leak-within = Más o menos
leak-wind = El viento viene entonces
leak-trace = Seguirla
leak-plan-says = La mancha, y el camino del agua desde: { $names }.
leak-suspects = Mire primero aquí
leak-share = { $share } de 100 · { $stop }
leak-caution = Es una suposición según lo que se sabe del techo. El agua camina: mire antes de cortar.
wind-street = De la calle
wind-left = De la izquierda
wind-rear = De atrás
wind-right = De la derecha

# Offer: what it costs

offer-title = Oferta
offer-was-put = Hecha el { $on }; vale hasta el { $until }.
offer-not-put = Todavía no se le hizo al dueño: la carta no muestra precios.
offer-put = Ponerla en la carta
offer-includes = Esto incluye
offer-leaves = Lo que deja
offer-made = Cómo se hace el precio
offer-line = { $what } · { $quantity }
offer-hours = Horas de trabajo
offer-all-the-same = Ofrecerlo de todos modos: { $what }
offer-because = Por qué se ofrece en contra del consejo. Queda en la carta.
worksheet-title = Contar y elegir
worksheet-keep = Guardar y volver a calcular
worksheet-repair-lasts = Cuántos años dura aquí una reparación: 5, o 5-8
worksheet-patch-holds = Cuántos meses aguanta el parche que se pidió: 12, o 12-24
worksheet-count = { $part }, { $remedy }: cuánto
worksheet-count-in = { $part }, { $remedy }: cuánto, en { $unit }
worksheet-count-on-plan = { $part }, { $remedy }: cuánto, en { $unit }. Todo lo que muestra el plano: { $plan }
worksheet-chimney-width = { $part }: ancho a lo largo de la cumbrera
worksheet-chimney-depth = { $part }: fondo de adelante hacia atrás
worksheet-overhang = Vuelo de los aleros, donde no se midió
worksheet-counter-flashing = Tapajuntas superior a lo largo de las paredes, en total: 14 ft
worksheet-valleys = Cómo se hacen los valles
worksheet-starter = Dónde va la hilera de arranque
worksheet-deck-sheets = Paneles del tablero que se prevén: 2, o 2-4. Vacío: según lo que se halló mojado
worksheet-attic-area = Piso del ático ventilado, en pies cuadrados. Vacío: los respiraderos se cambian uno por uno
worksheet-high-share = Parte del área abierta que está en lo alto del techo, en %. Vacío: la mitad
worksheet-above-eave-vents = Cuánto más arriba que los del alero están los respiraderos altos
worksheet-below-ridge = Cuánto más abajo que la cumbrera están los respiraderos altos
worksheet-vapour-retarder = ¿Hay un retardador de vapor en el lado caliente del cielo raso?
worksheet-high-vent = Área abierta de un respiradero alto, en pulgadas cuadradas, según el fabricante
worksheet-low-vent = Área abierta de un respiradero de entrada, en pulgadas cuadradas, según el fabricante
worksheet-high-stays = Área abierta de los respiraderos altos que se quedan, en pulgadas cuadradas
worksheet-low-stays = Área abierta de los respiraderos de entrada que se quedan, en pulgadas cuadradas
worksheet-nails = Clavos en cada teja. Vacío: 4
worksheet-sealant = Tubos de sellador
worksheet-cement = Latas de cemento asfáltico
worksheet-order-at = Cuánto se pide
offer-takes = Lo que lleva una cubierta nueva
offer-weighs = Lo que se quita, y lo que carga el techo
offer-not-counted = Sin contar
offer-need = { $item }: { $order }
offer-need-why = { $amount }. { $reason }
offer-waste = Tejas, puestas en este techo
offer-waste-says = { $waste } % cae al suelo. Los libros calculan { $books } para un techo así.
sum-subtotal = Líneas juntas
sum-overhead = Gastos generales
sum-cost = Lo que nos cuesta
sum-gain = Lo que agregamos
sum-sheets = Hojas de tablero
sum-to-minimum = Hasta el cobro mínimo
sum-rounded = Redondeo
sum-before-tax = Antes de impuestos
sum-tax = Impuesto sobre ventas
settings-price-list = Lista de precios
settings-price-list-how = La lista como texto separado por comas; qué significa cada fila está en docs/price-list.md

# What a save says

saved = Guardado
saved-sound = En buen estado, guardado
saved-words = Palabras guardadas
saved-picture = Foto guardada
saved-layers = Capas guardadas
saved-work = Trabajo guardado
saved-tied = Unida a su parte
saved-undone = Deshecho
saved-done = Hecho
saved-property = Agregada al libro
saved-joined = Unidos: desde ahora es un solo lugar
saved-parted = Separados otra vez
saved-erased = Borrado para siempre
saved-visit = Visita empezada
saved-corrected = Corrección escrita
saved-roof = Medidas guardadas
saved-dormer-off = La buhardilla se quitó del plano
saved-offer = Puesta en la próxima carta
saved-worksheet = Guardado, y calculado de nuevo
saved-letter = Carta escrita y guardada
saved-stop-not-seen = { $count ->
    [one] Una parte guardada como sin ver
   *[other] { $count } partes guardadas como sin ver
 }
saved-closed = Visita cerrada. { $count ->
    [0] Todas las partes tienen respuesta.
    [one] Una parte queda como sin ver.
   *[other] { $count } partes quedan como sin ver.
 }

# Trouble

error-closed = La visita del { $on } está cerrada. Lo que dice se queda; corríjalo en Antes y ahora.
error-already-open = Todavía hay una visita abierta aquí. Ciérrela primero; no se cambió nada.
error-not-there = No está en este libro: { $what }. No se cambió nada.
error-wrong = { $problem }. No se cambió nada; lo que usted escribió se conserva.
error-rung-first = Elija primero el estado: solo lo que se vio puede contestar una pregunta.
error-nothing-to-undo = En esta visita ya no queda nada por deshacer.
error-other-visit = Esta anotación es de otra visita. No se cambió nada.
error-still-open = Cierre la visita antes de escribir su carta. No se cambió nada.

# What was typed wrong

wrong-nobody-named = Escriba un nombre, un teléfono o un correo
wrong-position = Escriba la posición en grados norte y este, como 41.2412, -96.0113
wrong-year = Escriba el año con cuatro cifras; no puede estar en el futuro
wrong-day-ahead = El día no puede estar en el futuro
wrong-same-already = Estos dos ya son el mismo lugar
wrong-confirm = Ese no es el número y la calle de este lugar
wrong-no-street = Escriba el número de la casa y la calle
wrong-degrees = Escriba la temperatura del aire como 68 F o 20 C
there-outcome = lo que resultó de esa carta
there-property = este lugar
there-structure = esta construcción
wrong-side = Escriba cada lado con su medida y su giro, como 40 ft I o 28 ft D hastial
wrong-no-part = Elija cuál parte
wrong-no-slope = Elija cuál vertiente
wrong-no-plane = Elija cuál tramo de techo
wrong-too-deep = Esa buhardilla saldría por el otro lado del techo. Desde su frente hasta lo más alto hay { $top }: no escriba más que eso, o deje vacía la profundidad. Si de verdad pasa de lado a lado, ponga otra en el otro lado
wrong-reading = Escriba los grados con comas, como 26.4, 26.7, 26.5; o una pendiente como 6:12
