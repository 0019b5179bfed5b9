### Una cubierta tal como se coloca.

starter-eaves = a lo largo de los aleros
starter-eaves-and-rakes = a lo largo de los aleros y por los bordes inclinados

laying-no-size = Cada pieza necesita ancho, alto, exposición y cuántas vienen en el paquete. Anote los cuatro.
laying-exposure-over-height = La exposición, { $exposure }, es más que el alto de la pieza, { $height }. Anote la exposición impresa en el paquete.
laying-joints-meet = Con un desfase de { $offset } las juntas quedan a menos de { $shortest } de las de abajo, en piezas de { $width } de ancho. Anote otro desfase.
laying-too-small = Las piezas son demasiado pequeñas para un techo. El ancho y la exposición son de al menos 1/2 pulgada.

plan-line = { $line } { $length }
plan-length = { $length }
plan-pitch = { $pitch }
plan-slope-pitch = { $slope }: { $pitch }
plan-street = calle
plan-south = sur
plan-stain = mancha
plan-water = camino del agua
plan-along = { $length } a lo largo del alero
laid-plane = Hileras: { $courses }. Piezas abiertas: { $opened }, de recortes: { $reused }.
laid-roof = Paquetes: { $bundles }. Piezas: { $opened }. Recorte: { $waste } %.
