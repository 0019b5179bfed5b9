SELECT id, place, line, town, region, postcode FROM address
WHERE key >= ?1 AND key < ?2
ORDER BY key
LIMIT ?3
