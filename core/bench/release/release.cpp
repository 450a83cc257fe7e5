// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release.h"

#include "bench/release/accomplished.h"
#include "bench/release/barred_phrase.h"
#include "bench/release/extent.h"
#include "bench/release/not_asked.h"
#include "bench/release/reading_refusals.h"
#include "bench/release/release_phrase.h"
#include "bench/release/scope_refusals.h"
#include "bench/release/work_refusals.h"
#include "problem/faults/release_fault.h"
#include "registry/reading_phrase.h"
#include "registry/reading_said.h"
#include "rules/due/defects.h"
#include "text/blank.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace crownring {

namespace {

constexpr const char* doneRule = "ML.A.801(a); 14 CFR 43.15(c)(1) (from memory)";

Argument titleOf(const WorkLine& work) { return work.line ? work.line->title : work.settled->body.line; }

Argument onItem(Argument what, const ItemFacts* item) {
    return item ? Argument(Phrase{ReadingPhrase::OfItem, {std::move(what), item->id}}) : what;
}

Argument titleOn(const WorkLine& work) { return onItem(titleOf(work), work.item); }

Argument readOn(const ReadingTaken& reading) { return Phrase{ReadingPhrase::OfItem, {said(reading), reading.item}}; }

/// An earlier release after incomplete maintenance says that it is to be done.
bool isLeftOutstanding(const BenchFile& file, const WorkLine& work) {
    if (!file.inspection.incomplete || work.state() == LineState::Done)
        return false;
    const auto id = work.line ? work.line->id : work.settled->body.line;
    const auto item = work.item ? std::optional(work.item->id) : std::nullopt;
    return std::ranges::any_of(file.inspection.incomplete->body.outstanding,
                               [&](const Outstanding& each) { return each.line == id && each.item == item; });
}

class Gate {
public:
    Gate(const BenchFile& file, const Signing& signing) : m_file(file), m_signing(signing) {}

    std::vector<Refusal> ask() && {
        if (m_file.inspection.closed) {
            refuse({Refusal::Kind::Closed, ReleaseFault::ClosedAlready, {}, {}});
            return std::move(m_refusals);
        }
        askOrder();
        askIncomplete();
        const auto lines = workLines(m_file.inspection, m_file.items);
        if (m_signing.outcome != Outcome::Abandoned) {
            take(refusalsOfScope(m_file));
            for (const auto& work : lines)
                askLine(work);
            take(refusalsOfReadings(m_file));
            take(refusalsOfWork(m_file, m_signing));
            askDefects();
            askGoesWith();
            askExcepted();
            askSignatory();
            askContent();
        }
        return std::move(m_refusals);
    }

private:
    void refuse(Refusal refusal) { m_refusals.push_back(std::move(refusal)); }
    void take(std::vector<Refusal> refusals) { std::ranges::move(refusals, std::back_inserter(m_refusals)); }

    void askOrder() {
        const auto opened = m_file.inspection.opened.stamp.at.on();
        for (const auto& line : m_file.inspection.lines)
            if (line.stamp.at.on() < opened)
                refuse({Refusal::Kind::Order,
                        ReleaseFault::SaidBefore,
                        {line.body.line, opened},
                        {},
                        line.body.line,
                        line.body.item});
        for (const auto* reading : speakingReadings(m_file.inspection))
            if (reading->stamp.at.on() < opened)
                refuse({Refusal::Kind::Order,
                        ReleaseFault::SaidBefore,
                        {readOn(reading->body), opened},
                        {},
                        reading->body.line,
                        reading->body.item});
        if (m_signing.on < opened)
            refuse({Refusal::Kind::Order, ReleaseFault::BeforeOpening, {opened}, {}});
    }

    /// ML.A.801(f): what was not done is known, and under which limitation it may fly.
    void askIncomplete() {
        if (m_signing.outcome == Outcome::Abandoned && m_file.inspection.incomplete)
            refuse({Refusal::Kind::Closed, ReleaseFault::AbandonedAfterRelease, {}, "ML.A.801(f) (from memory)"});
        if (m_signing.outcome != Outcome::Incomplete)
            return;
        if (regimeOf(m_file.visit()) != Regime::PartMl)
            refuse({Refusal::Kind::Signatory,
                    ReleaseFault::MayNotSign,
                    {Phrase{BarredPhrase::IncompleteInTheUs, {}}},
                    "ML.A.801(f) (from memory)"});
        if (outstandingLines(m_file, m_signing.outstanding).empty())
            refuse({Refusal::Kind::Content, ReleaseFault::NothingOutstanding, {}, "ML.A.801(f) (from memory)"});
        if (isBlank(m_signing.limitations))
            refuse({Refusal::Kind::Content, ReleaseFault::NoLimitation, {}, "ML.A.801(f) (from memory)"});
    }

