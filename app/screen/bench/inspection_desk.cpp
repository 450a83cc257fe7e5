// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/inspection_desk.h"

#include "acts/post.h"
#include "answers/bench_file.h"
#include "record/new_id.h"
#include "rules/due/defects.h"
#include "screen/bench/bench_rows.h"
#include "screen/bench/bench_time.h"
#include "screen/desk/house.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/problem_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

constexpr int othersEvery = 5000; ///< ms between two looks at what another inspector has written

bool changesStandings(const Body& body) {
    return std::holds_alternative<DefectFound>(body) || std::holds_alternative<DefectDeferred>(body) ||
           std::holds_alternative<DefectCleared>(body) || std::holds_alternative<EntryVoided>(body);
}

}

void InspectionDesk::movedIn() {
    connect(&house().desk, &RecordDesk::changed, this, &InspectionDesk::askAgain);
    connect(&house().habits, &Habits::changed, this, &InspectionDesk::inspectorChanged);
    connect(&house().desk, &RecordDesk::opening, this, [this] { setInspection({}); });
    m_others.setInterval(othersEvery);
    connect(&m_others, &QTimer::timeout, this, [this] {
        if (m_pending == 0)
            askAgain();
    });
}

void InspectionDesk::setInspection(const QString& inspection) {
    if (m_inspection == inspection)
        return;
    m_inspection = inspection;
    m_file.reset();
    m_part.reset();
    m_problem.clear();
    m_savedAs.clear();
    m_linesOpen = m_linesAll = m_barring = 0;
    m_parts.show({});
    m_lines.show({});
    m_defects.show({});
    m_repairs.show({});
    emit changed();
    emit savedChanged();
    if (inspection.isEmpty())
        m_others.stop();
    else
        m_others.start();
    askAgain();
}

QString InspectionDesk::title() const {
    if (!m_file)
        return m_inspection;
    const auto& opened = m_file->inspection.opened.body;
    return joined({BenchWords::subject(opened.balloon, opened.items), inward(m_file->balloonTitle)},
                  QStringLiteral(", "));
}

QString InspectionDesk::subtitle() const {
    return m_file ? tr("%1 · opened %2 · record %3")
                        .arg(words::said(titleOfVisit(*m_file)), inward(m_file->inspection.opened.stamp.at.on().iso()),
                             m_inspection)
                  : QString();
}

namespace {

/// "return to service approved on 2026-12-04 by Ines Holt"
QString returnOf(const Inspection& inspection) {
    if (!inspection.approved)
        return {};
    const auto& approved = *inspection.approved;
    return InspectionDesk::tr("return to service approved on %1 by %2")
        .arg(inward(approved.stamp.at.on().iso()), inward(approved.body.signatory.text()));
}

}

QString InspectionDesk::outcome() const {
    if (!m_file || !m_file->inspection.closed)
        return {};
    const auto& closed = *m_file->inspection.closed;
    return joined(
        {tr("%1 on %2")
             .arg(BenchWords::outcome(closed.body.outcome, m_file->inspection.opened.body.balloon.has_value()),
                  inward(closed.stamp.at.on().iso())),
         closed.body.signatory ? inward(closed.body.signatory->text()) : QString(),
         m_file->inspection.revoked && !m_file->inspection.isPending() ? tr("withdrawn since") : QString(),
         !m_file->inspection.isPending() ? QString()
         : m_file->inspection.revoked    ? tr("pending: the approval of the return was withdrawn")
                                         : tr("pending: the return to service is not approved"),
         returnOf(m_file->inspection),
         m_file->unsupported.empty() ? QString() : tr("no longer supported by the record")},
        QStringLiteral(", "));
}

QStringList InspectionDesk::scope() const {
    QStringList items;
    for (const auto& item : m_items.choices())
        items += item.value;
    return items;
}

QString InspectionDesk::since() const {
    QStringList lines;
    if (m_file && m_file->inspection.revoked) {
        const auto& revoked = *m_file->inspection.revoked;
        lines += (m_file->inspection.closed->body.outcome == Outcome::Discrepancies
                      ? tr("The approval of the return was withdrawn by %1 on %2: %3")
                      : tr("Withdrawn by %1 on %2: %3"))
                     .arg(inward(revoked.by), inward(revoked.stamp.at.on().iso()), inward(revoked.body.reason));
    }
    if (m_file && !m_file->unsupported.empty()) {
        lines += tr("Signed, and no longer supported by the record:");
        for (const auto& each : m_file->unsupported)
            lines += words::message(each);
    }
    return lines.join(u'\n');
}

