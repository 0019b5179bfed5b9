# The letter to the owner. Written to be read once, at a kitchen table, by somebody who never stood on a roof.

letter-your-roof = Su techo en { $address }
letter-licence = Licencia { $licence }
letter-looked = { $by } vino el { $date }. Lo que se iba a revisar: { $scope }.
letter-takes-the-place = Esta carta reemplaza a la nuestra del { $date }: desde entonces se corrigió un registro. Guíese por esta.
letter-footer = { $address } · { $date }
letter-then = antes
letter-now = ahora
letter-no-picture = No se pudo mostrar esta foto. La empresa tiene la original.
letter-unprintable = El signo � está en lugar de un carácter para el que esta carta impresa no tiene letra; la carta como página web lo muestra.
letter-short-end = Las fotos y las razones están en la carta.

# --- naming
letter-structure-unknown = otra estructura
letter-slope = Vertiente { $letter }, { $side }
letter-slope-pitch = { $slope }, { $pitch }
letter-no-slope = De ninguna vertiente en particular
letter-part = { $kind } ({ $address })
letter-part-in-structure = { $kind } ({ $structure }, { $address })
letter-part-which = { $kind }, { $which }
letter-on-structure = { $what } ({ $structure })
letter-of-structure = { $structure }: { $says }
letter-list = { $each }
letter-reason = { $why }:
letter-because = No se vio: { $why }.
letter-and-more = { $list }, y { $more } más
letter-yes = Sí.
letter-no = No.
letter-unknown = No se sabe.
letter-months = de { $least } a { $most } meses
letter-months-exact = { $most ->
    [one] un mes
   *[other] { $most } meses
}
letter-years = de { $least } a { $most } años
letter-years-exact = { $most ->
    [one] un año
   *[other] { $most } años
}

# --- page one: what an owner asks
letter-ask-leaking = ¿Está goteando ahora, y por dónde?
letter-ask-wrong = ¿Qué está mal?
letter-ask-advice = ¿Qué aconsejan?
letter-ask-waiting = ¿Qué puede esperar? ¿Y si espero?
letter-ask-patch = ¿Se puede parchar? ¿Cuánto aguanta y cuánto cuesta?
letter-ask-lasting = ¿Cuánto va a durar?
letter-ask-wood = ¿Está mala la madera?
letter-ask-permit = ¿Necesito un permiso?
letter-ask-warranty = ¿Lo cubre una garantía o un seguro?
letter-ask-not-seen = ¿Qué no vieron?

letter-leak-seen = Está entrando agua: la vimos.
letter-leak-told = Usted nos dijo que entra agua. Nosotros no la vimos entrar.
letter-leak-none = Donde pudimos mirar, no estaba entrando agua.
letter-leak-told-no = Usted nos dijo que no entra. Nosotros no pudimos ver adentro.
letter-leak-unknown = No pudimos ver adentro, y nadie nos lo dijo.
letter-leak-way = La entrada que encontramos: { $parts }.
letter-leak-likely = La entrada más probable: { $parts }.
letter-leak-way-not-found = No encontramos por dónde entra. Eso no quiere decir que no haya entrada.
letter-leak-next-rain = Puede entrar agua con la próxima lluvia fuerte: { $parts }.
letter-told-room = Usted nos dijo dónde aparece: { $room }.
letter-told-when = Usted nos dijo cuándo aparece: { $when }.
letter-told-room-when = Usted nos dijo dónde y cuándo aparece: { $room }; { $when }.

letter-wrong-part = { $part }, { $rung }:
letter-wrong-more = { $more ->
    [one] Un hallazgo más está adelante, parte por parte.
   *[other] { $more } hallazgos más están adelante, parte por parte.
}
letter-wrong-nothing = Nada de lo que vimos está gastado ni con fallas.

letter-advice-none = Nada todavía: vimos muy poco para aconsejar.
letter-step-with-work = { $course }: { $work }.
letter-step-briefly = { $course }: { $work }
letter-step-alone = { $course }. { $what }
letter-work = { $remedy } ({ $places })
letter-work-lead = { $work }.
letter-common-practice = práctica común
letter-work-for = { $work }, trabajo para { $who }
letter-step-until = { $step } Debe hacerse a más tardar el { $date }.
letter-step-holds-until = { $step } Aguanta unas semanas: el trabajo definitivo debe hacerse a más tardar el { $date }.
letter-step-look-by = { $step } Próxima revisión: a más tardar el { $date }.

