//! From a measured roof to what is ordered, hauled away and paid. Pure: it knows no file, clock or chance.
