### El programa en una computadora: sus órdenes y su página. Lo que leen otros programas (JSON, opciones, nombres de archivos) no está aquí.

# --- the key
desk-passphrase-ask = Contraseña:
desk-passphrase-choose = Elija una contraseña:
desk-passphrase-again = Otra vez:
desk-passphrase-short = Una contraseña tiene al menos ocho caracteres. No se hizo nada.
desk-passphrase-differs = Las dos no son iguales. No se hizo nada.
desk-passphrase-unread = No se pudo leer ninguna contraseña: { $why }. No se tocó nada.
desk-passphrase-none = Este libro no se abre con contraseña. Dé el archivo de su llave con --key-file.
desk-keyring-none = El llavero de esta computadora no guarda la llave de este libro. No se tocó nada. Dé --key-file ARCHIVO o --passphrase.
desk-no-keyring = No se pudo usar el llavero de esta computadora (“{ $detail }”). No se tocó nada. Dé --key-file ARCHIVO o --passphrase.

# --- keeping the book
desk-new = Hay un libro nuevo en { $folder }. Guarde su llave aparte: sin la llave nadie lo puede leer.
desk-new-there = { $folder } ya contiene un libro. No se tocó nada.
desk-rebuilt-same = Las tablas se hicieron de nuevo a partir de { $lines ->
    [one] una línea
   *[other] { $lines } líneas
 } del libro y son las mismas.
desk-rebuilt-differed = Las tablas se hicieron de nuevo a partir de { $lines ->
    [one] una línea
   *[other] { $lines } líneas
 } del libro. { $count ->
    [one] Una entrada era distinta y ahora está como dice la línea.
   *[other] { $count } entradas eran distintas y ahora están como dicen las líneas.
 }
desk-checked = { $lines ->
    [one] una línea
   *[other] { $lines } líneas
 }, { $records ->
    [one] un registro
   *[other] { $records } registros
 }, { $files ->
    [one] una foto o carta
   *[other] { $files } fotos y cartas
 }
desk-checked-whole = El libro está entero: { $read }.
desk-checked-wrong =
    Leído: { $read }.
    { $problems }
desk-check-damaged = El libro está dañado. Primero copie toda la carpeta a un lugar seguro; después restaure al lado la última copia de seguridad.
desk-backed-up = { $files ->
    [one] Se copió un archivo, { $bytes } bytes, a { $folder }.
   *[other] Se copiaron { $files } archivos, { $bytes } bytes, a { $folder }.
 } La misma llave lo abre.
desk-restored = El libro se restauró en { $folder }. La copia de seguridad no cambió.

# --- looking things up
desk-find-none = No hay nada en el libro que se parezca a “{ $text }”. Pruebe solo con la calle, el dueño o el teléfono.
desk-find-several =
    “{ $text }” puede ser cualquiera de estos. Dé más de la dirección, o el identificador:
    { $list }
desk-found = { $place } · { $owner } · { $visit }
desk-found-no-owner = dueño desconocido
desk-found-no-visit = sin visitas todavía
desk-found-last-visit = última visita: { $on }
desk-no-visit = Todavía no hubo ninguna visita a este lugar.

# --- what leaves the book
desk-kept = Guardado.

# --- taking in a visit file
desk-recorded = Registrado: { $marks ->
    [one] una anotación
   *[other] { $marks } anotaciones
 } y { $photos ->
    [0] ninguna foto
    [one] una foto
   *[other] { $photos } fotos
 }, en { $new ->
    [yes] un lugar nuevo en el libro
   *[no] un lugar que ya estaba en el libro
 }.
desk-record-wrong =
    { $problems }
    No se cambió nada.
desk-record-refused = No se cambió nada.

# --- the demo
desk-demo-letter = La carta: { $file }
desk-demo-book = El libro: { $folder }; su llave: { $key }. Se juega el { $day }: diga --today { $day } a sus órdenes.
desk-demo-other = { $folder } contiene un libro que no es el de la demostración. No se tocó nada. Elija otra carpeta con --out.
desk-demo-broken = La historia de la demostración no tiene sentido (“{ $detail }”). Es un defecto de la demostración; los libros de usted están intactos.

# --- the page
desk-serving =
    Abra { $address }
    Solo esta computadora puede llegar ahí. Se termina con Ctrl-C.
desk-page-not-started = No se pudo abrir la página: { $why }. El libro está intacto.
desk-page-port = No se pudo usar el puerto { $port }: { $why }. Pruebe --port 0, que toma uno libre.
desk-page-random = Esta computadora no dio ningún número al azar (“{ $detail }”), y sin él la página no es segura. El libro está intacto.
desk-page-foreign = Esta página es solo para esta computadora.
desk-page-other-token = Esta no es la dirección que se mostró al principio.
desk-page-no-token = Abra la dirección que Ladderbook mostró al empezar.
desk-page-from-elsewhere = Esto vino de otra página. No se cambió nada.
desk-page-nowhere = No existe esa página. No se cambió nada.
desk-page-broke = Algo falló. Lo que se guardó antes está a salvo. Vuelva atrás y pruebe otra vez.
desk-page-tap-unread = No se pudo leer este toque. No se cambió nada.
desk-page-picture-unread = No se pudo leer esta foto. No se guardó nada.

# --- files
desk-file = No se pudo leer o escribir { $file }: { $why }.
desk-answer-unwritable = La respuesta no se pudo escribir como JSON (“{ $detail }”).

# --- roof and prices
desk-roof-what = Nombre el archivo de un contorno, o una dirección con --at.
desk-roof-not-measured = Nadie midió un techo en esta dirección todavía. Dé su contorno: "ladderbook roof ARCHIVO --at DIRECCIÓN".
desk-structure-none = { $count ->
    [one] En esta dirección hay una construcción.
   *[other] En esta dirección hay { $count } construcciones.
 } Elija una por su número.
desk-worksheet-set = Escriba NOMBRE=VALOR, como repair-lasts=5-8.
desk-worksheet-none = La última visita a esta propiedad no miró ninguna construcción.
desk-prices-none = El libro todavía no tiene lista de precios. Agregue una: "ladderbook prices ARCHIVO".
