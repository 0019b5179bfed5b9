# What earlier work left behind.

defect-section-rebuilt-higher = Section rebuilt at another height
    .what = A part of the roof was rebuilt so that it lies higher or lower than the roof beside it.
    .why = Water meets a step where it should run on. Snow and leaves catch there, and no shingle bridges it for long.
    .water = Water is held at the step and runs sideways under the shingles of the lower part.
    .photo = The step from the side, low and close, with a tape for its height, and the whole section.
