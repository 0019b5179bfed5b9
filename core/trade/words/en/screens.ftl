# What the screens say. Short: it is read at arm's length, in the sun.

quoted = “{ $text }”
part-which = { $kind }, { $which }
part-which-side = { $kind }, { $which }, { $side }
part-side = { $kind }, { $side }
slope-name = { $letter }, { $side }
choice-none = Not named
choice-as-it-is = As it is
choice-model-code = As the model code says

# Arrive

arrive-title = Arrive
arrive-find = Address, owner or telephone
arrive-find-button = Find
arrive-none = Nothing in the book is like “{ $find }”. Try the street alone, the owner or the telephone.
arrive-add = Not in the book? Add it
arrive-add-button = Add it
arrive-open = Visits still open
arrive-open-since = open since { $on }
arrive-today = To see or to ask today
address-line = House number and street
address-town = Town
address-region = State
address-postcode = ZIP code
owner-name = Owner
owner-phone = Telephone
found-address = { $town }
found-other-address = { $town } · also known as { $with }
found-like = { $town } · spelled like it
found-person = { $town } · { $with }
found-phone = { $town } · telephone { $with }
found-near = { $town } · { $with } from here

# Doorstep

doorstep-under = { $town } · { $owner }, since { $year }
doorstep-under-no-owner = { $town }, since { $year }
doorstep-asked = They ask now
doorstep-said-then = You said on { $on }
doorstep-contradicts = This goes against what you said then
doorstep-look-again = Look again at
doorstep-look-more = { $count } more to look at again
doorstep-open = What do they ask now?
doorstep-open-button = Start the visit
doorstep-safety = Safety, then up
mark-advise = What to advise
advise-cures = cures it
advise-buys-time = buys time
layers-colour = Colour of the top layer
layers-between = Under the top layer lies
layers-rebuilt = Was this spot rebuilt on its own?
work-exact = How well the day is known
work-on-that-day = On that day
work-by-that-day = By that day at the latest
outcome-photo = The finished work
outcome-shutter = Picture of the finished work
verdict-reasons-left = { $count ->
    [one] One more reason
   *[other] { $count } more reasons
 }
safety-temperature = How warm is it?
safety-degrees = Degrees Fahrenheit, or as 20 C
doorstep-past = Last letter
request-words = In their own words
request-kind = Which part they mean
request-remedy = What they want done
request-leaking = Is water coming in now?
request-room = In which room
request-wet-when = When water comes in
request-must-last = Must the roof last, and not only get by?
request-sale = Is the house for sale?
request-scope = How much to look at

# Property: what stands there, who lives there

property-title = The place
property-also = Also known as
property-address = Address
property-also-add = Add another address
property-about = Dangers, year, position
property-dangers = Dangers on every visit, one a line
property-built = Year it was built
property-position = Position: degrees north, degrees east
property-people = People
property-person = { $name }, { $role }
property-person-add = Add a person
person-name = Name
person-role = What they are to the place
person-phones = Telephones, one a line
person-email = Mail
property-structures = What stands there
structure-name = Name, where the kind is not enough
structure-gone = Taken down on
property-same = The same place, written down twice?
property-same-find = Look for it
property-same-none = Nothing else in the book is like that.
property-join-button = Same place: join
property-part-button = Not the same: part
property-erase = Erase this place
property-erase-says = Where the owner wishes it: all words and pictures of this place are destroyed for good. That something was erased stays written down. This cannot be taken back.
property-erase-confirm = Type the house number and street to go on
property-erase-button = Erase for good
position-here = Near me
position-failed = This device does not say where it is. Type the address.

# Safety

safety-title = Safety
safety-sky = The sky now
weather-windy = Strong wind
ladder-check = How the ladder stands
ladder-working = Along the ladder, from its foot to where it rests, such as 20 ft
ladder-base = Level, from its foot to the wall, such as 5 ft
ladder-leans = Or its lean in degrees: lay the phone on a rail; several readings with commas
ladder-landing = How high you step off, such as 18 ft
ladder-tell = What the rule says
safety-reach = How do you reach it?
safety-up = Up: start the walk
safety-from-ground = Walk from the ground
safety-always = These questions stop a climb; they never replace training, local law or a licensed trade.
back-doorstep = Doorstep

# Walk

