### What is said when something goes wrong: with an act, with the book, with a visit file.

# --- an act: what is not in the book. It stands behind "Not in this book:".
there-kind = this kind of part
there-letter = this letter
there-mark = this mark
there-note = this note
there-part = this part
there-picture = this picture
there-reminder = this reminder
there-slope = this slope
there-visit = this visit

# --- an act: what was typed wrong. "Nothing was changed; what you typed is kept" follows, so none ends in a full stop.
wrong-amount = Write an amount such as 1250 or 1250.00
wrong-count = Write a whole number from 1 to 255
wrong-day = Write the day as year, month and day: 2024-05-31
wrong-edition = Write the edition of the code as its year, such as 2021
wrong-no-day = Choose the day
wrong-no-kind = Choose what it is
wrong-no-layer = Name at least the top layer
wrong-no-outcome = Choose what came of it
wrong-no-reason = Say why it is corrected
wrong-nothing-said = Nothing was said yet
wrong-outcome-ahead = What came of it cannot lie ahead of today
wrong-work-ahead = Work that was done cannot lie ahead of today
