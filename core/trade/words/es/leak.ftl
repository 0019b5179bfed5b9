### Por dónde entra el agua que se ve adentro: sospechas y razones.
