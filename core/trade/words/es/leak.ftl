### Por dónde entra el agua que se ve adentro: sospechas y razones.

leak-right-above = Está justo encima de la mancha.
leak-up-the-slope = Está a unos { $far } de la mancha, hacia arriba de la pendiente.
leak-to-the-side = Está a unos { $far } hacia un lado; los traslapes de la membrana pueden llevar el agua hasta allá.
leak-down-the-valley = El agua que entra por ahí corre al valle y baja por él hasta la mancha.
leak-down-the-wall = El agua que entra por ahí baja junto a la pared hasta la mancha.
leak-from-the-roof-above = El agua que entra por ahí cae del techo de arriba sobre este y baja hasta la mancha.
leak-round-it = Lo que está en su camino ({ $name }) desvía el agua, que baja por un lado.
leak-round-what-stands-there = Lo que está en su camino desvía el agua, que baja por un lado.
leak-behind-it = El agua se queda detrás y baja por sus esquinas.
leak-over-the-ridge = El viento puede empujar el agua por encima de la cumbrera hasta este lado.
leak-ice-holds-it = El hielo del alero detiene el agua que se derrite hasta esa altura.
leak-found = La última vez que se vio estaba así: { $rung }.
leak-not-seen = Nadie la ha visto todavía.
leak-fits-the-weather = Deja entrar agua justo con ese tiempo.
leak-not-the-weather = Con ese tiempo casi nunca deja entrar agua.
leak-windward = El viento daba contra su vertiente.
leak-lee = Su vertiente quedaba protegida del viento.
leak-no-known-part = No se conoce ninguna parte hacia arriba de la mancha; esto sí está ahí.
leak-dry-cold = El agua que se ve con frío seco viene del aliento y del vapor de la casa: mire primero en el ático.
leak-opening = lo que atraviesa el techo
leak-attic = el aire de la casa

leak-outside = La mancha no está bajo este techo. Revise su lugar en el plano.
leak-no-plane = Una de las partes ({ $name }) está en una vertiente que este plano no tiene. Colóquela otra vez.
leak-no-place = El lugar de { $name } no es un número que se pueda usar. Colóquela otra vez.
