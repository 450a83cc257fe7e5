// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/bench_file.h"
#include "bench/visit.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "paper/csv.h"
#include "paper/document_text.h"
#include "print/pdf.h"
#include "sheets/sheets.h"

#include <QtCore/QByteArray>
#include <QtGui/QGuiApplication>
#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

std::string subjectOf(const InspectionCard& card) {
    if (card.balloon)
        return card.balloon->text();
    std::string names;
    for (const auto& item : card.items)
        names += (names.empty() ? "" : ", ") + item.text();
    return names;
}

Json jsonOf(const InspectionCard& card) {
    Json items = Json::array();
    for (const auto& item : card.items)
        items.push_back(item.text());
    return {{"inspection", card.inspection.text()},
            {"visit", card.visit},
            {"balloon", card.balloon ? Json(card.balloon->text()) : Json()},
            {"items", items},
            {"opened", card.opened.iso()},
            {"by", card.by},
            {"outcome", card.outcome ? Json(outcomeName(*card.outcome)) : Json()},
            {"closed", card.closed ? Json(card.closed->iso()) : Json()},
            {"signatory", card.signatory ? Json(card.signatory->text()) : Json()}};
}

/// The file of an inspection on a day, today where none is said.
Result<BenchFile> fileOf(const Common& common, const std::string& inspection, const std::string& on) {
    const auto day = dayFrom(on);
    if (!day)
        return tl::unexpected(day.error());
    const auto record = open(common);
    if (!record)
        return problem(Code::StoreUnopened, "there is no record to read", "name it with --record");
    return benchFile(*record, InspectionId(inspection), *day);
}

}

int run(const InspectionListOptions& options, const Common& common) {
    const auto day = dayFrom(options.on);
    if (!day)
        return refuse(day.error());
    const auto record = open(common);
    if (!record)
        return BadInput;
    const auto cards = inspectionsOn(*record, *day);
    if (!cards)
        return refuse(cards.error());
    Json list = Json::array();
    for (const auto& card : *cards) {
        if (options.json)
            list.push_back(jsonOf(card));
        else
            std::cout << card.inspection.text() << "  " << subjectOf(card) << "  " << card.visit << "  "
                      << (card.outcome ? std::string(outcomeName(*card.outcome)) + " " + card.closed->iso()
                                       : "open since " + card.opened.iso())
                      << "\n";
    }
    if (options.json)
        print({{"on", day->iso()}, {"inspections", list}});
    else if (cards->empty())
        std::cout << "No inspection up to " << day->iso() << ".\n";
    return Done;
}

int run(const InspectionShowOptions& options, const Common& common) {
    const auto file = fileOf(common, options.inspection, options.on);
    if (!file)
        return refuse(file.error());
    if (options.csv == "lines")
        std::cout << paper::csv(linesTable(*file));
    else if (options.csv == "readings")
        std::cout << paper::csv(readingsTable(*file));
    else if (options.json)
        print(inspectionJson(*file));
    else
        std::cout << paper::toText(inspectionReport(*file));
    return Done;
}

int run(const InspectionPrintOptions& options, const Common& common) {
    const auto file = fileOf(common, options.inspection, options.on);
    if (!file)
        return refuse(file.error());
    std::vector<paper::Document> documents;
    if (options.what.empty())
        for (const auto kind : sheetsOf(*file))
            documents.push_back(sheet(kind, *file));
    for (const auto& name : options.what)
        documents.push_back(sheet(sheetFrom(name).value_or(SheetKind::Report), *file));
    const auto written = print::writePdf(
        bound(documents), options.letter ? print::PageFormat::Letter : print::PageFormat::A4, options.to);
    return written ? int{Done} : refuse(written.error());
}

}
