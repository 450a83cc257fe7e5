// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/extent.h"

#include "bench/release/accomplished.h"
#include "bench/release/release_phrase.h"
#include "measure/duration_text.h"
#include "registry/reading_phrase.h"
#include "registry/reading_said.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// An inspection of a hundred lines names what it was carried out on; work of a few lines names these.
Argument doneLines(const BenchFile& file) {
    Listed done;
    bool papers = false;
    const bool periodic = isPeriodic(file.visit());
    for (const auto& work : workLines(file.inspection, file.items)) {
        if (work.state() != LineState::Done)
            continue;
        if (!work.line && !file.inspection.checklist.title.empty()) // none of this list
            continue;
        if (!work.item &&
            (periodic || isOfOwnersTasks(file.visit()))) { // "what a pilot-owner may not release" is no work
            papers = true;
            continue;
        }
        const auto title = work.line ? work.line->title : work.settled->body.line;
        Argument named = periodic    ? Argument(work.item->id)
                         : work.item ? Argument(Phrase{ReadingPhrase::OfItem, {title, work.item->id}})
                                     : Argument(title);
        if (std::ranges::find(done.list, named) == done.list.end())
            done.list.push_back(std::move(named));
    }
    if (papers)
        done.list.emplace_back(Phrase{ReleasePhrase::Papers, {}});
    return done.list.empty() ? Argument(Phrase{ReleasePhrase::NoLineDone, {}}) : Argument(std::move(done));
}

Phrase byChecklist(const BenchFile& file) {
    const auto& checklist = file.inspection.checklist;
    const auto visit = titleOfVisit(file);
    return checklist.title.empty()
               ? Phrase{ReleasePhrase::ByOwnLines, {visit, doneLines(file), file.inspection.id}}
               : Phrase{isPeriodic(file.visit()) ? ReleasePhrase::ByChecklist : ReleasePhrase::ByItsLines,
                        {visit, checklist.title, checklist.revision, doneLines(file), file.inspection.id}};
}

void addAccomplished(const BenchFile& file, std::vector<Argument>& extent) {
    std::vector<std::pair<RequirementId, Listed>> done;
    for (const auto& work : accomplishments(file)) {
        const auto there = std::ranges::find(done, work.requirement, &std::pair<RequirementId, Listed>::first);
        (there == done.end() ? done.emplace_back(work.requirement, Listed()) : *there)
            .second.list.emplace_back(work.item);
    }
    for (auto& [requirement, items] : done)
        extent.push_back(Phrase{ReleasePhrase::Accomplished, {titleOf(file, requirement), std::move(items)}});
}

/// The readings by one test, in one direction and unit: of one item at its places, or of several items.
struct Summary {
    std::vector<ReadingTaken> readings; ///< in the unit of the limit that they are held against

    [[nodiscard]] Argument summed(const BenchFile& file) const {
        const auto& first = readings.front();
        const auto [least, most] = std::ranges::minmax(readings, {}, &ReadingTaken::value);
        Argument test = testedAs(seriesOf(first.quantity, first.conditions));
        if (first.conditions.direction)
            test =
                Phrase{ReadingPhrase::Along, {std::move(test), Term{Term::Of::Direction, *first.conditions.direction}}};
        const Argument from = InUnit{least.value, first.unit};
        Argument span = readings.size() == 1 ? Argument(said(first))
                        : least.value == most.value
                            ? from
                            : Argument(Phrase{ReleasePhrase::FromTo, {least.value, InUnit{most.value, first.unit}}});
        if (readings.size() > 1 && first.held)
            span = Phrase{ReadingPhrase::HeldAt, {std::move(span)}};
        Argument text = readings.size() == 1
                            ? Argument(Phrase{ReadingPhrase::OfItem, {span, first.item}})
                            : Argument(Phrase{ReleasePhrase::ReadingsOf,
                                              {items(), std::move(test),
                                               Phrase{ReleasePhrase::Readings, {readings.size()}}, span}});
        if (const auto limit = stateOf(file, first).limit)
            text = Phrase{ReleasePhrase::WithLimit, {std::move(text), *limit}};
        return text;
    }

    [[nodiscard]] Listed items() const {
        Listed items;
        for (const auto& reading : readings)
            if (std::ranges::find(items.list, Argument(reading.item)) == items.list.end())
                items.list.emplace_back(reading.item);
        return items;
    }
};

