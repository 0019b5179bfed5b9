# What earlier work left behind.

# --- split
defect-patch-cracked = Old patch cracked
    .what = An earlier patch of cement or sheet has cracked.
    .why = It was never more than time bought. The fault is still below it.
    .water = Water runs through the crack and is held under the patch.
    .photo = The crack close up, and the whole patch.

# --- loose
defect-patch-loose = Old patch lifting
    .what = The edge of an earlier patch has come up.
    .why = Wind and water get under it, and it dams what comes from above.
    .water = Water runs in under the raised edge.
    .photo = The raised edge from the side, with a finger under it.
defect-tarp-left = Old tarp still on the roof
    .what = A tarp or sheet that was put up for a short time is still there.
    .why = Sun and wind tear it within months, and each batten or nail that holds it made a hole.
    .water = Rain gets in at its tears and nail holes.
    .photo = The whole tarp, and its worst tear close up.

# --- missing
defect-repair-unfinished = Repair left unfinished
    .what = An earlier repair was begun and not closed: rows or caps are missing, or edges lie open.
    .why = What was opened is worse off than before.
    .water = Rain gets in where it was left open.
    .photo = The whole place, and each open edge close up.

# --- misbuilt
defect-patch-lapped-wrong = Patch not woven in
    .what = The top edge of the patch lies on the shingles and not under the row above.
    .why = Everything on a roof laps downhill. A patch laid on top leads the water under itself.
    .water = Water runs down and in under the top edge of the patch.
    .photo = The top edge of the patch close up, with the course above it.
defect-patch-nailed-through = Patch nailed through its face
    .what = The patch is held with nails driven through from above.
    .why = Each nail is a hole in the place that already leaked.
    .water = Water follows the nails into the wood.
    .photo = The bare heads close up, and how many there are.
defect-patch-mismatched = Patch of another size
    .what = The new shingles differ in height or thickness from those around them.
    .why = Rows and glue strips do not meet, so edges stand up.
    .water = Wind-driven rain gets in under the raised edges.
    .photo = The patch with old shingles beside it, and a tape on both.
defect-nails-left-lying = Nails left on the roof
    .what = Loose nails or screws were left lying on the roof or in the gutter.
    .why = They rust in place, stain, and are trodden into the shingles. On the ground they find feet and tires.
    .water = No water gets in until one is trodden in.
    .photo = The nails where they lie.
defect-scraps-left = Scraps left from earlier work
    .what = Pieces of shingle, wood or metal were left on the roof, or between the shingles.
    .why = They dam leaves and water and rub the grains off.
    .water = Water backs up behind them and creeps sideways.
    .photo = The scraps where they lie.
defect-flashing-abandoned = Old flashing left in place
    .what = Metal from something that is gone, or from the roof before, was left in or under the covering.
    .why = It holds the shingles up, rusts, and may lead water where nobody expects it.
    .water = Water can run along the old metal and under the shingles.
    .photo = The old metal close up, and what it once belonged to if that can be told.
defect-pipe-end-covered = Old pipe roofed over
    .what = A pipe or vent that is no longer used was cut off and covered with shingles.
    .why = The hole under it is not closed, and the shingles over it sag and crack.
    .water = Water gets in when the shingles over the hole crack.
    .photo = The hump or dip on the roof, and the pipe's end from the attic.

# --- smothered
defect-fault-tarred-over = Fault tarred over
    .what = A leak was covered with roof cement and not put right.
    .why = The cement hides the cause, holds water above it and ruins the shingles it is on.
    .water = Water collects behind the cement and runs in where it has let go.
    .photo = The whole smear, and its edge close up.

# --- wet
defect-repair-wet-below = Wet wood below an old repair
    .what = The wood below an earlier repair is wet or soft.
    .why = The repair did not stop the water, or closed it in.
    .water = Water still gets in at the repair or comes from higher up.
    .photo = The soft place from above and, if it can be seen, from the attic.
