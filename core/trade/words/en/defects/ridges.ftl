# Ridges and hips, and the vents near them.

# --- split
defect-ridge-cap-cracked = Caps cracked
    .what = The shingles bent over the ridge or hip have cracked along the bend.
    .why = They take the most sun and wind. Once cracked, they break off in pieces.
    .water = Water runs through the crack onto the joint that the cap covers.
    .photo = A crack close up, and along the ridge or hip to show how many.
defect-ridge-mortar-broken = Ridge mortar broken
    .what = The mortar under the ridge or hip tiles is cracked or falling out.
    .why = It holds the tiles and keeps the rain out below them.
    .water = Wind-driven rain gets in under the tiles.
    .photo = The broken mortar close up, and along the ridge.
defect-ridge-vent-cracked = Ridge vent cracked
    .what = The vent along the ridge is cracked or crushed.
    .why = It lies over an open slot in the roof.
    .water = Rain gets through the crack into the slot.
    .photo = The crack close up, and the length of the ridge.
defect-roof-vent-cracked = Roof vent cracked or rusted
    .what = The hood of the roof vent is cracked, rusted or broken off.
    .why = It covers a hole in the roof as wide as a dinner plate.
    .water = Rain falls through the break into the attic.
    .photo = The break close up, and the vent from the side.

# --- loose
defect-ridge-cap-loose = Caps loose
    .what = Caps on the ridge or hip lift by hand or have slid.
    .why = The wind is strongest there. One loose cap takes the next with it.
    .water = Wind-driven rain gets in under the loose caps.
    .photo = A hand lifting a cap, and along the ridge to show how many.
defect-ridge-vent-loose = Ridge vent loose
    .what = The vent along the ridge lifts, or its nails are too short or have let go.
    .why = In a storm it can come off whole, and the slot below lies open.
    .water = Wind-driven rain gets in under the lifted vent.
    .photo = The lifted part from the side, and a pulled nail beside a tape.
defect-roof-vent-loose = Roof vent loose
    .what = The base of the roof vent has lifted or its nails have let go.
    .why = Wind can take it off and leave an open hole.
    .water = Water gets in under the lifted base.
    .photo = The lifted base from the side, and a hand moving the vent.
defect-vent-fan-stuck = Turning vent stuck
    .what = The turning vent does not turn, wobbles or screeches.
    .why = It moves little air, and a wobbling one works its base loose.
    .water = No water gets in at first. It gets in when the base has worked loose.
    .photo = The vent from the side, and a hand turning it.

# --- missing
defect-ridge-cap-missing = Caps missing
    .what = Caps on the ridge or hip are gone.
    .why = The joint of the two slopes lies open below them.
    .water = Rain runs into the joint at the top of the roof.
    .photo = The bare place close up, and along the ridge.
defect-ridge-vent-end-open = Ridge vent end open
    .what = The end of the ridge vent is not closed.
    .why = Wasps, birds and driven snow find it.
    .water = Wind-driven rain and snow blow in at the end.
    .photo = The open end close up.
defect-roof-vent-screen-torn = Vent screen torn
    .what = The screen in the vent is torn or missing.
    .why = Birds, squirrels and wasps get into the attic and nest there.
    .water = No rain gets in because of this alone.
    .photo = The torn screen close up, and any nest behind it.
defect-roof-vent-missing = Roof vent gone
    .what = The hood of a roof vent is gone, and the hole below it lies open.
    .why = It is an open hole in the roof.
    .water = Rain falls straight into the attic.
    .photo = The open hole from the ladder.
defect-upper-vents-too-few = Too few vents up high
    .what = The openings near the ridge are too few for the attic below.
    .why = Damp and hot air stays in the attic. It ages shingles and wood, and in cold weather it drips.
    .water = No rain gets in because of this.
    .photo = All the vents of that side in one picture, and the vent's own label if it has one.

# --- misbuilt
defect-ridge-lapped-into-wind = Caps lapped into the wind
    .what = The caps overlap so that their open edges face the usual wind.
    .why = The wind gets under each edge instead of passing over it.
    .water = Wind-driven rain is pushed in under the caps.
    .photo = Along the ridge, with an arrow or a note for the direction of the usual wind.
defect-hip-lapped-wrong = Hip caps lapped uphill
    .what = The hip caps were laid from the top down, so each one laps under the one below.
    .why = Water coming down the hip runs into every lap.
    .water = Water runs in under each cap and onto the joint of the slopes.
    .photo = Three or four caps close up, with a finger pointing downhill.
defect-ridge-end-open = End of ridge or hip open
    .what = Where hips meet the ridge, or at the ridge's end, the last caps leave a gap or bare nails.
    .why = The join at the top is made by hand and is easily done carelessly.
    .water = Rain runs into the gap or along the bare nails.
    .photo = The join from above, close up.
defect-ridge-slot-not-cut = No slot under the ridge vent
    .what = The vent was laid along the ridge, but the slot in the deck below it was never cut, or is too narrow.
    .why = It looks like a vent and moves no air.
    .water = No rain gets in because of this. Damp air stays in the attic.
    .photo = From the attic, the underside of the ridge.
defect-vents-mixed = Two kinds of upper vent mixed
    .what = A ridge vent and other high vents are used together, or a powered fan pulls through them.
    .why = One vent then draws its air from the other and not from the eave.
    .water = A vent that draws air in can draw in rain and snow with it.
    .photo = Both kinds in one picture.
defect-roof-vent-hole-not-cut = No hole under the roof vent
    .what = The vent stands on the roof, but the deck below it is closed.
    .why = It looks like a vent and moves no air.
    .water = No rain gets in because of this. Damp air stays in the attic.
    .photo = From the attic, the deck where the vent stands above.

# --- smothered
defect-ridge-vent-blocked = Ridge vent blocked
    .what = Dust, paint, leaves or insulation close the vent along the ridge.
    .why = The attic cannot let its damp and hot air out.
    .water = No rain gets in because of this. Damp air drips back in cold weather.
    .photo = The blocked vent close up, or its underside from the attic.
defect-roof-vent-blocked = Roof vent blocked
    .what = A nest, dust or insulation closes the roof vent.
    .why = The attic cannot let its damp and hot air out.
    .water = No rain gets in because of this. Damp air drips back in cold weather.
    .photo = The blocked opening from below or from the attic.

# --- wet
defect-ridge-deck-soft = Wood soft along the ridge
    .what = The wood along the ridge or hip is soft or dark.
    .why = Caps and vents are nailed to it and will not hold.
    .water = Water has been getting in under the caps or through the vent.
    .photo = The soft wood with a cap lifted, or from the attic.
defect-ridge-vent-lets-snow-in = Snow or rain blows in at vent
    .what = Stains or wet insulation below the vent show that wind blows rain or snow in.
    .why = The vent has no guard against the wind, sits too low, or draws air because others are missing at the eave.
    .water = Wind blows rain and snow through the vent.
    .photo = From the attic, the stain or wet insulation below the vent.
