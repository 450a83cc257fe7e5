-- SPDX-License-Identifier: GPL-3.0-or-later
-- What was put right in a visit counts once that is signed; what somebody said of a lesser defect may not reach a graver
-- one. Projections alone change; they are made anew after.
ALTER TABLE defect_mark ADD COLUMN cleared_in TEXT
----
-- It bars more than as it was first written.
ALTER TABLE defect_mark ADD COLUMN raised INTEGER NOT NULL DEFAULT 0
----
CREATE INDEX cleared_in_visit ON defect_mark (cleared_in) WHERE cleared_in IS NOT NULL
----
DELETE FROM tally