QString InspectionDesk::listedAt() const {
    if (!m_file || !m_file->inspection.isPending())
        return {};
    if (const auto& balloon = m_file->inspection.opened.body.balloon)
        return inward(balloon->text());
    const auto fitted =
        std::ranges::find_if(m_file->items, [](const ItemFacts& item) { return item.balloon.has_value(); });
    return fitted == m_file->items.end() ? QString() : inward(fitted->balloon->text());
}

bool InspectionDesk::isWithdrawable() const {
    if (!m_file || !m_file->inspection.closed)
        return false;
    const auto& inspection = m_file->inspection;
    return inspection.approved || (!inspection.revoked && inspection.closed->body.outcome == Outcome::Released);
}

int InspectionDesk::partAt() const {
    const auto& parts = m_parts.choices();
    const auto at = std::ranges::find(parts, true, &Choice::chosen);
    return at == parts.end() ? -1 : static_cast<int>(at - parts.begin());
}

void InspectionDesk::setPartAt(int at) {
    if (at >= 0 && at < m_parts.count())
        goTo(m_parts.choices()[static_cast<std::size_t>(at)].of.value<WorkPart>());
}

void InspectionDesk::goTo(const WorkPart& part) {
    if (m_part == part)
        return;
    m_part = part;
    if (m_file) {
        showParts();
        showLines();
    }
    emit changed();
}

QString InspectionDesk::partTitle() const {
    const auto at = partAt();
    return at < 0 ? QString() : m_parts.choices()[static_cast<std::size_t>(at)].label;
}

int InspectionDesk::restOpen() const {
    if (!m_file || !isOpen())
        return 0;
    return static_cast<int>(std::ranges::count_if(workLines(m_file->inspection, m_file->items), [&](const auto& work) {
        return partOf(m_file->inspection, work) == m_part && isOnlyALook(*m_file, work) && !isFoundOn(work);
    }));
}

void InspectionDesk::askAgain() {
    if (m_inspection.isEmpty() || !house().desk.isOpen())
        return;
    using Answer = Result<std::shared_ptr<const BenchFile>>;
    const auto turn = ++m_turn;
    hear(
        house().desk.ask([id = InspectionId(outward(m_inspection)), on = house().day.date()](Record& record) -> Answer {
            auto file = benchFile(record, id, on);
            if (!file)
                return tl::unexpected(file.error());
            return std::make_shared<const BenchFile>(std::move(*file));
        }),
        this, [this, turn](const Answer& answer) {
            if (turn != m_turn)
                return;
            if (answer)
                return take(*answer);
            m_problem = Words::problem(answer.error());
            emit savedChanged();
            emit changed();
        });
}

/// A defect that comes with the reading before it is answered for by that reading.
void InspectionDesk::name(DefectFound& found, const std::vector<NumberedEntry>& before) const {
    if (found.defect.empty()) {
        auto number = m_file->inspection.found.size() + 1;
        number += static_cast<std::size_t>(std::ranges::count_if(
            before, [](const NumberedEntry& each) { return std::holds_alternative<DefectFound>(each.entry.body); }));
        found.defect = DefectId(m_file->inspection.id.text() + " D" + std::to_string(number));
    }
    if (!before.empty() && std::holds_alternative<ReadingTaken>(before.back().entry.body))
        found.reading = before.back().entry.id;
}

void InspectionDesk::post(std::vector<Body> bodies) {
    if (!isOpen() || bodies.empty())
        return;
    const auto by = inspector().trimmed();
    if (by.isEmpty()) {
        if (m_pending == 0)
            m_handed.clear();
        m_problem = whoFirst();
        emit savedChanged();
        return showLines();
    }
    const auto on = house().day.date();
    const bool elsewhere = std::ranges::any_of(bodies, changesStandings);
    std::vector<NumberedEntry> entries;
    for (auto& body : bodies) {
        Entry entry;
        entry.id = newEntryId();
        if (auto* found = std::get_if<DefectFound>(&body))
            name(*found, entries);
        entry.on = on;
        entry.time = benchTime(&m_file->inspection, on);
        entry.by = outward(by);
        entry.body = std::move(body);
        entries.push_back({std::move(entry), 0});
    }
    struct Answer {
        Results<Receipt> posted;
        Result<std::shared_ptr<const BenchFile>> file;
    };
    ++m_pending;
    emit savedChanged();
    const auto turn = ++m_turn;
    const InspectionId id(outward(m_inspection));
    hear(house().desk.ask([entries = std::move(entries), id, on](Record& record) -> Answer {
        auto posted = crownring::post(record, record, entries, {});
        auto file = benchFile(record, id, on);
        if (!file)
            return {std::move(posted), tl::unexpected(file.error())};
        return {std::move(posted), std::make_shared<const BenchFile>(std::move(*file))};
    }),
         this, [this, turn, elsewhere](const Answer& answer) {
             if (--m_pending == 0)
                 m_handed.clear();
             m_problem = answer.posted ? QString() : Words::problems(answer.posted.error());
             if (answer.file && turn == m_turn)
                 take(*answer.file);
             emit savedChanged();
             if (answer.posted && elsewhere)
                 house().desk.written();
         });
}

