### El programa en una computadora: sus órdenes y su página.
