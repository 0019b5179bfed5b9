# Valleys.

defect-valley-clogged = Valley clogged
    .what = Leaves, needles or branches lie in the valley, the inner corner where two slopes meet.
    .why = A valley carries the water of two slopes. What lies in it dams the water and keeps it wet.
    .water = Water backs up behind the leaves and runs sideways under the shingles.
    .photo = The valley from below with what lies in it, and the spot that is dammed.
