# The covering: shingles first, then slate, tile, wood and metal.
# defect-…: the name on a button. .what it is; .why it matters; .water how it gets in; .photo what the picture must show.

# --- split
defect-covering-worn-out = Covering worn out
    .what = The shingles have reached the end of their life over the whole slope, not in one place.
    .why = Repairs no longer hold, because the shingles beside each repair are as worn as the ones replaced.
    .water = Water gets in at more and more places: through cracks, past curled edges and at worn spots.
    .photo = The whole slope from the ladder, then two or three places far apart, close up.
defect-covering-brittle = Shingles too brittle to lift
    .what = A shingle lifted by hand cracks instead of bending.
    .why = A repair has to lift the shingles around it. When they crack, each repair makes new leaks.
    .water = No water gets in because of this alone. It gets in where a shingle has cracked.
    .photo = The lifted tab with its fresh crack, and a wider view that shows where on the slope it is.
defect-granules-lost = Granules lost
    .what = The grains that cover the shingles have come off, and the dark asphalt shows.
    .why = The grains keep the sun off the asphalt. Without them it dries out, shrinks and cracks.
    .water = No water gets in yet. It will where the bare asphalt cracks.
    .photo = A bare patch beside a covered one, close up, and the grains in the gutter if they lie there.

# --- loose
defect-tabs-unsealed = Tabs not sealed down
    .what = The strip of glue under the shingles no longer holds, and the lower edges lift easily by hand.
    .why = Wind can lift the loose edges, crease the shingles and tear them off.
    .water = Rain driven by wind is pushed up under the loose edges and reaches the nails.
    .photo = A hand lifting an edge without effort, and the strip of glue under it.

# --- missing
defect-shingle-missing = Shingle missing
    .what = One or a few shingles are gone, and the course below or the sheet under them lies open.
    .why = What is bare now was meant to be covered. It soaks up water and tears in the wind.
    .water = Rain reaches the nails and joints of the course below and runs down to the wood.
    .photo = The gap close up, then from far enough to find it again on the slope.

# --- smothered
defect-moss-growing = Moss growing
    .what = Moss grows on the shingles and in the joints between them.
    .why = Moss holds water like a sponge, lifts the edges of the shingles and loosens their grains.
    .water = Water held by the moss creeps sideways and upward under the lifted edges.
    .photo = A patch close up with a lifted edge, and the shaded part of the slope it grows on.
