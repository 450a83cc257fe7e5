#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes evening.igc: the invented track of one evening flight, a fix every ten seconds.

Format: FAI, Technical Specification for IGC-approved GNSS Flight Recorders, Appendix A: lines end with CR LF, the A
record first, then the H records with the UTC date, the I record for the additions to each B record. The recorder is
invented (code XCR), so there is no G record and the file proves nothing. The place is open ocean: the valley is on
no map."""

import math
from pathlib import Path
from random import Random

SEED = 20261121
DATE = "211126"                     # DDMMYY
REGISTRATION = "QE-HFC"
TYPE = "Sedge 65"
START = 16 * 3600 + 4 * 60          # UTC second of the first fix
STEP = 10                           # seconds between fixes
BEFORE, ALOFT, AFTER = 7 * 60, 55 * 60, 6 * 60
LAUNCH = (46.4012, -12.5034)        # degrees north, east
GROUND = 412.0                      # metres above the ellipsoid at the launch field
LANDING_GROUND = 431.0
PRESSURE_OFFSET = -47.0             # pressure altitude less GNSS altitude on that evening
METRES_PER_DEGREE = 111_195.0
# Height above the launch field at minutes aloft; between them the climb is smooth.
PROFILE = ((0, 0), (4, 120), (9, 310), (15, 260), (22, 540), (30, 620), (37, 380), (43, 180), (48, 60), (51, 90),
           (55, 19))


def height(minute: float) -> float:
    """Metres above the launch field after so many minutes aloft."""
    for (start, low), (end, high) in zip(PROFILE, PROFILE[1:]):
        if minute <= end:
            share = (1 - math.cos(math.pi * (minute - start) / (end - start))) / 2
            return low + (high - low) * share
    return float(PROFILE[-1][1])


def wind(metres: float) -> tuple[float, float]:
    """East and north speed in m/s at a height: 10 km/h at the ground, 20 km/h and turned to the right above."""
    share = min(1.0, metres / 600)
    speed = (10.5 + 8.5 * share) / 3.6
    toward = math.radians(38 + 34 * share)
    return speed * math.sin(toward), speed * math.cos(toward)


def angle(degrees: float, width: int, letters: str) -> str:
    """DDMMmmm and a letter, as in a B record; `width` digits of degrees."""
    thousandths = round(abs(degrees) * 60_000)
    return f"{thousandths // 60_000:0{width}}{thousandths % 60_000:05}{letters[degrees < 0]}"


def fixes() -> list[str]:
    """The B records: standing, aloft, standing."""
    chance = Random(SEED)
    north, east = LAUNCH
    lines = []
    for second in range(0, BEFORE + ALOFT + AFTER + 1, STEP):
        aloft = second - BEFORE
        flying = 0 < aloft < ALOFT
        above = height(aloft / 60) if flying else 0.0 if aloft <= 0 else LANDING_GROUND - GROUND
        if flying:
            toward_east, toward_north = wind(above)
            gust = 1 + chance.gauss(0, 0.03)
            north += toward_north * gust * STEP / METRES_PER_DEGREE
            east += toward_east * gust * STEP / (METRES_PER_DEGREE * math.cos(math.radians(north)))
        jitter = [chance.gauss(0, 0.000008) for _ in range(2)]
        gnss = round(GROUND + above + chance.gauss(0, 1.2))
        pressure = round(GROUND + above + PRESSURE_OFFSET + chance.gauss(0, 0.5))
        clock = START + second
        lines.append(f"B{clock // 3600:02}{clock // 60 % 60:02}{clock % 60:02}"
                     f"{angle(north + jitter[0], 2, 'NS')}{angle(east + jitter[1], 3, 'EW')}"
                     f"A{pressure:05}{gnss:05}{chance.randrange(4, 9):03}{chance.randrange(9, 14):02}")
    return lines


def track() -> str:
    head = ["AXCRCRD demo track, not a certified recorder", f"HFDTEDATE:{DATE},01", "HFFXA010",
            "HFPLTPILOTINCHARGE:pilot 22", "HFCM2CREW2:NIL", f"HFGTYGLIDERTYPE:{TYPE}",
            f"HFGIDGLIDERID:{REGISTRATION}", "HFDTMGPSDATUM:WGS84", "HFRFWFIRMWAREVERSION:1", "HFRHWHARDWAREVERSION:1",
            "HFFTYFRTYPE:Invented,Skyglass 2", "HFGPSRECEIVER:invented", "HFPRSPRESSALTSENSOR:invented",
            "HFALGALTGPS:ELL", "HFALPALTPRESSURE:ISA", "HFCCLCOMPETITIONCLASS:balloon", "I023638FXA3940SIU"]
    return "\r\n".join((*head, *fixes(), "LXCRinvented data made by make_track.py")) + "\r\n"


if __name__ == "__main__":
    Path(__file__).with_name("evening.igc").write_bytes(track().encode("ascii"))