letter-can-wait = Puede esperar:
letter-can-wait-rest = lo que no se nombra arriba puede esperar hasta la próxima revisión.
letter-if-you-wait = Si espera:
letter-wait-now = lo marcado con “ahora” sale más caro con cada lluvia. El agua que entra moja la madera y lo que hay debajo, y la madera mojada se pudre.
letter-wait-season = nada de lo que vimos tiene que hacerse antes de la próxima lluvia, pero no deje pasar otro invierno ni otra temporada de tormentas.
letter-wait-later = nada de lo que vimos empeora rápido. Vuélvalo a revisar cuando lo dice esta carta.

letter-patch-holds = en { $parts }: aguanta { $months }, más o menos. La causa sigue ahí.
letter-patch-nothing = No encontramos nada en lo que ayude un parche.
letter-patch-refused = No vendemos: { $list }. Más adelante se dice por qué.
letter-price-later = Lo que cuesta: esta carta no da precio. Viene con nuestra oferta.

letter-lasts-course-leave = Hoy hace su trabajo, donde pudimos verlo.
letter-lasts-course-maintain = Hace su trabajo; con el mantenimiento que aquí se nombra, lo debería seguir haciendo.
letter-lasts-course-make-safe = Lo que aseguramos aguanta unas semanas. No es una reparación.
letter-lasts-course-repair = Los lugares que reparamos deberían durar tanto como el techo de alrededor. A ese techo le quedan años, hasta donde pudimos ver.
letter-lasts-course-recover = Una cubierta nueva puesta sobre una vieja suele durar menos que una puesta sobre la madera.
letter-lasts-course-tear-off = La cubierta vieja llegó a su fin. Una nueva sobre madera sana es empezar de nuevo.
letter-lasts-course-refer = Depende del trabajo del otro especialista.
letter-lasts-course-look-first = No podemos decirlo antes de revisarlo.
letter-lasts-no-number = Nadie puede prometer un número de años. Las tejas de asfalto duran unos 20 años en promedio (estudio de la NAHB de 2007); el sol, el viento, el aire de abajo y la mano de obra lo hacen menos o más.

letter-wood-bad = Madera mojada o blanda: { $parts }.
letter-wood-good = Donde pudimos mirar, estaba seca y firme: { $parts }.
letter-wood-unknown = No pudimos verla.
letter-wood-bare = Toda la madera se ve solo cuando queda descubierta.

letter-permit-covering = Una cubierta nueva casi siempre lo necesita; pregunte en su departamento de construcción antes de que empiece el trabajo (práctica común).
letter-permit-repair = Una reparación chica muchas veces no lo necesita, pero cada ciudad es distinta: pregunte en su departamento de construcción antes de que empiece el trabajo (práctica común).
letter-permit-none = Para lo que aconsejamos, casi siempre no. Lo sabe su departamento de construcción (práctica común).
letter-warranty = Anotamos lo que vemos y le tomamos fotos. Qué cubre una garantía o una póliza queda entre usted y quien la dio; el reclamo lo hace usted.

letter-not-close = Solo de lejos, o por lo que alguien dijo:
letter-unmarked = Esta vez no se revisó:
letter-all-seen = Vimos de cerca todas las partes de nuestra lista.

# --- after page one
letter-cautions = Tenga cuidado, por favor
letter-changes = Lo que cambió desde la última vez que vinimos
letter-findings = Lo que encontramos, parte por parte
letter-why = Lo que aconsejamos, y por qué
letter-refused = Lo que no vendemos, y por qué
letter-next-look = La revisión que podría cambiar esto
letter-limits = Hasta dónde llega esta carta
letter-decision = Su decisión

