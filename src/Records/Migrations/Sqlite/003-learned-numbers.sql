-- What teachers decided on numbers that past lessons taught: the latest decision on a number holds, and all of them stay. The class is
-- empty where a number is for all classes of the school; 'became' is empty where it was taken back.
CREATE TABLE number_decision (
    school TEXT NOT NULL REFERENCES school (name),
    practical_id TEXT NOT NULL,
    practical_version INTEGER NOT NULL,
    class_name TEXT NOT NULL,
    number_id TEXT NOT NULL,
    was TEXT NOT NULL,
    became TEXT NOT NULL,
    rests_on TEXT NOT NULL,
    lessons INTEGER NOT NULL,
    initials TEXT NOT NULL,
    decided_at TEXT NOT NULL,
    PRIMARY KEY (school, practical_id, practical_version, class_name, number_id, decided_at)
) STRICT;
