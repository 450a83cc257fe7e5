-- SPDX-License-Identifier: GPL-3.0-or-later
-- Photographs, by the SHA-256 of their bytes. Entries name them; they are never changed.
CREATE TABLE picture (
    digest TEXT PRIMARY KEY CHECK (length(digest) = 64),
    media TEXT NOT NULL,
    bytes BLOB NOT NULL
) STRICT, WITHOUT ROWID
----
-- A projection: which entries of the bench are about an item (1), balloon (2), inspection (4), defect (5), person (6),
-- tester (7), type (8) or checklist (9).
CREATE TABLE told (
    sort INTEGER NOT NULL,
    subject_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- A projection: what became of the defects of an item. Marks: found (0), deferred (1), cleared (2).
CREATE TABLE defect_mark (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    defect_no INTEGER NOT NULL REFERENCES name,
    mark INTEGER NOT NULL,
    severity INTEGER NOT NULL,
    what TEXT NOT NULL,
    until_day INTEGER,
    until_minutes INTEGER,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
