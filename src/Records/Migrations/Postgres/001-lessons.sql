-- Everything belongs to a school, the first column of every key. Numbers that somebody wrote, times and ids are text, so that
-- they come back as they were.
CREATE TABLE school (
    name text NOT NULL PRIMARY KEY,
    audits bigint NOT NULL
);

CREATE TABLE class (
    school text NOT NULL REFERENCES school (name),
    id text NOT NULL,
    year text NOT NULL,
    name text NOT NULL,
    names_forgotten bigint NOT NULL,
    PRIMARY KEY (school, id),
    UNIQUE (school, year, name)
);

CREATE TABLE member (
    school text NOT NULL,
    class_id text NOT NULL,
    number bigint NOT NULL,
    name text NOT NULL,
    PRIMARY KEY (school, class_id, number),
    FOREIGN KEY (school, class_id) REFERENCES class (school, id)
);

CREATE TABLE balance (
    school text NOT NULL REFERENCES school (name),
    id text NOT NULL,
    letter text NOT NULL,
    label text NOT NULL,
    resolution text NOT NULL,
    PRIMARY KEY (school, id),
    UNIQUE (school, letter)
);

CREATE TABLE balance_check (
    school text NOT NULL,
    id text NOT NULL,
    balance_id text NOT NULL,
    checked_at text NOT NULL,
    weight text NOT NULL,
    shown text NOT NULL,
    checked_by text NOT NULL,
    note text NOT NULL,
    PRIMARY KEY (school, id),
    FOREIGN KEY (school, balance_id) REFERENCES balance (school, id)
);
CREATE INDEX balance_check_of_balance ON balance_check (school, balance_id);

CREATE TABLE lesson (
    school text NOT NULL,
    id text NOT NULL,
    class_id text NOT NULL,
    practical_id text NOT NULL,
    practical_version bigint NOT NULL,
    practical_source text NOT NULL,
    plan text NOT NULL,
    held_on text NOT NULL,
    room text NOT NULL,
    group_count bigint NOT NULL,
    minutes bigint NOT NULL,
    assessed bigint NOT NULL,
    decide_first bigint NOT NULL,
    trial bigint NOT NULL,
    PRIMARY KEY (school, id),
    FOREIGN KEY (school, class_id) REFERENCES class (school, id)
);
CREATE INDEX lesson_of_class ON lesson (school, class_id);
CREATE INDEX lesson_by_day ON lesson (school, held_on);

-- How long a lesson's journal is. Its row is what writers of one lesson wait for, so that numbers have no gaps and no reader
-- sees a number before those below it.
CREATE TABLE journal (
    school text NOT NULL,
    lesson_id text NOT NULL,
    entries bigint NOT NULL,
    PRIMARY KEY (school, lesson_id),
    FOREIGN KEY (school, lesson_id) REFERENCES lesson (school, id)
);

-- What 'value' holds depends on 'kind': a reading's digits, true or false of an observation, words, or marks.
CREATE TABLE entry (
    school text NOT NULL,
    lesson_id text NOT NULL,
    number bigint NOT NULL,
    id text NOT NULL,
    group_number bigint NOT NULL,
    trial bigint NOT NULL,
    member bigint NOT NULL,
    what text NOT NULL,
    kind text NOT NULL,
    value text NOT NULL,
    unit text,
    balance text,
    vessel text,
    out_of text,
    comment text,
    device text NOT NULL,
    typed_at text NOT NULL,
    replaces text,
    reason text,
    received_at text NOT NULL,
    PRIMARY KEY (school, lesson_id, number),
    UNIQUE (school, id),
    FOREIGN KEY (school, lesson_id) REFERENCES journal (school, lesson_id)
);

CREATE TABLE door (
    school text NOT NULL,
    lesson_id text NOT NULL,
    number bigint NOT NULL,
    code text NOT NULL,
    station_code text NOT NULL,
    opened_at text NOT NULL,
    closed_at text,
    PRIMARY KEY (school, lesson_id, number),
    FOREIGN KEY (school, lesson_id) REFERENCES lesson (school, id)
);
CREATE UNIQUE INDEX open_door_code ON door (school, code) WHERE closed_at IS NULL;
CREATE UNIQUE INDEX open_door_station_code ON door (school, station_code) WHERE closed_at IS NULL;

CREATE TABLE signature (
    school text NOT NULL REFERENCES school (name),
    practical_id text NOT NULL,
    practical_version bigint NOT NULL,
    fingerprint text NOT NULL,
    initials text NOT NULL,
    signed_at text NOT NULL,
    PRIMARY KEY (school, practical_id, practical_version, fingerprint, signed_at, initials)
);

CREATE TABLE audit (
    school text NOT NULL REFERENCES school (name),
    number bigint NOT NULL,
    done_at text NOT NULL,
    done_by text NOT NULL,
    what text NOT NULL,
    subject text NOT NULL,
    was text,
    became text,
    PRIMARY KEY (school, number)
);

CREATE TABLE setting (
    school text NOT NULL REFERENCES school (name),
    name text NOT NULL,
    value text NOT NULL,
    secret bigint NOT NULL,
    PRIMARY KEY (school, name)
);

CREATE TABLE web_key (
    school text NOT NULL REFERENCES school (name),
    name text NOT NULL,
    xml text NOT NULL,
    PRIMARY KEY (school, name)
);
