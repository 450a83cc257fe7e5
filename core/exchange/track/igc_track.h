// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tracks of flight recorders in the open IGC format: FAI, Technical Specification for IGC-approved GNSS Flight
/// Recorders, Appendix A (clause names from memory: "A record", "H record", "B record - fix", "time and date"). Only
/// what a logbook needs is read: date, registration, pilot and fixes. The signature of the recorder (G record) is not
/// checked, so a track proves nothing here; it proposes.

#include "civil/civil_date.h"
#include "problem/problem.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

inline constexpr std::int64_t secondsOfDay = 86'400;

/// Where the recorder was at a second.
struct Fix {
    std::int64_t second = 0; ///< since 1970-01-01 00:00 UTC, leap seconds not counted
    double latitude = 0;     ///< degrees, north positive
    double longitude = 0;    ///< degrees, east positive, -180 to 180
    double altitude = 0;     ///< metres, above the standard pressure surface or the ellipsoid, see `IgcTrack`
};

struct IgcTrack {
    std::string balloon;           ///< HFGID: the registration, empty when not stated
    std::string pilot;             ///< HFPLT
    std::vector<Fix> fixes;        ///< three-dimensional ones (validity A), strictly in order of time
    bool pressureAltitude = false; ///< altitudes are of the pressure sensor; else of the satellites
    int withoutPosition = 0;       ///< B records of validity V: no satellite altitude, or no position at all
    int unreadable = 0;            ///< B records that break the format, say nothing possible, or go back in time
    int otherLines = 0;            ///< lines that begin with no letter of the format
};

/// Days: the H record DTE gives the first; a time that falls by more than twelve hours is the next day. A later DTE
/// record (two tracks in one file) moves on, never back. Years of two digits count from 1980, when the GPS epoch began.
/// @return FileUnreadable, or IgcBadTrack when there is no date, fewer than ten usable fixes, or no altitude in any
/// of them
[[nodiscard]] Result<IgcTrack> readIgc(std::string_view bytes, const std::string& file);

}
