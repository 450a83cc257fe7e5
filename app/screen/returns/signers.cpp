// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/returns/signers.h"

#include "words/border.h"
#include "words/sentence.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

template <class BarOf>
std::vector<Choice> offered(std::span<const Entitlement> entitlements, const Signatory& blank, const BarOf& barOf) {
    std::vector<Choice> people;
    for (const auto& each : entitlements) {
        auto signatory = blank;
        signatory.person = each.person;
        signatory.capacity = each.capacity;
        const std::optional<Barred> bar = barOf(signatory);
        const auto signer = QVariant::fromValue(Signer{each.person, each.capacity});
        if (std::ranges::find(people, signer, &Choice::of) != people.end())
            continue;
        people.push_back(
            {inward(each.person.text()),
             QCoreApplication::translate("Signers", "%1, %2")
                 .arg(inward(each.person.text()), words::said(termOf(each.capacity))),
             bar ? joined({words::said(bar->why), inward(bar->rule)}, QStringLiteral(" · ")) : inward(each.licence), -1,
             -1, !bar, signer});
    }
    std::ranges::stable_sort(people, [](const Choice& a, const Choice& b) { return a.chosen > b.chosen; });
    return people;
}

}

std::vector<Choice> signersOf(std::span<const Entitlement> entitlements, const Signatory& blank, Visit visit) {
    return offered(entitlements, blank,
                   [&](const Signatory& signatory) { return mayRelease(entitlements, signatory, visit); });
}

std::vector<Choice> approversOf(std::span<const Entitlement> entitlements, const Signatory& blank, Visit visit) {
    return offered(entitlements, blank,
                   [&](const Signatory& signatory) { return mayApproveReturn(entitlements, signatory, visit); });
}

std::optional<Signer> signerAt(const ChoiceModel& people, int at) {
    const auto& choices = people.choices();
    if (at < 0 || at >= static_cast<int>(choices.size()))
        return std::nullopt;
    return choices[static_cast<std::size_t>(at)].of.value<Signer>();
}

int placeOf(const std::optional<Signer>& signer, const ChoiceModel& people) {
    const auto& choices = people.choices();
    const auto at = std::ranges::find(choices, QVariant::fromValue(signer.value_or(Signer{})), &Choice::of);
    return !signer || at == choices.end() ? -1 : static_cast<int>(at - choices.begin());
}

}
