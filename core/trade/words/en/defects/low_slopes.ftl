# Low slopes: roofs too flat for shingles, where they join the steep ones, and their edges.

# --- split
defect-low-slope-worn-out = Low-slope roof worn out
    .what = The sheet of the flat roof is cracked, shrunken or bare all over.
    .why = Patches stop one leak and leave the next. The whole sheet has reached the end of its life.
    .water = Water gets in at cracks and seams in more and more places.
    .photo = The whole roof, then three places far apart, close up.
defect-membrane-split = Roof sheet split
    .what = The sheet of the flat roof has split.
    .why = On a flat roof water does not run off the split, it stands on it.
    .water = Water runs through the split and spreads below before it shows inside.
    .photo = The split with a tape along it, and where on the roof it lies.
defect-membrane-holed = Hole in the roof sheet
    .what = Something has made a hole in the sheet of the flat roof.
    .why = It is an open hole under standing water.
    .water = Rain runs straight through the hole.
    .photo = The hole close up with a coin, and what made it.
defect-join-cracked = Low-slope join cracked
    .what = The strip where the flat roof meets the steep roof or the wall has cracked.
    .why = Two roofs move differently there, and all the water of the steep one passes over it.
    .water = Water runs through the crack where the two roofs meet.
    .photo = The crack close up, and the length of the join.

# --- loose
defect-seam-open = Seam open
    .what = Two sheets of the flat roof have come apart at their seam.
    .why = An open seam lets in more water than it shows, and the sheet starts to lift.
    .water = Standing or wind-driven water runs into the seam.
    .photo = The seam opened with a finger or blunt tool, and its length.
defect-low-slope-blisters = Blisters in the roof sheet
    .what = Air or damp under the sheet has raised it into bubbles.
    .why = A whole blister does not leak. A broken one does, so nobody should step on it or cut it without need.
    .water = No water gets in while the blister is whole.
    .photo = The blister in low light with a tape across it.
defect-low-slope-edge-loose = Flat roof's edge metal loose
    .what = The metal along the edge of the flat roof is loose or bent up.
    .why = Most flat roofs that blow off start to go at the edge.
    .water = Wind-driven rain gets in under the sheet at the edge.
    .photo = The loose length, and a hand moving it.

# --- missing
defect-join-too-short = Join does not reach far enough
    .what = The flat roof's sheet does not run far enough up under the shingles or up the wall.
    .why = Snow and wind push water higher than it reaches.
    .water = Water runs in over the upper end of the sheet.
    .photo = A shingle lifted with the end of the sheet, and a tape from there to the bend.
defect-low-slope-edge-missing = No metal at the flat roof's edge
    .what = The sheet ends at the edge of the flat roof without metal.
    .why = Wind lifts it there, and the wood edge gets wet.
    .water = Water runs back under the end of the sheet.
    .photo = The edge from below and from above.
defect-parapet-cap-open = Wall cap open
    .what = The cap on the low wall around the flat roof has open joints or is missing.
    .why = That wall gets wet from above and leads the water down behind the roof's sheet.
    .water = Rain runs into the open joints and down inside the wall.
    .photo = The open joint from above, and the wall below it.

# --- misbuilt
defect-join-lapped-wrong = Join lapped the wrong way
    .what = The sheet of the flat roof lies over the shingles and not under them.
    .why = Water coming down the steep roof runs straight into the joint.
    .water = Water runs down the shingles and in under the sheet.
    .photo = The join from above, and the lapped edge close up.
defect-low-slope-shingled = Shingles run onto the flat part
    .what = The shingles of the steep roof were laid on down over a part that is too flat for them.
    .why = Asphalt shingles need at least 2 inches of rise in 12. Below that, water stands long enough to creep in.
    .water = Water creeps uphill under the shingles of the flat part.
    .photo = The level or pitch gauge on the flat part, readable, and where the pitch changes.
defect-low-slope-nails-through = Nails through the roof sheet
    .what = Nails or screws were driven through the sheet of the flat roof and lie bare.
    .why = On a flat roof each is a hole under standing water.
    .water = Water follows the nails down.
    .photo = The bare heads close up, and how many there are.

# --- smothered
defect-low-slope-smeared = Flat roof smeared with tar
    .what = Seams and cracks were smeared over with roof cement.
    .why = It hardens, cracks with the next winter, and some sheets are spoiled by it.
    .water = Water gets in where the smear has cracked or let go.
    .photo = The smear close up with its cracks, and how much of the roof it covers.
defect-low-slope-plants = Plants growing on the flat roof
    .what = Moss, grass or small trees grow in the dirt on the flat roof.
    .why = Roots go through seams, and the dirt holds water.
    .water = Water stands in the growth and follows the roots through the sheet.
    .photo = The plants, and what the sheet looks like under one of them.

# --- wet
defect-low-slope-ponding = Water stands on the flat roof
    .what = Water is still standing on the flat roof two days after rain.
    .why = It ages the sheet and adds weight, and every weak seam lies under water.
    .water = Standing water gets in at seams and blisters.
    .photo = The pool or the ring of dirt it left, with a tape across it.
defect-low-slope-soft = Flat roof soft underfoot
    .what = The flat roof gives way or squelches when pressed.
    .why = What lies under the sheet is wet. It does not dry with the sheet closed above it.
    .water = Water has been getting in at a seam, a hole or the edge, and has spread below the sheet.
    .photo = The foot or hand on the soft place, and its limits marked with chalk.
