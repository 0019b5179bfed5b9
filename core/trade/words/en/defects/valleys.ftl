# Valleys.

# --- split
defect-valley-metal-rusted = Valley metal rusted
    .what = The metal in the valley is rusted, thin or holed.
    .why = A valley carries the water of two slopes. A pinhole there leaks more than a crack elsewhere.
    .water = Water runs through the holes onto the wood below the valley.
    .photo = The worst rust close up after wiping it clean, and the length of the valley.
defect-valley-shingles-worn = Valley shingles worn through
    .what = The shingles in the valley have lost their grains or are worn through along the line of the water.
    .why = The valley wears out before the field, because it carries the most water.
    .water = Water runs through the worn place to the sheet below and in at its first weak spot.
    .photo = The worn line close up, and the valley from below.
defect-valley-shingles-cracked = Valley shingles cracked
    .what = The shingles span the valley without lying on the wood, and have cracked along the bend.
    .why = What lies hollow breaks under a foot, under snow, or of itself in the cold.
    .water = Water runs through the crack, with the water of two slopes behind it.
    .photo = The crack close up, and a finger pressing the hollow place.

# --- loose
defect-valley-metal-loose = Valley metal loose
    .what = The metal in the valley has come loose, buckled or slid down.
    .why = Metal grows and shrinks with the sun. Fastened wrongly, it tears itself free.
    .water = Water gets under the upper end or over the sides of the moved metal.
    .photo = The buckled or slipped metal, and its upper end.
defect-valley-edges-loose = Valley shingles loose
    .what = The cut ends of the shingles along the valley lift and are not glued down.
    .why = The fast water of a valley gets under anything that stands up.
    .water = Water runs sideways under the loose ends past the edge of the metal.
    .photo = A cut end lifted by hand, and how many are like it.

# --- missing
defect-valley-lining-missing = No lining in the valley
    .what = Under the shingles of the valley there is neither metal nor a second sheet.
    .why = A valley needs a lining of its own, because shingles alone do not hold that much water.
    .water = Water that gets past the shingles is on the wood at once.
    .photo = The lifted shingles in the valley with what lies below.
defect-valley-lining-narrow = Valley metal too narrow
    .what = The metal in the open valley is narrower than the 24 inches that the building code asks for.
    .why = In a heavy rain the water runs wider than the metal.
    .water = Water runs over the side of the metal under the shingles.
    .photo = A shingle lifted at the side, with a tape from the middle to the edge of the metal.
defect-valley-top-open = Top of the valley open
    .what = Where the valley meets the ridge, the metal or shingles do not close over the top.
    .why = It is a small hole at the point where it is least expected.
    .water = Rain with wind blows in at the top and runs down under the valley.
    .photo = The upper end of the valley from above, close up.
defect-valley-foot-short = Foot of the valley too short
    .what = At its lower end the valley metal stops short of the gutter or the edge.
    .why = The water of two slopes falls onto the edge of the deck and not into the gutter.
    .water = Water runs back under the short end onto the wood and into the soffit.
    .photo = The lower end of the valley from the ladder, with the gutter.

# --- misbuilt
defect-valley-cut-wrong = Valley cut wrong
    .what = The shingles are cut on the wrong side, cut into the middle, or their upper corners were not trimmed back.
    .why = A square corner in the path of the water leads it sideways, under the shingle.
    .water = Water catches on the corners and runs sideways under the shingles.
    .photo = The cut line straight on, and one lifted end with its corner.
defect-valley-nails-in-middle = Nails in the valley
    .what = Nails were driven in or near the middle of the valley, where the water runs.
    .why = Every nail there is a hole under running water.
    .water = Water follows the nails straight down into the wood.
    .photo = The nail heads, with a tape from the middle of the valley.
defect-valley-into-wall = Valley ends at a wall
    .what = The valley runs into a wall, chimney or another slope, and the water has nowhere to go.
    .why = Leaves and snow pile up there, and the water stands against the wall.
    .water = Standing water gets in behind the wall covering and through every seam.
    .photo = The end of the valley from above, and the wall where it meets it.
defect-valley-slopes-uneven = Valley of two pitches untrimmed
    .what = A steep slope meets a flatter one, and the valley has nothing to stop the fast water from running up the flat side.
    .why = The water of the steep side overshoots the middle and gets under the other side's shingles.
    .water = Water from the steeper slope runs across the valley and under the shingles of the flatter one.
    .photo = The valley from below with both slopes, and the pitch of each.

# --- smothered
defect-valley-clogged = Valley clogged
    .what = Leaves, needles or branches lie in the valley, the inner corner where two slopes meet.
    .why = A valley carries the water of two slopes. What lies in it dams the water and keeps it wet.
    .water = Water backs up behind the leaves and runs sideways under the shingles.
    .photo = The valley from below with what lies in it, and the spot that is dammed.
defect-valley-smeared = Valley smeared with roof cement
    .what = The valley is filled or smeared with black roof cement.
    .why = It hides what leaks, dams the water at each lump, and cracks within a few seasons.
    .water = Water is held by the lumps and runs in where the cement has let go.
    .photo = The length of the valley, and a cracked place close up.
defect-valley-relaid-over = Old valley left below the new
    .what = The new shingles were laid into the valley over the old ones or over the old metal.
    .why = The valley is thick and stiff, lies hollow, and its worn lining is still the one that counts.
    .water = Water that gets past the shingles runs onto the old, worn lining.
    .photo = The lower end of the valley with every layer in view.

# --- wet
defect-valley-deck-soft = Wood soft under the valley
    .what = The wood under or beside the valley gives way when pressed.
    .why = It has been wet for some time. The valley has to be opened to be put right.
    .water = Water has been getting past the valley's lining or over its edge.
    .photo = The hand or foot on the soft place, and the valley above it.
