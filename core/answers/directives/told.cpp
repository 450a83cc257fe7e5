// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/told.h"

#include "text/blank.h"

#include <algorithm>
#include <map>
#include <set>

namespace crownring {

namespace {

template <class Body>
Result<std::vector<Said<Body>>> saidOf(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Directive, {}, {kindName<Body>()}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Said<Body>> said;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* body = std::get_if<Body>(&now.body))
            said.push_back({now.id, stampOf(now), now.by, now.note, *body, std::nullopt});
    }
    return said;
}

bool accepts(const DirectiveIssued& issued, const DirectiveAnswered& answer) {
    return answer.directive == issued.directive &&
           (answer.revision == issued.revision ||
            std::ranges::find(issued.credits, answer.revision) != issued.credits.end());
}

Evidence evidenceOf(const DirectiveAnswered& answer) {
    if (answer.inspection)
        return Evidence::Signed;
    return isBlank(answer.licence) || isBlank(answer.ref) ? Evidence::Stated : Evidence::Paper;
}

/// A visit, a capacity or a paper stands behind it: what an earlier program took by itself excuses nothing.
bool isShown(const DirectiveAnswered& answer) {
    return evidenceOf(answer) != Evidence::Stated || !isBlank(answer.capacity);
}

/// What is stated takes the place of what is computed.
Figures statedElse(Figures stated, const std::optional<Figures>& computed) {
    if (!computed)
        return stated;
    if (!stated.minutes)
        stated.minutes = computed->minutes;
    if (!stated.landings)
        stated.landings = computed->landings;
    if (!stated.inflations)
        stated.inflations = computed->inflations;
    return stated;
}

/// Is anything on the clock since then? What is not known may be; what came into the record later flew where nobody saw
/// it, unless it is new.
bool mayHaveFlown(const std::optional<Figures>& then, const Figures& now) {
    const auto before = then.value_or(newFigures).minutes;
    return !before || before != now.minutes;
}

class Reader {
public:
    Reader(Books& books, const std::vector<ItemFacts>& items, const DirectivesAsked& asked)
        : m_books(books), m_items(items), m_asked(asked) {}

    Result<std::vector<DirectiveRow>> rows() {
        auto issued = directivesIssued(m_books, m_asked.on);
        if (!issued)
            return tl::unexpected(issued.error());
        if (issued->empty())
            return std::vector<DirectiveRow>();
        m_issued = std::move(*issued);
        auto answers = saidOf<DirectiveAnswered>(m_books, m_asked.on);
        if (!answers)
            return tl::unexpected(answers.error());
        m_answers = std::move(*answers);
        const bool asksParts =
            std::ranges::any_of(m_issued, [](const auto& each) { return !each.body.applies.fitted.empty(); });
        auto parts = asksParts ? PartsKnown::read(m_books, m_asked.on) : PartsKnown::withoutLists(m_books);
        if (!parts)
            return tl::unexpected(parts.error());
        m_parts = std::move(*parts);
        if (asksParts)
            if (const auto read = readFitted(); !read)
                return tl::unexpected(read.error());
        if (const auto read = readBalloonAnswers(); !read)
            return tl::unexpected(read.error());
        std::vector<DirectiveRow> rows;
        for (const auto& [issue, life] : lives())
            for (const auto& item : m_items)
                if (std::ranges::find(issue->body.applies.kinds, item.kind) != issue->body.applies.kinds.end())
                    if (const auto added = add(rows, *issue, life, item); !added)
                        return tl::unexpected(added.error());
        if (const auto stood = stand(rows); !stood)
            return tl::unexpected(stood.error());
        return rows;
    }

private:
    struct Issue {
        const Said<DirectiveIssued>* issued;
        DirectiveRow::Life life;
    };
    /// What is in force, and where everything is asked for the others, in the order of their stamps.
    [[nodiscard]] std::vector<Issue> lives() const {
        const auto all = livesOn(m_issued, m_asked.on);
        std::vector<Issue> issues;
        for (std::size_t i = 0; i < all.size(); ++i)
            if (m_asked.everyLife || all[i] == DirectiveRow::Life::InForce)
                issues.push_back({&m_issued[i], all[i]});
        return issues;
    }

    /// What is on the balloons of the items: all that would fly together, where that is asked.
    Result<void> readFitted() {
        if (m_asked.as.balloon)
            return {};
        std::set<Registration> balloons;
        for (const auto& item : m_items)
            if (item.balloon)
                balloons.insert(*item.balloon);
        for (const auto& balloon : balloons) {
            auto facts = m_books.facts({balloon, {}}, m_asked.on);
            if (!facts)
                return tl::unexpected(facts.error());
            m_fitted.emplace(balloon, std::move(*facts));
        }
        std::vector<ItemId> loose;
        for (const auto& item : m_items)
            if (!item.balloon)
                loose.push_back(item.id);
        if (loose.empty())
            return {};
        auto withTheirParts = m_books.facts({std::nullopt, std::move(loose), true}, m_asked.on);
        if (!withTheirParts)
            return tl::unexpected(withTheirParts.error());
        m_loose = std::move(*withTheirParts);
        return {};
    }

