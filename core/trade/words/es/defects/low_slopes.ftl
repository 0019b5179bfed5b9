# Low slopes: roofs too flat for shingles, where they join the steep ones, and their edges.

# --- split
defect-low-slope-worn-out = Techo plano al final de su vida
    .what = La membrana del techo plano está agrietada, encogida o pelada por todas partes.
    .why = Los parches paran una gotera y dejan la siguiente. La membrana entera llegó al final de su vida.
    .water = El agua entra por grietas y uniones, cada vez en más lugares.
    .photo = El techo entero, luego tres lugares bien separados, de cerca.
defect-membrane-split = Membrana del techo plano rajada
    .what = Se rajó la membrana del techo plano.
    .why = En un techo plano el agua no escurre de la rajadura, se queda encima de ella.
    .water = El agua pasa por la rajadura y se extiende por debajo antes de aparecer adentro.
    .photo = La rajadura con una cinta métrica a lo largo, y en qué parte del techo está.
defect-membrane-holed = Agujero en la membrana
    .what = Algo hizo un agujero en la membrana del techo plano.
    .why = Es un agujero abierto bajo agua estancada.
    .water = La lluvia pasa directo por el agujero.
    .photo = El agujero de cerca con una moneda, y lo que lo hizo.
defect-join-cracked = Unión con el techo plano agrietada
    .what = Se agrietó la tira donde el techo plano topa con el techo inclinado o con la pared.
    .why = Ahí dos techos se mueven de distinta manera, y por encima pasa toda el agua del inclinado.
    .water = El agua pasa por la grieta donde se juntan los dos techos.
    .photo = La grieta de cerca, y el largo de la unión.

# --- loose
defect-seam-open = Unión de membrana abierta
    .what = Dos tramos de membrana del techo plano se separaron en su unión.
    .why = Una unión abierta deja entrar más agua de lo que parece, y la membrana empieza a levantarse.
    .water = El agua estancada o empujada por el viento entra por la unión.
    .photo = La unión abierta con un dedo o una herramienta sin filo, y su largo.
defect-low-slope-blisters = Ampollas en la membrana
    .what = El aire o la humedad bajo la membrana la levantó en ampollas.
    .why = Una ampolla entera no gotea. Una rota sí, por eso nadie debe pisarla ni cortarla sin necesidad.
    .water = No entra agua mientras la ampolla esté entera.
    .photo = La ampolla con luz baja y una cinta métrica encima.
defect-low-slope-edge-loose = Metal del borde plano suelto
    .what = El metal a lo largo del borde del techo plano está suelto o doblado hacia arriba.
    .why = La mayoría de los techos planos que se vuelan empieza por el borde.
    .water = La lluvia con viento se mete bajo la membrana por el borde.
    .photo = El tramo suelto, y una mano que lo mueve.

# --- missing
defect-join-too-short = Unión que no sube lo suficiente
    .what = La membrana del techo plano no sube bastante bajo las tejas o por la pared.
    .why = La nieve y el viento empujan el agua más arriba de donde llega.
    .water = El agua entra por encima de la punta de arriba de la membrana.
    .photo = Una teja levantada con el final de la membrana, y una cinta métrica de ahí al doblez.
defect-low-slope-edge-missing = Borde de techo plano sin metal
    .what = La membrana termina en el borde del techo plano sin metal.
    .why = Ahí la levanta el viento, y el canto de la madera se moja.
    .water = El agua da la vuelta por debajo de la punta de la membrana.
    .photo = El borde desde abajo y desde arriba.
defect-parapet-cap-open = Remate del pretil abierto
    .what = El remate del pretil, la pared baja que rodea el techo plano, falta o tiene juntas abiertas.
    .why = Esa pared se moja desde arriba y lleva el agua por detrás de la membrana del techo.
    .water = La lluvia entra por las juntas abiertas y baja por dentro de la pared.
    .photo = La junta abierta desde arriba, y la pared de abajo.

# --- misbuilt
defect-join-lapped-wrong = Unión traslapada al revés
    .what = La membrana del techo plano va sobre las tejas y no debajo de ellas.
    .why = El agua que baja por el techo inclinado entra directo en la unión.
    .water = El agua baja por las tejas y se mete bajo la membrana.
    .photo = La unión desde arriba, y el borde traslapado de cerca.
defect-low-slope-shingled = Tejas sobre la parte plana
    .what = Las tejas del techo inclinado siguieron hacia abajo sobre una parte demasiado plana para ellas.
    .why = Las tejas de asfalto necesitan al menos 2 pulgadas de subida por cada 12. Con menos, el agua dura lo suficiente para meterse.
    .water = El agua sube bajo las tejas de la parte plana.
    .photo = El nivel o medidor de pendiente en la parte plana, que se pueda leer, y dónde cambia la pendiente.
defect-low-slope-nails-through = Clavos a través de la membrana
    .what = Se pusieron clavos o tornillos a través de la membrana del techo plano, y quedaron a la vista.
    .why = En un techo plano, cada uno es un agujero bajo agua estancada.
    .water = El agua baja por los clavos.
    .photo = Las cabezas a la vista de cerca, y cuántas son.

# --- smothered
defect-low-slope-smeared = Techo plano embarrado de cemento
    .what = Las uniones y grietas se embarraron con cemento asfáltico.
    .why = Se endurece, se agrieta con el siguiente invierno, y hay membranas que daña.
    .water = El agua entra por donde lo embarrado se agrietó o se despegó.
    .photo = Lo embarrado de cerca con sus grietas, y cuánto del techo abarca.
defect-low-slope-plants = Plantas en el techo plano
    .what = Crece musgo, pasto o arbolitos en la tierra que hay sobre el techo plano.
    .why = Las raíces atraviesan las uniones, y la tierra guarda agua.
    .water = El agua se queda entre las plantas y sigue las raíces a través de la membrana.
    .photo = Las plantas, y cómo está la membrana debajo de una de ellas.

# --- wet
defect-low-slope-ponding = Agua estancada en el techo plano
    .what = Dos días después de llover todavía hay agua en el techo plano.
    .why = Envejece la membrana y agrega peso, y cada unión débil queda bajo el agua.
    .water = El agua estancada entra por uniones y ampollas.
    .photo = El charco o el cerco de tierra que dejó, con una cinta métrica encima.
defect-low-slope-soft = Techo plano blando al pisar
    .what = El techo plano cede o chapotea al presionarlo.
    .why = Lo que hay bajo la membrana está mojado. No se seca con la membrana cerrada encima.
    .water = Ha entrado agua por una unión, un agujero o el borde, y se extendió bajo la membrana.
    .photo = El pie o la mano en el lugar blando, y sus límites marcados con tiza.
