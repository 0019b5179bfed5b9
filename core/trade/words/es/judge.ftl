# Why: what each rule of the judging room says, in words a homeowner understands.
# reason-…: one short sentence or two. Where it stands (code, evidence, trade practice, the firm's own policy, the owner)
# is shown beside it and not repeated here. Where two good roofers would differ, the sentence says so.

# --- why a repair is not enough
reason-covering-done = La cubierta está fallando por todas partes, así que a una reparación en un lugar pronto le seguiría otra.
reason-covering-done-over-layers = La cubierta está fallando por todas partes y está sobre otra más vieja. Se quitan las dos.
reason-deck-wet-broad = La madera bajo el techo está mojada o blanda en más de un punto. Hay que descubrirla para corregirla.
reason-rebuilt-step = Hay secciones rehechas a distinta altura, y el agua se estanca o se mete entre ellas.
reason-too-low = La vertiente tiene muy poca pendiente para tejas, nuevas o viejas.
reason-brittle = Las tejas se quiebran al levantarlas, y para reparar hay que levantarlas.
reason-unmatchable = Ya no se consiguen tejas que emparejen con las viejas en tamaño y grueso. Algunos techadores las mezclarían; las uniones gotean antes.
reason-many-places = Hay tantos lugares separados en una misma vertiente que repararlos uno por uno costaría más de lo que ahorra. Algunos techadores aun así los repararían uno por uno.
reason-patched-often = { $limit ->
    [1] La misma causa ya se parchó una vez y sigue ahí. No le vendemos otro parche.
    [2] La misma causa ya se parchó dos veces y sigue ahí. No le vendemos otro parche.
   *[other] La misma causa ya se parchó { $limit } veces o más y sigue ahí. No le vendemos otro parche.
}
reason-layers-no-repair = { $limit ->
    [0] Un techo así lo aseguramos por ahora y no vendemos reparaciones en él.
    [1] Un techo así lo aseguramos por ahora y no vendemos reparaciones en él.
    [2] Hay dos capas de cubierta o más. El código no prohíbe una reparación; nosotros aseguramos por ahora un techo así y no vendemos reparaciones más allá de eso.
    [3] Hay tres capas de cubierta o más. El código no prohíbe una reparación; nosotros aseguramos por ahora un techo así y no vendemos reparaciones más allá de eso.
   *[other] Hay { $limit } capas de cubierta o más. El código no prohíbe una reparación; nosotros aseguramos por ahora un techo así y no vendemos reparaciones más allá de eso.
}
reason-must-last = Usted necesita que el techo dure, y la cubierta alrededor de los lugares malos también se está gastando.
reason-only-a-covering = Lo que falla aquí solo se cura con una cubierta nueva.
reason-some-slopes-only = Esto vale solo para una parte del techo: vertiente { $slopes }. Una vertiente se puede techar sola donde se puede unir bien con lo demás; algunos techadores harían todo el techo de una vez.
reason-deck-judged-bare = Qué tan buena está la madera de abajo solo se ve cuando queda descubierta. Entonces se cambian las tablas o los paneles malos.

# --- a new covering over the old
reason-recover-no-second-layer = Aquí no se permite poner una cubierta nueva sobre una vieja.
reason-recover-two-layers = { $layers ->
    [2] Ya hay dos capas; el código no permite una tercera.
    [3] Ya hay tres capas; el código no permite otra.
   *[other] Ya hay { $layers } capas; el código no permite otra.
}
reason-recover-layers-here = { $allowed ->
    [2] Aquí se permiten dos capas en total, y ya las hay.
    [3] Aquí se permiten tres capas en total, y ya las hay.
   *[other] Aquí se permiten { $allowed } capas en total, y ya las hay.
}
reason-recover-wet-base = La base está mojada o blanda, y no se puede poner nada encima.
reason-recover-barred-base = Sobre una cubierta de esta clase no se puede poner otra nueva.
reason-recover-hail = Es una zona de mucho granizo, donde el código no permite tejas sobre una cubierta vieja.
reason-recover-too-low = La vertiente tiene muy poca pendiente para tejas, nuevas o viejas.
reason-recover-not-flat = La cubierta vieja no está bastante pareja; cada lomo se marcaría y se gastaría.
reason-recover-flashing-stays = Algún tapajuntas o borde no se podría renovar, y seguiría goteando bajo la cubierta nueva.
reason-recover-frame-weak = La estructura tal vez no aguante el peso de otra capa.
reason-recover-maker-refuses = El fabricante de la cubierta nueva no acepta que se ponga sobre la vieja.
reason-recover-rebuilt-step = Las secciones a distinta altura seguirían deteniendo el agua bajo una cubierta nueva.
reason-recover-not-sold = No ponemos una cubierta nueva sobre una vieja, aunque el código lo permita. Otros techadores lo hacen.
reason-recover-not-known = No se sabe si { $questions }. Hay que descartarlo todo antes de poner una cubierta nueva sobre la vieja.
reason-recover-advised-against = La mayoría de los techadores aconseja no poner una segunda capa: se calienta más, los clavos agarran menos y nadie ve la madera de abajo.
reason-recover-allowed = El código permite una cubierta nueva sobre esta: hay una sola capa, seca y sana, de una clase que se puede cubrir.
reason-recover-frame-excepted = Una segunda capa ligera sobre una sola no exige demostrar de nuevo que la estructura la aguanta.
reason-recover-other-ways = Esta prohibición no alcanza a los sistemas de techo completos que llevan su propia carga hasta la estructura, ni a los recubrimientos protectores. Aquí no hablamos de ellos.
reason-check-adopted-text = Esta parte del código cambió en la edición más nueva. Antes de empezar el trabajo, revise el texto tal como se adoptó aquí.

