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
