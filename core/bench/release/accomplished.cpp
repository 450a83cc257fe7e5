// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/accomplished.h"

#include "bench/checklist/further_line.h"
#include "bench/release/release.h"
#include "record/kinds/programmes.h"

#include <algorithm>

namespace crownring {

namespace {

/// How one requirement of the work stands, line by line.
class Looked {
public:
    Looked(const BenchFile& file, const Work& work) : m_file(file), m_work(work) {}

    void at(const WorkLine& line) {
        if (line.item && line.item->id != m_work.item)
            return;
        const bool done = line.state() == LineState::Done;
        m_anyOfItem = m_anyOfItem || line.item;
        m_done = m_done || done;
        m_doneOnItem = m_doneOnItem || (done && line.item);
        if (!line.line || !line.line->isFor(m_work.requirement))
            return;
        m_own = true;
        m_ownDone = m_ownDone && done;
        m_asked.insert(m_asked.end(), line.line->readings.begin(), line.line->readings.end());
    }

    [[nodiscard]] bool isDone() const {
        if (m_own ? !m_ownDone : !isAnsweredByVisit())
            return false;
        const auto* item = m_file.item(m_work.item);
        const bool test = std::ranges::find(m_file.tests, m_work) != m_file.tests.end();
        return !test || (item && isRead(m_file, *item, m_asked.empty() ? readingsOfFabric() : m_asked));
    }

private:
    /// Papers alone inspect no item that there are lines for.
    [[nodiscard]] bool isAnsweredByVisit() const {
        return accomplishes(m_file.visit(), m_work.requirement) && (m_anyOfItem ? m_doneOnItem : m_done);
    }

    const BenchFile& m_file;
    const Work& m_work;
    std::vector<AskedReading> m_asked; ///< by its own lines
    bool m_own = false;
    bool m_ownDone = true;
    bool m_anyOfItem = false;
    bool m_done = false;
    bool m_doneOnItem = false;
};

}

std::vector<Work> accomplishments(const BenchFile& file) {
    const auto lines = workLines(file.inspection, file.items);
    std::vector<Work> done;
    for (const auto& work : file.inspection.opened.body.work) {
        if (isOfReviews(work.requirement))
            continue; // its lines are done here, its certificate is an act of its own
        Looked looked(file, work);
        for (const auto& line : lines)
            looked.at(line);
        if (looked.isDone() && std::ranges::find(done, work) == done.end())
            done.push_back(work);
    }
    return done;
}

std::vector<Work> coveredOnceDone(const BenchFile& file, std::span<const std::string> further) {
    auto done = file;
    for (const auto& each : outstandingLines(file, further)) {
        if (!isFlown(each.line))
            continue;
        Said<LineSettled> settled;
        settled.body.inspection = file.inspection.id;
        settled.body.line = each.line;
        settled.body.item = each.item;
        done.inspection.lines.push_back(std::move(settled));
    }
    return accomplishments(done);
}

std::vector<GoesWith> leftOut(const BenchFile& file) {
    if (file.goesWith.empty())
        return {};
    const auto done = accomplishments(file);
    auto left = file.goesWith;
    std::erase_if(left, [&](const GoesWith& each) { return std::ranges::find(done, each.work) != done.end(); });
    return left;
}

}
