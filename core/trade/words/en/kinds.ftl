# Stops of the walk, and the kinds of part that are looked at there.
# kind-…: the name on a button. .look: what to look at there, in one line.

stop-ground = From the ground
stop-eave = Eave
stop-rake = Rake edge
stop-field = Field of the roof
stop-valleys = Valleys
stop-pipes = Pipes and vents
stop-skylights = Skylights
stop-chimneys = Chimneys
stop-walls = Walls and dormers
stop-low-slope = Low slopes
stop-ridge = Ridges and hips
stop-attic = Attic

# --- ground
kind-frame-line = Roof line
    .look = Sight along ridge and eaves for sags, leans and dips, and for anything that may fall.
kind-trees-around = Trees around
    .look = Branches over the roof or touching it, dead wood, and what falls on it.
kind-service-line = Electric service line
    .look = Where the line comes in, how low it hangs, and whether its mast stands firm. Look only.

# --- eave
kind-eave-edge = Eave edge
    .look = How far the shingles reach past the edge, and whether the wood under them is covered and firm.
kind-drip-edge = Drip edge
    .look = The bent metal along the edge: there, lapped, tight, and on the right side of the sheet below.
kind-ice-barrier = Ice barrier
    .look = The sticky sheet at the eave: there, stuck down, and how far up it reaches.
kind-underlayment = Underlayment
    .look = The sheet under the covering, where it shows: whole, lapped downhill, covered.
kind-gutter = Gutter
    .look = What lies in it, how it hangs, its joints and ends, and where water goes when it is full.
kind-downspout = Downspout
    .look = Clear, fastened, whole, and where it lets its water out.
kind-fascia = Fascia board
    .look = The board behind the gutter: firm, painted, dry at its top edge.
kind-soffit = Soffit
    .look = The underside of the overhang: closed, firm, no stains, no nests.
kind-intake-vent = Intake vent
    .look = The low air openings: enough of them, open, screened.

# --- rake
kind-rake-edge = Rake edge
    .look = The sloping edge: shingles tight and straight, metal over the sheet, the board sound.
kind-layers = Layers
    .look = Count what lies there at the cut edge, from the top down to the deck. The starter is no layer.

# --- field
kind-covering = Roof covering
    .look = The whole slope in low light, then a few places close up: surface, tabs, how it lies.
kind-starter = Starter course
    .look = Lift the first course at the eave: is there a starter, and does its seal sit at the edge?
kind-deck = Roof deck
    .look = Feel it underfoot or press it by hand at the eave and around every opening.
kind-fastening = Nails and seals
    .look = Lift a tab where it bends: how many nails, where they sit, whether the seal holds.
kind-earlier-repair = Earlier repair
    .look = Where it ends at the top and the sides, its height beside the rest, what was left behind.
kind-attachment = Dish, antenna or bracket
    .look = What it is fastened to, what keeps water out of its holes, holes left from older ones.
kind-solar-mount = Solar panel mount
    .look = The feet of the panels: metal lapped in, firm, no leaves or nests below. Touch no wires.
kind-snow-guard = Snow guard
    .look = Whether it is firm, what keeps water out of its holes, where sliding snow would land.

# --- valleys
kind-open-valley = Open valley
    .look = The metal down the middle: clear, whole, wide enough, no nails in it, shingles cut back clean.
kind-closed-valley = Closed valley
    .look = The line where shingles meet: clear, whole, tight to the deck, trimmed on the right side.

# --- pipes
kind-pipe-boot = Pipe boot
    .look = The collar around the pipe, the base under the shingles, its nails. Look all the way round.
kind-fuel-vent = Fuel-burning appliance vent
    .look = Which appliance and which fuel, its height, cap, joints, rust, and its lean. Look only.
kind-exhaust-hood = Fan or dryer hood
    .look = Does the flap move, is the screen clear, is the base lapped like a shingle?

# --- skylights
kind-skylight = Skylight
    .look = Glass or dome, its gaskets and frame, the openings that let its own water out.
kind-skylight-flashing = Skylight flashing
    .look = Head, sides and foot: metal in steps, tight, not smeared, no leaves above it.

# --- chimneys
kind-masonry-chimney = Masonry chimney
    .look = Top, cap, joints, bricks, lean. White stains tell of water inside.
kind-prefab-chimney = Prefabricated chimney
    .look = The metal cover on top, the pipe and its collar, the box around it.
kind-chimney-flashing = Chimney flashing
    .look = Foot, sides, back: two layers of metal, the upper one let into the joint.
kind-cricket = Chimney cricket
    .look = The small saddle uphill of a wide chimney: there, steep enough, clear, joints whole.

# --- walls
kind-sidewall-flashing = Sidewall flashing
    .look = One piece of bent metal at each course, behind the siding, and space under the siding.
kind-headwall-flashing = Headwall flashing
    .look = Where the top of a slope meets a wall: metal far enough up and down, tight, not nailed through.
kind-kickout = Kick-out flashing
    .look = Where an eave ends against a wall: is the water turned out into the gutter?
kind-wall-above = Wall above the roof
    .look = Siding, stucco, windows and trim above the roof: open joints, rot, loose pieces.

# --- low slope
kind-low-slope-field = Low-slope roof
    .look = Surface, seams, blisters, and where water stands two days after rain.
kind-low-slope-join = Low-slope join
    .look = Where the low roof meets the steep one or a wall: how far up it runs, which laps over which.
kind-low-slope-edge = Flat roof edge
    .look = The metal along the edge and the caps of low walls: tight, joined, nothing lifted.
kind-roof-drain = Roof drain or scupper
    .look = Clear, strainer on, clamped tight, and the lowest point around it.

# --- ridge
kind-ridge-cap = Ridge caps
    .look = Cracks along the bend, loose or missing caps, bare nails, the way they lap.
kind-hip-cap = Hip caps
    .look = Cracks along the bend, loose or missing caps, the lowest one and the join at the top.
kind-ridge-vent = Ridge vent
    .look = Tight, whole, its ends closed; from inside, whether the slot under it is cut.
kind-roof-vent = Roof vent
    .look = Hood, screen and base; lapped like a shingle; hole below it really cut.

# --- attic
kind-attic-deck = Deck from inside
    .look = With a light: wet or dark wood, daylight, rusty nail points, around every pipe and chimney.
kind-attic-frame = Rafters and trusses
    .look = Cracks, cuts, rot, spreading joints, sagging ridge.
kind-attic-air = Attic air and insulation
    .look = Air paths at the eave, ducts that end inside, wet insulation. Touch no loose gray or gold grains.
