-- SPDX-License-Identifier: GPL-3.0-or-later
-- A name proves itself: a digest of its row. All names are made anew with the projections.
ALTER TABLE name ADD COLUMN mark INTEGER NOT NULL DEFAULT 0
----
-- A projection: what each balloon flew in all, as its last flight leaves it.
CREATE TABLE flown (
    balloon_no INTEGER PRIMARY KEY REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    minutes INTEGER NOT NULL,
    landings INTEGER NOT NULL,
    inflations INTEGER NOT NULL
) STRICT, WITHOUT ROWID
----
-- What the rows that answers rest on come to, by part and subject; subject 0 is all of a part. Each transaction keeps it up.
CREATE TABLE tally (
    part INTEGER NOT NULL,
    subject_no INTEGER NOT NULL,
    row_count INTEGER NOT NULL,
    row_sum INTEGER NOT NULL,
    PRIMARY KEY (part, subject_no)
) STRICT, WITHOUT ROWID
----
CREATE INDEX done_under ON done (ref) WHERE ref IS NOT NULL
