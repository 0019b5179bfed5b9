# Why: what each rule of the judging room says, in words a homeowner understands.
# reason-…: one short sentence or two. Where it stands (code, evidence, trade practice, the firm's own policy, the owner)
# is shown beside it and not repeated here. Where two good roofers would differ, the sentence says so.

# --- why a repair is not enough
reason-covering-done = The covering is failing all over, so a repair in one place would soon be followed by the next.
reason-covering-done-over-layers = The covering is failing all over and lies over an older one. Both come off.
reason-deck-wet-broad = The wood under the roof is wet or soft beyond a spot. It has to be laid bare to be put right.
reason-rebuilt-step = Sections were rebuilt at different heights, so water stands or runs in between them.
reason-too-low = The slope is too low for shingles, new or old.
reason-brittle = The shingles crack when they are lifted, and a repair has to lift them.
reason-unmatchable = Shingles that match the old ones in size and thickness are no longer to be had. Some roofers would mix them; the joins leak sooner.
reason-many-places = There are so many separate places on one slope that repairing each would cost more than it saves. Some roofers would still repair them one by one.
reason-patched-often = { $limit ->
    [1] The same cause was patched before and is still there. We do not sell another patch on it.
    [2] The same cause was patched twice before and is still there. We do not sell another patch on it.
   *[other] The same cause was patched { $limit } times or more and is still there. We do not sell another patch on it.
}
reason-layers-no-repair = { $limit ->
    [0] We make a roof like this safe for now and sell no repair on it.
    [1] We make a roof like this safe for now and sell no repair on it.
    [2] There are two layers of covering or more. The code does not forbid a repair; we make such a roof safe for now and sell no repair beyond that.
    [3] There are three layers of covering or more. The code does not forbid a repair; we make such a roof safe for now and sell no repair beyond that.
   *[other] There are { $limit } layers of covering or more. The code does not forbid a repair; we make such a roof safe for now and sell no repair beyond that.
}
reason-must-last = You need the roof to last, and the covering around the bad places is wearing out too.
reason-only-a-covering = What is failing here is cured by a new covering alone.
reason-some-slopes-only = This concerns slope { $slopes } only. A slope can be done alone where it can be tied in to the rest; some roofers would do the whole roof at once.
reason-deck-judged-bare = How good the wood underneath is shows only when it is bare. Bad boards or sheets are replaced then.

# --- a new covering over the old
reason-recover-no-second-layer = Here, no new covering may be laid over an old one.
reason-recover-two-layers = { $layers ->
    [2] There are two layers already; the code does not allow a third.
    [3] There are three layers already; the code does not allow another.
   *[other] There are { $layers } layers already; the code does not allow another.
}
reason-recover-layers-here = { $allowed ->
    [2] Here, two layers may lie in all, and they do already.
    [3] Here, three layers may lie in all, and they do already.
   *[other] Here, { $allowed } layers may lie in all, and they do already.
}
reason-recover-wet-base = The base is wet or soft, and nothing may be laid over it.
reason-recover-barred-base = No new covering may be laid over a covering of this kind.
reason-recover-hail = This is an area of heavy hail, where the code does not allow shingles over an old covering.
reason-recover-too-low = The slope is too low for shingles, new or old.
reason-recover-not-flat = The old covering does not lie flat enough; every hump would show and wear through.
reason-recover-flashing-stays = Some flashing or edge could not be renewed, and would go on leaking under the new covering.
reason-recover-frame-weak = The frame may not carry the weight of another layer.
reason-recover-maker-refuses = The maker of the new covering does not accept it over the old one.
reason-recover-rebuilt-step = Sections at different heights would still hold water under a new covering.
reason-recover-not-sold = We do not lay a new covering over an old one, even where the code allows it. Other roofers do.
reason-recover-not-known = It is not known whether { $questions }. Each must be ruled out before a new covering is laid over the old.
reason-recover-advised-against = Most roofers advise against a second layer: it runs hotter, nails hold less well, and nobody sees the wood underneath.
reason-recover-allowed = The code allows one new covering over this one: there is a single layer, dry and sound, of a kind that may be laid over.
reason-recover-frame-excepted = A light second layer over a single one needs no new proof that the frame carries it.
reason-recover-other-ways = This bar does not reach complete roof systems that carry their own load down to the structure, nor protective coatings. They are not what we mean here.
reason-check-adopted-text = This part of the code was changed in the newest edition. Check the text as it is adopted here before work starts.

