# Eaves and rakes.

defect-no-drip-edge = No drip edge
    .what = The bent metal strip that belongs along the roof's edge is not there.
    .why = Without it water clings to the underside of the shingles and wets the edge of the wood, which rots.
    .water = Water curls back under the edge and soaks the wood and the board below it.
    .photo = The edge from below, with the bare wood or board where the metal should be.