letter-changes-since = La última revisión fue el { $date }. Esto pasó con lo que encontramos entonces.
letter-then-found = Se encontró entonces: { $defects }.
letter-then-found-on = Se encontró el { $date }: { $defects }.
letter-then-on = Esta parte se vio por última vez el { $date }.
letter-work-since = Trabajo hecho desde entonces: { $by }.
letter-patches = { $count ->
    [one] Un parche por esta causa: { $each }.
   *[other] { $count } parches por esta causa: { $each }.
}
letter-patch-one = { $what } ({ $by }, a más tardar el { $date })
letter-patch-something = algo que no pudimos distinguir
letter-patch-usual = Un parche así suele aguantar { $months } (práctica común).
letter-callback-us = Nuestro propio trabajo volvió a fallar. Nos toca corregirlo.
letter-callback-not-us = Volvió a fallar un trabajo que debía haberlo curado. No fue nuestro: llame primero a quien lo hizo.
letter-callback-unknown = Volvió a fallar un trabajo que debía haberlo curado. No sabemos de quién fue.
letter-not-seen-because = Por qué no: { $why }.
letter-quiet = { $count ->
    [one] Otra parte estaba en buen estado y lo sigue estando.
   *[other] Otras { $count } partes estaban en buen estado y lo siguen estando.
}
letter-new = { $count ->
    [one] Una parte se vio por primera vez; se cuenta más abajo.
   *[other] { $count } partes se vieron por primera vez; se cuentan más abajo.
}

letter-roster = Lo demás, en una línea cada cosa
letter-defect = { $defect }, { $extent }
letter-what = Qué es:
letter-why-it-matters = Por qué importa:
letter-water = Cómo entra el agua:
letter-advised = Aconsejamos:
letter-cures = Lo cura:
letter-buys-time = Gana tiempo:
letter-worsens = Lo empeora:
letter-remedy-cures = { $remedy }. Eso lo cura.
letter-remedy-buys-time = { $remedy }. Eso aguanta { $months }, más o menos ({ $source }); la causa sigue ahí.
letter-remedy-worsens = { $remedy }. Tome en cuenta que eso lo empeora.
letter-measure = { $of }: { $value }, { $got }
letter-measure-within = { $measure }, con un margen de { $within } %
letter-corrected = Corregido el { $date }: { $why }
letter-caption-led = { $lead }: { $what }
letter-picture-then = Antes, { $date }
letter-picture-now = Ahora, { $date }
letter-alt = Foto de { $part }: { $what }

letter-when-structure = { $when }, { $structure }:
letter-why-step = { $when } { $course }
letter-source-code-edition = { $document } { $edition }, { $section }
letter-source-code = { $document } { $section }
letter-source-amendment = lo que { $place } agregó al código
letter-source-evidence = lo que vimos
letter-source-practice = práctica del oficio
letter-source-policy = nuestra propia norma
letter-source-owner = lo que usted nos dijo

letter-forbidden = Una regla lo prohíbe.
letter-refused-by-judgement = Con eso no le haríamos ningún favor.

letter-turns-to = { $count ->
    [one] Una revisión podría cambiar nuestro consejo. Entonces sería: { $course }.
   *[other] Estas revisiones juntas podrían cambiar nuestro consejo. Entonces sería: { $course }.
}
letter-look-if = { $ask }. Cambia si { $state }.
letter-look-asked = Falta preguntar

letter-open-questions = Nadie ha contestado todavía estas preguntas:
letter-limits-always = Contamos lo que se podía ver ese día desde donde estuvimos. Un techo puede esconder cosas que solo se ven al abrirlo.
letter-code-adopted = Las secciones del código son las de la edición adoptada en { $place } ({ $edition }), hasta donde sabemos; la última palabra la tiene su departamento de construcción.

letter-no-contract = Esta carta es un consejo. No es un contrato, y firmarla no compra nada: nos dice lo que usted decidió, y antes de que empiece cualquier trabajo siguen una oferta y un contrato.
letter-no-contract-offered = Esta carta es un consejo y una oferta. Todavía no es un contrato: al firmarla usted nos dice qué quiere que se haga al precio que está al lado, y antes de que empiece cualquier trabajo sigue un contrato.
letter-choose = Marque lo que quiere que se haga, o que dice que no, y firme.
letter-decline = No:
letter-decline-says = Leí esta carta y no quiero el trabajo.
letter-sign-owner = Dueño
letter-sign-firm = Por la empresa
letter-sign-for = Por { $firm }
letter-sign-date = Fecha
letter-contract = Contrato
letter-notices = Avisos legales
letter-no-notices = La empresa todavía no ha puesto aquí sus avisos legales. Cuando un trabajo se vende en su casa, las reglas federales dan a la mayoría de los dueños tres días hábiles para cancelar, y con el contrato va un aviso de ese derecho, en el idioma de la venta (16 CFR 429). Pídalo antes de firmar uno.

