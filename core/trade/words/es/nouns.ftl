# Names of conditions, courses, trades, questions and the other nouns.
# A name is written as it stands on a button; in the middle of a sentence its first letter is made small.
# Conditions, what became of a part and the like are said of parts of either gender and number: they are worded so that
# nothing has to agree ("En buen estado", "Con parche", "Pieza nueva", never "Buena", "Parchado", "Se cambió").

# --- rungs of condition
rung-sound = En buen estado
    .what = Hace su trabajo y lo seguirá haciendo.
rung-ageing = Con desgaste
    .what = Tiene desgaste, pero todavía hace su trabajo.
rung-failing = Con fallas
    .what = A veces deja entrar agua, o pronto la dejará entrar.
rung-failed = Falla total
    .what = Ya no hace su trabajo.

condition-gone = Ya no hay
condition-not-seen = Sin ver

# --- how it was seen
seen-touched = Con la mano
    .what = Pudimos tocar esta parte con la mano.
seen-near = De cerca
    .what = Vimos esta parte de cerca, a pocos pies.
seen-zoomed = Con lente
    .what = Vimos esta parte con lente, desde la escalera o con una pértiga.
seen-afar = Desde el suelo
    .what = Vimos esta parte solo desde el suelo.
seen-told = Nos lo contaron
    .what = Alguien nos lo contó; nosotros no vimos esta parte.
seen-inferred = Por deducción
    .what = Lo deducimos de otra cosa; no vimos esta parte.

# --- why it was not seen
not-seen-hidden = Debajo de otra cosa
    .what = quedaba debajo de otra cosa y no se podía juzgar
not-seen-unsafe = No era seguro llegar
    .what = no había manera segura de llegar
not-seen-too-steep = Demasiado empinado
    .what = el techo era demasiado empinado para llegar hasta ahí
not-seen-wet = Mojado o con hielo
    .what = el techo estaba mojado, con escarcha o con nieve
not-seen-locked = Bajo llave
    .what = quedaba detrás de un portón, una puerta o una trampilla con llave
not-seen-out-of-reach = Fuera de alcance
    .what = quedaba fuera del alcance de la escalera y del lente
not-seen-too-cold-or-hot = Mucho frío o calor para levantar
    .what = hacía demasiado frío o demasiado calor para levantar una teja sin romperla
not-seen-outside-scope = No era parte de esta visita
    .what = no era parte de lo que se iba a revisar en esta visita
not-seen-not-reached = No se alcanzó a ver
    .what = la visita terminó antes de llegar ahí

# --- how far a defect reaches
extent-spot = En un solo lugar
extent-several = En dos o tres lugares
extent-broad = En cuatro lugares o más, o 1/4 de la vertiente

# --- families of defects
family-split = Roto o gastado
    .what = Agrietado, rasgado, gastado hasta el fondo, oxidado.
family-loose = Suelto
    .what = Levantado, corrido, colgando, sin sujetar.
family-missing = Faltante
    .what = Se perdió, nunca se puso o quedó corto.
family-misbuilt = Mal hecho
    .what = Mal traslape, mal lugar, mal material.
family-smothered = Tapado
    .what = Obstruido, con plantas encima, embarrado o cubierto.
family-wet = Mojado
    .what = Manchado, húmedo, blando, podrido.

# --- when
when-now = Ahora
    .what = cuanto antes, antes de la próxima lluvia
when-this-season = Esta temporada
    .what = antes de que termine la temporada
when-later = Más adelante
    .what = todavía no

# --- courses
course-leave = Dejar como está
    .what = Por ahora no hace falta hacer nada; el techo se vuelve a revisar más adelante.
course-maintain = Mantenimiento
    .what = Trabajos pequeños que conservan bueno un techo bueno.
course-make-safe = Asegurar por ahora
    .what = Una protección o un sellado que aguanta unas semanas, hasta que se haga bien el trabajo.
course-repair = Reparación
    .what = Los lugares malos se arreglan donde están; lo demás se queda.
course-recover = Cubierta nueva sobre la vieja
    .what = Se pone una cubierta nueva encima de la vieja, que se queda.
course-tear-off = Quitar todo y techar de nuevo
    .what = Se quita todo hasta llegar al tablero y se techa de nuevo.
course-refer = Llamar a otro especialista
    .what = Es un trabajo que le toca a otro oficio.
