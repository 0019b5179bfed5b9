# Skylights and their flashing.

# --- split
defect-skylight-glass-cracked = Skylight glass or dome cracked
    .what = The glass or the plastic dome is cracked.
    .why = It lets in water and can give way under snow or under a hand.
    .water = Rain runs through the crack into the room.
    .photo = The crack from end to end, from outside and from below.
defect-skylight-dome-crazed = Skylight dome dull and brittle
    .what = The plastic dome has turned yellow or dull, with fine cracks.
    .why = It has become brittle and breaks with hail, cold or a careless hand.
    .water = No water gets in yet.
    .photo = The dome against the light, close up.
defect-skylight-gasket-perished = Skylight gasket dried out
    .what = The rubber strip between glass and frame is shrunken, hard or cracked.
    .why = It is what keeps rain out at the edge of the glass.
    .water = Rain gets in between the glass and the frame, first at the corners.
    .photo = The strip at a corner, close up.

# --- loose
defect-skylight-loose = Skylight loose in its frame
    .what = The skylight moves in its frame, or its clips have let go.
    .why = Wind can lift it, and each movement opens its seals.
    .water = Wind-driven rain gets in under the loose edge.
    .photo = The gap at the edge, and a hand moving it.
defect-skylight-flashing-loose = Skylight flashing lifted
    .what = The metal around the skylight has lifted or come apart at a corner.
    .why = The corners carry the most water and move the most.
    .water = Water gets under the metal at the open corner.
    .photo = The open corner close up, and the whole skylight.

# --- missing
defect-skylight-head-open = No metal above the skylight
    .what = On the uphill side of the skylight there is no metal under the shingles.
    .why = All the water from above the skylight runs against that edge.
    .water = Water runs under the shingles and in over the top edge of the frame.
    .photo = The uphill edge with a shingle lifted.

# --- misbuilt
defect-skylight-flashing-homemade = Flashing not made for skylight
    .what = The metal around the skylight was bent on the spot and does not fit its frame.
    .why = It stands off at the corners, where the pieces ought to overlap.
    .water = Water gets in at the corners in long or wind-driven rain.
    .photo = All four corners, close up.
defect-skylight-too-flat = Skylight set flat on the roof
    .what = The skylight sits too low on the roof for its pitch, or has no raised frame where it needs one.
    .why = Water and leaves lie against the glass.
    .water = Water stands at the lower edge of the frame and gets in at its seams.
    .photo = The skylight from the side, with a tape for the height of its frame.
defect-skylight-shingles-tight = Shingles too tight to the skylight
    .what = The shingles were laid close against the frame and left no channel for the water.
    .why = Grains and leaves collect in the narrow gap and dam it.
    .water = Water is dammed beside the frame and runs under the shingles.
    .photo = The gap between shingles and frame with a tape across it.

# --- smothered
defect-skylight-weeps-sealed = Skylight drain slots sealed
    .what = The small slots that let water out of the frame were closed with sealant.
    .why = Every skylight takes in a little water and lets it out again there. Closed, it runs into the room.
    .water = Water that should drip out of the frame runs inward.
    .photo = The slots at the lower edge, close up, with the sealant in them.
defect-skylight-leaves-above = Leaves above the skylight
    .what = Leaves and needles lie on the uphill side of the skylight.
    .why = They dam the water against the frame.
    .water = Water backs up behind the leaves and gets in over the top of the frame.
    .photo = What lies there, from the side.

# --- wet
defect-skylight-fogged = Fog between the panes
    .what = Mist or drops stand between the two panes of glass.
    .why = The seal of the double glass has failed. It keeps out less cold, and it will not clear.
    .water = No rain gets in because of this.
    .photo = The fogged pane from inside, against the sky.
defect-skylight-condensation = Drops from the room's own air
    .what = Water drips from the skylight in cold weather, when it has not rained.
    .why = Damp air from the room meets the cold glass. It is often taken for a leak.
    .water = No rain gets in. The water comes from the air inside.
    .photo = The drops on the inside of the glass, and the date and weather in the caption.
defect-skylight-frame-rotten = Skylight frame rotten
    .what = The wooden frame of the skylight is soft or dark.
    .why = The glass and its clips are fastened to it.
    .water = Water has been getting in at the glass or running down from the damp air inside.
    .photo = A screwdriver in the soft wood, and the corner it is in.
