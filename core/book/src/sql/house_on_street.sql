SELECT id, place, line, town, region, postcode FROM address
WHERE street = ?1 AND house >= ?2 AND house < ?3
ORDER BY house
LIMIT ?4
