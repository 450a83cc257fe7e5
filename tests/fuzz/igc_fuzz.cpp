// SPDX-License-Identifier: GPL-3.0-or-later
/// Any bytes read as a track: no crash, and every flight found lies in order of time and takes at least a minute.

#include "exchange/track/igc_flight.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    using namespace crownring;
    const auto preview = previewTrack({reinterpret_cast<const char*>(bytes), size}, "track.igc");
    if (!preview)
        return 0;
    std::int64_t before = 0;
    for (const auto& flight : preview->flights) {
        if (flight.takeOff.second < before || flight.landing.second < flight.takeOff.second ||
            flight.minutes.value() < 1)
            std::abort();
        before = flight.landing.second;
    }
    return 0;
}
