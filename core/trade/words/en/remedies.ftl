# What can be done. remedy-…: the name on a button. .what is done.

# --- upkeep
remedy-sealant = Sealant
    .what = The crack or gap is cleaned and filled with roofing sealant.
remedy-seal-nail-heads = Nail heads sealed
    .what = Each bare nail or screw head is set tight and covered with sealant.
remedy-hand-seal-tabs = Tabs sealed by hand
    .what = Each loose edge is lifted and bedded on spots of asphalt cement.
remedy-refasten-edge = Edge fastened again
    .what = The loose edge metal and the shingles on it are straightened and fastened again.
remedy-trim-edge = Edge trimmed
    .what = The shingles are cut to a straight line that reaches 1/4 to 3/8 inch past the metal.
remedy-clean-gutter = Gutter or drain cleaned
    .what = Gutter, downspout or drain is emptied and rinsed until it runs.
remedy-reseal-gutter = Gutter joint sealed
    .what = The joint or end is taken apart, cleaned, sealed and closed again.
remedy-clean-valley = Valley cleaned
    .what = Everything that lies in the valley is taken out by hand.
remedy-clear-debris = Leaves and dirt cleared
    .what = What lies on the roof is taken off by hand, without a pressure washer.
remedy-remove-moss = Moss or algae removed
    .what = The growth is treated, left to die and brushed off downhill with a soft brush, without a pressure washer.
remedy-clean-hood = Hood and duct cleaned
    .what = Lint, nests and paint are taken out until the flap moves freely.
remedy-clear-vent = Vent cleared
    .what = The vent is cleaned or freed of insulation until air passes.
remedy-clear-intake = Air path at the eave opened
    .what = The openings are cleaned, and spacers keep the insulation away from the deck.
remedy-new-strainer = New strainer
    .what = A new basket is set over the drain.
remedy-new-vent-screen = New vent screen
    .what = A new screen is fastened in the vent.
remedy-paint-fascia = Paint
    .what = The wood is prepared and painted. In a house from before 1978 the old paint is first tested for lead.
remedy-tidy-cables = Cables fastened
    .what = The cables are led along the edge and clipped there, without holes in the roof.
remedy-refasten-downspout = Downspout fastened
    .what = The downspout is put back together and strapped to the wall.
remedy-remove-leftovers = Leftovers taken away
    .what = What earlier work left behind is taken out, and the place is closed.
remedy-remove-gutter-cover = Gutter cover taken off
    .what = The cover is taken out from under the shingles, and the first row is sealed down again.
remedy-pressure-wash = Pressure washing
    .what = The roof is washed with a strong jet. It takes the grains off and drives water under the shingles.
remedy-coat-over = Coating or paint over it
    .what = A coating is spread over the old surface.
remedy-tar-over = Roof cement smeared over it
    .what = Roof cement is spread over the fault.
remedy-salt-or-chop-ice = Salt or chopping at ice
    .what = Ice is chopped off or melted with salt, which harms the shingles and the metal.

# --- make safe
remedy-temporary-cover = Temporary cover
    .what = The place is covered with a tarp or sheet, held down with battens, until it is repaired for good.
remedy-secure-loose = Loose piece secured
    .what = The loose piece is tied back or taken down, so that it cannot fall.

# --- repair: the covering
remedy-replace-shingles = Replacement shingles
    .what = The bad shingles are taken out and new ones of the same size are woven in and nailed under the row above.
remedy-renail = Renailing
    .what = The wrong nails are pulled, their holes sealed under the row above, and new nails set in the right line.
remedy-rebuild-section = Section laid anew
    .what = The section is taken up and laid again in straight, even rows, woven into the rest.
remedy-reset-tile-slate = Slate or tile set anew
    .what = Broken or slipped pieces are replaced or put back and fastened with a hook or a new nail.
remedy-replace-wood = New wood shingles set in
    .what = Bad wood shingles are taken out and new ones set in between their neighbors.
remedy-refasten-metal = Metal seam closed
    .what = The seam is closed and fastened so that the metal can move.
remedy-new-metal-panel = New metal panel
    .what = The rusted panel is replaced, apart from any metal that eats it.
remedy-new-metal-screws = New screws
    .what = Each loose screw is replaced by a thicker one with a new rubber ring.
remedy-new-starter = New starter course
    .what = The first row is lifted or replaced, and a starter with its glue at the edge is laid under it.
remedy-close-holes = Holes closed
    .what = The hole is closed with wood, and sheet and shingles are woven over it.

# --- repair: the deck and the sheets on it
remedy-cut-out-deck = New deck at the spot
    .what = The bad wood is cut out to the middle of the nearest sound rafters and replaced, once the water is stopped.
