# Gutters, downspouts and drains.

# --- split
defect-gutter-joint-leaks = Gutter joint leaks
    .what = A seam, corner or end of the gutter drips.
    .why = The drip wets the board and the wall below the same spot in every rain.
    .water = Water runs down behind or below the joint onto the board and wall.
    .photo = The joint from below with its stain, and from inside the gutter.
defect-gutter-rusted = Gutter rusted or holed
    .what = The gutter is rusted through or has holes.
    .why = The water it should carry away runs down the wall and to the foundation.
    .water = Water runs through the holes onto the board and wall below.
    .photo = The holes against the light, and how much of the gutter looks like that.
defect-downspout-split = Downspout split or crushed
    .what = The pipe from the gutter down is split, crushed or rusted through.
    .why = It backs up, and its water runs down the wall.
    .water = Water leaves through the split and wets the wall behind it.
    .photo = The damage close up, and the wall behind it.
defect-drain-ring-loose = Drain ring loose or cracked
    .what = The ring that clamps the roof sheet into the drain is loose, cracked or missing its bolts.
    .why = All the water of the flat roof runs past this one joint.
    .water = Water runs between the sheet and the drain into the roof.
    .photo = The ring close up with its bolts, and the sheet around it.

# --- loose
defect-gutter-sagging = Gutter sagging
    .what = The gutter hangs in a belly, and water stands in it.
    .why = Standing water is weight and rust. Sooner or later the gutter overflows at its lowest point.
    .water = Water spills over at the belly, often toward the wall.
    .photo = Along the gutter from one end, and the standing water inside.
defect-gutter-hanging = Gutter coming down
    .what = A length of gutter has torn loose and hangs.
    .why = It can fall on somebody, and it tears at the board and the roof's edge in every wind.
    .water = Water runs off the edge freely, onto the wall and into the soffit.
    .photo = The hanging length, what still holds it, and what lies below.
defect-downspout-loose = Downspout loose
    .what = The pipe from the gutter down has come off its straps or apart at a joint.
    .why = Its water runs down the wall or stands at the foundation.
    .water = Water gets to the wall at the open joint.
    .photo = The loose strap or joint, and the wall beside it.

# --- missing
defect-gutter-end-missing = Gutter end cap missing
    .what = The piece that closes the end of the gutter is missing or has come off.
    .why = The water pours out there, often against a wall.
    .water = Water pours down the wall or the board at the open end.
    .photo = The open end, and the stain below it.
defect-gutter-missing = No gutter where one is needed
    .what = The eave drips onto a lower roof, a wall, a door or the ground beside the foundation with nothing to catch the water.
    .why = It wears the roof below, splashes up the wall and wets the cellar.
    .water = Water splashes against wall and sill below. On a lower roof it wears a track into the shingles.
    .photo = The eave and what lies below it, with the splash marks.
defect-downspout-missing = Downspout missing
    .what = The gutter has an outlet, but the pipe below it is gone.
    .why = The water of the whole roof side falls in one place.
    .water = Water falls along the wall and splashes against it.
    .photo = The open outlet, and the ground and wall below.
defect-drain-strainer-missing = Drain strainer missing
    .what = The basket that keeps leaves out of the drain is missing.
    .why = Leaves get into the pipe, and a blocked pipe inside a house is hard to clear.
    .water = No water gets in now. It will stand on the roof once the drain is blocked.
    .photo = The open drain from above.

# --- misbuilt
defect-gutter-slopes-wrong = Gutter slopes the wrong way
    .what = The gutter runs level or away from its outlet.
    .why = Water stays in it, and with it dirt, mosquitoes, weight and rust.
    .water = It overflows at the low end, where nothing takes the water away.
    .photo = The standing water, and a level on the gutter.
defect-gutter-too-low = Water runs behind the gutter
    .what = The gutter hangs away from the board or below the edge metal, so water drips behind it.
    .why = The board and the wood behind it rot while the gutter stays dry.
    .water = Water drips between the gutter and the board onto both.
    .photo = From the end: roof edge, metal, gutter and the gap between, with the stain on the board.
defect-gutter-too-small = Gutter too small
    .what = The gutter or its outlets are too small for the roof that drains into it, and it overflows in a heavy rain.
    .why = The spill always hits the same spot: wall, door or foundation.
    .water = Water spills over the edge, in front or behind.
    .photo = The gutter's width with a tape, where it overflows, and the roof above it.
defect-gutter-cover-lifts-edge = Gutter cover lifts the shingles
    .what = A cover was pushed under the first shingles and holds them up.
    .why = The first row no longer lies down, and the wind can get hold of it.
    .water = Wind-driven rain and melting ice get under the lifted first row.
    .photo = The lifted row from the side, with the cover under it.
defect-downspout-onto-roof = Empties on a lower roof
    .what = The pipe from the upper gutter lets its water out on the shingles of a lower roof.
    .why = The stream washes the grains off in a track and wears the shingles out years early.
    .water = Water splashes up under the shingles where it lands, most of all near a wall.
    .photo = The outlet and the track below it.
defect-downspout-at-wall = Empties at the wall
    .what = The pipe lets the roof's water out right at the foundation.
    .why = It is a common reason for wet cellars and settling walls.
    .water = Water soaks into the ground at the wall and through it.
    .photo = The outlet and the ground around it.
defect-drain-too-high = Drain sits too high
    .what = The drain stands higher than the roof around it, so that a pool is left.
    .why = Standing water ages the roof sheet and finds every weak seam.
    .water = Water stands around the drain and gets in at seams and blisters.
    .photo = The pool or the ring of dirt it left, with a level across the drain.

# --- smothered
defect-gutter-clogged = Gutter clogged
    .what = Leaves, grains or dirt fill the gutter.
    .why = A full gutter overflows at the wall side, wets the roof's edge, and gets heavy enough to pull loose.
    .water = Water backs up under the first row and behind the board that the gutter hangs on.
    .photo = The inside of the gutter, and where it has run over.
defect-downspout-clogged = Downspout clogged
    .what = The pipe from the gutter down is blocked.
    .why = The gutter above fills and overflows although it looks clean.
    .water = Water backs up in the gutter and spills over at the wall side.
    .photo = Water standing at the outlet, or what came out of the pipe.
defect-drain-clogged = Drain or scupper clogged
    .what = Leaves or dirt block the outlet of the flat roof.
    .why = Water that cannot leave stands on the roof. It is heavy, and it finds every weak seam.
    .water = Standing water gets in at seams, blisters and around the outlet.
    .photo = The blocked outlet, and how far the water stands or has stood.

# --- wet
defect-gutter-overflow-marks = Overflow marks
    .what = Streaks on the board and wall show that the gutter runs over, although it was clean today.
    .why = It is too small, sags, or clogs each fall. What it spills wets the wall.
    .water = Water spills over the back edge onto the board and wall.
    .photo = The streaks, and the inside of the gutter above them.
