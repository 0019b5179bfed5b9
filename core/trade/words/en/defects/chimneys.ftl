# Chimneys, masonry and prefabricated.

defect-mortar-washed-out = Mortar washed out
    .what = The mortar between the bricks has worn away, and the joints are open.
    .why = Open joints take in water, which freezes, loosens the bricks and runs down inside.
    .water = Rain soaks into the open joints and comes out below the roof, past any flashing.
    .photo = The joints close up with a key or pencil in the deepest one, and the whole side.
