# Layers of covering, one over another.

defect-second-layer = Two layers of covering
    .what = A second roof was laid over the first one. The older covering still lies underneath.
    .why = Under the building code a roof with two layers gets no third one. The next new covering means taking off both.
    .water = No water gets in because of this alone. When there is a leak, two layers hide where it comes from.
    .photo = The cut edge with both layers, and a finger or tape on each.
defect-third-layer = Three or more layers
    .what = Three or more coverings lie one over another.
    .why = That is more than the building code allows, a heavy load on the frame, and a poor base for any repair.
    .water = No water gets in because of this alone. When there is a leak, the layers hide where it comes from.
    .photo = The cut edge with every layer, and a tape across the whole thickness.
