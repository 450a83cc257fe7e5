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
