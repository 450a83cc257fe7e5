// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release.h"

#include "bench/reading/doubt.h"
#include "rules/due/defects.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr const char* europeanTools = "ML.A.402(b)(4)";
constexpr const char* doneRule = "ML.A.801(a); 14 CFR 43.15(c)(1) (from memory)";

std::string titleOf(const WorkLine& work) { return work.line ? work.line->title : work.settled->body.line; }

std::string onItem(const ItemFacts* item) { return item ? " (" + item->id.text() + ")" : ""; }

std::string placeText(const PanelPlace& place) {
    std::string text;
    if (place.gore)
        text += ", gore " + std::to_string(*place.gore);
    if (place.row)
        text += ", row " + std::to_string(*place.row);
    return text;
}

std::string readingText(const ReadingTaken& reading) {
    const auto* quantity = quantityNamed(reading.quantity);
    return std::string(quantity ? quantity->title : reading.quantity) + (reading.held ? " held at " : " ") +
           figureText(reading.value) + " " + reading.unit + placeText(reading.place) + " (" + reading.item.text() + ")";
}

class Gate {
public:
    Gate(const BenchFile& file, const Signing& signing) : m_file(file), m_signing(signing) {}

    std::vector<Refusal> ask() && {
        if (m_file.inspection.closed) {
            refuse(Refusal::Kind::Closed, "the inspection is closed already", "correct what was written instead", "");
            return std::move(m_refusals);
        }
        askOrder();
        const auto lines = workLines(m_file.inspection, m_file.items);
        if (m_signing.outcome != Outcome::Abandoned) {
            if (lines.empty())
                refuse(Refusal::Kind::LineOpen, "nothing was looked at", "carry out the inspection first", doneRule);
            for (const auto& work : lines)
                askLine(work);
            for (const auto* reading : speakingReadings(m_file.inspection))
                askReading(*reading);
            askDefects();
            askSignatory();
            askContent();
        }
        return std::move(m_refusals);
    }

private:
    void refuse(Refusal::Kind kind, std::string text, std::string mend, std::string rule, std::string line = {},
                std::optional<ItemId> item = {}) {
        m_refusals.push_back(
            {kind, std::move(text), std::move(mend), std::move(rule), std::move(line), std::move(item)});
    }

    void askOrder() {
        const auto opened = m_file.inspection.opened.stamp.at.on();
        if (m_signing.on < opened)
            refuse(Refusal::Kind::Order, "it would be closed before it was opened on " + opened.iso(),
                   "close it on that day or later", "");
    }

    void askLine(const WorkLine& work) {
        const auto item = work.item ? std::optional(work.item->id) : std::nullopt;
        const auto id = work.line ? work.line->id : work.settled->body.line;
        if (work.state() == LineState::Open) {
            if (work.isMissing())
                refuse(Refusal::Kind::LineOpen, titleOf(work) + onItem(work.item) + " is open",
                       "carry it out, or put it down as not applicable", sourceOf(work), id, item);
            return;
        }
        if (work.state() == LineState::NotApplicable || !work.line)
            return;
        if (work.asksTester())
            askTester(work.settled->body.tester, work.settled->stamp.at.on(), titleOf(work) + onItem(work.item), id,
                      item);
        if (work.item)
            for (const auto& asked : work.line->readings)
                askEnough(work, asked);
    }

    [[nodiscard]] std::string sourceOf(const WorkLine& work) const {
        return std::string(work.clauseUnder(regimeOf(m_file.visit())));
    }

    void askEnough(const WorkLine& work, const AskedReading& asked) {
        const auto count = readingCount(m_file, *work.item, asked);
        if (count.enough())
            return;
        const auto* quantity = quantityNamed(asked.quantity);
        const auto title = std::string(quantity ? quantity->title : asked.quantity);
        refuse(Refusal::Kind::NoReading,
               title + onItem(work.item) + ": " + std::to_string(count.taken) + " of " + std::to_string(count.wanted) +
                   " readings taken",
               "take the readings that are missing", count.source.empty() ? sourceOf(work) : count.source,
               work.line->id, work.item->id);
    }

    void askTester(const std::optional<TesterId>& tester, CivilDate day, const std::string& what,
                   const std::string& line, const std::optional<ItemId>& item) {
        if (!tester)
            refuse(Refusal::Kind::Tester, what + ": no tester is named", "say which tester was used", europeanTools,
                   line, item);
        else if (!m_file.isCalibrated(*tester, day))
            refuse(
                Refusal::Kind::Tester, what + ": tester " + tester->text() + " is not in calibration on " + day.iso(),
                "take it again with one that is, or enter the calibration that proves it", europeanTools, line, item);
    }

