-- The content that one property uses and no other.
SELECT DISTINCT sha256 FROM content_use AS ours
WHERE property = ?1
  AND NOT EXISTS (SELECT 1 FROM content_use AS theirs WHERE theirs.sha256 = ours.sha256 AND theirs.property <> ?1)
