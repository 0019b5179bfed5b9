### Lo que se dice cuando algo sale mal: con una acción, con el libro, con un archivo de visita.

# --- an act: what is not in the book. It stands behind "No está en este libro:".
there-kind = este tipo de parte
there-letter = esta carta
there-mark = esta anotación
there-note = esta nota
there-part = esta parte
there-picture = esta foto
there-reminder = este recordatorio
there-slope = esta vertiente
there-visit = esta visita

# --- an act: what was typed wrong. "No se cambió nada; lo que usted escribió se conserva" follows, so none ends in a full stop.
wrong-amount = Escriba una cantidad como 1250 o 1250.00
wrong-count = Escriba un número entero del 1 al 255
wrong-day = Escriba el día como año, mes y día: 2024-05-31
wrong-edition = Escriba la edición del código por su año, como 2021
wrong-no-day = Elija el día
wrong-no-kind = Elija qué es
wrong-no-layer = Nombre al menos la capa de arriba
wrong-no-outcome = Elija en qué quedó
wrong-no-reason = Diga por qué se corrige
wrong-nothing-said = Todavía no se dijo nada
wrong-outcome-ahead = Lo que resultó no puede estar en el futuro
wrong-work-ahead = Un trabajo hecho no puede estar en el futuro

# --- the worksheet of an offer: the name of the field stands in front.
wrong-in-field = En “{ $field }”: { $problem }
wrong-no-such-field = La hoja de cálculo no tiene un campo con este nombre: { $name }
wrong-years = Escriba años enteros del 1 al 100, como 5 o 5-8
wrong-months = Escriba meses enteros del 1 al 1200, como 12 o 12-24
wrong-sheets = Escriba un número entero de paneles del 0 al 999, como 2 o 2-4
wrong-nails = Escriba un número entero del 4 al 12
wrong-stated = Escriba un número entero del 0 al 999
wrong-amount-counted = Escriba un número mayor que cero, como 3 o 2-4
wrong-length-counted = Escriba pies, más que cero, como 42 o 40-42; también sirve una longitud con su unidad, como 12 ft 6 in
wrong-area-counted = Escriba un número mayor que cero, como 900
wrong-attic-first = Escriba primero el área del ático, o deje vacío todo lo de sus respiraderos
wrong-per-cent = Escriba una parte del 0 al 100, como 50
wrong-below-nothing = Una longitud no puede ser menor que cero
wrong-choice = Elija una de las que se ofrecen

# --- the book
book-none = No hay ningún libro en { $folder }. No se tocó nada. Elija la carpeta que contiene book.toml y book.db, o haga un libro nuevo.
book-not-empty = { $folder } ya contiene algo. No se sobrescribió nada. Elija una carpeta vacía o una nueva.
book-wrong-key = Esta llave no abre este libro. Hasta donde se puede saber, el libro está entero; no se tocó nada. Pruebe otra vez la contraseña o el archivo de la llave.
book-newer = Este libro lo escribió un Ladderbook más nuevo (forma { $found }; este lee hasta la { $known }). No se tocó nada. Actualice este programa.
book-damaged = El libro está dañado: { $what }. No se borró ni se cambió nada. Primero copie toda la carpeta a un lugar seguro; después restaure al lado la última copia de seguridad.
book-locked = El libro está abierto en otro programa. No se tocó nada. Cierre Ladderbook allá y pruebe otra vez.
book-disk-full = El disco está lleno. Lo que se guardó antes está a salvo; lo último no se guardó. Haga lugar y anótelo otra vez.
book-read-only = Aquí el libro solo se puede leer: la carpeta, la tarjeta o el disco están protegidos contra escritura. Lo que se guardó antes está a salvo; lo último no se guardó.
book-io = No se pudo leer o escribir { $file }: { $why }. Lo que se guardó antes está a salvo; lo último no se guardó.
book-unknown = No está en el libro aquello a lo que esto pertenece: { $what }. No se guardó nada.
book-unwritable = Contiene un número que no se puede escribir: { $what }. No se guardó nada.
book-erased = Este lugar se borró por deseo del dueño. No se guardó nada.
book-joined-with-itself = Un lugar no se puede unir consigo mismo. No se guardó nada.
book-not-a-picture = Este archivo no es una foto que se pueda guardar (JPEG, PNG o HEIC). No se guardó nada.
book-too-large = Esta foto es demasiado grande: { $megabytes } MB; se guardan como máximo { $most } MB. No se guardó nada; el archivo mismo no se tocó.
book-file-damaged = La foto o carta { $sha256 } falta en la carpeta del libro o está dañada. Todo lo demás está a salvo. Ponga su archivo de nuevo desde una copia de seguridad.
book-bad-backup = Esta copia de seguridad no está entera: { $what }. No se restauró ni se tocó nada. Use otra copia.
book-no-key = No hay llave para abrir el libro: { $why }. No se tocó nada.
book-refused = La base de datos del libro se negó, con las palabras “{ $detail }”. Lo que se guardó antes está a salvo; lo último no se guardó.

