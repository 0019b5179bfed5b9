# Gutters, downspouts and drains.

# --- split
defect-gutter-joint-leaks = Unión de canaleta que gotea
    .what = Gotea una unión, una esquina o una punta de la canaleta.
    .why = En cada lluvia, el goteo moja la tabla y la pared en el mismo lugar.
    .water = El agua corre por detrás o por debajo de la unión hacia la tabla y la pared.
    .photo = La unión desde abajo con su mancha, y desde adentro de la canaleta.
defect-gutter-rusted = Canaleta oxidada o con agujeros
    .what = La canaleta está perforada por el óxido o tiene agujeros.
    .why = El agua que debía llevarse baja por la pared hasta los cimientos.
    .water = El agua pasa por los agujeros a la tabla y a la pared de abajo.
    .photo = Los agujeros contra la luz, y cuánto de la canaleta está así.
defect-downspout-split = Bajante rajado o aplastado
    .what = El tubo que baja de la canaleta está rajado, aplastado o perforado por el óxido.
    .why = Se atasca, y su agua corre por la pared.
    .water = El agua sale por la rajadura y moja la pared de atrás.
    .photo = El daño de cerca, y la pared que queda detrás.
defect-drain-ring-loose = Anillo del desagüe flojo o roto
    .what = El anillo que aprieta la membrana contra el desagüe está flojo, agrietado o sin sus tornillos.
    .why = Toda el agua del techo plano pasa por esta única unión.
    .water = El agua se mete entre la membrana y el desagüe hacia adentro del techo.
    .photo = El anillo de cerca con sus tornillos, y la membrana alrededor.

# --- loose
defect-gutter-sagging = Canaleta pandeada
    .what = La canaleta cuelga en panza, y el agua se queda en ella.
    .why = El agua estancada es peso y óxido. Tarde o temprano la canaleta se desborda por su punto más bajo.
    .water = El agua se derrama por la panza, a menudo hacia la pared.
    .photo = A lo largo de la canaleta desde una punta, y el agua estancada adentro.
defect-gutter-hanging = Canaleta que se viene abajo
    .what = Un tramo de canaleta se arrancó y está colgando.
    .why = Puede caerle a alguien, y con cada viento jala la tabla y el borde del techo.
    .water = El agua cae libre por el borde, hacia la pared y el sofito.
    .photo = El tramo que cuelga, lo que todavía lo sostiene, y lo que hay debajo.
defect-downspout-loose = Bajante suelto
    .what = El tubo que baja de la canaleta se soltó de sus abrazaderas o se separó en una unión.
    .why = Su agua corre por la pared o se estanca junto a los cimientos.
    .water = El agua llega a la pared por la unión abierta.
    .photo = La abrazadera suelta o la unión, y la pared de al lado.

# --- missing
defect-gutter-end-missing = Falta la tapa final de canaleta
    .what = La pieza que cierra la punta de la canaleta falta o se soltó.
    .why = Por ahí cae toda el agua, a menudo contra una pared.
    .water = El agua cae por la pared o la tabla en la punta abierta.
    .photo = La punta abierta, y la mancha que queda debajo.
defect-gutter-missing = Sin canaleta donde se necesita
    .what = El alero gotea sobre un techo más bajo, una pared, una puerta o el suelo junto a los cimientos, sin nada que recoja el agua.
    .why = Gasta el techo de abajo, salpica la pared y moja el sótano.
    .water = El agua salpica la pared y su base. En un techo más bajo, va gastando las tejas en una línea.
    .photo = El alero y lo que hay debajo, con las marcas de salpicadura.
defect-downspout-missing = Falta un bajante
    .what = La canaleta tiene salida, pero el tubo de abajo ya no está.
    .why = El agua de todo ese lado del techo cae en un solo lugar.
    .water = El agua cae junto a la pared y la salpica.
    .photo = La salida abierta, y el suelo y la pared de abajo.
defect-drain-strainer-missing = Falta el colador del desagüe
    .what = Falta el colador que no deja entrar hojas al desagüe.
    .why = Las hojas se meten en el tubo, y un tubo tapado dentro de una casa es difícil de destapar.
    .water = Ahora no entra agua. Se estancará en el techo cuando el desagüe se tape.
    .photo = El desagüe abierto desde arriba.

