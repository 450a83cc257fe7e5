// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// What is stated of a registration that the balloon no longer has would ground nothing.
Result<std::optional<Problem>> outUnderAnother(const Batch& batch, const Registration& balloon) {
    const auto cards = batch.books.balloons(CivilDate::last());
    if (!cards)
        return tl::unexpected(cards.error());
    const auto card = std::ranges::find(*cards, balloon, &BalloonCard::balloon);
    if (card == cards->end() || !card->renamed || !card->out)
        return std::nullopt;
    return Problem{ReleaseFault::RenamedAndOut, {balloon, reasonOf(*card->out), reasonOf(*card->renamed)}};
}

/// How many envelopes a registration carries once a balloon has taken it: asked with the renaming, and with a fitting
/// that comes to the record after it, so that either order of arrival is refused.
class CarriedOver {
public:
    explicit CarriedOver(Books& books) : m_books(books) {}

    Result<bool> twoOn(const Registration& registration, CivilDate on) {
        const auto facts = m_books.facts({registration, {}}, on);
        if (!facts)
            return tl::unexpected(facts.error());
        return std::ranges::count(*facts, ItemKind::Envelope, &ItemFacts::kind) > 1;
    }
    Result<bool> twoSinceRenamed(const Registration& registration) {
        if (const auto read = readTaken(); !read)
            return tl::unexpected(read.error());
        const auto taken = m_taken->find(registration);
        return taken == m_taken->end() ? Result<bool>(false) : twoOn(registration, taken->second);
    }

private:
    /// Which registrations were taken by renamed balloons, and when: read once, and only where something is fitted.
    Result<void> readTaken() {
        if (m_taken)
            return {};
        const auto cards = m_books.balloons(CivilDate::last());
        if (!cards)
            return tl::unexpected(cards.error());
        m_taken.emplace();
        for (const auto& card : *cards)
            if (card.renamed)
                m_taken->emplace(card.renamed->to, card.renamed->stamp.at.on());
        return {};
    }

    Books& m_books;
    std::optional<std::map<Registration, CivilDate>> m_taken;
};

}

Findings askRenamings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<BalloonRenamed, BalloonState>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto* renamed = std::get_if<BalloonRenamed>(&(*now)->body);
        const auto out =
            outUnderAnother(batch, renamed ? renamed->balloon : std::get<BalloonState>((*now)->body).balloon);
        if (!out)
            return tl::unexpected(atLine(out.error(), line));
        if (*out)
            problems.push_back(atLine(**out, line));
    }
    CarriedOver carried(batch.books);
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<BalloonRenamed, ItemFitted>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* fitted = *now ? std::get_if<ItemFitted>(&(*now)->body) : nullptr;
        if (!*now || (fitted && fitted->to))
            continue;
        const auto* renamed = std::get_if<BalloonRenamed>(&(*now)->body);
        const auto& to = renamed ? renamed->to : fitted->balloon;
        const auto two = renamed ? carried.twoOn(to, (*now)->on) : carried.twoSinceRenamed(to);
        if (!two)
            return tl::unexpected(atLine(two.error(), line));
        if (*two)
            problems.push_back(Problem{ReleaseFault::RegistrationInUse, {to}, {{}, line, renamed ? "to" : "balloon"}});
    }
    return problems;
}

}
