-- SPDX-License-Identifier: GPL-3.0-or-later
-- A projection: when items (1) and balloons (2) went out of service and came back.
CREATE TABLE service (
    sort BIGINT NOT NULL,
    subject_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    state BIGINT NOT NULL,
    buyer TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id)
)
----
-- A projection: balloons that took another registration.
CREATE TABLE renaming (
    balloon_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    to_no BIGINT NOT NULL REFERENCES name,
    PRIMARY KEY (balloon_no, at, entry_id)
)
----
-- A name proves itself: a digest of its row. All names are made anew with the projections.
ALTER TABLE name ADD COLUMN mark BIGINT NOT NULL DEFAULT 0
----
-- A projection: what each balloon flew in all, as its last flight leaves it: by what counts on what is fitted, and as logged.
CREATE TABLE flown (
    balloon_no BIGINT PRIMARY KEY REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    minutes BIGINT NOT NULL,
    landings BIGINT NOT NULL,
    inflations BIGINT NOT NULL,
    flights BIGINT NOT NULL,
    logged_minutes BIGINT NOT NULL,
    logged_landings BIGINT NOT NULL,
    logged_inflations BIGINT NOT NULL
)
----
-- What the rows that answers rest on come to, by part and subject; subject 0 is all of a part. Each transaction keeps it up.
CREATE TABLE tally (
    part BIGINT NOT NULL,
    subject_no BIGINT NOT NULL,
    row_count BIGINT NOT NULL,
    row_sum BIGINT NOT NULL,
    PRIMARY KEY (part, subject_no)
)
----
CREATE INDEX done_under ON done (ref) WHERE ref IS NOT NULL
----
-- A projection: which items an inspection is of.
CREATE TABLE opening (
    inspection TEXT COLLATE "C" NOT NULL,
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (inspection, item_no, at, entry_id)
)
----
CREATE INDEX opening_of_item ON opening (item_no)
----
-- A projection: approvals of the return to service after a list of discrepancies.
CREATE TABLE approval (
    inspection TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (inspection, at, entry_id)
)
