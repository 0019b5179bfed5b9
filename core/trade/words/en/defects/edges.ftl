# Eaves, rakes, and what closes them below.

# --- split
defect-drip-edge-rusted = Drip edge rusted
    .what = The bent metal along the edge is rusted or eaten through.
    .why = Once holed it no longer throws the water clear, and the wood behind it starts to rot.
    .water = Water runs through the rust and along the edge of the wood.
    .photo = The rust close up, and how much of the edge it covers.
defect-eave-shingles-broken = Edge shingles broken
    .what = Shingles at the eave are broken off, often by ladders, ice or branches.
    .why = The first row covers the edge of the deck. Where it is broken, the edge lies bare.
    .water = Water runs in at the break onto the edge of the deck.
    .photo = The break close up from the ladder, and its length along the eave.
defect-fascia-paint-failed = Fascia paint failed
    .what = The paint on the board behind the gutter is peeling or gone.
    .why = Bare wood takes in water and rots. Paint from before 1978 may hold lead and is not to be scraped or sanded without care.
    .water = No water gets into the house here. The board itself soaks it up.
    .photo = The peeling paint close up, and the length of the board.

# --- loose
defect-drip-edge-loose = Drip edge loose
    .what = The metal along the edge is bent, pulled out or missing its nails.
    .why = Wind gets hold of it and can peel the first shingles with it.
    .water = Water curls back under the metal to the edge of the wood.
    .photo = The loose length, and a hand moving it.
defect-starter-unsealed = Starter does not hold the edge
    .what = The first row lifts by hand, because the row below it, the starter, has no glue at its edge or lies the wrong way round.
    .why = Wind takes hold of a roof at its edges. A loose first row lets it start.
    .water = Rain driven by wind gets under the lifted edge to the wood.
    .photo = The first course lifted at the eave, with the starter's glue strip, or the lack of it, in view.
defect-rake-shingles-lifting = Rake shingles lifting
    .what = Shingles along the sloping edge stand up or lift by hand.
    .why = The wind comes at this edge from below. Loose shingles there are the first to go.
    .water = Wind-driven rain gets in sideways under the lifted ends.
    .photo = The lifted ends from below along the edge, and one lifted by hand.
defect-fascia-loose = Fascia board loose
    .what = The board that closes the eave, or its metal cover, has come loose.
    .why = It carries the gutter, and it keeps wind and animals out.
    .water = Wind-driven rain gets in behind the board.
    .photo = The loose length, and the gap behind it.
defect-soffit-loose = Soffit hanging
    .what = The underside of the overhang has come loose and hangs.
    .why = It can fall, and the wind gets through it into the attic.
    .water = Wind-driven rain and snow get in through the opening.
    .photo = The hanging piece, what it hangs by, and what is below it.

# --- missing
defect-no-drip-edge = No drip edge
    .what = The bent metal strip that belongs along the roof's edge is not there.
    .why = Without it water clings to the underside of the shingles and wets the edge of the wood, which rots.
    .water = Water curls back under the edge and soaks the wood and the board below it.
    .photo = The edge from below, with the bare wood or board where the metal should be.
defect-drip-edge-short = Drip edge laps or reach short
    .what = The pieces of edge metal do not overlap by 2 inches, or the metal reaches less than 2 inches up the deck.
    .why = At each short place the wood edge is open, and the wind has something to pull at.
    .water = Water gets between the pieces and onto the edge of the deck.
    .photo = A short lap or the short leg, with a tape on it.
defect-starter-missing = No starter course
    .what = The extra row that belongs under the lowest shingles at the eave was left out.
    .why = Under each slot and joint of the first row there is then nothing but the sheet.
    .water = Water runs through the slots of the first row onto the edge of the deck.
    .photo = A lifted shingle at the eave with no second one under it, and the joints of the first row.
defect-soffit-gap-open = Open gap at the soffit
    .what = There is an open gap between the underside of the overhang and the wall or the edge board.
    .why = Birds, squirrels, bats and wasps get in, and wind-driven snow with them.
    .water = Wind-driven rain and snow blow in through the gap.
    .photo = The gap with a tape across it, and any nest, droppings or scratch marks.
