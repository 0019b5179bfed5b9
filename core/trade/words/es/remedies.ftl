# What can be done. remedy-…: the name on a button. .what is done.

# --- upkeep
remedy-sealant = Sellador
    .what = Se limpia la grieta o el hueco y se llena con sellador para techos.
remedy-seal-nail-heads = Sellado de cabezas de clavo
    .what = Cada cabeza de clavo o tornillo a la vista se aprieta y se cubre con sellador.
remedy-hand-seal-tabs = Pegado de lengüetas a mano
    .what = Cada borde suelto se levanta y se asienta sobre puntos de cemento asfáltico.
remedy-refasten-edge = Sujeción del borde
    .what = El metal suelto del borde y las tejas que lleva encima se enderezan y se sujetan de nuevo.
remedy-trim-edge = Recorte del borde
    .what = Las tejas se cortan en línea recta para que pasen del metal de 1/4 a 3/8 de pulgada.
remedy-clean-gutter = Limpieza de canaleta o desagüe
    .what = La canaleta, el bajante o el desagüe se vacía y se enjuaga hasta que corra el agua.
remedy-reseal-gutter = Sellado de unión de canaleta
    .what = La unión o la punta se desarma, se limpia, se sella y se vuelve a cerrar.
remedy-clean-valley = Limpieza del valle
    .what = Todo lo que hay en el valle se saca a mano.
remedy-clear-debris = Retiro de hojas y tierra
    .what = Lo que hay sobre el techo se quita a mano, sin lavadora a presión.
remedy-remove-moss = Retiro de musgo o algas
    .what = Se les aplica un tratamiento, se dejan morir y se cepillan pendiente abajo con cepillo suave, sin lavadora a presión.
remedy-clean-hood = Limpieza de campana y ducto
    .what = Se saca pelusa, nidos y pintura hasta que la tapa se mueva libremente.
remedy-clear-vent = Limpieza del respiradero
    .what = El respiradero se limpia o se le aparta el aislamiento hasta que pase el aire.
remedy-clear-intake = Apertura del paso de aire del alero
    .what = Se limpian las aberturas, y unos separadores mantienen el aislamiento lejos del tablero.
remedy-new-strainer = Colador nuevo
    .what = Se pone un colador nuevo sobre el desagüe.
remedy-new-vent-screen = Malla nueva en el respiradero
    .what = Se sujeta una malla nueva en el respiradero.
remedy-paint-fascia = Pintura
    .what = La madera se prepara y se pinta. En una casa anterior a 1978, primero se analiza si la pintura vieja tiene plomo.
remedy-tidy-cables = Sujeción de cables
    .what = Los cables se llevan por el borde y se sujetan ahí con grapas, sin hacer agujeros en el techo.
remedy-refasten-downspout = Sujeción del bajante
    .what = El bajante se vuelve a armar y se sujeta a la pared.
remedy-remove-leftovers = Retiro de restos
    .what = Lo que dejó el trabajo anterior se saca, y el lugar se cierra.
remedy-remove-gutter-cover = Retiro del cubrecanaleta
    .what = La pieza se saca de debajo de las tejas, y la primera hilera se vuelve a pegar.
remedy-pressure-wash = Lavado a presión
    .what = El techo se lava con un chorro fuerte. Eso arranca los gránulos y mete agua debajo de las tejas.
remedy-coat-over = Recubrimiento o pintura encima
    .what = Se extiende un recubrimiento sobre la superficie vieja.
remedy-tar-over = Embarrado con cemento asfáltico
    .what = Se embarra cemento asfáltico sobre la falla.
remedy-salt-or-chop-ice = Sal o golpes al hielo
    .what = El hielo se pica o se derrite con sal, lo que daña las tejas y el metal.

# --- make safe
remedy-temporary-cover = Protección temporal
    .what = El lugar se cubre con una lona o membrana sujeta con listones, hasta que se repare de manera definitiva.
remedy-secure-loose = Amarre o retiro de la pieza suelta
    .what = La pieza suelta se amarra o se baja, para que no pueda caerse.

# --- repair: the covering
remedy-replace-shingles = Cambio de tejas
    .what = Se sacan las tejas malas, se entretejen otras nuevas del mismo tamaño y se clavan debajo de la hilera de arriba.
remedy-renail = Clavado nuevo
    .what = Se sacan los clavos mal puestos, se sellan sus agujeros bajo la hilera de arriba y se clava en la línea correcta.