void InspectionDesk::take(std::shared_ptr<const BenchFile> file) {
    m_file = std::move(file);
    const auto& inspection = m_file->inspection;
    const auto said = inspection.lines.size() + inspection.readings.size() + inspection.found.size() +
                      inspection.deferred.size() + inspection.cleared.size() + inspection.repairs.size() +
                      inspection.parts.size();
    m_savedAs = tr("%n entries saved", nullptr, static_cast<int>(said));
    showParts();
    showLines();
    showDefects();
    m_testers.show(testerRows(*m_file));
    std::vector<Choice> items;
    for (const auto& item : m_file->items)
        items.push_back({inward(item.id.text()), tr("%1 %2").arg(Words::kind(item.kind), inward(item.id.text())),
                         inward(item.type.value_or("")), -1, -1, false});
    m_items.show(std::move(items));
    emit changed();
    emit savedChanged();
}

void InspectionDesk::showParts() {
    std::vector<Choice> parts;
    std::vector<int> all;
    m_linesOpen = m_linesAll = 0;
    for (const auto& work : workLines(m_file->inspection, m_file->items)) {
        const auto here = QVariant::fromValue(partOf(m_file->inspection, work));
        auto part = std::ranges::find(parts, here, &Choice::of);
        if (part == parts.end()) {
            const auto item = partOf(m_file->inspection, work).item;
            parts.push_back({{},
                             sectionTitle(m_file->inspection, work),
                             item ? inward(item->text()) : QString(),
                             0,
                             -1,
                             false,
                             here});
            all.push_back(0);
            part = parts.end() - 1;
        }
        const bool open = work.state() == LineState::Open;
        ++all[static_cast<std::size_t>(part - parts.begin())];
        part->number += open ? 1 : 0;
        m_linesAll += !work.line || work.line->required ? 1 : 0;
        m_linesOpen += work.isMissing() ? 1 : 0;
    }
    if (!m_part && !parts.empty()) {
        const auto first = std::ranges::find_if(parts, [](const Choice& part) { return part.number > 0; });
        m_part = (first == parts.end() ? parts.front() : *first).of.value<WorkPart>();
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        parts[i].chosen = parts[i].of.value<WorkPart>() == m_part;
        parts[i].detail =
            joined({parts[i].detail, tr("%1 of %2").arg(all[i] - parts[i].number).arg(all[i])}, QStringLiteral(" · "));
    }
    m_parts.show(std::move(parts));
}

void InspectionDesk::showLines() {
    std::vector<CheckRow> rows;
    for (const auto& work : workLines(m_file->inspection, m_file->items))
        if (partOf(m_file->inspection, work) == m_part)
            rows.push_back(rowOf(*m_file, work));
    m_lines.show(std::move(rows));
}

void InspectionDesk::showDefects() {
    auto defects = defectRows(*m_file);
    m_barring = static_cast<int>(std::ranges::count_if(defects, &Choice::chosen));
    m_defects.show(std::move(defects));
    m_repairs.show(repairRows(m_file->inspection));
}

QVariantMap InspectionDesk::defectPhotographs() const {
    QVariantMap photographs;
    if (m_file)
        for (const auto& [defect, digests] : m_file->photographs) {
            QStringList list;
            for (const auto& digest : digests)
                list += inward(digest);
            photographs.insert(inward(defect.text()), list);
        }
    return photographs;
}

bool InspectionDesk::nextPart() {
    const auto& parts = m_parts.choices();
    const auto here = std::ranges::find(parts, true, &Choice::chosen);
    const auto open = [](const Choice& part) { return part.number > 0 && !part.chosen; };
    auto next = std::find_if(here, parts.end(), open);
    if (next == parts.end())
        next = std::find_if(parts.begin(), here, open);
    if (next == parts.end() || next->chosen)
        return false;
    goTo(next->of.value<WorkPart>());
    return true;
}

bool InspectionDesk::showLine(const QString& line) {
    if (!m_file)
        return false;
    for (const auto& work : workLines(m_file->inspection, m_file->items))
        if (inward(work.line ? work.line->id : work.settled->body.line) == line) {
            goTo(partOf(m_file->inspection, work));
            return true;
        }
    return false;
}

QString InspectionDesk::itemOfDefect(const QString& defect) const {
    if (m_file)
        for (const auto& item : m_file->items)
            for (const auto& open : openDefects(item))
                if (inward(open.found->defect.text()) == defect)
                    return inward(item.id.text());
    return {};
}

}
