-- How often each defect was recorded on one kind of part, and under one covering where that is given.
SELECT defect, count(*) AS times
FROM defect_seen JOIN part ON part.id = defect_seen.part
WHERE part.part_kind = ?1
  AND (?2 IS NULL OR EXISTS (
    SELECT 1 FROM top_covering WHERE top_covering.structure = part.structure AND top_covering.covering = ?2))
GROUP BY defect
ORDER BY times DESC, defect
