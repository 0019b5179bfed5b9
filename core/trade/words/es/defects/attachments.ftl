# What is fastened to the roof: dishes, antennas, brackets, panels, snow guards.

# --- split
defect-mount-seal-aged = Sello del soporte reseco
    .what = La goma o el sellador al pie del soporte está agrietado.
    .why = Cada soporte va atornillado a través del techo. Su sello dura menos años que las tejas.
    .water = El agua entra alrededor de los tornillos.
    .photo = El pie del soporte todo alrededor, de cerca.

# --- loose
defect-mount-loose = Soporte flojo
    .what = El soporte se mueve, o sus tornillos se soltaron.
    .why = El viento lo jala y le agranda los agujeros.
    .water = El agua baja por los tornillos flojos.
    .photo = Una mano que mueve el soporte, y sus tornillos de cerca.
defect-mast-may-fall = Mástil o antena que puede caerse
    .what = El mástil o la antena cuelga de solo una parte de su sujeción.
    .why = Puede caerse. No se acerque si se inclina hacia un cable de luz.
    .water = El agua entra por donde se salieron sus tornillos.
    .photo = El mástil contra una línea recta, lo que todavía lo sostiene, y los cables de luz cerca si los hay.
defect-cables-loose = Cables sueltos sobre el techo
    .what = Hay cables sueltos sobre las tejas o colgando del borde.
    .why = Con el viento raspan los gránulos, y represan hojas. Los cables de paneles solares solo los toca un electricista.
    .water = No entra agua hasta que desgastan el techo o alguien los engrapa en él.
    .photo = Los cables, y lo que han raspado.
defect-snow-guard-loose = Paranieves suelto o arrancado
    .what = La nieve que se desliza arrancó un paranieves.
    .why = Ya no detiene la nieve, y sus agujeros quedaron abiertos.
    .water = El agua entra por los agujeros donde estaba sujeto.
    .photo = El paranieves suelto, sus agujeros, y lo que hay debajo del alero.

# --- missing
defect-mount-holes-left = Agujeros de un soporte viejo
    .what = Se quitó una antena, un plato o un soporte, y quedaron los agujeros de sus tornillos.
    .why = Cada uno atraviesa la cubierta y el tablero. Un poco de sellador se reseca pronto.
    .water = La lluvia baja directo por los agujeros abiertos.
    .photo = Cada agujero con un lápiz que lo señale, de cerca.
defect-snow-guard-missing = Sin paranieves donde se necesita
    .what = La nieve se desliza del techo sobre una puerta, un paso o un techo más bajo, sin nada que la detenga.
    .why = Una carga que se desliza puede lastimar a alguien, y arranca canaletas y daña techos más bajos.
    .water = Por esto solo no entra agua.
    .photo = El alero, y lo que hay debajo.

# --- misbuilt
defect-mount-not-flashed = Soporte sin tapajuntas
    .what = El soporte se atornilló directo a las tejas con sellador debajo, sin metal traslapado bajo la hilera de arriba.
    .why = Depende solo del sellador, que dura unos cuantos años.
    .water = El agua se mete bajo el soporte y baja por sus tornillos.
    .photo = El pie del soporte y las tejas que le quedan encima, de cerca.
defect-mount-misses-rafter = Soporte que no agarra la viga
    .what = Los tornillos entran en el tablero delgado y no en una viga.
    .why = El tablero no aguanta la fuerza del viento. Los tornillos se salen y dejan agujeros.
    .water = El agua baja por los tornillos que empezaron a moverse.
    .photo = Desde el ático, los tornillos al lado de la viga.
defect-solar-on-old-roof = Paneles en un techo ya viejo
    .what = Al techo bajo los paneles solares le quedan menos años que a los paneles.
    .why = Para techar de nuevo hay que quitar los paneles y volver a ponerlos, lo que cuesta más de lo que muchos dueños esperan.
    .water = Por esto no entra agua.
    .photo = Las tejas en la orilla de los paneles, de cerca, y todo el conjunto.
defect-solar-wire-damaged = Cables solares dañados
    .what = Los cables bajo los paneles están roídos, pelados o colgando en agua.
    .why = Llevan corriente siempre que hay sol y pueden causar un incendio. No toque ni los cables ni el metal.
    .water = Por esto no entra agua. El peligro es el fuego y la descarga eléctrica.
    .photo = Los cables desde la orilla de los paneles, con lente.

# --- smothered
defect-solar-debris = Hojas o nidos bajo los paneles
    .what = Bajo los paneles se atoraron hojas, nidos o ramas.
    .why = Represan el agua, mantienen mojado el techo y pueden arder. Los nidos de aves protegidas no se mueven en temporada de cría.
    .water = El agua se represa detrás de ellos y se mete bajo las tejas.
    .photo = Desde la orilla de los paneles, a ras del techo.
defect-snow-guard-snow-dams = Paranieves que forma hielo
    .what = La nieve que detiene el paranieves se derrite por debajo y se congela en una represa de hielo.
    .why = El paranieves hace su trabajo, pero el ático caliente de abajo convierte la nieve en hielo.
    .water = El agua se estanca detrás del hielo y sube bajo las tejas.
    .photo = El hielo y el paranieves, o las manchas debajo.

# --- wet
defect-mount-leaks = Madera mojada bajo el soporte
    .what = El tablero bajo el soporte está oscuro o blando.
    .why = El soporte ha goteado un buen tiempo. Hay que renovar la madera antes de volver a sujetar algo ahí.
    .water = Ha entrado agua por los tornillos.
    .photo = Desde el ático, la madera oscura alrededor de los tornillos.
