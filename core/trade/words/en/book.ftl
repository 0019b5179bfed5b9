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

# --- the worksheet of an offer: the name of the field stands in front.
wrong-in-field = In “{ $field }”: { $problem }
wrong-no-such-field = The worksheet has no field of this name: { $name }
wrong-years = Write whole years from 1 to 100, such as 5 or 5-8
wrong-months = Write whole months from 1 to 1200, such as 12 or 12-24
wrong-sheets = Write a whole number of sheets from 0 to 999, such as 2 or 2-4
wrong-nails = Write a whole number from 4 to 12
wrong-stated = Write a whole number from 0 to 999
wrong-amount-counted = Write a number above nothing, such as 3 or 2-4
wrong-length-counted = Write feet above nothing, such as 42 or 40-42; a length with its unit, such as 12 ft 6 in, does too
wrong-area-counted = Write a number above nothing, such as 900
wrong-attic-first = Write the attic's area first, or leave all about its vents empty
wrong-per-cent = Write a share from 0 to 100, such as 50
wrong-below-nothing = A length cannot be less than nothing
wrong-choice = Choose one of those that are offered

# --- the book
book-none = There is no book in { $folder }. Nothing was touched. Choose the folder that holds book.toml and book.db, or make a new book.
book-not-empty = { $folder } already holds something. Nothing was overwritten. Choose an empty folder or a new one.
book-wrong-key = This key does not open this book. The book is whole as far as that can be told, and nothing was touched. Try the passphrase or key file once more.
book-newer = This book was written by a newer Ladderbook (form { $found }; this one reads up to { $known }). Nothing was touched. Bring this program up to date.
book-damaged = The book is damaged: { $what }. Nothing was deleted or changed. Copy the whole folder to a safe place first, then restore the last backup beside it.
book-locked = The book is open in another program. Nothing was touched. Close Ladderbook there, then try again.
book-disk-full = The disk is full. What was saved before is safe; the last entry was not saved. Make room, then enter it again.
book-read-only = The book may only be read here: the folder, card or disk is write-protected. What was saved before is safe; the last entry was not saved.
book-io = { $file } could not be read or written: { $why }. What was saved before is safe; the last entry was not saved.
book-unknown = What this belongs to is not in the book: { $what }. Nothing was saved.
book-unwritable = This holds a number that cannot be written down: { $what }. Nothing was saved.
book-erased = This property was erased on the owner's wish. Nothing was saved.
book-joined-with-itself = A property cannot be joined with itself. Nothing was saved.
book-not-a-picture = This file is not a picture that can be kept (JPEG, PNG or HEIC). Nothing was saved.
book-too-large = This picture is too large: { $megabytes } MB, and at most { $most } MB are kept. Nothing was saved; the file itself was not touched.
book-file-damaged = The picture or letter { $sha256 } is missing from the book's folder or damaged. Everything else is safe. Put its file back from a backup.
book-bad-backup = This backup is not whole: { $what }. Nothing was restored and nothing was touched. Use another backup.
book-no-key = There is no key to open the book with: { $why }. Nothing was touched.
book-refused = The book's database refused, with the words “{ $detail }”. What was saved before is safe; the last entry was not saved.

# --- the book: what is damaged, as half a sentence
damage-beginning = the beginning of book.db is not what was written there
damage-page = a page of book.db is not what was written there
damage-database = its own check says “{ $detail }”
damage-empty = book.db is empty
damage-gone = book.db is gone
damage-version = the version of book.db does not read
damage-header = book.toml does not read
damage-header-changed = book.toml was changed
damage-header-gone = book.toml is gone
damage-salt = the salt in book.toml does not read
damage-secret = the sealed secret in book.toml does not read
damage-device = the book does not say which device it is on
damage-line-time = the time of line { $line } does not read
damage-line-changed = line { $line } was changed
damage-unknown-kind = a line is about “{ $kind }”, which nobody knows
damage-record = a record does not read: { $record }
damage-wrong-name = a record stands under the name of another: { $record }
damage-key-gone = the key of property { $property } is gone, though nobody erased it
damage-key-unread = the key of property { $property } does not read
damage-erasure-day = the day of an erasure does not read
damage-visit-day = the day of a visit does not read