# --- flashings, edges, nails
reason-flashing-reuse = Flashings that are rusted or damaged may not be used again under a new covering.
reason-flashing-renewed = We renew all flashings with a new covering. Sound ones may be kept by the code; they rarely last as long as the new roof.
reason-flashing-thin = The metal of the flashing is thinner than the code asks for.
reason-valley-narrow = The metal in the valley is { $width } wide; it should be at least { $needed }.
reason-sidewall-step = Where a roof runs along a wall, each course needs its own piece of step flashing, at least { $size } up the wall and { $size } out on the roof.
reason-sidewall-flashing = Where a roof runs along a wall, it needs flashing at least { $size } up the wall and { $size } out on the roof.
reason-kick-out = Where an eave ends against a wall, a kick-out turns the water away from the wall and into the gutter.
reason-drip-edge = Shingles need a metal drip edge along eaves and rakes.
reason-drip-edge-practice = A metal drip edge along eaves and rakes keeps water off the wood. The code in force here did not ask for one; good roofers lay it.
reason-nails = Each shingle needs at least { $nails } nails in the nailing line, driven flush and through into the wood.

# --- what a new covering needs here
reason-all-layers-off = All old layers come off, down to the deck.
reason-underlayment-low = On a slope below 4:12 the underlayment is laid double.
reason-underlayment-doubled = Slope { $slopes }: the roof rises { $pitch } there. On so low a slope the underlayment is laid double.
reason-ice-barrier = Slope { $slopes }: the ice barrier must reach { $reach } up from the edge, measured along the slope.
reason-ice-barrier-unmeasured = Slope { $slopes }: an ice barrier must reach at least { $inside } inside the wall below. How far that is up the slope depends on pitch and overhang, which are still to be measured.
reason-ice-barrier-missing = Here the code asks for an ice barrier from the edge to at least { $inside } inside the wall below.
reason-ice-barrier-unknown = Whether an ice barrier is called for here is for the building department to say.
reason-cricket = The chimney is { $width } wide. Behind one wider than 30" the roof needs a small saddle to turn the water aside, here { $height } high.
reason-cricket-wanted = Behind a chimney wider than 30" the roof needs a small saddle to turn the water aside, unless the chimney stands astride the ridge.
reason-cricket-unmeasured = The chimney is { $width } wide. Behind one wider than 30" the roof needs a small saddle to turn the water aside.

# --- chimneys, vents, attic air
reason-chimney-low = The chimney stands { $height } above the roof; it should stand at least { $needed }.
reason-gas-vent-low = The vent stands { $height } above the roof; a gas vent here should stand at least { $needed }.
reason-gas-vent-older-codes = The vent stands { $height } above the roof. Older codes allowed that on this slope; today it would be { $needed }. The gas trade should say whether it may stay.
reason-gas-vent-not-in-table = The vent stands { $height } above the roof. With its size, or so near a wall, the usual table does not settle how high it must be; inspectors differ. The gas trade should say.
reason-chimney-height = A chimney should stand at least { $least } above the roof where it comes through, and { $above } above anything within { $near } of it.
reason-attic-air = The attic needs openings low and high, enough of them for its size, so that air moves through it.
reason-air-space = Air needs at least { $space } kept open between the insulation and the roof.

# --- why each step
reason-fault = { $part }: { $defect }.
reason-fault-unnamed = { $part }: { $rung }.
reason-water-comes-in = Water is coming in now.
reason-open-to-rain = There is an opening that the next rain will find.
reason-may-fall = Something may fall.
reason-urgent = This should not wait for the repair itself.
reason-deck-wet = The wood under the roof is wet or soft in one place. It is cut back to sound wood, and the cause of the water is found first.
reason-repair-local = What is wrong is local, and the covering around it has years left.
reason-patched-before = { $part }: { $times ->
    [1] patched once before, and the cause is still there.
    [2] patched twice before, and the cause is still there.
   *[other] patched { $times } times before, and the cause is still there.
}
reason-our-callback = { $part }: this is our own work, and it did not hold. Putting it right is on us.
reason-their-callback = { $part }: this was put right before by somebody else, and it did not hold. Ask them first.
reason-two-layers-repair = There are two layers of covering. The code does not forbid a repair on them, and we do it; some roofers would not.
reason-sound = The roof is sound. It is looked at again in a few years.
reason-sound-ageing = The roof does its work and shows its age. It is looked at again sooner.
reason-installer-answers = The roof is recent, and what is wrong was built in. Whoever laid it should answer for it: call them first, and show them this letter. We repair it only if you ask us to.
reason-we-laid-it = We laid this roof ourselves, and what is wrong was built in. Putting it right is on us.
reason-waits-for-trade = Our work here waits until { $trade } has been.
reason-frame-weak = The frame shows signs that it may not carry its load. Its strength is not ours to judge.

