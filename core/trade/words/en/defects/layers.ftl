# Layers of covering, one over another.

# --- loose
defect-top-layer-loose = Upper layer barely nailed
    .what = There are two layers, and the nails of the upper one reach the old shingles but hardly the wood below.
    .why = The upper roof hangs on the old one and can come off in sheets.
    .water = Wind-driven rain gets under the upper layer and spreads between the two.
    .photo = A pulled nail beside the thickness of both layers, with a tape.

# --- misbuilt
defect-layers-not-flat = Uneven over the old roof
    .what = The covering was laid over an old one that was not flat, and each curl and step shows through.
    .why = Shingles that lie hollow break when stepped on, wear along the humps and do not glue down.
    .water = Wind-driven rain gets under edges that do not lie down.
    .photo = Low along the slope with the humps in view, and a straight edge across one.
defect-laid-over-barred-base = Laid over slate, tile or the like
    .what = The covering was laid over slate, clay or cement tile, or asbestos-cement, which may not be covered that way.
    .why = Such a base is too hard and uneven to nail into, and its weight stays on the frame.
    .water = Wind-driven rain gets under shingles that do not lie down on such a base.
    .photo = The cut edge with both materials in view. Break nothing off.
defect-old-edge-left-inside = Old edge left under the new
    .what = The new covering was laid over the old one at the edge without cutting the old edge back.
    .why = The stack is thick and open at its end, where water and wind work into it.
    .water = Water creeps between the layers at the edge and wets the wood from the side.
    .photo = The edge from below and from the end, with every layer in view.

# --- smothered
defect-second-layer = Two layers of covering
    .what = A second roof was laid over the first one. The older covering still lies underneath.
    .why = Under the building code a roof with two layers gets no third one. The next new covering means taking off both.
    .water = No water gets in because of this alone. When there is a leak, two layers hide where it comes from.
    .photo = The cut edge with both layers, and a finger or tape on each.
defect-third-layer = Three or more layers
    .what = Three or more coverings lie one over another.
    .why = Building codes today allow no third layer. The stack is a heavy load on the frame and a poor base for any repair.
    .water = No water gets in because of this alone. When there is a leak, the layers hide where it comes from.
    .photo = The cut edge with every layer, and a tape across the whole thickness.
defect-wood-under-asphalt = Wood shingles underneath
    .what = Asphalt shingles were laid over old wood shingles, which often lie on boards with gaps between them.
    .why = The nails find wood only here and there, and a new roof will need a new deck over the boards.
    .water = No water gets in because of this alone. When there is a leak, it spreads in the wood shingles.
    .photo = The cut edge, or the wood shingles and gaps from the attic.
defect-sheathing-over-old = Boards laid over an old roof
    .what = An old roof was boarded over with new sheathing, and the present covering lies on that.
    .why = The old roof below still counts as a layer, still weighs on the frame, and hides the real deck.
    .water = No water gets in because of this alone. A leak can run far between the two decks before it shows.
    .photo = The edge with old covering, new boards and new covering, and a tape across them.
