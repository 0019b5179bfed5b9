# Names of conditions, courses, trades, questions and the other nouns.
# A name is written as it stands on a button; in the middle of a sentence its first letter is made small.

# --- rungs of condition
rung-sound = Sound
    .what = Does its work and will go on doing it.
rung-ageing = Ageing
    .what = Worn, but still does its work.
rung-failing = Failing
    .what = Lets water in at times, or will before long.
rung-failed = Failed
    .what = No longer does its work.

condition-gone = Taken down
condition-not-seen = Not seen

# --- how it was seen
seen-touched = Hand on it
    .what = We had a hand on it.
seen-near = From near
    .what = We saw it from a few feet away.
seen-zoomed = Through a lens
    .what = We saw it through a lens, from the ladder or a pole.
seen-afar = From the ground
    .what = We saw it only from the ground.
seen-told = Told
    .what = Somebody told us; we did not see it.
seen-inferred = Concluded
    .what = We conclude it from something else; we did not see it.

# --- why it was not seen
not-seen-hidden = Covered
    .what = it was covered and could not be judged
not-seen-unsafe = Not safe to reach
    .what = the way to it was not safe
not-seen-too-steep = Too steep
    .what = the roof was too steep to reach it
not-seen-wet = Wet or icy
    .what = the roof was wet, frosted or under snow
not-seen-locked = Locked
    .what = it lay behind a locked gate, door or hatch
not-seen-out-of-reach = Out of reach
    .what = it was out of reach of ladder and lens
not-seen-too-cold-or-hot = Too cold or hot to lift
    .what = it was too cold or too hot to lift a shingle without breaking it
not-seen-outside-scope = Not part of this visit
    .what = it was not part of what this visit set out to do
not-seen-not-reached = Not reached
    .what = the visit ended before it was reached

# --- how far a defect reaches
extent-spot = One place
extent-several = Two or three places
extent-broad = Four places or more, or a quarter of the slope

# --- families of defects
family-split = Split or worn
    .what = Cracked, torn, worn through, rusted.
family-loose = Loose
    .what = Lifted, slipped, hanging, not fastened.
family-missing = Missing
    .what = Gone, never there, too short.
family-misbuilt = Built wrong
    .what = Wrong lap, wrong place, wrong material.
family-smothered = Smothered
    .what = Clogged, overgrown, smeared or covered over.
family-wet = Wet
    .what = Stained, damp, soft, rotten.

# --- when
when-now = Now
    .what = at once, before the next rain
when-this-season = This season
    .what = before the season is over
when-later = Later
    .what = not yet

# --- courses
course-leave = Leave it
    .what = Nothing needs doing now; the roof is looked at again later.
course-maintain = Upkeep
    .what = Small jobs that keep a good roof good.
course-make-safe = Make safe for now
    .what = A cover or seal that holds for weeks, until the work is done right.
course-repair = Repair
    .what = The bad places are put right where they are; the rest stays.
course-recover = New covering over the old
    .what = A new covering is laid over the old one, which stays.
course-tear-off = Tear off and cover anew
    .what = Everything comes off down to the deck, and the roof is covered anew.
course-refer = Call another trade
    .what = This is work that another trade must do.
course-look-first = Look first
    .what = What was seen supports no more than a closer look.

# --- what of a course is refused
narrowed-sealant-alone = A repair with sealant alone
narrowed-old-flashings = A new covering over the old with the old flashings kept
narrowed-beyond-making-safe = Any repair beyond making it safe for now

# --- trades that a roofer refers to. .who stands in a sentence
trade-mason = Mason
    .who = a mason
trade-fuel-vent = Licensed heating or gas trade
    .who = a licensed heating or gas contractor
trade-electrician = Electrician
    .who = a licensed electrician or the power company
trade-structural = Structural engineer
    .who = a structural engineer or a framing contractor
trade-asbestos = Licensed asbestos trade
    .who = a licensed asbestos inspector
trade-plumber = Plumber
    .who = a plumber
trade-arborist = Tree service
    .who = a tree service
trade-wildlife = Wildlife service
    .who = a licensed wildlife service
