-- The latest line of a visit that is no undoing and was not undone; an undoing that was undone itself does not count.
SELECT time, device FROM ink
WHERE visit = ?1 AND undoes_time IS NULL
  AND NOT EXISTS (
    SELECT 1 FROM ink AS undoing
    WHERE undoing.undoes_time = ink.time AND undoing.undoes_device = ink.device
      AND NOT EXISTS (
        SELECT 1 FROM ink AS redoing
        WHERE redoing.undoes_time = undoing.time AND redoing.undoes_device = undoing.device))
ORDER BY time DESC, device DESC
LIMIT 1
