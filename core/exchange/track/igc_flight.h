// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The flights of a track, as proposals for the record; nothing is written here.
///
/// How good the times are, measured on made tracks (tests/exchange, twelve seeds that the figures were not chosen on):
/// with a pressure sensor all of 912 tracks gave take-off and landing within a minute of the truth; with altitudes of
/// satellites only, 450 of 456 tracks did, the others up to two minutes late or with a drive taken for a flight. No
/// track of a real balloon has been tried.

#include "exchange/track/igc_track.h"
#include "registry/flight_proposal.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// One flight found in a track. It may touch down on the way: standing for less than half an hour at one place keeps
/// the balloon inflated and belongs to one flight (common practice, no source).
struct TrackFlight {
    Fix takeOff;
    Fix landing;
    Minutes minutes;         ///< off the ground, stops not counted; the nearest whole minute, at least 1
    Landings landings{1};    ///< with the last one
    double highest = 0;      ///< metres, as the track's altitudes
    bool beganAloft = false; ///< the recording begins in the air: the minutes are too few
    bool endedAloft = false; ///< it ends in the air: likewise
};

/// @return the flights in order of time; IgcNoFlight when there is none
[[nodiscard]] Result<std::vector<TrackFlight>> flightsIn(const IgcTrack& track, const std::string& file);

struct TrackPreview {
    IgcTrack track;
    std::vector<TrackFlight> flights;
    std::vector<FlightProposal> proposals; ///< one for each flight; the balloon is empty when nobody names it
    std::vector<Phrase> remarks;
};

/// Day and time of a proposal are those of the take-off, in UTC.
/// @param balloon stands above the registration that the track states
[[nodiscard]] Result<TrackPreview> previewTrack(std::string_view bytes, const std::string& file,
                                                const std::optional<Registration>& balloon = std::nullopt);

}