# --- the book: what a check found
problem-page = The database is damaged: { $what }
problem-property = Property { $property }: { $what }
problem-firm = The firm's own lines: { $what }
problem-table = { $difference }. Rebuilding puts it right
problem-file = The picture or letter { $sha256 } is gone or was changed
problem-never-kept = A record names the picture or letter { $sha256 }, which was never kept
problem-stray = { $file } belongs to nothing and cannot be read. It may be removed
differs-lacked = The table “{ $table }” lacked { $id }
differs-stray = The table “{ $table }” had { $id }, of which the book's lines know nothing
differs-changed = The table “{ $table }” said something else of { $id } than the book's lines

# --- the book: what is wrong with a backup, as half a sentence
backup-list-unread = its list, backup.toml, could not be read: { $why }
backup-list-damaged = its list, backup.toml, does not read
backup-list-leads-out = its list names “{ $file }”, which lies outside it
backup-list-lacks = { $file } is not in its list
backup-file-changed = { $file } is gone or was changed

# --- the book: why there is no key, as half a sentence
key-passphrase-empty = the passphrase is empty
key-refused = the passphrase could not be used (“{ $detail }”)
key-file-unread = { $file } could not be read: { $why }
key-file-none = { $file } holds no key
key-text-none = what is kept there is no key
key-no-encryption = this program was built without encryption
key-no-random = the system gave no random numbers (“{ $detail }”)

# --- what the system said of a file or a port, as half a sentence
system-not-found = there is no such file or folder
system-not-permitted = this is not allowed here
system-exists = something of this name is there already
system-not-a-folder = a file is where a folder is needed
system-a-folder = it is a folder
system-not-empty = the folder is not empty
system-full = the disk is full
system-read-only = the disk may only be read
system-not-text = it is not text
system-port-taken = another program uses this port
system-other = the system says “{ $detail }”

# --- the book: kinds of record, by the names they are stored under
record-property = property
record-structure = structure
record-slope = slope
record-part = part
record-visit = visit
record-mark = mark
record-stack = layers
record-work = work done
record-photo = picture
record-note = note
record-letter = letter
record-outcome = outcome
record-reminder = reminder
record-firm = firm
record-profile = code in force
record-policy = house policy
record-price-list = price list
record-sketch = measured roof
record-worksheet = worksheet of an offer
record-offer = offer
record-joining = joining of two properties
record-erasure = erasure
record-entry = entry

# --- the letter
error-letter-layout = The letter could not be set on pages: “{ $detail }”. The record is untouched, and the letter as a web page still works.
error-letter-export = The letter could not be written as a PDF: “{ $detail }”. The record is untouched, and the letter as a web page still works.

