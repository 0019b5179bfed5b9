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
record-joining = unión de dos lugares
record-erasure = borrado
record-entry = entrada

# --- the letter
error-letter-layout = La carta no se pudo poner en páginas: “{ $detail }”. Lo anotado está intacto, y la carta como página web sigue sirviendo.
error-letter-export = La carta no se pudo escribir como PDF: “{ $detail }”. Lo anotado está intacto, y la carta como página web sigue sirviendo.