course-look-first = Revisar primero
    .what = Lo que se vio no alcanza más que para pedir una revisión de cerca.

# --- what of a course is refused
narrowed-sealant-alone = Una reparación hecha solo con sellador
narrowed-old-flashings = Una cubierta nueva sobre la vieja que deje los tapajuntas viejos
narrowed-beyond-making-safe = Toda reparación que vaya más allá de asegurar el techo por ahora

# --- trades that a roofer refers to. .who stands in a sentence
trade-mason = Albañil
    .who = un albañil
trade-fuel-vent = Técnico en gas o calefacción
    .who = un técnico en gas o calefacción con licencia
trade-electrician = Electricista
    .who = un electricista con licencia o la compañía de luz
trade-structural = Experto en estructuras
    .who = un ingeniero estructural o un contratista de estructuras de madera
trade-asbestos = Experto en asbesto
    .who = un inspector de asbesto con licencia
trade-plumber = Plomero
    .who = un plomero
trade-arborist = Servicio de poda
    .who = un servicio de poda de árboles
trade-wildlife = Control de animales silvestres
    .who = un servicio de control de animales silvestres con licencia
trade-siding = Paredes exteriores o ventanas
    .who = un contratista de revestimiento exterior, estuco o ventanas

# --- questions of fact. .yes and .no state the answer, .ask says where to look or whom to ask
question-water-comes-in = ¿Está entrando agua ahora?
    .yes = está entrando agua ahora
    .no = no está entrando agua
    .ask = Vea el tablero por debajo con una luz, mientras llueve o poco después
question-open-to-rain = ¿Hay algo abierto por donde entrará la próxima lluvia?
    .yes = hay algo abierto por donde entrará la próxima lluvia
    .no = nada está abierto a la próxima lluvia
    .ask = Revise cada vertiente y alrededor de cada abertura: huecos, agujeros y piezas faltantes
question-may-fall = ¿Hay algo que pueda caerse?
    .yes = hay algo que puede caerse
    .no = nada está por caerse
    .ask = Dé la vuelta a la casa y mire hacia arriba: chimenea, canaletas, pizarras y tejas sueltas, ramas
question-covering-done = ¿La cubierta está fallando por todas partes?
    .yes = la cubierta está fallando por todas partes
    .no = la cubierta no está fallando por todas partes
    .ask = Vea la vertiente entera, no solo el peor lugar
question-brittle = ¿Se quiebran las tejas al levantarlas?
    .yes = las tejas se quiebran al levantarlas
    .no = las tejas todavía se doblan al levantarlas
    .ask = Levante una teja con la mano en dos o tres lugares, ni con helada ni con mucho calor
question-not-flat = ¿La cubierta vieja está demasiado dispareja para techar encima?
    .yes = la cubierta vieja está demasiado dispareja para techar encima
    .no = la cubierta vieja está bastante pareja para techar encima
    .ask = Mire a lo largo de la vertiente con luz baja: bordes enroscados, lomos y escalones
question-two-layers = ¿Hay dos capas de cubierta o más?
    .yes = hay dos capas de cubierta o más
    .no = hay una sola capa de cubierta
    .ask = Cuente las capas en el borde inclinado o en un borde cortado de cada vertiente
question-three-layers = ¿Hay tres capas de cubierta o más?
    .yes = hay tres capas de cubierta o más
    .no = no hay más de dos capas de cubierta
    .ask = Cuente las capas en el borde inclinado o en un borde cortado de cada vertiente
question-deck-wet = ¿El tablero está mojado o blando en algún lugar?
    .yes = el tablero está mojado o blando en algún lugar
    .no = el tablero está seco y firme
    .ask = Presione el tablero en el alero, en los valles y alrededor de cada abertura, o véalo desde el ático
question-deck-wet-broad = ¿El tablero está mojado o blando en más de un punto?
    .yes = el tablero está mojado o blando en más de un punto
    .no = el tablero está seco, salvo si acaso un punto
    .ask = Palpe hasta dónde llega la madera blanda, o vea todo el tablero por debajo desde el ático
question-many-places = ¿Hay muchos lugares malos en una misma vertiente?
    .yes = hay muchos lugares malos separados en una misma vertiente
    .no = ninguna vertiente tiene muchos lugares malos separados
    .ask = Revise cada vertiente del alero a la cumbrera y cuente los lugares que necesitan trabajo
