# What is fastened to the roof: dishes, antennas, brackets, panels, snow guards.

# --- split
defect-mount-seal-aged = Mount's seal dried out
    .what = The rubber or sealant at the foot of the bracket is cracked.
    .why = Each bracket is bolted through the roof. Its seal lasts fewer years than the shingles.
    .water = Water gets in around the bolts.
    .photo = The foot of the bracket all the way round, close up.

# --- loose
defect-mount-loose = Mount loose
    .what = The bracket moves, or its bolts have let go.
    .why = Wind pulls at it and tears its holes wider.
    .water = Water runs down the loosened bolts.
    .photo = A hand moving the bracket, and its bolts close up.
defect-mast-may-fall = Mast or dish may fall
    .what = The mast or dish hangs by part of its fastening.
    .why = It can fall. Stay clear if it leans toward a power line.
    .water = Water runs in where its bolts have pulled out.
    .photo = The mast against a straight line, what still holds it, and any line near it.
defect-cables-loose = Cables loose on the roof
    .what = Cables lie loose on the shingles or hang over the edge.
    .why = They rub the grains off in the wind and dam leaves. Cables of solar panels are an electrician's to touch.
    .water = No water gets in until they have worn through or been stapled into the roof.
    .photo = The cables, and what they have rubbed.
defect-snow-guard-loose = Snow guard loose or torn off
    .what = A snow guard has been torn loose by sliding snow.
    .why = It no longer holds the snow, and its holes lie open.
    .water = Water runs into the holes it was fastened by.
    .photo = The loose guard, its holes, and what lies below the eave.

# --- missing
defect-mount-holes-left = Open holes from an old mount
    .what = A dish, antenna or bracket was taken away, and its bolt holes were left.
    .why = Each is a hole through roof and deck. A dab of sealant in it soon dries out.
    .water = Rain runs straight down the open holes.
    .photo = Every hole with a pencil pointing at it, close up.
defect-snow-guard-missing = No snow guard where needed
    .what = Snow slides off the roof onto a door, a walk or a lower roof with nothing to hold it.
    .why = A sliding load can hurt people and tears gutters and lower roofs.
    .water = No water gets in because of this alone.
    .photo = The eave, and what lies below it.

# --- misbuilt
defect-mount-not-flashed = Mount without flashing
    .what = The bracket was screwed straight onto the shingles with sealant under it, with no metal lapped into the row above.
    .why = It depends on the sealant alone, which lasts a few years.
    .water = Water gets under the bracket and runs down its screws.
    .photo = The foot of the bracket and the shingles above it, close up.
defect-mount-misses-rafter = Mount not in the rafter
    .what = The bolts go into the thin deck and not into a rafter.
    .why = The deck does not hold wind load. The bolts pull out and leave holes.
    .water = Water runs down bolts that have begun to move.
    .photo = From the attic, the bolts beside the rafter.
defect-solar-on-old-roof = Panels on a roof near its end
    .what = The roof under the solar panels has fewer years left than the panels.
    .why = The panels have to come off and go back on when the roof is done, which costs more than most owners expect.
    .water = No water gets in because of this.
    .photo = The shingles at the edge of the panels, close up, and the whole array.
defect-solar-wire-damaged = Solar wiring damaged
    .what = Wires under the panels are chewed, bare or hanging in water.
    .why = They carry current whenever the sun shines and can start a fire. Touch neither the wires nor the metal.
    .water = No water gets in because of this. The danger is fire and shock.
    .photo = The wires from the edge of the panels, through a lens.

# --- smothered
defect-solar-debris = Leaves or nests under the panels
    .what = Leaves, nests or branches are caught under the panels.
    .why = They dam the water, keep the roof wet and can burn. Nests of protected birds are not to be moved in season.
    .water = Water backs up behind them and creeps under the shingles.
    .photo = From the edge of the panels, along the roof.
defect-snow-guard-snow-dams = Snow guard makes an ice dam
    .what = The snow held by the guard melts from below and freezes into a dam.
    .why = The guard does its work, but the warm attic below makes ice of the snow.
    .water = Water stands behind the ice and runs up under the shingles.
    .photo = The ice and the guard, or the stains below it.

# --- wet
defect-mount-leaks = Wet wood below the mount
    .what = The deck below the bracket is dark or soft.
    .why = The bracket has leaked for some time. The wood has to be renewed before anything is fastened there again.
    .water = Water has been running down the bolts.
    .photo = From the attic, the dark wood around the bolts.
