# Plumbing pipes, their boots, and hoods of fans and dryers.

# --- split
defect-boot-split = Boot split
    .what = The collar that seals the plumbing pipe where it leaves the roof has split.
    .why = This is one of the most common leaks. It is often slow, and first shows as a stain on a ceiling.
    .water = Rain runs down the pipe and through the split into the attic.
    .photo = The split close up, then the whole boot with the shingles around it.
defect-boot-cracking = Boot starting to crack
    .what = The collar around the pipe is hard and shows fine cracks, but none goes through yet.
    .why = Sun dries these collars out years before the shingles around them. It will split before long.
    .water = No water gets in yet.
    .photo = The collar all the way round, close up, pressed with a finger.
defect-boot-torn-open = Boot torn open
    .what = The collar has torn away from the pipe, and one can see down beside the pipe.
    .why = It is an open hole in the roof as wide as the gap.
    .water = Rain runs straight down beside the pipe into the house.
    .photo = The gap from above with a finger or pencil in it, and the whole boot.
defect-boot-metal-rusted = Boot base rusted or cracked
    .what = The metal or plastic base of the boot is rusted through or cracked.
    .why = A new collar does not help where the base has gone.
    .water = Water runs through the base onto the wood around the pipe.
    .photo = The hole or crack in the base close up, and the shingles around it.
defect-boot-chewed = Lead boot chewed
    .what = Squirrels have gnawed the soft lead around the pipe.
    .why = They come back. Each visit opens it further.
    .water = Rain runs in at the gnawed edge and down the pipe.
    .photo = The tooth marks and the gap close up.
defect-pipe-cracked = Plumbing pipe cracked
    .what = The plumbing pipe itself is cracked or broken above the roof.
    .why = No boot can seal a pipe that leaks, and sewer gas may get into the attic.
    .water = Rain runs into the crack and down the outside of the pipe inside the house.
    .photo = The crack close up, and how far down it goes.
defect-hood-cracked = Hood cracked or broken
    .what = The hood over a fan or dryer duct is cracked or broken.
    .why = It keeps rain and birds out of a hole that leads into the house.
    .water = Rain falls through the break into the duct or beside it.
    .photo = The break close up, and the hood from the side.

# --- loose
defect-boot-lifted = Boot base lifted
    .what = The base of the boot has lifted from the roof, or its nails have let go.
    .why = Wind works at it, and the pipe's movement lifts it a little more each year.
    .water = Water and wind-driven rain get under the lifted base.
    .photo = The lifted edge from the side, close up.
defect-boot-collar-slid = Collar slid up the pipe
    .what = The pipe has moved, and the collar no longer sits tight on it or on its base.
    .why = Pipes grow with hot water and settle with the house. A collar that does not follow opens.
    .water = Water runs down the pipe and in under the collar.
    .photo = The gap between pipe and collar, all round.
defect-hood-loose = Hood loose
    .what = The hood has come loose from the roof or from its duct.
    .why = Wind can take it off, and damp air from the house ends up in the attic.
    .water = Water gets under the loose base.
    .photo = The loose base from the side, and a hand moving the hood.

# --- missing
defect-boot-missing = Pipe without a boot
    .what = The pipe comes through the roof with nothing around it, or with sealant alone.
    .why = Pipe and roof move, and no smear follows them.
    .water = Rain runs down the pipe and through the gap into the house.
    .photo = The foot of the pipe all the way round, close up.
defect-hood-flap-missing = Hood flap missing
    .what = The flap that closes the hood when the fan is off is missing.
    .why = Cold air, birds and wasps come in through the duct.
    .water = Wind-driven rain and snow blow into the duct.
    .photo = The open hood from below.

# --- misbuilt
defect-boot-lapped-wrong = Boot lapped wrong
    .what = The upper part of the base lies over the shingles, or its lower part under them.
    .why = It should lie like a shingle: covered above, over the ones below.
    .water = Water runs down onto the base's upper edge and in under it.
    .photo = The base from above with the shingles around it, and where they lap the wrong way.
defect-boot-wrong-size = Boot does not fit the pipe
    .what = The collar is too wide or too narrow for the pipe, or made for another pitch.
    .why = Too wide, it gaps. Too narrow, it splits early.
    .water = Water runs down the pipe through the gap.
    .photo = The gap or the strained collar close up, with a tape on the pipe.
defect-boot-nails-bare = Boot nailed through its face
    .what = Nails were driven through the lower part of the base and lie bare.
    .why = They work loose with heat and cold, and each leaves a hole.
    .water = Water follows the nails into the wood.
    .photo = The bare heads close up.
defect-pipe-too-short = Pipe ends too low
    .what = The plumbing pipe ends so close to the roof that snow or leaves can close it.
    .why = A closed vent makes drains gurgle and lets sewer gas into the house.
    .water = Water may splash over the top of the boot in heavy rain.
    .photo = The pipe with a tape from the roof to its top.
defect-hood-lapped-wrong = Hood set on top of the shingles
    .what = The base of the hood was set on top of the shingles and sealed, and not woven in like a shingle.
    .why = It depends on its sealant alone, which cracks within a few seasons.
    .water = Water runs under the upper edge of the base.
    .photo = The upper edge of the base close up, and the shingles above it.

# --- smothered
defect-boot-smeared = Boot smeared with sealant
    .what = The collar is covered with sealant or roof cement from earlier repairs.
    .why = The split is still under it. The smear cracks with every move of the pipe.
    .water = Water runs in where the smear has cracked or let go of the pipe.
    .photo = The smear all the way round, and its worst crack.
defect-hood-blocked = Hood blocked with lint or a nest
    .what = Lint, a nest or paint keeps the hood from opening or letting air out.
    .why = A blocked dryer duct can catch fire. A blocked fan leaves damp air in the house.
    .water = No rain gets in. Damp air stays in the duct and drips back.
    .photo = The blocked opening from below, and what blocks it.

# --- wet
defect-boot-deck-soft = Wood soft around the pipe
    .what = The wood around the pipe is soft or dark.
    .why = The boot has leaked for a long time. A new boot needs firm wood to hold it.
    .water = Water has been running in along the pipe.
    .photo = The soft place pressed by hand, or the dark ring around the pipe from the attic.