remedy-add-deck = New deck panels
    .what = The old boards are replaced or closed over with new panels, nailed to the rafters, with gaps for swelling.
remedy-refasten-deck = Deck nailed down
    .what = Loose boards or panels are nailed to the rafters again.
remedy-new-underlayment = Sheet renewed at the spot
    .what = The covering is opened, and a new sheet is laid under it, lapped downhill.
remedy-new-ice-barrier = New ice barrier
    .what = The covering is opened at the eave, and a sticky sheet is laid to at least 24 inches inside the outside wall.

# --- repair: edges
remedy-new-drip-edge = New drip edge
    .what = A bent metal edge is set along eave and rake, lapped, and placed on the right side of the sheet below.
remedy-new-fascia = New edge board
    .what = The rotten or missing board is replaced, primed on all sides, and the edge is closed with metal.
remedy-refasten-board = Board fastened again
    .what = The loose board or panel is fastened again to firm wood.
remedy-new-soffit = New soffit piece
    .what = The missing or loose piece of soffit is replaced, with its air openings.
remedy-close-soffit-gap = Soffit gap closed
    .what = The gap is closed with wood, metal or screen, once no animal is inside.
remedy-new-intake = New intake vents
    .what = The old air openings are replaced by new ones with screens.

# --- repair: gutters
remedy-rehang-gutter = Gutter hung anew
    .what = The gutter is hung on new hangers with a fall to its outlet, tight under the edge metal.
remedy-new-gutter = New gutter
    .what = A new gutter of the right size is hung with a fall to its outlets.
remedy-new-downspout = New downspout
    .what = A new pipe is fitted from the gutter to the ground.
remedy-extend-downspout = Downspout led on
    .what = The pipe is led on to a gutter, or well away from the wall.
remedy-new-drain = New drain
    .what = The drain is replaced or set lower and clamped to the roof sheet anew.

# --- repair: valleys
remedy-new-valley = Valley built anew
    .what = The shingles on both sides are opened, a new lining is laid, and clean rows are brought back to it.

# --- repair: pipes and hoods
remedy-new-boot = New pipe boot
    .what = The shingles around the pipe are opened, a new boot is set, and the shingles are woven back over it.
remedy-boot-collar = Collar over the boot
    .what = A new collar is slid down the pipe over the old one. It is right where the base below is sound.
remedy-reset-boot = Boot set anew
    .what = The sound boot is taken up and woven in again, its nails under the shingles.
remedy-new-hood = New hood
    .what = A new hood is woven into the shingles and joined to its duct.
remedy-reset-hood = Hood set anew
    .what = The sound hood or vent is taken up and woven in again like a shingle.
remedy-reset-storm-collar = Rain collar set and sealed
    .what = The ring is pushed down onto its base and sealed to the pipe. The vent itself is not moved.
remedy-new-vent-flashing = New base around the vent
    .what = A new metal base is woven in around the vent. The vent is not cut, moved or taken apart.

# --- repair: chimneys
remedy-new-chimney-flashing = New chimney flashing
    .what = The chimney gets new metal all round, and a second layer over it that is let into the mortar joints.
remedy-new-counter-flashing = New upper flashing
    .what = A new metal strip is let into the joint or fastened behind the wall covering, down over the lower metal.
remedy-new-cricket = New cricket
    .what = A small saddle is built so that water runs off to the sides, and is covered and joined in metal.
remedy-new-chimney-cap = New chimney cap
    .what = A cap with a screen, made for that flue, is fastened on top.
remedy-new-chase-cover = New chimney top cover
    .what = A new metal top with a slope, turned-down edges and a collar for the pipe is set on the box.

# --- repair: flashings at walls and skylights
remedy-new-step-flashing = New step flashing
    .what = At each row a bent metal piece is woven in between shingle and wall, behind the siding.
remedy-new-head-flashing = New head flashing
    .what = A bent metal strip is set behind the wall covering and over the top row, without nails through its face.
remedy-new-kickout = New kick-out flashing
    .what = A bent piece is set at the end of the eave that turns the water out of the wall and into the gutter.
remedy-new-skylight-flashing = New skylight flashing
    .what = Foot, sides and head of the skylight get new metal, woven into the rows.
remedy-new-skylight = New skylight
    .what = The skylight is replaced together with its flashing.
remedy-new-glass = New glass or dome
    .what = The pane or dome is replaced in its frame.
remedy-reseal-skylight = Skylight gaskets and slots renewed
    .what = The gaskets are renewed, the clips set, and the drain slots opened.

# --- repair: low slopes
remedy-low-slope-patch = Patch of the same sheet
    .what = The place is cleaned and dried, and a patch of the same kind of sheet is bonded over it.