void addReadings(const BenchFile& file, std::vector<Argument>& extent) {
    std::vector<Summary> summaries;
    for (const auto* reading : speakingReadings(file.inspection)) {
        const auto body = asTheManualStates(file, reading->body);
        const auto alike = [&](const Summary& summary) {
            const auto& other = summary.readings.front();
            const bool isPlaced = body.place != PanelPlace() || other.place != PanelPlace();
            return (other.item == body.item || !isPlaced) && other.unit == body.unit &&
                   stateOf(file, other).limit == stateOf(file, body).limit && other.held == body.held && !other.below &&
                   !body.below && other.conditions.direction == body.conditions.direction &&
                   seriesOf(other.quantity, other.conditions) == seriesOf(body.quantity, body.conditions);
        };
        const auto there = std::ranges::find_if(summaries, alike);
        (there == summaries.end() ? summaries.emplace_back() : *there).readings.push_back(body);
    }
    for (const auto& summary : summaries)
        extent.push_back(summary.summed(file));
}

Argument orNotStated(const std::string& text) {
    return text.empty() ? Argument(Phrase{ReleasePhrase::NotKnown, {}}) : Argument(text);
}

/// What was rectified, as it was found, and how.
Argument rectified(const BenchFile& file, const DefectCleared& cleared) {
    const auto* item = file.item(cleared.item);
    if (item)
        for (const auto& mark : item->defects)
            if (mark.kind == DefectMark::Kind::Found && mark.defect == cleared.defect)
                return Phrase{ReleasePhrase::Rectified, {cleared.item, whatOf(file, mark), cleared.what}};
    return Phrase{ReleasePhrase::DefectCleared, {cleared.item, cleared.what}};
}

void addWork(const BenchFile& file, std::vector<Argument>& extent) {
    const auto& inspection = file.inspection;
    for (const auto& repair : inspection.repairs) {
        Argument made =
            Phrase{ReleasePhrase::Repair, {inPlace(repair.body.item, repair.body.place), repair.body.method}};
        if (!repair.body.lot.empty())
            made = Phrase{ReleasePhrase::OfLot, {std::move(made), repair.body.lot}};
        extent.push_back(std::move(made));
    }
    for (const auto& part : inspection.parts) {
        Argument replaced =
            Phrase{ReleasePhrase::PartReplaced, {part.body.item, part.body.part, part.body.releaseDocument}};
        if (!part.body.removedSerial.empty() || !part.body.fittedSerial.empty())
            replaced = Phrase{
                ReleasePhrase::PartOffAndOn,
                {std::move(replaced), orNotStated(part.body.removedSerial), orNotStated(part.body.fittedSerial)}};
        extent.push_back(std::move(replaced));
    }
    for (const auto& cleared : inspection.cleared)
        extent.push_back(rectified(file, cleared.body));
}

}

std::vector<Argument> extentOf(const BenchFile& file) {
    const auto& inspection = file.inspection;
    std::vector<Argument> extent;
    if (!inspection.checklist.lines.empty() || !inspection.lines.empty())
        extent.push_back(byChecklist(file));
    addAccomplished(file, extent);
    addWork(file, extent);
    return extent;
}

std::vector<Argument> readingsInBrief(const BenchFile& file) {
    std::vector<Argument> texts;
    addReadings(file, texts);
    return texts;
}

Argument deferredText(const BenchFile& file, const DefectMark& deferral, Argument found) {
    Argument text = Phrase{ReleasePhrase::DefectDeferred, {std::move(found), deferral.what, deferral.stamp.at.on()}};
    if (deferral.until)
        text = Phrase{ReleasePhrase::DeferredUntil, {std::move(text), *deferral.until}};
    if (deferral.untilMinutes)
        text = Phrase{ReleasePhrase::DeferredUntilClock, {std::move(text), hoursAndMinutes(*deferral.untilMinutes)}};
    if (const auto said = file.deferrals.find(deferral.defect); said != file.deferrals.end()) {
        const auto& body = said->second.body;
        text = Phrase{ReleasePhrase::DeferredBy, {std::move(text), body.agreedBy}};
        if (!body.placard.empty())
            text = Phrase{ReleasePhrase::Placarded, {std::move(text), body.placard}};
    }
    return text;
}

std::string dataOf(const DirectiveAnswered& answer) { return answer.directive.text() + ", rev. " + answer.revision; }

std::vector<DescribedWork> describedWork(const BenchFile& file) {
    std::vector<DescribedWork> works;
    for (const auto& said : file.inspection.performed) {
        const auto& work = said.body;
        works.push_back({Phrase{ReleasePhrase::WorkOn, {work.item, work.what}}, work.data, work.grade, work.approval,
                         work.performed ? work.performed->text() : std::string()});
    }
    for (const auto& said : file.inspection.answered)
        if (const auto& answer = said.body; answer.answer == DirectiveAnswer::Done) {
            const Argument on =
                answer.item ? Argument(*answer.item) : Argument(answer.balloon.value_or(Registration()));
            works.push_back({Phrase{ReleasePhrase::WorkOn, {on, answer.method}}, dataOf(answer), {}, answer.amoc, {}});
        }
    return works;
}

}
