# Walls above a roof. Siding, stucco and windows are another trade's work, but their water is often taken for the roof's.

# --- split
defect-wall-cracks-open = Grietas en la pared de arriba
    .what = El estuco, el ladrillo o el revestimiento sobre el techo está agrietado o tiene las juntas abiertas.
    .why = El agua que entra por ahí sale debajo del techo y parece una gotera del techo.
    .water = La lluvia con viento entra por la pared y baja por detrás del tapajuntas.
    .photo = La grieta de cerca, y la pared con el techo debajo.
defect-wall-paint-failed = Pintura de la pared descascarada
    .what = Se descascara la pintura de la pared o las molduras sobre el techo.
    .why = La madera pelada absorbe agua. La pintura anterior a 1978 puede tener plomo y no se debe raspar ni lijar sin cuidado.
    .water = Por esto solo no entra agua. La madera se empapa.
    .photo = La pintura descascarada de cerca, y el año de la casa en el pie de foto.

# --- loose
defect-siding-loose = Revestimiento suelto o faltante
    .what = Hay piezas de revestimiento sueltas o faltantes sobre el techo.
    .why = Lo que queda atrás no está hecho para la intemperie, y las piezas sueltas rompen las tejas de abajo.
    .water = La lluvia con viento entra por detrás del revestimiento y baja hasta la unión con el techo.
    .photo = El lugar suelto o abierto, y lo que se ve detrás.

# --- missing
defect-window-above-leaks = Ventana que gotea sobre el techo
    .what = La ventana o puerta sobre el techo tiene juntas abiertas, o no tiene metal arriba o debajo de su repisa.
    .why = Su agua baja por dentro de la pared y aparece debajo del techo.
    .water = La lluvia con viento entra por las esquinas de la ventana y baja por detrás del tapajuntas.
    .photo = La repisa y sus esquinas de cerca, y la ventana con el techo debajo.

# --- misbuilt
defect-wall-paper-behind = Membrana de pared mal metida
    .what = La membrana bajo el revestimiento va metida detrás del tapajuntas del techo y no encima de él.
    .why = Todo revestimiento deja pasar algo de agua. La membrana debe soltarla sobre el metal.
    .water = El agua de atrás del revestimiento baja por detrás del metal y entra en la pared.
    .photo = El pie de la pared con el revestimiento levantado, si se deja, y el borde de abajo de la membrana.

# --- wet
defect-wall-rotten = Madera blanda en la pared
    .what = El revestimiento, las molduras o la madera de la pared están blandos justo encima del techo.
    .why = Están muy cerca del techo, o les entra agua más arriba. El tapajuntas no se puede sujetar a madera podrida.
    .water = El agua sube desde el techo o baja por dentro de la pared.
    .photo = Un destornillador metido en la madera blanda, y el espacio entre el revestimiento y el techo.