question-too-low = ¿La vertiente tiene muy poca pendiente para su cubierta?
    .yes = la vertiente tiene muy poca pendiente para su cubierta
    .no = la vertiente tiene bastante pendiente para su cubierta
    .ask = Mida la pendiente de cada vertiente
question-rebuilt-step = ¿Alguna sección rehecha detiene el agua o forma un escalón?
    .yes = una sección rehecha quedó a otra altura y detiene el agua o forma un escalón
    .no = ninguna sección rehecha detiene el agua ni forma un escalón
    .ask = Mire de lado a lo largo de la vertiente: busque escalones donde se rehízo una sección
question-patched-often = ¿Ya se parchó la misma causa tantas veces como parchamos?
    .yes = la misma causa ya se parchó tantas veces como parchamos
    .no = la misma causa no se ha parchado tantas veces
    .ask = Pregúntele al dueño qué se ha parchado aquí y cuándo
question-unmatchable = ¿Ya no se consigue una teja que empareje?
    .yes = ya no se consigue una teja que empareje en tamaño y grueso
    .no = se consigue una teja que empareje en tamaño y grueso
    .ask = Mida cuánto se ve de cada teja y qué grueso tiene, y pregunte al proveedor
question-barred-base = ¿La cubierta de arriba es de las que no se pueden cubrir?
    .yes = la cubierta de arriba es de las que no se pueden cubrir con otra
    .no = la cubierta de arriba es de las que se pueden cubrir con otra
    .ask = Vea de qué es la cubierta de arriba: pizarra, teja de barro o cemento, o asbesto-cemento
question-flashing-stays = ¿Hay algún tapajuntas o borde que no se pueda renovar?
    .yes = algún tapajuntas o borde no se puede renovar sin abrir la pared
    .no = todos los tapajuntas y bordes se pueden renovar
    .ask = Vea cada pared, chimenea y borde: ¿se puede sacar el metal desde afuera?
question-frame-weak = ¿Puede ser muy débil la estructura para otra capa?
    .yes = la estructura tal vez no aguante otra capa
    .no = la estructura no muestra señales de que no aguante otra capa
    .ask = Vea las vigas y la cumbrera desde el ático y, si hay duda, pregunte a un ingeniero
question-maker-refuses = ¿El fabricante de la cubierta nueva rechaza ponerla sobre la vieja?
    .yes = el fabricante de la cubierta nueva no acepta ponerla sobre la vieja
    .no = el fabricante de la cubierta nueva acepta ponerla sobre la vieja
    .ask = Pregunte al fabricante de la cubierta nueva o lea sus instrucciones impresas
question-asbestos = ¿Hay algo que pueda tener asbesto?
    .yes = hay material que puede tener asbesto y no se debe tocar
    .no = no se vio nada que pueda tener asbesto
    .ask = Vea sin tocar los conductos de humo, las tejas viejas y los tubos viejos, y mande a analizar lo dudoso
question-vermiculite = ¿Hay aislamiento suelto que pueda ser vermiculita?
    .yes = hay aislamiento suelto que puede ser vermiculita y no se debe tocar
    .no = no se vio aislamiento que pueda ser vermiculita
    .ask = Busque desde la trampilla, sin entrar, granos como piedritas grises, cafés o doradas

# --- answers
answer-yes = Sí
answer-no = No
answer-unknown = No sé

# --- structures. .the stands in a sentence
structure-house = Casa
    .the = la casa
structure-attached-garage = Garaje unido a la casa
    .the = el garaje unido a la casa
structure-detached-garage = Garaje separado
    .the = el garaje separado
structure-porch = Porche
    .the = el porche
structure-addition = Ampliación
    .the = la ampliación
structure-shed = Cobertizo
    .the = el cobertizo

# --- sides, named from the street. .slope names the slope
side-front = Al frente
    .slope = vertiente del frente
side-left = A la izquierda
    .slope = vertiente izquierda
side-rear = Atrás
    .slope = vertiente de atrás
side-right = A la derecha
    .slope = vertiente derecha

# --- people
role-owner = Dueño
role-tenant = Quien alquila
role-manager = Administrador
role-agent = Compra o venta
role-former-owner = Dueño anterior

