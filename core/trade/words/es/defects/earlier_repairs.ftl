# What earlier work left behind.

# --- split
defect-patch-cracked = Parche viejo agrietado
    .what = Se agrietó un parche anterior de cemento o membrana.
    .why = Nunca fue más que ganar tiempo. La falla sigue debajo.
    .water = El agua pasa por la grieta y se queda bajo el parche.
    .photo = La grieta de cerca, y todo el parche.

# --- loose
defect-patch-loose = Parche viejo levantado
    .what = Se levantó el borde de un parche anterior.
    .why = El viento y el agua se le meten debajo, y represa lo que baja de arriba.
    .water = El agua se mete bajo el borde levantado.
    .photo = El borde levantado de lado, con un dedo debajo.
defect-tarp-left = Lona vieja todavía en el techo
    .what = Sigue ahí una lona o membrana que se puso por poco tiempo.
    .why = El sol y el viento la rasgan en meses, y cada listón o clavo que la sujeta hizo un agujero.
    .water = La lluvia entra por sus rasgaduras y agujeros de clavo.
    .photo = Toda la lona, y su peor rasgadura de cerca.

# --- missing
defect-repair-unfinished = Reparación sin terminar
    .what = Se empezó una reparación y no se cerró: faltan hileras o tapas, o hay bordes abiertos.
    .why = Lo que se abrió está peor que antes.
    .water = La lluvia entra por donde quedó abierto.
    .photo = Todo el lugar, y cada borde abierto de cerca.

# --- misbuilt
defect-patch-lapped-wrong = Parche sin entretejer
    .what = El borde de arriba del parche va sobre las tejas y no bajo la hilera de arriba.
    .why = En un techo todo traslapa pendiente abajo. Un parche puesto encima mete el agua debajo de sí mismo.
    .water = El agua baja y se mete bajo el borde de arriba del parche.
    .photo = El borde de arriba del parche de cerca, con la hilera que le queda encima.
defect-patch-nailed-through = Parche clavado por la cara
    .what = El parche está sujeto con clavos metidos desde arriba.
    .why = Cada clavo es un agujero en el lugar que ya goteaba.
    .water = El agua sigue los clavos hasta la madera.
    .photo = Las cabezas a la vista de cerca, y cuántas son.
defect-patch-mismatched = Parche de otro tamaño
    .what = Las tejas nuevas son de distinta altura o grueso que las de alrededor.
    .why = Las hileras y las franjas adhesivas no coinciden, y por eso hay bordes que sobresalen.
    .water = La lluvia con viento se mete bajo los bordes que sobresalen.
    .photo = El parche con las tejas viejas al lado, y una cinta métrica en las dos.
defect-nails-left-lying = Clavos dejados en el techo
    .what = Quedaron clavos o tornillos sueltos en el techo o en la canaleta.
    .why = Se oxidan ahí, manchan y se encajan en las tejas al pisarlos. En el suelo encuentran pies y llantas.
    .water = No entra agua hasta que uno se encaja.
    .photo = Los clavos donde están.
defect-scraps-left = Sobras de un trabajo anterior
    .what = Quedaron pedazos de teja, madera o metal en el techo o entre las tejas.
    .why = Represan hojas y agua, y raspan los gránulos.
    .water = El agua se represa detrás de ellos y se mete de lado.
    .photo = Los pedazos donde están.
defect-flashing-abandoned = Tapajuntas viejo dejado ahí
    .what = Quedó metal de algo que ya no está, o del techo anterior, dentro o debajo de la cubierta.
    .why = Levanta las tejas, se oxida, y puede llevar agua adonde nadie la espera.
    .water = El agua puede correr por el metal viejo y bajo las tejas.
    .photo = El metal viejo de cerca, y de qué era si se puede saber.
defect-pipe-end-covered = Tubo viejo techado encima
    .what = Un tubo o respiradero que ya no se usa se cortó y se cubrió con tejas.
    .why = El agujero de abajo no está cerrado, y las tejas de encima se hunden y se agrietan.
    .water = El agua entra cuando se agrietan las tejas sobre el agujero.
    .photo = El bulto o hundimiento en el techo, y la punta del tubo desde el ático.

# --- smothered
defect-fault-tarred-over = Falla tapada con cemento
    .what = Una gotera se tapó con cemento asfáltico y no se corrigió.
    .why = El cemento esconde la causa, detiene el agua más arriba y echa a perder las tejas donde está.
    .water = El agua se junta detrás del cemento y se mete por donde se despegó.
    .photo = Todo lo embarrado, y su borde de cerca.

# --- wet
defect-repair-wet-below = Madera mojada bajo el parche viejo
    .what = La madera bajo una reparación anterior está mojada o blanda.
    .why = La reparación no detuvo el agua, o la encerró.
    .water = El agua todavía entra por la reparación o viene de más arriba.
    .photo = El lugar blando desde arriba y, si se puede ver, desde el ático.
