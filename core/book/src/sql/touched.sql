-- Properties in the order in which something was last recorded of them.
SELECT property FROM ink WHERE property IS NOT NULL ORDER BY time DESC, device DESC
