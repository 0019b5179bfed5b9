# Walls above a roof. Siding, stucco and windows are another trade's work, but their water is often taken for the roof's.

# --- split
defect-wall-cracks-open = Cracks in the wall above
    .what = The stucco, brick or siding above the roof is cracked or its joints are open.
    .why = Water that gets in there comes out below the roof and looks like a roof leak.
    .water = Wind-driven rain gets in through the wall and runs down behind the flashing.
    .photo = The crack close up, and the wall with the roof below it.
defect-wall-paint-failed = Wall paint peeling
    .what = The paint on the wall or trim above the roof is peeling.
    .why = Bare wood takes in water. Paint from before 1978 may hold lead and is not to be scraped or sanded without care.
    .water = No water gets in because of this alone. The wood soaks it up.
    .photo = The peeling paint close up, and the year of the house in the caption.

# --- loose
defect-siding-loose = Siding loose or missing
    .what = Pieces of siding above the roof are loose or gone.
    .why = What lies behind is not made to face the weather, and loose pieces break shingles below.
    .water = Wind-driven rain gets in behind the siding and runs down to the roof joint.
    .photo = The loose or open place, and what shows behind it.

# --- missing
defect-window-above-leaks = Window above the roof leaks
    .what = The window or door above the roof has open joints, or no metal over its head or under its sill.
    .why = Its water runs down inside the wall and shows below the roof.
    .water = Wind-driven rain gets in at the window's corners and runs down behind the flashing.
    .photo = The sill and its corners close up, and the window with the roof below.

# --- misbuilt
defect-wall-paper-behind = Wall sheet ends behind flashing
    .what = The sheet under the siding is tucked behind the roof's flashing and not over it.
    .why = Every siding lets some water through. The sheet should drop it onto the metal.
    .water = Water behind the siding runs down behind the metal into the wall.
    .photo = The foot of the wall with the siding lifted, if it lifts, and the sheet's lower edge.

# --- wet
defect-wall-rotten = Wall wood soft above the roof
    .what = Siding, trim or wall wood just above the roof is soft.
    .why = It stands too close to the roof, or water gets in above it. Flashing cannot be fastened to rotten wood.
    .water = Water is drawn up from the roof or runs down inside the wall.
    .photo = A screwdriver in the soft wood, and the gap between siding and roof.