# --- the book: what is damaged, as half a sentence
damage-beginning = el comienzo de book.db no es lo que se escribió ahí
damage-page = una página de book.db no es lo que se escribió ahí
damage-database = su propia revisión dice “{ $detail }”
damage-empty = book.db está vacío
damage-gone = falta book.db
damage-version = la versión de book.db no se puede leer
damage-header = book.toml no se puede leer
damage-header-changed = alguien cambió book.toml
damage-header-gone = falta book.toml
damage-salt = la sal en book.toml no se puede leer
damage-secret = el secreto sellado en book.toml no se puede leer
damage-device = el libro no dice en qué aparato está
damage-line-time = la hora de la línea { $line } no se puede leer
damage-line-changed = alguien cambió la línea { $line }
damage-unknown-kind = una línea trata de “{ $kind }”, que nadie conoce
damage-record = un registro no se puede leer: { $record }
damage-wrong-name = un registro está bajo el nombre de otro: { $record }
damage-key-gone = falta la llave del lugar { $property }, aunque nadie la borró
damage-key-unread = la llave del lugar { $property } no se puede leer
damage-erasure-day = el día de un borrado no se puede leer
damage-visit-day = el día de una visita no se puede leer

# --- the book: what a check found
problem-page = La base de datos está dañada: { $what }
problem-property = Lugar { $property }: { $what }
problem-firm = Las líneas de la empresa misma: { $what }
problem-table = { $difference }. Reconstruir lo corrige
problem-file = La foto o carta { $sha256 } falta o fue cambiada
problem-never-kept = Un registro nombra la foto o carta { $sha256 }, que nunca se guardó
problem-stray = { $file } no pertenece a nada y no se puede leer. Se puede quitar
differs-lacked = A la tabla “{ $table }” le faltaba { $id }
differs-stray = La tabla “{ $table }” tenía { $id }, de lo que las líneas del libro no saben nada
differs-changed = La tabla “{ $table }” decía de { $id } otra cosa que las líneas del libro

# --- the book: what is wrong with a backup, as half a sentence
backup-list-unread = su lista, backup.toml, no se pudo leer: { $why }
backup-list-damaged = su lista, backup.toml, no tiene sentido
backup-list-leads-out = su lista nombra “{ $file }”, que está fuera de ella
backup-list-lacks = { $file } no está en su lista
backup-file-changed = { $file } falta o fue cambiado

# --- the book: why there is no key, as half a sentence
key-passphrase-empty = la contraseña está vacía
key-refused = la contraseña no se pudo usar (“{ $detail }”)
key-file-unread = no se pudo leer { $file }: { $why }
key-file-none = { $file } no contiene ninguna llave
key-text-none = lo que se guarda ahí no es una llave
key-no-encryption = este programa se hizo sin cifrado
key-no-random = el sistema no dio números al azar (“{ $detail }”)

# --- what the system said of a file or a port, as half a sentence
system-not-found = no hay tal archivo o carpeta
system-not-permitted = aquí no está permitido
system-exists = ya hay algo con este nombre
system-not-a-folder = hay un archivo donde hace falta una carpeta
system-a-folder = es una carpeta
system-not-empty = la carpeta no está vacía
system-full = el disco está lleno
system-read-only = el disco solo se puede leer
system-not-text = no es texto
system-port-taken = otro programa usa este puerto
system-other = el sistema dice “{ $detail }”

# --- the book: kinds of record, by the names they are stored under
record-property = lugar
record-structure = construcción
record-slope = vertiente
record-part = parte
record-visit = visita
record-mark = anotación
record-stack = capas
record-work = trabajo hecho
record-photo = foto
record-note = nota
record-letter = carta
record-outcome = resultado
record-reminder = recordatorio
record-firm = empresa
record-profile = código vigente
record-policy = reglas de la empresa
record-price-list = lista de precios
record-sketch = techo medido
record-worksheet = hoja de cálculo de una oferta
record-offer = oferta
record-joining = unión de dos lugares
record-erasure = borrado
record-entry = entrada

# --- the letter
error-letter-layout = La carta no se pudo poner en páginas: “{ $detail }”. Lo anotado está intacto, y la carta como página web sigue sirviendo.
error-letter-export = La carta no se pudo escribir como PDF: “{ $detail }”. Lo anotado está intacto, y la carta como página web sigue sirviendo.

