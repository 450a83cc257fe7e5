-- SPDX-License-Identifier: GPL-3.0-or-later
-- The tables stay. What is told under a name and what amends an entry have tallies now, made anew with the projections:
-- programs that know nothing of them may read such a record, not write on it.
SELECT 1
