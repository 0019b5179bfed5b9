# Small words that every room uses.
# No name in these files begins with the sound of an i, so that "y" never has to become "e" before the last of a list.

verbatim = { $text }
list-and = { $most } y { $last }
date-long = { $day } de { $month } de { $year }

month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre

# --- what cannot be read as a measure
unit-not-a-length = “{ $text }” no es una longitud. Escríbala como 12' 6 1/2", 30 in, 5 ft, 3.2 m o 320 mm
unit-not-a-pitch = “{ $text }” no es una pendiente. Escríbala como 6/12, 6:12 o 26.6°
unit-pitch-out-of-range = Una pendiente está entre plana y 60:12
code-no-edition = No hay edición { $year } del código. Sale una cada tres años; aquí se conocen las de 2006 a 2024
