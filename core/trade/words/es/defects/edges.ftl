# Eaves, rakes, and what closes them below.

# --- split
defect-drip-edge-rusted = Goterón oxidado
    .what = El metal doblado del borde está oxidado o perforado.
    .why = Con agujeros ya no aparta el agua, y la madera de atrás empieza a pudrirse.
    .water = El agua pasa por el óxido y corre por el canto de la madera.
    .photo = El óxido de cerca, y cuánto del borde abarca.
defect-eave-shingles-broken = Tejas del borde rotas
    .what = Hay tejas del alero quebradas, a menudo por escaleras, hielo o ramas.
    .why = La primera hilera cubre el canto del tablero. Donde está rota, el canto queda al descubierto.
    .water = El agua entra por la rotura al canto del tablero.
    .photo = La rotura de cerca desde la escalera, y su largo por el alero.
defect-fascia-paint-failed = Pintura de la fascia vencida
    .what = La pintura de la tabla detrás de la canaleta se descascara o ya no está.
    .why = La madera pelada absorbe agua y se pudre. La pintura anterior a 1978 puede tener plomo y no se debe raspar ni lijar sin cuidado.
    .water = Por aquí no entra agua a la casa. La tabla misma se empapa.
    .photo = La pintura descascarada de cerca, y el largo de la tabla.

# --- loose
defect-drip-edge-loose = Goterón suelto
    .what = El metal del borde está doblado, salido o sin clavos.
    .why = El viento lo agarra y puede arrancar con él las primeras tejas.
    .water = El agua da la vuelta bajo el metal hasta el canto de la madera.
    .photo = El tramo suelto, y una mano que lo mueve.
defect-starter-unsealed = Arranque que no sujeta el borde
    .what = La primera hilera se levanta con la mano, porque la de abajo, el arranque, no tiene adhesivo en el borde o está al revés.
    .why = El viento agarra un techo por sus bordes. Una primera hilera suelta lo deja empezar.
    .water = La lluvia con viento se mete bajo el borde levantado hasta la madera.
    .photo = La primera hilera levantada en el alero, con la franja adhesiva del arranque a la vista, o su falta.
defect-rake-shingles-lifting = Tejas sueltas en borde inclinado
    .what = Las tejas a lo largo del borde inclinado están paradas o se levantan con la mano.
    .why = A este borde el viento le llega desde abajo. Las tejas sueltas de ahí son las primeras en volarse.
    .water = La lluvia con viento entra de lado bajo las puntas levantadas.
    .photo = Las puntas levantadas desde abajo a lo largo del borde, y una levantada con la mano.
defect-fascia-loose = Tabla de fascia suelta
    .what = La tabla que cierra el alero, o su forro de metal, se soltó.
    .why = Sostiene la canaleta, y no deja pasar viento ni animales.
    .water = La lluvia con viento entra por detrás de la tabla.
    .photo = El tramo suelto, y el hueco que deja atrás.
defect-soffit-loose = Sofito colgando
    .what = La parte de abajo del alero se soltó y cuelga.
    .why = Puede caerse, y por ahí el viento entra al ático.
    .water = La lluvia y la nieve con viento entran por la abertura.
    .photo = La pieza que cuelga, de qué cuelga, y lo que hay debajo.

# --- missing
defect-no-drip-edge = Sin goterón
    .what = No está la tira de metal doblado que va en el borde del techo.
    .why = Sin ella, el agua se pega por debajo de las tejas y moja el canto de la madera, que se pudre.
    .water = El agua da la vuelta por el borde y empapa la madera y la tabla de abajo.
    .photo = El borde desde abajo, con la madera o la tabla pelada donde debería ir el metal.
defect-drip-edge-short = Goterón corto o mal traslapado
    .what = Las piezas de metal del borde no traslapan 2 pulgadas, o el metal sube menos de 2 pulgadas por el tablero.
    .why = En cada lugar corto queda abierto el canto de la madera, y el viento tiene de dónde jalar.
    .water = El agua se mete entre las piezas y llega al canto del tablero.
    .photo = Un traslape corto o el ala corta, con una cinta métrica encima.
defect-starter-missing = Sin arranque
    .what = No se puso la hilera adicional que va bajo las tejas de más abajo, en el alero.
    .why = Entonces, bajo cada ranura y cada junta de la primera hilera no hay más que la membrana.
    .water = El agua pasa por las ranuras de la primera hilera hasta el canto del tablero.
    .photo = Una teja levantada en el alero sin otra debajo, y las juntas de la primera hilera.
defect-soffit-gap-open = Hueco abierto en el sofito
    .what = Hay un hueco entre la parte de abajo del alero y la pared o la tabla del borde.
    .why = Entran pájaros, ardillas, murciélagos y avispas, y con ellos la nieve con viento.
    .water = La lluvia y la nieve con viento entran por el hueco.
    .photo = El hueco con una cinta métrica encima, y nidos, excremento o rasguños si los hay.
