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