# --- look first
reason-look-nothing-seen = Nothing of this roof could be seen, so nothing can be said about it yet.
reason-look-seen-from-afar = This roof was seen only from a distance. That is enough to say that it must be looked at from near, and no more.
reason-look-water-unexplained = Water is coming in, and nothing that was seen explains it. Where it gets in must be found before anything is sold.
reason-look-covering-not-seen = The covering itself was not seen from near, so we cannot call this roof sound.

# --- refused in part
reason-sealant-alone = Sealant over this would hold for a while and crack. Water runs downhill and must be led over each lap; sealant does not do that.
reason-asked-does-not-cure = { $remedy }: you asked for this. It leaves the cause in place and usually holds for { $most ->
    [1] a month
   *[other] { $least } to { $most } months
}.
reason-asked-makes-worse = { $remedy }: you asked for this. It would make matters worse, or the right repair dearer later.

# --- how far this reaches
reason-limit-nothing-seen = Nothing of this roof was seen on this visit.
reason-limit-seen-from-afar = This roof was seen only from a distance. Seen from near it may be worse.
reason-limit-request-only = We looked at what you asked about, not at the whole roof.
reason-limit-quick-look = This was a quick look at the places that leak most, not at the whole roof.
reason-limit-earlier-look = Some of this stands on an earlier visit: those parts were not seen again.
reason-limit-attic-not-seen = The roof was not seen from inside the attic, where wet wood shows first.
reason-limit-layers-not-counted = The layers of covering were not counted at an edge.
reason-limit-layers-differ = The layers differ from place to place, from { $least } to { $most }. We go by the most.
reason-limit-next-is-tear-off = There are two layers of covering. The next new covering means taking both off, down to the deck.
reason-limit-slopes-not-seen = The covering was not seen from near on slope { $slopes }.
reason-limit-water-not-proved = Where the water gets in is read from what is open. Only the next rain, or a water test, proves it.
reason-limit-dry-cold = Water that shows in dry, cold weather is likely breath and steam from inside, not rain. The attic's air and insulation should be looked at.
reason-limit-warranty = What the maker's warranty covers is for the maker to say, not for us.
reason-sale-under-two-years = You mentioned a sale. Some lenders ask that a roof keep water out and have at least two years left; as it is, this one may not pass.
reason-sale-not-seen = You mentioned a sale. Some lenders ask that a roof have at least two years left; this one was not seen well enough to say.

# --- safety
reason-asbestos = There is material that may hold asbestos. It must not be cut, drilled or broken until it has been tested; local rules may ask for more.
reason-vermiculite = There is loose insulation that may be vermiculite. It is treated as if it held asbestos: leave it alone and keep out of it until it has been tested.
reason-fuel-vents = Vents and flues of heaters are for a licensed trade. Find out which appliance and fuel each one serves before anybody touches it, and have a carbon monoxide alarm working inside.
reason-lead-paint = The house was built in { $built }. Old paint on the wood at the eaves may hold lead; more than a small patch of it is for a certified renovator.
reason-tie-off = This roof rises { $pitch }. Whoever works on it must be tied off or guarded against a fall.
reason-soft-underfoot = Part of the deck is soft. Nobody should stand on it.
reason-keep-clear = Keep people and cars away from below until it is made safe.
reason-tabs-not-lifted = Shingles are not lifted while they are too cold, too hot or too brittle to bend: they would crack.
reason-power-line = A power line is near. Keep at least { $distance } from it with everything, and use a ladder with rails that do not conduct.

# --- before the ladder: what forbids climbing, and what to do instead
reason-stop-ladder = The ladder does not stand right. Firm, level ground, base out a quarter of its length, rails { $above } above the landing, tied off; or look with a pole.
reason-stop-lines = A power line is too near. Stay { $distance } away with ladder, pole and body, use rails that do not conduct, and set up on another side or look from the ground.
reason-stop-thunder = Thunder. Come down, stay off the ladder, and wait { $minutes } minutes after the last of it.
reason-stop-wind = The wind is too strong for a ladder. Look from the ground and come back.
reason-stop-weather = The weather does not hold. Look from the ground and come back.
reason-stop-frozen = Frost, snow or ice on the roof. Stay off it; look from the ladder at the eave, or come back.
reason-stop-wet = The roof is wet. Stay off it; look from the ladder at the eave or with a pole.
reason-stop-steep = Too steep for the gear at hand. Look from the ladder or with a pole, and write down what was not seen.
reason-stop-deck = The deck may not bear. Stay off it; look from the ladder and from the attic.
reason-stop-fibres = Suspect asbestos or vermiculite. Do not touch, cut or lift it and do not crawl through it; have it tested first.
