### Cantidades, precios y ofertas.
