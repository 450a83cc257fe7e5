-- SPDX-License-Identifier: GPL-3.0-or-later
-- The last good day of what was accomplished, as a certificate prints it.
ALTER TABLE done ADD COLUMN expires BIGINT
