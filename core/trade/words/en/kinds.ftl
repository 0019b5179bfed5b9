# Stops of the walk, and the kinds of part that are looked at there.
# kind-…: the name on a button. .what it is, for an owner; .look: what to look at there, in one line.

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
    .what = The lines of ridge and eaves, which show whether the frame below stands straight.
    .look = Sight along ridge and eaves for sags, leans and dips, and for anything that may fall.
kind-trees-around = Trees around
    .what = The trees that stand over or near the roof.
    .look = Branches over the roof or touching it, dead wood, and what falls on it.
kind-service-line = Electric service line
    .what = The electric line that comes to the house, and the mast that carries it.
    .look = Where the line comes in, how low it hangs, and whether its mast stands firm. Look only.

# --- eave
kind-eave-edge = Eave edge
    .what = The low edge of a slope, where the water leaves it.
    .look = How far the shingles reach past the edge, and whether the wood under them is covered and firm.
kind-drip-edge = Drip edge
    .what = The bent metal strip along the edge that lets water drip clear of the wood.
    .look = The bent metal along the edge: there, lapped, tight, and on the right side of the sheet below.
kind-ice-barrier = Ice barrier
    .what = A sticky sheet under the lowest shingles that keeps out water held back by ice.
    .look = The sticky sheet at the eave: there, stuck down, and how far up it reaches.
kind-underlayment = Underlayment
    .what = The sheet that lies between the covering and the wood.
    .look = The sheet under the covering, where it shows: whole, lapped downhill, covered.
kind-gutter = Gutter
    .what = The channel that catches the water at the eave.
    .look = What lies in it, how it hangs, its joints and ends, and where water goes when it is full.
kind-downspout = Downspout
    .what = The pipe that takes the water from the gutter down.
    .look = Clear, fastened, whole, and where it lets its water out.
kind-fascia = Fascia board
    .what = The board along the eave that the gutter hangs on.
    .look = The board behind the gutter: firm, painted, dry at its top edge.
kind-soffit = Soffit
    .what = The underside of the overhang.
    .look = The underside of the overhang: closed, firm, no stains, no nests.
kind-intake-vent = Intake vent
    .what = The low openings, mostly at the eave, that let air into the attic.
    .look = The low air openings: enough of them, open, screened.

# --- rake
kind-rake-edge = Rake edge
    .what = The sloping edge of the roof at a gable.
    .look = The sloping edge: shingles tight and straight, metal over the sheet, the board sound.
kind-layers = Layers
    .what = The coverings that lie one over another.
    .look = Count what lies there at the cut edge, from the top down to the deck. The starter is no layer.

# --- field
kind-covering = Roof covering
    .what = The shingles, slates, tiles or metal that shed the water.
    .look = The whole slope in low light, then a few places close up: surface, tabs, how it lies.
kind-starter = Starter course
    .what = The hidden row under the lowest row of shingles.
    .look = Lift the first course at the eave: is there a starter, and does its seal sit at the edge?
kind-deck = Roof deck
    .what = The wood that the roof is nailed to.
    .look = Feel it underfoot or press it by hand at the eave and around every opening.
kind-fastening = Nails and seals
    .what = The nails and glue strips that hold the shingles.
    .look = Lift a tab where it bends: how many nails, where they sit, whether the seal holds.
kind-earlier-repair = Earlier repair
    .what = A place that somebody repaired before.
    .look = Where it ends at the top and the sides, its height beside the rest, what was left behind.
kind-attachment = Dish, antenna or bracket
    .what = Something fastened to the roof through the covering.
    .look = What it is fastened to, what keeps water out of its holes, holes left from older ones.
kind-solar-mount = Solar panel mount
    .what = The feet that carry the solar panels, bolted through the covering.
    .look = The feet of the panels: metal lapped in, firm, no leaves or nests below. Touch no wires.
kind-snow-guard = Snow guard
    .what = Small stops or rails that keep snow from sliding off.
    .look = Whether it is firm, what keeps water out of its holes, where sliding snow would land.

# --- valleys
kind-open-valley = Open valley
    .what = The inner corner where two slopes meet, with metal showing down the middle.
    .look = The metal down the middle: clear, whole, wide enough, no nails in it, shingles cut back clean.
kind-closed-valley = Closed valley
    .what = The inner corner where two slopes meet, covered with shingles.
    .look = The line where shingles meet: clear, whole, tight to the deck, trimmed on the right side.