walk-under = { $address } · { $scope } · { $structure }
walk-title = Walk: { $done } of { $all } stops
walk-stop-done = all { $all } answered
walk-stop-again = look again at { $again } of { $all }
walk-stop-not-yet = not yet
walk-stop-open = { $answered } of { $all } answered
walk-look-again = look again: { $rung } in { $year }
walk-next = Next: { $stop }
walk-here = Here: { $stop }
walk-not-seen = Not seen here, because
walk-not-seen-why = not seen: { $why }
walk-mark = Mark
walk-add-part = Another part here
walk-more = More
walk-close = Close the visit
add-part-kind = What it is
add-part-slope = On which slope
add-part-which = Which one, if there are several
add-part-button = Mark it
add-slope = Add the { $side } slope
add-structure = Add: { $structure }
shutter = Shoot
shutter-keep = Keep the picture
say-it = Say it
say-words = Words
say-keep = Keep the words
undo = Undo
back-walk = Walk
close-outside-scope = Close: the rest was outside the scope
close-not-reached = Close: the rest was not reached

# Mark

mark-title = What is it?
mark-under-seen = { $part } · { $seen }
mark-then = Then, on { $on }
mark-families = Or by what you see
mark-likely = Likely here
mark-as-in = as in { $year }
mark-take-off = Take it off
mark-seen = How did you see it?
mark-not-seen = Not seen, because
fact-measure = { $of }: { $length }
measure-title = Measure
measure-of = What
measure-length = How long: 30 in, 2' 6", 0.76 m
measure-got = With what
measure-keep = Keep the measure
layers-title = Count the layers
layers-count = How many coverings
layers-covering = What the top one is
layers-learned = How you know
layers-where = Where: left rake, 3 ft up
layers-exposure = Exposure of the top layer, if read at the edge
layers-butts = Butt lines above the eave: 2 in, 5 in, 7 in
layers-keep = Keep the layers
work-title = Work done since
work-did = What was done
work-by = Whose work
work-when = When, if known
work-evidence = How you know
work-keep = Keep the work
work-line = { $did }, { $when } · { $by }

# Tray

tray-title = Tray
tray-empty = The tray is empty.
tray-photo = Picture in the tray
tray-taken = Taken at { $at }
tray-tie = It belongs to
tray-half = Still without a rung
tray-needs-rung = has a picture or words; choose its rung
caption-words = What it shows

# Then and now

then-and-now-title = Then and now
then-and-now-quiet = { $count ->
    [one] One part is sound
   *[other] { $count } parts are sound
 }, as far as they were seen before and now.
then-and-now-patched = { $count ->
    [one] Patched once, on { $on }
   *[other] Patched { $count } times, last on { $on }
 }
then-and-now-callback = Came back after it should have been cured · { $by }
then-found = { $on }: { $defects }
now-found = Now: { $defects }
picture-of = { $part }, { $on }
corrected-line = Corrected on { $on }: { $why }
correct-title = Correct the record
correct-rung = The rung
correct-words = The words
correct-why = Why it is corrected
correct-keep = Write the correction

# Verdict

verdict-title = Verdict
verdict-under = { $address } · { $structure }
verdict-until = by { $until }
verdict-forbidden = Not allowed
verdict-refused = Not sold
verdict-look = A look that could change this
verdict-turns-to = If { $answers }: { $course }.
verdict-cautions = Mind
verdict-unseen = Not seen
verdict-letter = The letter
task-remedy = { $part }: { $remedy }
task-remedy-trade = { $part }: { $remedy } · { $trade }
task-trade = { $part } · { $trade }
task-part = { $part }
source-local = local amendment, { $place }
source-evidence = seen
source-practice = trade practice
source-house-policy = house policy
source-owner = as you told us

# Letter

letter-title = Letter
letter-preview = What page one says
letter-close-first = Close the visit first: what was not marked is then written down as not seen, never as sound.
letter-write-english = Write it in English
letter-write-spanish = Write it in Spanish
letter-sent = Letters written
letter-of = Letter of { $on }
letter-overtaken = Out of date: corrected on { $on }
letter-open = Open the PDF
language-english = English
language-spanish = Español

# Outcome and reminders

