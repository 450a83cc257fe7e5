-- SPDX-License-Identifier: GPL-3.0-or-later
-- What an accomplishment rests on: an inspection of the record that was released, or a paper that names who signed it.
ALTER TABLE done ADD COLUMN ref TEXT
----
ALTER TABLE done ADD COLUMN paper INTEGER NOT NULL DEFAULT 0
----
-- A projection: how inspections were closed.
CREATE TABLE closing (
    inspection TEXT NOT NULL,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    outcome INTEGER NOT NULL,
    PRIMARY KEY (inspection, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- A projection: releases that were withdrawn.
CREATE TABLE revocation (
    inspection TEXT NOT NULL,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    PRIMARY KEY (inspection, at, entry_id)
) STRICT, WITHOUT ROWID
