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
ladder-stands-well = { $degrees }°: the ladder stands well. Its rails must stand 3 feet above where you step off: it takes at least { $ladder }. Tie it.
ladder-move-in = { $degrees }°: too flat, it may slide. Move its base in, to { $base } from the wall.
ladder-move-out = { $degrees }°: too steep, it may tip back. Move its base out, to { $base } from the wall.