outcome-title = Outcome
outcome-record = What came of it?
outcome-came = What
outcome-letter = Of which letter
outcome-on = When
outcome-paid = Amount, if any
outcome-keep = Keep it
outcome-line = { $came }, { $on }
outcome-amount = ${ $amount } { $words }
remind-title = Remind me
remind-on = When
remind-because = Why
remind-keep = Keep the reminder
reminders-title = Reminders
reminders-none = Nothing to come back to.
reminders-calendar = Take them to your calendar
reminder-line = { $because } · { $on }
reminder-done = Done

# Settings

settings-title = Settings
settings-firm = The firm
settings-profile = The code where you work
settings-policy = House policy
settings-keep = Keep
settings-name = Name of the firm
settings-person = Who signs
settings-phone = Telephone
settings-email = Mail
settings-address = Address
settings-licence = Licence
settings-language = Language of the screens
settings-contract = Your own contract text
settings-notices = Your legal notices
settings-place = Jurisdiction
settings-edition = Residential code (IRC), edition
settings-layers-allowed = Layers allowed by local amendment
settings-ice-barrier = History of ice backup designated?
settings-hail = Moderate or severe hail exposure?
settings-climate-zone = Climate zone, 1 to 8
settings-amendments = Other amendments
settings-patch-limit = Patches on one cause before no more is sold
settings-places-limit = Separate places from which a slope is thought of whole
settings-no-repair-layers = Layers from which only making safe is sold
settings-sells-recover = Is a re-cover sold where code allows it?
settings-callback-years = Years in which a cure that leaks again is a callback
settings-make-safe-weeks = Weeks that a temporary cover may stay
settings-look-again-years = Years until the next look at a sound roof
settings-look-stands-months = Months that a clean look counts
settings-installer-answers-years = Years in which an installer answers for a bad job
layers-one = One
layers-two = Two

# Roof: the plan, and measuring it

roof-title = The roof
roof-none = Nobody has measured this roof yet. Any one way below will do.
roof-area = Area
roof-squares = { $squares } squares; { $plan } square feet on the level
roof-height = Eave to highest ridge
roof-exact = How exact
roof-got = { $got }, within { $within } %
roof-planes = Slopes
roof-plane = { $pitch } · { $area } square feet
roof-lines = Lines
roof-edges = Edges of the outline
roof-edge = Edge { $number }, { $length }: { $is }
roof-edge-own = Its own pitch and overhang
length-alone = { $length }
roof-measure = Measure it
roof-box = A plain rectangle
roof-across = Along the street, such as 42 ft
roof-deep = Away from the street, such as 28 ft
roof-pitch = Pitch, such as 6:12
roof-overhang = How far the roof stands out, such as 16 in
roof-ends = At the ends
ends-hip = Hipped all round
ends-gable-sides = Gables left and right
ends-gable-front = Gables front and rear
roof-of = The lengths run along
outline-walls = The walls
outline-roof = The edge of the roof
roof-sides = Side by side, all the way round
roof-sides-how = One side a line, the first along the street to the right: its length, then L or R for the turn at its end, then gable or wall where it is one, and a pitch of its own
roof-file = From a file
roof-file-how = A footprint in GeoJSON, or an outline file
roof-street = The street lies
street-south = South of it
street-east = East of it
street-north = North of it
street-west = West of it
roof-plane-add = One slope by itself
plane-side = Where it faces
plane-eave = Along the eave
plane-high = Along its high edge; nothing where it ends in a point
plane-up = From eave to high edge, up the slope
plane-high-is = At its high edge
plane-left = On its left, seen from below
plane-right = On its right
roof-slope-pitch = Pitch of a slope
roof-slope = Which slope
roof-readings = Degrees, several readings with commas; or one pitch such as 6:12
roof-slope-rise = Pitch of a slope from rise and run
roof-rise = Straight up, such as 8 in
roof-run = Level, for that rise, such as 12 in
roof-slope-rafter = Pitch of a slope from a rafter
roof-rafter = Along the rafter from wall to ridge, the overhang left out, such as 16' 10"
roof-rafter-run = Level, from the wall to below the ridge, such as 14 ft
roof-pitches = Pitches that were measured
roof-pitch-got = { $pitch } ({ $degrees }°) · { $got }, within { $within } %
roof-walls = Walls that stand on it
roof-walls-area = { $area } square feet
roof-standing = What stands on it
roof-dormer = A dormer that stands on it
roof-dormer-off = Take dormer { $number } off
roof-dormer-told = { $wide } along its face, { $pitch }, eaves { $above } above the slope
roof-edge-of-dormer = Dormer, edge { $number }, { $length }: { $is }
dormer-faces = Its face looks
dormer-shape = Its roof
dormer-gable = A gable over its face
dormer-shed = One slope, falling to its face
dormer-hip = Hipped over its face
dormer-x = The middle of its face: to the right of the plan’s left front corner
dormer-y = The middle of its face: away from the street, from the same corner
dormer-wide = Along its face, from wall to wall
dormer-above = At its face, from the slope up to its eaves
dormer-deep = How far back it runs; nothing where it runs into the slope
roof-laid = The shingles as they lie
roof-laid-says = { $pieces } shingles over the slopes, at most { $courses } courses one above the other.
roof-laid-of = Laid
roof-laid-field = On the slopes
roof-laid-opened = { $opened } shingles; { $reused } places more filled from cut pieces
roof-laid-bundles = Bundles
roof-laid-bundles-of = { $bundles }, with { $starter } shingles for the starter course and { $cap } for caps
roof-laid-bundles-alone = { $bundles }. Starter and caps are bought by themselves.
roof-laid-waste = Cut off and thrown away
roof-laid-cut-off = { $waste } % of what is laid on the slopes
roof-laid-extra = More than the slopes measure
roof-laid-more = { $extra } %. Books add { $books }.
laid-books-range = { $least } to { $most } %
laid-books-more = { $least } % or more
roof-untied = Of no slope of the walk yet: { $letters }. Until you say below which slope they belong to, they are not judged, counted or priced.
roof-tie = Say which slope a piece of roof belongs to
roof-plane-which = Which piece of roof
roof-plane-named = { $name }: { $says }
roof-place-part = Where a part lies
roof-part = Which part
roof-x = To the right of the plan's left front corner
roof-y = Away from the street, from the same corner
roof-files = Files of the plan
roof-file-svg = Picture (SVG)
roof-file-dxf = Drawing (DXF)
roof-file-geojson = Map (GeoJSON)
roof-file-planes = Slopes as a table (CSV)
roof-file-lines = Lines as a table (CSV)
roof-street-below = street
roof-plan-title = Plan of the roof
roof-plan-says = { $count ->
    [one] One slope, { $squares } squares: { $slopes }.
   *[other] { $count } slopes, { $squares } squares in all: { $slopes }.
 }
