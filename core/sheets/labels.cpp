// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/accomplished.h"
#include "rules/due/defects.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <algorithm>

namespace crownring {

namespace {

using namespace paper;

/// What was done to one item: as it is described, else what was repaired and replaced, else what was accomplished.
std::string workInBrief(const BenchFile& file, const ItemId& item, const Speech& in) {
    std::string text;
    const auto add = [&](const std::string& what) { text += (text.empty() ? "" : "; ") + what; };
    const auto& inspection = file.inspection;
    for (const auto& work : inspection.performed)
        if (work.body.item == item)
            add(work.body.what);
    if (text.empty()) {
        for (const auto& repair : inspection.repairs)
            if (repair.body.item == item)
                add(repair.body.method);
        for (const auto& part : inspection.parts)
            if (part.body.item == item)
                add(part.body.part);
    }
    for (const auto& work : accomplishments(file))
        if (work.item == item)
            add(in.say(titleOf(file, work.requirement)));
    return text.empty() ? in.say(titleOfVisit(file)) : text;
}

struct Status {
    SheetPhrase phrase = SheetPhrase::LabelReleased;
    bool bars = false;
};

Status statusOf(const BenchFile& file) {
    const auto& inspection = file.inspection;
    const auto& closed = inspection.closed;
    if (!closed)
        return {SheetPhrase::LabelDraft, true};
    if (inspection.revoked)
        return {SheetPhrase::LabelWithdrawn, true};
    if (!file.unsupported.empty())
        return {SheetPhrase::LabelUnsupported, true};
    if (closed->body.outcome != Outcome::Released && !inspection.approved)
        return {SheetPhrase::LabelNotReleased, true};
    // An inspection of items that are on no balloon is a record and releases nothing.
    if (!file.releases())
        return {SheetPhrase::LabelRecordOnly, true};
    return {};
}

}

paper::Label labelOf(const BenchFile& file, const ItemFacts& item, const Speech& in) {
    const auto& inspection = file.inspection;
    const auto& closed = inspection.closed;
    Label label;
    label.title = item.id.text();
    label.subtitle = in.say(termOf(item.kind)) + (item.type ? ", " + *item.type : "");
    const auto add = [&](SheetPhrase what, const std::string& value) {
        if (!value.empty())
            label.facts.push_back({in.say(what), value});
    };
    add(SheetPhrase::SerialNumber, item.serial.value_or(in.say(SheetPhrase::NotRecorded)));
    add(SheetPhrase::TimeInService, hoursText(item.clock.minutes, in));
    add(SheetPhrase::WorkInBrief, workInBrief(file, item.id, in));
    std::string deferred;
    for (const auto& line : defectLines(file, in))
        if (line.item == item.id.text() && line.open)
            deferred += (deferred.empty() ? "" : "; ") + line.what + " (" + line.state + ")";
    add(SheetPhrase::OpenDefects, deferred);
    std::string notCovered;
    for (const auto& each : file.excepted)
        if (each.item == item.id)
            notCovered += (notCovered.empty() ? "" : "; ") + in.say(exceptedText(each));
    add(SheetPhrase::NotCoveredShort, notCovered);
    if (closed) {
        add(SheetPhrase::Limits, closed->body.limitations);
        const auto& signatory = closed->body.signatory;
        auto signature = who(signatory ? signatory->text() : "", closed->stamp.at.on());
        if (!closed->body.licence.empty())
            signature += ", " + closed->body.licence;
        add(signatory ? SheetPhrase::SignedBy : SheetPhrase::Closed, signature);
    }
    const auto& order = inspection.opened.body.order;
    add(SheetPhrase::Visit, inspection.id.text() + (order.empty() ? "" : "; " + order));
    const auto status = statusOf(file);
    label.status = in.say(status.phrase);
    label.bars = status.bars;
    label.note = in.say(SheetPhrase::LabelNote);
    return label;
}

paper::Document labelSheet(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::LabelSheet, in);
    addWhatItIs(document, file, in);
    Labels labels;
    for (const auto& item : certifiedItems(file, signingOf(file).outcome))
        labels.labels.push_back(labelOf(file, item, in));
    document.blocks.emplace_back(std::move(labels));
    return document;
}

}
