# The deck, and the sheets laid on it.

defect-deck-soft-spot = Deck soft in one spot
    .what = In one place the wood under the covering gives way when pressed.
    .why = Wet wood rots, no longer holds nails, and can break underfoot. The spot grows until the water is stopped.
    .water = Water has been coming in above this spot, often from a flashing or a pipe higher up.
    .photo = The hand or foot on the spot, then the spot in relation to what lies uphill of it.
defect-deck-soft-broad = Deck soft over a wide area
    .what = The wood under the covering is soft over a wide area or in several places.
    .why = Nails do not hold in it, a new covering cannot be laid on it, and it may not bear a person.
    .water = Water has been coming in for a long time, in more than one place or along the whole edge.
    .photo = The whole area from the ladder with its limits pointed out, and one soft place close up.
defect-deck-stained = Old stain on the deck, dry
    .what = The wood shows a dark stain, but it is dry and hard today.
    .why = Water was there once. It was either stopped since or comes only with certain winds or a thaw.
    .water = No water gets in now, as far as can be seen. Look again after a heavy rain.
    .photo = The stain with a dry hand or a moisture meter on it, and what is above it.
defect-underlayment-bare = Sheet left bare
    .what = The sheet that belongs under the covering lies open to sun and rain.
    .why = It is made to be covered. In the open it dries out, tears, and lets go within weeks or months.
    .water = Rain gets in at its nail holes, laps and tears.
    .photo = The bare sheet with its edges, and how far the covering stops short of it.
