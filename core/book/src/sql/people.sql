SELECT DISTINCT person.id, person.name
FROM name_word JOIN person ON person.id = name_word.id AND person.place = name_word.place
WHERE name_word.word = ?1
LIMIT ?2
