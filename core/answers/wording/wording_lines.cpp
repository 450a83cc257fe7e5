// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/wording/wording_lines.h"

#include "answers/bench_file.h"
#include "bench/checklist/checklist.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

std::vector<ConfirmedLine> confirmationsOf(const WordingBook& book, std::span<const Entitlement> entitlements,
                                           const WordingLine& line) {
    std::vector<ConfirmedLine> lines;
    for (const auto& each : book.confirmations) {
        if (!isOf(each.said, line.named))
            continue;
        const auto capacity = capacityFrom(each.said.capacity);
        const bool counts = capacity && !barOfConfirming(*capacity, line.visits) &&
                            !notHeld(entitlements, each.said.confirmedBy, *capacity, each.on);
        lines.push_back({each, counts});
    }
    return lines;
}

WordingLine lineOf(StatementText text, const WordingBook& book) {
    const auto& ships = shipped(text);
    WordingLine line;
    const auto adopted = book.adopted.find(idOf(text));
    if (adopted != book.adopted.end())
        line.adopted = adopted->second;
    const auto& wording = line.adopted ? line.adopted->wording : ships.wording;
    line.named = named(wording);
    line.body = wording.body;
    line.source = wording.source.empty() ? ships.wording.source : wording.source;
    line.ships = wording == ships.wording;
    line.read = line.ships && ships.read;
    line.note = line.ships ? ships.note : std::string();
    line.visits = visitsSignedBy(text);
    return line;
}

WordingLine lineOf(NamedText checklist, const std::string& document) {
    WordingLine line;
    const auto whole = shippedDocument(checklist);
    line.ships = !whole.empty();
    line.body = line.ships ? std::string(whole) : document;
    line.named = std::move(checklist);
    line.visits = visitsOfChecklist(line.body);
    if (const auto read = keptChecklist(line.body)) {
        line.source = read->source;
        line.note = read->note;
    }
    return line;
}

/// What inspections are open by, and each that any was: its document.
Result<std::vector<std::string>> documentsOf(Books& books, bool onlyOpen) {
    std::vector<std::string_view> kinds{kindName<InspectionOpened>()};
    if (onlyOpen)
        kinds.push_back(kindName<InspectionClosed>());
    const auto told = books.told({Subject::Inspection, {}, std::move(kinds), CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::set<InspectionId> closed;
    for (const auto& line : *told)
        if (const auto* closing = std::get_if<InspectionClosed>(&nowOf(line).body))
            closed.insert(closing->inspection);
    std::vector<std::string> documents;
    for (const auto& line : *told)
        if (const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body);
            opened && !closed.contains(opened->inspection))
            documents.push_back(opened->checklist);
    return documents;
}

}

bool WordingLine::isConfirmed() const {
    return (!isText() || adopted) && std::ranges::any_of(confirmed, &ConfirmedLine::counts);
}

Result<std::vector<WordingLine>> wordingsOn(Books& books, CivilDate on) {
    const auto book = wordingBook(books, on);
    if (!book)
        return tl::unexpected(book.error());
    const auto entitlements = entitlementsOn(books, on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    const auto documents = documentsOf(books, true);
    if (!documents)
        return tl::unexpected(documents.error());
    std::vector<WordingLine> lines;
    for (int i = 0; i < statementTextCount; ++i)
        lines.push_back(lineOf(static_cast<StatementText>(i), *book));
    for (const auto& document : checklistShelf())
        lines.push_back(lineOf(namedChecklist(document).value(), document));
    for (const auto& document : *documents) {
        auto checklist = namedChecklist(document);
        if (checklist && std::ranges::none_of(
                             lines, [&](const WordingLine& line) { return line.named.digest == checklist->digest; }))
            lines.push_back(lineOf(std::move(*checklist), document));
    }
    for (auto& line : lines)
        line.confirmed = confirmationsOf(*book, *entitlements, line);
    return lines;
}

std::optional<WordingLine> wordingIn(const std::vector<WordingLine>& lines, std::string_view id,
                                     std::string_view revision) {
    for (const auto& line : lines)
        if (line.named.id() == id && (revision.empty() || line.named.revision == revision))
            return line;
    return std::nullopt;
}

Result<std::string> checklistOfRecord(Books& books, const TextConfirmed& said) {
    auto documents = documentsOf(books, false);
    const auto adopted = books.told({Subject::Checklist, {}, {kindName<ChecklistAdopted>()}, CivilDate::last()});
    if (!documents || !adopted)
        return tl::unexpected(documents ? adopted.error() : documents.error());
    for (const auto& line : *adopted)
        if (const auto* own = std::get_if<ChecklistAdopted>(&nowOf(line).body))
            documents->push_back(own->document);
    for (const auto& document : *documents)
        if (const auto held = namedChecklist(document); held && isOf(said, *held))
            return document;
    return std::string();
}

}
