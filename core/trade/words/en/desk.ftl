### The program on a computer: its commands and its page. What other programs read (JSON, options, file names) is not in here.

# --- the key
desk-passphrase-ask = Passphrase:
desk-passphrase-choose = Choose a passphrase:
desk-passphrase-again = Once more:
desk-passphrase-short = A passphrase has at least eight characters. Nothing was made.
desk-passphrase-differs = The two are not the same. Nothing was made.
desk-passphrase-unread = No passphrase could be read: { $why }. Nothing was touched.
desk-passphrase-none = This book is not opened with a passphrase. Give the file of its key with --key-file.
desk-keyring-none = This computer's keyring holds no key of this book. Nothing was touched. Give --key-file FILE or --passphrase.
desk-no-keyring = This computer's keyring could not be used (“{ $detail }”). Nothing was touched. Give --key-file FILE or --passphrase.

# --- keeping the book
desk-new = A new book lies in { $folder }. Keep its key apart from it: without the key nobody can read it.
desk-new-there = { $folder } holds a book already. Nothing was touched.
desk-rebuilt-same = The tables were made anew from { $lines ->
    [one] one line
   *[other] { $lines } lines
 } of the book and are the same.
desk-rebuilt-differed = The tables were made anew from { $lines ->
    [one] one line
   *[other] { $lines } lines
 } of the book. { $count ->
    [one] One entry differed and now stands as the line says.
   *[other] { $count } entries differed and now stand as the lines say.
 }
desk-checked = { $lines ->
    [one] one line
   *[other] { $lines } lines
 }, { $records ->
    [one] one record
   *[other] { $records } records
 }, { $files ->
    [one] one picture or letter
   *[other] { $files } pictures and letters
 }
desk-checked-whole = The book is whole: { $read }.
desk-checked-wrong =
    Read: { $read }.
    { $problems }
desk-check-damaged = The book is damaged. Copy the whole folder to a safe place first, then restore the last backup beside it.
desk-backed-up = { $files ->
    [one] One file, { $bytes } bytes, was copied to { $folder }.
   *[other] { $files } files, { $bytes } bytes, were copied to { $folder }.
 } The same key opens it.
desk-restored = The book was restored to { $folder }. The backup was not changed.

# --- looking things up
desk-find-none = Nothing in the book is like “{ $text }”. Try the street alone, the owner or the telephone.
desk-find-several =
    “{ $text }” may be any of these. Give more of the address, or the identifier:
    { $list }
desk-found = { $place } · { $owner } · { $visit }
desk-found-no-owner = owner not known
desk-found-no-visit = no visit yet
desk-found-last-visit = last visit { $on }
desk-no-visit = There was no visit to this property yet.

# --- what leaves the book
desk-kept = Kept.

# --- taking in a visit file
desk-recorded = Recorded: { $marks ->
    [one] one mark
   *[other] { $marks } marks
 } and { $photos ->
    [0] no picture
    [one] one picture
   *[other] { $photos } pictures
 }, at { $new ->
    [yes] a property that is new in the book
   *[no] a property that was in the book
 }.
desk-record-wrong =
    { $problems }
    Nothing was changed.
desk-record-refused = Nothing was changed.

# --- the demo
desk-demo-letter = The letter: { $file }
desk-demo-book = The book: { $folder }, its key: { $key }. It plays on { $day }: say --today { $day } to its commands.
desk-demo-other = { $folder } holds a book that is not the demo's. Nothing was touched. Choose another --out.
desk-demo-broken = The demo's story does not hold together (“{ $detail }”). It is a fault of the demo; your own books are untouched.

# --- the page
desk-serving =
    Open { $address }
    Only this computer can reach it. End it with Ctrl-C.
desk-page-not-started = The page could not be started: { $why }. The book is untouched.
desk-page-port = Port { $port } could not be used: { $why }. Try --port 0, which takes a free one.
desk-page-random = This computer gave no random number (“{ $detail }”), and without one the page is not safe. The book is untouched.
desk-page-foreign = This page is only for this computer.
desk-page-other-token = This is not the address that was printed at the start.
desk-page-no-token = Open the address that Ladderbook printed when it started.
desk-page-from-elsewhere = This came from another page. Nothing was changed.
desk-page-nowhere = There is no such page. Nothing was changed.
desk-page-broke = Something broke. What was kept before is safe. Go back and try again.
desk-page-tap-unread = This tap could not be read. Nothing was changed.
desk-page-picture-unread = This picture could not be read. Nothing was kept.

# --- files
desk-file = { $file } could not be read or written: { $why }.
desk-answer-unwritable = The answer could not be written as JSON (“{ $detail }”).

# --- roof and prices
desk-roof-what = Name the file of an outline, or an address with --at.
desk-roof-not-measured = Nobody measured a roof at this address yet. Give its outline: "ladderbook roof FILE --at ADDRESS".
desk-structure-none = { $count ->
    [one] One structure stands at this address.
   *[other] { $count } structures stand at this address.
 } Choose one by its number.
desk-worksheet-set = Write NAME=VALUE, such as repair-lasts=5-8.
desk-worksheet-none = The last visit to this property looked at no structure.
desk-prices-none = The book has no price list yet. Take one in: "ladderbook prices FILE".
