# Gutters, downspouts and drains.

defect-gutter-clogged = Gutter clogged
    .what = Leaves, grains or dirt fill the gutter.
    .why = A full gutter overflows at the wall side, wets the roof's edge, and gets heavy enough to pull loose.
    .water = Water backs up under the first course and behind the board that the gutter hangs on.
    .photo = The inside of the gutter, and where it has run over.
