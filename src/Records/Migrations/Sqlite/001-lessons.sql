-- Everything belongs to a school, the first column of every key. Numbers that somebody wrote, times and ids are text, so that
-- they come back as they were.
CREATE TABLE school (
    name TEXT NOT NULL PRIMARY KEY,
    audits INTEGER NOT NULL
) STRICT;

CREATE TABLE class (
    school TEXT NOT NULL REFERENCES school (name),
    id TEXT NOT NULL,
    year TEXT NOT NULL,
    name TEXT NOT NULL,
    names_forgotten INTEGER NOT NULL,
    PRIMARY KEY (school, id),
    UNIQUE (school, year, name)
) STRICT;

CREATE TABLE member (
    school TEXT NOT NULL,
    class_id TEXT NOT NULL,
    number INTEGER NOT NULL,
    name TEXT NOT NULL,
    PRIMARY KEY (school, class_id, number),
    FOREIGN KEY (school, class_id) REFERENCES class (school, id)
) STRICT;

CREATE TABLE balance (
    school TEXT NOT NULL REFERENCES school (name),
    id TEXT NOT NULL,
    letter TEXT NOT NULL,
    label TEXT NOT NULL,
    resolution TEXT NOT NULL,
    PRIMARY KEY (school, id),
    UNIQUE (school, letter)
) STRICT;

CREATE TABLE balance_check (
    school TEXT NOT NULL,
    id TEXT NOT NULL,
    balance_id TEXT NOT NULL,
    checked_at TEXT NOT NULL,
    weight TEXT NOT NULL,
    shown TEXT NOT NULL,
    checked_by TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (school, id),
    FOREIGN KEY (school, balance_id) REFERENCES balance (school, id)
) STRICT;
CREATE INDEX balance_check_of_balance ON balance_check (school, balance_id);

CREATE TABLE lesson (
    school TEXT NOT NULL,
    id TEXT NOT NULL,
    class_id TEXT NOT NULL,
    practical_id TEXT NOT NULL,
    practical_version INTEGER NOT NULL,
    practical_source TEXT NOT NULL,
    plan TEXT NOT NULL,
    held_on TEXT NOT NULL,
    room TEXT NOT NULL,
    group_count INTEGER NOT NULL,
    minutes INTEGER NOT NULL,
    assessed INTEGER NOT NULL,
    decide_first INTEGER NOT NULL,
    trial INTEGER NOT NULL,
    PRIMARY KEY (school, id),
    FOREIGN KEY (school, class_id) REFERENCES class (school, id)
) STRICT;
CREATE INDEX lesson_of_class ON lesson (school, class_id);
CREATE INDEX lesson_by_day ON lesson (school, held_on);

-- How long a lesson's journal is. Its row is what writers of one lesson wait for, so that numbers have no gaps and no reader
-- sees a number before those below it.
CREATE TABLE journal (
    school TEXT NOT NULL,
    lesson_id TEXT NOT NULL,
    entries INTEGER NOT NULL,
    PRIMARY KEY (school, lesson_id),
    FOREIGN KEY (school, lesson_id) REFERENCES lesson (school, id)
) STRICT;

-- What 'value' holds depends on 'kind': a reading's digits, true or false of an observation, words, or marks.
CREATE TABLE entry (
    school TEXT NOT NULL,
    lesson_id TEXT NOT NULL,
    number INTEGER NOT NULL,
    id TEXT NOT NULL,
    group_number INTEGER NOT NULL,
    trial INTEGER NOT NULL,
    member INTEGER NOT NULL,
    what TEXT NOT NULL,
    kind TEXT NOT NULL,
    value TEXT NOT NULL,
    unit TEXT,
    balance TEXT,
    vessel TEXT,
    out_of TEXT,
    comment TEXT,
    device TEXT NOT NULL,
    typed_at TEXT NOT NULL,
    replaces TEXT,
    reason TEXT,
    received_at TEXT NOT NULL,
    PRIMARY KEY (school, lesson_id, number),
    UNIQUE (school, id),
    FOREIGN KEY (school, lesson_id) REFERENCES journal (school, lesson_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE door (
    school TEXT NOT NULL,
    lesson_id TEXT NOT NULL,
    number INTEGER NOT NULL,
    code TEXT NOT NULL,
    station_code TEXT NOT NULL,
    opened_at TEXT NOT NULL,
    closed_at TEXT,
    PRIMARY KEY (school, lesson_id, number),
    FOREIGN KEY (school, lesson_id) REFERENCES lesson (school, id)
) STRICT;
CREATE UNIQUE INDEX open_door_code ON door (school, code) WHERE closed_at IS NULL;
CREATE UNIQUE INDEX open_door_station_code ON door (school, station_code) WHERE closed_at IS NULL;

CREATE TABLE signature (
    school TEXT NOT NULL REFERENCES school (name),
    practical_id TEXT NOT NULL,
    practical_version INTEGER NOT NULL,
    fingerprint TEXT NOT NULL,
    initials TEXT NOT NULL,
    signed_at TEXT NOT NULL,
    PRIMARY KEY (school, practical_id, practical_version, fingerprint, signed_at, initials)
) STRICT;

CREATE TABLE audit (
    school TEXT NOT NULL REFERENCES school (name),
    number INTEGER NOT NULL,
    done_at TEXT NOT NULL,
    done_by TEXT NOT NULL,
    what TEXT NOT NULL,
    subject TEXT NOT NULL,
    was TEXT,
    became TEXT,
    PRIMARY KEY (school, number)
) STRICT;

CREATE TABLE setting (
    school TEXT NOT NULL REFERENCES school (name),
    name TEXT NOT NULL,
    value TEXT NOT NULL,
    secret INTEGER NOT NULL,
    PRIMARY KEY (school, name)
) STRICT;

CREATE TABLE web_key (
    school TEXT NOT NULL REFERENCES school (name),
    name TEXT NOT NULL,
    xml TEXT NOT NULL,
    PRIMARY KEY (school, name)
) STRICT;
