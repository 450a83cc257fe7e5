-- SPDX-License-Identifier: GPL-3.0-or-later
-- In which part of an envelope a panel was read or repaired; nothing of its body.
ALTER TABLE reading ADD COLUMN zone TEXT COLLATE "C"
----
ALTER TABLE repair ADD COLUMN zone TEXT COLLATE "C"
