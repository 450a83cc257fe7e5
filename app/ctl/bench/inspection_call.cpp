// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/discrepancies.h"
#include "answers/supported.h"
#include "bench/checklist/visit.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "paper/csv.h"
#include "paper/document_text.h"
#include "print/pdf.h"
#include "problem/faults/bench_fault.h"
#include "sheets/sheets.h"
#include "words/bench_words.h"
#include "words/sentence.h"
#include "words/spoken.h"

#include <nlohmann/json.hpp>

#include <algorithm>
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

const words::Spoken language;

/// What is on a list of discrepancies, and whether it still stands.
Json jsonOf(const Discrepancies& list) {
    Json items = Json::array();
    for (const auto& each : list.listed)
        items.push_back({{"item", each.item.text()},
                         {"requirement", each.requirement.text()},
                         {"what", words::said(each.what).toStdString()},
                         {"stands", each.stands}});
    return items;
}

/// @param pending its list of discrepancies; null where none is pending
std::string stateOf(const InspectionCard& card, const Discrepancies* pending, bool supported) {
    if (!card.outcome)
        return card.incomplete ? "open, released after incomplete maintenance " + card.incomplete->iso() : "open";
    if (!supported)
        return stateOf(card, pending, true) + ", no longer supported by the record";
    auto state = words::BenchWords::outcome(*card.outcome, card.releases()).toStdString() + " " + card.closed->iso();
    if (pending) {
        const auto count = pending->count();
        state += count.standing == 0 ? ", pending: all answered, not approved"
                                     : ", pending: " + std::to_string(count.standing) + " of " +
                                           std::to_string(count.listed) + " stand";
    }
    if (card.approved)
        state += ", return approved " + card.approved->iso();
    return card.revoked ? state + (pending ? "; an approval was withdrawn" : ", withdrawn since") : state;
}

Json jsonOf(const InspectionCard& card, const Discrepancies* pending, bool supported) {
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
            {"incomplete", card.incomplete ? Json(card.incomplete->iso()) : Json()},
            {"order", card.order},
            {"revoked", card.revoked},
            {"supported", card.isReleased() ? Json(supported) : Json()},
            {"pending", pending != nullptr},
            {"discrepancies", pending ? jsonOf(*pending) : Json()},
            {"approved", card.approved ? Json(card.approved->iso()) : Json()},
            {"closed", card.closed ? Json(card.closed->iso()) : Json()},
            {"signatory", card.signatory ? Json(card.signatory->text()) : Json()}};
}

/// Calls `use` with the file of an inspection on a day, today where none is said; says why not otherwise.
template <class Use>
int withFile(const Common& common, const std::string& inspection, const std::string& on, Use use) {
    const auto record = openToAsk(common, on);
    if (!record)
        return BadInput;
    const auto file = benchFile(*record, InspectionId(inspection), record.on);
    if (!file)
        return refuse(file.error());
    const auto opened = file->inspection.opened.stamp.at.on();
    return opened > record.on ? refuse(Problem{BenchFault::NotYetOpened, {inspection, opened}}) : use(*file);
}

}

int run(const InspectionListOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto cards = inspectionsOn(*record, record.on);
    if (!cards)
        return refuse(cards.error());
    const auto lists = pendingLists(*record, std::nullopt, record.on);
    if (!lists)
        return refuse(lists.error());
    const auto unsupported = unsupportedReleases(*record, std::nullopt, record.on, latestOfTheFleet);
    if (!unsupported)
        return refuse(unsupported.error());
    Json list = Json::array();
    paper::Table table{{{"Inspection"}, {"Of"}, {"Visit"}, {"Opened"}, {"State"}}, {}, {}};
    for (const auto& card : *cards) {
        const auto found = std::ranges::find(*lists, card.inspection, &Discrepancies::inspection);
        const auto* pending = found == lists->end() ? nullptr : &*found;
        const bool supported = std::ranges::find(*unsupported, card.inspection) == unsupported->end();
        list.push_back(jsonOf(card, pending, supported));
        table.rows.push_back({card.inspection.text(), subjectOf(card),
                              words::BenchWords::visit(card.visit).toStdString(), card.opened.iso(),
                              stateOf(card, pending, supported)});
    }
    if (options.json)
        print({{"on", record.on.iso()}, {"inspections", list}});
    else if (cards->empty())
        std::cout << "No inspection up to " << record.on.iso() << ".\n";
    else
        std::cout << paper::toText({"Inspections up to " + record.on.iso(), {}, {}, {}, {table}}, language);
    return Done;
}

int run(const InspectionShowOptions& options, const Common& common) {
    return withFile(common, options.inspection, options.on, [&](const BenchFile& file) -> int {
        if (options.csv == "lines")
            std::cout << paper::csv(linesTable(file));
        else if (options.csv == "readings")
            std::cout << paper::csv(readingsTable(file, language));
        else if (options.json)
            print(inspectionJson(file, language));
        else
            std::cout << paper::toText(inspectionReport(file, language), language);
        return Done;
    });
}

int run(const InspectionPrintOptions& options, const Common& common) {
    return withFile(common, options.inspection, options.on, [&](const BenchFile& file) -> int {
        std::vector<SheetKind> kinds;
        for (const auto& name : options.what)
            if (const auto kind = sheetFrom(name))
                kinds.push_back(*kind);
        if (kinds.empty() || kinds.size() < options.what.size())
            kinds = sheetsOf(file);
        std::vector<paper::Document> documents;
        for (const auto kind : kinds)
            documents.push_back(sheet(kind, file, language));
        const auto format = options.paper == "letter" ? print::PageFormat::Letter : print::PageFormat::A4;
        const auto written = print::writePdf(bound(documents, language), format, options.to,
                                             options.force ? Replace::Asked : Replace::Never);
        return written ? int{Done} : refuse(written.error());
    });
}

}
