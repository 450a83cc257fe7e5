// SPDX-License-Identifier: GPL-3.0-or-later
/// Any bytes read as a flight log: no crash, and no row is lost between good, bad and waiting.

#include "exchange/log/flight_log.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <set>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    using namespace crownring;
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    FlightLogChoices choices;
    if (size % 3 == 1)
        choices.balloon = Registration("QE-RYE");
    if (size % 5 == 1)
        choices.columns = {{LogColumn::Date, 0}, {LogColumn::Duration, 1}};
    const auto log = previewFlightLog(text, "log.csv", choices);
    std::set<int> other(log.waiting.begin(), log.waiting.end());
    for (const auto& bad : log.badRows)
        other.insert(bad.where.line);
    for (const auto& flight : log.flights)
        if (flight.flight.use.minutes.value() < 1 || flight.balloon.empty() || other.contains(flight.line))
            std::abort();
    // A broken quote above the header is no row below it, so there may be more problems than rows, never fewer.
    if (!log.refused && static_cast<int>(other.size() + log.flights.size()) < log.rows)
        std::abort();
    return 0;
}
