### A covering as it is laid.

starter-eaves = along the eaves
starter-eaves-and-rakes = along the eaves and up the rakes
