// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/refusing.h"

#include "problem/faults/bench_fault.h"
#include "problem/faults/programme_fault.h"
#include "rules/programme/programme.h"
#include "text/blank.h"

namespace crownring {

Problem atLine(Problem problem, int line) {
    problem.where.line = line;
    return problem;
}

Problem asAmended(Problem problem, const Entry& entry) {
    if (std::holds_alternative<EntryCorrected>(entry.body))
        problem.where.key = "with/" + problem.where.key;
    else if (std::holds_alternative<EntryVoided>(entry.body))
        problem.where.key = "voids";
    return problem;
}

std::string_view unsaidIn(const Entry& entry) {
    const auto* voided = std::get_if<EntryVoided>(&entry.body);
    return isBlank(entry.by) ? "by" : !isBlank(voided ? voided->reason : entry.note) ? "" : voided ? "reason" : "note";
}

Result<JournalLine> rootOf(Journal& journal, const EntryId& id) {
    auto line = journal.root(id);
    if (!line)
        return tl::unexpected(line.error());
    if (!*line)
        return problem(BenchFault::NoEntry, {id});
    return std::move(**line);
}

Result<std::optional<JournalLine>> amendedRoot(Journal& journal, const Entry& entry) {
    if (const auto* correction = std::get_if<EntryCorrected>(&entry.body))
        return rootOf(journal, correction->replaces);
    if (const auto* taken = std::get_if<EntryVoided>(&entry.body))
        return rootOf(journal, taken->voids);
    return std::nullopt;
}

Result<std::optional<Entry>> amendedBy(Journal& journal, const Entry& amendment) {
    const auto root = amendedRoot(journal, amendment);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || (*root)->voided || (*root)->unread)
        return std::nullopt;
    return nowOf(**root);
}

Result<std::optional<InspectionId>> accomplishedBy(Books& books, const RequirementDone& done) {
    if (done.ref.empty())
        return std::nullopt;
    const auto opened = books.told({Subject::Inspection, done.ref, {kindName<InspectionOpened>()}, CivilDate::last()});
    if (!opened)
        return tl::unexpected(opened.error());
    return opened->empty() ? std::nullopt : std::optional(InspectionId(done.ref));
}

std::optional<Problem> unreadableText(const ProgrammeAdopted& adopted) {
    const auto programme = programmeFrom(adopted.document);
    if (!programme) {
        auto problem = programme.error();
        problem.where.key = "document" + problem.where.key;
        return problem;
    }
    if (programme->id != adopted.programme)
        return Problem{ProgrammeFault::AnotherProgramme, {programme->id}, atKey("programme")};
    return std::nullopt;
}

Result<std::optional<Stamp>> saidLast(Books& books, const InspectionId& inspection) {
    static const std::vector<std::string_view> covered{kindName<LineSettled>(),       kindName<ReadingTaken>(),
                                                       kindName<DefectFound>(),       kindName<RepairMade>(),
                                                       kindName<PartReplaced>(),      kindName<WorkPerformed>(),
                                                       kindName<ReleaseIncomplete>(), kindName<DirectiveAnswered>()};
    const auto told = books.told({Subject::Inspection, inspection.text(), covered, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::optional<Stamp> last;
    for (const auto& line : *told)
        if (const auto at = stampOf(nowOf(line)); !line.voided && (!last || *last < at))
            last = at;
    return last;
}

}
