CREATE TABLE audit (
    school text NOT NULL,
    number bigint NOT NULL,
    done_at text NOT NULL,
    done_by text NOT NULL,
    what text NOT NULL,
    subject text NOT NULL,
    was text,
    became text
);

CREATE TABLE balance (
    school text NOT NULL,
    id text NOT NULL,
    letter text NOT NULL,
    label text NOT NULL,
    resolution text NOT NULL
);

CREATE TABLE balance_check (
    school text NOT NULL,
    id text NOT NULL,
    balance_id text NOT NULL,
    checked_at text NOT NULL,
    weight text NOT NULL,
    shown text NOT NULL,
    checked_by text NOT NULL,
    note text NOT NULL
);

CREATE TABLE class (
    school text NOT NULL,
    id text NOT NULL,
    year text NOT NULL,
    name text NOT NULL,
    names_forgotten bigint NOT NULL
);

CREATE TABLE door (
    school text NOT NULL,
    lesson_id text NOT NULL,
    number bigint NOT NULL,
    code text NOT NULL,
    station_code text NOT NULL,
    opened_at text NOT NULL,
    closed_at text
);

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
    received_at text NOT NULL
);

CREATE TABLE journal (
    school text NOT NULL,
    lesson_id text NOT NULL,
    entries bigint NOT NULL
);

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
    trial bigint NOT NULL
);

CREATE TABLE member (
    school text NOT NULL,
    class_id text NOT NULL,
    number bigint NOT NULL,
    name text NOT NULL
);

CREATE TABLE migration (
    number bigint NOT NULL,
    name text NOT NULL,
    done_at text NOT NULL
);

CREATE TABLE school (
    name text NOT NULL,
    audits bigint NOT NULL
);

CREATE TABLE setting (
    school text NOT NULL,
    name text NOT NULL,
    value text NOT NULL,
    secret bigint NOT NULL
);

CREATE TABLE signature (
    school text NOT NULL,
    practical_id text NOT NULL,
    practical_version bigint NOT NULL,
    fingerprint text NOT NULL,
    initials text NOT NULL,
    signed_at text NOT NULL
);

CREATE TABLE web_key (
    school text NOT NULL,
    name text NOT NULL,
    xml text NOT NULL
);

INSERT INTO audit VALUES ('Larkmoor School', 1, '2026-03-04T12:00:02.0000000+00:00', 'the teacher', 'archive-taken-in', 'records', NULL, '171 added, 0 known, 0 refused');
INSERT INTO audit VALUES ('Larkmoor School', 2, '2026-03-04T12:00:03.0000000+00:00', 'the teacher', 'class-added', 'class 9f0000000001', NULL, '{"id":"9f0000000001","year":"2025/26","name":"9F set 2","namesForgotten":false}');
INSERT INTO audit VALUES ('Larkmoor School', 3, '2026-03-04T12:00:04.0000000+00:00', 'the teacher', 'balance-added', 'balance 9f0000000003', NULL, '{"id":"9f0000000003","letter":"Q","label":"by the window","resolution":"0.01"}');
INSERT INTO audit VALUES ('Larkmoor School', 4, '2026-03-04T12:00:05.0000000+00:00', 'the teacher', 'lesson-added', 'lesson 9f0000000002', NULL, '{"id":"9f0000000002","classId":"9f0000000001","practicalId":"magnesium-oxide","practicalVersion":1,"date":"2026-03-04","room":"Lab 2","groups":12,"minutes":60,"assessed":false,"decideFirst":true,"trial":false}');
INSERT INTO audit VALUES ('Larkmoor School', 5, '2026-03-04T12:00:06.0000000+00:00', 'the teacher', 'member-put', 'member 9f0000000001/1', NULL, '{"classId":"9f0000000001","number":1,"name":"Ode"}');
INSERT INTO audit VALUES ('Larkmoor School', 6, '2026-03-04T12:00:07.0000000+00:00', 'the teacher', 'member-put', 'member 9f0000000001/1', '{"name":"Ode"}', '{"name":"Odette"}');
INSERT INTO audit VALUES ('Larkmoor School', 7, '2026-03-04T12:00:08.0000000+00:00', 'the teacher', 'balance-checked', 'balance 9f0000000003', NULL, '{"id":"9f0000000004","balanceId":"9f0000000003","at":"2026-03-04T12:00:00.0000000\u002B00:00","weight":"50.00","shown":"50.01","by":"technician","note":"after moving it"}');
INSERT INTO audit VALUES ('Larkmoor School', 8, '2026-03-04T12:00:09.0000000+00:00', 'the teacher', 'signed', 'practical magnesium-oxide', NULL, '{"practicalId":"magnesium-oxide","practicalVersion":1,"fingerprint":"0.30 g","initials":"LM","at":"2026-03-04T12:00:00.0000000\u002B00:00"}');
INSERT INTO audit VALUES ('Larkmoor School', 9, '2026-03-04T12:00:22.0000000+00:00', 'the teacher', 'door-opened', 'lesson 9f0000000002', NULL, NULL);
INSERT INTO audit VALUES ('Larkmoor School', 10, '2026-03-04T12:00:24.0000000+00:00', 'the teacher', 'door-closed', 'lesson 9f0000000002', NULL, NULL);
INSERT INTO audit VALUES ('Larkmoor School', 11, '2026-03-04T12:00:26.0000000+00:00', 'the teacher', 'door-opened', 'lesson 9f0000000002', NULL, NULL);
INSERT INTO audit VALUES ('Larkmoor School', 12, '2026-03-04T12:00:27.0000000+00:00', 'the teacher', 'setting-put', 'setting school-name', NULL, 'Larkmoor School');
INSERT INTO audit VALUES ('Larkmoor School', 13, '2026-03-04T12:00:28.0000000+00:00', 'the teacher', 'setting-put', 'setting passphrase', NULL, NULL);
INSERT INTO audit VALUES ('Larkmoor School', 14, '2026-03-04T12:00:29.0000000+00:00', 'program', 'web-key-added', 'web-key key-1', NULL, NULL);

INSERT INTO balance VALUES ('Larkmoor School', '3xem69b69633', 'B', 'two decimals, by the door', '0.01');
INSERT INTO balance VALUES ('Larkmoor School', '4hkvb7nqf7bh', 'A', 'two decimals, by the window', '0.01');
INSERT INTO balance VALUES ('Larkmoor School', '9f0000000003', 'Q', 'by the window', '0.01');

INSERT INTO balance_check VALUES ('Larkmoor School', '5sfjby3cr5kf', '3xem69b69633', '2025-01-26T00:19:36.1147938+00:00', '50.00', '50.00', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'kyt3m6tqvbqr', '3xem69b69633', '2025-05-26T00:19:36.1147938+00:00', '50.00', '50.00', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'jjehxjqgn665', '3xem69b69633', '2025-09-26T00:19:36.1147938+00:00', '50.00', '50.01', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'rsmf3mk4ckfv', '3xem69b69633', '2026-01-26T00:19:36.1147938+00:00', '50.00', '50.01', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'fghsj3yphh7d', '3xem69b69633', '2026-05-26T00:19:36.1147938+00:00', '50.00', '50.02', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'rz95ec7mk3v8', '3xem69b69633', '2026-09-26T00:19:36.1147938+00:00', '50.00', '50.02', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', '8wmn62rracnh', '4hkvb7nqf7bh', '2025-01-26T00:19:36.1147938+00:00', '50.00', '50.00', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'x4ycn4mz736t', '4hkvb7nqf7bh', '2025-05-26T00:19:36.1147938+00:00', '50.00', '50.00', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'xf3dx4n1jxm7', '4hkvb7nqf7bh', '2025-09-26T00:19:36.1147938+00:00', '50.00', '50.01', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'nwec82yncrt7', '4hkvb7nqf7bh', '2026-01-26T00:19:36.1147938+00:00', '50.00', '50.00', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'cjav1k10a96c', '4hkvb7nqf7bh', '2026-05-26T00:19:36.1147938+00:00', '50.00', '50.00', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', 'fe0t4t0cm8kn', '4hkvb7nqf7bh', '2026-09-26T00:19:36.1147938+00:00', '50.00', '49.99', 'technician', '');
INSERT INTO balance_check VALUES ('Larkmoor School', '9f0000000004', '9f0000000003', '2026-03-04T12:00:00.0000000+00:00', '50.00', '50.01', 'technician', 'after moving it');

INSERT INTO class VALUES ('Larkmoor School', 'qm8ap7ah40vb', '2024/25', '9C', 0);
INSERT INTO class VALUES ('Larkmoor School', '9f0000000001', '2025/26', '9F set 2', 0);

INSERT INTO door VALUES ('Larkmoor School', '9f0000000002', 1, 'RJHSPS', 'ZFKZBJZN', '2026-03-04T12:00:21.0000000+00:00', '2026-03-04T12:00:23.0000000+00:00');
INSERT INTO door VALUES ('Larkmoor School', '9f0000000002', 2, 'DCHHZS', 'TFFBFSZN', '2026-03-04T12:00:25.0000000+00:00', NULL);

INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 1, 'f967244a5e340d99b80237e4e25ebf9f', 0, 1, 0, 'began', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:19:36.1147938+00:00', NULL, NULL, '2024-12-05T00:19:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 2, 'c53087529dbe982d84e4fab73eec5973', 0, 1, 1, 'seat', 'happening', '1', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 3, 'c4885fbba504cd4c4a8c9267ab0bb56c', 0, 1, 2, 'seat', 'happening', '1', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 4, '5d3d4cc48ce083a27307537bd991395a', 0, 1, 3, 'seat', 'happening', '2', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 5, '123695c5a111f66c44b0caabb9c51679', 0, 1, 4, 'seat', 'happening', '2', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 6, '22f1da8ef71b9ffe0fe7d89f6c7e5cd7', 0, 1, 5, 'seat', 'happening', '3', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 7, 'a1be9cfabf7e6eb402d8bea61bc6470e', 0, 1, 6, 'seat', 'happening', '3', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 8, '8c05748b724fa5ebe3078e199ba9bb0f', 0, 1, 7, 'seat', 'happening', '4', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 9, '5494d6927a395333ce804e3b30475e57', 0, 1, 8, 'seat', 'happening', '4', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 10, '1d95202038e530eca30127c365630d66', 0, 1, 9, 'seat', 'happening', '5', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 11, '86d7e2cb96b462b249f270d295da49ff', 0, 1, 10, 'seat', 'happening', '5', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 12, '96cc485c4093951caf60a0d54c80d6bd', 0, 1, 11, 'seat', 'happening', '6', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 13, '5bec4f68840dd2897e86d4b09a10dd5a', 0, 1, 12, 'seat', 'happening', '6', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 14, '9f0763b99e13ee6a8b35fcf8d4287e21', 0, 1, 13, 'seat', 'happening', '7', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 15, 'd5c6e60b3712050cacf86bf0d563106d', 0, 1, 14, 'seat', 'happening', '7', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 16, '926eea6c46cbad0d5ba72803b3ec576e', 0, 1, 15, 'seat', 'happening', '8', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 17, 'a2c16b661d901ea9c88076f574dbabbf', 0, 1, 16, 'seat', 'happening', '8', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 18, '17bdad5e673ec58b4a53283f1fa0f9de', 0, 1, 17, 'seat', 'happening', '9', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 19, '864fcb7b15bbaf35d4a29ac47ebcdb0e', 0, 1, 18, 'seat', 'happening', '9', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 20, '7488113464c9f3755ba4485bb986b4ae', 0, 1, 19, 'seat', 'happening', '10', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 21, '6b8fd3f0071a0fc7d79e07df329b9c75', 0, 1, 20, 'seat', 'happening', '10', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 22, '131d9c52950216438833fb4ce1f56c05', 0, 1, 21, 'seat', 'happening', '11', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 23, 'd68cf17095c2b03aceb82f5ae123b18d', 0, 1, 22, 'seat', 'happening', '11', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 24, 'a1c26103dca7a4a7ede35a4af65a662b', 0, 1, 23, 'seat', 'happening', '12', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 25, '94c0383f742aa1bff93908fa1288ab42', 0, 1, 24, 'seat', 'happening', '12', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T00:20:06.1147938+00:00', NULL, NULL, '2024-12-05T00:20:06.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 26, '75e4ce54ecc17ef340e1a01806b973f0', 0, 1, 0, 'work-began', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo0', '2024-12-05T00:21:58.7623128+00:00', NULL, NULL, '2024-12-05T00:21:58.7623128+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 27, '65df4640cb7f2a11eac755ccad792154', 3, 1, 0, 'empty', 'reading', '24.36', 'g', 'A', '3', NULL, NULL, 'd-demo3', '2024-12-05T00:26:14.5581572+00:00', NULL, NULL, '2024-12-05T00:26:14.5581572+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 28, '4fe6bccbdca6fc2eb89d853b16006819', 12, 1, 0, 'empty', 'reading', '25.74', 'g', 'B', '12', NULL, NULL, 'd-demo12', '2024-12-05T00:26:24.1456649+00:00', NULL, NULL, '2024-12-05T00:26:24.1456649+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 29, '22de54eb3509717e2ac16f745796f397', 12, 1, 0, 'before', 'reading', '25.93', 'g', 'B', '12', NULL, NULL, 'd-demo12', '2024-12-05T00:26:55.8362098+00:00', NULL, NULL, '2024-12-05T00:26:55.8362098+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 30, 'fe64ba4df11bf9ba4a40862bea4c474a', 3, 1, 0, 'before', 'reading', '24.55', 'g', 'A', '3', NULL, NULL, 'd-demo3', '2024-12-05T00:27:17.3957062+00:00', NULL, NULL, '2024-12-05T00:27:17.3957062+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 31, '1f6112dc13678f0ed56c50f68605fb01', 12, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo12', '2024-12-05T00:27:36.6667717+00:00', NULL, NULL, '2024-12-05T00:27:36.6667717+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 32, '71e300baa59824aae8f5c5934046f127', 7, 1, 0, 'empty', 'reading', '21.35', 'g', 'A', '7', NULL, NULL, 'd-demo7', '2024-12-05T00:27:43.2568511+00:00', NULL, NULL, '2024-12-05T00:27:43.2568511+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 33, '8d84004b8835812ba3806174f056ce5e', 3, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo3', '2024-12-05T00:27:57.2837700+00:00', NULL, NULL, '2024-12-05T00:27:57.2837700+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 34, '2c79fee2326c3611855fa9e21c66c106', 8, 1, 0, 'empty', 'reading', '27.71', 'g', 'B', '8', NULL, NULL, 'd-demo8', '2024-12-05T00:28:06.2423664+00:00', NULL, NULL, '2024-12-05T00:28:06.2423664+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 35, '95bd0129daead74e66661b8448ddd6b2', 7, 1, 0, 'before', 'reading', '21.53', 'g', 'A', '7', NULL, NULL, 'd-demo7', '2024-12-05T00:28:26.2900024+00:00', NULL, NULL, '2024-12-05T00:28:26.2900024+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 36, 'e8b3f2de6d00358e8145cc9ae554ccb2', 8, 1, 0, 'before', 'reading', '27.92', 'g', 'B', '8', NULL, NULL, 'd-demo8', '2024-12-05T00:28:50.7443855+00:00', NULL, NULL, '2024-12-05T00:28:50.7443855+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 37, '542a285f8c3ebb82451bbcb3ad803942', 7, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T00:28:56.4347510+00:00', NULL, NULL, '2024-12-05T00:28:56.4347510+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 38, 'e92546f7852c056fba3879cf17c769d6', 8, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T00:29:40.3608694+00:00', NULL, NULL, '2024-12-05T00:29:40.3608694+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 39, 'b5e71cc76325eb34d833a2a66d7e7162', 10, 1, 0, 'empty', 'reading', '25.39', 'g', 'B', '10', NULL, NULL, 'd-demo10', '2024-12-05T00:29:48.0367425+00:00', NULL, NULL, '2024-12-05T00:29:48.0367425+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 40, 'f710e6ac1a15348932726a1cbd3eaabd', 5, 1, 0, 'empty', 'reading', '29.69', 'g', 'A', '5', NULL, NULL, 'd-demo5', '2024-12-05T00:30:05.3727342+00:00', NULL, NULL, '2024-12-05T00:30:05.3727342+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 41, '4b3ac2e746fd78c7a90ba6c49c4163ed', 10, 1, 0, 'before', 'reading', '25.63', 'g', 'B', '10', NULL, NULL, 'd-demo10', '2024-12-05T00:30:37.4503002+00:00', NULL, NULL, '2024-12-05T00:30:37.4503002+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 42, '3e362ca4cd81a7de7c38f15087c48869', 5, 1, 0, 'before', 'reading', '29.94', 'g', 'A', '5', NULL, NULL, 'd-demo5', '2024-12-05T00:30:41.5939974+00:00', NULL, NULL, '2024-12-05T00:30:41.5939974+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 43, '31f34fd32a0b476c7c2c5cde66526a14', 10, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T00:31:04.7417613+00:00', NULL, NULL, '2024-12-05T00:31:04.7417613+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 44, 'c91415aaa56c468f0ccbaf428ce990b5', 2, 1, 0, 'empty', 'reading', '28.82', 'g', 'B', '2', NULL, NULL, 'd-demo2', '2024-12-05T00:31:07.6265395+00:00', NULL, NULL, '2024-12-05T00:31:07.6265395+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 45, '76e2ab4a4a47747d26ca7dcc77fee52a', 6, 1, 0, 'empty', 'reading', '32.08', 'g', 'B', '6', NULL, NULL, 'd-demo6', '2024-12-05T00:31:16.2570912+00:00', NULL, NULL, '2024-12-05T00:31:16.2570912+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 46, 'd8cd94fba032a6f655de9787f19cdbc1', 5, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo5', '2024-12-05T00:31:41.6333839+00:00', NULL, NULL, '2024-12-05T00:31:41.6333839+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 47, '7c6f05b2ce263cc046897715628b64d5', 6, 1, 0, 'before', 'reading', '32.32', 'g', 'B', '6', NULL, NULL, 'd-demo6', '2024-12-05T00:31:53.3761327+00:00', NULL, NULL, '2024-12-05T00:31:53.3761327+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 48, '2747faa9028a7e502b0cce6abfb89707', 2, 1, 0, 'before', 'reading', '29.07', 'g', 'B', '2', NULL, NULL, 'd-demo2', '2024-12-05T00:31:55.9014653+00:00', NULL, NULL, '2024-12-05T00:31:55.9014653+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 49, '5f27ef3e56d598503759b42941361944', 11, 1, 0, 'empty', 'reading', '24.58', 'g', 'A', '11', NULL, NULL, 'd-demo11', '2024-12-05T00:32:33.8821625+00:00', NULL, NULL, '2024-12-05T00:32:33.8821625+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 50, '08a9411303fa12aa1b0aa5bb8038f550', 6, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo6', '2024-12-05T00:32:40.7035278+00:00', NULL, NULL, '2024-12-05T00:32:40.7035278+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 51, '991b905c7f240609868f2bac665e5d27', 1, 1, 0, 'empty', 'reading', '34.26', 'g', 'A', '1', NULL, NULL, 'd-demo1', '2024-12-05T00:33:02.0727787+00:00', NULL, NULL, '2024-12-05T00:33:02.0727787+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 52, '878ade74dd8636e26596bff03528e99e', 2, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo2', '2024-12-05T00:33:23.0224480+00:00', NULL, NULL, '2024-12-05T00:33:23.0224480+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 53, '5abbf0cae2afa11929195e358ac716f8', 11, 1, 0, 'before', 'reading', '24.77', 'g', 'A', '11', NULL, NULL, 'd-demo11', '2024-12-05T00:33:24.2869336+00:00', NULL, NULL, '2024-12-05T00:33:24.2869336+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 54, '0771493b5df60765be3c6909657a5c13', 9, 1, 0, 'empty', 'reading', '32.55', 'g', 'A', '9', NULL, NULL, 'd-demo9', '2024-12-05T00:34:14.6285432+00:00', NULL, NULL, '2024-12-05T00:34:14.6285432+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 55, 'd715a58f970912bda63b9b40d54e872d', 11, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T00:34:15.8742554+00:00', NULL, NULL, '2024-12-05T00:34:15.8742554+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 56, '6e1384693b9f8ba5d90ebe5426b751be', 1, 1, 0, 'before', 'reading', '34.53', 'g', 'A', '1', NULL, NULL, 'd-demo1', '2024-12-05T00:34:28.8530732+00:00', NULL, NULL, '2024-12-05T00:34:28.8530732+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 57, '36db70904e0f24752559f07d5344dc63', 9, 1, 0, 'before', 'reading', '32.83', 'g', 'A', '9', NULL, NULL, 'd-demo9', '2024-12-05T00:35:08.9946113+00:00', NULL, NULL, '2024-12-05T00:35:08.9946113+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 58, '23b03b1c0dd45f0f9a08262be179304f', 4, 1, 0, 'empty', 'reading', '31.53', 'g', 'B', '4', NULL, NULL, 'd-demo4', '2024-12-05T00:35:10.3667565+00:00', NULL, NULL, '2024-12-05T00:35:10.3667565+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 59, '9a6165c65c02c5f672fc4bfb6ca1e4a0', 1, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo1', '2024-12-05T00:35:10.7292493+00:00', NULL, NULL, '2024-12-05T00:35:10.7292493+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 60, 'e2134b2456a789be4fa4f6ee979eceb6', 9, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo9', '2024-12-05T00:35:58.1760473+00:00', NULL, NULL, '2024-12-05T00:35:58.1760473+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 61, '6bcbaf690ec47e44dac5d96be1d776f6', 4, 1, 0, 'before', 'reading', '31.82', 'g', 'B', '4', NULL, NULL, 'd-demo4', '2024-12-05T00:36:26.4795523+00:00', NULL, NULL, '2024-12-05T00:36:26.4795523+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 62, 'c15909219b8c82a9bceb740b1246beae', 4, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo4', '2024-12-05T00:37:15.8163408+00:00', NULL, NULL, '2024-12-05T00:37:15.8163408+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 63, '84fad742461b40e7f2c8975c89286eef', 7, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T00:43:08.3696390+00:00', NULL, NULL, '2024-12-05T00:43:08.3696390+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 64, '9ab61dbc9ced7bbd3cc376b0dcc73f5f', 3, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo3', '2024-12-05T00:43:12.7817729+00:00', NULL, NULL, '2024-12-05T00:43:12.7817729+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 65, '46c4cd17376a98e2c3891c96792baf30', 3, 1, 0, 'smoke-seen', 'observation', 'true', NULL, NULL, NULL, NULL, NULL, 'd-demo3', '2024-12-05T00:45:36.1147938+00:00', NULL, NULL, '2024-12-05T00:45:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 66, 'c8a420ba1715552e3ca44c91fded1075', 12, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo12', '2024-12-05T00:46:16.6102091+00:00', NULL, NULL, '2024-12-05T00:46:16.6102091+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 67, '45f5652fcb86b9ad760ca7d975dc0698', 8, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T00:46:29.9246185+00:00', NULL, NULL, '2024-12-05T00:46:29.9246185+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 68, 'c676823ffc7e54e707dcf99c4591315d', 6, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo6', '2024-12-05T00:46:32.0537994+00:00', NULL, NULL, '2024-12-05T00:46:32.0537994+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 69, '95c3a83ea611c54294000301b0d67fa5', 9, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo9', '2024-12-05T00:48:56.4485690+00:00', NULL, NULL, '2024-12-05T00:48:56.4485690+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 70, '07973b132f60f28b2510c47adf79e3f3', 5, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo5', '2024-12-05T00:49:09.0182008+00:00', NULL, NULL, '2024-12-05T00:49:09.0182008+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 71, '0fa034d92c71ae86d3f65e540d7bf18e', 2, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo2', '2024-12-05T00:49:19.6207408+00:00', NULL, NULL, '2024-12-05T00:49:19.6207408+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 72, 'c54302cac27f280de258aea5b87bd178', 8, 1, 0, 'grey-specks', 'observation', 'true', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T00:50:36.1147938+00:00', NULL, NULL, '2024-12-05T00:50:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 73, 'd622de81005b60d973f68ac2b90697fc', 10, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T00:51:49.4449463+00:00', NULL, NULL, '2024-12-05T00:51:49.4449463+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 74, 'b296ab1a92dec45d4146d2468b359c2e', 5, 1, 0, 'dull-ribbon', 'observation', 'true', NULL, NULL, NULL, NULL, NULL, 'd-demo5', '2024-12-05T00:52:36.1147938+00:00', NULL, NULL, '2024-12-05T00:52:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 75, '2d2e17afcf780b0e66f77994941a0b75', 11, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T00:53:07.8900898+00:00', NULL, NULL, '2024-12-05T00:53:07.8900898+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 76, 'fede29ffa8805c8c376cc3f4c48de4a9', 1, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo1', '2024-12-05T00:54:47.6520441+00:00', NULL, NULL, '2024-12-05T00:54:47.6520441+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 77, 'd41c4ab960c9386e2c8fa659a5e3b08c', 4, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo4', '2024-12-05T00:55:00.6221315+00:00', NULL, NULL, '2024-12-05T00:55:00.6221315+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 78, '2c208322a8d5210d182e2a74a21d4f6c', 3, 1, 0, 'after', 'reading', '24.65', 'g', 'A', '3', NULL, NULL, 'd-demo3', '2024-12-05T00:55:57.9767701+00:00', NULL, NULL, '2024-12-05T00:55:57.9767701+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 79, '137a2b678ee695a7e90fc5028ee76104', 3, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo3', '2024-12-05T00:56:03.9767701+00:00', NULL, NULL, '2024-12-05T00:56:03.9767701+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 80, 'a2c8aee400caded86a80c3532da554f2', 3, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo3', '2024-12-05T00:56:09.9767701+00:00', NULL, NULL, '2024-12-05T00:56:09.9767701+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 81, '4e8e8395ede7dddabe97ae58c0b70cd7', 7, 1, 0, 'after', 'reading', '21.63', 'g', 'A', '7', NULL, NULL, 'd-demo7', '2024-12-05T00:56:50.3885609+00:00', NULL, NULL, '2024-12-05T00:56:50.3885609+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 82, '91104b3e6f9bbf6ab8daf8ef85cf2fd7', 7, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T00:56:56.3885609+00:00', NULL, NULL, '2024-12-05T00:56:56.3885609+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 83, 'd7236a2e015148a8f181d7118ee908d6', 7, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T00:57:02.3885609+00:00', NULL, NULL, '2024-12-05T00:57:02.3885609+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 84, 'a7ce4c7cc8ff808be02e1c40d658e7c6', 12, 1, 0, 'after', 'reading', '26.00', 'g', 'B', '12', NULL, NULL, 'd-demo12', '2024-12-05T00:59:30.5689167+00:00', NULL, NULL, '2024-12-05T00:59:30.5689167+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 85, '2183da4656754bd6f368a53542f2656a', 12, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo12', '2024-12-05T00:59:36.5689167+00:00', NULL, NULL, '2024-12-05T00:59:36.5689167+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 86, 'da67d440d9b082ca1dea1e8156213b43', 12, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo12', '2024-12-05T00:59:42.5689167+00:00', NULL, NULL, '2024-12-05T00:59:42.5689167+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 87, '684d58a21c96f358ad68ca5745368fb9', 9, 1, 0, 'after', 'reading', '32.85', 'g', 'A', '9', NULL, NULL, 'd-demo9', '2024-12-05T01:00:05.8944124+00:00', NULL, NULL, '2024-12-05T01:00:05.8944124+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 88, '0627dfb386db6988e61a1f280532578d', 9, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo9', '2024-12-05T01:00:11.8944124+00:00', NULL, NULL, '2024-12-05T01:00:11.8944124+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 89, '61410929f953490e975616209083d30d', 9, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo9', '2024-12-05T01:00:17.8944124+00:00', NULL, NULL, '2024-12-05T01:00:17.8944124+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 90, '172592e21b390a74170492465cf9f8a6', 6, 1, 0, 'after', 'reading', '32.44', 'g', 'B', '6', NULL, NULL, 'd-demo6', '2024-12-05T01:00:22.5378929+00:00', NULL, NULL, '2024-12-05T01:00:22.5378929+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 91, '2380d98afdd4ea73560fe47c13551c2f', 6, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo6', '2024-12-05T01:00:28.5378929+00:00', NULL, NULL, '2024-12-05T01:00:28.5378929+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 92, '747bfbff56a8c0bfdbcf93f295976648', 6, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo6', '2024-12-05T01:00:34.5378929+00:00', NULL, NULL, '2024-12-05T01:00:34.5378929+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 93, '0b31901a06fc8019027dd88dd8361de1', 7, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T01:01:07.4806431+00:00', NULL, NULL, '2024-12-05T01:01:07.4806431+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 94, 'ff728dc3d1e53df6c014365cf505fbbd', 8, 1, 0, 'after', 'reading', '28.05', 'g', 'B', '8', NULL, NULL, 'd-demo8', '2024-12-05T01:02:06.4310873+00:00', NULL, NULL, '2024-12-05T01:02:06.4310873+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 95, '5ec821c8109978c36a835e12e39962c3', 8, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T01:02:12.4310873+00:00', NULL, NULL, '2024-12-05T01:02:12.4310873+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 96, 'f703032f1ffdde276c88806bad4fda4e', 8, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T01:02:18.4310873+00:00', NULL, NULL, '2024-12-05T01:02:18.4310873+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 97, '0d47959c34d9f0064b0e6261f501cb30', 3, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo3', '2024-12-05T01:02:36.5107557+00:00', NULL, NULL, '2024-12-05T01:02:36.5107557+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 98, '23a457b01876c2ecfbb5cc92b1a055b1', 5, 1, 0, 'after', 'reading', '30.06', 'g', 'A', '5', NULL, NULL, 'd-demo5', '2024-12-05T01:02:43.1589915+00:00', NULL, NULL, '2024-12-05T01:02:43.1589915+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 99, '4d1787f141250d88494eda6b8f680ae4', 5, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo5', '2024-12-05T01:02:49.1589915+00:00', NULL, NULL, '2024-12-05T01:02:49.1589915+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 100, '885374f570c91a6b448b357ebb3ade74', 5, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo5', '2024-12-05T01:02:55.1589915+00:00', NULL, NULL, '2024-12-05T01:02:55.1589915+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 101, '104a35c3955765b97b4ef2c3ce10379d', 12, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo12', '2024-12-05T01:03:58.1519754+00:00', NULL, NULL, '2024-12-05T01:03:58.1519754+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 102, '9104a493a7b5e3d8d2f8e0a4d078fef0', 6, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo6', '2024-12-05T01:04:12.9831882+00:00', NULL, NULL, '2024-12-05T01:04:12.9831882+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 103, 'dd20573ac7c09ffa409289257a2cc6e1', 9, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo9', '2024-12-05T01:05:38.8619140+00:00', NULL, NULL, '2024-12-05T01:05:38.8619140+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 104, '7da2caf435bb798ba12c48f44d766d4b', 1, 1, 0, 'after', 'reading', '34.67', 'g', 'A', '1', NULL, NULL, 'd-demo1', '2024-12-05T01:06:15.1591004+00:00', NULL, NULL, '2024-12-05T01:06:15.1591004+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 105, '0d79d7e3d45245bd2bf44c2c56fde0b6', 1, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo1', '2024-12-05T01:06:21.1591004+00:00', NULL, NULL, '2024-12-05T01:06:21.1591004+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 106, '1acf42c8716c7180980415717efcb04c', 1, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo1', '2024-12-05T01:06:27.1591004+00:00', NULL, NULL, '2024-12-05T01:06:27.1591004+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 107, '51b640c214ff4df25484b00fa4dce0a3', 11, 1, 0, 'after', 'reading', '24.89', 'g', 'A', '11', NULL, NULL, 'd-demo11', '2024-12-05T01:06:38.1969615+00:00', NULL, NULL, '2024-12-05T01:06:38.1969615+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 108, '00405ec77b58f3bda10a0d2bc7615f36', 11, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T01:06:44.1969615+00:00', NULL, NULL, '2024-12-05T01:06:44.1969615+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 109, '4e726cb486b9bcb03d11b4c6a9965026', 5, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo5', '2024-12-05T01:06:45.9984202+00:00', NULL, NULL, '2024-12-05T01:06:45.9984202+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 110, '01aaedaa1192f0ae7bed3a83b6f57e4f', 4, 1, 0, 'after', 'reading', '32.01', 'g', 'B', '4', NULL, NULL, 'd-demo4', '2024-12-05T01:06:46.9201220+00:00', NULL, NULL, '2024-12-05T01:06:46.9201220+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 111, '9086fa73ba3fe6d0b4de1a02a06091e5', 11, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T01:06:50.1969615+00:00', NULL, NULL, '2024-12-05T01:06:50.1969615+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 112, '27d67df0b1fdc7824ebd4f69adcb9362', 4, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo4', '2024-12-05T01:06:52.9201220+00:00', NULL, NULL, '2024-12-05T01:06:52.9201220+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 113, '0d42a7518368ff170ca1ed62b759926a', 4, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo4', '2024-12-05T01:06:58.9201220+00:00', NULL, NULL, '2024-12-05T01:06:58.9201220+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 114, '31fbd4341c28c91e752ea302c00dc1e8', 7, 1, 0, 'correction-asked', 'happening', 'before: we typed another group''s reading; the paper record says so', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T01:07:36.1147938+00:00', NULL, NULL, '2024-12-05T01:07:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 115, 'b0105954d9c5cb520c5dd08622a4cbbf', 2, 1, 0, 'after', 'reading', '29.20', 'g', 'B', '2', NULL, NULL, 'd-demo2', '2024-12-05T01:07:53.9597931+00:00', NULL, NULL, '2024-12-05T01:07:53.9597931+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 116, 'e58e6fe0149951b017160aceb221ad95', 2, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo2', '2024-12-05T01:07:59.9597931+00:00', NULL, NULL, '2024-12-05T01:07:59.9597931+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 117, '7a0f4651c66a6864b66949b5a6aac547', 2, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo2', '2024-12-05T01:08:05.9597931+00:00', NULL, NULL, '2024-12-05T01:08:05.9597931+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 118, 'bc89cd70c37ad4943c273a3ca613c66e', 8, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T01:08:12.2944434+00:00', NULL, NULL, '2024-12-05T01:08:12.2944434+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 119, 'a3a9de5a91d78941063379d67c1d6cf7', 10, 1, 0, 'help', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:09:36.1147938+00:00', NULL, NULL, '2024-12-05T01:09:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 120, '78a703daab9e4f212463fe3ee6f53fcd', 10, 1, 0, 'after', 'reading', '25.62', 'g', 'B', '10', NULL, NULL, 'd-demo10', '2024-12-05T01:10:32.2136154+00:00', NULL, NULL, '2024-12-05T01:10:32.2136154+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 121, 'edd76c849d8659ba9f055275ff96fe69', 10, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:10:38.2136154+00:00', NULL, NULL, '2024-12-05T01:10:38.2136154+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 122, 'fc3e0b7c58e8cf4d36252e4e7bdb6d3c', 10, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:10:44.2136154+00:00', NULL, NULL, '2024-12-05T01:10:44.2136154+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 123, '6b94ee6cba73807b30d120c219d14b96', 11, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T01:11:20.0063605+00:00', NULL, NULL, '2024-12-05T01:11:20.0063605+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 124, '0bbee4d6e76641dd4aeeffa03f9f4418', 1, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo1', '2024-12-05T01:11:42.5098940+00:00', NULL, NULL, '2024-12-05T01:11:42.5098940+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 125, 'b9ab5167485f70c8e195fec6ce0d0ed1', 4, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo4', '2024-12-05T01:12:52.6165629+00:00', NULL, NULL, '2024-12-05T01:12:52.6165629+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 126, 'ff9d590e80418164727250fbb6b7128d', 2, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo2', '2024-12-05T01:13:41.7522858+00:00', NULL, NULL, '2024-12-05T01:13:41.7522858+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 127, '652476c7cb5e902f7b725cffe9b2b59c', 3, 1, 0, 'after2', 'reading', '24.65', 'g', 'A', '3', NULL, NULL, 'd-demo3', '2024-12-05T01:14:16.1207743+00:00', NULL, NULL, '2024-12-05T01:14:16.1207743+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 128, '342f992537972fb80a91f0fe822194fe', 10, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:15:49.1881706+00:00', NULL, NULL, '2024-12-05T01:15:49.1881706+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 129, 'f99f2a6fb59024162da7fa44a36436f9', 7, 1, 0, 'after2', 'reading', '21.63', 'g', 'A', '7', NULL, NULL, 'd-demo7', '2024-12-05T01:16:03.2949769+00:00', NULL, NULL, '2024-12-05T01:16:03.2949769+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 130, '2a438e072966f80d84db18feda43219e', 7, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T01:16:09.2949769+00:00', NULL, NULL, '2024-12-05T01:16:09.2949769+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 131, '39a555e2b6aaf1c21426478ecc7cf8d4', 7, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T01:16:15.2949769+00:00', NULL, NULL, '2024-12-05T01:16:15.2949769+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 132, '6d79436bcad3a0b80c8b2e93c6ac410f', 6, 1, 0, 'after2', 'reading', '32.46', 'g', 'B', '6', NULL, NULL, 'd-demo6', '2024-12-05T01:16:26.0802267+00:00', NULL, NULL, '2024-12-05T01:16:26.0802267+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 133, '10682749e51db6c32b93c66079fee112', 12, 1, 0, 'after2', 'reading', '26.03', 'g', 'B', '12', NULL, NULL, 'd-demo12', '2024-12-05T01:17:34.3060301+00:00', NULL, NULL, '2024-12-05T01:17:34.3060301+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 134, 'f6aba76ee9f35630e917318268ba9829', 9, 1, 0, 'after2', 'reading', '32.86', 'g', 'A', '9', NULL, NULL, 'd-demo9', '2024-12-05T01:19:09.5360187+00:00', NULL, NULL, '2024-12-05T01:19:09.5360187+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 135, '28b2eb17f8af1095d3a4981f884bb449', 5, 1, 0, 'after2', 'reading', '30.06', 'g', 'A', '5', NULL, NULL, 'd-demo5', '2024-12-05T01:20:34.7347936+00:00', NULL, NULL, '2024-12-05T01:20:34.7347936+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 136, 'fd612828420e33d2a44f7e0d1875cc50', 7, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo7', '2024-12-05T01:20:57.8556888+00:00', NULL, NULL, '2024-12-05T01:20:57.8556888+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 137, '6c8c83a94cf64dc788ddcf1b00f45c4f', 8, 1, 0, 'after2', 'reading', '28.05', 'g', 'B', '8', NULL, NULL, 'd-demo8', '2024-12-05T01:22:13.9645569+00:00', NULL, NULL, '2024-12-05T01:22:13.9645569+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 138, '5f7348a2f5af9763071e6a068eaded6e', 8, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T01:22:19.9645569+00:00', NULL, NULL, '2024-12-05T01:22:19.9645569+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 139, '7507af98dc779da3e1805a6358e1991d', 8, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T01:22:25.9645569+00:00', NULL, NULL, '2024-12-05T01:22:25.9645569+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 140, '4987078ad9b09164d1d6d06f204960a0', 11, 1, 0, 'after2', 'reading', '24.90', 'g', 'A', '11', NULL, NULL, 'd-demo11', '2024-12-05T01:23:56.2928995+00:00', NULL, NULL, '2024-12-05T01:23:56.2928995+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 141, '2d4fc3a2ee46362f9cfed4f90c688954', 11, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T01:24:02.2928995+00:00', NULL, NULL, '2024-12-05T01:24:02.2928995+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 142, 'd999acb359845ae2bc712f39c273da37', 11, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T01:24:08.2928995+00:00', NULL, NULL, '2024-12-05T01:24:08.2928995+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 143, '7a00ee7ca1431e30541347bf72b36574', 1, 1, 0, 'after2', 'reading', '34.69', 'g', 'A', '1', NULL, NULL, 'd-demo1', '2024-12-05T01:24:08.4658261+00:00', NULL, NULL, '2024-12-05T01:24:08.4658261+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 144, 'becb0c45a59e8a8663d16712bcb7437e', 8, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo8', '2024-12-05T01:26:49.8840966+00:00', NULL, NULL, '2024-12-05T01:26:49.8840966+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 145, '2f255f14d9e4c72c99209e8771957ec2', 2, 1, 0, 'after2', 'reading', '29.19', 'g', 'B', '2', NULL, NULL, 'd-demo2', '2024-12-05T01:27:25.5134605+00:00', NULL, NULL, '2024-12-05T01:27:25.5134605+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 146, '8f7e3347ec4dea24262f5684f83e7e79', 4, 1, 0, 'after2', 'reading', '32.02', 'g', 'B', '4', NULL, NULL, 'd-demo4', '2024-12-05T01:28:30.6075691+00:00', NULL, NULL, '2024-12-05T01:28:30.6075691+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 147, 'b9b84416d7316abc892ba09318c0a34f', 11, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo11', '2024-12-05T01:28:40.0456408+00:00', NULL, NULL, '2024-12-05T01:28:40.0456408+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 148, '1c1d74bc631478cd029a11b0230cf809', 10, 1, 0, 'after2', 'reading', '25.62', 'g', 'B', '10', NULL, NULL, 'd-demo10', '2024-12-05T01:30:31.9789375+00:00', NULL, NULL, '2024-12-05T01:30:31.9789375+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 149, 'be7fd81f2ff29cd35fa8386c1601c656', 10, 1, 0, 'decided', 'happening', 'reheat', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:30:37.9789375+00:00', NULL, NULL, '2024-12-05T01:30:37.9789375+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 150, 'b0eb935230fcfcd2f08c7bd9d441b34d', 10, 1, 0, 'flame-on', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:30:43.9789375+00:00', NULL, NULL, '2024-12-05T01:30:43.9789375+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 151, '8d670ef2c17ee4b7e5c77416f01151a7', 10, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'd-demo10', '2024-12-05T01:34:51.8149104+00:00', NULL, NULL, '2024-12-05T01:34:51.8149104+00:00');
INSERT INTO entry VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 152, 'b6312651ed6daf300c247c90f5d8e6e0', 0, 1, 0, 'ended', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'teacher', '2024-12-05T01:59:36.1147938+00:00', NULL, NULL, '2024-12-05T01:59:36.1147938+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 1, '00000000000000000000000000000001', 1, 1, 0, 'empty', 'reading', '30.10', 'g', 'A', '7', NULL, NULL, 'tablet 3', '2026-03-04T12:00:00.0000000+00:00', NULL, NULL, '2026-03-04T12:00:10.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 2, '00000000000000000000000000000002', 1, 1, 0, 'before', 'reading', '30.43', 'g', 'A', '7', NULL, NULL, 'tablet 3', '2026-03-04T12:00:00.0000000+00:00', NULL, NULL, '2026-03-04T12:00:11.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 3, '00000000000000000000000000000003', 1, 1, 0, 'before', 'reading', '30.34', 'g', 'A', '7', NULL, NULL, 'tablet 3', '2026-03-04T12:00:00.0000000+00:00', '00000000000000000000000000000002', 'looked again at the display', '2026-03-04T12:00:12.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 4, '00000000000000000000000000000004', 1, 1, 0, 'smoke-seen', 'observation', 'true', NULL, NULL, NULL, NULL, NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:13.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 5, '00000000000000000000000000000005', 1, 1, 7, 'ratio', 'answer', '1 : 1,
"about"; =1+1', 'mol', NULL, NULL, NULL, NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:14.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 6, '00000000000000000000000000000006', 1, 1, 7, 'ratio', 'mark', '1.50', NULL, NULL, NULL, '2', 'units – missing ½ ✓', 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:15.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 7, '00000000000000000000000000000007', 1, 1, 8, 'ratio', 'mark', '0', NULL, NULL, NULL, '2', NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:16.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 8, '00000000000000000000000000000008', 1, 1, 0, 'after', 'note', 'lid cracked while it cooled', NULL, NULL, NULL, NULL, NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:17.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 9, '00000000000000000000000000000009', 0, 1, 0, 'bell', 'happening', '12:55', NULL, NULL, NULL, NULL, NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:18.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 10, '0000000000000000000000000000000a', 1, 1, 0, 'flame-out', 'happening', '', NULL, NULL, NULL, NULL, NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:19.0000000+00:00');
INSERT INTO entry VALUES ('Larkmoor School', '9f0000000002', 11, '0000000000000000000000000000000b', 2, 2, 0, 'empty', 'reading', '31.0', 'g', NULL, NULL, NULL, NULL, 'tablet 3', '2026-03-04T13:04:05.6780000+01:00', NULL, NULL, '2026-03-04T12:00:20.0000000+00:00');

