-- SPDX-License-Identifier: GPL-3.0-or-later
-- The tables stay. Programs that know nothing of this step neither ask whether another has written since nor whether what
-- they write can be read again: they may read such a record, not write on it.
SELECT 1
