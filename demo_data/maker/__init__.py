# SPDX-License-Identifier: GPL-3.0-or-later
"""The parts that make the invented demo fleet; see ../make_fleet.py."""

from datetime import date
from random import Random

SEED = 20261122
FIRST_DAY = date(2021, 1, 1)
LAST_DAY = date(2026, 11, 22)
ASKED_ON = date(2026, 11, 25)


def stream(subject: str) -> Random:
    """A source of chance of its own for each subject, so that a change in one does not stir the others."""
    return Random(f"{SEED}/{subject}")
