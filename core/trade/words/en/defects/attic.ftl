# The inside: deck from below, frame, air and insulation.

# --- split
defect-rafter-cracked = Rafter or truss cracked
    .what = A rafter, truss or brace is cracked or broken.
    .why = It carries the roof. More weight above it, a new layer or heavy snow, may be too much.
    .water = No water gets in because of this. The roof above sags and cracks.
    .photo = The crack close up with a tape, and the whole member.

# --- loose
defect-frame-spreading = Frame spreading at its joints
    .what = Rafters have pulled away from the ridge or pushed the walls outward.
    .why = The roof is slowly flattening. It needs an engineer's look before any work on it.
    .water = No water gets in because of this alone.
    .photo = The gap at the joint with a tape, or the wall against a straight line.

# --- missing
defect-attic-daylight = Daylight through the roof
    .what = From the attic, daylight shows through the roof where there is no vent.
    .why = Where light comes in, rain does too.
    .water = Rain comes in where the light does.
    .photo = The spot of light from the attic with the lamp off, and a measure to find it from outside.
defect-frame-cut = Rafter or truss cut
    .what = A rafter or part of a truss was cut for a duct, hatch or chimney and not framed around.
    .why = A truss with one part cut out has lost most of its strength.
    .water = No water gets in because of this. The roof above may sag.
    .photo = The cut close up, and the whole member.
defect-baffles-missing = Air path at the eave closed
    .what = Insulation fills the gap under the roof at the eave. At least 1 inch should stay open for air.
    .why = The attic gets no air from the eave. Damp stays in, and in winter ice builds up at the edge.
    .water = No rain gets in. Damp air from the house drips from the cold deck.
    .photo = From the attic, the eave with the insulation against the deck.
defect-intake-too-little = Too little air from below
    .what = The openings at the eave are too few for the attic above, or there are none.
    .why = Vents at the ridge cannot draw air that does not come in below.
    .water = No rain gets in because of this. Damp air stays in the attic.
    .photo = A length of eave from below, and the size of one opening.

# --- misbuilt
defect-fan-into-attic = Fan or dryer ends in the attic
    .what = A bath fan, kitchen fan or dryer blows its damp air into the attic and not outside.
    .why = It wets the deck from below, and a dryer's lint can burn.
    .water = No rain gets in. The fan's own damp air drips back from the cold deck.
    .photo = The loose end of the duct in the attic, and the deck above it.
defect-suspect-vermiculite = Insulation may be vermiculite
    .what = The loose, pebble-like grains of gray, brown or gold may be vermiculite, which often holds asbestos.
    .why = The advice of the health agencies is to take it to hold asbestos and leave it alone. Stay out of the attic and store nothing there.
    .water = No water gets in because of this. It decides who may work in the attic.
    .photo = From the hatch, without going in or touching it.
defect-frame-undersized = Frame looks too light
    .what = The rafters look too thin or too far apart for their span and for what lies on them.
    .why = A heavier covering or a second layer needs an engineer's word first.
    .water = No water gets in because of this.
    .photo = A tape across one rafter and from one to the next, and the span.

# --- smothered
defect-intake-blocked = Intake vent clogged
    .what = Dust, nests or leaves close the air openings at the eave.
    .why = The attic gets no air from below, stays damp and hot, and ages the roof from inside.
    .water = No rain gets in. Damp air from the house stays in the attic.
    .photo = The blocked openings from below, close up.
defect-animals-in-attic = Animals in the attic
    .what = Droppings, nests or noises show that birds, bats, squirrels or raccoons live there.
    .why = They gnaw wood and wires. Some are protected by law, and closing the hole with young inside makes it worse.
    .water = Rain gets in where they get in.
    .photo = The droppings or nest, and the hole they use.

# --- wet
defect-water-dripping = Water coming in now
    .what = Water drips or runs on the underside of the roof.
    .why = It is coming in as we look. Where it drips is seldom where it gets in. That is farther up.
    .water = Water gets in uphill of the drip and runs down the deck or a rafter.
    .photo = The drip, and the wet track followed up as far as it goes.
defect-deck-damp = Damp spot on the deck
    .what = One place on the underside of the deck is dark and damp.
    .why = It has been wet lately. The cause lies above or uphill of it.
    .water = Water gets in near this place in some rains.
    .photo = The spot with a moisture meter or a dry hand on it, and a measure to find it from outside.
defect-deck-mold = Mold or dark growth on the deck
    .what = Large parts of the underside of the deck are dark with growth, most of all on the cold side.
    .why = Damp air from the house gets up there and does not get out. It is seldom the roof's fault.
    .water = No rain gets in because of this. The damp comes from the house.
    .photo = The dark side and the clean side in one picture.
defect-nails-frosted = Rusty or frosted nail points
    .what = The nail points under the deck are rusty, frosted or dripping.
    .why = Damp air from the house meets the cold nails. The drops are often taken for a leak.
    .water = No rain gets in because of this. The damp comes from the house.
    .photo = The nail points close up, and the stains under them.
defect-insulation-wet = Insulation wet or matted
    .what = The insulation is wet, stained or matted down in one place.
    .why = It no longer keeps heat in, and it shows where water drips.
    .water = Water gets in above this place or uphill of it.
    .photo = The wet place, and the deck straight above it.
defect-frame-rotten = Rafter wood soft
    .what = The wood of a rafter, truss or ridge is soft or rotten.
    .why = It has been wet for years, and it carries the roof.
    .water = Water has been running along this wood from a leak above.
    .photo = A screwdriver in the soft wood, and what lies above it.
defect-wet-around-chimney = Wet wood around chimney or pipe
    .what = The wood around the chimney, pipe or skylight is dark or wet.
    .why = The joint outside leaks there, or the chimney itself does.
    .water = Water gets in between the roof and what comes through it.
    .photo = The wet ring from inside, and the same place outside.
