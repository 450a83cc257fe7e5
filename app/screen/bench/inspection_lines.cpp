// SPDX-License-Identifier: GPL-3.0-or-later
/// What is said of the lines of the part at hand.

#include "screen/bench/bench_rows.h"
#include "screen/bench/inspection_desk.h"
#include "screen/desk/house.h"
#include "screen/desk/kept_photograph.h"
#include "words/border.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

QString InspectionDesk::inspector() const { return house().habits.inspector(); }

void InspectionDesk::setInspector(const QString& inspector) {
    house().habits.setInspector(inspector);
    if (m_problem == whoFirst() && !inspector.trimmed().isEmpty()) {
        m_problem.clear();
        emit savedChanged();
    }
}

QString InspectionDesk::station() const { return house().habits.station(); }

void InspectionDesk::setStation(const QString& station) { house().habits.setStation(station); }

QStringList InspectionDesk::inspectors() const {
    constexpr qsizetype few = 4;
    QStringList names{house().habits.lastInspector()};
    if (m_file) {
        const auto addAll = [&](const auto& said) {
            for (const auto& each : said)
                names += inward(each.by);
        };
        names += inward(m_file->inspection.opened.by);
        addAll(m_file->inspection.lines);
        addAll(m_file->inspection.readings);
        for (const auto& each : m_file->entitlements)
            names += inward(each.person.text());
    }
    names.removeAll(QString());
    names.removeDuplicates();
    return names.mid(0, few);
}

QString InspectionDesk::whoFirst() { return tr("Say first who inspects: nothing is written without a name."); }

std::optional<LineSettled> InspectionDesk::lineAt(int row) const {
    const auto& rows = m_lines.rows();
    if (!m_file || row < 0 || row >= static_cast<int>(rows.size()))
        return std::nullopt;
    const auto& shown = rows[static_cast<std::size_t>(row)];
    LineSettled line;
    line.inspection = m_file->inspection.id;
    line.line = outward(shown.line);
    if (!shown.item.isEmpty())
        line.item = ItemId(outward(shown.item));
    const auto handed = std::ranges::find_if(
        m_handed, [&](const LineSettled& each) { return each.line == line.line && each.item == line.item; });
    if (handed != m_handed.end())
        return *handed;
    line.state = static_cast<LineState>(shown.state);
    if (shown.why >= 0)
        line.why = static_cast<WhyNot>(shown.why);
    line.page = outward(shown.page);
    line.finding = outward(shown.finding);
    if (!shown.tester.isEmpty())
        line.tester = TesterId(outward(shown.tester));
    line.photographs = photographsOf(*m_file, shown);
    return line;
}

void InspectionDesk::settleAs(LineSettled line) {
    std::erase_if(m_handed, [&](const LineSettled& each) { return each.line == line.line && each.item == line.item; });
    m_handed.push_back(line);
    post({std::move(line)});
}

bool InspectionDesk::isFoundOn(const WorkLine& work) const {
    const auto line = work.line ? work.line->id : work.settled->body.line;
    const auto item = work.item ? std::optional(work.item->id) : std::nullopt;
    const auto handed =
        std::ranges::find_if(m_handed, [&](const LineSettled& each) { return each.line == line && each.item == item; });
    return handed != m_handed.end() ? !handed->finding.empty() : work.settled && !work.settled->body.finding.empty();
}

void InspectionDesk::settle(int row, int state) {
    if (auto line = lineAt(row); line && state >= 0 && state < lineStateCount) {
        line->state = static_cast<LineState>(state);
        line->why.reset();
        line->page.clear();
        settleAs(std::move(*line));
    }
}

void InspectionDesk::leaveOut(int row, int why, const QString& words) {
    auto line = lineAt(row);
    if (!line || why < 0 || why >= whyNotCount)
        return;
    line->state = LineState::NotApplicable;
    line->why = static_cast<WhyNot>(why);
    line->page = line->why == WhyNot::NotAsked ? outward(words) : std::string();
    if (line->why == WhyNot::Other)
        line->finding = outward(words);
    settleAs(std::move(*line));
}

void InspectionDesk::setFinding(int row, const QString& finding) {
    if (auto line = lineAt(row); line && line->finding != outward(finding)) {
        line->finding = outward(finding);
        settleAs(std::move(*line));
    }
}

void InspectionDesk::setTester(int row, const QString& tester) {
    const auto named = tester.isEmpty() ? std::optional<TesterId>() : std::optional(TesterId(outward(tester)));
    if (auto line = lineAt(row); line && line->tester != named) {
        line->tester = named;
        settleAs(std::move(*line));
    }
}

void InspectionDesk::addPhotograph(int row, const QUrl& file) {
    auto line = lineAt(row);
    if (!line)
        return;
    using Answer = Result<std::string>;
    hear(house().desk.ask([file](Record& record) -> Answer {
        const auto picture = photographFrom(file);
        return picture ? record.keepPicture(*picture) : tl::unexpected(picture.error());
    }),
         this, [this, line = *line](const Answer& digest) mutable {
             if (!digest) {
                 m_problem = Words::problem(digest.error());
                 emit savedChanged();
                 return;
             }
             if (std::ranges::find(line.photographs, *digest) == line.photographs.end())
                 line.photographs.push_back(*digest);
             settleAs(std::move(line));
         });
}

void InspectionDesk::settleRest() {
    if (!m_file || !m_part)
        return;
    std::vector<Body> bodies;
    for (const auto& work : gridOf(*m_file, *m_part)) {
        if (!isOnlyALook(*m_file, work) || isFoundOn(work))
            continue;
        LineSettled line;
        line.inspection = m_file->inspection.id;
        line.line = work.line ? work.line->id : work.settled->body.line;
        if (work.item)
            line.item = work.item->id;
        if (work.settled) {
            line.finding = work.settled->body.finding;
            line.tester = work.settled->body.tester;
            line.photographs = work.settled->body.photographs;
        }
        bodies.push_back(std::move(line));
    }
    post(std::move(bodies));
}

}
