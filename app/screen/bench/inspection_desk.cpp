// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/inspection_desk.h"

#include "acts/number_defects.h"
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

/// The keys of an entry say nothing at the bench.
QString withoutKeys(std::vector<Problem> problems) {
    for (auto& each : problems)
        each.where = {};
    return Words::problems(problems);
}

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
    m_grid.show({});
    m_defects.show({});
    m_listedBesides.show({});
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
             .arg(BenchWords::outcome(closed.body.outcome, m_file->releases()), inward(closed.stamp.at.on().iso())),
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
    if (m_file && m_file->inspection.incomplete && !m_file->inspection.closed) {
        const auto& release = *m_file->inspection.incomplete;
        const auto open = outstandingLines(*m_file);
        QStringList outstanding;
        for (const auto& each : release.body.outstanding)
            if (std::ranges::find(open, each) != open.end())
                outstanding += inward(each.title);
        lines += tr("Released after incomplete maintenance by %1 on %2, within: %3. Still outstanding: %4")
                     .arg(inward(release.body.signatory.text()), inward(release.stamp.at.on().iso()),
                          words::said(Listed{limitsOfFlight(release.body.limitations, release.body.within)}),
                          outstanding.isEmpty() ? tr("nothing") : outstanding.join(QStringLiteral(", ")));
    }
    if (m_file && !m_file->unsupported.empty()) {
        lines += tr("Signed, and no longer supported by the record:");
        for (const auto& each : m_file->unsupported)
            lines += words::message(each);
    }
    return lines.join(u'\n');
}

bool InspectionDesk::isAbandoned() const {
    return m_file && m_file->inspection.closed && m_file->inspection.closed->body.outcome == Outcome::Abandoned;
}

int InspectionDesk::endedAs() const {
    if (!m_file || !m_file->inspection.closed)
        return 0;
    const auto& inspection = m_file->inspection;
    if (isAbandoned())
        return 2;
    if (inspection.isPending())
        return 6;
    if (inspection.revoked)
        return 4;
    if (!m_file->unsupported.empty())
        return 5;
    return inspection.closed->body.outcome == Outcome::Released ? 1 : 3;
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
    if (found.defect.empty())
        found.defect = DefectId(std::string(unnumbered));
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
    std::vector<ReadingTaken> readings;
    for (const auto& body : bodies)
        if (const auto* reading = std::get_if<ReadingTaken>(&body))
            readings.push_back(*reading);
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
        auto numbered = entries;
        const auto named = numberDefects(record, numbered);
        auto posted = named ? crownring::post(record, record, numbered, {})
                            : Results<Receipt>(tl::unexpected(std::vector{named.error()}));
        auto file = benchFile(record, id, on);
        if (!file)
            return {std::move(posted), tl::unexpected(file.error())};
        return {std::move(posted), std::make_shared<const BenchFile>(std::move(*file))};
    }),
         this, [this, turn, elsewhere, readings = std::move(readings)](const Answer& answer) {
             if (--m_pending == 0)
                 m_handed.clear();
             m_problem = answer.posted ? QString() : withoutKeys(answer.posted.error());
             if (answer.file && turn == m_turn)
                 take(*answer.file);
             emit savedChanged();
             if (answer.posted && answer.file)
                 for (const auto& reading : readings)
                     emit taken(reading);
             if (answer.posted && elsewhere)
                 house().desk.written();
         });
}

void InspectionDesk::take(std::shared_ptr<const BenchFile> file) {
    m_file = std::move(file);
    const auto& inspection = m_file->inspection;
    const auto said = inspection.lines.size() + inspection.readings.size() + inspection.found.size() +
                      inspection.deferred.size() + inspection.cleared.size() + inspection.repairs.size() +
                      inspection.parts.size() + inspection.performed.size();
    m_savedAs = tr("%n entries saved", nullptr, static_cast<int>(said));
    showParts();
    showLines();
    showDefects();
    m_testers.show(testerRows(*m_file));
    m_ownerTasks.show(ownerTaskRows(*m_file));
    std::vector<Choice> items;
    for (const auto& item : m_file->items)
        items.push_back({inward(item.id.text()), tr("%1 %2").arg(Words::kind(item.kind), inward(item.id.text())),
                         inward(item.type.value_or("")), -1, -1, false});
    m_items.show(std::move(items));
    emit changed();
    emit savedChanged();
}

void InspectionDesk::showDefects() {
    auto defects = defectRows(*m_file);
    m_barring = static_cast<int>(std::ranges::count_if(defects, &Choice::chosen));
    m_defects.show(std::move(defects));
    m_listedBesides.show(listedBesidesRows(*m_file));
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

QString InspectionDesk::itemOfDefect(const QString& defect) const {
    if (m_file)
        for (const auto& item : m_file->items)
            for (const auto& open : openDefects(item))
                if (inward(open.found->defect.text()) == defect)
                    return inward(item.id.text());
    return {};
}

bool InspectionDesk::isReadAgain(const QString& defect) const {
    return m_file && m_file->foundBy.contains(DefectId(outward(defect)));
}

QVariantMap InspectionDesk::placeOfDefect(const QString& defect) const {
    QVariantMap place;
    if (!isReadAgain(defect))
        return place;
    const auto found = m_file->foundBy.find(DefectId(outward(defect)));
    const auto& at = found->second.place;
    if (at.gore)
        place.insert(QStringLiteral("gore"), *at.gore);
    if (at.row)
        place.insert(QStringLiteral("row"), *at.row);
    if (at.zone != Zone::Envelope)
        place.insert(QStringLiteral("zone"), inward(zoneName(at.zone)));
    return place;
}

}
