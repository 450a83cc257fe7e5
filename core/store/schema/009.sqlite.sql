-- SPDX-License-Identifier: GPL-3.0-or-later
-- An item may be a part of another: it is fitted to that, and flies when that does. Projections alone change; they are
-- made anew after.
DROP TABLE fitting
----
CREATE TABLE fitting (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    fitted INTEGER NOT NULL,
    balloon_no INTEGER REFERENCES name,
    carrier_no INTEGER REFERENCES name,
    place TEXT NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE INDEX fitting_of_balloon ON fitting (balloon_no, at)
----
CREATE INDEX fitting_of_carrier ON fitting (carrier_no, item_no)
----
-- What the fittings of a part and of its carriers come to: what carried it, of any depth, and what it was fitted to
-- itself (direct).
CREATE TABLE part (
    item_no INTEGER NOT NULL REFERENCES name,
    carrier_no INTEGER NOT NULL REFERENCES name,
    direct INTEGER NOT NULL,
    from_at INTEGER NOT NULL,
    from_id TEXT NOT NULL,
    until_at INTEGER,
    until_id TEXT,
    PRIMARY KEY (item_no, carrier_no, direct, from_at, from_id)
) STRICT, WITHOUT ROWID
----
CREATE INDEX part_of_carrier ON part (carrier_no, item_no)
----
-- Not its own: that of what carried it.
ALTER TABLE kit_flight ADD COLUMN carried INTEGER NOT NULL DEFAULT 0
----
ALTER TABLE occurrence ADD COLUMN carried INTEGER NOT NULL DEFAULT 0
----
DELETE FROM tally