remedy-rebuild-section = Sección vuelta a poner
    .what = La sección se levanta y se vuelve a poner en hileras derechas y parejas, entretejida con el resto.
remedy-reset-tile-slate = Pizarra o teja de barro vuelta a poner
    .what = Las piezas rotas o corridas se cambian o se regresan a su lugar, y se sujetan con un gancho o un clavo nuevo.
remedy-replace-wood = Tejas de madera nuevas
    .what = Las tejas de madera malas se sacan, y se ponen otras nuevas entre sus vecinas.
remedy-refasten-metal = Cierre de la junta de metal
    .what = La junta se cierra y se sujeta de manera que el metal se pueda mover.
remedy-new-metal-panel = Panel de metal nuevo
    .what = El panel oxidado se cambia, y se aparta de todo metal que lo corroa.
remedy-new-metal-screws = Tornillos nuevos
    .what = Cada tornillo flojo se cambia por uno más grueso con un anillo de goma nuevo.
remedy-new-starter = Arranque nuevo
    .what = La primera hilera se levanta o se cambia, y debajo se pone un arranque con su adhesivo en el borde.
remedy-close-holes = Cierre de agujeros
    .what = El agujero se cierra con madera, y encima se entretejen membrana y tejas.

# --- repair: the deck and the sheets on it
remedy-cut-out-deck = Tablero nuevo en ese lugar
    .what = Una vez detenida el agua, la madera mala se corta hasta el centro de las vigas sanas más cercanas y se cambia.
remedy-add-deck = Paneles de tablero nuevos
    .what = Las tablas viejas se cambian o se cubren con paneles nuevos, clavados a las vigas, con holgura para cuando se hinchen.
remedy-refasten-deck = Clavado del tablero
    .what = Las tablas o los paneles sueltos se clavan de nuevo a las vigas.
remedy-new-underlayment = Membrana nueva en ese lugar
    .what = Se abre la cubierta y se pone debajo una membrana nueva, traslapada pendiente abajo.
remedy-new-ice-barrier = Barrera contra hielo nueva
    .what = Se abre la cubierta en el alero y se pone una membrana adhesiva hasta al menos 24 pulgadas hacia adentro de la pared exterior.

# --- repair: edges
remedy-new-drip-edge = Goterón nuevo
    .what = Se pone un borde de metal doblado en el alero y el borde inclinado, traslapado y del lado correcto de la membrana.
remedy-new-fascia = Tabla de borde nueva
    .what = La tabla podrida o faltante se cambia por otra, con imprimación por todos lados, y el borde se cierra con metal.
remedy-refasten-board = Sujeción de la tabla
    .what = La tabla o el panel suelto se sujeta de nuevo a madera firme.
remedy-new-soffit = Pieza de sofito nueva
    .what = La pieza de sofito suelta o faltante se cambia por otra, con sus entradas de aire.
remedy-close-soffit-gap = Cierre del hueco del sofito
    .what = El hueco se cierra con madera, metal o malla, cuando ya no queda ningún animal adentro.
remedy-new-intake = Entradas de aire nuevas
    .what = Las entradas de aire viejas se cambian por otras nuevas con malla.

# --- repair: gutters
remedy-rehang-gutter = Canaleta vuelta a colgar
    .what = La canaleta se cuelga de ganchos nuevos con caída hacia su salida, ajustada bajo el metal del borde.
remedy-new-gutter = Canaleta nueva
    .what = Se cuelga una canaleta nueva del tamaño correcto, con caída hacia sus salidas.
remedy-new-downspout = Bajante nuevo
    .what = Se pone un tubo nuevo desde la canaleta hasta el suelo.
remedy-extend-downspout = Prolongación del bajante
    .what = El tubo se prolonga hasta una canaleta o hasta bien lejos de la pared.
remedy-new-drain = Desagüe nuevo
    .what = El desagüe se cambia o se baja, y se vuelve a apretar contra la membrana del techo.

# --- repair: valleys
remedy-new-valley = Valle hecho de nuevo
    .what = Se abren las tejas de ambos lados, se pone un forro nuevo y se traen hasta él hileras limpias.

# --- repair: pipes and hoods
remedy-new-boot = Bota de tubo nueva
    .what = Se abren las tejas alrededor del tubo, se pone una bota nueva y se vuelven a entretejer las tejas encima.
remedy-boot-collar = Collarín sobre la bota
    .what = Un collarín nuevo se baja por el tubo hasta cubrir el viejo. Es lo correcto donde la base de abajo está sana.
