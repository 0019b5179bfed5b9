# Chimneys, masonry and prefabricated.

# --- split
defect-mortar-washed-out = Mortar washed out
    .what = The mortar between the bricks has worn away, and the joints are open.
    .why = Open joints take in water, which freezes, loosens the bricks and runs down inside.
    .water = Rain soaks into the open joints and comes out below the roof, past any flashing.
    .photo = The joints close up with a key or pencil in the deepest one, and the whole side.
defect-brick-spalled = Bricks flaking
    .what = The faces of the bricks flake or have burst off.
    .why = The bricks take in water and freeze. A coat of paint or sealer that traps the water makes it worse.
    .water = Rain soaks into the broken faces and comes out below the roof.
    .photo = The flaking bricks close up, and the pieces on the roof.
defect-chimney-crown-cracked = Chimney crown cracked
    .what = The slab of mortar or concrete on top of the chimney is cracked.
    .why = It is the chimney's roof. Through its cracks the whole chimney gets wet from inside.
    .water = Rain runs through the cracks down between bricks and flue.
    .photo = The top from above, through a lens or from a pole.
defect-flue-liner-cracked = Flue liner cracked or open
    .what = The clay or metal pipe inside the chimney is cracked, has open joints, or is missing.
    .why = Heat and exhaust get into the walls of the chimney. Exhaust may hold carbon monoxide. Do not use it until it has been inspected.
    .water = No rain gets in because of this alone.
    .photo = Down the flue from above, through a lens, if it can be seen safely.
defect-chase-cover-rusted = Chimney top cover rusted
    .what = The sheet of metal that closes the top of the boxed chimney is rusted or holed.
    .why = It is a small flat roof, and everything inside the box depends on it.
    .water = Water drips through the rust into the box and down around the pipe.
    .photo = The top from above or from a pole, and the rust streaks down the sides.

# --- loose
defect-chimney-bricks-loose = Bricks loose
    .what = Bricks at the top of the chimney lie loose.
    .why = They can fall, through the roof or on a person. Keep away from below until they are made safe.
    .water = Rain runs in between the loose bricks.
    .photo = The loose bricks through a lens, and what lies below them.
defect-chimney-leaning = Chimney leaning
    .what = The chimney leans or has come away from the house.
    .why = It may fall. The reason is below: its footing, its mortar or its ties.
    .water = Water gets in where it has pulled away from the roof.
    .photo = The chimney against a straight line, and the gap where it leaves the wall or roof.
defect-chimney-cap-loose = Chimney cap loose
    .what = The cap on the flue is loose or half off.
    .why = Wind can throw it down, and rain and animals get in without it.
    .water = Rain gets down the flue past the loose cap.
    .photo = The cap from the ladder or through a lens.
defect-chase-joints-open = Chimney box coming apart
    .what = The siding or corner boards of the boxed chimney have opened or come loose.
    .why = The box stands out in the weather on all sides, and behind its siding there is only wood.
    .water = Wind-driven rain gets in at the open joints and runs down inside the box.
    .photo = The open joints close up, and the whole box.

# --- missing
defect-chimney-cap-missing = Chimney cap missing
    .what = There is no cap over the flue, the opening that lets the smoke out.
    .why = Rain, leaves, birds and raccoons get in. Wet soot eats the flue from inside.
    .water = Rain falls straight down the flue.
    .photo = The open top of the flue, through a lens or from a pole.
defect-chase-collar-open = Open ring around the chimney pipe
    .what = The ring that closes the gap between the chimney pipe and its top cover is missing or open.
    .why = The gap is small, but it points straight up.
    .water = Rain runs down the pipe through the gap into the box.
    .photo = The ring from above, all the way round.

# --- misbuilt
defect-chimney-too-low = Chimney too low
    .what = A chimney has to end 2 feet above anything within 10 feet, and 3 feet above where it leaves the roof. This one does not.
    .why = Low chimneys draw badly, and wind can push smoke and exhaust back into the house. They may hold carbon monoxide.
    .water = No water gets in because of this.
    .photo = The chimney from the side with a tape for its height, and the ridge or wall beside it.
defect-chase-cover-flat = Chimney top cover holds water
    .what = The metal top of the boxed chimney is flat or dished, and water stands on it.
    .why = It rusts from the standing water and leaks around the pipe first.
    .water = Standing water seeps in at the pipe and at the screws.
    .photo = The water or its ring on the top, from above or from a pole.

# --- smothered
defect-chimney-coated = Chimney painted or sealed
    .what = The brick was painted or sealed with a film.
    .why = Brick has to dry outward. Under a film the water stays, freezes and bursts the bricks.
    .water = Water gets in at the top and at joints and cannot dry out through the brick.
    .photo = The film close up where it peels, and bricks that flake below it.
defect-chimney-smeared = Chimney joint smeared with tar
    .what = The joint between chimney and roof is covered with black roof cement.
    .why = It hides whether there is any metal below. It cracks, lets go of the brick and holds water behind itself.
    .water = Water runs down the brick and in behind the cracked smear.
    .photo = The smear on each side of the chimney, and its worst crack close up.

# --- wet
defect-chimney-white-stains = White stains on the brick
    .what = White, salty stains show that water passes through the brick.
    .why = The water comes from above: a cracked top, open joints, or an open flue. The stain shows the way it takes.
    .water = Rain soaks in higher up and leaves its salt where it dries.
    .photo = The stains, and the top of the chimney above them.
defect-chase-wood-rotten = Chimney box rotten
    .what = The wood of the boxed chimney is soft or rotten.
    .why = It holds the chimney pipe upright. The rot mostly starts at the top cover or where the box meets the roof.
    .water = Water runs in at the top or stands where the siding touches the roof.
    .photo = A screwdriver in the soft wood, and what lies above it.