# --- flashings, edges, nails
reason-flashing-reuse = Los tapajuntas oxidados o dañados no se pueden volver a usar bajo una cubierta nueva.
reason-flashing-renewed = Con una cubierta nueva renovamos todos los tapajuntas. El código deja quedarse con los sanos; pocas veces duran tanto como el techo nuevo.
reason-flashing-thin = El metal del tapajuntas es más delgado de lo que pide el código.
reason-valley-narrow = El metal del valle mide { $width } de ancho; debería medir al menos { $needed }.
reason-sidewall-step = Donde un techo corre junto a una pared, cada hilera necesita su propia pieza de tapajuntas escalonado, de al menos { $size } por la pared y { $size } sobre el techo.
reason-sidewall-flashing = Donde un techo corre junto a una pared, necesita tapajuntas de al menos { $size } por la pared y { $size } sobre el techo.
reason-kick-out = Donde un alero termina contra una pared, un desviador aparta el agua de la pared y la manda a la canaleta.
reason-drip-edge = Las tejas necesitan un goterón de metal en los aleros y los bordes inclinados.
reason-drip-edge-practice = Un goterón de metal en los aleros y los bordes inclinados aparta el agua de la madera. El código vigente aquí no lo pedía; los buenos techadores lo ponen.
reason-nails = Cada teja necesita al menos { $nails } clavos en la línea de clavado, al ras y metidos hasta atravesar la madera.

# --- what a new covering needs here
reason-all-layers-off = Se quitan todas las capas viejas, hasta llegar al tablero.
reason-underlayment-low = Con una pendiente menor de 4:12, la membrana se pone doble.
reason-underlayment-doubled = Vertiente { $slopes }: ahí el techo tiene pendiente { $pitch }. Con tan poca pendiente, la membrana se pone doble.
reason-ice-barrier = Vertiente { $slopes }: la barrera contra hielo debe subir { $reach } desde el borde, medidos a lo largo de la pendiente.
reason-ice-barrier-unmeasured = Vertiente { $slopes }: la barrera contra hielo debe llegar al menos { $inside } hacia adentro de la pared de abajo. Cuánto es eso pendiente arriba depende de la pendiente y del voladizo, que falta medir.
reason-ice-barrier-missing = Aquí el código pide una barrera contra hielo desde el borde hasta al menos { $inside } hacia adentro de la pared de abajo.
reason-ice-barrier-unknown = Si aquí se exige una barrera contra hielo lo dice el departamento de construcción.
reason-cricket = La chimenea mide { $width } de ancho. Detrás de una de más de 30" el techo necesita un techito de dos caídas que desvíe el agua, aquí de { $height } de alto.
reason-cricket-wanted = Detrás de una chimenea de más de 30" de ancho el techo necesita un techito de dos caídas que desvíe el agua, a menos que la chimenea quede sobre la cumbrera.
reason-cricket-unmeasured = La chimenea mide { $width } de ancho. Detrás de una de más de 30" el techo necesita un techito de dos caídas que desvíe el agua.

