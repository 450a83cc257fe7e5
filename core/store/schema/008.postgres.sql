-- SPDX-License-Identifier: GPL-3.0-or-later
-- An event falls on the kit, too, that took off on the day before and was still aloft; and the tally of an item's facts
-- knows when its kits flew. Both are made anew with the projections.
DELETE FROM tally
