SELECT kind, id, value, born_time, born_device FROM record
WHERE property = ?1
ORDER BY born_time, born_device
