// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_parts.h"

#include "measure/duration_text.h"
#include "measure/unit.h"
#include "rules/defects.h"
#include "sheets/sheets.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, 5> names = {"report", "release", "logbook", "map", "discrepancies"};

template <class Body>
const Said<Body>* lastOf(const std::vector<Said<Body>>& all, const DefectId& defect) {
    const Said<Body>* last = nullptr;
    for (const auto& each : all)
        if (each.body.defect == defect)
            last = &each;
    return last;
}

}

paper::Document blankSheet(const BenchFile& file, const std::string& title) {
    paper::Document document;
    document.title = file.inspection.closed ? title : title + " (DRAFT, not signed)";
    const auto& opened = file.inspection.opened.body;
    if (opened.balloon)
        document.subtitle = opened.balloon->text() + (file.balloonTitle.empty() ? "" : ", " + file.balloonTitle);
    else
        for (const auto& item : opened.items)
            document.subtitle += (document.subtitle.empty() ? "" : ", ") + item.text();
    document.recordId = file.inspection.id.text();
    document.caution = std::string(caution);
    return document;
}

Signing signingOf(const BenchFile& file) {
    Signing signing;
    signing.on = file.on;
    if (const auto& closed = file.inspection.closed) {
        signing.outcome = closed->body.outcome;
        signing.person = closed->body.signatory.value_or(PersonId());
        signing.capacity = capacityFrom(closed->body.capacity).value_or(Capacity::PilotOwner);
        signing.manuals = closed->body.manuals;
        signing.limitations = closed->body.limitations;
        signing.on = closed->stamp.at.on();
    }
    return signing;
}

paper::Signature signatureOf(const BenchFile& file) {
    paper::Signature signature;
    const auto& closed = file.inspection.closed;
    const auto capacity = closed ? capacityFrom(closed->body.capacity) : std::nullopt;
    signature.title = closed ? "Signed in the record" : "To be signed";
    signature.lines = {{"Name", closed && closed->body.signatory ? closed->body.signatory->text() : "", false},
                       {"Acting as", capacity ? std::string(capacityTitle(*capacity)) : "", false},
                       {"Licence or certificate no. and kind", closed ? closed->body.licence : "", false},
                       {"Date", closed ? closed->stamp.at.on().iso() : "", false},
                       {"Signature", "", true}};
    return signature;
}

std::string placeText(const PanelPlace& place) {
    std::string text = place.gore ? "gore " + std::to_string(*place.gore) : "";
    if (place.row)
        text += (text.empty() ? "row " : ", row ") + std::to_string(*place.row);
    return text;
}

std::string valueText(const ReadingTaken& reading) {
    const auto* quantity = quantityNamed(reading.quantity);
    const auto* unit = quantity ? unitNamed(reading.unit, quantity->dimension) : nullptr;
    const auto symbol = " " + (unit ? std::string(unit->shown) : reading.unit);
    if (reading.below)
        return figureText(reading.value) + " to below " + figureText(*reading.below) + symbol;
    return (reading.held ? "≥ " : "") + figureText(reading.value) + symbol;
}

std::string conditionsText(const TestConditions& conditions) {
    std::string text = conditions.direction.value_or("");
    const auto add = [&](const std::optional<double>& value, const char* unit) {
        if (value)
            text += (text.empty() ? "" : ", ") + figureText(*value) + unit;
    };
    add(conditions.jawMillimetres, " mm jaws");
    add(conditions.pressurePascals, " Pa");
    add(conditions.areaSquareCentimetres, " cm²");
    return text;
}

std::string who(const std::string& by, CivilDate on) { return by.empty() ? on.iso() : by + ", " + on.iso(); }

std::vector<DefectLine> defectLines(const BenchFile& file) {
    std::vector<DefectLine> lines;
    for (const auto& found : file.inspection.found) {
        DefectLine line{found.body.item.text(),
                        found.body.what,
                        found.body.severity == Severity::Barring ? "bars flight" : "minor",
                        "open",
                        true,
                        false};
        if (const auto* cleared = lastOf(file.inspection.cleared, found.body.defect)) {
            line.state = "cleared: " + cleared->body.what + " (" + who(cleared->by, cleared->stamp.at.on()) + ")";
            line.open = false;
        } else if (const auto* deferred = lastOf(file.inspection.deferred, found.body.defect)) {
            line.state = "deferred: " + deferred->body.reason + "; agreed by " + deferred->body.agreedBy.text();
            if (deferred->body.until)
                line.state += ", until " + deferred->body.until->iso();
            if (deferred->body.untilMinutes)
                line.state += ", until the clock shows " + hoursAndMinutes(*deferred->body.untilMinutes) + " h";
        }
        lines.push_back(std::move(line));
    }
    // What was open on the items before, and is so still.
    for (const auto& item : file.items)
        for (const auto& open : openDefects(item)) {
            const auto known = std::ranges::any_of(
                file.inspection.found, [&](const auto& found) { return found.body.defect == open.found->defect; });
            if (!known)
                lines.push_back({item.id.text(), open.found->what,
                                 open.found->severity == Severity::Barring ? "bars flight" : "minor",
                                 open.deferred ? "deferred: " + open.deferred->what : "open", true, false});
        }
    for (auto& line : lines)
        line.barring = line.open && line.severity == "bars flight" && !line.state.starts_with("deferred");
    return lines;
}

std::string_view sheetName(SheetKind kind) { return names[static_cast<std::size_t>(kind)]; }

std::optional<SheetKind> sheetFrom(std::string_view name) {
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i] == name)
            return static_cast<SheetKind>(i);
    return std::nullopt;
}

paper::Document sheet(SheetKind kind, const BenchFile& file) {
    switch (kind) {
    case SheetKind::Report:
        return inspectionReport(file);
    case SheetKind::Release:
        return releasePaper(file);
    case SheetKind::Logbook:
        return logbookPage(file);
    case SheetKind::Map:
        return envelopeMapPage(file);
    case SheetKind::Discrepancies:
        return discrepancyList(file);
    }
    return {};
}

std::vector<SheetKind> sheetsOf(const BenchFile& file) {
    std::vector<SheetKind> kinds{SheetKind::Release, SheetKind::Logbook};
    const auto defects = defectLines(file);
    if (std::ranges::any_of(defects, &DefectLine::open))
        kinds.push_back(SheetKind::Discrepancies);
    kinds.push_back(SheetKind::Report);
    if (file.envelope())
        kinds.push_back(SheetKind::Map);
    return kinds;
}

paper::Document bound(const std::vector<paper::Document>& documents) {
    paper::Document whole;
    for (const auto& document : documents) {
        if (whole.title.empty()) {
            whole = document;
            continue;
        }
        whole.blocks.emplace_back(paper::PageBreak{});
        whole.blocks.emplace_back(paper::Heading{1, document.title});
        whole.blocks.insert(whole.blocks.end(), document.blocks.begin(), document.blocks.end());
    }
    return whole;
}

}