trade-siding = Siding or window trade
    .who = a siding, stucco or window contractor

# --- questions of fact. .yes and .no state the answer, .ask says where to look or whom to ask
question-water-comes-in = Is water coming in now?
    .yes = water is coming in now
    .no = no water is coming in now
    .ask = Look at the underside of the deck with a light, during rain or soon after it
question-open-to-rain = Is anything open that the next rain will get into?
    .yes = something is open that the next rain will get into
    .no = nothing stands open to the next rain
    .ask = Look over each slope and around every opening for gaps, holes and missing pieces
question-may-fall = May anything fall?
    .yes = something may fall
    .no = nothing is about to fall
    .ask = Walk round the house and look up at chimney, gutters, loose slates and tiles, and branches
question-covering-done = Is the covering failing all over?
    .yes = the covering is failing all over
    .no = the covering is not failing all over
    .ask = Look at every part of the slope, not only at the worst place
question-brittle = Do lifted shingles crack?
    .yes = lifted shingles crack
    .no = lifted shingles still bend
    .ask = Lift a shingle by hand in two or three places, neither in frost nor in heat
question-not-flat = Does the old covering lie too unevenly to be laid over?
    .yes = the old covering lies too unevenly to be laid over
    .no = the old covering lies flat enough to be laid over
    .ask = Look along the slope in low light for curls, humps and steps
question-two-layers = Are there two layers of covering or more?
    .yes = there are two layers of covering or more
    .no = there is only one layer of covering
    .ask = Count the layers at a rake edge or a cut edge on every slope
question-three-layers = Are there three layers of covering or more?
    .yes = there are three layers of covering or more
    .no = there are no more than two layers of covering
    .ask = Count the layers at a rake edge or a cut edge on every slope
question-deck-wet = Is the deck wet or soft anywhere?
    .yes = the deck is wet or soft somewhere
    .no = the deck is dry and firm
    .ask = Press the deck at the eave, in the valleys and around every opening, or look at it from the attic
question-deck-wet-broad = Is the deck wet or soft beyond a spot?
    .yes = the deck is wet or soft beyond a spot
    .no = the deck is dry but for a spot
    .ask = Feel how far the soft wood reaches, or look at the whole underside from the attic
question-many-places = Are there many bad places on one slope?
    .yes = there are many separate bad places on one slope
    .no = no slope has many separate bad places
    .ask = Look over each slope from eave to ridge and count the places that need work
question-too-low = Is the slope too low for its covering?
    .yes = the slope is too low for its covering
    .no = the slope is steep enough for its covering
    .ask = Measure the pitch on each slope
question-rebuilt-step = Do rebuilt sections hold or step water?
    .yes = a rebuilt section lies at another height and holds or steps water
    .no = no rebuilt section holds or steps water
    .ask = Look along the slope from the side for steps where a section was rebuilt
question-patched-often = Was the same cause patched before, as often as we patch?
    .yes = the same cause was patched before as often as we patch it
    .no = the same cause was not patched that often
    .ask = Ask the owner what was patched here before and when
question-unmatchable = Is a matching shingle no longer to be had?
    .yes = no shingle that matches in size and thickness is to be had
    .no = a shingle that matches in size and thickness is to be had
    .ask = Measure how much of a shingle shows and how thick it is, and ask the supplier
question-barred-base = Is the top covering one that no covering may be laid over?
    .yes = the top covering is one that no covering may be laid over
    .no = the top covering is not one that bars laying over it
    .ask = See what the top covering is: slate, clay or cement tile, or asbestos-cement
question-flashing-stays = Is there a flashing or edge that cannot be renewed?
    .yes = some flashing or edge cannot be renewed without opening the wall
    .no = every flashing and edge can be renewed
    .ask = Look at every wall, chimney and edge: can the metal be taken out from outside?
question-frame-weak = May the frame be too weak for another layer?
    .yes = the frame may not carry another layer
    .no = the frame shows no sign that it cannot carry another layer
    .ask = Look at rafters and ridge from the attic, and ask an engineer where in doubt
