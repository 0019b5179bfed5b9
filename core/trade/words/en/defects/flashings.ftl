# Flashings at walls, chimneys and skylights.

defect-sealant-for-flashing = Sealant in place of flashing
    .what = The gap between roof and wall, chimney or skylight is filled with sealant where bent metal, called flashing, belongs.
    .why = Sealant cracks within a few seasons, because roof and wall move. Metal that overlaps keeps working.
    .water = Water runs down the wall and through the cracks in the sealant to the wood below.
    .photo = The smeared joint along its length, and the worst crack close up.
defect-step-flashing-missing = Step flashing missing
    .what = The small bent metal pieces that belong at each course, where roof meets wall, are not there.
    .why = They carry the water from the wall back onto each shingle. Nothing else does that for long.
    .water = Rain runs down the wall, behind the edge of the shingles and onto the wood.
    .photo = A shingle lifted at the wall that shows no metal, and the whole joint.
defect-head-flashing-short = Head flashing too short
    .what = The metal where the top of the slope meets the wall does not reach far enough up the wall or down over the shingles.
    .why = Water has to be led over the top course. A short piece is overrun in wind and heavy rain.
    .water = Water blows up over the top edge, or creeps back under the lower one.
    .photo = The metal with a tape on it, up the wall and down the roof.
defect-chimney-flashing-rusted = Chimney flashing rusted
    .what = The metal that seals the roof to the chimney is rusted, thin or holed.
    .why = Rust turns to holes. Rusted metal may not be used again under a new covering.
    .water = Water runs through the holes, down beside the chimney and into the attic.
    .photo = The worst rust close up, then the whole side it is on.
defect-kickout-missing = Kick-out missing
    .what = Where the eave ends against a wall, the bent piece that turns the water out into the gutter is not there.
    .why = The water of the whole slope runs down that one spot of the wall. The wall can rot unseen for years.
    .water = Water runs behind the siding at the end of the eave and down inside the wall.
    .photo = The end of the eave at the wall, and any stains on the wall below it.
