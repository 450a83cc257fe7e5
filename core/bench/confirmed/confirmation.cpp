// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/confirmed/confirmation.h"

#include "bench/release/barred_phrase.h"

#include <algorithm>

namespace crownring {

namespace {

bool isOfOwners(Capacity capacity) { return capacity == Capacity::PilotOwner || capacity == Capacity::PrivatePilot; }

std::optional<Barred> barOfServing(Capacity capacity, const Served& served) {
    if (!served.visit)
        return barOfConfirming(capacity, {});
    const auto visit = *served.visit;
    // A mechanic approves after the list of an annual (`mayApproveReturn`).
    if (served.approving && capacity == Capacity::Mechanic && visit == Visit::UsAnnual)
        return std::nullopt;
    return barOfConfirming(capacity, std::span(&visit, 1));
}

bool serves(const Confirmation& each, std::span<const Entitlement> entitlements, const Served& served) {
    const auto capacity = capacityFrom(each.said.capacity);
    if (!capacity || barOfServing(*capacity, served))
        return false;
    if (isOfOwners(*capacity) && each.said.confirmedBy != served.signatory)
        return false;
    return !notHeld(entitlements, each.said.confirmedBy, *capacity, each.on);
}

}

std::optional<Barred> barOfConfirming(Capacity capacity, std::span<const Visit> visits) {
    if (visits.empty()) {
        if (isOfReviewers(capacity))
            return std::nullopt;
        return Barred{{BarredPhrase::NoReviewer, {termOf(capacity)}}, "ML.A.901(b)"};
    }
    std::optional<Barred> first;
    for (const auto visit : visits) {
        auto barred = barOf(capacity, visit);
        if (!barred)
            return std::nullopt;
        if (!first)
            first = std::move(barred);
    }
    return first;
}

std::optional<Barred> notHeld(std::span<const Entitlement> entitlements, const PersonId& person, Capacity capacity,
                              CivilDate on) {
    if (heldBy(entitlements, person, capacity, on))
        return std::nullopt;
    return notEntitled(entitlements, {person, capacity, {}, {}, on});
}

const Confirmation* servingConfirmation(const WordingBook& book, std::span<const Entitlement> entitlements,
                                        const NamedText& named, const Served& served) {
    const Confirmation* serving = nullptr;
    for (const auto& each : book.confirmations)
        if (isOf(each.said, named) && serves(each, entitlements, served))
            serving = &each;
    return serving;
}

}
