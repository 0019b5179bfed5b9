# What a phone says beside its screens.

phone-opening = Opening the book
phone-again = Try again
phone-dictate = Say it
phone-why-camera = The camera takes the pictures of the roof. They stay in your book.
phone-why-position = Where you stand finds the address. It is asked for only when you tap here.
phone-why-microphone = The microphone lets you say the words instead of typing them.
phone-no-camera = The camera is not allowed. All else works; to take pictures, allow it in the phone's settings.
phone-no-dictation = Nothing was understood, or the microphone is not allowed. You can type it.
phone-go-on = Go on
phone-leave = Leave it
phone-give-up = Stop
phone-lay = Lay the phone on the slope
phone-share = Hand it on
phone-dusk = Dusk
phone-day = Day
phone-letter-draw = Drawing the letter
phone-letter-keep = Keeping the letter

# The names of files that are handed on, without their ending.
phone-letter-file = Roof letter
phone-calendar-file = Roof reminders

phone-port-camera = the camera
phone-port-position = the position
phone-port-level = the tilt sensor
phone-port-key = the phone's key store
phone-port-share = another program

phone-not-allowed = Ladderbook may not use { $port }. Allow it in the phone's settings, then tap again. Nothing was lost.
phone-failed = The phone could not use { $port } ({ $reason }). Nothing was lost; tap again.
phone-broke = Ladderbook broke in the middle of that tap. Nothing is half done: what was kept before still stands. Tap again.
phone-nowhere = That page is no longer there.
phone-no-key = The key of this book is not on this phone, so nothing here can be read. Bring the key from where you keep its copy.
phone-clock = The phone's clock shows a day that is in no calendar. Set it, then tap again. Nothing was lost.
phone-unread = The picture could not be read ({ $why }). Take it again.
phone-unwritten = The phone has no room for the file to show ({ $why }). Free some space, then tap again. The book is whole.
