# How the covering is fastened.

defect-nails-high = Nails too high
    .what = The nails sit above the line where they hold both the shingle and the one under it.
    .why = A shingle nailed too high has half its fastening. It can slide down or blow off.
    .water = No water gets in at the nails. It gets in when the shingle has slid or gone.
    .photo = A lifted shingle with the nail, the nailing line, and a tape across both.
defect-nails-exposed = Nails left exposed
    .what = Nail heads lie bare in the weather where a shingle or metal should cover them.
    .why = A bare nail rusts, works loose with heat and cold, and leaves a hole.
    .water = Water follows the shank of the nail straight down into the wood.
    .photo = The bare heads close up, and from a few steps back how many there are.
