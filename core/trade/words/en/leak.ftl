### Where water that is seen inside comes in: suspects and reasons.

leak-right-above = It lies right above the stain.
leak-up-the-slope = It lies about { $far } up the slope from the stain.
leak-to-the-side = It lies about { $far } to the side; the laps of the underlayment can carry water that far.
leak-down-the-valley = Water from it runs into the valley and down along it to the stain.
leak-down-the-wall = Water from it runs down along the wall to the stain.
leak-from-the-roof-above = Water from it runs off the roof above onto this one, and on down to the stain.
leak-round-it = Water from it is turned aside by what stands in its way ({ $name }) and comes down beside that.
leak-round-what-stands-there = Water from it is turned aside by what stands in its way and comes down beside that.
leak-behind-it = Water stands behind it and comes down at its corners.
leak-over-the-ridge = The wind can push water over the ridge to this side.
leak-ice-holds-it = Ice at the eave holds melting water back up to there.
leak-found = When last seen it was { $rung }.
leak-not-seen = Nobody has seen it yet.
leak-fits-the-weather = It lets water in in just such weather.
leak-not-the-weather = It seldom lets water in in such weather.
leak-windward = The wind blew onto its slope.
leak-lee = Its slope lay out of the wind.
leak-no-known-part = No known part lies up the slope from the stain; this does.
leak-dry-cold = Water that shows in dry cold comes from breath and steam in the house: look in the attic first.
leak-opening = what stands through the roof
leak-attic = the air of the house

leak-outside = The stain does not lie under this roof. Check its place on the plan.
leak-no-plane = One of the parts ({ $name }) lies on a slope that this plan does not have. Place it again.
leak-no-place = The place of { $name } is not a number that can be used. Place it again.