question-maker-refuses = Does the maker of the new covering refuse to have it laid over the old one?
    .yes = the maker of the new covering does not accept it over the old one
    .no = the maker of the new covering accepts it over the old one
    .ask = Ask the maker of the new covering, or read its printed instructions
question-asbestos = Is there anything that may hold asbestos?
    .yes = there is material that may hold asbestos and must not be disturbed
    .no = nothing was seen that may hold asbestos
    .ask = Look at flues, old shingles and old pipes without touching them, and have doubtful ones tested
question-vermiculite = Is there loose-fill insulation that may be vermiculite?
    .yes = there is loose-fill insulation that may be vermiculite and must not be disturbed
    .no = no insulation was seen that may be vermiculite
    .ask = Look from the hatch, without going in, for pebble-like gray, brown or gold grains

# --- answers
answer-yes = Yes
answer-no = No
answer-unknown = Don't know

# --- structures. .the stands in a sentence
structure-house = House
    .the = the house
structure-attached-garage = Attached garage
    .the = the attached garage
structure-detached-garage = Detached garage
    .the = the detached garage
structure-porch = Porch
    .the = the porch
structure-addition = Addition
    .the = the addition
structure-shed = Shed
    .the = the shed

# --- sides, named from the street. .slope names the slope
side-front = Front
    .slope = front slope
side-left = Left
    .slope = left slope
side-rear = Rear
    .slope = rear slope
side-right = Right
    .slope = right slope

# --- people
role-owner = Owner
role-tenant = Tenant
role-manager = Manager
role-agent = Selling or buying
role-former-owner = Former owner

# --- what a visit sets out to do
scope-request-only = Only what was asked
    .what = only the part that the caller asked about
scope-quick-look = Quick look
    .what = the parts that leak most
scope-whole-roof = Whole roof
    .what = every part of the roof, and the attic

# --- when water shows inside
wet-when-any-rain = In any rain
    .what = Water that shows in any rain comes in through an open place.
wet-when-driven-rain = In rain with wind
    .what = Water that shows only with wind often comes in at a wall, a flashing or a loose edge.
wet-when-long-rain = In long rain
    .what = Water that shows only in long rain often backs up behind leaves or on a low slope.
wet-when-thaw = When snow or ice melts
    .what = Water that shows in a thaw is often held back by ice at the eave.
wet-when-dry-cold = In dry cold weather
    .what = Water that shows in dry cold often comes from damp air in the house, not from rain.

# --- weather
sky-dry = Dry
    .what = Dry enough to stand on where the pitch allows it.
sky-wet = Wet
    .what = Too slippery to stand on. Look from the ladder or the ground.
sky-frozen = Frost, snow or ice
    .what = Nobody goes on it. Look from the ground.
sky-thunder = Thunder
    .what = Off the ladder. Wait until 30 minutes after the last thunder.

# --- before the ladder is climbed. .ask what to check, .stop what is wrong where it does not hold
safety-ladder-stands = Ladder stands right
    .ask = Firm level ground, foot out a quarter of the working length, three feet above the edge, tied.
    .stop = the ladder could not be set up safely
safety-lines-clear = Clear of power lines
    .ask = No live line within ten feet of the ladder or the way, and no metal ladder near any line.
    .stop = a power line is too near
safety-weather-holds = Weather holds
    .ask = No thunder within the last 30 minutes, no wind that moves the ladder.
    .stop = the weather did not allow it
safety-surface-dry = Roof is dry
    .ask = No dew, rain, frost, snow, moss or loose grains where you would stand.
    .stop = the roof was too slippery to stand on
safety-pitch-safe = Pitch is safe
    .ask = Not too steep for the gear at hand. From 6 feet up, tie off.
    .stop = the roof was too steep for the gear at hand
safety-deck-bears = Deck bears
    .ask = Press it at the eave before you step on it. Soft or sagging: stay off.
    .stop = the deck may not bear a person
safety-no-suspect-fibres = No suspect fibers
    .ask = No asbestos-cement and no vermiculite where you would step, drill or reach.
    .stop = material that may hold asbestos is in the way

# --- how a structure was reached
reach-on-roof = On the roof
    .what = We were on the roof.
reach-ladder = From the ladder
    .what = We looked from a ladder at the eave.