# --- chimneys, vents, attic air
reason-chimney-low = La chimenea queda { $height } por encima del techo; debería quedar al menos { $needed }.
reason-gas-vent-low = El conducto queda { $height } por encima del techo; aquí un conducto de gas debería quedar al menos { $needed }.
reason-gas-vent-older-codes = El conducto queda { $height } por encima del techo. Los códigos viejos lo permitían en esta vertiente; hoy serían { $needed }. El técnico en gas debe decir si se puede quedar.
reason-gas-vent-not-in-table = El conducto queda { $height } por encima del techo. Con su tamaño, o tan cerca de una pared, la tabla de siempre no decide qué altura necesita; los inspectores no coinciden. Lo debe decir el técnico en gas.
reason-chimney-height = Una chimenea debe quedar al menos { $least } por encima del techo donde sale, y { $above } por encima de todo lo que esté a menos de { $near }.
reason-attic-air = El ático necesita aberturas abajo y arriba, bastantes para su tamaño, para que el aire se mueva por él.
reason-air-space = El aire necesita al menos { $space } libre entre el aislamiento y el techo.

# --- why each step
reason-fault = { $part }: { $defect }.
reason-fault-unnamed = { $part }: { $rung }.
reason-water-comes-in = Está entrando agua ahora.
reason-open-to-rain = Hay una abertura que la próxima lluvia va a encontrar.
reason-may-fall = Hay algo que puede caerse.
reason-urgent = Esto no debe esperar a la reparación misma.
reason-deck-wet = La madera bajo el techo está mojada o blanda en un lugar. Se corta hasta madera sana, y primero se busca de dónde viene el agua.
reason-repair-local = Lo que está mal es local, y a la cubierta de alrededor le quedan años.
reason-patched-before = { $part }: { $times ->
    [1] hubo antes un parche, y la causa sigue ahí.
    [2] hubo antes dos parches, y la causa sigue ahí.
   *[other] hubo antes { $times } parches, y la causa sigue ahí.
}
reason-our-callback = { $part }: es trabajo nuestro, y no aguantó. Corregirlo corre por nuestra cuenta.
reason-their-callback = { $part }: otra persona ya hizo este arreglo, y no aguantó. Pregúntele primero a quien lo hizo.
reason-two-layers-repair = Hay dos capas de cubierta. El código no prohíbe repararlas, y nosotros lo hacemos; algunos techadores no lo harían.
reason-sound = El techo está en buen estado. Se vuelve a revisar en unos años.
reason-sound-ageing = El techo hace su trabajo y se le notan los años. Se vuelve a revisar más pronto.
reason-installer-answers = El techo es reciente, y lo que está mal viene de cómo se hizo. Debe responder quien lo puso: llámele primero y enséñele esta carta. Lo reparamos solo si usted nos lo pide.
reason-we-laid-it = Este techo lo pusimos nosotros, y lo que está mal viene de cómo se hizo. Corregirlo corre por nuestra cuenta.
reason-waits-for-trade = Nuestro trabajo aquí espera a que venga { $trade }.
reason-frame-weak = La estructura muestra señales de que tal vez no aguante su carga. Su fuerza no nos toca juzgarla a nosotros.

# --- look first
reason-look-nothing-seen = No se pudo ver nada de este techo, así que todavía no se puede decir nada de él.
reason-look-seen-from-afar = Este techo se vio solo de lejos. Eso alcanza para decir que hay que verlo de cerca, y nada más.
reason-look-water-unexplained = Está entrando agua, y nada de lo que se vio lo explica. Antes de vender algo, hay que encontrar por dónde entra.
reason-look-covering-not-seen = La cubierta misma no se vio de cerca, así que no podemos decir que este techo está en buen estado.

# --- refused in part
reason-sealant-alone = Aquí el sellador aguantaría un tiempo y se agrietaría. El agua corre pendiente abajo y hay que llevarla por encima de cada traslape; el sellador no hace eso.
reason-asked-does-not-cure = { $remedy }: usted lo pidió. Deja la causa donde está y casi siempre aguanta { $most ->
    [1] un mes
   *[other] de { $least } a { $most } meses
}.
reason-asked-makes-worse = { $remedy }: usted lo pidió. Empeoraría las cosas, o haría más cara después la reparación correcta.

