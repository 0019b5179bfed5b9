# Vents of appliances that burn fuel. The work is a licensed trade's.

defect-vent-too-low = Vent ends too low
    .what = The vent of a furnace, water heater or stove ends too close to the roof or to something higher beside it.
    .why = Wind can push the exhaust back down the vent and into the house. Exhaust may hold carbon monoxide, which has no smell.
    .water = No water gets in here. The danger is the exhaust.
    .photo = The whole vent from the side with a tape from the roof to its top, and what stands near it.
