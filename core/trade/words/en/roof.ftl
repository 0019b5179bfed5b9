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
