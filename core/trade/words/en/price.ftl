### Quantities, prices and offers.

# --- amounts
price-range = { $least } to { $most }
price-amount = { $amount } { $unit }
price-money = { $amount } { $currency }
price-money-range = { $least } to { $most } { $currency }

unit-piece = pieces
    .one = piece
unit-foot = feet
    .one = foot
unit-square-foot = square feet
    .one = square foot
unit-square = squares of 100 square feet
    .one = square of 100 square feet
unit-place = places
    .one = place
unit-job = jobs
    .one = job
unit-hour = hours
    .one = hour
unit-ton = tons
    .one = ton
unit-load = loads
    .one = load
unit-roof-square = squares
    .one = square
unit-layer = layers
    .one = layer
unit-pound = pounds
    .one = pound
unit-cubic-yard = cubic yards
    .one = cubic yard
unit-year = years
    .one = year
unit-time = times
    .one = time

# --- what things are bought in: how many, and .many for the head of a column
pack-bundle =
    { $count ->
        [one] { $count } bundle
       *[other] { $count } bundles
    }
    .many = bundles
pack-roll =
    { $count ->
        [one] { $count } roll
       *[other] { $count } rolls
    }
    .many = rolls
pack-length =
    { $count ->
        [one] { $count } length
       *[other] { $count } lengths
    }
    .many = lengths
pack-box =
    { $count ->
        [one] { $count } box
       *[other] { $count } boxes
    }
    .many = boxes
pack-sheet =
    { $count ->
        [one] { $count } sheet
       *[other] { $count } sheets
    }
    .many = sheets
pack-tube =
    { $count ->
        [one] { $count } tube
       *[other] { $count } tubes
    }
    .many = tubes
pack-can =
    { $count ->
        [one] { $count } can
       *[other] { $count } cans
    }
    .many = cans
pack-piece =
    { $count ->
        [one] { $count } piece
       *[other] { $count } pieces
    }
    .many = pieces

order-at-likely = Ordered for what is most likely needed
order-at-most = Ordered for the most that may be needed; what is left over goes back

# --- what a roof takes
item-strip-shingle = Three-tab shingles
item-laminated-shingle = Laminated shingles
item-starter = Starter strip
item-cap = Hip and ridge caps
item-underlayment = Underlayment
item-ice-barrier = Ice barrier
item-drip-edge = Drip edge
item-valley-metal = Valley metal
item-valley-sheet = Valley lining
item-step-flashing = Step flashing
item-head-flashing = Flashing across walls
item-counter-flashing = Upper flashing set into the wall
item-kick-out = Kick-outs
item-pipe-boot = Pipe boots
item-cricket = Cricket
item-high-vent = Vents high on the roof
item-low-vent = Intake vents
item-nails = Nails
item-deck-sheet = Sheets of deck
item-sealant = Sealant
item-cement = Asphalt cement
item-sized = { $item }, { $size }

# --- work on the roof
task-tear-off = Taking off the old covering, one layer
task-lay-shingles = Laying shingles
task-lay-starter = Starter course
task-lay-cap = Hip and ridge caps laid
task-lay-underlayment = Underlayment laid
task-lay-ice-barrier = Ice barrier laid
task-set-drip-edge = Drip edge set
task-line-valley = Valleys lined
task-set-step-flashing = Step flashing woven in
task-set-head-flashing = Flashing set across walls
task-set-counter-flashing = Upper flashing set into the wall and closed
task-set-kick-out = Kick-outs set
task-set-boot = Pipe boots set
task-build-cricket = Cricket built
task-set-vent = Vents set
task-set-up = Setting up, protecting and cleaning up

# --- why so much of it
need-shingles =
    { $cut ->
        [0] Laid out piece by piece on this roof: { $field } for the slopes. { $waste } % of the cover ends on the ground.
       *[other] Laid out piece by piece on this roof: { $field } for the slopes, { $cut } more for starter and caps. { $waste } % of the cover ends on the ground.
    }
need-starter = Along the eaves, and the rakes where that is chosen.
need-cap = Along every hip and ridge.
need-underlayment = One layer over the deck where no ice barrier lies, each row lapping { $lap } over the row below.
need-underlayment-double = Two layers where the slope is below 4:12, each row lapping half its width and 1 inch over the row below.
need-underlayment-some-double = Two layers on the slopes below 4:12, one layer on the others.
need-ice-barrier =
    { $courses ->
        [one] From the edge of the eave to at least 24 inches inside the wall: { $courses } row.
       *[other] From the edge of the eave to at least 24 inches inside the wall: { $courses } rows.
    }