defect-soffit-panel-missing = Falta una pieza del sofito
    .what = Falta una pieza de la parte de abajo del alero.
    .why = El ático queda abierto a los animales y al viento. En una tormenta, el viento empuja el tablero desde adentro.
    .water = La lluvia y la nieve con viento entran directo.
    .photo = La abertura desde abajo, y lo que se ve adentro.
defect-fascia-missing = Falta la tabla del borde
    .what = Falta la tabla que debe cerrar las puntas de las vigas.
    .why = Las puntas de madera y el canto del tablero quedan abiertos a la intemperie y a los animales.
    .water = La lluvia con viento moja las puntas de las vigas y el canto del tablero.
    .photo = Las puntas de viga descubiertas y qué largo tiene el hueco.

# --- misbuilt
defect-drip-edge-wrong-side = Goterón del lado equivocado
    .what = En el alero el metal va debajo de la membrana; en el borde inclinado, encima de ella. Aquí está al revés.
    .why = El agua que baja sobre la membrana debe terminar sobre el metal, no detrás de él.
    .water = El agua que baja por la membrana corre detrás del metal hasta el canto de la madera.
    .photo = La primera teja levantada, con la membrana y el metal a la vista.
defect-eave-overhang-short = Tejas que terminan muy cortas
    .what = Las tejas terminan al ras del borde o antes, cuando deben pasar del metal de 1/4 a 3/8 de pulgada.
    .why = El agua que gotea derecho se pega al borde y se va por detrás de la canaleta.
    .water = El agua da la vuelta por el borde hasta la madera y detrás de la canaleta.
    .photo = El borde desde la punta, con una cinta métrica del metal a la teja.
defect-eave-overhang-long = Tejas que salen de más
    .what = Las tejas salen demasiado del borde y se vencen.
    .why = Se quiebran con la nieve, las escaleras y el viento, y el agua salta por encima de la canaleta.
    .water = No entra agua hasta que se quiebran. Entonces queda al descubierto el canto del tablero.
    .photo = El borde vencido desde la punta, con una cinta métrica.
defect-starter-joints-lined-up = Juntas del arranque alineadas
    .what = Las juntas del arranque quedan debajo de las juntas de la primera hilera de tejas.
    .why = Donde coinciden dos juntas no queda teja que se lleve el agua.
    .water = El agua pasa por las dos juntas hasta el canto del tablero.
    .photo = Una teja levantada con las dos juntas marcadas.
defect-rake-cut-ragged = Corte disparejo en borde inclinado
    .what = Las tejas a lo largo del borde inclinado se cortaron disparejas y en partes no llegan al metal.
    .why = En cada lugar corto el agua escurre por el costado de la madera en vez de pasarlo.
    .water = El agua corre por las puntas cortas hasta el canto del tablero.
    .photo = A lo largo del borde desde abajo, y el lugar más corto con una cinta métrica.

# --- smothered
defect-soffit-vents-painted = Entradas tapadas con pintura
    .what = Las aberturas chicas de la parte de abajo del alero están llenas de pintura.
    .why = Al ático no le llega aire desde abajo, se queda húmedo y caliente, y envejece el techo por dentro.
    .water = No entra lluvia. El aire húmedo de la casa se queda en el ático y gotea cuando hace frío.
    .photo = Las aberturas pintadas de cerca, y un tramo de ellas.

# --- wet
defect-eave-wood-rotten = Madera del alero podrida
    .what = El canto del tablero en el alero está blando o podrido.
    .why = Ahí van clavadas las primeras tejas y la canaleta. La pudrición del borde va subiendo por la vertiente.
    .water = Ha entrado agua por el borde: falta metal, la canaleta se llena o hay hielo.
    .photo = Un destornillador metido en la madera blanda desde abajo, y hasta dónde sigue por el alero.
defect-rake-board-rotten = Tabla del borde inclinado podrida
    .what = La tabla a lo largo del borde inclinado está blanda o podrida.
    .why = A ella va sujeto el borde del techo. El viento agarra por donde ya no está firme.
    .water = El agua corre por detrás donde falta el metal del borde o está separado.
    .photo = Un destornillador metido en la madera blanda, y el largo que está blando.
defect-fascia-rotten = Tabla de fascia podrida
    .what = La tabla detrás de la canaleta está blanda o podrida.
    .why = De ella cuelga la canaleta. Cuando los tornillos se sueltan, la canaleta se viene abajo.
    .water = El agua corre por detrás de la canaleta: está llena, cuelga muy abajo o el metal del borde no entra en ella.
    .photo = Un destornillador metido en la madera blanda, y cómo cuelga de ella la canaleta.
defect-soffit-stained = Sofito manchado o mojado
    .what = La parte de abajo del alero tiene manchas, pintura descascarada o lugares mojados.
    .why = Le llega agua desde arriba o por detrás de la canaleta. Lo que se ve aquí empezó más arriba.
    .water = El agua entra más arriba: en el alero, en un valle o detrás de la canaleta.
    .photo = La mancha con lo que queda encima, y si hoy está mojada.
