-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is told under a name and what amends an entry have tallies now; they are made anew with the projections.
-- The balloon that a kit flew as: what happened to it on that day happened to the kit too.
ALTER TABLE kit_flight ADD COLUMN balloon_no BIGINT REFERENCES name
----
CREATE INDEX kit_flight_of_balloon ON kit_flight (balloon_no, at)
----
-- In which part of an envelope a panel was read or repaired; nothing of its body.
ALTER TABLE reading ADD COLUMN zone TEXT COLLATE "C"
----
ALTER TABLE repair ADD COLUMN zone TEXT COLLATE "C"
----
-- The last good day of what was accomplished, as a certificate prints it.
ALTER TABLE done ADD COLUMN expires BIGINT
