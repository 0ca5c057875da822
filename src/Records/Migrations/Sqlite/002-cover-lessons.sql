-- Who teaches a lesson, and in which period: empty where nobody said.
ALTER TABLE lesson ADD COLUMN teacher TEXT NOT NULL DEFAULT '';
ALTER TABLE lesson ADD COLUMN period TEXT NOT NULL DEFAULT '';

-- What a list of lessons asks of all journals at once: which of them were turned into cover lessons before they began.
CREATE INDEX entry_that_turns ON entry (school, lesson_id, number) WHERE kind = 'happening' AND what IN ('began', 'cover');
