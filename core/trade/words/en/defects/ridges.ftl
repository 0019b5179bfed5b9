# Ridges, hips and the vents along them.

defect-ridge-cap-cracked = Caps cracked
    .what = The shingles bent over the ridge or hip have cracked along the bend.
    .why = They take the most sun and wind. Once cracked, they break off in pieces.
    .water = Water runs through the crack onto the joint that the cap covers.
    .photo = A crack close up, and along the ridge or hip to show how many.
