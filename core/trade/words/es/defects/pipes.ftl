# Plumbing pipes, their boots, and hoods of fans and dryers.

# --- split
defect-boot-split = Bota rajada
    .what = Se rajó el collarín que sella el tubo de plomería donde sale del techo.
    .why = Es una de las goteras más comunes. Suele ser lenta, y primero aparece como una mancha en el cielo raso.
    .water = La lluvia corre por el tubo y entra al ático por la rajadura.
    .photo = La rajadura de cerca, luego toda la bota con las tejas de alrededor.
defect-boot-cracking = Bota que empieza a agrietarse
    .what = El collarín alrededor del tubo está duro y tiene grietas finas, pero ninguna lo atraviesa todavía.
    .why = El sol reseca estos collarines años antes que las tejas de alrededor. No tardará mucho en rajarse.
    .water = Todavía no entra agua.
    .photo = El collarín todo alrededor, de cerca, presionado con un dedo.
defect-boot-torn-open = Bota desgarrada
    .what = El collarín se desgarró del tubo, y se puede ver hacia abajo junto al tubo.
    .why = Es un agujero abierto en el techo, tan ancho como el hueco.
    .water = La lluvia baja directo junto al tubo hasta la casa.
    .photo = El hueco desde arriba con un dedo o lápiz adentro, y toda la bota.
defect-boot-metal-rusted = Base de bota oxidada o rota
    .what = La base de metal o plástico de la bota está perforada por el óxido o agrietada.
    .why = Un collarín nuevo no ayuda donde la base ya no sirve.
    .water = El agua pasa por la base a la madera alrededor del tubo.
    .photo = El agujero o la grieta de la base de cerca, y las tejas de alrededor.
defect-boot-chewed = Bota de plomo roída
    .what = Las ardillas royeron el plomo blando alrededor del tubo.
    .why = Vuelven. Cada visita lo abre más.
    .water = La lluvia entra por el borde roído y baja por el tubo.
    .photo = Las marcas de dientes y el hueco, de cerca.
defect-pipe-cracked = Tubo de plomería agrietado
    .what = El tubo mismo está agrietado o roto por encima del techo.
    .why = Ninguna bota puede sellar un tubo que gotea, y puede llegar gas de drenaje al ático.
    .water = La lluvia entra por la grieta y baja por fuera del tubo dentro de la casa.
    .photo = La grieta de cerca, y hasta dónde baja.
defect-hood-cracked = Campana agrietada o rota
    .what = La campana sobre el ducto del extractor o de la secadora está agrietada o rota.
    .why = Protege de la lluvia y los pájaros un agujero que da a la casa.
    .water = La lluvia cae por la rotura al ducto o junto a él.
    .photo = La rotura de cerca, y la campana de lado.

# --- loose
defect-boot-lifted = Base de la bota levantada
    .what = La base de la bota se despegó del techo, o sus clavos se soltaron.
    .why = El viento la mueve, y el movimiento del tubo la levanta un poco más cada año.
    .water = El agua y la lluvia con viento se meten bajo la base levantada.
    .photo = El borde levantado de lado, de cerca.
defect-boot-collar-slid = Collarín corrido en el tubo
    .what = El tubo se movió, y el collarín ya no queda ajustado a él o a su base.
    .why = Los tubos crecen con el agua caliente y se asientan con la casa. Un collarín que no los sigue se abre.
    .water = El agua corre por el tubo y entra por debajo del collarín.
    .photo = El hueco entre el tubo y el collarín, todo alrededor.
defect-hood-loose = Campana suelta
    .what = La campana se soltó del techo o de su ducto.
    .why = El viento se la puede llevar, y el aire húmedo de la casa termina en el ático.
    .water = El agua se mete bajo la base suelta.
    .photo = La base suelta de lado, y una mano que mueve la campana.

