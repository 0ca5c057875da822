-- What teachers decided on numbers that past lessons taught: the latest decision on a number holds, and all of them stay. The class is
-- empty where a number is for all classes of the school; 'became' is empty where it was taken back.
CREATE TABLE number_decision (
    school text NOT NULL REFERENCES school (name),
    practical_id text NOT NULL,
    practical_version bigint NOT NULL,
    class_name text NOT NULL,
    number_id text NOT NULL,
    was text NOT NULL,
    became text NOT NULL,
    rests_on text NOT NULL,
    lessons bigint NOT NULL,
    initials text NOT NULL,
    decided_at text NOT NULL,
    PRIMARY KEY (school, practical_id, practical_version, class_name, number_id, decided_at)
);
