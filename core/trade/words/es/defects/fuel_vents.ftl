# Vents of appliances that burn fuel. The work is a licensed trade's: first ask which appliance and which fuel.

# --- split
defect-vent-rusted = Conducto perforado por el óxido
    .what = El conducto de metal está oxidado, y en partes el óxido lo atraviesa.
    .why = Los gases pueden escapar hacia la casa. Pueden traer monóxido de carbono, que no huele.
    .water = La lluvia entra por el óxido y baja hasta el aparato.
    .photo = El óxido a unos pies de distancia, sin ponerle la mano, y el conducto entero.
defect-vent-stained = Rayas blancas o de óxido
    .what = Unas rayas por fuera muestran que los gases se condensan dentro del conducto.
    .why = El conducto puede ser del tamaño o tipo equivocado para su aparato, o enfriarse muy rápido. Se oxida por dentro.
    .water = Por aquí entra poca lluvia. El agua viene de los gases mismos.
    .photo = Las rayas, las uniones y el conducto entero.
defect-vent-flashing-split = Base del conducto oxidada o rota
    .what = La base de metal alrededor del conducto está oxidada o rota, mientras que el conducto se ve entero.
    .why = Un techador puede renovar la base. Para eso el conducto no se mueve, ni se corta, ni se desarma.
    .water = El agua pasa por la base y entra al techo junto al tubo caliente.
    .photo = La rotura o el óxido de cerca, y el conducto que le queda encima.

# --- loose
defect-vent-leaning = Conducto suelto o inclinado
    .what = El conducto está inclinado, se separó en una unión o perdió su tirante.
    .why = Puede venirse abajo, y los gases pueden escapar hacia el ático o la casa. Pueden traer monóxido de carbono.
    .water = La lluvia entra por la unión que se abrió.
    .photo = La inclinación contra una línea recta, y la unión o el tirante, sin ponerle la mano.
defect-vent-collar-loose = Collarín de lluvia suelto
    .what = El anillo del conducto que no deja entrar lluvia en la unión con su base se corrió o perdió el sello.
    .why = Es una gotera común y chica, y se cierra sin tocar las uniones del conducto.
    .water = La lluvia corre por el conducto y entra por detrás del anillo.
    .photo = El anillo todo alrededor, de cerca.

# --- missing
defect-vent-cap-missing = Falta el sombrerete del conducto
    .what = Ya no está el remate que cubre la boca del conducto.
    .why = Entran lluvia y pájaros, y el viento regresa los gases. El sombrerete debe ser el que se hizo para ese conducto.
    .water = La lluvia cae derecho por el conducto hasta el aparato.
    .photo = La boca abierta del conducto, desde la escalera o con lente.

# --- misbuilt
defect-vent-too-low = Conducto que termina muy abajo
    .what = El conducto de la calefacción, el calentador de agua o la estufa termina muy cerca del techo o de algo más alto a su lado.
    .why = El viento puede regresar los gases por el conducto hacia la casa. Pueden traer monóxido de carbono, que no huele.
    .water = Por aquí no entra agua. El peligro son los gases.
    .photo = Todo el conducto de lado con una cinta métrica del techo a su punta, y lo que tiene cerca.
defect-vent-too-close-to-wood = Conducto muy cerca de la madera
    .what = La madera, el aislamiento o las tejas quedan más cerca del conducto caliente de lo que permite su etiqueta.
    .why = La madera que se calienta durante años se enciende con más facilidad.
    .water = Por aquí no entra agua. El peligro es el fuego.
    .photo = El espacio con una cinta métrica al lado, no adentro, y la etiqueta del conducto si se puede leer.
defect-vent-wrong-kind = Conducto de tipo equivocado
    .what = El conducto no parece hecho para su aparato. Un conducto Tipo B, por ejemplo, es solo para gas, nunca para aceite de calefacción ni leña.
    .why = El conducto equivocado puede quemarse, perforarse con el óxido o dejar escapar gases. Pueden traer monóxido de carbono.
    .water = Por esto no entra agua.
    .photo = El conducto, su etiqueta y la etiqueta del aparato de abajo.
defect-vent-orphaned = Conducto de un aparato ya retirado
    .what = Parece que el conducto ya no le sirve a nada.
    .why = Cada tubo a través del techo es una gotera más por venir. Antes de cerrarlo, un especialista con licencia debe decir que nada lo usa.
    .water = Por esto solo no entra agua.
    .photo = El conducto en el techo, y su otra punta adentro.
defect-suspect-asbestos-flue = Conducto que puede tener asbesto
    .what = El tubo gris, como de piedra, puede ser de asbesto-cemento. Algunas chimeneas prefabricadas viejas llevan un forro así. Solo un análisis lo puede decir.
    .why = Sin tocarlo es poco peligro. Si se corta, taladra o rompe, puede soltar fibras que dañan los pulmones.
    .water = Por esto no entra agua. Pero decide cómo se puede hacer cualquier trabajo aquí.
    .photo = A distancia y sin tocar: el tubo, su superficie y su punta.

# --- smothered
defect-vent-blocked = Conducto tapado
    .what = Un nido, hojas, nieve o pedazos caídos tapan el conducto.
    .why = Los gases que no pueden salir llenan la casa. Pueden traer monóxido de carbono. El aparato debe quedar apagado hasta que se destape el conducto.
    .water = Por esto no entra agua. El peligro son los gases.
    .photo = La boca tapada desde un lugar seguro, con lente.
