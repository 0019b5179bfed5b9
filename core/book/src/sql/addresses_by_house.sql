SELECT id, place, line, town, region, postcode FROM address
WHERE house >= ?1 AND house < ?2
ORDER BY house
LIMIT ?3
