-- SPDX-License-Identifier: GPL-3.0-or-later
-- The journal: what was written, and the chain over it. Never changed, never deleted.
CREATE TABLE writer (
    writer_no BIGINT PRIMARY KEY,
    writer_id TEXT COLLATE "C" NOT NULL UNIQUE,
    last_sequence BIGINT NOT NULL,
    last_hash BYTEA NOT NULL CHECK (length(last_hash) = 32)
)
----
CREATE TABLE entry (
    entry_no BIGINT PRIMARY KEY,
    entry_id TEXT COLLATE "C" NOT NULL UNIQUE,
    kind TEXT COLLATE "C" NOT NULL,
    dated_on TEXT COLLATE "C" NOT NULL CHECK (dated_on ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' AND CAST(dated_on AS date) IS NOT NULL),
    writer_no BIGINT NOT NULL REFERENCES writer,
    sequence BIGINT NOT NULL,
    recorded_at TEXT COLLATE "C" NOT NULL,
    hash BYTEA NOT NULL CHECK (length(hash) = 32),
    body TEXT COLLATE "C" NOT NULL,
    UNIQUE (writer_no, sequence)
)
----
CREATE FUNCTION journal_is_append_only() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'the journal is append-only'; END $$
----
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE OR DELETE ON entry
FOR EACH ROW EXECUTE FUNCTION journal_is_append_only()
----
CREATE TRIGGER entry_is_never_emptied BEFORE TRUNCATE ON entry
FOR EACH STATEMENT EXECUTE FUNCTION journal_is_append_only()
----
-- Names of items (1), balloons (2) and requirements (3): short numbers for the projections.
CREATE TABLE name (
    name_no BIGINT PRIMARY KEY,
    sort BIGINT NOT NULL,
    text TEXT COLLATE "C" NOT NULL,
    UNIQUE (sort, text)
)
----
-- From here on projections: they can be thrown away and made anew. Moments are minutes since 1970-01-01 00:00.
CREATE TABLE amendment (
    target_id TEXT COLLATE "C" NOT NULL,
    entry_no BIGINT NOT NULL REFERENCES entry,
    PRIMARY KEY (target_id, entry_no)
)
----
CREATE TABLE item_entered (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    stands BIGINT NOT NULL DEFAULT 0,
    day BIGINT NOT NULL,
    kind BIGINT NOT NULL,
    serial TEXT COLLATE "C",
    type TEXT COLLATE "C",
    made TEXT COLLATE "C",
    minutes BIGINT,
    landings BIGINT,
    inflations BIGINT,
    PRIMARY KEY (item_no, at, entry_id)
)
----
CREATE TABLE balloon_entered (
    balloon_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    stands BIGINT NOT NULL DEFAULT 0,
    day BIGINT NOT NULL,
    title TEXT COLLATE "C" NOT NULL,
    operations TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (balloon_no, at, entry_id)
)
----
CREATE TABLE fitting (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    fitted BIGINT NOT NULL,
    balloon_no BIGINT NOT NULL REFERENCES name,
    place TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
)
----
CREATE INDEX fitting_of_balloon ON fitting (balloon_no, at)
----
-- What the fittings come to. The figures are the balloon's totals where counting on the item began and ended.
CREATE TABLE stay (
    item_no BIGINT NOT NULL REFERENCES name,
    from_at BIGINT NOT NULL,
    from_id TEXT COLLATE "C" NOT NULL,
    until_at BIGINT,
    until_id TEXT COLLATE "C",
    balloon_no BIGINT NOT NULL REFERENCES name,
    place TEXT COLLATE "C" NOT NULL,
    in_minutes BIGINT NOT NULL,
    in_landings BIGINT NOT NULL,
    in_inflations BIGINT NOT NULL,
    out_minutes BIGINT,
    out_landings BIGINT,
    out_inflations BIGINT,
    PRIMARY KEY (item_no, from_at, from_id)
)
----
CREATE INDEX stay_on_balloon ON stay (balloon_no, until_at)
----
-- Flights with the balloon's running totals up to and with each; a flight with a stated kit does not count in them.
CREATE TABLE flight (
    balloon_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    counted BIGINT NOT NULL,
    timed BIGINT NOT NULL,
    minutes BIGINT NOT NULL,
    landings BIGINT NOT NULL,
    inflations BIGINT NOT NULL,
    minutes_to BIGINT NOT NULL,
    landings_to BIGINT NOT NULL,
    inflations_to BIGINT NOT NULL,
    PRIMARY KEY (balloon_no, at, entry_id)
)
----
CREATE TABLE kit_flight (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    minutes BIGINT NOT NULL,
    landings BIGINT NOT NULL,
    inflations BIGINT NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
)
----
-- Accomplishments: what the paper states of the clock, and the clock as settled.
CREATE TABLE done (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    requirement_no BIGINT NOT NULL REFERENCES name,
    method TEXT COLLATE "C",
    stated_minutes BIGINT,
    stated_landings BIGINT,
    stated_inflations BIGINT,
    minutes BIGINT,
    landings BIGINT,
    inflations BIGINT,
    PRIMARY KEY (item_no, at, entry_id)
)
----
CREATE TABLE occurrence (
    sort BIGINT NOT NULL,
    subject_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    event TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id)
)
----
CREATE TABLE reading (
    item_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (item_no, at, entry_id)
)
----
CREATE TABLE adoption (
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    programme TEXT COLLATE "C" NOT NULL,
    digest TEXT COLLATE "C" NOT NULL,
    bound TEXT COLLATE "C" NOT NULL,
    document TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (at, entry_id)
)
----
CREATE TABLE question (
    sort BIGINT NOT NULL,
    subject_no BIGINT NOT NULL REFERENCES name,
    at BIGINT NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    kind BIGINT NOT NULL,
    detail TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (sort, subject_no, at, entry_id, kind)
)
----
-- Live corrections that were left out because their result would make no sense.
CREATE TABLE idle_correction (
    root_id TEXT COLLATE "C" NOT NULL,
    entry_id TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    PRIMARY KEY (root_id, entry_id)
)
