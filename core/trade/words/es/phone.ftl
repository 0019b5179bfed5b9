# What a phone says beside its screens.

phone-opening = Abriendo el libro
phone-again = Intentar de nuevo
phone-dictate = Dictar
phone-why-camera = La cámara toma las fotos del techo. Se quedan en su libro.
phone-why-position = Su ubicación encuentra la dirección. Solo se pide cuando usted toca aquí.
phone-why-microphone = El micrófono le deja decir las palabras en vez de escribirlas.
phone-no-camera = La cámara no está permitida. Todo lo demás funciona; para tomar fotos, permítala en los ajustes del teléfono.
phone-no-dictation = No se entendió nada, o el micrófono no está permitido. Puede escribirlo.
phone-go-on = Seguir
phone-leave = Dejarlo
phone-give-up = Detener
phone-lay = Apoyar el teléfono en la vertiente
phone-share = Compartir
phone-dusk = Noche
phone-day = Día
phone-letter-draw = Dibujando la carta
phone-letter-keep = Guardando la carta

# The names of files that are handed on, without their ending.
phone-letter-file = Carta del techo
phone-calendar-file = Avisos de techos

phone-port-camera = la cámara
phone-port-position = la ubicación
phone-port-level = el sensor de inclinación
phone-port-key = el almacén de llaves del teléfono
phone-port-share = otro programa

phone-not-allowed = Ladderbook no puede usar { $port }. Permítalo en los ajustes del teléfono y toque otra vez. No se perdió nada.
phone-failed = El teléfono no pudo usar { $port } ({ $reason }). No se perdió nada; toque otra vez.
phone-broke = Ladderbook se rompió a mitad de ese toque. Nada quedó a medias: lo guardado antes sigue en pie. Toque otra vez.
phone-nowhere = Esa página ya no está.
phone-no-key = La llave de este libro no está en este teléfono, y sin ella nada se puede leer. Traiga la llave de donde guarda su copia.
phone-clock = El reloj del teléfono muestra un día que no está en ningún calendario. Ajústelo y toque otra vez. No se perdió nada.
phone-unread = No se pudo leer la foto ({ $why }). Tómela otra vez.
phone-unwritten = El teléfono no tiene espacio para el archivo que se iba a mostrar ({ $why }). Libere espacio y toque otra vez. El libro está completo.
