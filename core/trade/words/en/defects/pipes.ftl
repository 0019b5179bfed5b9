# Plumbing pipes, their boots, and hoods of fans and dryers.

defect-boot-split = Boot split
    .what = The collar that seals the plumbing pipe where it leaves the roof has split.
    .why = This is one of the most common leaks. It is often slow, and first shows as a stain on a ceiling.
    .water = Rain runs down the pipe and through the split into the attic.
    .photo = The split close up, then the whole boot with the shingles around it.