defect-soffit-panel-missing = Soffit piece missing
    .what = A piece of the underside of the overhang is gone.
    .why = The attic is open to animals and wind. In a storm the wind presses up against the deck from inside.
    .water = Wind-driven rain and snow blow straight in.
    .photo = The opening from below, and what shows inside.
defect-fascia-missing = Edge board missing
    .what = The board that should close the ends of the rafters is missing.
    .why = The wood ends and the edge of the deck lie open to the weather and to animals.
    .water = Wind-driven rain wets the rafter ends and the edge of the deck.
    .photo = The open rafter ends and how long the gap is.

# --- misbuilt
defect-drip-edge-wrong-side = Drip edge on wrong side of sheet
    .what = At the eave the metal belongs under the sheet, at the sloping edge over it. Here it is the other way round.
    .why = Water that runs down on the sheet should end on the metal, not behind it.
    .water = Water on the sheet runs behind the metal and onto the edge of the wood.
    .photo = The first shingle lifted, with sheet and metal both in view.
defect-eave-overhang-short = Shingles end too short
    .what = The shingles end flush with the edge, or behind it, where they should reach 1/4 to 3/8 inch past the metal.
    .why = Water that drips straight down clings to the edge and gets behind the gutter.
    .water = Water runs back around the edge to the wood and behind the gutter.
    .photo = The edge from the end, with a tape from the metal to the shingle.
defect-eave-overhang-long = Shingles reach too far
    .what = The shingles stick out too far past the edge and droop.
    .why = They break off with snow, ladders and wind, and water shoots past the gutter.
    .water = No water gets in until they break. Then the edge of the deck is bare.
    .photo = The drooping edge from the end, with a tape.
defect-starter-joints-lined-up = Starter joints lined up
    .what = The joints of the starter lie under the joints of the first row of shingles.
    .why = Where two joints meet there is no shingle left to carry the water.
    .water = Water runs through both joints onto the edge of the deck.
    .photo = A lifted shingle with both joints marked.
defect-rake-cut-ragged = Rake cut ragged or bare
    .what = The shingles along the sloping edge were cut unevenly and end short of the metal in places.
    .why = At each short place water runs off onto the side of the wood and not past it.
    .water = Water runs over the short ends onto the edge of the deck.
    .photo = Along the edge from below, and the shortest place with a tape.

# --- smothered
defect-soffit-vents-painted = Soffit vents painted shut
    .what = The small openings in the underside of the overhang are filled with paint.
    .why = The attic gets no air from below, stays damp and hot, and ages the roof from inside.
    .water = No rain gets in. Damp air from the house stays in the attic and drips in cold weather.
    .photo = The painted openings close up, and a strip of them.

# --- wet
defect-eave-wood-rotten = Eave wood rotten
    .what = The edge of the deck at the eave is soft or rotten.
    .why = The first shingles and the gutter are nailed there. Rot at the edge creeps up the slope.
    .water = Water has been getting in at the edge: no metal, a full gutter, or ice.
    .photo = A screwdriver in the soft wood from below, and how far along the eave it goes.
defect-rake-board-rotten = Rake board rotten
    .what = The board along the sloping edge is soft or rotten.
    .why = The edge of the roof is fastened to it. Wind gets hold where it has gone.
    .water = Water runs down behind it where the edge metal is missing or stands off.
    .photo = A screwdriver in the soft wood, and the length that is soft.
defect-fascia-rotten = Fascia board rotten
    .what = The board behind the gutter is soft or rotten.
    .why = The gutter hangs on it. When the screws let go, the gutter comes down.
    .water = Water runs behind the gutter: it is full, hangs too low, or the edge metal does not reach into it.
    .photo = A screwdriver in the soft wood, and how the gutter hangs on it.
defect-soffit-stained = Soffit stained or wet
    .what = The underside of the overhang shows stains, peeling or wet spots.
    .why = Water is getting to it from above or from behind the gutter. What is seen here began higher up.
    .water = Water gets in above: at the eave, in a valley, or behind the gutter.
    .photo = The stain with what lies above it, and whether it is wet today.