    void askReading(const Said<ReadingTaken>& reading) {
        const auto& body = reading.body;
        const auto state = stateOf(m_file, body);
        const auto text = readingText(body);
        if (const auto* quantity = quantityNamed(body.quantity); quantity && quantity->traits.tester)
            askTester(body.tester, reading.stamp.at.on(), text, body.line, body.item);
        if (state.measured && !body.confirmed)
            if (const auto* unit = unitNamed(body.unit, quantityNamed(body.quantity)->dimension))
                if (const auto question = doubt(*state.measured, *unit))
                    refuse(Refusal::Kind::Doubtful, text + ": " + question->question, "correct it, or stand by it", "",
                           body.line, body.item);
        if (state.judgement == Judgement::Fails && m_signing.outcome == Outcome::Released && !isAnswered(reading))
            refuse(Refusal::Kind::Fails, text + " fails: " + state.reason,
                   "put it right and take the reading again in the same place, or write down the defect and clear it",
                   doneRule, body.line, body.item);
        const bool nothing = state.judgement == Judgement::Undecided || state.judgement == Judgement::Incomparable ||
                             (state.judgement == Judgement::NoLimit && isAskedFor(body));
        if (nothing && !isDecidedBeside(reading))
            refuse(Refusal::Kind::Undecided, text + " decides nothing: " + state.reason,
                   state.judgement == Judgement::NoLimit ? "state the limit of the type's manual"
                                                         : "take one that does",
                   doneRule, body.line, body.item);
    }

    /// Another reading of the quantity in the same place, by the test that the limit is stated for, decides.
    [[nodiscard]] bool isDecidedBeside(const Said<ReadingTaken>& reading) const {
        const auto& body = reading.body;
        return std::ranges::any_of(speakingReadings(m_file.inspection), [&](const auto* other) {
            const auto judgement = stateOf(m_file, other->body).judgement;
            return other->body.item == body.item && other->body.quantity == body.quantity && body.place.gore &&
                   other->body.place == body.place && other->body.conditions.direction == body.conditions.direction &&
                   (judgement == Judgement::Passes || judgement == Judgement::Fails);
        });
    }

    [[nodiscard]] bool isAskedFor(const ReadingTaken& body) const {
        return std::ranges::any_of(m_file.inspection.checklist.lines, [&](const ChecklistLine& line) {
            return std::ranges::any_of(line.readings, [&](const AskedReading& asked) {
                return asked.quantity == body.quantity && asked.required;
            });
        });
    }

    /// A defect was written down for it: cleared since, or barring, which is refused as a defect unless it is deferred.
    [[nodiscard]] bool isAnswered(const Said<ReadingTaken>& reading) const {
        return std::ranges::any_of(m_file.inspection.found, [&](const auto& found) {
            return found.body.reading == reading.id && found.body.item == reading.body.item &&
                   (found.body.severity == Severity::Barring || !isOpen(found.body));
        });
    }

    [[nodiscard]] bool isOpen(const DefectFound& found) const {
        const auto* item = m_file.item(found.item);
        return item && std::ranges::any_of(openDefects(*item),
                                           [&](const auto& open) { return open.found->defect == found.defect; });
    }

    void askDefects() {
        bool any = false;
        for (const auto& item : m_file.items)
            for (const auto& defect : openDefects(item)) {
                any = true;
                if (m_signing.outcome == Outcome::Released && bars(defect, item, m_signing.on))
                    refuse(
                        Refusal::Kind::Defect,
                        "the defect '" + defect.found->what + "' on " + item.id.text() + " is open and bars flight",
                        "clear it, or have it deferred by who is entitled to; else close with a list of discrepancies",
                        regimeOf(m_file.visit()) == Regime::PartMl ? "ML.A.403(a); ML.A.801(g) (from memory)"
                                                                   : "14 CFR 43.11(a)(5), 91.405",
                        defect.found->defect.text(), item.id);
            }
        if (m_signing.outcome == Outcome::Discrepancies && !any)
            refuse(Refusal::Kind::NoDefect, "there is no open defect to list",
                   "write down what was found, or release it", "14 CFR 43.11(b)");
    }

    void askSignatory() {
        const Signatory signatory{m_signing.person, m_signing.capacity, m_file.inspection.opened.body.balloon,
                                  m_file.operations, m_signing.on};
        if (const auto bar = mayRelease(m_file.entitlements, signatory, m_file.visit()))
            refuse(Refusal::Kind::Signatory, bar->text, "have it signed by who is entitled to", bar->rule);
    }

    void askContent() {
        for (const auto& each : missing(releaseFacts(m_file, m_signing)))
            refuse(Refusal::Kind::Content, each.what + " is not given", "give it", each.rule);
    }

    const BenchFile& m_file;
    const Signing& m_signing;
    std::vector<Refusal> m_refusals;
};

