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
