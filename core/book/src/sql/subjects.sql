-- Everything that any line is about.
SELECT DISTINCT kind, subject FROM ink