remedy-reset-boot = Bota vuelta a poner
    .what = La bota sana se levanta y se entreteje de nuevo, con sus clavos debajo de las tejas.
remedy-new-hood = Campana nueva
    .what = Una campana nueva se entreteje con las tejas y se une a su ducto.
remedy-reset-hood = Campana o respiradero vuelto a poner
    .what = La campana o el respiradero sano se levanta y se entreteje de nuevo como una teja.
remedy-reset-storm-collar = Ajuste y sellado del collarín de lluvia
    .what = El anillo se baja hasta su base y se sella al tubo. El conducto mismo no se mueve.
remedy-new-vent-flashing = Base nueva alrededor del conducto
    .what = Se entreteje una base de metal nueva alrededor del conducto. El conducto no se corta, ni se mueve, ni se desarma.

# --- repair: chimneys
remedy-new-chimney-flashing = Tapajuntas de chimenea nuevo
    .what = La chimenea recibe metal nuevo todo alrededor y, encima, una segunda capa metida en las juntas de mortero.
remedy-new-counter-flashing = Tapajuntas superior nuevo
    .what = Una tira de metal nueva se mete en la junta, o se sujeta detrás del revestimiento, y baja sobre el metal de abajo.
remedy-new-cricket = Tejadillo nuevo
    .what = Se construye un techito de dos caídas para que el agua corra a los lados, y se cubre y se une con metal.
remedy-new-chimney-cap = Sombrerete de chimenea nuevo
    .what = Se sujeta arriba un sombrerete con malla, hecho para ese conducto de humo.
remedy-new-chase-cover = Tapa metálica de chimenea nueva
    .what = Se pone sobre el cajón una tapa de metal nueva con caída, bordes doblados hacia abajo y un collarín para el tubo.

# --- repair: flashings at walls and skylights
remedy-new-step-flashing = Tapajuntas escalonado nuevo
    .what = En cada hilera se entreteje una pieza de metal doblado entre la teja y la pared, detrás del revestimiento.
remedy-new-head-flashing = Tapajuntas frontal nuevo
    .what = Se pone una tira de metal doblado detrás del revestimiento y sobre la última hilera, sin clavos por la cara.
remedy-new-kickout = Desviador de agua nuevo
    .what = Al final del alero se pone una pieza doblada que saca el agua de la pared y la manda a la canaleta.
remedy-new-skylight-flashing = Tapajuntas de tragaluz nuevo
    .what = El tragaluz recibe metal nuevo abajo, a los lados y arriba, entretejido con las hileras.
remedy-new-skylight = Tragaluz nuevo
    .what = El tragaluz se cambia junto con su tapajuntas.
remedy-new-glass = Vidrio o domo nuevo
    .what = El vidrio o el domo se cambia en su marco.
remedy-reseal-skylight = Empaques nuevos y ranuras abiertas
    .what = Se renuevan los empaques, se ajustan los broches y se abren las ranuras de drenaje.

# --- repair: low slopes
remedy-low-slope-patch = Parche de la misma membrana
    .what = El lugar se limpia y se seca, y se le pega encima un parche de la misma clase de membrana.
remedy-new-low-slope-join = Unión nueva con el techo plano
    .what = Una membrana nueva sube bastante bajo las tejas o por la pared, y el techo inclinado se traslapa encima.
remedy-new-low-slope-edge = Borde nuevo del techo plano
    .what = El borde del techo plano o su pretil recibe metal nuevo, unido a la membrana.
remedy-low-slope-taper = Caída agregada
    .what = El lugar bajo se levanta o recibe un desagüe, para que el agua corra.

# --- repair: ridges, hips and vents
remedy-new-ridge-caps = Tapas nuevas
    .what = Las tapas viejas se quitan, y se ponen otras nuevas con el traslape a favor del viento y los clavos tapados.
remedy-rebed-ridge = Asiento nuevo de las tejas de cumbrera
    .what = Las tejas se quitan, se sujetan, y se asientan o se cierran de nuevo.
remedy-new-ridge-vent = Respiradero de cumbrera nuevo
    .what = Sobre la ranura abierta de la cumbrera se pone un respiradero nuevo con protección contra el viento.
remedy-refasten-ridge-vent = Sujeción del respiradero de cumbrera
    .what = El respiradero se sujeta con clavos bastante largos para entrar en el tablero, y se le cierran las puntas.
remedy-new-roof-vent = Respiradero de techo nuevo
    .what = Un respiradero nuevo se entreteje con las tejas sobre su agujero.
