-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is asked about fabric stands in columns, as it is by now, so that no entry is read for it.
DROP TABLE reading
----
-- A projection: every reading of an item.
CREATE TABLE reading (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    quantity TEXT COLLATE "C" NOT NULL,
    value DOUBLE PRECISION NOT NULL,
    held BIGINT NOT NULL,
    below DOUBLE PRECISION,
    unit TEXT COLLATE "C" NOT NULL,
    gore BIGINT,
    panel_row BIGINT,
    direction TEXT COLLATE "C",
    jaw_mm DOUBLE PRECISION,
    pressure_pa DOUBLE PRECISION,
    area_cm2 DOUBLE PRECISION,
    method TEXT COLLATE "C" NOT NULL,
    inspection TEXT COLLATE "C",
    line TEXT COLLATE "C" NOT NULL,
    tester TEXT COLLATE "C",
    confirmed BIGINT NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
)
----
-- A projection: every repair of an item.
CREATE TABLE repair (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    method TEXT COLLATE "C" NOT NULL,
    gore BIGINT,
    panel_row BIGINT,
    width_mm DOUBLE PRECISION,
    height_mm DOUBLE PRECISION,
    lot TEXT COLLATE "C" NOT NULL,
    defect TEXT COLLATE "C",
    inspection TEXT COLLATE "C",
    PRIMARY KEY (item_no, at, entry_id)
)
----
-- A projection: of which lots the panels of an envelope are.
CREATE TABLE fabric_stated (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    lot TEXT COLLATE "C" NOT NULL,
    fabric TEXT COLLATE "C" NOT NULL,
    first_gore BIGINT,
    last_gore BIGINT,
    first_row BIGINT,
    last_row BIGINT,
    PRIMARY KEY (item_no, at, entry_id)
)
----
-- The reading that a defect was found with.
ALTER TABLE defect_mark ADD COLUMN reading_id TEXT COLLATE "C"
----
-- How hot, and for how many minutes.
ALTER TABLE occurrence ADD COLUMN celsius DOUBLE PRECISION
----
ALTER TABLE occurrence ADD COLUMN lasted BIGINT
