# How the covering is fastened.

# --- split
defect-nails-rusted = Clavos comidos por el óxido
    .what = Los clavos que sujetan las tejas se adelgazaron con el óxido o perdieron la cabeza.
    .why = Un techo es tan firme como sus clavos. Cuando estos fallan, las tejas se van de a muchas.
    .water = Al principio no entra agua por los clavos. Entra cuando las tejas se corren o se vuelan.
    .photo = Un clavo sacado junto a uno nuevo, o las puntas oxidadas vistas desde el ático.
defect-nails-overdriven = Clavos hundidos de más
    .what = Los clavos se metieron con tanta fuerza que la cabeza cortó la teja.
    .why = Una cabeza que cortó la teja no sujeta nada. La teja puede correrse o volarse.
    .water = Puede entrar agua por el corte. Entra más cuando la teja ya se movió.
    .photo = Una cabeza de clavo con el corte alrededor, de cerca, y otra para mostrar que no fue un solo descuido.

# --- loose
defect-seal-never-bonded = Franja adhesiva que nunca pegó
    .what = Las franjas adhesivas nunca pegaron: se techó con frío o con polvo, o se dejó puesta una película.
    .why = El techo parece nuevo, pero el viento puede levantar cada borde. Quizá fue así desde el primer día.
    .water = La lluvia con viento se mete por debajo de los bordes sueltos hasta los clavos.
    .photo = Un borde levantado con su franja limpia, brillante o empolvada, en tres lugares bien separados.
defect-nails-underdriven = Clavos sin meter del todo
    .what = Las cabezas de los clavos sobresalen bajo la teja de arriba.
    .why = No dejan que esa teja se pegue, y desde abajo le van haciendo un agujero.
    .water = El agua entra por el agujero gastado y baja por el clavo.
    .photo = Una teja levantada con la cabeza que sobresale, y la marca que dejó en la de arriba.
defect-nails-popped = Clavos salidos
    .what = Unos clavos se fueron saliendo y empujan la teja de arriba hasta formar un bulto.
    .why = Los levantan el calor, el frío y la madera que se mueve. Tarde o temprano la cabeza atraviesa la teja.
    .water = El agua baja por el clavo cuando su cabeza ya atravesó la teja.
    .photo = El bulto con luz baja, luego el clavo con la teja levantada.

# --- missing
defect-nails-too-few = Muy pocos clavos
    .what = Las tejas tienen menos clavos de los que necesitan. Una teja en tira lleva al menos cuatro, a menudo más.
    .why = Lo que está a medio sujetar se levanta con el primer viento fuerte.
    .water = El agua no entra de inmediato. Entra cuando las tejas se corren o se vuelan.
    .photo = Una teja entera levantada con todos sus clavos a la vista, y una cinta métrica a lo largo.

# --- misbuilt
defect-nails-high = Clavos demasiado arriba
    .what = Los clavos están por encima de la línea donde sujetan tanto la teja como la de abajo.
    .why = Una teja clavada muy arriba tiene la mitad de su sujeción. Puede correrse o volarse.
    .water = No entra agua por los clavos. Entra cuando la teja se corrió o se voló.
    .photo = Una teja levantada con el clavo, la línea de clavado y una cinta métrica sobre ambos.
defect-nails-low = Clavos demasiado abajo
    .what = Los clavos están tan abajo en la teja que la siguiente hilera apenas los cubre, o no los cubre.
    .why = A las cabezas cerca del borde les llega la lluvia con viento, y además no dejan cerrar la franja adhesiva.
    .water = El agua que el viento mete bajo el borde corre por el clavo hasta la madera.
    .photo = Una teja levantada con el clavo, su borde de abajo y una cinta métrica entre los dos.
defect-nails-in-joint = Clavos en una junta o ranura
    .what = Se clavó donde se juntan dos tejas de la hilera de arriba, o en la ranura entre dos lengüetas.
    .why = Ahí nada cubre el clavo. El agua corre por cada junta y cada ranura.
    .water = El agua baja por la junta, topa con el clavo y lo sigue hasta la madera.
    .photo = La junta o ranura con la cabeza del clavo adentro, de cerca.
defect-nails-exposed = Clavos a la vista
    .what = Hay cabezas de clavo a la intemperie donde una teja o un metal debería taparlas.
    .why = Un clavo a la vista se oxida, se afloja con el calor y el frío, y deja un agujero.
    .water = El agua baja por el clavo directo hasta la madera.
    .photo = Las cabezas a la vista de cerca, y desde unos pasos atrás cuántas son.
defect-nails-crooked = Clavos chuecos
    .what = Los clavos entraron de lado, así que una orilla de la cabeza corta y la otra sobresale.
    .why = Un clavo así sujeta mal y gasta la teja de arriba.
    .water = El agua no entra de inmediato. Entra por donde la orilla levantada ya gastó la teja.
    .photo = Una teja levantada con la cabeza ladeada, vista de lado.
defect-nails-too-short = Clavos demasiado cortos
    .what = Los clavos no entran lo suficiente en la madera. Deben entrar al menos 3/4 de pulgada, o salir por debajo.
    .why = Los clavos cortos se salen. Es común donde un segundo techo se clavó con los clavos del primero.
    .water = Por esto solo no entra agua. Entra cuando las tejas se sueltan.
    .photo = Desde el ático, el tablero sin puntas de clavo, o un clavo sacado junto a una cinta métrica.
defect-nails-wrong-kind = Clavos delgados o de cabeza chica
    .what = Los clavos son más delgados que calibre 12, que es 0.105 pulgadas, o tienen la cabeza menor de 3/8 de pulgada.
    .why = Con un viento fuerte, una cabeza chica atraviesa la teja.
    .water = Por esto solo no entra agua. Entra cuando las tejas se sueltan.
    .photo = Un clavo sacado junto a una cinta métrica: su cabeza y su grueso.
defect-nails-miss-the-deck = Clavos entre las tablas
    .what = Los clavos entraron en el espacio entre dos tablas o paneles y no sujetan nada.
    .why = La teja de arriba cuelga de sus otros clavos.
    .water = El agua no entra de inmediato. Entra cuando la teja se corre, y con frío se forman gotas en el clavo.
    .photo = Desde el ático, los clavos en el espacio.
defect-staples-used = Grapas en lugar de clavos
    .what = Las tejas están sujetas con grapas, como en muchos techos de hace años.
    .why = Una grapa puesta de lado o muy hundida sujeta con una sola pata o corta la teja.
    .water = Por esto solo no entra agua. Entra cuando las tejas se sueltan.
    .photo = Una teja levantada con dos o tres grapas y cómo están puestas.