    [[nodiscard]] std::vector<const ItemFacts*> beside(const ItemFacts& item) const {
        std::vector<const ItemFacts*> found;
        const auto fitted = item.balloon ? m_fitted.find(*item.balloon) : m_fitted.end();
        const auto& all = m_asked.as.balloon ? m_items : fitted == m_fitted.end() ? m_none : fitted->second;
        for (const auto& each : all)
            found.push_back(&each);
        if (!found.empty())
            return found;
        found.push_back(&item);
        for (std::size_t at = 0; at < found.size(); ++at)
            for (const auto& each : m_loose)
                if (each.carrier == found[at]->id && each.id != item.id)
                    found.push_back(&each);
        return found;
    }

    /// An answer for a balloon is one for all that was on it then.
    Result<void> readBalloonAnswers() {
        for (const auto& answer : m_answers)
            if (answer.body.balloon) {
                auto on = onBalloonBefore(m_books, *answer.body.balloon, answer.stamp);
                if (!on)
                    return tl::unexpected(on.error());
                m_onBalloon.emplace(answer.id, std::move(*on));
            }
        return {};
    }
    [[nodiscard]] bool isFor(const Said<DirectiveAnswered>& answer, const ItemId& item) const {
        if (answer.body.item)
            return *answer.body.item == item;
        const auto on = m_onBalloon.find(answer.id);
        return on != m_onBalloon.end() && on->second.contains(item);
    }

    Result<bool> counts(const DirectiveAnswered& answer) {
        if (!answer.inspection || answer.inspection == m_asked.releasing)
            return true;
        const auto known = m_released.find(*answer.inspection);
        if (known != m_released.end())
            return known->second;
        const auto told = m_books.told({Subject::Inspection, answer.inspection->text(), {}, m_asked.on});
        if (!told)
            return tl::unexpected(told.error());
        const auto visit = inspectionFrom(*answer.inspection, *told);
        if (!visit)
            return tl::unexpected(visit.error());
        const bool isReleased = visit->closed && visit->closed->body.outcome == Outcome::Released && !visit->revoked;
        return m_released[*answer.inspection] = isReleased || visit->approved;
    }

    /// What was said of parts that came in since is not said of them.
    Result<bool> isStale(const Said<DirectiveAnswered>& answer, const DirectiveIssued& issued, const ItemFacts& item) {
        if (issued.applies.fitted.empty())
            return false;
        const auto day = answer.stamp.at.on();
        auto facts = m_books.facts({std::nullopt, {item.id}, true}, day);
        if (facts && !facts->empty() && facts->front().balloon)
            facts = m_books.facts({facts->front().balloon, {}}, day);
        if (!facts)
            return tl::unexpected(facts.error());
        std::vector<const ItemFacts*> then;
        for (const auto& each : *facts)
            then.push_back(&each);
        if (then.empty()) // history on paper, of before it came into the record
            then = beside(item);
        const auto before = partsBehind(issued.applies, item, then, m_parts.before(answer.stamp));
        const auto now = partsBehind(issued.applies, item, beside(item), m_parts);
        return !std::ranges::includes(before, now);
    }

    Result<void> add(std::vector<DirectiveRow>& rows, const Said<DirectiveIssued>& issue, DirectiveRow::Life life,
                     const ItemFacts& item) {
        DirectiveRow row{&item, issue.body, life, appliesTo(issue.body.applies, item, beside(item), m_parts),
                         {},    {},         {}};
        bool isAnswered = false;
        for (const auto& answer : m_answers) {
            if (!accepts(issue.body, answer.body) || !isFor(answer, item.id))
                continue;
            isAnswered |= answer.body.revision == issue.body.revision;
            const auto stale = isStale(answer, issue.body, item);
            const auto counted = counts(answer.body);
            if (!stale || !counted)
                return tl::unexpected(stale ? counted.error() : stale.error());
            if (*stale || !*counted)
                continue;
            if (answer.body.answer == DirectiveAnswer::Done)
                row.done.push_back({answer, answer.body.clock, evidenceOf(answer.body)});
            else if (row.applicability.applies == Truth::Unknown && isShown(answer.body))
                row.excused = answer;
        }
        if (row.excused)
            row.applicability.applies = Truth::No;
        if (life != DirectiveRow::Life::Superseded || isAnswered)
            rows.push_back(std::move(row));
        return {};
    }