    void askLine(const WorkLine& work) {
        const auto item = work.item ? std::optional(work.item->id) : std::nullopt;
        const auto id = work.line ? work.line->id : work.settled->body.line;
        if (work.state() == LineState::Open || isLeftOutstanding(m_file, work)) {
            const bool owed = isLeftOutstanding(m_file, work);
            if ((work.isMissing() || owed) && m_signing.outcome != Outcome::Incomplete)
                refuse({Refusal::Kind::LineOpen,
                        owed ? ReleaseFault::LeftOutstanding : ReleaseFault::LineOpen,
                        {titleOn(work)},
                        sourceOf(work),
                        id,
                        item});
            return;
        }
        if (work.state() == LineState::NotApplicable && !work.settled->body.why)
            refuse({Refusal::Kind::LineOpen, ReleaseFault::WhyNotSaid, {titleOn(work)}, sourceOf(work), id, item});
        if (work.state() == LineState::NotApplicable || !work.line)
            return;
        if (work.asksTester())
            if (auto refusal = refusalOfTester(m_file, work.settled->body.tester, work.settled->stamp.at.on(),
                                               titleOn(work), {id, item}))
                refuse(std::move(*refusal));
        if (work.item)
            askReadings(work);
    }

    [[nodiscard]] std::string sourceOf(const WorkLine& work) const {
        return std::string(work.clauseUnder(regimeOf(m_file.visit())));
    }

    void askReadings(const WorkLine& work) {
        bool enough = true;
        for (const auto& asked : work.line->readings)
            for (const auto& count : limitCounts(m_file, *work.item, asked))
                if (!count.enough()) {
                    enough = false;
                    refuse({Refusal::Kind::NoReading,
                            ReleaseFault::TooFewReadings,
                            {onItem(readFor(asked, count.limit), work.item), count.taken, count.wanted},
                            count.limit && !count.limit->source.empty() ? count.limit->source : sourceOf(work),
                            work.line->id,
                            work.item->id});
                }
        if (enough && work.line->isTest() && !isRead(m_file, *work.item, work.line->readings))
            refuse({Refusal::Kind::NoReading,
                    ReleaseFault::NothingRead,
                    {titleOn(work)},
                    sourceOf(work),
                    work.line->id,
                    work.item->id});
    }

    [[nodiscard]] static Argument readFor(const AskedReading& asked, const StatedLimit* limit) {
        if (!limit)
            return quantityTerm(asked.quantity);
        auto test = testedAs(seriesOf(limit->quantity, limit->conditions));
        if (!limit->conditions.direction)
            return test;
        return Phrase{ReadingPhrase::Along, {std::move(test), Term{Term::Of::Direction, *limit->conditions.direction}}};
    }

    void askDefects() {
        bool any = false;
        for (const auto& item : m_file.items)
            for (const auto& defect : openDefects(item)) {
                any = true;
                if (isRelease(m_signing.outcome) && bars(defect, item, m_signing.on))
                    refuse({Refusal::Kind::Defect,
                            ReleaseFault::DefectBarsFlight,
                            {whatOf(m_file, *defect.found), item.id},
                            regimeOf(m_file.visit()) == Regime::PartMl ? "ML.A.403(a); ML.A.801(g) (from memory)"
                                                                       : "14 CFR 43.11(a)(5), 91.405",
                            defect.found->defect.text(),
                            item.id});
            }
        if (m_signing.outcome != Outcome::Discrepancies)
            return;
        if (!isInspection(m_file.visit()))
            refuse({Refusal::Kind::NoDefect, ReleaseFault::NoListOfWork, {titleOfVisit(m_file)}, "14 CFR 43.11(b)"});
        else if (!any && m_file.excepted.empty())
            refuse({Refusal::Kind::NoDefect, ReleaseFault::NothingToList, {}, "14 CFR 43.11(b)"});
    }