# --- what a visit sets out to do
scope-request-only = Solo lo que se pidió
    .what = solo la parte por la que nos llamaron
scope-quick-look = Vistazo rápido
    .what = las partes que más gotean
scope-whole-roof = Todo el techo
    .what = todas las partes del techo, y el ático

# --- when water shows inside
wet-when-any-rain = Con cualquier lluvia
    .what = El agua que aparece con cualquier lluvia entra por un lugar abierto.
wet-when-driven-rain = Con lluvia y viento
    .what = El agua que aparece solo con viento suele entrar por una pared, un tapajuntas o un borde suelto.
wet-when-long-rain = Con lluvia larga
    .what = El agua que aparece solo con lluvia larga suele represarse detrás de hojas o en un techo de poca pendiente.
wet-when-thaw = Al derretirse la nieve o el hielo
    .what = El agua que aparece con el deshielo suele venir de hielo que la detiene en el alero.
wet-when-dry-cold = Con frío seco
    .what = El agua que aparece con frío seco suele venir del aire húmedo de la casa, no de la lluvia.

# --- weather
sky-dry = Seco
    .what = Está seco y se puede pisar donde la pendiente lo permite.
sky-wet = Mojado
    .what = Está muy resbaloso para pisarlo. Mire desde la escalera o desde el suelo.
sky-frozen = Escarcha, nieve o hielo
    .what = Nadie se sube. Mire desde el suelo.
sky-thunder = Truenos
    .what = Baje de la escalera. Espere a que pasen 30 minutos desde el último trueno.

# --- before the ladder is climbed. .ask what to check, .stop what is wrong where it does not hold
safety-ladder-stands = Escalera bien puesta
    .ask = Suelo firme y parejo, pie afuera un cuarto del largo de trabajo, tres pies por encima del borde, amarrada.
    .stop = no se pudo poner la escalera con seguridad
safety-lines-clear = Lejos de cables de luz
    .ask = Ningún cable vivo a menos de diez pies de la escalera o del paso, y ninguna escalera de metal cerca de un cable.
    .stop = hay un cable de luz demasiado cerca
safety-weather-holds = El tiempo lo permite
    .ask = Ningún trueno en los últimos 30 minutos, ningún viento que mueva la escalera.
    .stop = el tiempo no lo permitió
safety-surface-dry = El techo está seco
    .ask = Sin rocío, lluvia, escarcha, nieve, musgo ni gránulos sueltos donde usted pisaría.
    .stop = el techo estaba muy resbaloso para pisarlo
safety-pitch-safe = La pendiente es segura
    .ask = No más empinado de lo que permite el equipo a la mano. Desde 6 pies de altura, amárrese.
    .stop = el techo era demasiado empinado para el equipo a la mano
safety-deck-bears = El tablero aguanta
    .ask = Presiónelo en el alero antes de pisarlo. Si está blando o hundido, no suba.
    .stop = el tablero tal vez no aguante a una persona
safety-no-suspect-fibres = Sin fibras sospechosas
    .ask = Sin asbesto-cemento ni vermiculita donde usted pisaría, taladraría o metería la mano.
    .stop = hay en el paso material que puede tener asbesto

# --- how a structure was reached
reach-on-roof = Sobre el techo
    .what = Estuvimos sobre el techo.
reach-ladder = Desde la escalera
    .what = Miramos desde una escalera en el alero.
reach-pole = Cámara en pértiga
    .what = Miramos con una cámara en una pértiga.
reach-ground = Desde el suelo
    .what = Miramos solo desde el suelo.
reach-inside = Desde adentro
    .what = Miramos solo desde adentro.
reach-not-reached = No se llegó
    .what = No llegamos hasta ahí.

# --- whose work
by-us = Por nosotros
by-not-us = No por nosotros
by-unknown = No se sabe por quién

# --- what was done, where no remedy is named
did-replaced = Se puso una pieza nueva
did-covered = Se puso otra cosa encima
did-taken-down = Retiro de la pieza
did-something = Se hizo algo, no se sabe qué

# --- how the work is known
evidence-seen = Se ve en el techo
evidence-told = Nos lo contaron
evidence-papers = Por papeles
evidence-own-record = Por nuestro propio registro

# --- what became of a part
became-gone = Ya no hay
    .what = Esta parte se quitó, y no hay nada en su lugar.
