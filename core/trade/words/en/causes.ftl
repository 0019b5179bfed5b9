# The cause behind defects, as a phrase that stands in a sentence: "the cause is …".

# --- age and weather
cause-weathering = a covering worn out by sun and weather
cause-part-worn = a part that has worn out
cause-wind = wind damage
cause-hail = hail damage
cause-blistering = blisters in the shingles
cause-broken = breakage
cause-tile-or-slate-broken = broken slate or tile
cause-rot = rot
cause-ridge-mortar = mortar that has broken under the ridge tiles
cause-metal-moves = metal that moves with heat and cold
cause-paint-failed = paint that no longer protects the wood

# --- fastening
cause-nailing = shingles nailed wrongly
cause-nails-backed-out = nails that have backed out
cause-nails-corroded = rusted nails
cause-nails-in-the-weather = nails where water runs
cause-screw-washers-perished = screws whose rubber rings have perished
cause-seal-not-bonded = shingles that are not glued down
cause-fixing-failed = slates or tiles whose nails or hooks have failed
cause-fastening-let-go = a fastening that has let go

# --- laying
cause-laid-wrong = shingles laid wrongly
cause-does-not-lap = a lap that leads water in
cause-edge-reach = shingles that end too short or reach too far
cause-edge-metal-missing = an edge without its metal
cause-starter = a starter course that is missing or laid wrongly
cause-heights-differ = sections of different height
cause-slope-too-low = a slope too low for its covering
cause-coated-over = a coating over the shingles
cause-smeared-over = roof cement smeared over a fault
cause-layers = layers laid over one another
cause-part-missing = a part that is missing
cause-stopgap-left = a stopgap that was left in place
cause-leftovers = things left from earlier work
cause-holes-left = holes left open

# --- deck and sheets
cause-deck-wet = water in the deck
cause-water-once = water that came in at some time
cause-water-comes-in = water that comes in from somewhere above
cause-deck-unfit = a deck that does not suit its covering
cause-base-moves = a base that has moved
cause-membrane-left-bare = a sheet left open to the weather
cause-membrane-single = one sheet where two are needed
cause-ice-barrier = an ice barrier that is missing or too short
cause-ice-dams = ice that builds up at the eave
cause-no-fall = water that cannot run off

# --- growth and leaves
cause-shade-and-damp = shade and damp
cause-debris = leaves and dirt
cause-leaf-fall = trees over the roof
cause-branches = branches over the roof
cause-animals = animals

# --- gutters
cause-gutter-joint = a gutter joint that is open
cause-gutter-hangs-wrong = a gutter that hangs wrongly
cause-gutter-size = a gutter too small for its roof
cause-gutter-cover = a gutter cover that lifts the shingles
cause-downspout-outlet = a downspout that lets its water out in the wrong place

# --- valleys
cause-valley-worn = a valley lining that has worn out
cause-valley-laid-wrong = a valley laid wrongly

# --- pipes and vents
cause-boot-perished = a pipe collar dried out by the sun
cause-boot-fit = a boot that does not fit its pipe
cause-vent-height = a vent or chimney that ends too low
cause-vent-corroded = a vent that rusts
cause-vent-collar = an open rain collar
cause-vent-clearance = a hot vent too close to wood
cause-vent-kind = a vent of the wrong kind
cause-vent-unused = a vent that is no longer used
cause-vent-blocked = a blocked vent

# --- chimneys
cause-masonry-weathered = mortar worn away by the weather
cause-masonry-soaked = brick that takes in water
cause-crown-cracked = a cracked chimney crown
cause-chimney-cap = a flue without a firm cap
cause-chimney-foot = a chimney that no longer stands firm
cause-flue-liner = a damaged flue liner
cause-chase-cover = a chimney cover that leaks or holds water

# --- flashings and walls
cause-flashing-worn = flashing that has worn out
cause-flashing-missing = flashing that is missing
cause-sealant-in-place-of-flashing = sealant in place of flashing
cause-sealant-line-aged = a line of sealant due for renewal
cause-counter-flashing = an upper flashing that does not cover the lower one
cause-kickout = water that is not turned out at the end of the eave
cause-cricket = a chimney without a proper cricket
cause-wall-over-flashing = a wall closed down over its flashing
cause-siding-on-roof = siding that touches the roof
cause-wall-lets-water-in = a wall that lets water in

# --- skylights
cause-skylight-set-wrong = a skylight set wrongly into the roof
cause-weeps-closed = skylight drain slots that are closed

# --- low slopes
cause-seam-open = an open seam
cause-low-slope-blisters = air or damp under the roof sheet
cause-low-slope-edge = a flat roof's edge that is loose or open

# --- air
cause-air-in = too little air from below
cause-air-out = too little air out at the top
cause-air-path-clogged = a clogged air path
cause-air-short-circuit = vents that draw from one another
cause-intake-closed = air openings at the eave that are closed
cause-damp-air = damp air from the house
cause-duct-ends-inside = a duct that ends in the attic
cause-vent-blows-in = a vent that lets wind blow rain or snow in
cause-openings-at-soffit = openings at the soffit

# --- what is fastened to the roof
cause-cables-loose = cables lying loose
cause-panels-outlive-roof = panels on a roof with fewer years left than theirs
cause-solar-wiring = damaged wiring

# --- frame, service, hazards
cause-frame-gives-way = a frame that gives way
cause-service-line = the electric service
cause-suspect-fibers = material that may hold asbestos
cause-suspect-vermiculite = insulation that may be vermiculite