# --- a visit file. Each reason is half a sentence that stands behind its place in the file.
file-problem = { $at }: { $reason }
file-at-line = line { $line }, column { $column }
file-not-of-the-shape = { $why }
file-unknown-version = this program reads version { $known }, the file says { $found }
file-no-address = write the house number and the street
file-address-twice = this address is there already
file-position-off-the-earth = latitude lies between -90 and 90, longitude between -180 and 180
file-year-cannot-be = the year lies between { $first } and { $last }
file-not-a-phone = a telephone number has at least seven digits
file-not-a-mail = a mail address has an @
file-nobody-named = give a name or a telephone number
file-no-visitor = say who came
file-day-ahead = the day lies ahead of today, { $today }
file-day-too-old = no visit is older than { $year }
file-temperature-cannot-be = air lies between -50 and 60 degrees Celsius; was it written in Fahrenheit?
file-safety-twice = this safety question is answered already
file-no-structure = name at least one structure
file-structure-twice = a structure of this kind and name is there already; give one of them a name
file-slope-twice = a slope with this letter is there already
file-not-a-slope-letter = a slope bears a capital letter from A to Z
file-no-such-slope = this structure names no slope { $letter } under "slopes"
file-unknown-kind = "{ $kind }" is no kind of part in the catalogue; `ladderbook schema --keys` lists them
file-slope-needed = this kind of part lies on one slope; name its letter
file-part-twice = this part is there already; say which one in "which"
file-no-condition = give a "rung", or say why it was "not-seen", or that it is "gone"
file-two-conditions = a part has one of "rung", "not-seen" and "gone"
file-how-seen-missing = say how it was "seen": touched, near, zoomed, afar, told or inferred
file-seen-without-rung = what was not seen was not seen in any way; give a "rung" or leave "seen" out
file-seen-but-not-reached = the structure was not reached, so nothing on it was seen; correct "reached" or say who told it
file-seen-nearer-than-reached = from the ground a part is seen "afar" or "zoomed"
file-findings-unseen = a part without a "rung" has no defects, answers or measures
file-sound-with-defect = a sound part has no defect; leave the defect out or lower the "rung"
file-unknown-defect = "{ $defect }" is no defect in the catalogue; `ladderbook schema --keys` lists them
file-defect-of-other-part = "{ $defect }" is not found on a part of kind "{ $kind }"
file-defect-twice = this defect is named already
file-unknown-remedy = "{ $remedy }" is no remedy in the catalogue; `ladderbook schema --keys` lists them
file-answer-twice = this question is answered already
file-question-of-other-part = a part of kind "{ $kind }" does not answer this question
file-length-cannot-be = a length is more than nothing
file-measure-twice = this is measured already
file-nothing-read = give the layers from the top down, or the butt lines at the edge
file-exposure-missing = butt lines need the exposure of the top layer
file-under-the-deck = layers are named from the top down; nothing lies under the deck
file-work-unclear = give either the "remedy" or what was done under "did", not both
file-work-ahead = work that was found on this visit was done before it
file-picture-unreadable = { $file } could not be read: { $why }
file-not-a-picture = this file is no picture that can be kept (JPEG, PNG or HEIC)
file-picture-elsewhere = name the picture relative to the visit file, in its folder or below
file-visit-twice = a visit to this property on this day is in the book already
file-visit-open = a visit to this property is still open in the book; close it first

# --- a visit file that is not of the published shape: why, as half a sentence
shape-breaks-off = the file ends in the middle
shape-goes-on = the visit is complete before this place; take away what follows
shape-no-json = the file is no JSON here; look at what stands before this place
shape-missing = "{ $name }" is missing here
shape-unknown-member = "{ $name }" is not known here; known are: { $known }
shape-unknown-word = "{ $name }" is none of the words known here: { $known }
shape-twice = "{ $name }" is there twice
shape-not-a-day = "{ $text }" is not a day; write it as 2024-05-31
shape-wants-text = a text is needed here, in quotation marks
shape-wants-letter = a single letter is needed here, in quotation marks
shape-wants-yes-or-no = true or false is needed here
shape-wants-number = a number is needed here
shape-wants-whole-number = a whole number is needed here, and one that can be
shape-wants-list = a list is needed here, in square brackets
shape-wants-object = members are needed here, in curly brackets
shape-other = this is not of the published shape (“{ $detail }”); `ladderbook schema` shows it

# --- roof, price and offer
error-unchanged = { $problem } Nothing was changed.
error-price-list = The price list was not taken in; the one before it still stands. { $mistakes }
error-price-list-more = The price list was not taken in; the one before it still stands. { $mistakes } { $more ->
    [one] One more line is wrong.
   *[other] { $more } more lines are wrong.
 }
there-edge = this edge of the outline
there-outline = an outline that a dormer could stand on: the slopes were typed in one by one. Measure the roof by its sides or from a file, then add the dormer
there-plane = this piece of roof
there-dormer = this dormer
there-plan = a plan of this roof: measure it first
there-price-list = a price list: put one in under Settings