remedy-new-low-slope-join = New low-slope join
    .what = A new sheet is run far up under the shingles or up the wall, and the steep roof is lapped over it.
remedy-new-low-slope-edge = New flat roof edge
    .what = The edge of the flat roof or its wall gets new metal, joined to the sheet.
remedy-low-slope-taper = Fall built in
    .what = The low place is built up or given a drain, so that the water runs off.

# --- repair: ridges, hips and vents
remedy-new-ridge-caps = New caps
    .what = The old caps come off, and new ones are laid with their laps away from the wind and their nails covered.
remedy-rebed-ridge = Ridge tiles bedded anew
    .what = The tiles are taken off, fastened, and bedded or closed anew.
remedy-new-ridge-vent = New ridge vent
    .what = A new vent with a wind guard is laid along the ridge over the open slot.
remedy-refasten-ridge-vent = Ridge vent fastened again
    .what = The vent is fastened with nails long enough to reach into the deck, and its ends are closed.
remedy-new-roof-vent = New roof vent
    .what = A new vent is woven into the shingles over its hole.
remedy-more-vents = More air out at the top
    .what = The slot or holes are cut, or vents are added, until the openings suit the attic.
remedy-more-intake = More air in at the eave
    .what = Air openings are added at the eave until they suit the attic.
remedy-balance-vents = One kind of upper vent
    .what = One kind of upper vent stays and the other is closed, with enough air from the eave.

# --- repair: what is fastened to the roof
remedy-reflash-mount = Mount set anew with flashing
    .what = The bracket is bolted into a rafter over a metal plate that is lapped into the row above.
remedy-remove-mount = Mount taken off, holes closed
    .what = The bracket is taken away, and its holes are closed with wood and shingles.
remedy-new-snow-guard = New snow guard
    .what = Snow guards are set into the rows and fastened to the frame.
remedy-remove-and-reset-panels = Panels off and on again
    .what = The panels are taken off by their installer, the roof is laid new, and the panels go back on new mounts.

# --- repair: inside
remedy-find-the-leak = Leak traced and put right
    .what = The place is traced from above and below, with water where needed, and put right where the water gets in.
remedy-duct-outside = Duct led outside
    .what = The duct is led out through a hood of its own.
remedy-lower-damp = Less damp air
    .what = Openings from the rooms into the attic are closed, and fans are led outside.
remedy-stop-heat-loss = Heat kept out of the attic
    .what = Openings from the rooms are closed, insulation is added, and air is led in at the eave.

# --- a new covering
remedy-new-covering-slope = New covering on one slope
    .what = One slope is stripped to the deck, the deck is checked, and sheets, edges, flashings and covering are laid new.
remedy-tear-off = Tear-off and new covering
    .what = Everything is taken off down to the deck, the deck is checked while it is bare, and the whole roof is laid new.
remedy-recover = New covering over the old
    .what = A new covering is laid over the old one, which stays, with all edges and flashings new.
remedy-low-slope-covering = New low-slope covering
    .what = The part is stripped and covered with a sheet made for flat roofs, joined up under the steep roof.

# --- another trade's work
remedy-repoint = Repointing
    .what = A mason cuts out the worn mortar and fills the joints anew.
remedy-rebuild-chimney = Chimney rebuilt
    .what = A mason takes the bad part of the chimney down and builds it again, or sees to its footing.
remedy-new-crown = New chimney crown
    .what = A mason casts a new top with a slope and an overhang.
remedy-reline-flue = Flue inspected and relined
    .what = A licensed trade inspects the flue and puts in a new liner.
remedy-raise-vent = Vent raised
    .what = A licensed trade raises the vent or chimney to the height that its label and the code ask for.
remedy-check-vent = Vent inspected and put right
    .what = A licensed trade looks at the vent and its appliance and puts them right.
remedy-pipe-repair = Plumbing pipe repaired
    .what = A plumber repairs or lengthens the pipe.
remedy-wall-repair = Wall put right
    .what = A siding, stucco or window contractor puts the wall right and clears it from the roof.
remedy-trim-trees = Trees trimmed
    .what = A tree service cuts back what hangs over or touches the roof.
remedy-electrician-work = Electric service put right
    .what = The power company or a licensed electrician makes it safe and puts it right.
remedy-frame-repair = Frame looked at and repaired
    .what = A structural engineer says what is needed, and the frame is repaired.
remedy-test-asbestos = Tested, then handled by license
    .what = A licensed inspector takes a sample. If it holds asbestos, a licensed firm deals with it.
remedy-wildlife-work = Animals led out
    .what = A wildlife service gets the animals out as the law allows. Then the hole is closed.