# --- missing
defect-boot-missing = Tubo sin bota
    .what = El tubo sale del techo sin nada alrededor, o solo con sellador.
    .why = El tubo y el techo se mueven, y ningún embarrado los sigue.
    .water = La lluvia corre por el tubo y entra a la casa por el hueco.
    .photo = El pie del tubo todo alrededor, de cerca.
defect-hood-flap-missing = Falta la tapa de la campana
    .what = Falta la tapa que cierra la campana cuando el extractor está apagado.
    .why = Por el ducto entran aire frío, pájaros y avispas.
    .water = La lluvia y la nieve con viento entran al ducto.
    .photo = La campana abierta desde abajo.

# --- misbuilt
defect-boot-lapped-wrong = Bota mal traslapada
    .what = La parte de arriba de la base va sobre las tejas, o su parte de abajo va debajo de ellas.
    .why = Debe ir como una teja: tapada por arriba, encima de las de abajo.
    .water = El agua baja hasta el borde de arriba de la base y se mete debajo.
    .photo = La base desde arriba con las tejas de alrededor, y dónde traslapan al revés.
defect-boot-wrong-size = Bota que no ajusta en el tubo
    .what = El collarín es demasiado ancho o angosto para el tubo, o hecho para otra pendiente.
    .why = Si queda ancho, deja hueco. Si queda angosto, se raja pronto.
    .water = El agua corre por el tubo y pasa por el hueco.
    .photo = El hueco o el collarín estirado de cerca, con una cinta métrica en el tubo.
defect-boot-nails-bare = Bota clavada por la cara
    .what = Se clavó a través de la parte de abajo de la base, y los clavos quedaron a la vista.
    .why = Se aflojan con el calor y el frío, y cada uno deja un agujero.
    .water = El agua sigue los clavos hasta la madera.
    .photo = Las cabezas a la vista, de cerca.
defect-pipe-too-short = Tubo que termina muy abajo
    .what = El tubo de plomería termina tan cerca del techo que la nieve o las hojas lo pueden tapar.
    .why = Un tubo tapado hace gorgotear los desagües y deja entrar gas de drenaje a la casa.
    .water = Con lluvia fuerte, el agua puede salpicar por encima de la bota.
    .photo = El tubo con una cinta métrica del techo a su punta.
defect-hood-lapped-wrong = Campana puesta sobre las tejas
    .what = La base de la campana se puso encima de las tejas y se selló, en vez de entretejerla como una teja.
    .why = Depende solo de su sellador, que se agrieta en pocas temporadas.
    .water = El agua corre bajo el borde de arriba de la base.
    .photo = El borde de arriba de la base de cerca, y las tejas que le quedan encima.

# --- smothered
defect-boot-smeared = Bota embarrada de sellador
    .what = El collarín está cubierto de sellador o cemento asfáltico de reparaciones anteriores.
    .why = La rajadura sigue debajo. Lo embarrado se agrieta cada vez que se mueve el tubo.
    .water = El agua entra por donde lo embarrado se agrietó o se despegó del tubo.
    .photo = Lo embarrado todo alrededor, y su peor grieta.
defect-hood-blocked = Campana tapada por pelusa o nido
    .what = Pelusa, un nido o pintura no dejan que la campana se abra o deje salir el aire.
    .why = Un ducto de secadora tapado puede incendiarse. Un extractor tapado deja aire húmedo en la casa.
    .water = No entra lluvia. El aire húmedo se queda en el ducto y gotea de regreso.
    .photo = La abertura tapada desde abajo, y lo que la tapa.

# --- wet
defect-boot-deck-soft = Madera blanda junto al tubo
    .what = La madera alrededor del tubo está blanda u oscura.
    .why = La bota ha goteado mucho tiempo. Una bota nueva necesita madera firme que la sujete.
    .water = Ha entrado agua a lo largo del tubo.
    .photo = El lugar blando presionado con la mano, o el cerco oscuro alrededor del tubo desde el ático.