# --- a visit file. Each reason is half a sentence that stands behind its place in the file.
file-problem = { $at }: { $reason }
file-at-line = línea { $line }, columna { $column }
file-not-of-the-shape = { $why }
file-unknown-version = este programa lee la versión { $known }; el archivo dice { $found }
file-no-address = escriba el número de la casa y la calle
file-address-twice = esta dirección ya está
file-position-off-the-earth = la latitud está entre -90 y 90, la longitud entre -180 y 180
file-year-cannot-be = el año está entre { $first } y { $last }
file-not-a-phone = un número de teléfono tiene al menos siete cifras
file-not-a-mail = una dirección de correo tiene una @
file-nobody-named = dé un nombre o un teléfono
file-no-visitor = diga quién fue
file-day-ahead = el día es posterior a hoy, { $today }
file-day-too-old = no hay visitas anteriores a { $year }
file-temperature-cannot-be = el aire está entre -50 y 60 grados Celsius; ¿se escribió en Fahrenheit?
file-safety-twice = esta pregunta de seguridad ya está contestada
file-no-structure = nombre al menos una construcción
file-structure-twice = ya hay una construcción de este tipo y nombre; póngale nombre a una
file-slope-twice = ya hay una vertiente con esta letra
file-not-a-slope-letter = una vertiente lleva una letra mayúscula de la A a la Z
file-no-such-slope = esta construcción no nombra ninguna vertiente { $letter } en "slopes"
file-unknown-kind = "{ $kind }" no es un tipo de parte del catálogo; `ladderbook schema --keys` los muestra
file-slope-needed = este tipo de parte está en una sola vertiente; dé su letra
file-part-twice = esta parte ya está; diga cuál es en "which"
file-no-condition = dé un estado en "rung", o diga por qué no se vio en "not-seen", o que ya no está en "gone"
file-two-conditions = una parte tiene solo uno de estos: "rung", "not-seen", "gone"
file-how-seen-missing = diga en "seen" cómo se vio: touched, near, zoomed, afar, told, inferred
file-seen-without-rung = lo que no se vio no se vio de ningún modo; dé un estado en "rung" o quite "seen"
file-seen-but-not-reached = no se llegó a la construcción, así que no se vio nada en ella; corrija "reached" o diga quién lo contó
file-seen-nearer-than-reached = desde el suelo una parte se ve de lejos: "afar" o "zoomed"
file-findings-unseen = una parte sin "rung" no tiene defectos, respuestas ni medidas
file-sound-with-defect = una parte sana no tiene defectos; quite el defecto o baje el "rung"
file-unknown-defect = "{ $defect }" no es un defecto del catálogo; `ladderbook schema --keys` los muestra
file-defect-of-other-part = "{ $defect }" no se da en una parte de tipo "{ $kind }"
file-defect-twice = este defecto ya está nombrado
file-unknown-remedy = "{ $remedy }" no es un remedio del catálogo; `ladderbook schema --keys` los muestra
file-answer-twice = esta pregunta ya está contestada
file-question-of-other-part = una parte de tipo "{ $kind }" no contesta esta pregunta
file-length-cannot-be = una longitud es más que nada
file-measure-twice = esto ya está medido
file-nothing-read = dé las capas de arriba abajo, o las líneas de corte en el borde
file-exposure-missing = con las líneas de corte hace falta la exposición de la capa de arriba
file-under-the-deck = las capas se nombran de arriba abajo; no hay nada debajo del tablero
file-work-unclear = dé el remedio en "remedy" o lo que se hizo en "did", no los dos
file-work-ahead = un trabajo que se encontró en esta visita se hizo antes de ella
file-picture-unreadable = no se pudo leer { $file }: { $why }
file-not-a-picture = este archivo no es una foto que se pueda guardar (JPEG, PNG o HEIC)
file-picture-elsewhere = nombre la foto a partir del archivo de visita, en su carpeta o más abajo
file-visit-twice = ya está en el libro una visita a este lugar en este día
file-visit-open = todavía hay en el libro una visita abierta a este lugar; ciérrela primero

# --- a visit file that is not of the published shape: why, as half a sentence
shape-breaks-off = el archivo se acaba a la mitad
shape-goes-on = la visita está completa antes de este lugar; quite lo que sigue
shape-no-json = aquí el archivo no es JSON; vea lo que está antes de este lugar
shape-missing = aquí falta "{ $name }"
shape-unknown-member = "{ $name }" no se conoce aquí; se conocen: { $known }
shape-unknown-word = "{ $name }" no es ninguna de las palabras que se conocen aquí: { $known }
shape-twice = "{ $name }" está dos veces
shape-not-a-day = "{ $text }" no es un día; escríbalo como 2024-05-31
shape-wants-text = aquí hace falta un texto, entre comillas
shape-wants-letter = aquí hace falta una sola letra, entre comillas
shape-wants-yes-or-no = aquí hace falta true o false
shape-wants-number = aquí hace falta un número
shape-wants-whole-number = aquí hace falta un número entero, uno que pueda ser
shape-wants-list = aquí hace falta una lista, entre corchetes
shape-wants-object = aquí hacen falta miembros, entre llaves
shape-other = esto no tiene la forma publicada (“{ $detail }”); `ladderbook schema` la muestra

# --- roof, price and offer
error-unchanged = { $problem } No se cambió nada.
error-price-list = La lista de precios no se tomó; la anterior sigue valiendo. { $mistakes }
error-price-list-more = La lista de precios no se tomó; la anterior sigue valiendo. { $mistakes } { $more ->
    [one] Hay una línea más con error.
   *[other] Hay { $more } líneas más con error.
 }
there-edge = este borde del contorno
there-outline = un contorno donde pueda estar una buhardilla: las vertientes se escribieron una por una. Mida el techo por sus lados o con un archivo y luego agregue la buhardilla
there-plane = este tramo de techo
there-dormer = esta buhardilla
there-plan = un plano de este techo: mídalo primero
there-price-list = una lista de precios: agréguela en Ajustes
