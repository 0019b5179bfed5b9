# Stops of the walk, and the kinds of part that are looked at there.
# kind-…: the name on a button. .what it is, for an owner; .look: what to look at there, in one line.
#
# Glossary: one word for one thing, in all the Spanish files. Owner and roofer are addressed as "usted".
#   roof techo · covering cubierta · slope vertiente · pitch pendiente · uphill hacia arriba de la pendiente
#   asphalt shingle teja (de asfalto) · slate pizarra · clay or cement tile teja de barro o cemento · wood shingle teja de madera
#   tab lengüeta · slot ranura · course, row hilera · starter arranque · granules gránulos · glue strip franja adhesiva
#   deck tablero ("la madera bajo la cubierta" where it is explained) · board tabla · panel panel · rafter viga · truss cercha
#   underlayment membrana · ice barrier barrera contra hielo · sheet of a flat roof membrana del techo plano
#   eave alero · rake borde inclinado · overhang voladizo · soffit sofito · fascia fascia · drip edge goterón
#   ridge cumbrera · hip limatesa · valley valle · ridge or hip cap tapa · flat or low-slope roof techo plano · parapet pretil
#   flashing tapajuntas (invariable) · step flashing tapajuntas escalonado · head flashing tapajuntas frontal
#   counter (upper) flashing tapajuntas superior · kick-out desviador · cricket tejadillo
#   pipe boot bota · its collar collarín · hood campana · attic vent respiradero · intake entrada de aire
#   vent of a fuel-burning appliance conducto de gases · flue conducto de humo · exhaust gases · appliance aparato
#   chimney chimenea · its cap sombrerete · crown corona · boxed chimney's chase cajón · its top tapa metálica
#   skylight tragaluz · gutter canaleta · downspout bajante (masculine) · drain desagüe · strainer colador
#   mount, bracket soporte · snow guard paranieves · siding revestimiento (exterior) · attic ático · insulation aislamiento
#   sealant sellador · roof cement, tar cemento asfáltico · smeared embarrado · patch parche · leak gotera
#   tear-off quitar todo y techar de nuevo · re-cover cubierta nueva sobre la vieja · make safe asegurar por ahora

stop-ground = Desde el suelo
stop-eave = Alero
stop-rake = Borde inclinado
stop-field = Superficie de la vertiente
stop-valleys = Valles
stop-pipes = Tubos y respiraderos
stop-skylights = Tragaluces
stop-chimneys = Chimeneas
stop-walls = Paredes y buhardillas
stop-low-slope = Techos planos
stop-ridge = Cumbreras y limatesas
stop-attic = Ático

# --- ground
kind-frame-line = Línea del techo
    .what = Las líneas de la cumbrera y de los aleros, que muestran si la estructura de abajo está derecha.
    .look = Mire a lo largo de la cumbrera y los aleros: hundimientos, inclinaciones y todo lo que pueda caerse.
kind-trees-around = Arbolado cercano
    .what = Los árboles que están sobre el techo o cerca de él.
    .look = Ramas sobre el techo o que lo tocan, madera muerta y lo que cae encima.
kind-service-line = Línea eléctrica de entrada
    .what = El cable eléctrico que llega a la casa y el mástil que lo sostiene.
    .look = Por dónde entra el cable, qué tan bajo cuelga y si su mástil está firme. Solo mire.

# --- eave
kind-eave-edge = Borde del alero
    .what = El borde bajo de una vertiente, por donde sale el agua.
    .look = Cuánto pasan las tejas del borde, y si la madera de abajo está cubierta y firme.
kind-drip-edge = Goterón
    .what = La tira de metal doblado del borde, que hace gotear el agua lejos de la madera.
    .look = El metal doblado del borde: que esté, traslapado, firme y del lado correcto de la membrana.
kind-ice-barrier = Barrera contra hielo
    .what = Una membrana adhesiva bajo las tejas de más abajo, que no deja pasar el agua detenida por el hielo.
    .look = La membrana adhesiva del alero: que esté, bien pegada, y hasta dónde sube.
kind-underlayment = Membrana bajo la cubierta
    .what = La membrana que va entre la cubierta y la madera.
    .look = La membrana bajo la cubierta, donde se ve: entera, traslapada pendiente abajo, tapada.
kind-gutter = Canaleta
    .what = El canal que recoge el agua en el alero.
    .look = Qué hay adentro, cómo cuelga, sus uniones y puntas, y adónde va el agua cuando se llena.
kind-downspout = Bajante
    .what = El tubo que baja el agua de la canaleta.
    .look = Destapado, sujeto, entero, y dónde suelta el agua.
