SELECT id, latitude, longitude FROM position
WHERE north >= ?1 AND south <= ?2 AND east >= ?3 AND west <= ?4
