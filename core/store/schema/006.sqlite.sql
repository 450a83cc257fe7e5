-- SPDX-License-Identifier: GPL-3.0-or-later
-- A projection: when items (1) and balloons (2) went out of service and came back.
CREATE TABLE service (
    sort INTEGER NOT NULL,
    subject_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    state INTEGER NOT NULL,
    buyer TEXT NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- A projection: balloons that took another registration.
CREATE TABLE renaming (
    balloon_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    to_no INTEGER NOT NULL REFERENCES name,
    PRIMARY KEY (balloon_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- A name proves itself: a digest of its row. All names are made anew with the projections.
ALTER TABLE name ADD COLUMN mark INTEGER NOT NULL DEFAULT 0
----
-- A projection: what each balloon flew in all, as its last flight leaves it: by what counts on what is fitted, and as logged.
CREATE TABLE flown (
    balloon_no INTEGER PRIMARY KEY REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    minutes INTEGER NOT NULL,
    landings INTEGER NOT NULL,
    inflations INTEGER NOT NULL,
    flights INTEGER NOT NULL,
    logged_minutes INTEGER NOT NULL,
    logged_landings INTEGER NOT NULL,
    logged_inflations INTEGER NOT NULL
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
----
-- A projection: which items an inspection is of.
CREATE TABLE opening (
    inspection TEXT NOT NULL,
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    PRIMARY KEY (inspection, item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE INDEX opening_of_item ON opening (item_no)
----
-- A projection: approvals of the return to service after a list of discrepancies.
CREATE TABLE approval (
    inspection TEXT NOT NULL,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    PRIMARY KEY (inspection, at, entry_id)
) STRICT, WITHOUT ROWID
