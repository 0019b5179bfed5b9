# From the ground: the roof's line, trees, the electric service.

# --- split
defect-branch-rubs = Branch rubs the roof
    .what = A branch touches the roof and moves in the wind.
    .why = It rubs the grains off and lets squirrels onto the roof.
    .water = No water gets in until it has worn through.
    .photo = The branch where it touches, and the worn place.

# --- loose
defect-branch-may-fall = Dead branch over the roof
    .what = A dead or broken branch hangs over the roof.
    .why = It may come down in the next wind, on the roof or on a person.
    .water = Water gets in if it breaks through the roof.
    .photo = The branch and the roof below it, from the ground.
defect-service-mast-loose = Service mast loose or bent
    .what = The pipe that carries the electric line to the house is loose, bent or pulled out.
    .why = The line is live. Nobody goes near it, not even with a ladder, before the power company has seen it.
    .water = Water runs in beside the mast where it has moved.
    .photo = From the ground, through a lens.

# --- missing
defect-service-mast-seal-open = Service mast seal open
    .what = The collar where the electric mast goes through the roof is split or missing.
    .why = It is a pipe boot like any other, but beside a live line. The power has to be made safe first.
    .water = Rain runs down the mast into the house.
    .photo = From a safe distance, through a lens.

# --- misbuilt
defect-ridge-line-sags = Ridge sags
    .what = The line of the ridge dips between its ends.
    .why = The frame below has given way, or carries more than it was made for.
    .water = No water gets in because of this alone. Caps and shingles crack along the dip.
    .photo = The whole ridge from the ground, with something straight in the picture.
defect-slope-dips = Slope dips
    .what = A slope shows a hollow that several rafters share.
    .why = Rafters bend under too much weight, from too little wood, or because one has broken.
    .water = No water gets in because of this alone.
    .photo = The slope from the side in low light.
defect-service-line-low = Electric line low over the roof
    .what = The electric line hangs low over the roof or over the way to it.
    .why = Nobody can work there safely before the power company has covered or raised it.
    .water = No water gets in because of this. It decides where a ladder may stand.
    .photo = From the ground: the line, the eave, and where a ladder would stand.

# --- smothered
defect-leaves-fall-on-roof = Trees drop leaves on the roof
    .what = Trees overhang the roof and fill gutters and valleys each fall.
    .why = The roof stays wet in their shade, and moss grows.
    .water = Water backs up where the leaves lie.
    .photo = The trees over the roof, from the ground.

# --- wet
defect-roof-stays-wet = Roof kept wet by shade
    .what = Trees or vines keep part of the roof in the shade, and it dries hours after the rest.
    .why = What stays wet grows moss and rots first.
    .water = No water gets in because of this alone.
    .photo = The shaded slope and the trees beside it.
