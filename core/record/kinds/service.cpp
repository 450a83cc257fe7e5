// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/service.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/words.h"
#include "record/json/written.h"

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<serviceStateCount> stateWords = {"in-service", "laid-up",       "sold",        "scrapped", "lost",
                                                 "away",       "unserviceable", "quarantined", "condemned"};

std::optional<ServiceState> balloonStateFrom(std::string_view name) {
    const auto state = serviceStateFrom(name);
    return state && static_cast<int>(*state) < balloonStateCount ? state : std::nullopt;
}

template <class Stated>
void readTo(ObjectReader& reader, Stated& body) {
    body.to = reader.optionalText("to");
    if (!body.to.empty() && body.state != ServiceState::Sold && body.state != ServiceState::Away)
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
    body.state = reader.word("state", serviceStateFrom,
                             "in-service, laid-up, sold, scrapped, lost, away, unserviceable, quarantined, condemned");
    readTo(reader, body);
    body.release = readRelease(reader);
    if (body.release && body.state != ServiceState::InService)
        reader.refuse("release", EntryFault::ReleasedIntoNoService);
    return body;
}

void Kind<ItemState>::write(json& into, const ItemState& body) {
    into["item"] = body.item.text();
    writeState(into, body);
    writeRelease(into, body.release);
}

BalloonState Kind<BalloonState>::read(ObjectReader& reader) {
    BalloonState body;
    body.balloon = reader.name<Registration>("balloon");
    body.state = reader.word("state", balloonStateFrom, "in-service, laid-up, sold, scrapped, lost");
    readTo(reader, body);
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
