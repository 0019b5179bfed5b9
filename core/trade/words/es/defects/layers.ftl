# Layers of covering, one over another.

# --- loose
defect-top-layer-loose = Capa de arriba apenas clavada
    .what = Hay dos capas, y los clavos de la de arriba llegan a las tejas viejas pero casi no a la madera.
    .why = El techo de arriba cuelga del viejo y se puede desprender por tramos enteros.
    .water = La lluvia con viento se mete bajo la capa de arriba y se extiende entre las dos.
    .photo = Un clavo sacado junto al grueso de las dos capas, con una cinta métrica.

# --- misbuilt
defect-layers-not-flat = Cubierta dispareja sobre la vieja
    .what = La cubierta se puso sobre una vieja que no estaba pareja, y se marca cada borde enroscado y cada escalón.
    .why = Las tejas que quedan huecas se quiebran al pisarlas, se gastan en los lomos y no se pegan.
    .water = La lluvia con viento se mete bajo los bordes que no asientan.
    .photo = A ras de la vertiente con los lomos a la vista, y una regla larga sobre uno de ellos.
defect-laid-over-barred-base = Cubierta sobre pizarra o barro
    .what = La cubierta se puso sobre pizarra, teja de barro o cemento, o asbesto-cemento, que no se deben cubrir así.
    .why = Una base así es muy dura y dispareja para clavar, y su peso sigue sobre la estructura.
    .water = La lluvia con viento se mete bajo las tejas que no asientan en una base así.
    .photo = El borde cortado con los dos materiales a la vista. No rompa nada.
defect-old-edge-left-inside = Borde viejo debajo del nuevo
    .what = En el borde, la cubierta nueva se puso sobre la vieja sin recortar el borde viejo.
    .why = Las capas juntas quedan gruesas y abiertas en la punta, por donde trabajan el agua y el viento.
    .water = El agua se mete entre las capas por el borde y moja la madera de lado.
    .photo = El borde desde abajo y desde la punta, con todas las capas a la vista.

# --- smothered
defect-second-layer = Dos capas de cubierta
    .what = Se puso un segundo techo encima del primero. La cubierta más vieja sigue debajo.
    .why = Según el código de construcción, un techo con dos capas no recibe una tercera. La próxima cubierta nueva exige quitar las dos.
    .water = Por esto solo no entra agua. Cuando hay una gotera, dos capas esconden de dónde viene.
    .photo = El borde cortado con las dos capas, y un dedo o una cinta métrica en cada una.
defect-third-layer = Tres capas o más
    .what = Hay tres cubiertas o más, una encima de otra.
    .why = Los códigos de hoy no permiten una tercera capa. Es mucho peso para la estructura y mala base para cualquier reparación.
    .water = Por esto solo no entra agua. Cuando hay una gotera, las capas esconden de dónde viene.
    .photo = El borde cortado con todas las capas, y una cinta métrica sobre el grueso total.
defect-wood-under-asphalt = Tejas de madera debajo
    .what = Se pusieron tejas de asfalto sobre tejas viejas de madera, que suelen ir sobre tablas separadas.
    .why = Los clavos encuentran madera solo a ratos, y un techo nuevo necesitará un tablero nuevo sobre las tablas.
    .water = Por esto solo no entra agua. Cuando hay una gotera, se extiende por las tejas de madera.
    .photo = El borde cortado, o las tejas de madera y los espacios vistos desde el ático.
defect-sheathing-over-old = Tablero puesto sobre techo viejo
    .what = Un techo viejo se cubrió con un tablero nuevo, y sobre este está la cubierta de ahora.
    .why = El techo viejo de abajo sigue contando como capa, sigue pesando sobre la estructura y esconde el tablero verdadero.
    .water = Por esto solo no entra agua. Una gotera puede correr lejos entre los dos tableros antes de aparecer.
    .photo = El borde con la cubierta vieja, el tablero nuevo y la cubierta nueva, y una cinta métrica encima.