# --- misbuilt
defect-gutter-slopes-wrong = Canaleta con la caída al revés
    .what = La canaleta está a nivel o cae hacia el lado contrario de su salida.
    .why = El agua se queda en ella, y con el agua la tierra, los mosquitos, el peso y el óxido.
    .water = El agua se desborda por la punta baja, donde nada se la lleva.
    .photo = El agua estancada, y un nivel sobre la canaleta.
defect-gutter-too-low = Agua por detrás de la canaleta
    .what = La canaleta cuelga separada de la tabla o más abajo que el metal del borde, y el agua gotea por detrás.
    .why = La tabla y la madera de atrás se pudren mientras la canaleta sigue seca.
    .water = El agua gotea entre la canaleta y la tabla, sobre las dos.
    .photo = Desde la punta: borde del techo, metal, canaleta y el hueco entre ellos, con la mancha en la tabla.
defect-gutter-too-small = Canaleta muy chica
    .what = La canaleta o sus salidas son muy chicas para el techo que les cae, y se desborda con lluvia fuerte.
    .why = Lo que se derrama cae siempre en el mismo lugar: pared, puerta o cimientos.
    .water = El agua se derrama por encima del borde, por delante o por detrás.
    .photo = El ancho de la canaleta con una cinta métrica, por dónde se desborda, y el techo de arriba.
defect-gutter-cover-lifts-edge = Cubrecanaleta que levanta tejas
    .what = Metieron un cubrecanaleta bajo las primeras tejas, y las mantiene levantadas.
    .why = La primera hilera ya no asienta, y el viento puede agarrarla.
    .water = La lluvia con viento y el hielo que se derrite se meten bajo la primera hilera levantada.
    .photo = La hilera levantada de lado, con la pieza debajo.
defect-downspout-onto-roof = Descarga sobre un techo más bajo
    .what = El tubo de la canaleta de arriba suelta el agua sobre las tejas de un techo más bajo.
    .why = El chorro arranca los gránulos en una línea y gasta las tejas años antes de tiempo.
    .water = El agua salpica y se mete bajo las tejas donde cae, sobre todo cerca de una pared.
    .photo = La salida y la línea gastada debajo.
defect-downspout-at-wall = Descarga junto a la pared
    .what = El tubo suelta el agua del techo justo en los cimientos.
    .why = Es una causa común de sótanos mojados y paredes que se asientan.
    .water = El agua se filtra en el suelo junto a la pared, y a través de ella.
    .photo = La salida y el suelo alrededor.
defect-drain-too-high = Desagüe demasiado alto
    .what = El desagüe está más alto que el techo a su alrededor, y queda un charco.
    .why = El agua estancada envejece la membrana del techo y encuentra cada unión débil.
    .water = El agua se estanca alrededor del desagüe y entra por uniones y ampollas.
    .photo = El charco o el cerco de tierra que dejó, con un nivel sobre el desagüe.

# --- smothered
defect-gutter-clogged = Canaleta tapada
    .what = La canaleta está llena de hojas, gránulos o tierra.
    .why = Una canaleta llena se desborda hacia la pared, moja el borde del techo y pesa tanto que se puede arrancar.
    .water = El agua se represa bajo la primera hilera y detrás de la tabla que sostiene la canaleta.
    .photo = La canaleta por dentro, y por dónde se ha desbordado.
defect-downspout-clogged = Bajante tapado
    .what = El tubo que baja de la canaleta está tapado.
    .why = La canaleta de arriba se llena y se desborda, aunque parezca limpia.
    .water = El agua se represa en la canaleta y se derrama hacia la pared.
    .photo = El agua estancada en la salida, o lo que salió del tubo.
defect-drain-clogged = Desagüe o salida tapada
    .what = Hojas o tierra tapan la salida del techo plano.
    .why = El agua que no puede salir se queda en el techo. Pesa, y encuentra cada unión débil.
    .water = El agua estancada entra por uniones, ampollas y alrededor de la salida.
    .photo = La salida tapada, y hasta dónde llega o llegó el agua.

# --- wet
defect-gutter-overflow-marks = Marcas de desborde
    .what = Unas rayas en la tabla y la pared muestran que la canaleta se desborda, aunque hoy estaba limpia.
    .why = Es muy chica, está pandeada o se tapa cada otoño. Lo que derrama moja la pared.
    .water = El agua se derrama por el borde de atrás hacia la tabla y la pared.
    .photo = Las rayas, y la canaleta por dentro encima de ellas.
