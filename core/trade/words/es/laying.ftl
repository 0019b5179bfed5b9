### Una cubierta tal como se coloca.

starter-eaves = a lo largo de los aleros
starter-eaves-and-rakes = a lo largo de los aleros y por los bordes inclinados
