-- SPDX-License-Identifier: GPL-3.0-or-later
-- Photographs, by the SHA-256 of their bytes. Entries name them; they are never changed.
CREATE TABLE picture (
    digest TEXT COLLATE "C" PRIMARY KEY CHECK (length(digest) = 64),
    media TEXT COLLATE "C" NOT NULL,
    bytes BYTEA NOT NULL
)
----
-- A projection: which entries of the bench are about an item (1), balloon (2), inspection (4), defect (5), person (6),
-- tester (7), type (8) or checklist (9).
CREATE TABLE told (
    sort BIGINT NOT NULL,
    subject_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id)
)
----
-- A projection: what became of the defects of an item. Marks: found (0), deferred (1), cleared (2).
CREATE TABLE defect_mark (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    defect_no BIGINT NOT NULL REFERENCES name,
    mark BIGINT NOT NULL,
    severity BIGINT NOT NULL,
    what TEXT COLLATE "C" NOT NULL,
    until_day BIGINT,
    until_minutes BIGINT,
    PRIMARY KEY (item_no, at, entry_id)
)
