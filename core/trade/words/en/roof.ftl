### The measured roof: its lines, edges and how it is laid.

line-eave = eave
line-rake = rake
line-ridge = ridge
line-hip = hip
line-valley = valley
line-wall = wall
line-step = side wall
line-pitch-change = change of pitch
line-top = high edge

edge-hip = eave
edge-gable = gable
edge-wall = wall

valley-open = open valley
valley-closed-cut = closed valley, cut on one side

# --- angles
angle-no-reading = No reading was taken. Lay the phone on the slope and read it.
angle-no-inclination = { $degrees }° is no inclination of a roof.
angle-no-length = A length must be more than nothing.
angle-too-short = The sloping length cannot be shorter than the level one.
angle-too-steep = No roof is as steep as that.
angle-no-lean = { $degrees }° is the lean of no ladder.
angle-no-ladder = Give the length and how far out the foot stands, lay the phone on a rail, or say how high you step off.
ladder-as-asked = { $degrees }°. About what the rule asks: the foot a quarter of the working length out, which is 75.5° (29 CFR 1926.1053(b)(5)(i)).
ladder-move-in = { $degrees }°, flatter than the rule’s 75.5°: it can slide. The rule puts the foot { $base } from the wall (29 CFR 1926.1053(b)(5)(i)).
ladder-flat = { $degrees }°, flatter than the rule’s 75.5°: it can slide. Bring the foot in (29 CFR 1926.1053(b)(5)(i)).
ladder-move-out = { $degrees }°, steeper than the rule’s 75.5°: it can tip back. The rule puts the foot { $base } from the wall (29 CFR 1926.1053(b)(5)(i)).
ladder-steep = { $degrees }°, steeper than the rule’s 75.5°: it can tip back. Take the foot out (29 CFR 1926.1053(b)(5)(i)).
ladder-rails = For rails 3 feet above where it rests, the ladder must be at least { $ladder } long (29 CFR 1926.1053(b)(1)).
ladder-too-low = As it stands it rests { $reaches } up. You step off at { $landing }.
ladder-for-landing = To step off { $landing } up, the rule asks: { $working } along the ladder to the edge, the foot { $base } out, a ladder at least { $ladder } long.
ladder-caution = The rule speaks of angle and length alone. Whether the ground holds, the top is tied, the wires are far and the ladder is whole, you must see yourself before you climb.

# --- what is wrong with an outline; $ring is one of the first four, $at a place in the numbers of whoever drew it
outline-rim = the outline
    .start = The outline
outline-hole = hole { $hole }
    .start = Hole { $hole }
outline-rim-of = the outline of body { $body }
    .start = The outline of body { $body }
outline-hole-of = hole { $hole } of body { $body }
    .start = Hole { $hole } of body { $body }
outline-edge-of = side { $edge } of { $ring }
outline-nothing = Nothing was measured yet. Draw the outline, or type in its planes.
outline-file = At { $path }: { $fault }
outline-no-json = This is no JSON from line { $line }, column { $column } on. Look at what stands before this place.
outline-wants-text = A text is wanted here, in quotation marks.
outline-wants-number = A number is wanted here.
outline-wants-list = A list is wanted here, in square brackets.
outline-wants-object = Members are wanted here, in curly brackets.
outline-wants-position = A position is wanted here: longitude, then latitude.
outline-wants-degrees = This is no longitude and latitude in degrees. Save the footprint as WGS 84, as GeoJSON wants it.
outline-wants-as-many = There must be one entry for each side, and no more lists than outlines and holes.
outline-missing = “{ $name }” is missing here.
outline-unknown = “{ $name }” is not known here. Known are: { $known }.
outline-unit = “{ $text }” is no unit that is known here. Write ft, m, in or mm.
outline-pitch = “{ $text }” is no pitch. Write 6/12 or 26.6°, between flat and 60/12.
outline-length = “{ $text }” is no length. Write 12' 6" or 3.8 m.
outline-kind = A “{ $text }” has no area. A Polygon or MultiPolygon is wanted.
outline-no-pitch = The pitch is missing: give one for the whole roof, or one for each side.
outline-one-of = Give one of these and no more: outline, rings, bodies, legs or planes.
outline-no-unit = The unit is missing. Write "unit": "ft" at the top, or m, in or mm.
outline-file-empty = No outline is in this file.
outline-no-outline = A dormer stands on a roof that was drawn. Give an outline in place of single planes.
outline-wants-corner = A corner is wanted here: to the right, then away from the street, as [40, 28].
outline-wants-two-sides = Two are wanted here: the left sloping edge, then the right one.
outline-open = { $ring } is open: it ends at { $at }, not where it began. Repeat the first corner at its end.
outline-too-few-corners =
    { $corners ->
        [one] { $ring } has { $corners } corner. A roof needs three at least.
       *[other] { $ring } has { $corners } corners. A roof needs three at least.
    }
outline-edge-no-length = Side { $edge } of { $ring } has no length: two corners in a row are at { $at }. Take one away.
outline-same-corner = Corners { $edge } and { $other } of { $ring } are both at { $at }. Part the roof there, or move one.
outline-spike = Side { $edge } of { $ring } runs back on the side before it, at { $at }. Take the corner away.
outline-crossing = Side { $edge } of { $ring } and side { $other } of { $otherring } cross or touch at { $at }. Look at the order of the corners there.
outline-hole-outside = { $ring } lies outside of the roof, at { $at }. If it is a roof of its own, make it a body.
outline-hole-in-hole = { $ring } lies inside of { $within }, at { $at }. If it is a roof of its own, make it a body.
outline-flat = Side { $edge } of { $ring } has no pitch. A plane must rise from it: give it one, or make it a gable or a wall.
outline-overhang = The overhang at side { $edge } of { $ring } is less than nothing, or more than 20 feet.
outline-overhangs-meet = With the overhangs, side { $edge } and side { $other } of { $ring } run into each other at { $at }. Make an overhang smaller, or draw the edge of the roof.
outline-too-large = The outline is { $across } across ({ $metres } m). Look at the unit: no house is that large.
outline-too-far-apart = The outlines are { $across } across together ({ $metres } m). Keep the buildings of one property only.
outline-too-small = The outline is { $across } across ({ $metres } m). Look at the unit: no house is that small. Degrees go into GeoJSON.
outline-never-closes = The roof never closes: too many sides stand upright. Make one of these an eave: { $edges }.
outline-not-round = The turns add up to { $degrees }°, not to 360°. Look for a corner that is missing or turned the wrong way.
outline-ends-far-off = The sides end { $length } from where they began, { $percent } % of the way round. Look for a side that is missing or misread: one of that length, { $way }, would close it.
outline-way-left = turned { $degrees }° to the left of the first side
outline-way-right = turned { $degrees }° to the right of the first side
outline-way-along = the way of the first side
outline-not-on-roof = Body { $body } is to stand on a roof, but none of its walls lies over one that is drawn before it. Move it onto the slope.
outline-buried = Nothing of body { $body } would be seen: it lies below the slopes that it stands on. Make its walls higher, or move it.
outline-no-measure = Number { $number } is no measure of a house: a length must be more than nothing and less than 1000 m, and a turn less than 180°.