became-hidden = Debajo de otra cosa
    .what = Esta parte quedó debajo de otra cosa y no se puede juzgar.
became-not-seen-again = Sin volver a ver
    .what = Esta vez no se vio esta parte. Lo que se encontró antes sigue en pie.
became-replaced = Pieza nueva
    .what = Ahora hay una pieza nueva en su lugar.
became-cured = Problema resuelto
    .what = Se corrigió la causa, y ahora esta parte está en buen estado.
became-patched = Con parche
    .what = Se hizo algo, pero la causa sigue ahí.
became-worse = Peor
    .what = Esta parte ha empeorado.
became-still-open = Sin resolver
    .what = Esta parte está como estaba; no se hizo nada.
became-better = Mejor
    .what = Esta parte se ve mejor, y no se sabe de ningún trabajo.
became-quiet = Bien antes y ahora
    .what = Esta parte estaba en buen estado y lo sigue estando.
became-new = Por primera vez
    .what = Esta parte no estaba antes en el registro.

# --- coverings
covering-asphalt-strip = Teja de asfalto de tres lengüetas
covering-asphalt-laminated = Teja de asfalto laminada
covering-asphalt-roll = Rollo de asfalto
covering-wood-shingle = Teja de madera aserrada
covering-wood-shake = Teja de madera rajada
covering-slate = Pizarra
covering-clay-tile = Teja de barro
covering-cement-tile = Teja de cemento o concreto
covering-asbestos-cement = Teja de asbesto-cemento
covering-metal-seam = Metal de junta alzada
covering-metal-lapped = Paneles de metal traslapados
covering-built-up = Capas de fieltro y asfalto
covering-modified-bitumen = Membrana de asfalto modificado
covering-single-ply = Membrana de una sola capa
covering-unclear = No está claro qué es

layer-membrane = Membrana o barrera contra hielo
layer-sheathing = Tablero sobre cubierta más vieja
layer-deck = Tablero

# --- how the layers were learned
learned-cut-edge = Contadas en un borde cortado
learned-rake-edge = Contadas en el borde inclinado
learned-lifted = Se levantó una teja
learned-drilled = Se taladró o se abrió
learned-owners-word = Lo dijo el dueño

# --- measures. .how to take it
measure-width = Ancho
    .how = De lado a lado, a nivel, paralelo a la cumbrera.
measure-height = Altura sobre el techo
    .how = Derecho hacia arriba desde donde sale del techo, por el lado de arriba de la pendiente.
measure-distance = Distancia a nivel
    .how = A nivel, hasta la cumbrera, o hasta la pared o la cosa que queda más alta.
measure-drop = Desnivel
    .how = Derecho hacia abajo, desde la cumbrera o la cosa más alta hasta donde esta parte sale del techo.
measure-exposure = Exposición
    .how = De un borde de abajo al siguiente, a lo largo de la pendiente.
measure-run = Largo por el borde
    .how = A lo largo del borde.
measure-diameter = Diámetro
    .how = De lado a lado por fuera.
measure-thickness = Grueso
    .how = A través del metal o de la membrana.
measure-overhang = Voladizo
    .how = A nivel, desde la cara de afuera de la pared hasta el borde del alero.

# --- how a number was got
got-tape = Con cinta métrica
got-paced = Contando pasos
got-picture = De una foto
got-footprint = De un plano o contorno
got-inclination = Con el nivel del teléfono
got-eye = A ojo
got-told = Nos lo contaron

# --- what came of a letter
came-accepted = Aceptó; falta hacer el trabajo
came-done-by-us = Lo hicimos nosotros
came-done-by-others = Lo hicieron otros
came-declined = Dijo que no
came-no-answer = Sin respuesta

# --- why to come back
because-ask-for-answer = Pedir una respuesta
because-cover-runs-out = Se vence la protección temporal
because-look-promised = Se prometió una revisión
because-not-seen-yet = Falta ver algo

# --- lines of the doorstep
tells-danger = Peligro
tells-request = Lo que piden ahora
tells-patched = Parches anteriores
tells-offered = Ofertas anteriores
tells-not-seen = Sin ver nunca
tells-work-since = Trabajo desde entonces
tells-due = Pendiente
tells-corrected = Corrección
tells-callback = Trabajo nuestro que falló