reach-pole = Camera on a pole
    .what = We looked with a camera on a pole.
reach-ground = From the ground
    .what = We looked only from the ground.
reach-inside = From inside
    .what = We looked only from inside.
reach-not-reached = Not reached
    .what = We did not get to it.

# --- whose work
by-us = By us
by-not-us = Not by us
by-unknown = Not known by whom

# --- what was done, where no remedy is named
did-replaced = A new part was put in
did-covered = It was covered over
did-taken-down = It was taken down
did-something = Something was done, not known what

# --- how the work is known
evidence-seen = Seen on the roof
evidence-told = Told
evidence-papers = From papers
evidence-own-record = From our own record

# --- what became of a part
became-gone = Gone
    .what = It was taken down, and nothing stands in its place.
became-hidden = Hidden
    .what = It is covered now and cannot be judged.
became-not-seen-again = Not seen again
    .what = It was not seen this time. What was found before still stands.
became-replaced = Replaced
    .what = A new part stands there now.
became-cured = Cured
    .what = The cause was put right, and it is sound now.
became-patched = Patched
    .what = Something was done, but the cause remains.
became-worse = Worse
    .what = It has become worse.
became-still-open = Still open
    .what = It is as it was; nothing was done.
became-better = Better
    .what = It looks better, and no work on it is known.
became-quiet = Sound then and now
    .what = It was sound then and is sound now.
became-new = New
    .what = It was not recorded before.

# --- coverings
covering-asphalt-strip = Three-tab asphalt shingles
covering-asphalt-laminated = Laminated asphalt shingles
covering-asphalt-roll = Asphalt roll roofing
covering-wood-shingle = Wood shingles
covering-wood-shake = Wood shakes
covering-slate = Slate
covering-clay-tile = Clay tile
covering-cement-tile = Cement or concrete tile
covering-asbestos-cement = Asbestos-cement shingles
covering-metal-seam = Standing-seam metal
covering-metal-lapped = Lapped metal panels
covering-built-up = Built-up roofing
covering-modified-bitumen = Modified bitumen sheet
covering-single-ply = Single-ply sheet
covering-unclear = Not clear what it is

layer-membrane = Underlayment or ice barrier
layer-sheathing = Sheathing over an older covering
layer-deck = Deck

# --- how the layers were learned
learned-cut-edge = Counted at a cut edge
learned-rake-edge = Counted at the rake edge
learned-lifted = A shingle was lifted
learned-drilled = Drilled or cut open
learned-owners-word = The owner said so

# --- measures. .how to take it
measure-width = Width
    .how = Side to side, level, parallel to the ridge.
measure-height = Height above the roof
    .how = Straight up from where it leaves the roof, on the uphill side.
measure-distance = Level distance
    .how = Level, to the ridge or to the wall or thing that stands higher.
measure-drop = Drop
    .how = Straight down, from the ridge or the higher thing to where this part leaves the roof.
measure-exposure = Exposure
    .how = From one lower edge to the next, along the slope.
measure-run = Length along the edge
    .how = Along the edge.
measure-diameter = Diameter
    .how = Across the outside.
measure-thickness = Thickness
    .how = Through the metal or sheet.
measure-overhang = Overhang
    .how = Level, from the outer face of the wall to the edge of the eave.

# --- how a number was got
got-tape = With a tape
got-paced = Paced out
got-picture = From a picture
got-footprint = From a footprint or plan
got-inclination = With the phone's level
got-eye = By eye
got-told = Told

# --- what came of a letter
came-accepted = Accepted, work ahead
came-done-by-us = Done by us
came-done-by-others = Done by others
came-declined = Declined
came-no-answer = No answer

# --- why to come back
because-ask-for-answer = Ask for an answer
because-cover-runs-out = Temporary cover runs out
because-look-promised = A look was promised
because-not-seen-yet = Something was not seen yet

# --- lines of the doorstep
tells-danger = Danger
tells-request = What they ask now
tells-patched = Patched before
tells-offered = Offered before
tells-not-seen = Never seen
tells-work-since = Work since
tells-due = Due
tells-corrected = Corrected
tells-callback = Our callback