# --- the roof on plan, and what a new covering takes
letter-plan = Su techo, medido
letter-plan-title = Plano del techo
letter-plan-how = Visto desde arriba. Una letra grande nombra una vertiente, y una flecha muestra hacia dónde corre su agua. Una letra con un número en la orilla es una parte de la que habla esta carta.
letter-plan-alt = El techo visto desde arriba, con el largo de sus bordes y los números de las partes de las que se habla. Sus vertientes: { $slopes }. Las tablas de abajo dan áreas y largos.
letter-plan-slope = { $letter } con { $pitch }
letter-plan-left-out = En el plano no hubo lugar para:
letter-plan-extent = En total se cubren { $squares } cuadros: { $area } a lo largo de las vertientes. Un cuadro son 100 pies cuadrados.
letter-plan-exact = Cómo se midió: { $got }. Los largos pueden ser hasta { $lengths } % más o menos, las áreas hasta { $areas } %.
letter-plan-slopes = Vertiente
letter-plan-pitch = Pendiente
letter-plan-area = Área a lo largo de la vertiente
letter-plan-lines = Bordes y líneas
letter-plan-length = En total
letter-slope-alone = Vertiente { $letter }
letter-part-unknown = una parte del techo
letter-two-sentences = { $first } { $second }
letter-takes = Lo que lleva una cubierta nueva
letter-takes-covered = Contado para { $covering } en estas vertientes: { $slopes }. { $order }.
letter-takes-what = Qué
letter-takes-amount = Hace falta
letter-takes-order = Se pide
letter-takes-why = { $reason } ({ $source })
letter-takes-gaps = No se contó, y por eso no está en esta lista: { $items }.
letter-comes-down = Lo que se quita: { $squares }, { $layers } de cubierta, que se llevan en { $loads }: { $pounds }, { $yards }.
letter-layers = de { $least } a { $most } capas
letter-layers-exact = { $most ->
    [one] una capa
   *[other] { $most } capas
}
letter-loads = de { $least } a { $most } cargas
letter-loads-exact = { $most ->
    [one] una carga
   *[other] { $most } cargas
}

# --- what is offered
letter-offer = Lo que ofrecemos, y lo que cuesta
letter-offer-ran-out = Nuestra oferta del { $on } valía hasta el { $until }. Sus precios ya no valen: pídanos una nueva.
letter-against-advice = Contra nuestro consejo, { $when }
letter-against = Lo que habla en contra:
letter-not-ours-to-price = Esto no nos toca a nosotros, así que no le ponemos precio.
letter-includes = Esto incluye:
letter-leaves = Lo que no incluye o no arregla:
letter-over-years = Con los años:
letter-includes-material = Todo lo que está en la lista “{ $heading }”.
letter-includes-need = { $item }: { $order }
letter-patching = { $remedy }, { $part }: { $says }
letter-put-right-only-by = Solo una de las opciones arregla esto: { $parts }. Es esta: “{ $course }”.
letter-put-right-by-none = Nada de lo que se ofrece aquí arregla esto: { $parts }.
letter-price = { $price }.
letter-price-against = { $price }, contra nuestro consejo.
letter-price-until = { $price }, hasta el { $date }.
letter-price-none-yet = Aún sin precio: nuestra oferta dice por qué.
letter-price-each-time = { $price } cada vez.
letter-price-offered = Lo que ofrecemos:
letter-price-of-advice = Lo que cuesta nuestro consejo está arriba; lo que incluye está más adelante.
letter-course-for = { $course } por { $price }
letter-course-against = { $course } por { $price }, contra nuestro consejo
letter-short-offer = Se ofrece hasta el { $date }:
