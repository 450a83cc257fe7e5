// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/flight_said.h"

#include "registry/flight_phrase.h"

namespace crownring {

Listed sourceOf(const FlightLogged& flight) {
    Listed source;
    const auto say = [&](FlightPhrase what, Arguments arguments = {}) {
        source.list.emplace_back(Phrase{what, std::move(arguments)});
    };
    if (flight.takeOff)
        say(FlightPhrase::TakeOff, {flight.takeOff->iso().substr(0, 5)});
    if (!flight.track)
        return source;
    say(FlightPhrase::Track, {flight.track->file});
    if (flight.track->fixesSkipped > 0)
        say(FlightPhrase::FixesSkipped, {flight.track->fixesSkipped});
    if (flight.track->beganAloft)
        say(FlightPhrase::BeganAloft);
    if (flight.track->endedAloft)
        say(FlightPhrase::EndedAloft);
    return source;
}

}
