// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, 8> namesOfSheets = {"report",        "release",    "logbook",   "map",
                                                           "discrepancies", "incomplete", "component", "labels"};

bool isOnMap(const BenchFile& file, const ReadingTaken& reading) {
    return file.envelope() && reading.item == file.envelope()->id && reading.place.gore && reading.place.row &&
           reading.place.zone == Zone::Envelope;
}

}

std::string_view sheetName(SheetKind kind) { return namesOfSheets[static_cast<std::size_t>(kind)]; }

std::vector<std::string> sheetNames() { return {namesOfSheets.begin(), namesOfSheets.end()}; }

std::optional<SheetKind> sheetFrom(std::string_view name) {
    for (std::size_t i = 0; i < namesOfSheets.size(); ++i)
        if (namesOfSheets[i] == name)
            return static_cast<SheetKind>(i);
    return std::nullopt;
}

paper::Document sheet(SheetKind kind, const BenchFile& file, const Speech& in) {
    switch (kind) {
    case SheetKind::Report:
        return inspectionReport(file, in);
    case SheetKind::Release:
    case SheetKind::Component:
        return releasePaper(file, in);
    case SheetKind::Logbook:
        return logbookPage(file, in);
    case SheetKind::Map:
        return envelopeMapPage(file, in);
    case SheetKind::Discrepancies:
        return discrepancyList(file, in);
    case SheetKind::Incomplete:
        return incompleteRelease(file, in);
    case SheetKind::Labels:
        return labelSheet(file, in);
    }
    return {};
}

std::vector<SheetKind> sheetsOf(const BenchFile& file) {
    std::vector<SheetKind> kinds;
    const auto& closed = file.inspection.closed;
    if (file.inspection.incomplete)
        kinds.push_back(SheetKind::Incomplete);
    if (!closed || closed->body.outcome != Outcome::Abandoned) {
        kinds.push_back(isOfComponents(file.visit()) ? SheetKind::Component : SheetKind::Release);
        kinds.push_back(SheetKind::Logbook);
        if (hasOpenDefects(file))
            kinds.push_back(SheetKind::Discrepancies);
    }
    if (!file.inspection.opened.body.balloon)
        kinds.push_back(SheetKind::Labels);
    kinds.push_back(SheetKind::Report);
    if (std::ranges::any_of(file.inspection.readings, [&](const auto& reading) { return isOnMap(file, reading.body); }))
        kinds.push_back(SheetKind::Map);
    return kinds;
}

paper::Document bound(const std::vector<paper::Document>& documents, const Speech& in) {
    if (documents.size() == 1)
        return documents.front();
    paper::Document whole;
    for (const auto& document : documents) {
        if (whole.blocks.empty())
            whole = {in.say(SheetPhrase::PapersOf, {document.recordId}),
                     document.subtitle,
                     document.recordId,
                     document.caution,
                     {}};
        else
            whole.blocks.emplace_back(paper::PageBreak{});
        whole.blocks.emplace_back(paper::Heading{1, document.title});
        whole.blocks.insert(whole.blocks.end(), document.blocks.begin(), document.blocks.end());
    }
    return whole;
}

}
