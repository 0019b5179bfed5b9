# What can be done. remedy-…: the name on a button. .what is done.

# --- upkeep
remedy-sealant = Sealant
    .what = The crack or gap is cleaned and filled with roofing sealant.
remedy-seal-nail-heads = Nail heads sealed
    .what = Each bare nail head is set tight and covered with sealant.
remedy-hand-seal-tabs = Tabs sealed by hand
    .what = Each loose edge is lifted and bedded on spots of asphalt cement.
remedy-clean-gutter = Gutter cleaned
    .what = Gutter and downspout are emptied and rinsed until they run.
remedy-clean-valley = Valley cleaned
    .what = Everything that lies in the valley is taken out by hand.
remedy-remove-moss = Moss removed
    .what = The moss is treated, left to die and brushed off downhill with a soft brush. No pressure washer.

# --- make safe
remedy-temporary-cover = Temporary cover
    .what = The place is covered with a tarp or sheet, held down with battens, until it is repaired for good.

# --- repair: the covering
remedy-replace-shingles = Replacement shingles
    .what = The bad shingles are taken out and new ones of the same size are woven in and nailed under the course above.
remedy-renail = Renailing
    .what = The wrong nails are pulled, their holes sealed under the course above, and new nails set in the right line.
remedy-rebuild-section = Section laid anew
    .what = The shingles of the section are taken up and laid again in straight, even courses, woven into the rest.

# --- repair: the deck and the sheets on it
remedy-cut-out-deck = New deck at the spot
    .what = The bad wood is cut out to the middle of the nearest sound rafters and replaced, once the water is stopped.

# --- repair: edges
remedy-new-drip-edge = New drip edge
    .what = A bent metal edge is set along eave and rake, lapped, and placed on the right side of the sheet below.

# --- repair: pipes
remedy-new-boot = New pipe boot
    .what = The shingles around the pipe are opened, a new boot is set, and the shingles are woven back over it.
remedy-boot-collar = Collar over the boot
    .what = A new collar is slid down the pipe over the old one. It is right where the base below is sound.

# --- repair: flashings
remedy-new-step-flashing = New step flashing
    .what = At each course a bent metal piece is woven in between shingle and wall, behind the siding.
remedy-new-head-flashing = New head flashing
    .what = A bent metal strip is set behind the wall covering and over the top course, without nails through its face.
remedy-new-kickout = New kick-out flashing
    .what = A bent piece is set at the end of the eave that turns the water out of the wall and into the gutter.
remedy-new-skylight-flashing = New skylight flashing
    .what = Foot, sides and head of the skylight get new metal, woven into the courses.
remedy-new-chimney-flashing = New chimney flashing
    .what = The chimney gets new metal all round, and a second layer over it that is let into the mortar joints.

# --- repair: ridges and hips
remedy-new-ridge-caps = New caps
    .what = The old caps come off, and new ones are laid with their laps away from the wind and their nails covered.

# --- a new covering
remedy-new-covering-slope = New covering on one slope
    .what = One slope is stripped to the deck, the deck is checked, and sheets, edges, flashings and covering are laid new.
remedy-tear-off = Tear-off and new covering
    .what = Everything is taken off down to the deck, the deck is checked while it is bare, and the whole roof is laid new.
remedy-recover = New covering over the old
    .what = A new covering is laid over the old one, which stays, with all edges and flashings new.

# --- another trade's work
remedy-repoint = Repointing
    .what = A mason cuts out the worn mortar and fills the joints anew.
remedy-raise-vent = Vent raised
    .what = A licensed trade raises the vent to the height that its label and the code ask for.
