SELECT id, place, line, town, region, postcode FROM address
WHERE street >= ?1 AND street < ?2
ORDER BY street
LIMIT ?3
