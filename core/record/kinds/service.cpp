// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/service.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/words.h"
#include "record/json/written.h"

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<serviceStateCount> stateWords = {"in-service", "laid-up", "sold", "scrapped", "lost"};

/// The state, and who bought it where it is sold.
template <class Stated>
void readState(ObjectReader& reader, Stated& body) {
    body.state = reader.word("state", serviceStateFrom, "in-service, laid-up, sold, scrapped, lost");
    body.to = reader.optionalText("to");
    if (!body.to.empty() && body.state != ServiceState::Sold)
        reader.refuse("to", EntryFault::BuyerWithoutSale);
}

template <class Stated>
void writeState(json& into, const Stated& body) {
    into["state"] = serviceStateName(body.state);
    writeText(into, "to", body.to);
}

}

std::string_view serviceStateName(ServiceState state) { return stateWords[static_cast<std::size_t>(state)]; }
std::optional<ServiceState> serviceStateFrom(std::string_view name) { return among<ServiceState>(stateWords, name); }

ItemState Kind<ItemState>::read(ObjectReader& reader) {
    ItemState body;
    body.item = reader.name<ItemId>("item");
    readState(reader, body);
    return body;
}

void Kind<ItemState>::write(json& into, const ItemState& body) {
    into["item"] = body.item.text();
    writeState(into, body);
}

BalloonState Kind<BalloonState>::read(ObjectReader& reader) {
    BalloonState body;
    body.balloon = reader.name<Registration>("balloon");
    readState(reader, body);
    return body;
}

void Kind<BalloonState>::write(json& into, const BalloonState& body) {
    into["balloon"] = body.balloon.text();
    writeState(into, body);
}

BalloonRenamed Kind<BalloonRenamed>::read(ObjectReader& reader) {
    BalloonRenamed body{reader.name<Registration>("balloon"), reader.name<Registration>("to")};
    if (body.to == body.balloon)
        reader.refuse("to", EntryFault::SameRegistration);
    return body;
}

void Kind<BalloonRenamed>::write(json& into, const BalloonRenamed& body) {
    into["balloon"] = body.balloon.text();
    into["to"] = body.to.text();
}

}