std::string licenceOf(const BenchFile& file, const Signing& signing) {
    for (const auto& each : file.entitlements)
        if (each.person == signing.person && each.capacity == signing.capacity && each.from <= signing.on &&
            (!each.until || signing.on <= *each.until))
            return each.licence;
    return {};
}

std::string titleOf(const ItemFacts& item) {
    std::string text(itemKindName(item.kind));
    text += " " + item.id.text();
    if (item.type)
        text += ", type " + *item.type;
    if (item.serial)
        text += ", serial " + *item.serial;
    return text;
}

std::string extentOf(const BenchFile& file) {
    int done = 0;
    int notApplicable = 0;
    for (const auto& work : workLines(file.inspection, file.items)) {
        done += work.state() == LineState::Done ? 1 : 0;
        notApplicable += work.state() == LineState::NotApplicable ? 1 : 0;
    }
    const auto& checklist = file.inspection.checklist;
    const auto by = checklist.title.empty()
                        ? " by the shop's own lines"
                        : " by the checklist '" + checklist.title + "', revision " + checklist.revision;
    return std::string(visitTitle(file.visit())) + by + ": " + std::to_string(done) + " lines done, " +
           std::to_string(notApplicable) + " not applicable, " + std::to_string(file.inspection.readings.size()) +
           " readings; details in inspection " + file.inspection.id.text();
}

}

std::string_view refusalName(Refusal::Kind kind) {
    constexpr std::array<std::string_view, 12> names = {"closed",    "line-open", "no-reading", "fails",
                                                        "undecided", "doubtful",  "tester",     "defect",
                                                        "no-defect", "signatory", "content",    "order"};
    return names[static_cast<std::size_t>(kind)];
}

std::vector<Refusal> refusals(const BenchFile& file, const Signing& signing) { return Gate(file, signing).ask(); }

ReleaseFacts releaseFacts(const BenchFile& file, const Signing& signing) {
    const auto& inspection = file.inspection;
    ReleaseFacts facts;
    facts.visit = file.visit();
    facts.outcome = signing.outcome;
    facts.registration = inspection.opened.body.balloon ? inspection.opened.body.balloon->text() : "";
    facts.title = file.balloonTitle;
    if (const auto* envelope = file.envelope()) {
        facts.envelopeType = envelope->type.value_or("");
        facts.envelopeSerial = envelope->serial.value_or("");
        facts.totalTime = envelope->clock.minutes;
    }
    for (const auto& item : file.items)
        facts.items.push_back({item.kind, titleOf(item), item.clock.minutes});
    if (!inspection.checklist.lines.empty() || !inspection.lines.empty())
        facts.extent.push_back(extentOf(file));
    for (const auto& repair : inspection.repairs)
        facts.extent.push_back("Repair of " + repair.body.item.text() + placeText(repair.body.place) + ": " +
                               repair.body.method);
    for (const auto& part : inspection.parts)
        facts.extent.push_back("Part replaced on " + part.body.item.text() + ": " + part.body.part + ", with " +
                               part.body.releaseDocument);
    for (const auto& cleared : inspection.cleared)
        facts.extent.push_back("Defect cleared on " + cleared.body.item.text() + ": " + cleared.body.what);
    facts.manuals = signing.manuals;
    facts.date = signing.on;
    facts.highestTemperature = highestTemperature(file);
    for (const auto& item : file.items)
        for (const auto& defect : openDefects(item)) {
            const auto text = item.id.text() + ": " + defect.found->what;
            if (defect.deferred)
                facts.deferred.push_back(text + "; deferred: " + defect.deferred->what);
            if (signing.outcome != Outcome::Released) // what may fly is not listed as unairworthy
                facts.discrepancies.push_back(text);
        }
    facts.limitations = signing.limitations;
    if (signing.outcome == Outcome::Discrepancies)
        facts.discrepanciesDated = signing.on;
    facts.person = signing.person.text();
    facts.capacity = signing.capacity;
    facts.licence = licenceOf(file, signing);
    return facts;
}

std::vector<Work> accomplishments(const BenchFile& file) {
    const auto lines = workLines(file.inspection, file.items);
    const auto isDone = [&](const Work& work) {
        if (accomplishes(file.visit(), work.requirement))
            return true;
        return std::ranges::any_of(lines, [&](const WorkLine& line) {
            return line.state() == LineState::Done && line.line && (!line.item || line.item->id == work.item) &&
                   std::ranges::find(line.line->onlyWith, work.requirement) != line.line->onlyWith.end();
        });
    };
    std::vector<Work> done;
    for (const auto& work : file.inspection.opened.body.work)
        if (isDone(work) && std::ranges::find(done, work) == done.end())
            done.push_back(work);
    return done;
}

}
