// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/apart/hurt_parts.h"

#include <algorithm>

namespace crownring {

namespace {

bool isIn(const Carried& in, const Stamp& at) { return !(at < in.from) && (!in.until || at < *in.until); }

/// By its own word, after `since`.
bool isReleased(const StateWords& own, const Stamp& since, const Stamp& end) {
    return std::ranges::any_of(
        own, [&](const StateWord& word) { return isBack(word) && since < word.stamp && word.stamp < end; });
}

/// It is back in it, and stands as that does; or the carrier was released or inspected while it was.
bool isBackWith(const Carried& in, const std::vector<Carried>& carried, const HurtCarrier& carrier, const Stamp& end) {
    if (std::ranges::any_of(carried,
                            [&](const Carried& again) { return again.carrier == in.carrier && isIn(again, end); }))
        return true;
    auto released = carrier.inspected;
    for (const auto& word : carrier.words)
        if (isBack(word))
            released.push_back(word.stamp);
    return std::ranges::any_of(released, [&](const Stamp& stamp) {
        return *in.until < stamp && stamp < end && std::ranges::any_of(carried, [&](const Carried& again) {
            return again.carrier == in.carrier && isIn(again, stamp);
        });
    });
}

/// The last fire while it was in, which nobody had looked at when it came out.
const Stamp* fireOn(const Carried& in, const HurtCarrier& carrier) {
    const Stamp* last = nullptr;
    for (const auto& fire : carrier.fires)
        if (isIn(in, fire) && std::ranges::none_of(carrier.inspected, [&](const Stamp& stamp) {
                return fire < stamp && stamp < *in.until;
            }))
            last = &fire;
    return last;
}

OutOfService takenOutOf(const Carried& in, const Stamp& hurt, Hurt by) {
    OutOfService out{ServiceState::Unserviceable, hurt.at.on()};
    out.part = in.carrier;
    out.takenOut = true;
    out.by = by;
    return out;
}

std::optional<OutOfService> apartBy(const Carried& in, const std::vector<Carried>& carried, const StateWords& own,
                                    const HurtCarrier& carrier, const Stamp& end) {
    const bool isOut = in.until && *in.until < end;
    if (isOut && isReleased(own, *in.until, end))
        return std::nullopt;
    const auto& hot = carrier.overheated;
    if (hot && *hot < end && (!in.until || *hot < *in.until)) {
        if (isOut)
            return takenOutOf(in, *hot, Hurt::Overheated);
        OutOfService with{ServiceState::Condemned, hot->at.on()};
        with.part = in.carrier;
        return with;
    }
    const auto* fire = isOut ? fireOn(in, carrier) : nullptr;
    return fire && !isBackWith(in, carried, carrier, end) ? std::optional(takenOutOf(in, *fire, Hurt::Fire))
                                                          : std::nullopt;
}

}

HurtCarrier hurtCarrier(const ItemFacts& carrier, std::optional<VesselMaterial> material, StateWords words) {
    HurtCarrier hurt{{}, {}, {}, std::move(words)};
    if (const auto* hot = overheatedBy(carrier, material))
        hurt.overheated = hot->stamp;
    for (const auto& event : carrier.events)
        if (event.event == "fire")
            hurt.fires.push_back(event.stamp);
    for (const auto& done : carrier.done)
        if (done.evidence != Evidence::Stated)
            hurt.inspected.push_back(done.stamp);
    return hurt;
}

std::optional<OutOfService> apartSinceHurt(const Stamp& end, const std::vector<Carried>& carried, const StateWords& own,
                                           const std::map<ItemId, HurtCarrier>& carriers) {
    std::optional<OutOfService> apart;
    const Carried* last = nullptr;
    for (const auto& in : carried) {
        const auto carrier = carriers.find(in.carrier);
        if (carrier == carriers.end() || (last && in.from < last->from))
            continue;
        if (auto found = apartBy(in, carried, own, carrier->second, end)) {
            apart = std::move(found);
            last = &in;
        }
    }
    return apart;
}

}
