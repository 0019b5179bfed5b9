# Small words that every room uses.

verbatim = { $text }
list-and = { $most } and { $last }
date-long = { $day } { $month } { $year }

month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

# --- what cannot be read as a measure
unit-not-a-length = “{ $text }” is not a length. Write it as 12' 6 1/2", 30 in, 5 ft, 3.2 m or 320 mm
unit-not-a-pitch = “{ $text }” is not a pitch. Write it as 6/12, 6:12 or 26.6°
unit-pitch-out-of-range = A pitch lies between flat and 60:12
code-no-edition = There is no { $year } edition of the code. Editions appear every third year; 2006 to 2024 are known here
