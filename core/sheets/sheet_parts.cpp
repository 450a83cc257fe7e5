// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_parts.h"

#include "measure/unit.h"
#include "sheets/sheets.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, 5> names = {"report", "release", "logbook", "map", "discrepancies"};

bool isOnMap(const BenchFile& file, const ReadingTaken& reading) {
    return file.envelope() && reading.item == file.envelope()->id && reading.place.gore && reading.place.row;
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

ReleaseFacts factsOf(const BenchFile& file) {
    auto facts = releaseFacts(file, signingOf(file));
    const auto& closed = file.inspection.closed;
    if (!closed) {
        facts.capacity.reset();
        facts.date.reset();
    } else {
        facts.licence = closed->body.licence;
    }
    return facts;
}

void addDraftNote(paper::Document& document, const BenchFile& file) {
    if (!file.inspection.closed)
        document.blocks.emplace_back(paper::Paragraph{"DRAFT: the inspection is open on " + file.on.iso() +
                                                          ". Nothing on this page is signed or released.",
                                                      paper::Emphasis::Strong});
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
    const auto add = [&](const auto& amount, const char* unit) {
        if (amount)
            text += (text.empty() ? "" : ", ") + figureText(amount->value()) + unit;
    };
    add(conditions.jaw, " mm jaws");
    add(conditions.pressure, " Pa");
    add(conditions.area, " cm²");
    return text;
}

std::string who(const std::string& by, CivilDate on) { return by.empty() ? on.iso() : by + ", " + on.iso(); }

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
    std::vector<SheetKind> kinds;
    const auto& closed = file.inspection.closed;
    if (!closed || closed->body.outcome != Outcome::Abandoned) {
        kinds = {SheetKind::Release, SheetKind::Logbook};
        if (std::ranges::any_of(defectLines(file), &DefectLine::open))
            kinds.push_back(SheetKind::Discrepancies);
    }
    kinds.push_back(SheetKind::Report);
    if (std::ranges::any_of(file.inspection.readings, [&](const auto& reading) { return isOnMap(file, reading.body); }))
        kinds.push_back(SheetKind::Map);
    return kinds;
}

paper::Document bound(const std::vector<paper::Document>& documents) {
    if (documents.size() == 1)
        return documents.front();
    paper::Document whole;
    for (const auto& document : documents) {
        if (whole.blocks.empty())
            whole = {"Papers of inspection " + document.recordId,
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