# --- how far this reaches
reason-limit-nothing-seen = En esta visita no se vio nada de este techo.
reason-limit-seen-from-afar = Este techo se vio solo de lejos. Visto de cerca, puede estar peor.
reason-limit-request-only = Vimos lo que usted nos preguntó, no todo el techo.
reason-limit-quick-look = Fue un vistazo rápido a los lugares que más gotean, no a todo el techo.
reason-limit-earlier-look = Parte de esto se apoya en una visita anterior: esas partes no se volvieron a ver.
reason-limit-attic-not-seen = El techo no se vio desde adentro del ático, donde primero se nota la madera mojada.
reason-limit-layers-not-counted = Las capas de cubierta no se contaron en un borde.
reason-limit-layers-differ = Las capas cambian de un lugar a otro, de { $least } a { $most }. Nos guiamos por el número mayor.
reason-limit-next-is-tear-off = Hay dos capas de cubierta. La próxima cubierta nueva exige quitar las dos, hasta el tablero.
reason-limit-slopes-not-seen = Parte de la cubierta no se vio de cerca: vertiente { $slopes }.
reason-limit-water-not-proved = Por dónde entra el agua se deduce de lo que está abierto. Solo la próxima lluvia, o una prueba con agua, lo comprueba.
reason-limit-dry-cold = El agua que aparece con frío seco seguramente es vapor de adentro, no lluvia. Hay que revisar el aire y el aislamiento del ático.
reason-limit-warranty = Qué cubre la garantía del fabricante lo dice el fabricante, no nosotros.
reason-sale-under-two-years = Usted habló de una venta. Algunos bancos piden que el techo no deje entrar agua y que le queden al menos dos años; como está, este quizá no pase.
reason-sale-not-seen = Usted habló de una venta. Algunos bancos piden que al techo le queden al menos dos años; este no se vio lo suficiente para decirlo.

# --- safety
reason-asbestos = Hay material que puede tener asbesto. No se debe cortar, taladrar ni romper hasta que se analice; las reglas locales pueden pedir más.
reason-vermiculite = Hay aislamiento suelto que puede ser vermiculita. Se trata como si tuviera asbesto: no lo toque ni entre donde está hasta que se analice.
reason-fuel-vents = Los conductos de los aparatos de calefacción son para un especialista con licencia. Averigüe qué aparato y qué combustible usa cada uno antes de que alguien lo toque, y tenga adentro una alarma de monóxido de carbono que funcione.
reason-lead-paint = La casa se construyó en { $built }. La pintura vieja en la madera de los aleros puede tener plomo; más que un pedazo chico de ella le toca a un renovador certificado.
reason-tie-off = Este techo tiene pendiente { $pitch }. Quien trabaje en él debe estar amarrado o protegido contra caídas.
reason-soft-underfoot = Parte del tablero está blanda. Nadie debe pisarla.
reason-keep-clear = No deje pasar gente ni carros por debajo hasta que quede asegurado.
reason-tabs-not-lifted = Las tejas no se levantan cuando están demasiado frías, calientes o quebradizas para doblarse: se quebrarían.
reason-power-line = Hay un cable de luz cerca. Mantenga todo al menos a { $distance } de él, y use una escalera cuyos largueros no conduzcan electricidad.

# --- before the ladder: what forbids climbing, and what to do instead
reason-stop-ladder = La escalera no está bien puesta. Suelo firme y parejo, base afuera un cuarto de su largo, largueros { $above } por encima de donde se baja, amarrada; o mire con una pértiga.
reason-stop-lines = Hay un cable de luz demasiado cerca. Manténgase a { $distance } con la escalera, la pértiga y el cuerpo, use largueros que no conduzcan, y póngala de otro lado o mire desde el suelo.
reason-stop-thunder = Truenos. Baje, no use la escalera y espere { $minutes } minutos desde el último.
reason-stop-wind = El viento es demasiado fuerte para una escalera. Mire desde el suelo y regrese otro día.
reason-stop-weather = El tiempo no lo permite. Mire desde el suelo y regrese otro día.
reason-stop-frozen = Hay escarcha, nieve o hielo en el techo. No suba; mire desde la escalera en el alero, o regrese otro día.
reason-stop-wet = El techo está mojado. No suba; mire desde la escalera en el alero o con una pértiga.
reason-stop-steep = Demasiado empinado para el equipo a la mano. Mire desde la escalera o con una pértiga, y anote lo que no se vio.
reason-stop-deck = El tablero tal vez no aguante. No suba; mire desde la escalera y desde el ático.
reason-stop-fibres = Posible asbesto o vermiculita. No lo toque, corte ni levante, y no se arrastre sobre él; mándelo a analizar primero.
