// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <map>

namespace crownring {

namespace {

/// A void takes a word away: that is one on the inspection too.
Result<std::optional<InspectionId>> inspectionOf(Journal& journal, const Entry& entry) {
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!taken)
        return inspectionOf(entry.body);
    const auto line = journal.line(taken->voids);
    if (!line)
        return tl::unexpected(line.error());
    return *line ? inspectionOf((*line)->entry.body) : std::nullopt;
}

/// The inspection that was signed, where a void would take its closing away, or what that accomplished.
Result<std::optional<InspectionId>> signedBy(const Batch& batch, const Entry& entry) {
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!taken)
        return std::nullopt;
    const auto line = batch.journal.line(taken->voids);
    if (!line)
        return tl::unexpected(line.error());
    if (!*line)
        return std::nullopt;
    const auto& body = (*line)->entry.body;
    if (const auto* closing = std::get_if<InspectionClosed>(&body))
        return closing->inspection;
    if (const auto* incomplete = std::get_if<ReleaseIncomplete>(&body))
        return incomplete->inspection;
    if (const auto* opened = std::get_if<InspectionOpened>(&body)) {
        const auto released = batch.books.told(
            {Subject::Inspection, opened->inspection.text(), {kindName<ReleaseIncomplete>()}, CivilDate::last()});
        if (!released)
            return tl::unexpected(released.error());
        return released->empty() ? std::nullopt : std::optional(opened->inspection);
    }
    if (const auto* approval = std::get_if<ReturnApproved>(&body))
        return approval->inspection;
    const auto* done = std::get_if<RequirementDone>(&body);
    return done ? accomplishedBy(batch.books, *done) : std::nullopt;
}

/// The closings of an inspection that hold, with the batch in the record.
class Closings {
public:
    explicit Closings(Books& books) : m_books(books) {}

    Result<std::vector<JournalLine>> of(const InspectionId& inspection) {
        const auto known = m_known.find(inspection);
        if (known != m_known.end())
            return known->second;
        auto told =
            m_books.told({Subject::Inspection, inspection.text(), {kindName<InspectionClosed>()}, CivilDate::last()});
        if (told)
            m_known.emplace(inspection, *told);
        return told;
    }

private:
    Books& m_books;
    std::map<InspectionId, std::vector<JournalLine>> m_known;
};

}

Findings askClosedInspections(const Batch& batch) {
    std::vector<Problem> problems;
    Closings closings(batch.books);
    for (const auto& [entry, line] : batch.entries) {
        const auto covered = signedBy(batch, entry);
        if (!covered)
            return tl::unexpected(atLine(covered.error(), line));
        if (*covered) {
            problems.push_back(Problem{ReleaseFault::RevokeInstead, {**covered}, {{}, line, "voids"}});
            continue;
        }
        const auto inspection = inspectionOf(batch.journal, entry);
        if (!inspection)
            return tl::unexpected(inspection.error());
        if (!*inspection)
            continue;
        const auto closed = closings.of(**inspection);
        if (!closed)
            return tl::unexpected(closed.error());
        if (closed->empty())
            continue;
        const auto written = batch.journal.line(entry.id);
        if (!written)
            return tl::unexpected(written.error());
        for (const auto& closing : *closed)
            if (*written && closing.number < (*written)->number) {
                problems.push_back(
                    Problem{ReleaseFault::ClosedSince, {**inspection, closing.entry.on}, {{}, line, {}}});
                break;
            }
    }
    return problems;
}

}