kind-fascia = Tabla de fascia
    .what = La tabla a lo largo del alero, de la que cuelga la canaleta.
    .look = La tabla detrás de la canaleta: firme, pintada, seca en su borde de arriba.
kind-soffit = Sofito
    .what = La parte de abajo del alero, la que se ve mirando hacia arriba.
    .look = La parte de abajo del alero: cerrada, firme, sin manchas, sin nidos.
kind-intake-vent = Entrada de aire
    .what = Las aberturas bajas, casi siempre en el alero, por donde entra aire al ático.
    .look = Las aberturas bajas: que haya bastantes, abiertas, con malla.

# --- rake
kind-rake-edge = Borde inclinado
    .what = El borde del techo que sube en diagonal hasta el pico, a un costado de la casa.
    .look = El borde que sube: tejas firmes y derechas, metal sobre la membrana, tabla sana.
kind-layers = Capas
    .what = Las cubiertas que están una encima de otra.
    .look = Cuente en el borde cortado lo que hay, de arriba hasta el tablero. El arranque no cuenta como capa.

# --- field
kind-covering = Cubierta del techo
    .what = Las tejas, pizarras o láminas de metal que escurren el agua.
    .look = Toda la vertiente con luz baja, luego algunos lugares de cerca: superficie, lengüetas, cómo asienta.
kind-starter = Arranque bajo las tejas
    .what = La hilera escondida debajo de la primera hilera de tejas.
    .look = Levante la primera hilera en el alero: ¿hay arranque, y su adhesivo queda en el borde?
kind-deck = Tablero del techo
    .what = La madera a la que va clavado el techo.
    .look = Siéntalo con el pie o presiónelo con la mano en el alero y alrededor de cada abertura.
kind-fastening = Clavos y adhesivo
    .what = Los clavos y las franjas adhesivas que sujetan las tejas.
    .look = Levante una lengüeta donde se deje doblar: cuántos clavos, dónde están, si el adhesivo pega.
kind-earlier-repair = Reparación anterior
    .what = Un lugar que alguien ya reparó.
    .look = Dónde termina arriba y a los lados, su altura junto a lo demás, lo que dejaron atrás.
kind-attachment = Antena, plato o soporte
    .what = Algo sujeto al techo a través de la cubierta.
    .look = A qué está sujeto, qué cierra sus agujeros al agua, agujeros de otros más viejos.
kind-solar-mount = Soporte de panel solar
    .what = Las patas que sostienen los paneles solares, atornilladas a través de la cubierta.
    .look = Las patas de los paneles: metal traslapado, firmes, sin hojas ni nidos debajo. No toque cables.
kind-snow-guard = Paranieves
    .what = Topes o barras que evitan que la nieve se deslice del techo.
    .look = Si está firme, qué cierra sus agujeros al agua, dónde caería la nieve.

# --- valleys
kind-open-valley = Valle abierto
    .what = El ángulo hacia adentro donde se juntan dos vertientes, con metal a la vista en el medio.
    .look = El metal del medio: limpio, entero, bastante ancho, sin clavos, con las tejas bien cortadas.
kind-closed-valley = Valle cerrado
    .what = El ángulo hacia adentro donde se juntan dos vertientes, cubierto con tejas.
    .look = La línea donde se juntan las tejas: limpia, entera, pegada al tablero, recortada del lado correcto.

# --- pipes
kind-pipe-boot = Bota de tubo
    .what = La pieza que sella un tubo de plomería donde sale del techo.
    .look = El collarín alrededor del tubo, la base bajo las tejas, sus clavos. Mire todo alrededor.
kind-fuel-vent = Conducto de gases de combustión
    .what = El tubo que saca por el techo los gases de la calefacción, el calentador de agua o la estufa.
    .look = De qué aparato y con qué combustible, su altura, remate, uniones, óxido e inclinación. Solo mire.
kind-exhaust-hood = Campana de extractor o secadora
    .what = La campana sobre el ducto de un extractor de baño, de cocina o de la secadora.
    .look = ¿Se mueve la tapa, está limpia la malla, va la base traslapada como una teja?

# --- skylights
kind-skylight = Tragaluz
    .what = La ventana del techo: su vidrio y su marco.
    .look = Vidrio o domo, sus empaques y marco, las ranuras por donde suelta su propia agua.
kind-skylight-flashing = Tapajuntas del tragaluz
    .what = El metal doblado que lleva el agua alrededor del tragaluz.
    .look = Arriba, lados y abajo: metal escalonado, firme, sin embarrar, sin hojas encima.