need-drip-edge = Along eaves and rakes, each length lapping { $lap } over the next.
need-valley-metal = Along every valley, which stays open between two cut edges.
need-valley-sheet = Along every valley, under the shingles that close it.
need-step-flashing = One piece for each row of shingles along a wall or chimney.
need-head-flashing = Where the roof ends level against a wall or chimney.
need-counter-flashing = Over the other flashing, set into wall or chimney.
need-kick-out = Where an eave ends at a wall, to throw the water into the gutter.
need-boot = One for each pipe, by the size that was measured.
need-boot-size-not-measured = One for each pipe; its size was not measured.
need-cricket = Behind a chimney { $width } wide: a small roof { $height } high that parts the water.
need-vents = { $share } of the vented space must be open: { $area } square inches more, at { $each } for each vent.
need-vents-renewed = Those that stand there are renewed one for one.
need-nails = { $nails } in each shingle, two in each cap; about { $pounds }.
need-deck-sheets = An allowance: the deck is judged when it is bare.
need-stated = As the roofer states it.

# --- what could not be counted
gap-ice-not-known = It is not known whether ice barrier is asked for here. Say so in the settings of the code.
gap-overhang = The overhang of an eave was not measured. Measure it, or give one for the whole roof.
gap-chimney-width = The chimney's width was not measured.
gap-vent-product = The open area of one vent was not given.

takeoff-slope-at = slope { $letter } at { $pitch }
takeoff-error-nothing-laid = No slope is covered, so there is nothing to count. Choose the slopes first.
takeoff-error-other-plan = The slopes chosen are not those of this plan. Choose them again on the plan as it is now.
takeoff-error-not-on-plan = These slopes are to be covered, and the plan does not show them yet: { $slopes }. Measure them, so that the plan shows them.
takeoff-error-no-shingle = Only asphalt shingles are counted here. This is: { $covering }.
takeoff-error-too-low = Asphalt shingles may not lie below 2:12. Leave out { $slopes }, and cover it as a flat roof.
takeoff-error-bad-supply = A roll or length must be longer and wider than its lap, and a pack must hold something. Put this right in the price list: { $item }.

# --- what comes down, and what the roof carries
tear-off-error-asbestos = A layer may hold asbestos. It is not disturbed and not hauled: a licensed trade looks at it first.
tear-off-error-layers = Nobody counted the layers on slope { $letter }. Count them at a cut edge first.
tear-off-error-weight = It is not known what this covering weighs: { $covering }. Say what it is, or give its weight.
tear-off-error-trailer = A trailer must carry and hold more than nothing, and debris must weigh something.
binding-weight = by weight
binding-volume = by volume
tear-off-says = { $squares } with { $layers }: { $pounds }, { $yards }, { $loads }, bound { $by }
load-now = Slope { $letter } carries { $slope } pounds a square foot along the slope, { $plan } on the level.
load-with-another = With another layer slope { $letter } would carry { $plan } pounds a square foot on the level.
load-excepted = This needs no new check of the frame.
load-not-excepted = The frame must be checked for this first.

# --- an offer
gain-margin = Margin
gain-markup = Markup
tax-on-materials = on what the material costs
tax-on-all = on the whole price
cost-material = Material
cost-labour = Work
cost-disposal = Hauling and disposal
cost-permit = Permit
offer-line-named = { $item }: { $name }
offer-line-at-pitch = { $work }, at { $pitch }
offer-line-sundries = Small material: { $remedy }
offer-line-tons = Disposal by the ton
offer-line-loads = Hauling by the load
offer-valid-until = This offer holds until { $date }.
offer-minimum = The price is brought up to our smallest charge of { $amount } before tax.
offer-minimum-in-part = The lower end of the price is our smallest charge of { $amount } before tax.
offer-tax = Sales tax of { $rate } is included, { $on }.
offer-nevertheless = We advise against this. It is offered because: { $because }
offer-yearly = Over a usual life of { $years } it costs { $cost } a year, at { $rate } interest ({ $source }).
offer-yearly-here = It should last { $years } here, as we judge it: that is { $cost } a year, at { $rate } interest.
offer-patching = Patching this again, each time for { $once }, would be needed { $times } in { $years }: { $sum } in all, worth { $now } today at { $rate } interest.
offer-unsolved = This does not put right: { $part }.
offer-unsolved-by = This does not put right: { $part }. That comes with: { $course }.

left-out-other-trade = Not ours to do: { $part }. Call { $trade }.
left-out-not-ours = Not part of our work: { $part }.
left-out-not-seen = Not seen, and so not included: { $part }.
left-out-slopes = Slopes that stay as they are: { $letters }.
left-out-untied = Roof that belongs to no slope we looked at, neither counted nor priced here: { $letters }, together { $area } square feet.
left-out-vent-area = Whether the attic has enough vents was not worked out.
left-out-more-sheets =
    { $included ->
        [0] Each sheet of deck costs { $each } more before tax.
        [one] Each sheet of deck after the first costs { $each } more before tax.
       *[other] Each sheet of deck beyond { $included } costs { $each } more before tax.
    }

