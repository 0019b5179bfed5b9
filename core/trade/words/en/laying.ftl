### A covering as it is laid.

starter-eaves = along the eaves
starter-eaves-and-rakes = along the eaves and up the rakes

laying-no-size = A piece needs a width, a height, an exposure and a count in the bundle. Put in each of them.
laying-exposure-over-height = The exposure, { $exposure }, is more than the piece is high, { $height }. Put in the exposure printed on the bundle.
laying-joints-meet = With an offset of { $offset } the joints come nearer than { $shortest } to those below, on pieces { $width } wide. Put in another offset.
laying-too-small = The pieces are too small for a roof. Width and exposure are at least 1/2 inch.

plan-line = { $line } { $length }
plan-length = { $length }
plan-pitch = { $pitch }
plan-slope-pitch = { $slope }: { $pitch }
plan-street = street
plan-south = south
plan-stain = stain
plan-water = way of the water
plan-along = { $length } along the eave
laid-plane = Courses: { $courses }. Pieces opened: { $opened }, from offcuts: { $reused }.
laid-roof = Bundles: { $bundles }. Pieces: { $opened }. Cut off: { $waste } %.