# --- chimneys
kind-masonry-chimney = Chimenea de ladrillo o piedra
    .what = La chimenea de ladrillo o piedra por encima del techo.
    .look = Corona, sombrerete, juntas, ladrillos, inclinación. Las manchas blancas hablan de agua adentro.
kind-prefab-chimney = Chimenea prefabricada
    .what = Un tubo de chimenea de metal, casi siempre dentro de un cajón con revestimiento y tapa metálica.
    .look = La tapa metálica de arriba, el tubo y su collarín, el cajón que lo rodea.
kind-chimney-flashing = Tapajuntas de la chimenea
    .what = El metal doblado que lleva el agua alrededor de la chimenea.
    .look = Abajo, lados, atrás: dos capas de metal, la de arriba metida en la junta.
kind-cricket = Tejadillo tras la chimenea
    .what = Un techito de dos caídas detrás de la chimenea, que reparte el agua a los lados.
    .look = El techito detrás de una chimenea ancha: que esté, con caída, limpio, con las uniones enteras.

# --- walls
kind-sidewall-flashing = Tapajuntas lateral de pared
    .what = El metal doblado donde el costado de una vertiente topa con una pared.
    .look = Una pieza doblada en cada hilera, detrás del revestimiento, y espacio debajo de este.
kind-headwall-flashing = Tapajuntas frontal de pared
    .what = El metal doblado donde la parte alta de una vertiente topa con una pared.
    .look = Donde la vertiente termina contra una pared: metal que suba y baje lo suficiente, firme, sin clavos.
kind-kickout = Desviador de agua
    .what = La pieza doblada que aparta el agua donde un alero termina en una pared.
    .look = Donde un alero termina contra una pared: ¿va el agua hacia la canaleta?
kind-wall-above = Pared sobre el techo
    .what = La pared que sube por encima del techo, con sus ventanas.
    .look = Revestimiento, estuco, ventanas y molduras sobre el techo: juntas abiertas, pudrición, piezas sueltas.

# --- low slope
kind-low-slope-field = Techo plano
    .what = Un techo de tan poca pendiente que se cubre con una membrana.
    .look = Superficie, uniones, ampollas, y dónde queda agua dos días después de llover.
kind-low-slope-join = Unión con el techo plano
    .what = La unión de un techo plano con un techo inclinado o con una pared.
    .look = Donde el techo plano topa con el inclinado o con una pared: hasta dónde sube, qué va sobre qué.
kind-low-slope-edge = Borde del techo plano
    .what = El borde de un techo plano, o el pretil, la pared baja que lo rodea.
    .look = El metal del borde y los remates del pretil: firmes, unidos, sin nada levantado.
kind-roof-drain = Desagüe o salida lateral
    .what = La salida por donde desagua un techo plano.
    .look = Destapado, con su colador, bien apretado, y el punto más bajo a su alrededor.

# --- ridge
kind-ridge-cap = Tapas de cumbrera
    .what = Las tejas que cubren la línea más alta del techo.
    .look = Grietas en el doblez, tapas sueltas o faltantes, clavos a la vista, hacia dónde traslapan.
kind-hip-cap = Tapas de limatesa
    .what = Las tejas que cubren la limatesa, el ángulo hacia afuera donde se juntan dos vertientes.
    .look = Grietas en el doblez, tapas sueltas o faltantes, la de más abajo y la unión de arriba.
kind-ridge-vent = Respiradero de cumbrera
    .what = Un respiradero a lo largo de la cumbrera, que deja salir el aire del ático.
    .look = Firme, entero, con las puntas cerradas; desde adentro, si está cortada la ranura de abajo.
kind-roof-vent = Respiradero de techo
    .what = Un respiradero en la vertiente, que deja salir el aire del ático.
    .look = Campana, malla y base; traslapado como una teja; con el agujero de abajo de verdad cortado.

# --- attic
kind-attic-deck = Tablero visto desde adentro
    .what = La parte de abajo del techo, vista desde el ático.
    .look = Con una luz: madera mojada u oscura, luz del día, puntas de clavo oxidadas, cada tubo y chimenea.
kind-attic-frame = Vigas y cerchas
    .what = La estructura de madera que sostiene el techo.
    .look = Grietas, cortes, pudrición, uniones que se abren, cumbrera hundida.
kind-attic-air = Aire y aislamiento del ático
    .what = El paso del aire por el ático, y el aislamiento de su piso.
    .look = Pasos de aire en el alero, ductos que terminan adentro, aislamiento mojado. No toque granos grises o dorados.
