### Quantities, prices and offers.