    /// A release does it. A list names it among what stands, as the US statement of airworthiness is refused for it;
    /// after incomplete maintenance the visit still owes it.
    void askGoesWith() {
        if (m_signing.outcome != Outcome::Released || regimeOf(m_file.visit()) == Regime::Us14Cfr)
            return;
        for (const auto& each : leftOut(m_file))
            refuse({Refusal::Kind::LineOpen,
                    ReleaseFault::GoesWithIt,
                    {each.title, each.work.item},
                    each.source.written(),
                    {},
                    each.work.item});
    }

    /// Under Part-ML it is named on the paper; the statement of 43.11(a)(4) is that the aircraft is airworthy.
    void askExcepted() {
        if (m_signing.outcome != Outcome::Released || !isPeriodic(m_file.visit()) ||
            regimeOf(m_file.visit()) != Regime::Us14Cfr)
            return;
        for (const auto& each : m_file.excepted)
            refuse({Refusal::Kind::Excepted,
                    ReleaseFault::Excepted,
                    {exceptedText(each)},
                    "14 CFR 43.11(a)(4); 91.405, 91.409 (from memory)",
                    {},
                    each.item});
    }

    void askSignatory() {
        const Signatory signatory{m_signing.person, m_signing.capacity, m_file.inspection.opened.body.balloon,
                                  m_file.operations, m_signing.on};
        if (const auto bar = mayRelease(m_file.entitlements, signatory, m_file.visit()))
            refuse({Refusal::Kind::Signatory, ReleaseFault::MayNotSign, {bar->why}, bar->rule});
    }

    void askContent() {
        for (const auto& each : missing(releaseFacts(m_file, m_signing)))
            refuse({Refusal::Kind::Content, ReleaseFault::NotGiven, {Phrase{each.what, {}}}, each.rule});
    }

    const BenchFile& m_file;
    const Signing& m_signing;
    std::vector<Refusal> m_refusals;
};

Argument titleOf(const ItemFacts& item) {
    Argument title = Phrase{ReleasePhrase::Item, {termOf(item.kind), item.id}};
    if (item.type)
        title = Phrase{ReleasePhrase::OfType, {std::move(title), *item.type}};
    if (item.serial)
        title = Phrase{ReleasePhrase::WithSerial, {std::move(title), *item.serial}};
    return title;
}

}

namespace {

ReleasePhrase phraseOf(Standing standing) {
    return standing == Standing::Spent    ? ReleasePhrase::ExceptedSpent
           : standing == Standing::Lapsed ? ReleasePhrase::ExceptedLapsed
                                          : ReleasePhrase::ExceptedUnproven;
}

}

Argument exceptedText(const Excepted& each) { return Phrase{phraseOf(each.standing), {each.item, each.title}}; }

std::vector<Argument> exceptedTexts(const std::vector<Excepted>& all) {
    std::vector<std::pair<const Excepted*, Listed>> alike;
    for (const auto& each : all) {
        const auto there = std::ranges::find_if(alike, [&](const auto& other) {
            return other.first->title == each.title && other.first->standing == each.standing;
        });
        (there == alike.end() ? alike.emplace_back(&each, Listed()) : *there).second.list.emplace_back(each.item);
    }
    std::vector<Argument> texts;
    for (auto& [first, items] : alike)
        texts.push_back(Phrase{phraseOf(first->standing), {std::move(items), first->title}});
    return texts;
}

std::vector<ItemFacts> certifiedItems(const BenchFile& file, Outcome outcome) {
    std::vector<ItemFacts> done;
    std::vector<ItemFacts> concerned;
    for (const auto& item : file.items) {
        if (file.inspection.wasWorkedOn(item.id))
            done.push_back(item);
        if (file.inspection.concerns(item.id))
            concerned.push_back(item);
    }
    return outcome == Outcome::Incomplete || done.empty() ? concerned : done;
}

void setSigner(ReleaseFacts& facts, const Entitlement& held) {
    facts.annex = annexName(annexOf(held.approval));
    facts.organisation = held.organisation;
    facts.approval = held.approval;
}

std::string_view refusalName(Refusal::Kind kind) {
    constexpr std::array<std::string_view, 15> names = {"closed",   "line-open", "no-reading", "fails",     "undecided",
                                                        "doubtful", "tester",    "defect",     "no-defect", "signatory",
                                                        "content",  "order",     "excepted",   "scope",     "wording"};
    return names[static_cast<std::size_t>(kind)];
}

