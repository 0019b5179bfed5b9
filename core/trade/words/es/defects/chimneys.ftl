# Chimneys, masonry and prefabricated.

# --- split
defect-mortar-washed-out = Mortero deslavado
    .what = El mortero entre los ladrillos se gastó, y las juntas están abiertas.
    .why = Las juntas abiertas absorben agua, que se congela, afloja los ladrillos y corre por dentro.
    .water = La lluvia se filtra por las juntas abiertas y sale debajo del techo, más allá de cualquier tapajuntas.
    .photo = Las juntas de cerca con una llave o un lápiz en la más honda, y todo ese lado.
defect-brick-spalled = Ladrillos que se descascaran
    .what = Las caras de los ladrillos se descascaran o reventaron.
    .why = Los ladrillos absorben agua y se congelan. Una mano de pintura o sellador que encierre el agua lo empeora.
    .water = La lluvia se filtra por las caras rotas y sale debajo del techo.
    .photo = Los ladrillos descascarados de cerca, y los pedazos en el techo.
defect-chimney-crown-cracked = Corona de chimenea agrietada
    .what = La losa de mortero o concreto que cierra la chimenea por arriba está agrietada.
    .why = Es el techo de la chimenea. Por sus grietas se moja toda la chimenea por dentro.
    .water = La lluvia pasa por las grietas y baja entre los ladrillos y el conducto de humo.
    .photo = La corona desde arriba, con lente o con una pértiga.
defect-flue-liner-cracked = Forro del conducto de humo abierto
    .what = El tubo de barro o metal dentro de la chimenea está agrietado, tiene uniones abiertas o falta.
    .why = El calor y los gases llegan a las paredes de la chimenea. Pueden traer monóxido de carbono. No la use hasta que la revisen.
    .water = Por esto solo no entra lluvia.
    .photo = Hacia abajo por el conducto de humo desde arriba, con lente, si se puede ver con seguridad.
defect-chase-cover-rusted = Tapa de chimenea oxidada
    .what = La lámina de metal que cierra por arriba la chimenea de cajón está oxidada o con agujeros.
    .why = Es un techo plano chico, y de él depende todo lo que hay dentro del cajón.
    .water = El agua gotea por el óxido dentro del cajón y baja alrededor del tubo.
    .photo = La tapa desde arriba o con una pértiga, y las rayas de óxido en los costados.

# --- loose
defect-chimney-bricks-loose = Ladrillos sueltos
    .what = Hay ladrillos sueltos en lo alto de la chimenea.
    .why = Pueden caer a través del techo o sobre una persona. No pase por debajo hasta que estén asegurados.
    .water = La lluvia entra entre los ladrillos sueltos.
    .photo = Los ladrillos sueltos con lente, y lo que queda debajo.
defect-chimney-leaning = Chimenea inclinada
    .what = La chimenea está inclinada o se separó de la casa.
    .why = Puede caerse. La razón está abajo: su base, su mortero o sus amarres.
    .water = El agua entra por donde se separó del techo.
    .photo = La chimenea contra una línea recta, y el hueco donde se separa de la pared o del techo.
defect-chimney-cap-loose = Sombrerete suelto
    .what = El sombrerete del conducto de humo está suelto o medio caído.
    .why = El viento puede tirarlo, y sin él entran lluvia y animales.
    .water = La lluvia baja por el conducto de humo junto al sombrerete suelto.
    .photo = El sombrerete desde la escalera o con lente.
defect-chase-joints-open = Cajón de chimenea abierto
    .what = El revestimiento o las esquinas de la chimenea de cajón se abrieron o se soltaron.
    .why = El cajón está a la intemperie por todos lados, y detrás de su revestimiento solo hay madera.
    .water = La lluvia con viento entra por las juntas abiertas y corre por dentro del cajón.
    .photo = Las juntas abiertas de cerca, y el cajón entero.

# --- missing
defect-chimney-cap-missing = Falta el sombrerete
    .what = No hay sombrerete sobre el conducto de humo, la abertura por donde sale el humo.
    .why = Entran lluvia, hojas, pájaros y mapaches. El hollín mojado se come el conducto por dentro.
    .water = La lluvia cae derecho por el conducto de humo.
    .photo = La boca abierta del conducto de humo, con lente o con una pértiga.
defect-chase-collar-open = Collarín de chimenea abierto
    .what = El anillo que cierra el hueco entre el tubo de la chimenea y su tapa metálica falta o está abierto.
    .why = El hueco es chico, pero mira derecho hacia arriba.
    .water = La lluvia corre por el tubo y entra al cajón por el hueco.
    .photo = El anillo desde arriba, todo alrededor.

# --- misbuilt
defect-chimney-too-low = Chimenea demasiado baja
    .what = Una chimenea debe terminar 2 pies por encima de todo lo que esté a menos de 10 pies, y 3 pies por encima de donde sale del techo. Esta no lo cumple.
    .why = Las chimeneas bajas tiran mal, y el viento puede regresar humo y gases a la casa. Pueden traer monóxido de carbono.
    .water = Por esto no entra agua.
    .photo = La chimenea de lado con una cinta métrica para su altura, y la cumbrera o la pared de al lado.
defect-chase-cover-flat = Tapa de chimenea que guarda agua
    .what = La tapa metálica de la chimenea de cajón es plana o está hundida, y se queda agua encima.
    .why = El agua estancada la oxida, y primero gotea alrededor del tubo.
    .water = El agua estancada se filtra por el tubo y por los tornillos.
    .photo = El agua o su cerco en la tapa, desde arriba o con una pértiga.

# --- smothered
defect-chimney-coated = Chimenea pintada o sellada
    .what = El ladrillo se pintó o se selló con una capa cerrada.
    .why = El ladrillo tiene que secarse hacia afuera. Bajo una capa cerrada, el agua se queda, se congela y revienta los ladrillos.
    .water = El agua entra por arriba y por las juntas, y no puede secarse a través del ladrillo.
    .photo = La capa de cerca donde se descascara, y los ladrillos que se descascaran debajo.
defect-chimney-smeared = Unión de chimenea embarrada
    .what = La unión entre la chimenea y el techo está cubierta de cemento asfáltico negro.
    .why = Esconde si hay metal debajo. Se agrieta, se despega del ladrillo y detiene el agua por detrás.
    .water = El agua baja por el ladrillo y entra por detrás de lo embarrado donde se agrietó.
    .photo = Lo embarrado en cada lado de la chimenea, y su peor grieta de cerca.

# --- wet
defect-chimney-white-stains = Manchas blancas en el ladrillo
    .what = Unas manchas blancas, de sal, muestran que el agua atraviesa el ladrillo.
    .why = El agua viene de arriba: una corona agrietada, juntas abiertas o un conducto de humo abierto. La mancha enseña por dónde pasa.
    .water = La lluvia se filtra más arriba y deja su sal donde se seca.
    .photo = Las manchas, y la parte alta de la chimenea encima de ellas.
defect-chase-wood-rotten = Cajón de chimenea podrido
    .what = La madera de la chimenea de cajón está blanda o podrida.
    .why = Mantiene derecho el tubo de la chimenea. La pudrición casi siempre empieza en la tapa o donde el cajón topa con el techo.
    .water = El agua entra por arriba o se queda donde el revestimiento toca el techo.
    .photo = Un destornillador metido en la madera blanda, y lo que queda encima.
