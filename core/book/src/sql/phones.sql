SELECT id, number FROM phone WHERE digits >= ?1 AND digits < ?2
UNION
SELECT id, number FROM phone WHERE last_seven >= ?1 AND last_seven < ?2
UNION
SELECT id, number FROM phone WHERE last_seven = ?3
UNION
SELECT id, number FROM phone WHERE backwards >= ?4 AND backwards < ?5
LIMIT ?6
