-- SPDX-License-Identifier: GPL-3.0-or-later
-- The journal: what was written, and the chain over it. Never changed, never deleted.
CREATE TABLE writer (
    writer_no INTEGER PRIMARY KEY,
    writer_id TEXT NOT NULL UNIQUE,
    last_sequence INTEGER NOT NULL,
    last_hash BLOB NOT NULL CHECK (length(last_hash) = 32)
) STRICT
----
CREATE TABLE entry (
    entry_no INTEGER PRIMARY KEY,
    entry_id TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL,
    dated_on TEXT NOT NULL CHECK (dated_on IS date(dated_on, '+0 days')),
    writer_no INTEGER NOT NULL REFERENCES writer,
    sequence INTEGER NOT NULL,
    recorded_at TEXT NOT NULL,
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    body TEXT NOT NULL,
    UNIQUE (writer_no, sequence)
) STRICT
----
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'the journal is append-only'); END
----
CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'the journal is append-only'); END
----
-- Names of items (1), balloons (2) and requirements (3): short numbers for the projections.
CREATE TABLE name (
    name_no INTEGER PRIMARY KEY,
    sort INTEGER NOT NULL,
    text TEXT NOT NULL,
    UNIQUE (sort, text)
) STRICT
----
-- From here on projections: they can be thrown away and made anew. Moments are minutes since 1970-01-01 00:00.
CREATE TABLE amendment (
    target_id TEXT NOT NULL,
    entry_no INTEGER NOT NULL REFERENCES entry,
    PRIMARY KEY (target_id, entry_no)
) STRICT, WITHOUT ROWID
----
CREATE TABLE item_entered (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    stands INTEGER NOT NULL DEFAULT 0,
    day INTEGER NOT NULL,
    kind INTEGER NOT NULL,
    serial TEXT,
    type TEXT,
    made TEXT,
    minutes INTEGER,
    landings INTEGER,
    inflations INTEGER,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE balloon_entered (
    balloon_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    stands INTEGER NOT NULL DEFAULT 0,
    day INTEGER NOT NULL,
    title TEXT NOT NULL,
    operations TEXT NOT NULL,
    PRIMARY KEY (balloon_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE fitting (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    fitted INTEGER NOT NULL,
    balloon_no INTEGER NOT NULL REFERENCES name,
    place TEXT NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE INDEX fitting_of_balloon ON fitting (balloon_no, at)
----
-- What the fittings come to. The figures are the balloon's totals where counting on the item began and ended.
CREATE TABLE stay (
    item_no INTEGER NOT NULL REFERENCES name,
    from_at INTEGER NOT NULL,
    from_id TEXT NOT NULL,
    until_at INTEGER,
    until_id TEXT,
    balloon_no INTEGER NOT NULL REFERENCES name,
    place TEXT NOT NULL,
    in_minutes INTEGER NOT NULL,
    in_landings INTEGER NOT NULL,
    in_inflations INTEGER NOT NULL,
    out_minutes INTEGER,
    out_landings INTEGER,
    out_inflations INTEGER,
    PRIMARY KEY (item_no, from_at, from_id)
) STRICT, WITHOUT ROWID
----
CREATE INDEX stay_on_balloon ON stay (balloon_no, until_at)
----
-- Flights with the balloon's running totals up to and with each; a flight with a stated kit does not count in them.
CREATE TABLE flight (
    balloon_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    counted INTEGER NOT NULL,
    timed INTEGER NOT NULL,
    minutes INTEGER NOT NULL,
    landings INTEGER NOT NULL,
    inflations INTEGER NOT NULL,
    minutes_to INTEGER NOT NULL,
    landings_to INTEGER NOT NULL,
    inflations_to INTEGER NOT NULL,
    PRIMARY KEY (balloon_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE kit_flight (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    minutes INTEGER NOT NULL,
    landings INTEGER NOT NULL,
    inflations INTEGER NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
-- Accomplishments: what the paper states of the clock, and the clock as settled.
CREATE TABLE done (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    requirement_no INTEGER NOT NULL REFERENCES name,
    method TEXT,
    stated_minutes INTEGER,
    stated_landings INTEGER,
    stated_inflations INTEGER,
    minutes INTEGER,
    landings INTEGER,
    inflations INTEGER,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE occurrence (
    sort INTEGER NOT NULL,
    subject_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    event TEXT NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE reading (
    item_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE adoption (
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    programme TEXT NOT NULL,
    digest TEXT NOT NULL,
    bound TEXT NOT NULL,
    document TEXT NOT NULL,
    PRIMARY KEY (at, entry_id)
) STRICT, WITHOUT ROWID
----
CREATE TABLE question (
    sort INTEGER NOT NULL,
    subject_no INTEGER NOT NULL REFERENCES name,
    at INTEGER NOT NULL,
    entry_id TEXT NOT NULL,
    kind INTEGER NOT NULL,
    detail TEXT NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id, kind)
) STRICT, WITHOUT ROWID
----
-- Live corrections that were left out because their result would make no sense.
CREATE TABLE idle_correction (
    root_id TEXT NOT NULL,
    entry_id TEXT NOT NULL,
    at INTEGER NOT NULL,
    PRIMARY KEY (root_id, entry_id)
) STRICT, WITHOUT ROWID
