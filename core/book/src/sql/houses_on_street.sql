SELECT id, place, line, town, region, postcode FROM address
WHERE street = ?1
LIMIT ?2