roof-plan-slope = { $letter } at { $pitch }

# Leak: where the water comes in

leak-title = Where does it come from?
leak-how = Measure on the ceiling plan, from the corner of the house that is left and front, seen from the street.
leak-where = Where does it show?
leak-within = Give or take
leak-wind = The wind blows then
leak-trace = Trace it
leak-plan-says = The stain, and the way of the water from: { $names }.
leak-suspects = Look here first
leak-share = { $share } of 100 · { $stop }
leak-caution = This is a guess from what is known of the roof. Water travels: look before you cut.
wind-street = From the street
wind-left = From the left
wind-rear = From the rear
wind-right = From the right

# Offer: what it costs

offer-title = Offer
offer-was-put = Put on { $on }; it holds until { $until }.
offer-not-put = Not put to the owner yet: the letter shows no prices.
offer-put = Put it in the letter
offer-includes = This includes
offer-leaves = What it leaves
offer-made = How the price is made
offer-line = { $what } · { $quantity }
offer-hours = Hours of work
offer-all-the-same = Offer all the same: { $what }
offer-because = Why it is offered against advice. It stands in the letter.
worksheet-title = Count and choose
worksheet-keep = Keep and price again
worksheet-repair-lasts = How many years a repair lasts here: 5, or 5-8
worksheet-patch-holds = How many months the patch holds that was asked for: 12, or 12-24
worksheet-count = { $part }, { $remedy }: how much
worksheet-count-in = { $part }, { $remedy }: how many { $unit }
worksheet-count-on-plan = { $part }, { $remedy }: how many { $unit }. The whole of it on the plan: { $plan }
worksheet-chimney-width = { $part }: width along the ridge
worksheet-chimney-depth = { $part }: depth from front to back
worksheet-overhang = Overhang of the eaves, where it was not measured
worksheet-counter-flashing = Upper flashing along walls, in all: 14 ft
worksheet-valleys = How valleys are made
worksheet-starter = Where the starter course goes
worksheet-deck-sheets = Sheets of deck to allow for: 2, or 2-4. Empty: by what was found wet
worksheet-attic-area = Floor of the vented attic, in square feet. Empty: vents are renewed one for one
worksheet-high-share = Share of the open vent area that is high on the roof, in %. Empty: half
worksheet-above-eave-vents = How far the high vents stand above those at the eave
worksheet-below-ridge = How far the high vents stand below the ridge
worksheet-vapour-retarder = Is there a vapour retarder on the warm side of the ceiling?
worksheet-high-vent = Open area of one high vent, in square inches, as its maker states it
worksheet-low-vent = Open area of one intake vent, in square inches, as its maker states it
worksheet-high-stays = Open area of high vents that stay, in square inches
worksheet-low-stays = Open area of intake vents that stay, in square inches
worksheet-nails = Nails in each shingle. Empty: 4
worksheet-sealant = Tubes of sealant
worksheet-cement = Cans of asphalt cement
worksheet-order-at = How much is ordered
offer-takes = What a new covering takes
offer-weighs = What comes down, and what the roof carries
offer-not-counted = Not counted
offer-need = { $item }: { $order }
offer-need-why = { $amount }. { $reason }
offer-waste = Shingles, laid on this roof
offer-waste-says = { $waste } % falls to the ground. Books reckon { $books } for such a roof.
sum-subtotal = Lines together
sum-overhead = Running costs
sum-cost = What it costs us
sum-gain = What we add
sum-sheets = Sheets of deck
sum-to-minimum = Up to the smallest charge
sum-rounded = Rounding
sum-before-tax = Before tax
sum-tax = Sales tax
settings-price-list = Price list
settings-price-list-how = The list as comma-separated text; what each row means stands in docs/price-list.md

