-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is asked about fabric stands in columns, as it is by now, so that no entry is read for it.
DROP TABLE reading
----
-- A projection: every reading of an item.
CREATE TABLE reading (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    quantity TEXT NOT NULL,
    value REAL NOT NULL,
    held INTEGER NOT NULL,
    below REAL,
    unit TEXT NOT NULL,
    gore INTEGER,
    panel_row INTEGER,
    direction TEXT,
    jaw_mm REAL,
    pressure_pa REAL,
    area_cm2 REAL,
    method TEXT NOT NULL,
    inspection TEXT,
    line TEXT NOT NULL,
    tester TEXT,
    confirmed INTEGER NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- A projection: every repair of an item.
CREATE TABLE repair (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    method TEXT NOT NULL,
    gore INTEGER,
    panel_row INTEGER,
    width_mm REAL,
    height_mm REAL,
    lot TEXT NOT NULL,
    defect TEXT,
    inspection TEXT,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- A projection: of which lots the panels of an envelope are.
CREATE TABLE fabric_stated (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    lot TEXT NOT NULL,
    fabric TEXT NOT NULL,
    first_gore INTEGER,
    last_gore INTEGER,
    first_row INTEGER,
    last_row INTEGER,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- The reading that a defect was found with.
ALTER TABLE defect_mark ADD COLUMN reading_id TEXT
----
-- How hot, and for how many minutes.
ALTER TABLE occurrence ADD COLUMN celsius REAL
----
ALTER TABLE occurrence ADD COLUMN lasted INTEGER