INSERT INTO journal VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 152);
INSERT INTO journal VALUES ('Larkmoor School', '9f0000000002', 11);

INSERT INTO lesson VALUES ('Larkmoor School', 'dkqjw1w5ha2v', 'qm8ap7ah40vb', 'magnesium-oxide', 2, '# Burning magnesium in a crucible. Facts here can be checked without reading any program; docs/methods/practical-file.md
# tells what each key means. Masses in g, times in min. ''standing'' of every number: literature (with its source), memory,
# common-practice, judgement or computed.
practical: magnesium-oxide
version: 2
title: Burning magnesium in a crucible
question: What happens to the mass when magnesium burns, and what is the formula of the oxide?

materials:
  - { id: magnesium, label: magnesium, formula: Mg, form: ribbon cut from a coil }
  - { id: film, label: oxide film on the ribbon, formula: MgO }
  - { id: oxide, label: magnesium oxide, formula: MgO }
  - { id: nitride, label: magnesium nitride, formula: Mg3N2 }
  - { id: oxygen, label: oxygen of the air, formula: O2, air: true }
  - { id: nitrogen, label: nitrogen of the air, formula: N2, air: true }

reactions:
  - id: burning
    equation: 2Mg + O2 -> 2MgO
    limiting: magnesium
    materials: { Mg: magnesium, O2: oxygen, MgO: oxide }
  - id: nitriding
    equation: 3Mg + N2 -> Mg3N2
    limiting: magnesium
    materials: { Mg: magnesium, N2: nitrogen, Mg3N2: nitride }

parts:
  - { id: crucible, label: crucible, mass: { typical: 18, low: 11, high: 25 }, standing: common-practice }
  - { id: lid, label: lid, mass: { typical: 10, low: 3, high: 20 }, standing: common-practice }

places:
  - { id: inside, label: in the crucible }

# What is weighed. ''pan'' is what stands on it; a label is also the heading on the sheet, with its unit behind '' / ''.
readings:
  - id: empty
    label: Mass of empty crucible and lid
    unit: g
    pan: { parts: [crucible, lid], places: [inside] }   # the place too, for the water it may hold
    aliases: [empty, crucible, crucible and lid, empty crucible, crucible empty, m1]
  - id: before
    label: Mass of crucible, lid and magnesium
    unit: g
    pan: { parts: [crucible, lid], places: [inside] }
    aliases: [before, before heating, mass before heating, crucible and magnesium, crucible + magnesium, m2]
  - id: after
    label: Mass after heating
    unit: g
    pan: { parts: [crucible, lid], places: [inside] }
    repeats: 3
    repeatLabel: Mass after reheating
    aliases: [after, after heating, reheated, crucible and magnesium oxide, crucible + magnesium oxide, m3]

# Columns that teachers keep instead: a tared reading or a mass already subtracted. Used where the readings they stand
# for are not there; otherwise compared with them.
columns:
  - id: sampleColumn
    label: Mass of magnesium
    unit: g
    kind: difference            # tared | difference
    stands: before - empty
    aliases: [magnesium, mass of mg, sample, sample mass, mass of sample, mg]
  - id: productColumn
    label: Mass of magnesium oxide
    unit: g
    kind: difference
    stands: after - empty
    aliases: [magnesium oxide, mass of mgo, mass of oxide, product, mass of product, mgo]
  - id: gainColumn
    label: Mass of oxygen
    unit: g
    kind: difference
    stands: after - before
    aliases: [oxygen, gain, mass gained, increase in mass, mass of oxygen gained]

# Numbers that differ from group to group. The events below use them by name. ''ideal'' is the value when the reaction
# is complete and nothing goes wrong; without it the middle of the law is taken.
parameters:
  - { id: sample, label: mass of ribbon, unit: g, law: { normal: [0.24, 0.048] }, standing: judgement }
  - { id: filmShare, label: share of the ribbon that is oxide already, ideal: 0, law: { beta: [1.3, 60, 0, 1] }, standing: judgement }
  - { id: burnt, label: share of the metal left that burns in one heating, ideal: 1, law: { beta: [60, 1.5, 0, 1] }, standing: judgement }
  - { id: nitrided, label: share of the burnt metal that becomes nitride, ideal: 0, law: { fixed: 0 }, standing: judgement }
  - { id: smoke, label: share of new product that leaves as smoke, ideal: 0, law: { beta: [1.2, 100, 0, 1] }, standing: judgement }
  - { id: damp, label: water held by the vessel and driven off, unit: g, ideal: 0, law: { fixed: 0 }, standing: judgement }

# What happens, in order.
procedure:
  - wet: { water: damp, in: inside }            # the vessel''s own water is on the pan from the start
  - read: empty
  - add: { material: magnesium, to: inside, mass: sample, with: { film: filmShare } }
  - read: before
  - repeat:
      most: 3
      until: constant-mass
      do:
        - dry: { in: inside, share: 1 }
        # The side reaction first, so that what both share out is never nothing over nothing.
        - react: { reaction: nitriding, in: inside, fraction: burnt * nitrided }
        - react: { reaction: burning, in: inside, fraction: burnt * (1 - nitrided) / (1 - burnt * nitrided), escapes: smoke }
        - read: after

# Asked values. In a formula a repeated reading stands for its last weighing.
quantities:
  - { id: sampleMass, label: mass of magnesium, unit: g, formula: before - empty }
  - { id: massChange, label: gain in mass, unit: g, formula: after - before }
  - { id: productMass, label: mass of magnesium oxide, unit: g, formula: after - empty }
  - { id: massRatio, label: mass of product for 1 g of magnesium, unit: ''1'', formula: (after - empty) / (before - empty) }
  - { id: moleRatio, label: moles of oxygen for 1 mole of magnesium, unit: ''1'', formula: ((after - before) / M(O)) / ((before - empty) / M(Mg)) }
  - { id: percentOxygen, label: oxygen in the oxide, unit: ''%'', formula: 100 * (after - before) / (after - empty) }
  - { id: yield, label: percentage yield, unit: ''%'', formula: 100 * ((after - empty) / M(MgO)) / ((before - empty) / M(Mg)) }

# The value on which the class is judged, the change that the lesson is about, and how the accepted values arise:
# the model run with its reaction complete and nothing going wrong.
findings:
  key: moleRatio
  change: massChange
  sample: sampleMass
  expect: rises                  # rises | falls | same
  # How far the gain lies from what the ribbon should give: the causes that count are judged by it.
  asExpected: { difference: (after - before) - M(O) / M(Mg) * (before - empty), divisions: 2, share: 0.05, standing: judgement }
  decision: { matters: 0.10, worthMinutes: 60, standing: judgement }
  constantMass: { reading: after, toleranceInDivisions: 2, leastConversion: 0.5, standing: judgement }
  emptyAdvice: Weigh the empty crucible and lid before the magnesium goes in.
  formula: { elements: { Mg: sampleMass, O: massChange }, largest: 4, accepted: MgO }

conclusions:
  - { id: gains, label: the mass rises when magnesium burns, test: { rises: massChange } }
  - { id: one-to-one, label: ''magnesium and oxygen combine one to one, not 1 to 2 or 2 to 1'', test: { chooses: { quantity: moleRatio, among: [0.5, 1, 2] } } }
  - { id: within-five, label: the ratio lies within 5 % of the accepted one, test: { within: { quantity: moleRatio, share: 0.05 } }, optional: true }

faults:
  - cause: not-all-reacted
    label: not all of the magnesium had burnt
    caution: heat strongly and lift the lid now and then until nothing glows when air gets in
    rate: 0.28
    set: { burnt: { mixture: [ { share: 0.5, law: { beta: [8, 2, 0, 1] } }, { share: 0.3, law: { beta: [1.2, 1.2, 0, 1] } }, { share: 0.2, law: { beta: [1, 8, 0, 1] } } ] } }
    standing: judgement
  - cause: product-lost
    label: product lost as smoke or powder
    caution: lift the lid only a little and only for a moment; put it back as soon as smoke shows
    rate: 0.22
    set: { smoke: { lognormal: [0.05, 1.1] } }
    standing: judgement
  - cause: side-reaction
    label: some magnesium joined with nitrogen instead of oxygen
    rate: 0.16
    set: { nitrided: { mixture: [ { share: 0.5, law: { beta: [1.2, 8, 0, 0.3] } }, { share: 0.5, law: { beta: [1.2, 1.5, 0, 0.9] } } ] } }
    standing: judgement
  - cause: tarnished-sample
    label: the ribbon already carried an oxide film
    caution: rub the ribbon bright before it is weighed
    rate: 0.15
    set: { filmShare: { mixture: [ { share: 0.5, law: { beta: [1.3, 6, 0, 0.06] } }, { share: 0.5, law: { beta: [1.2, 2, 0, 0.6] } } ] } }
    standing: judgement
  - cause: damp-vessel
    label: water in the crucible was driven off by the heating
    caution: use a crucible that has been heated empty and kept dry
    rate: 0.20
    set: { damp: { mixture: [ { share: 0.7, law: { exponential: [0.010] } }, { share: 0.3, law: { rectangular: [0.010, 0.150] } } ] } }
    standing: judgement
  - cause: weighed-warm
    label: the crucible was still warm at the last weighing
    caution: weigh only when the cooling time is over
    rate: 0.20
    warm:
      reading: after
      excessInKelvin: { mixture: [ { share: 0.7, law: { rectangular: [8, 120] } }, { share: 0.3, law: { rectangular: [60, 400] } } ] }
      milligramsPerKelvin: { rectangular: [0.12, 0.30] }
    standing: literature
    source: E. Blade, Analytical Chemistry, warm glazed porcelain reads up to 0.19 mg low for each kelvin
  - cause: part-left-off
    label: the lid was not on the pan at one weighing
    caution: weigh crucible and lid together every time
    rate: 0.03
    off: { part: lid }
    standing: judgement
  - cause: zero-shifted
    label: one reading was taken on another balance or after the balance was set to zero anew
    caution: keep to one balance, and check that it shows zero before each reading
    rate: 0.16
    zero: { shift: { mixture: [ { share: 0.5, law: { normal: [0, 0.02] } }, { share: 0.5, law: { normal: [0, 0.08] } } ] } }
    standing: judgement
  - cause: misread
    label: a reading was misread or miscopied
    caution: one reads aloud, the other writes and reads back
    rate: 0.08
    pen: { swapped: 0.35, wrongDigit: 0.25, wholeGram: 0.25, droppedZero: 0.15 }
    standing: judgement
  - cause: extra-mass
    label: soot or grit stuck to the crucible
    caution: no yellow flame; look at the outside before weighing
    rate: 0.10
    gain: { reading: after, mass: { mixture: [ { share: 0.7, law: { lognormal: [0.010, 0.8] } }, { share: 0.3, law: { lognormal: [0.060, 0.9] } } ] } }
    standing: judgement

observations:
  - { id: smoke-seen, label: white smoke was seen, aliases: [smoke, white smoke], likelihood: { product-lost: 0.7, otherwise: 0.25 }, standing: judgement }
  - { id: still-glowing, label: still glowing at the last lift, aliases: [glowing, still glows], likelihood: { not-all-reacted: 0.6, otherwise: 0.05 }, standing: judgement }
  - { id: grey-specks, label: grey specks in the powder, aliases: [grey, specks], likelihood: { not-all-reacted: 0.6, otherwise: 0.15 }, standing: judgement }
  - { id: black-specks, label: black specks or a black stain, aliases: [black, black stain], likelihood: { side-reaction: 0.3, extra-mass: 0.3, otherwise: 0.06 }, standing: judgement }
  - { id: smoke-marks, label: white marks under the lid or above the crucible, aliases: [white marks, marks on the lid], likelihood: { product-lost: 0.6, otherwise: 0.12 }, standing: judgement }
  - { id: lid-chipped, label: the lid is chipped or broken, aliases: [chipped lid, lid broken, broken lid], likelihood: { part-left-off: 0.3, otherwise: 0.04 }, standing: judgement }
  - { id: dull-ribbon, label: the ribbon was dull when it was weighed, aliases: [dull, grey ribbon], likelihood: { tarnished-sample: 0.6, otherwise: 0.15 }, standing: judgement }
  - { id: ammonia-smell, label: smell of ammonia after water was added, aliases: [ammonia], likelihood: { side-reaction: 0.5, otherwise: 0.03 }, teacherOnly: true, standing: judgement }
  - { id: soot-seen, label: soot on the outside or a yellow flame, aliases: [soot, yellow flame, sooty], likelihood: { extra-mass: 0.6, otherwise: 0.08 }, standing: judgement }
  - { id: drops-seen, label: drops of water in or on the cold crucible, aliases: [wet crucible, drops], likelihood: { damp-vessel: 0.3, otherwise: 0.02 }, standing: judgement }
  - { id: cracked, label: the crucible is cracked, aliases: [cracked crucible, crack], stop: true, standing: common-practice }
  - { id: burning-outside, label: something burns outside the crucible, stop: true, standing: common-practice }
  - { id: spill, label: hot contents were spilt, aliases: [spilt, spilled], stop: true, standing: common-practice }
  - { id: choking-smell, label: a choking smell, aliases: [choking], stop: true, standing: common-practice }
  - { id: injury, label: somebody is hurt, aliases: [hurt, burnt finger, burn], stop: true, standing: common-practice }

# What can still be done to tell causes apart, with its minutes. No touching, smelling, acid or water on the residue.
actions:
  - { id: reheat-and-weigh, label: ''heat once more, let it cool and weigh again'', kind: reheat, minutes: 18, standing: judgement }
  - { id: cool-and-weigh, label: ''let it cool longer and weigh it again'', kind: reweigh, minutes: 8, standing: judgement }
  - { id: read-again, label: read the display or the paper record again, kind: reread, minutes: 1, standing: judgement }
  - { id: check-zero, label: see what the balance shows with nothing on it, kind: zero, minutes: 1, standing: judgement }
  - { id: weigh-without-lid, label: weigh the cold crucible without its lid, kind: without-part, part: lid, minutes: 2, standing: judgement }
  - { id: look-for-smoke-marks, label: look for white marks under the lid and above the crucible, kind: look, observation: smoke-marks, minutes: 1, standing: judgement }
  - { id: look-for-grey, label: look for grey specks in the powder, kind: look, observation: grey-specks, minutes: 1, standing: judgement }
  - { id: look-for-soot, label: look for soot on the outside of the cold crucible, kind: look, observation: soot-seen, minutes: 1, standing: judgement }

# What may be said of a whole class; it takes the place of the rates and laws above.
conditions:
  - { id: fired, label: the crucibles were fired empty and kept dry, rates: { damp-vessel: 0.01 }, standing: judgement }
  - { id: new-crucibles, label: the crucibles are new, rates: { side-reaction: 0.10 }, standing: judgement }
  - { id: cleaned-ribbon, label: the ribbon was rubbed bright, rates: { tarnished-sample: 0.02 }, standing: judgement }
  - { id: careful, label: a careful class, rates: { not-all-reacted: 0.15, product-lost: 0.12, weighed-warm: 0.04, part-left-off: 0.01, misread: 0.02, zero-shifted: 0.04, extra-mass: 0.03 }, standing: judgement }

# Warmth left after the flame was put out: 30 g of porcelain with its lid on the triangle, room at 22 °C.
cooling: { reading: after, points: [[6, 78], [9.3, 38], [13, 20], [17, 10], [21, 5], [26, 2.6]], relativeSpread: 0.3, standing: computed }

# Times in min: least, likely, most. The longer of two lists where lists differ; no source but judgement unless said.
steps:
  - { id: arrive, label: arrive and settle, minutes: [2, 4, 7], kit: {}, per: class, standing: judgement }
  - { id: brief, label: briefing and demonstration, minutes: [4, 8, 12], kit: {}, per: class, elsewhere: before, standing: judgement }
  - { id: set-up, label: collect and set up, minutes: [3, 5, 9], kit: {}, standing: judgement }
  - { id: fire-empty, label: heat the empty crucible and lid, minutes: [4, 5, 10], kit: { burner: 1 }, per: trial, optional: firing, prepared: true, gives: fired, standing: judgement }
  - { id: cool-empty, label: let the empty crucible cool, minutes: [7, 10, 20], kit: {}, per: trial, optional: firing, prepared: true, standing: judgement }
  - { id: weigh-empty, label: weigh the empty crucible and lid, minutes: [0.42, 0.75, 2], kit: { balance: 1 }, reading: empty, standing: judgement }
  - { id: clean, label: ''clean, cut and coil the ribbon'', minutes: [2, 3, 5], kit: {}, per: trial, prepared: true, gives: cleaned-ribbon, standing: judgement }
  - { id: weigh-before, label: weigh with the magnesium, minutes: [0.42, 0.75, 2], kit: { balance: 1 }, reading: before, standing: judgement }
  - { id: check, label: let the teacher look before lighting, minutes: [0.2, 0.5, 1], kit: { teacher: 1 }, round: first, standing: judgement }
  - { id: gentle-start, label: heat gently at first, minutes: [1, 2, 3], kit: { burner: 1 }, round: first, standing: judgement }
  - { id: burn, label: heat strongly and lift the lid now and then, minutes: [5, 10, 20], kit: { burner: 1 }, round: first, grows: 0.5, standing: judgement }
  - { id: finish, label: heat strongly with the lid ajar, minutes: [2, 4, 5], kit: { burner: 1 }, round: first, standing: judgement }
  - { id: reheat, label: reheat, minutes: [3, 5, 7], kit: { burner: 1 }, round: again, standing: judgement }
  - { id: cool, label: cool on the triangle, minutes: [10, 12, 20], kit: {}, round: each, standing: computed }
  - { id: write, label: write the row, minutes: [1, 2, 4], kit: {}, round: each, during: cool, standing: judgement }
  - { id: weigh-after, label: weigh when cool, minutes: [0.42, 0.75, 2], kit: { balance: 1 }, reading: after, round: each, standing: judgement }
  - { id: work-out, label: work out the ratio, minutes: [4, 8, 15], kit: {}, elsewhere: after, standing: judgement }
  - { id: clear-up, label: clear up; hot kit stays where it is, minutes: [5, 8, 12], kit: {}, alongside: cool, standing: judgement }
  - { id: exit-talk, label: what did we find, minutes: [2, 4, 6], kit: {}, per: class, standing: judgement }

# Besides the steps. No source: common practice for the gas, judgement for the rest.
classroom: { gasOff: 15, late: 0.1, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }

kit:
  - { id: crucible, label: ''crucible, 15 cm³, porcelain'', perGroup: 1, breaks: 0.04, startsAgain: true }
  - { id: lid, label: lid of the crucible, perGroup: 1, breaks: 0.08 }
  - { id: triangle, label: pipe-clay triangle, perGroup: 1 }
  - { id: burner, label: ''burner, tripod and heat-resistant mat'', perGroup: 1, flame: true }
  - { id: tongs, label: tongs whose jaws meet, perGroup: 1 }
  - { id: ribbon, label: magnesium ribbon, perGroup: 0.24, unit: g, spareShare: 0.2, sample: true, cut: true }
  - { id: emery, label: fine emery paper, perGroup: 1 }
  - { id: goggles, label: eye protection, perStudent: 1 }
  - { id: sand, label: tray of dry sand, perClass: 1 }
  - { id: hot-boards, label: heat-resistant mat beside the balance, perClass: 2 }

# More metal burns longer, leaves more unburnt and lets more smoke out: a power of (mass / usual mass). No source.
amounts: { usual: 0.24, least: 0.05, grows: { not-all-reacted: 1, product-lost: 0.5 }, standing: judgement }

limits: { largestSample: 0.30, unit: g, note: ''ribbon only, never powder'', standing: judgement }

hazards:
  - { of: magnesium, hazard: burns with a dazzling light and cannot be put out with water or carbon dioxide, control: ''keep the lid on and do not look at the burning metal; dry sand at hand; count the ribbon out and in'', standing: common-practice }
  - { of: hot crucible and iron ware, hazard: burns; porcelain does not look hot, control: ''leave in place until cool, move with tongs, nobody tests warmth by touch'', standing: common-practice }
  - { of: cracked crucible, hazard: hot contents fall out, control: ''look for cracks first, start gently; if it cracks, gas off, leave it, no water'', standing: common-practice }
  - { of: nitride, hazard: ''gives ammonia with water, which irritates eyes and lungs'', control: add no water to the residue, standing: memory }
  - { of: oxide, hazard: nuisance dust, control: do not blow on the powder, standing: common-practice }

# Answers a student gives, with their marks: formulas over the own readings and over earlier answers.
answers:
  - { id: massMagnesium, label: mass of magnesium, unit: g, formula: before - empty, marks: 1 }
  - { id: massOxygen, label: mass of oxygen, unit: g, formula: after - before, marks: 1 }
  - { id: molesMagnesium, label: moles of magnesium, unit: mol, formula: massMagnesium / M(Mg), marks: 1 }
  - { id: molesOxygen, label: moles of oxygen atoms, unit: mol, formula: massOxygen / M(O), marks: 1 }
  - { id: ratio, label: ''ratio Mg : O'', unit: ''1'', formula: molesMagnesium / molesOxygen, marks: 1 }
', '{"groups":12,"students":24,"balances":2,"resolutions":["0.01"],"repeatability":null,"minutes":100,"mass":null,"trials":1,"heatings":2,"noEmpty":false,"prepared":true,"stagger":0,"wanted":[],"conditions":[],"without":[],"moved":["brief","work-out"],"alongside":["clear-up"],"times":[],"kit":[],"prices":[],"metre":null}', '2024-12-05', 'Lab 2', 12, 100, 0, 1, 0);
INSERT INTO lesson VALUES ('Larkmoor School', '9f0000000002', '9f0000000001', 'magnesium-oxide', 1, 'id: magnesium-oxide
name: ''Burning magnesium''
', '{"groups":12}', '2026-03-04', 'Lab 2', 12, 60, 0, 1, 0);

INSERT INTO member VALUES ('Larkmoor School', '9f0000000001', 1, 'Odette');

INSERT INTO migration VALUES (1, 'lessons', '2026-03-04T12:00:01.0000000+00:00');

INSERT INTO school VALUES ('Larkmoor School', 14);

INSERT INTO setting VALUES ('Larkmoor School', 'school-name', 'Larkmoor School', 0);
INSERT INTO setting VALUES ('Larkmoor School', 'passphrase', 'an invented hash', 1);

INSERT INTO signature VALUES ('Larkmoor School', 'magnesium-oxide', 2, '08b2aba0bd1db166eb28a82a551f803b', 'LM', '2024-12-05T00:19:36.1147938+00:00');
INSERT INTO signature VALUES ('Larkmoor School', 'magnesium-oxide', 2, '08b2aba0bd1db166eb28a82a551f803b', 'LM', '2025-12-05T00:19:36.1147938+00:00');
INSERT INTO signature VALUES ('Larkmoor School', 'magnesium-oxide', 2, '08b2aba0bd1db166eb28a82a551f803b', 'LM', '2026-11-25T23:22:36.1147938+00:00');
INSERT INTO signature VALUES ('Larkmoor School', 'magnesium-oxide', 1, '0.30 g', 'LM', '2026-03-04T12:00:00.0000000+00:00');

INSERT INTO web_key VALUES ('Larkmoor School', 'key-1', '<key id=''invented''/>');

ALTER TABLE ONLY audit
    ADD CONSTRAINT audit_pkey PRIMARY KEY (school, number);

ALTER TABLE ONLY balance_check
    ADD CONSTRAINT balance_check_pkey PRIMARY KEY (school, id);

ALTER TABLE ONLY balance
    ADD CONSTRAINT balance_pkey PRIMARY KEY (school, id);

ALTER TABLE ONLY balance
    ADD CONSTRAINT balance_school_letter_key UNIQUE (school, letter);

ALTER TABLE ONLY class
    ADD CONSTRAINT class_pkey PRIMARY KEY (school, id);

ALTER TABLE ONLY class
    ADD CONSTRAINT class_school_year_name_key UNIQUE (school, year, name);

ALTER TABLE ONLY door
    ADD CONSTRAINT door_pkey PRIMARY KEY (school, lesson_id, number);

ALTER TABLE ONLY entry
    ADD CONSTRAINT entry_pkey PRIMARY KEY (school, lesson_id, number);

ALTER TABLE ONLY entry
    ADD CONSTRAINT entry_school_id_key UNIQUE (school, id);

ALTER TABLE ONLY journal
    ADD CONSTRAINT journal_pkey PRIMARY KEY (school, lesson_id);

ALTER TABLE ONLY lesson
    ADD CONSTRAINT lesson_pkey PRIMARY KEY (school, id);

ALTER TABLE ONLY member
    ADD CONSTRAINT member_pkey PRIMARY KEY (school, class_id, number);

ALTER TABLE ONLY migration
    ADD CONSTRAINT migration_pkey PRIMARY KEY (number);

ALTER TABLE ONLY school
    ADD CONSTRAINT school_pkey PRIMARY KEY (name);

ALTER TABLE ONLY setting
    ADD CONSTRAINT setting_pkey PRIMARY KEY (school, name);

ALTER TABLE ONLY signature
    ADD CONSTRAINT signature_pkey PRIMARY KEY (school, practical_id, practical_version, fingerprint, signed_at, initials);

ALTER TABLE ONLY web_key
    ADD CONSTRAINT web_key_pkey PRIMARY KEY (school, name);

CREATE INDEX balance_check_of_balance ON balance_check USING btree (school, balance_id);

CREATE INDEX lesson_by_day ON lesson USING btree (school, held_on);

CREATE INDEX lesson_of_class ON lesson USING btree (school, class_id);

CREATE UNIQUE INDEX open_door_code ON door USING btree (school, code) WHERE (closed_at IS NULL);

CREATE UNIQUE INDEX open_door_station_code ON door USING btree (school, station_code) WHERE (closed_at IS NULL);

ALTER TABLE ONLY audit
    ADD CONSTRAINT audit_school_fkey FOREIGN KEY (school) REFERENCES school(name);

ALTER TABLE ONLY balance_check
    ADD CONSTRAINT balance_check_school_balance_id_fkey FOREIGN KEY (school, balance_id) REFERENCES balance(school, id);

ALTER TABLE ONLY balance
    ADD CONSTRAINT balance_school_fkey FOREIGN KEY (school) REFERENCES school(name);

ALTER TABLE ONLY class
    ADD CONSTRAINT class_school_fkey FOREIGN KEY (school) REFERENCES school(name);

ALTER TABLE ONLY door
    ADD CONSTRAINT door_school_lesson_id_fkey FOREIGN KEY (school, lesson_id) REFERENCES lesson(school, id);

ALTER TABLE ONLY entry
    ADD CONSTRAINT entry_school_lesson_id_fkey FOREIGN KEY (school, lesson_id) REFERENCES journal(school, lesson_id);

ALTER TABLE ONLY journal
    ADD CONSTRAINT journal_school_lesson_id_fkey FOREIGN KEY (school, lesson_id) REFERENCES lesson(school, id);

ALTER TABLE ONLY lesson
    ADD CONSTRAINT lesson_school_class_id_fkey FOREIGN KEY (school, class_id) REFERENCES class(school, id);

ALTER TABLE ONLY member
    ADD CONSTRAINT member_school_class_id_fkey FOREIGN KEY (school, class_id) REFERENCES class(school, id);

ALTER TABLE ONLY setting
    ADD CONSTRAINT setting_school_fkey FOREIGN KEY (school) REFERENCES school(name);

ALTER TABLE ONLY signature
    ADD CONSTRAINT signature_school_fkey FOREIGN KEY (school) REFERENCES school(name);

ALTER TABLE ONLY web_key
    ADD CONSTRAINT web_key_school_fkey FOREIGN KEY (school) REFERENCES school(name);