# What a save says

saved = Kept
saved-sound = Sound, kept
saved-words = Words kept
saved-picture = Picture kept
saved-layers = Layers kept
saved-work = Work kept
saved-tied = Tied to its part
saved-undone = Taken back
saved-done = Done
saved-property = Added to the book
saved-joined = Joined: one place from now on
saved-parted = Parted again
saved-erased = Erased for good
saved-visit = Visit started
saved-corrected = Correction written
saved-roof = Measures kept
saved-dormer-off = Dormer taken off the plan
saved-offer = Put in the next letter
saved-worksheet = Kept, and priced again
saved-letter = Letter written and kept
saved-stop-not-seen = { $count ->
    [one] One part kept as not seen
   *[other] { $count } parts kept as not seen
 }
saved-closed = Visit closed. { $count ->
    [0] Every part was answered.
    [one] One part is kept as not seen.
   *[other] { $count } parts are kept as not seen.
 }

# Trouble

error-closed = The visit of { $on } is closed. What it says stands; correct it under Then and now.
error-already-open = A visit here is still open. Close it first; nothing was changed.
error-not-there = Not in this book: { $what }. Nothing was changed.
error-wrong = { $problem }. Nothing was changed; what you typed is kept.
error-rung-first = Choose the rung first: only what was seen can answer a question.
error-nothing-to-undo = Nothing on this visit is left to take back.
error-other-visit = This mark belongs to another visit. Nothing was changed.
error-still-open = Close the visit before its letter is written. Nothing was changed.

# What was typed wrong

wrong-nobody-named = Write a name, a telephone or a mail address
wrong-position = Write the position as degrees north and east, such as 41.2412, -96.0113
wrong-year = Write the year as four digits; it cannot lie ahead
wrong-day-ahead = The day cannot lie ahead
wrong-same-already = These two are the same place already
wrong-confirm = That is not the house number and street of this place
wrong-no-street = Write the house number and the street
wrong-degrees = Write the air temperature as 68 F or 20 C
there-outcome = what came of that letter
there-property = this property
there-structure = this structure
wrong-side = Write each side as its length and its turn, such as 40 ft L or 28 ft R gable
wrong-no-part = Choose which part
wrong-no-slope = Choose which slope
wrong-no-plane = Choose which piece of roof
wrong-too-deep = That dormer would come out on the other side of the roof. Back from its face to the top there are { $top }: write no more than that, or leave the depth empty. If it does run right through, put a second one on the other side
wrong-reading = Write degrees with commas between them, such as 26.4, 26.7, 26.5; or one pitch such as 6:12
