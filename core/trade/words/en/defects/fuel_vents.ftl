# Vents of appliances that burn fuel. The work is a licensed trade's: first ask which appliance and which fuel.

# --- split
defect-vent-rusted = Vent rusted through
    .what = The metal vent is rusted, and in places through its wall.
    .why = Exhaust can leak into the house. It may hold carbon monoxide, which has no smell.
    .water = Rain gets in through the rust and runs down to the appliance.
    .photo = The rust from a few feet away, with no hand on it, and the whole vent.
defect-vent-stained = White or rusty streaks on the vent
    .what = Streaks on the outside show that exhaust condenses inside the vent.
    .why = The vent may be the wrong size or kind for its appliance, or cool too fast. It rusts from inside.
    .water = Little rain gets in here. The water comes from the exhaust itself.
    .photo = The streaks, the joints, and the whole vent.
defect-vent-flashing-split = Vent flashing rusted or split
    .what = The metal base around the vent is rusted or split, while the vent itself looks whole.
    .why = A roofer can renew the base. The vent is not moved, cut or taken apart for it.
    .water = Water runs through the base beside the hot pipe into the roof.
    .photo = The split or rust close up, and the vent above it.

# --- loose
defect-vent-leaning = Vent loose or leaning
    .what = The vent leans, has come apart at a joint, or has lost its brace.
    .why = It can come down, and exhaust can leak into the attic or the house. It may hold carbon monoxide.
    .water = Rain gets in at the joint that has opened.
    .photo = The lean against a straight line, and the joint or brace, with no hand on it.
defect-vent-collar-loose = Rain collar loose on the vent
    .what = The ring on the vent that keeps rain out of the joint with its base has slid or lost its seal.
    .why = It is a common and small leak, and it is closed without touching the vent's joints.
    .water = Rain runs down the vent and in behind the ring.
    .photo = The ring all the way round, close up.

# --- missing
defect-vent-cap-missing = Vent cap missing
    .what = The cap on top of the vent is gone.
    .why = Rain and birds get in, and wind blows exhaust back. The cap has to be the one made for that vent.
    .water = Rain falls straight down the vent onto the appliance.
    .photo = The open top of the vent, from the ladder or through a lens.

# --- misbuilt
defect-vent-too-low = Vent ends too low
    .what = The vent of a furnace, water heater or stove ends too close to the roof or to something higher beside it.
    .why = Wind can push the exhaust back down the vent and into the house. Exhaust may hold carbon monoxide, which has no smell.
    .water = No water gets in here. The danger is the exhaust.
    .photo = The whole vent from the side with a tape from the roof to its top, and what stands near it.
defect-vent-too-close-to-wood = Vent too close to wood
    .what = Wood, insulation or shingles come closer to the hot vent than its label allows.
    .why = Wood that is heated for years catches fire more easily.
    .water = No water gets in here. The danger is fire.
    .photo = The gap with a tape beside it, not in it, and the vent's label if it can be read.
defect-vent-wrong-kind = Wrong vent for the fuel
    .what = The vent does not seem to be made for its appliance. A Type B vent, for one, is for gas only, never for oil or wood.
    .why = The wrong vent can burn through, rust through or leak exhaust. It may hold carbon monoxide.
    .water = No water gets in because of this.
    .photo = The vent, its label, and the label of the appliance below.
defect-vent-orphaned = Old vent of a removed appliance
    .what = The vent seems to serve nothing any more.
    .why = Each pipe through the roof is one more leak to come. Before it is closed, a licensed trade must say that nothing uses it.
    .water = No water gets in because of this alone.
    .photo = The vent on the roof, and its other end inside.
defect-suspect-asbestos-flue = Flue that may hold asbestos
    .what = The gray, stone-like pipe may be asbestos-cement. Some older prefabricated chimneys hold such a liner. Only a test can tell.
    .why = Left alone it is little danger. Cut, drilled or broken it can release fibers that harm the lungs.
    .water = No water gets in because of this. It decides how any work here may be done.
    .photo = From a distance, without touching: the pipe, its surface, and its top.

# --- smothered
defect-vent-blocked = Vent blocked
    .what = A nest, leaves, snow or fallen pieces close the vent.
    .why = Exhaust that cannot leave fills the house. It may hold carbon monoxide. The appliance must stay off until the vent is clear.
    .water = No water gets in because of this. The danger is the exhaust.
    .photo = The blocked opening from a safe place, through a lens.
