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
