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
ladder-stands-well = { $degrees }°: la escalera está bien puesta. Debe sobresalir 3 pies de donde usted baja: necesita al menos { $ladder }. Amárrela.
ladder-move-in = { $degrees }°: muy tendida, puede resbalar. Acerque la base hasta { $base } de la pared.
ladder-move-out = { $degrees }°: muy parada, puede caer hacia atrás. Aleje la base hasta { $base } de la pared.
