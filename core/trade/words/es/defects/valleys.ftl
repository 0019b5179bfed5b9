# Valleys.

# --- split
defect-valley-metal-rusted = Metal del valle oxidado
    .what = El metal del valle está oxidado, delgado o con agujeros.
    .why = Un valle lleva el agua de dos vertientes. Ahí un agujerito gotea más que una grieta en otra parte.
    .water = El agua pasa por los agujeros a la madera bajo el valle.
    .photo = El peor óxido de cerca después de limpiarlo, y el largo del valle.
defect-valley-shingles-worn = Tejas del valle gastadas
    .what = Las tejas del valle perdieron sus gránulos o se gastaron hasta el fondo por donde corre el agua.
    .why = El valle se gasta antes que el resto, porque es el que más agua lleva.
    .water = El agua pasa por lo gastado a la membrana de abajo y entra por su primer punto débil.
    .photo = La línea gastada de cerca, y el valle desde abajo.
defect-valley-shingles-cracked = Tejas del valle agrietadas
    .what = Las tejas cruzan el valle sin asentar en la madera, y se agrietaron en el doblez.
    .why = Lo que queda hueco se quiebra con el pie, con la nieve, o solo con el frío.
    .water = El agua pasa por la grieta, empujada por la de dos vertientes.
    .photo = La grieta de cerca, y un dedo que presiona la parte hueca.

# --- loose
defect-valley-metal-loose = Metal del valle suelto
    .what = El metal del valle se soltó, se pandeó o se corrió hacia abajo.
    .why = El metal crece y se encoge con el sol. Si está mal sujeto, se arranca solo.
    .water = El agua se mete por la punta de arriba o por los lados del metal que se movió.
    .photo = El metal pandeado o corrido, y su punta de arriba.
defect-valley-edges-loose = Tejas del valle sueltas
    .what = Las puntas cortadas de las tejas a lo largo del valle se levantan y no están pegadas.
    .why = El agua rápida de un valle se mete bajo todo lo que sobresale.
    .water = El agua corre de lado bajo las puntas sueltas, más allá de la orilla del metal.
    .photo = Una punta cortada levantada con la mano, y cuántas hay así.

# --- missing
defect-valley-lining-missing = Valle sin forro
    .what = Bajo las tejas del valle no hay ni metal ni una segunda membrana.
    .why = Un valle necesita su propio forro, porque las tejas solas no detienen tanta agua.
    .water = El agua que pasa las tejas llega de inmediato a la madera.
    .photo = Las tejas levantadas en el valle, con lo que hay debajo.
defect-valley-lining-narrow = Metal del valle muy angosto
    .what = El metal del valle abierto es más angosto que las 24 pulgadas que pide el código de construcción.
    .why = Con lluvia fuerte, el agua corre más ancha que el metal.
    .water = El agua pasa por la orilla del metal y se mete bajo las tejas.
    .photo = Una teja levantada al lado, con una cinta métrica del centro a la orilla del metal.
defect-valley-top-open = Parte alta del valle abierta
    .what = Donde el valle llega a la cumbrera, el metal o las tejas no cierran por arriba.
    .why = Es un agujero chico en el punto donde menos se espera.
    .water = La lluvia con viento entra por arriba y baja por debajo del valle.
    .photo = La punta de arriba del valle vista desde arriba, de cerca.
defect-valley-foot-short = Pie del valle corto
    .what = Abajo, el metal del valle no llega a la canaleta o al borde.
    .why = El agua de dos vertientes cae en el canto del tablero y no en la canaleta.
    .water = El agua da la vuelta bajo la punta corta hacia la madera y el sofito.
    .photo = La punta de abajo del valle desde la escalera, con la canaleta.

# --- misbuilt
defect-valley-cut-wrong = Valle mal cortado
    .what = Las tejas se cortaron del lado equivocado, se metieron hasta el centro, o no se les recortó la esquina de arriba.
    .why = Una esquina cuadrada en el paso del agua la lleva de lado, debajo de la teja.
    .water = El agua se atora en las esquinas y corre de lado bajo las tejas.
    .photo = La línea de corte de frente, y una punta levantada con su esquina.
defect-valley-nails-in-middle = Clavos en el valle
    .what = Se clavó en el centro del valle o cerca de él, por donde corre el agua.
    .why = Ahí cada clavo es un agujero bajo el agua que corre.
    .water = El agua baja por los clavos directo a la madera.
    .photo = Las cabezas de los clavos, con una cinta métrica desde el centro del valle.
defect-valley-into-wall = Valle que termina en una pared
    .what = El valle topa con una pared, una chimenea u otra vertiente, y el agua no tiene adónde ir.
    .why = Ahí se amontonan hojas y nieve, y el agua se queda contra la pared.
    .water = El agua estancada entra por detrás del revestimiento y por cada unión.
    .photo = El final del valle desde arriba, y la pared donde topa.
defect-valley-slopes-uneven = Valle de dos pendientes sin freno
    .what = Una vertiente empinada topa con una más plana, y el valle no tiene nada que frene el agua rápida antes de subir al lado plano.
    .why = El agua del lado empinado pasa de largo el centro y se mete bajo las tejas del otro lado.
    .water = El agua de la vertiente más empinada cruza el valle y se mete bajo las tejas de la más plana.
    .photo = El valle desde abajo con las dos vertientes, y la pendiente de cada una.

# --- smothered
defect-valley-clogged = Valle tapado
    .what = Hay hojas, agujas de pino o ramas en el valle, el ángulo hacia adentro donde se juntan dos vertientes.
    .why = Un valle lleva el agua de dos vertientes. Lo que hay en él la represa y lo mantiene mojado.
    .water = El agua se represa detrás de las hojas y corre de lado bajo las tejas.
    .photo = El valle desde abajo con lo que hay en él, y el punto donde se represa.
defect-valley-smeared = Valle embarrado de cemento
    .what = El valle está lleno o embarrado de cemento asfáltico negro.
    .why = Esconde lo que gotea, represa el agua en cada bola y se agrieta en pocas temporadas.
    .water = El agua se detiene en las bolas y entra por donde el cemento se despegó.
    .photo = El largo del valle, y un lugar agrietado de cerca.
defect-valley-relaid-over = Valle viejo bajo el nuevo
    .what = Las tejas nuevas se metieron en el valle sobre las viejas o sobre el metal viejo.
    .why = El valle queda grueso y duro, no asienta, y el forro gastado sigue siendo el que cuenta.
    .water = El agua que pasa las tejas corre sobre el forro viejo y gastado.
    .photo = La punta de abajo del valle con todas las capas a la vista.

# --- wet
defect-valley-deck-soft = Madera blanda bajo el valle
    .what = La madera debajo o al lado del valle cede al presionarla.
    .why = Lleva tiempo mojada. Para corregirlo hay que abrir el valle.
    .water = Ha pasado agua a través del forro del valle o por encima de su orilla.
    .photo = La mano o el pie en el lugar blando, y el valle encima.
