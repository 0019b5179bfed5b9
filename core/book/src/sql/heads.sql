-- The lines of a subject whose place no other line has taken.
SELECT time, device FROM ink
WHERE subject = ?1 AND kind = ?2
  AND NOT EXISTS (SELECT 1 FROM supersedes WHERE older_time = ink.time AND older_device = ink.device)
ORDER BY time, device
