# From the ground: the roof's line, trees, the electric service.

# --- split
defect-branch-rubs = Rama que roza el techo
    .what = Una rama toca el techo y se mueve con el viento.
    .why = Raspa los gránulos y les da a las ardillas paso al techo.
    .water = No entra agua hasta que lo desgasta por completo.
    .photo = La rama donde toca, y el lugar gastado.

# --- loose
defect-branch-may-fall = Rama muerta sobre el techo
    .what = Una rama muerta o quebrada cuelga sobre el techo.
    .why = Puede caer con el próximo viento, sobre el techo o sobre una persona.
    .water = Entra agua si atraviesa el techo.
    .photo = La rama y el techo debajo, desde el suelo.
defect-service-mast-loose = Mástil eléctrico suelto o doblado
    .what = El tubo que trae el cable de luz a la casa está suelto, doblado o arrancado.
    .why = El cable tiene corriente. Nadie se acerca, ni con una escalera, antes de que lo vea la compañía de luz.
    .water = El agua entra junto al mástil donde se movió.
    .photo = Desde el suelo, con lente.

# --- missing
defect-service-mast-seal-open = Sello del mástil eléctrico abierto
    .what = El collarín por donde el mástil eléctrico atraviesa el techo está rajado o falta.
    .why = Es una bota como cualquier otra, pero junto a un cable con corriente. Primero hay que dejar segura la electricidad.
    .water = La lluvia baja por el mástil hasta la casa.
    .photo = A distancia segura, con lente.

# --- misbuilt
defect-ridge-line-sags = Cumbrera hundida
    .what = La línea de la cumbrera se hunde entre sus puntas.
    .why = La estructura de abajo cedió, o carga más de lo que se hizo para cargar.
    .water = Por esto solo no entra agua. Las tapas y las tejas se agrietan a lo largo del hundimiento.
    .photo = Toda la cumbrera desde el suelo, con algo recto en la foto.
defect-slope-dips = Vertiente hundida
    .what = Una vertiente tiene una hondonada que abarca varias vigas.
    .why = Las vigas se doblan por demasiado peso, por falta de madera o porque una se rompió.
    .water = Por esto solo no entra agua.
    .photo = La vertiente de lado con luz baja.
defect-service-line-low = Cable de luz bajo sobre el techo
    .what = El cable de luz cuelga bajo sobre el techo o sobre el paso hacia él.
    .why = Nadie puede trabajar ahí con seguridad antes de que la compañía de luz lo cubra o lo suba.
    .water = Por esto no entra agua. Pero decide dónde se puede poner una escalera.
    .photo = Desde el suelo: el cable, el alero y dónde quedaría una escalera.

# --- smothered
defect-leaves-fall-on-roof = Árboles que sueltan hojas al techo
    .what = Los árboles cuelgan sobre el techo y cada otoño llenan canaletas y valles.
    .why = A su sombra el techo se queda mojado, y crece musgo.
    .water = El agua se represa donde quedan las hojas.
    .photo = Los árboles sobre el techo, desde el suelo.

# --- wet
defect-roof-stays-wet = Techo mojado por la sombra
    .what = Árboles o enredaderas dan sombra a una parte del techo, que se seca horas después que el resto.
    .why = Lo que sigue mojado cría musgo y es lo primero que se pudre.
    .water = Por esto solo no entra agua.
    .photo = La vertiente sombreada y los árboles de al lado.