    /// All clocks are asked for at once.
    Result<void> stand(std::vector<DirectiveRow>& rows) {
        std::vector<ItemDay> wanted;
        for (const auto& row : rows) {
            wanted.push_back({row.item->id, row.directive.effective});
            wanted.push_back({row.item->id, addDays(row.directive.effective, -1)});
            for (const auto& done : row.done)
                wanted.push_back({row.item->id, done.said.stamp.at.on()});
        }
        const auto clocks = m_books.clocks(wanted);
        if (!clocks)
            return tl::unexpected(clocks.error());
        std::size_t next = 0;
        for (auto& row : rows) {
            const auto atEffective = (*clocks)[next++];
            const auto before = (*clocks)[next++];
            for (auto& done : row.done) {
                const auto computed = beforeMoment((*clocks)[next++], *row.item, done.said.stamp);
                if (!computed)
                    return tl::unexpected(computed.error());
                done.clock = statedElse(done.clock, *computed);
            }
            if (row.life != DirectiveRow::Life::InForce || row.applicability.applies == Truth::No)
                continue;
            std::vector<Compliance> done;
            for (const auto& each : row.done)
                done.push_back(
                    {each.said.stamp.at.on(), each.clock, each.said.body.method, each.said.body.terminating});
            row.state = crownring::standingOf(directiveFrom(row.directive), done, atEffective.value_or(Figures()),
                                              row.item->clock, m_asked.on);
            const bool isPast = row.directive.until && *row.directive.until < m_asked.on;
            row.atOnce =
                row.directive.beforeFlight && row.done.empty() && !isPast && !mayHaveFlown(before, row.item->clock);
        }
        return {};
    }

    /// The clock at the end of the day without what its balloon flew after the moment.
    Result<std::optional<Figures>> beforeMoment(std::optional<Figures> clock, const ItemFacts& item,
                                                const Stamp& moment) {
        if (!clock || !item.balloon)
            return clock;
        const auto flights = m_books.flights(*item.balloon, moment.at.on(), moment.at.on());
        if (!flights)
            return tl::unexpected(flights.error());
        for (const auto& flight : *flights)
            if (moment < flight.stamp)
                *clock = *clock + (Usage{} - flight.use);
        return clock;
    }

    Books& m_books;
    const std::vector<ItemFacts>& m_items;
    const DirectivesAsked& m_asked;
    const std::vector<ItemFacts> m_none;
    std::vector<Said<DirectiveIssued>> m_issued;
    std::vector<Said<DirectiveAnswered>> m_answers;
    PartsKnown m_parts;
    std::map<Registration, std::vector<ItemFacts>> m_fitted;
    std::vector<ItemFacts> m_loose; ///< with what is a part of them
    std::map<EntryId, std::set<ItemId>> m_onBalloon;
    std::map<InspectionId, bool> m_released;
};

}

Result<std::vector<Said<DirectiveIssued>>> directivesIssued(Books& books, CivilDate on) {
    return saidOf<DirectiveIssued>(books, on);
}

std::vector<DirectiveRow::Life> livesOn(const std::vector<Said<DirectiveIssued>>& issued, CivilDate on) {
    std::vector<Directive> all;
    for (const auto& each : issued)
        all.push_back(directiveFrom(each.body));
    const auto inForce = inForceOn(all, on);
    std::vector<DirectiveRow::Life> lives;
    for (const auto& each : all)
        lives.push_back(std::ranges::find(inForce, &each) != inForce.end() ? DirectiveRow::Life::InForce
                        : on < each.effective                              ? DirectiveRow::Life::Upcoming
                                                                           : DirectiveRow::Life::Superseded);
    return lives;
}

std::vector<Limit> limitsFrom(const DoneWithin& within) {
    std::vector<Limit> limits;
    const auto add = [&](ClockName clock, const std::optional<std::int64_t>& every) {
        if (every)
            limits.push_back({.clock = clock, .every = *every, .first = {}, .lookAhead = {}});
    };
    add(ClockName::Minutes, within.minutes);
    add(ClockName::Landings, within.landings);
    add(ClockName::Inflations, within.inflations);
    add(ClockName::Days, within.days);
    add(ClockName::Months, within.months);
    return limits;
}

Directive directiveFrom(const DirectiveIssued& issued) {
    return {issued.directive.text(),
            issued.revision,
            issued.issuer,
            issued.issuedBy,
            issued.state,
            issued.effective,
            issued.recommended ? Force::Recommended : Force::Mandatory,
            {},
            {issued.beforeFlight, issued.until, limitsFrom(issued.first)},
            limitsFrom(issued.repeat),
            [&] {
                std::vector<std::string> numbers;
                for (const auto& each : issued.supersedes)
                    numbers.push_back(each.text());
                return numbers;
            }()};
}

Result<std::vector<DirectiveRow>> directiveRows(Books& books, const std::vector<ItemFacts>& items,
                                                const DirectivesAsked& asked) {
    return Reader(books, items, asked).rows();
}

}
