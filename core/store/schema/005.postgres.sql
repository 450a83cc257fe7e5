-- SPDX-License-Identifier: GPL-3.0-or-later
-- What an accomplishment rests on: an inspection of the record that was released, or a paper that names who signed it.
ALTER TABLE done ADD COLUMN ref TEXT COLLATE "C"
----
ALTER TABLE done ADD COLUMN paper BIGINT NOT NULL DEFAULT 0
----
-- A projection: how inspections were closed.
CREATE TABLE closing (
    inspection TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    outcome BIGINT NOT NULL,
    PRIMARY KEY (inspection, at, entry_id)
)
----
-- A projection: releases that were withdrawn.
CREATE TABLE revocation (
    inspection TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (inspection, at, entry_id)
)
