// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/bench_rows.h"

#include "bench/release/not_asked.h"
#include "rules/due/defects.h"
#include "words/bench_sentences.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <set>

namespace crownring::screen {

using namespace words;

namespace {

std::vector<ReadingCount> counts(const BenchFile& file, const WorkLine& work) {
    std::vector<ReadingCount> counts;
    if (work.line && work.item)
        for (const auto& asked : work.line->readings)
            counts.push_back(readingCount(file, *work.item, asked));
    return counts;
}

bool asksReadings(const BenchFile& file, const WorkLine& work) {
    return std::ranges::any_of(counts(file, work), [](const ReadingCount& count) { return count.wanted > 0; });
}

QString readingsText(const BenchFile& file, const WorkLine& work) {
    int taken = 0;
    int wanted = 0;
    for (const auto& count : counts(file, work)) {
        taken += count.taken;
        wanted += std::max(count.wanted, count.taken);
    }
    return wanted == 0 ? QString() : BenchRows::tr("%1 of %2 readings").arg(taken).arg(wanted);
}

/// "OAO-AD 2026-014 on BRN-305: lapsed"
QVariantList openDirectives(const BenchFile& file) {
    QVariantList rows;
    for (const auto& each : file.directives) {
        const auto number = inward(each.directive.text());
        const auto item = inward(each.item.text());
        const auto stands =
            each.isUnknown ? BenchRows::tr("nobody knows whether it binds") : Words::standing(each.standing);
        rows += QVariantMap{{QStringLiteral("directive"), number},
                            {QStringLiteral("revision"), inward(each.revision)},
                            {QStringLiteral("item"), item},
                            {QStringLiteral("title"), inward(each.title)},
                            {QStringLiteral("said"), BenchRows::tr("%1 on %2: %3").arg(number, item, stands)},
                            {QStringLiteral("against"), each.against}};
    }
    return rows;
}

template <class Body>
Choice doneRow(const Said<Body>& said) {
    return {inward(said.id.text()),
            BenchSentences::of(said.body),
            joined({inward(said.by), inward(said.stamp.at.on().iso())}, QStringLiteral(", ")),
            -1,
            -1,
            false};
}

}

WorkPart partOf(const WorkLine& work) { return {work.line ? work.line->section : std::string()}; }

QString sectionTitle(const Inspection& inspection, const WorkLine& work) {
    if (work.line)
        for (const auto& section : inspection.checklist.sections)
            if (section.id == work.line->section)
                return words::said(titleOf(section));
    return BenchRows::tr("Other lines");
}

bool isAnswered(const BenchFile& file, const WorkLine& work) {
    const auto asks = [&](const AskedReading& asked) { return readingCount(file, *work.item, asked); };
    if (std::ranges::any_of(work.line->readings, [&](const AskedReading& asked) { return !asks(asked).enough(); }))
        return false;
    if (work.line->isTest() && !isRead(file, *work.item, work.line->readings))
        return false;
    return std::ranges::all_of(speakingReadings(file.inspection), [&](const auto* reading) {
        const bool ofLine = reading->body.item == work.item->id &&
                            std::ranges::find(work.line->readings, reading->body.quantity, &AskedReading::quantity) !=
                                work.line->readings.end();
        return !ofLine || stateOf(file, reading->body).judgement == Judgement::Passes;
    });
}

Apart apartOf(const BenchFile& file, const WorkLine& work) {
    if (!work.line)
        return Apart::No;
    if (isFlown(work.line->id))
        return Apart::Flown;
    if (isOfOwnersTasks(file.visit()) && !work.line->ownerRule.empty() && !work.line->required)
        return Apart::OwnersTask;
    if (!work.line->required)
        return Apart::Optional;
    if (isMaintenance(file.visit()))
        return Apart::Work;
    if (work.line->ownLook || (asksForDirectives(*work.line) && !file.directives.empty()))
        return Apart::OwnLook;
    if ((asksReadings(file, work) && !isAnswered(file, work)) || (work.item && work.line->isTest()))
        return Apart::Readings;
    if (work.asksTester())
        return Apart::Equipment;
    return work.line->onlyWith.empty() ? Apart::No : Apart::Work;
}

QString apartText(Apart apart) {
    switch (apart) {
    case Apart::No:
        return {};
    case Apart::OwnLook:
        return BenchRows::tr("wants a look of its own");
    case Apart::Flown:
        return BenchRows::tr("is flown, then settled");
    case Apart::Readings:
        return BenchRows::tr("settled by its readings");
    case Apart::Equipment:
        return BenchRows::tr("done with test equipment");
    case Apart::Work:
        return BenchRows::tr("work to be carried out");
    case Apart::OwnersTask:
        return BenchRows::tr("settled where it was done");
    case Apart::Optional:
        return BenchRows::tr("nobody has to");
    }
    return {};
}

QString apartCount(Apart apart, int lines) {
    switch (apart) {
    case Apart::No:
        return {};
    case Apart::OwnLook:
        return BenchRows::tr("%n want a look of their own", nullptr, lines);
    case Apart::Flown:
        return BenchRows::tr("%n are flown, then settled", nullptr, lines);
    case Apart::Readings:
        return BenchRows::tr("%n are settled by readings", nullptr, lines);
    case Apart::Equipment:
        return BenchRows::tr("%n are done with test equipment", nullptr, lines);
    case Apart::Work:
        return BenchRows::tr("%n are work to be carried out", nullptr, lines);
    case Apart::OwnersTask:
        return BenchRows::tr("%n are settled where they were done", nullptr, lines);
    case Apart::Optional:
        return BenchRows::tr("%n nobody has to settle", nullptr, lines);
    }
    return {};
}

bool isOnlyALook(const BenchFile& file, const WorkLine& work) {
    return work.state() == LineState::Open && apartOf(file, work) == Apart::No;
}

bool awaitsReadings(const BenchFile& file, const WorkLine& work) {
    return work.state() == LineState::Open && apartOf(file, work) == Apart::Readings && asksReadings(file, work);
}

std::vector<WorkLine> gridOf(const BenchFile& file, const WorkPart& part) {
    std::vector<WorkLine> lines;
    std::vector<std::string> order;
    const auto idOf = [](const WorkLine& work) { return work.line ? work.line->id : work.settled->body.line; };
    for (const auto& work : workLines(file.inspection, file.items)) {
        if (partOf(work) != part)
            continue;
        lines.push_back(work);
        if (std::ranges::find(order, idOf(work)) == order.end())
            order.push_back(idOf(work));
    }
    std::ranges::stable_sort(
        lines, {}, [&](const WorkLine& work) { return std::ranges::find(order, idOf(work)) - order.begin(); });
    return lines;
}

QString notAskedText(const BenchFile& file) {
    QStringList said;
    for (const auto& [of, quantities] : notAsked(file)) {
        QStringList names;
        for (const auto& each : quantities)
            names += words::said(quantityTerm(each));
        said += BenchRows::tr("%1 has no type in the record, so no manual and no limit: not asked for are %2.")
                    .arg(inward(of.text()), names.join(QStringLiteral(", ")));
    }
    return said.join(u'\n');
}

CheckRow rowOf(const BenchFile& file, const WorkLine& work) {
    CheckRow row;
    row.line = work.line ? inward(work.line->id) : inward(work.settled->body.line);
    row.item = row.subject = work.item ? inward(work.item->id.text()) : QString();
    row.apart = apartText(apartOf(file, work));
    row.title = work.line ? inward(work.line->title) : row.line;
    if (work.line) {
        row.lookFor = inward(work.line->lookFor);
        row.required = work.line->required;
        row.asksTester = work.asksTester();
        row.asksPhotograph = work.line->photograph;
        if (asksForDirectives(*work.line))
            row.directives = openDirectives(file);
        row.source = inward(work.clauseUnder(regimeOf(file.visit())));
    }
    row.readings = readingsText(file, work);
    row.state = static_cast<int>(work.state());
    if (work.settled) {
        row.finding = inward(work.settled->body.finding);
        row.tester = work.settled->body.tester ? inward(work.settled->body.tester->text()) : QString();
        for (const auto& digest : work.settled->body.photographs)
            row.photographs.push_back(inward(digest));
        const auto& why = work.settled->body.why;
        row.why = why ? static_cast<int>(*why) : -1;
        row.page = inward(work.settled->body.page);
        row.settled = joined({why ? BenchSentences::why(*why, work.settled->body.page) : QString(),
                              inward(work.settled->by), inward(work.settled->stamp.at.on().iso())},
                             QStringLiteral(", "));
        if (work.settled->first)
            row.settled = BenchRows::tr("%1, corrected").arg(row.settled);
    }
    return row;
}

std::vector<std::string> photographsOf(const BenchFile& file, const CheckRow& row) {
    for (const auto& work : workLines(file.inspection, file.items))
        if (work.settled && rowOf(file, work).sameAs(row))
            return work.settled->body.photographs;
    return {};
}

std::vector<Choice> defectRows(const BenchFile& file) {
    std::vector<Choice> defects;
    for (const auto& item : file.items)
        for (const auto& open : openDefects(item)) {
            const auto state = assessDefect(open, item, file.on);
            const bool barring = bars(open, item, file.on);
            const auto word = isGrounding(*open.found) ? BenchRows::tr("danger to flight, never deferred")
                              : barring                ? BenchRows::tr("grounds the balloon")
                              : open.deferred          ? BenchRows::tr("deferred: %1").arg(inward(open.deferred->what))
                                                       : BenchRows::tr("does not ground the balloon");
            const auto* governs = governingLimit(state);
            const auto limit = governs && governs->isProven()
                                   ? BenchRows::tr("until %1 (%2)").arg(Words::due(*governs), Words::left(*governs))
                                   : QString();
            defects.push_back({inward(open.found->defect.text()), words::said(whatOf(*open.found)),
                               joined({inward(item.id.text()), word, limit}, QStringLiteral(" · ")),
                               open.found->failed         ? 2
                               : isGrounding(*open.found) ? 1
                                                          : 0,
                               static_cast<int>(reckonedAs(state)), barring});
        }
    return defects;
}

std::vector<ListedItem> listedOf(const BenchFile& file) {
    const auto& closed = file.inspection.closed;
    if (!closed || closed->body.outcome != Outcome::Discrepancies)
        return {};
    auto listed = listedIn(closed->body, file.items);
    for (auto& each : listed)
        each.stands = std::ranges::find(file.answered, Work{each.item, each.requirement}) == file.answered.end();
    return listed;
}

std::vector<Choice> listedBesidesRows(const BenchFile& file) {
    std::vector<Choice> rows;
    for (const auto& each : listedOf(file))
        if (!defectOf(each.requirement))
            rows.push_back({inward(each.requirement.text()), words::said(each.what),
                            joined({inward(each.item.text()), each.stands ? BenchRows::tr("on the list, still stands")
                                                                          : BenchRows::tr("on the list, answered")},
                                   QStringLiteral(" · ")),
                            -1, static_cast<int>(reckonedAs(each.stands ? Standing::Lapsed : Standing::Closed)),
                            each.stands});
    return rows;
}

std::vector<Choice> repairRows(const Inspection& inspection) {
    std::vector<Choice> rows;
    for (const auto& each : inspection.performed)
        rows.push_back(doneRow(each));
    for (const auto& each : inspection.repairs)
        rows.push_back(doneRow(each));
    for (const auto& each : inspection.parts)
        rows.push_back(doneRow(each));
    for (const auto& each : inspection.cleared)
        rows.push_back(doneRow(each));
    return rows;
}

std::vector<Choice> testerRows(const BenchFile& file) {
    std::vector<Choice> testers;
    for (const auto& each : file.calibrations)
        if (each.covers(file.on) &&
            std::ranges::none_of(testers, [&](const auto& have) { return have.value == inward(each.tester.text()); }))
            testers.push_back({inward(each.tester.text()),
                               joined({inward(each.tester.text()), inward(each.what)}, QStringLiteral(", ")),
                               BenchRows::tr("in calibration until %1").arg(inward(each.until.iso())), -1, -1, false});
    return testers;
}

std::vector<Choice> ownerTaskRows(const BenchFile& file) {
    std::vector<Choice> tasks;
    if (!isOfOwnersTasks(file.visit()))
        return tasks;
    for (const auto& work : workLines(file.inspection, file.items))
        if (work.line && !work.line->ownerRule.empty() &&
            std::ranges::none_of(tasks, [&](const auto& have) { return have.value == inward(work.line->id); }))
            tasks.push_back({inward(work.line->id), inward(work.line->title), inward(work.line->ownerRule)});
    return tasks;
}

}