# --- pipes
kind-pipe-boot = Pipe boot
    .what = The collar that seals a plumbing pipe where it leaves the roof.
    .look = The collar around the pipe, the base under the shingles, its nails. Look all the way round.
kind-fuel-vent = Fuel-burning appliance vent
    .what = The pipe that takes the exhaust of a furnace, water heater or stove through the roof.
    .look = Which appliance and which fuel, its height, cap, joints, rust, and its lean. Look only.
kind-exhaust-hood = Fan or dryer hood
    .what = The hood over the duct of a bath fan, kitchen fan or dryer.
    .look = Does the flap move, is the screen clear, is the base lapped like a shingle?

# --- skylights
kind-skylight = Skylight
    .what = The window in the roof: its glass and frame.
    .look = Glass or dome, its gaskets and frame, the openings that let its own water out.
kind-skylight-flashing = Skylight flashing
    .what = The bent metal that leads water around the skylight.
    .look = Head, sides and foot: metal in steps, tight, not smeared, no leaves above it.

# --- chimneys
kind-masonry-chimney = Masonry chimney
    .what = The chimney of brick or stone above the roof.
    .look = Top, cap, joints, bricks, lean. White stains tell of water inside.
kind-prefab-chimney = Prefabricated chimney
    .what = A metal chimney pipe, mostly in a box with siding and a metal top.
    .look = The metal cover on top, the pipe and its collar, the box around it.
kind-chimney-flashing = Chimney flashing
    .what = The bent metal that leads water around the chimney.
    .look = Foot, sides, back: two layers of metal, the upper one let into the joint.
kind-cricket = Chimney cricket
    .what = A small saddle uphill of a chimney that parts the water.
    .look = The small saddle uphill of a wide chimney: there, steep enough, clear, joints whole.

# --- walls
kind-sidewall-flashing = Sidewall flashing
    .what = The bent metal where the side of a slope meets a wall.
    .look = One piece of bent metal at each course, behind the siding, and space under the siding.
kind-headwall-flashing = Headwall flashing
    .what = The bent metal where the top of a slope meets a wall.
    .look = Where the top of a slope meets a wall: metal far enough up and down, tight, not nailed through.
kind-kickout = Kick-out flashing
    .what = The bent piece that turns the water out where an eave ends at a wall.
    .look = Where an eave ends against a wall: is the water turned out into the gutter?
kind-wall-above = Wall above the roof
    .what = The wall that rises above the roof, with its windows.
    .look = Siding, stucco, windows and trim above the roof: open joints, rot, loose pieces.

# --- low slope
kind-low-slope-field = Low-slope roof
    .what = A roof so flat that it is covered with a sheet.
    .look = Surface, seams, blisters, and where water stands two days after rain.
kind-low-slope-join = Low-slope join
    .what = The joint between a flat roof and a steep roof or a wall.
    .look = Where the low roof meets the steep one or a wall: how far up it runs, which laps over which.
kind-low-slope-edge = Flat roof edge
    .what = The edge of a flat roof, or the low wall around it.
    .look = The metal along the edge and the caps of low walls: tight, joined, nothing lifted.
kind-roof-drain = Roof drain or scupper
    .what = The outlet through which a flat roof drains.
    .look = Clear, strainer on, clamped tight, and the lowest point around it.

# --- ridge
kind-ridge-cap = Ridge caps
    .what = The shingles or tiles that cover the top line of the roof.
    .look = Cracks along the bend, loose or missing caps, bare nails, the way they lap.
kind-hip-cap = Hip caps
    .what = The shingles or tiles that cover an outer corner where two slopes meet.
    .look = Cracks along the bend, loose or missing caps, the lowest one and the join at the top.
kind-ridge-vent = Ridge vent
    .what = A vent along the ridge that lets air out of the attic.
    .look = Tight, whole, its ends closed; from inside, whether the slot under it is cut.
kind-roof-vent = Roof vent
    .what = A vent in the slope that lets air out of the attic.
    .look = Hood, screen and base; lapped like a shingle; hole below it really cut.

# --- attic
kind-attic-deck = Deck from inside
    .what = The underside of the roof, seen from the attic.
    .look = With a light: wet or dark wood, daylight, rusty nail points, around every pipe and chimney.
kind-attic-frame = Rafters and trusses
    .what = The wooden frame that carries the roof.
    .look = Cracks, cuts, rot, spreading joints, sagging ridge.
kind-attic-air = Attic air and insulation
    .what = The way air moves through the attic, and the insulation on its floor.
    .look = Air paths at the eave, ducts that end inside, wet insulation. Touch no loose gray or gold grains.
