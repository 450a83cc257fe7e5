// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/igc_flight.h"

#include "exchange/track/airborne.h"
#include "exchange/track/motion.h"
#include "exchange/track/track_phrase.h"
#include "problem/faults/track_fault.h"

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

/// What an altitude wanders while nothing moves, metres (common practice, no source): a pressure sensor by little,
/// satellites by more.
double nearGround(const IgcTrack& track) { return track.pressureAltitude ? 4 : 8; }

const Fix& fixAt(const IgcTrack& track, std::int64_t second) {
    const auto after = std::lower_bound(track.fixes.begin(), track.fixes.end(), second,
                                        [](const Fix& fix, std::int64_t at) { return fix.second < at; });
    return after == track.fixes.end() ? track.fixes.back() : *after;
}

/// A flight in the making: its spans so far.
struct Stretch {
    std::vector<AirborneSpan> spans;
};

/// The recorder fell silent in the air and woke in the air.
bool continues(const AirborneSpan& before, const AirborneSpan& after) {
    constexpr std::int64_t longestSilence = 30 * 60;
    return before.endedAloft && after.beganAloft && after.takeOff - before.landing <= longestSilence;
}

/// A stop on the way, the balloon still standing.
bool staysInflated(const IgcTrack& track, const AirborneSpan& before, const AirborneSpan& after) {
    constexpr std::int64_t longestStop = 30 * 60;
    constexpr double farthestWalked = 300;
    return !before.endedAloft && !after.beganAloft && !before.drivenAfter &&
           after.takeOff - before.landing < longestStop &&
           metresBetween(fixAt(track, before.landing), fixAt(track, after.takeOff)) < farthestWalked;
}

std::vector<Stretch> stretchesOf(const IgcTrack& track, const std::vector<AirborneSpan>& spans) {
    std::vector<Stretch> stretches;
    for (const auto& span : spans) {
        const auto* last = stretches.empty() ? nullptr : &stretches.back().spans.back();
        if (last && continues(*last, span)) {
            stretches.back().spans.back().landing = span.landing;
            stretches.back().spans.back().endedAloft = span.endedAloft;
            stretches.back().spans.back().drivenAfter = span.drivenAfter;
        } else if (last && staysInflated(track, *last, span)) {
            stretches.back().spans.push_back(span);
        } else {
            stretches.push_back({{span}});
        }
    }
    return stretches;
}

TrackFlight flightOf(const IgcTrack& track, const Stretch& stretch) {
    const auto& first = stretch.spans.front();
    const auto& last = stretch.spans.back();
    TrackFlight flight;
    flight.takeOff = fixAt(track, first.takeOff);
    flight.takeOff.second = first.takeOff;
    flight.landing = fixAt(track, last.landing);
    flight.landing.second = last.landing;
    std::int64_t seconds = 0;
    for (const auto& span : stretch.spans)
        seconds += span.landing - span.takeOff;
    flight.minutes = Minutes(std::max<std::int64_t>(1, (seconds + 30) / 60));
    flight.landings = Landings(static_cast<std::int64_t>(stretch.spans.size()));
    flight.highest = flight.takeOff.altitude;
    for (const auto& fix : track.fixes)
        if (fix.second >= first.takeOff && fix.second <= last.landing)
            flight.highest = std::max(flight.highest, fix.altitude);
    flight.beganAloft = first.beganAloft;
    flight.endedAloft = last.endedAloft;
    return flight;
}

std::vector<AirborneSpan> spansIn(const IgcTrack& track, int& thrownOut) {
    const auto motion = motionOf(track);
    thrownOut = motion.thrownOut;
    std::vector<AirborneSpan> spans;
    for (const auto& piece : motion.pieces) {
        const auto found = airborneSpans(piece, nearGround(track));
        spans.insert(spans.end(), found.begin(), found.end());
    }
    return spans;
}

Result<std::vector<TrackFlight>> flightsCounting(const IgcTrack& track, const std::string& file, int& thrownOut) {
    std::vector<TrackFlight> flights;
    for (const auto& stretch : stretchesOf(track, spansIn(track, thrownOut)))
        flights.push_back(flightOf(track, stretch));
    if (flights.empty())
        return problem(TrackFault::NoFlight, {}, {file, 0, {}});
    return flights;
}

std::string withoutFolders(const std::string& file) { return file.substr(file.find_last_of("/\\") + 1); }

FlightProposal proposalOf(const TrackFlight& flight, const Registration& balloon, const std::string& pilot,
                          const std::string& file, int skipped) {
    FlightProposal proposal;
    const auto day = flight.takeOff.second / secondsOfDay;
    const auto minute = static_cast<int>(flight.takeOff.second % secondsOfDay / 60);
    proposal.balloon = balloon;
    proposal.on = CivilDate::fromDayNumber(day);
    proposal.time = TimeOfDay(minute / 60, minute % 60);
    proposal.flight.balloon = balloon;
    proposal.flight.use = {flight.minutes, flight.landings, Inflations(1)};
    proposal.by = pilot;
    proposal.flight.track = TrackSource{withoutFolders(file), skipped, flight.beganAloft, flight.endedAloft,
                                        Metres(std::round(flight.highest))};
    return proposal;
}

}

Result<std::vector<TrackFlight>> flightsIn(const IgcTrack& track, const std::string& file) {
    int thrownOut = 0;
    return flightsCounting(track, file, thrownOut);
}

Result<TrackPreview> previewTrack(std::string_view bytes, const std::string& file,
                                  const std::optional<Registration>& balloon) {
    auto track = readIgc(bytes, file);
    if (!track)
        return tl::unexpected(track.error());
    int thrownOut = 0;
    auto flights = flightsCounting(*track, file, thrownOut);
    if (!flights)
        return tl::unexpected(flights.error());
    TrackPreview preview{std::move(*track), std::move(*flights), {}, {}};
    const auto named = balloon.value_or(Registration(preview.track.balloon));
    const int skipped = preview.track.withoutPosition + preview.track.unreadable + thrownOut;
    for (const auto& flight : preview.flights)
        preview.proposals.push_back(proposalOf(flight, named, preview.track.pilot, file, skipped));
    if (named.empty())
        preview.remarks.push_back({TrackPhrase::NamesNoBalloon, {}});
    if (!preview.track.pressureAltitude)
        preview.remarks.push_back({TrackPhrase::SatelliteAltitudes, {}});
    return preview;
}

}
