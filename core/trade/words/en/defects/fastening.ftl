# How the covering is fastened.

# --- split
defect-nails-rusted = Nails rusted through
    .what = The nails that hold the shingles are rusted thin or have lost their heads.
    .why = A roof is only as firm as its nails. When they go, shingles go in numbers.
    .water = No water gets in at the nails at first. It gets in when the shingles slide or blow off.
    .photo = A pulled nail beside a new one, or the rusted points seen from the attic.
defect-nails-overdriven = Nails driven too deep
    .what = The nails were driven so hard that their heads cut into the shingle.
    .why = A head that has cut through holds nothing. The shingle can slide down or blow off.
    .water = Water can enter at the cut. More gets in once the shingle has moved.
    .photo = A nail head with the cut around it, close up, and a second one to show it is no single slip.

# --- loose
defect-seal-never-bonded = Glue strip never bonded
    .what = The glue strips never took hold: the roof was laid in the cold or in dust, or a film was left on.
    .why = The roof looks new, yet the wind can lift every edge. It may have been so from the first day.
    .water = Rain driven by wind gets under the loose edges to the nails.
    .photo = A lifted edge with its clean, shiny or dusty strip, in three places far apart.
defect-nails-underdriven = Nails not driven home
    .what = Nail heads stand up under the shingle above.
    .why = They keep that shingle from sealing down and wear a hole in it from below.
    .water = Water gets in through the worn hole and along the nail.
    .photo = A lifted shingle with the head standing up, and the mark it left on the one above.
defect-nails-popped = Nails backed out
    .what = Nails have worked their way up and push the shingle above them into a bump.
    .why = Heat, cold and moving wood lift them. Sooner or later the head comes through.
    .water = Water follows the nail down once its head has worn through the shingle.
    .photo = The bump in low light, then the nail with the shingle lifted.

# --- missing
defect-nails-too-few = Too few nails
    .what = The shingles have fewer nails than they need. A strip shingle takes at least four, often more.
    .why = What is half fastened lifts in the first strong wind.
    .water = No water gets in at once. It gets in when shingles slide or blow off.
    .photo = A whole lifted shingle with all its nails in view, and a tape along it.

# --- misbuilt
defect-nails-high = Nails too high
    .what = The nails sit above the line where they hold both the shingle and the one under it.
    .why = A shingle nailed too high has half its fastening. It can slide down or blow off.
    .water = No water gets in at the nails. It gets in when the shingle has slid or gone.
    .photo = A lifted shingle with the nail, the nailing line, and a tape across both.
defect-nails-low = Nails too low
    .what = The nails sit so low on the shingle that the next row barely covers them, or does not.
    .why = Heads near the edge are reached by wind-driven rain and hold the glue strip open.
    .water = Water blown under the edge runs along the nail into the wood.
    .photo = A lifted shingle with the nail, its lower edge, and a tape between them.
defect-nails-in-joint = Nails in a joint or slot
    .what = Nails were driven where two shingles of the row above meet, or in the slot between two tabs.
    .why = Nothing covers a nail there. Water runs along every joint and slot.
    .water = Water runs down the joint, meets the nail and follows it into the wood.
    .photo = The joint or slot with the nail head in it, close up.
defect-nails-exposed = Nails left exposed
    .what = Nail heads lie bare in the weather where a shingle or metal should cover them.
    .why = A bare nail rusts, works loose with heat and cold, and leaves a hole.
    .water = Water follows the shank of the nail straight down into the wood.
    .photo = The bare heads close up, and from a few steps back how many there are.
defect-nails-crooked = Nails driven crooked
    .what = Nails went in at a slant, so that one side of the head cuts in and the other stands up.
    .why = Such a nail holds badly and wears the shingle above it.
    .water = No water gets in at once. It gets in where the raised edge has worn through.
    .photo = A lifted shingle with the slanted head from the side.
defect-nails-too-short = Nails too short
    .what = The nails do not reach far enough into the wood. They should go in at least 3/4 inch, or come out below.
    .why = Short nails pull out. They are often found where a second roof was nailed with the nails of the first.
    .water = No water gets in because of this alone. It gets in when shingles come loose.
    .photo = From the attic, the underside without nail points, or a pulled nail beside a tape.
defect-nails-wrong-kind = Nails too thin or small-headed
    .what = The nails are thinner than 12 gauge, which is 0.105 inch, or have heads smaller than 3/8 inch.
    .why = A small head pulls through the shingle in a strong wind.
    .water = No water gets in because of this alone. It gets in when shingles come loose.
    .photo = A pulled nail beside a tape, its head and its shank.
defect-nails-miss-the-deck = Nails between the boards
    .what = Nails went into the gap between two boards or sheets and hold nothing.
    .why = The shingle above hangs on its other nails.
    .water = No water gets in at once. It gets in when the shingle slides, and drops form on the bare nail in cold weather.
    .photo = From the attic, the nails in the gap.
defect-staples-used = Staples instead of nails
    .what = The shingles are held with staples, which many roofs of earlier years were.
    .why = A staple set at a slant or too deep holds with one leg or cuts the shingle.
    .water = No water gets in because of this alone. It gets in when shingles come loose.
    .photo = A lifted shingle with two or three staples and how they sit.