unpriced-material = Not priced yet: the price list has no row for this material: { $item }.
unpriced-other-pack = Not priced yet: the bundle in the price list is not the one that was laid: { $item }.
unpriced-hours = Not priced yet: the price list has no hours for this work: { $task }.
unpriced-hours-at = Not priced yet: the price list has no hours at { $pitch } for this work: { $task }.
unpriced-remedy = Not priced yet: the price list has no row for: { $remedy }.
unpriced-remedy-at = Not priced yet: the price list has no row at { $pitch } for: { $remedy }.
unpriced-not-counted = Not priced yet: count or measure the { $unit } of { $part } for: { $remedy }.
unpriced-no-remedy-named = Not priced yet: say what is done with { $part }.
unpriced-no-work-named = Not priced yet: say what is done.
unpriced-no-disposal = Not priced yet: the price list says nothing of disposal.
unpriced-no-sheet-price = Not priced yet: the price list has no price for a sheet of deck.
unpriced-no-takeoff = Not priced yet: the roof must be measured first.
unpriced-no-tear-off = Not priced yet: what comes down must be worked out first.
unpriced-gap = Not priced yet: { $item }. { $why }

# --- the same in a letter, for the owner
still-to-come-item = The price of this is still to come: { $item }.
still-to-come-work = The price of this work is still to come: { $work }.
still-to-come-measure = The price of this work is still to come: { $work } ({ $part }). How much of it there is must still be measured.
still-to-come-part = What is done here must still be settled, and with it the price: { $part }.
still-to-come-what = What exactly is done must still be settled, and with it the price.
still-to-come-disposal = The price of hauling the old covering away is still to come.
still-to-come-sheet = The price of new sheets of deck is still to come.
still-to-come-covering = The price of the new covering is still to come: the roof must be measured for it.
still-to-come-tear-off = The price of taking the old covering off is still to come.

offer-error-forbidden = This may not be offered: { $course }. { $reasons }
offer-error-no-reason = We advise against this: { $course }. To offer it all the same, write down why.
offer-error-not-refused = Nothing speaks against this: { $course }. It is offered where the verdict advises it.
offer-error-other-structure = The roof that was measured is that of another structure.
offer-error-nothing-to-do = The verdict names nothing to do, so there is nothing to offer.
worth-error-rate = Interest lies between 0 % and 50 % a year; this is { $rate }.
worth-error-time = A time lies between one month and { $years } years.
worth-error-too-great = An amount is too great to be reckoned with. Look over the quantities and prices.

# --- what is wrong with a price list
price-list-at-whole = In the whole list: { $what }
price-list-at-line = Line { $line }: { $what }
price-list-at-cell = Line { $line }, column { $column }: { $what }
price-list-not-text = this is not plain text. Save the list as CSV in UTF-8.
price-list-no-header = there is no header. The first line names the columns, beginning with "row" and "key".
price-list-semicolons = the cells are parted by semicolons. Save the list with commas.
price-list-no-such-column = there is no column "{ $text }".
price-list-column-missing = the column "{ $text }" is missing.
price-list-column-twice = the column "{ $text }" stands twice.
price-list-too-many-cells = there are more cells than columns. A comma inside a cell needs quotation marks around the cell.
price-list-open-quote = a quotation mark is not closed.
price-list-no-such-row = "{ $text }" is no kind of row.
price-list-no-such-key = "{ $text }" is not known here.
price-list-empty = this cell must not be empty.
price-list-no-meaning = "{ $text }" has no meaning in such a row. Leave the cell empty.
price-list-not-a-number = "{ $text }" is not a number. Write digits and a point only, as in 1250.50.
price-list-too-many-decimals = "{ $text }" has more than two decimals.
price-list-out-of-range = "{ $text }" is too small or too great.
price-list-not-a-share = "{ $text }" is not a share. Write it with its sign, as in 8.25 %.
price-list-share-out-of-range = "{ $text }" is too great a share.
price-list-not-a-length = "{ $text }" is not a length. Write 36 in, 10 ft or 900 mm.
price-list-not-a-pitch = "{ $text }" is not a pitch. Write 6:12.
price-list-not-one-of = "{ $text }" may not stand here. Write one of: { $may }.
price-list-wrong-unit = "{ $text }" is the wrong unit. This is counted by the { $unit }.
price-list-twice = the same row stands in line { $line } already.
price-list-margin-and-markup = line { $line } has a margin or markup already. A list has one or the other.
price-list-no-such-band = no band is named "{ $text }".
price-list-no-such-rate = no rate is named "{ $text }".
price-list-bands-out-of-order = bands stand from flat to steep, each ending at a steeper pitch, and only the last has no end.
price-list-waste-is-computed = the waste of shingles is worked out from the roof. Leave the cell empty.
price-list-pack-disagrees = the width and length of the roll make { $text }. Leave the amount empty or put it right.
price-list-not-a-currency = "{ $text }" is not a currency. Write its three letters, as in USD.
price-list-not-years = "{ $text }" is not a range of years. Write it as in 15-25.
price-list-row-missing = this row is missing: { $text }.