Problem problemOf(const Refusal& refusal) { return {refusal.fault, refusal.arguments, {}, refusal.rule}; }

Signing signingOf(const Said<InspectionClosed>& closed) {
    const auto& body = closed.body;
    return {body.outcome,
            body.signatory.value_or(PersonId()),
            capacityFrom(body.capacity).value_or(Capacity::PilotOwner),
            body.manuals,
            body.limitations,
            closed.stamp.at.on()};
}

std::vector<Outstanding> outstandingLines(const BenchFile& file, std::span<const std::string> further) {
    std::vector<Outstanding> lines;
    for (const auto& work : workLines(file.inspection, file.items)) {
        const auto id = work.line ? work.line->id : work.settled->body.line;
        const bool asked = work.state() == LineState::Open && std::ranges::find(further, id) != further.end();
        if (work.isMissing() || asked || isLeftOutstanding(file, work))
            lines.push_back({id, work.item ? std::optional(work.item->id) : std::nullopt,
                             work.line ? work.line->title : work.settled->body.line});
    }
    return lines;
}

std::vector<Refusal> refusals(const BenchFile& file, const Signing& signing) { return Gate(file, signing).ask(); }

ReleaseFacts releaseFacts(const BenchFile& file, const Signing& signing) {
    const auto& inspection = file.inspection;
    ReleaseFacts facts;
    facts.visit = file.visit();
    if (!isOfItsVisit(file.visit(), inspection.opened.body.work))
        facts.otherWork = titleOfVisit(file);
    facts.outcome = signing.outcome;
    facts.registration = inspection.opened.body.balloon ? inspection.opened.body.balloon->text() : "";
    facts.title = file.balloonTitle;
    if (const auto* envelope = file.envelope()) {
        facts.envelopeType = envelope->type.value_or("");
        facts.envelopeSerial = envelope->serial.value_or("");
        facts.totalTime = envelope->clock.minutes;
    }
    for (const auto& item : certifiedItems(file, signing.outcome))
        facts.items.push_back(
            {item.kind, namedInStatement(item.kind, item.id, item.serial), titleOf(item), item.clock.minutes});
    facts.order = inspection.opened.body.order;
    facts.owner = file.owner;
    facts.operatedBy = file.operatedBy;
    facts.extent = extentOf(file);
    facts.readings = readingsInBrief(file);
    facts.performed = describedWork(file);
    if (signing.outcome == Outcome::Incomplete)
        for (const auto& each : outstandingLines(file, signing.outstanding))
            facts.outstanding.push_back(each.item
                                            ? Argument(Phrase{ReleasePhrase::OutstandingOn, {each.title, *each.item}})
                                            : Argument(each.title));
    facts.manuals = signing.manuals;
    facts.date = signing.on;
    facts.highestTemperature = highestTemperature(file);
    for (const auto& item : file.items)
        for (const auto& defect : openDefects(item)) {
            const Phrase found{ReleasePhrase::Defect, {item.id, whatOf(file, *defect.found)}};
            if (defect.deferred)
                facts.deferred.push_back(deferredText(file, *defect.deferred, found));
            if (!isRelease(signing.outcome)) // what may fly is not listed as unairworthy
                facts.discrepancies.push_back(found);
        }
    std::ranges::move(exceptedTexts(file.excepted),
                      std::back_inserter(isRelease(signing.outcome) ? facts.excepted : facts.discrepancies));
    for (const auto& each : notAsked(file)) {
        Listed tests;
        for (const auto& quantity : each.quantities)
            tests.list.emplace_back(quantityTerm(quantity));
        facts.notAsked.push_back(Phrase{ReleasePhrase::NotAskedOf, {each.item, std::move(tests)}});
    }
    facts.limitations = signing.limitations;
    facts.within = signing.within;
    if (signing.outcome == Outcome::Discrepancies)
        facts.discrepanciesDated = signing.on;
    facts.person = signing.person.text();
    facts.capacity = signing.capacity;
    if (const auto* held = heldBy(file.entitlements, signing.person, signing.capacity, signing.on))
        setSigner(facts, *held);
    facts.licence = licenceOf(file.entitlements, signing.person, signing.capacity, signing.on);
    facts.texts = file.wordings.adopted;
    return facts;
}

}
