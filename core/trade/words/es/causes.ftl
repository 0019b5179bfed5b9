# The cause behind defects, as a phrase that stands in a sentence: "la causa es …".

# --- age and weather
cause-weathering = una cubierta gastada por el sol y el clima
cause-part-worn = una pieza que se gastó
cause-wind = daño del viento
cause-hail = daño del granizo
cause-blistering = ampollas en las tejas
cause-broken = una rotura
cause-tile-or-slate-broken = pizarras o tejas de barro o cemento rotas
cause-rot = pudrición
cause-ridge-mortar = mortero roto bajo las tejas de la cumbrera
cause-metal-moves = metal que se mueve con el calor y el frío
cause-paint-failed = pintura que ya no protege la madera

# --- fastening
cause-nailing = tejas mal clavadas
cause-nails-backed-out = clavos que se salieron
cause-nails-corroded = clavos oxidados
cause-nails-in-the-weather = clavos donde corre el agua
cause-screw-washers-perished = tornillos con los anillos de goma vencidos
cause-seal-not-bonded = tejas que no están pegadas
cause-fixing-failed = pizarras o tejas cuyos clavos o ganchos fallaron
cause-fastening-let-go = una sujeción que se soltó

# --- laying
cause-laid-wrong = tejas mal puestas
cause-does-not-lap = un traslape que mete el agua
cause-edge-reach = tejas que terminan muy cortas o salen de más
cause-edge-metal-missing = un borde sin su metal
cause-starter = una hilera de arranque que falta o está mal puesta
cause-heights-differ = secciones de distinta altura
cause-slope-too-low = muy poca pendiente para esa cubierta
cause-coated-over = un recubrimiento encima de las tejas
cause-smeared-over = cemento asfáltico embarrado sobre una falla
cause-layers = capas puestas una sobre otra
cause-part-missing = una pieza que falta
cause-stopgap-left = un arreglo provisional que se quedó
cause-leftovers = restos de trabajos anteriores
cause-holes-left = agujeros que quedaron abiertos

# --- deck and sheets
cause-deck-wet = agua en el tablero
cause-water-once = agua que entró alguna vez
cause-water-comes-in = agua que entra por algún lugar más arriba
cause-deck-unfit = un tablero que no sirve para su cubierta
cause-base-moves = una base que se movió
cause-membrane-left-bare = una membrana que quedó a la intemperie
cause-membrane-single = una sola membrana donde hacen falta dos
cause-ice-barrier = una barrera contra hielo que falta o quedó corta
cause-ice-dams = hielo que se acumula en el alero
cause-no-fall = agua que no tiene por dónde correr

# --- growth and leaves
cause-shade-and-damp = sombra y humedad
cause-debris = hojas y tierra
cause-leaf-fall = árboles sobre el techo
cause-branches = ramas sobre el techo
cause-animals = animales

# --- gutters
cause-gutter-joint = una unión de canaleta abierta
cause-gutter-hangs-wrong = una canaleta mal colgada
cause-gutter-size = una canaleta muy chica para su techo
cause-gutter-cover = un cubrecanaleta que levanta las tejas
cause-downspout-outlet = un bajante que suelta el agua donde no debe

# --- valleys
cause-valley-worn = un forro de valle gastado
cause-valley-laid-wrong = un valle mal hecho

# --- pipes and vents
cause-boot-perished = un collarín de tubo resecado por el sol
cause-boot-fit = una bota que no ajusta en su tubo
cause-vent-height = un conducto o una chimenea que termina muy abajo
cause-vent-corroded = un conducto que se oxida
cause-vent-collar = un collarín de lluvia abierto
cause-vent-clearance = un conducto caliente demasiado cerca de la madera
cause-vent-kind = un conducto del tipo equivocado
cause-vent-unused = un conducto que ya no se usa
cause-vent-blocked = un conducto tapado

# --- chimneys
cause-masonry-weathered = mortero gastado por el clima
cause-masonry-soaked = ladrillo que absorbe agua
cause-crown-cracked = una corona de chimenea agrietada
cause-chimney-cap = un conducto de humo sin sombrerete firme
cause-chimney-foot = una chimenea que ya no está firme
cause-flue-liner = un forro de conducto de humo dañado
cause-chase-cover = una tapa de chimenea que gotea o guarda agua

# --- flashings and walls
cause-flashing-worn = un tapajuntas gastado
cause-flashing-missing = un tapajuntas que falta
cause-sealant-in-place-of-flashing = sellador en lugar de tapajuntas
cause-sealant-line-aged = una línea de sellador que ya toca renovar
cause-counter-flashing = un tapajuntas superior que no cubre al de abajo
cause-kickout = agua que no se desvía al final del alero
cause-cricket = una chimenea sin un tejadillo adecuado
cause-wall-over-flashing = una pared cerrada sobre su tapajuntas
cause-siding-on-roof = revestimiento de pared que toca el techo
cause-wall-lets-water-in = una pared que deja entrar agua

# --- skylights
cause-skylight-set-wrong = un tragaluz mal puesto en el techo
cause-weeps-closed = ranuras de drenaje del tragaluz cerradas

# --- low slopes
cause-seam-open = una unión abierta
cause-low-slope-blisters = aire o humedad bajo la membrana del techo plano
cause-low-slope-edge = un borde de techo plano suelto o abierto

# --- air
cause-air-in = muy poco aire desde abajo
cause-air-out = muy poca salida de aire arriba
cause-air-path-clogged = un paso de aire tapado
cause-air-short-circuit = respiraderos que se jalan el aire entre sí
cause-intake-closed = entradas de aire del alero cerradas
cause-damp-air = aire húmedo de la casa
cause-duct-ends-inside = un ducto que termina en el ático
cause-vent-blows-in = un respiradero por donde el viento mete lluvia o nieve
cause-openings-at-soffit = aberturas en el sofito

# --- what is fastened to the roof
cause-cables-loose = cables sueltos
cause-panels-outlive-roof = paneles sobre un techo al que le quedan menos años que a ellos
cause-solar-wiring = cables dañados

# --- frame, service, hazards
cause-frame-gives-way = una estructura que cede
cause-service-line = la entrada eléctrica
cause-suspect-fibers = material que puede tener asbesto
cause-suspect-vermiculite = aislamiento que puede ser vermiculita