remedy-more-vents = Más salida de aire arriba
    .what = Se cortan la ranura o los agujeros, o se agregan respiraderos, hasta que las aberturas basten para el ático.
remedy-more-intake = Más entrada de aire en el alero
    .what = Se agregan entradas de aire en el alero hasta que basten para el ático.
remedy-balance-vents = Un solo tipo de respiradero arriba
    .what = Queda un solo tipo de respiradero arriba y el otro se cierra, con bastante aire desde el alero.

# --- repair: what is fastened to the roof
remedy-reflash-mount = Soporte vuelto a poner con tapajuntas
    .what = El soporte se atornilla a una viga sobre una placa de metal traslapada bajo la hilera de arriba.
remedy-remove-mount = Retiro del soporte y cierre de agujeros
    .what = El soporte se quita, y sus agujeros se cierran con madera y tejas.
remedy-new-snow-guard = Paranieves nuevo
    .what = Se ponen paranieves entre las hileras y se sujetan a la estructura.
remedy-remove-and-reset-panels = Retiro y regreso de los paneles
    .what = Su instalador quita los paneles, se techa de nuevo, y los paneles regresan sobre soportes nuevos.

# --- repair: inside
remedy-find-the-leak = Rastreo y arreglo de la gotera
    .what = El lugar se rastrea por arriba y por abajo, con agua si hace falta, y se corrige por donde entra el agua.
remedy-duct-outside = Salida del ducto al exterior
    .what = El ducto se lleva afuera por su propia campana.
remedy-lower-damp = Menos aire húmedo
    .what = Se cierran las aberturas de los cuartos hacia el ático, y los extractores se llevan afuera.
remedy-stop-heat-loss = Freno al calor que sube al ático
    .what = Se cierran las aberturas de los cuartos, se agrega aislamiento y se mete aire por el alero.

# --- a new covering
remedy-new-covering-slope = Cubierta nueva en una vertiente
    .what = Una vertiente se descubre hasta el tablero, este se revisa, y se ponen nuevos membranas, bordes, tapajuntas y cubierta.
remedy-tear-off = Quitar todo y poner cubierta nueva
    .what = Se quita todo hasta el tablero, este se revisa mientras está a la vista, y se hace nuevo todo el techo.
remedy-recover = Cubierta nueva sobre la vieja
    .what = Se pone una cubierta nueva sobre la vieja, que se queda, con todos los bordes y tapajuntas nuevos.
remedy-low-slope-covering = Cubierta nueva de techo plano
    .what = La parte se descubre y se cubre con una membrana hecha para techos planos, que sube bajo el techo inclinado.

# --- another trade's work
remedy-repoint = Rejuntado
    .what = Un albañil saca el mortero gastado y rellena las juntas de nuevo.
remedy-rebuild-chimney = Reconstrucción de la chimenea
    .what = Un albañil baja la parte mala de la chimenea y la vuelve a levantar, o atiende su base.
remedy-new-crown = Corona de chimenea nueva
    .what = Un albañil cuela una corona nueva con caída y voladizo.
remedy-reline-flue = Revisión y forro del conducto de humo
    .what = Un especialista con licencia revisa el conducto de humo y le pone un forro nuevo.
remedy-raise-vent = Elevación del conducto
    .what = Un especialista con licencia sube el conducto o la chimenea a la altura que piden su etiqueta y el código.
remedy-check-vent = Revisión y arreglo del conducto
    .what = Un especialista con licencia revisa el conducto y su aparato y los corrige.
remedy-pipe-repair = Reparación del tubo de plomería
    .what = Un plomero repara o alarga el tubo.
remedy-wall-repair = Arreglo de la pared
    .what = Un contratista de revestimiento, estuco o ventanas arregla la pared y la separa del techo.
remedy-trim-trees = Poda de árboles
    .what = Un servicio de poda corta lo que cuelga sobre el techo o lo toca.
remedy-electrician-work = Arreglo de la entrada eléctrica
    .what = La compañía de luz o un electricista con licencia deja segura la entrada eléctrica y la arregla.
remedy-frame-repair = Revisión y reparación de la estructura
    .what = Un ingeniero estructural dice lo que hace falta, y se repara la estructura.
remedy-test-asbestos = Análisis y manejo con licencia
    .what = Un inspector con licencia toma una muestra. Si tiene asbesto, se encarga una empresa con licencia.
remedy-wildlife-work = Retiro de animales
    .what = Un servicio de animales silvestres los saca como manda la ley. Después se cierra el agujero.
