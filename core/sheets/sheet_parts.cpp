// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_parts.h"

#include "bench/release/accomplished.h"
#include "bench/release/release_phrase.h"
#include "measure/duration_text.h"
#include "measure/unit.h"
#include "registry/reading_phrase.h"
#include "sheets/sheets.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, 5> sheetNames = {"report", "release", "logbook", "map", "discrepancies"};

bool isOnMap(const BenchFile& file, const ReadingTaken& reading) {
    return file.envelope() && reading.item == file.envelope()->id && reading.place.gore && reading.place.row &&
           reading.place.zone == Zone::Envelope;
}

}

paper::Document blankSheet(const BenchFile& file, SheetPhrase title, const Speech& in) {
    paper::Document document;
    document.title = in.say(title);
    if (!file.inspection.closed)
        document.title = in.say(SheetPhrase::Draft, {document.title});
    const auto& opened = file.inspection.opened.body;
    if (opened.balloon)
        document.subtitle = opened.balloon->text() + (file.balloonTitle.empty() ? "" : ", " + file.balloonTitle);
    else
        for (const auto& item : opened.items)
            document.subtitle += (document.subtitle.empty() ? "" : ", ") + item.text();
    document.recordId = file.inspection.id.text();
    document.caution = in.say(ReleasePhrase::CautionText);
    return document;
}

Signing signingOf(const BenchFile& file) {
    if (file.inspection.closed)
        return signingOf(*file.inspection.closed);
    Signing signing;
    signing.on = file.on;
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

void addDraftNote(paper::Document& document, const BenchFile& file, const Speech& in) {
    if (!file.inspection.closed)
        document.blocks.emplace_back(
            paper::Paragraph{in.say(SheetPhrase::DraftNote, {file.on}), paper::Emphasis::Strong});
}

std::string workText(const BenchFile& file, const std::vector<Work>& work, const Speech& in) {
    std::string text;
    for (const auto& each : work)
        text += (text.empty() ? "" : "; ") + in.say(SheetPhrase::OnItem, {each.item, titleOf(file, each.requirement)});
    return text;
}

std::vector<Work> workNotDone(const BenchFile& file) {
    auto work = file.inspection.opened.body.work;
    const auto done = accomplishments(file);
    std::erase_if(work, [&](const Work& each) { return std::ranges::find(done, each) != done.end(); });
    return work;
}

void addSince(paper::Document& document, const BenchFile& file, const Speech& in) {
    if (const auto& revoked = file.inspection.revoked)
        document.blocks.emplace_back(paper::Paragraph{
            in.say(file.inspection.closed && file.inspection.closed->body.outcome == Outcome::Discrepancies
                       ? SheetPhrase::ApprovalWithdrawn
                       : SheetPhrase::Withdrawn,
                   {who(revoked->by, revoked->stamp.at.on()), revoked->body.reason}),
            paper::Emphasis::Strong});
    if (const auto& approved = file.inspection.approved)
        document.blocks.emplace_back(paper::Paragraph{
            in.say(SheetPhrase::ReturnApproved, {who(approved->body.signatory.text(), approved->stamp.at.on()),
                                                 approved->body.licence, approved->body.statement}),
            paper::Emphasis::Strong});
    else if (file.inspection.isPending())
        document.blocks.emplace_back(paper::Paragraph{in.say(SheetPhrase::ListPending), paper::Emphasis::Strong});
    if (file.unsupported.empty())
        return;
    auto text = in.say(SheetPhrase::NotSupported);
    for (const auto& each : file.unsupported)
        text += "\n" + in.say(messageOf(each));
    document.blocks.emplace_back(paper::Paragraph{std::move(text), paper::Emphasis::Strong});
}

paper::Signature signatureOf(const BenchFile& file, const Speech& in) {
    paper::Signature signature;
    const auto& closed = file.inspection.closed;
    const auto capacity = closed ? capacityFrom(closed->body.capacity) : std::nullopt;
    signature.title = in.say(closed ? SheetPhrase::SignedInTheRecord : SheetPhrase::ToBeSigned);
    signature.lines = {
        {in.say(SheetPhrase::Name), closed && closed->body.signatory ? closed->body.signatory->text() : "", false},
        {in.say(SheetPhrase::ActingAs), capacity ? in.say(termOf(*capacity)) : "", false},
        {in.say(SheetPhrase::LicenceNumber), closed ? closed->body.licence : "", false},
        {in.say(SheetPhrase::Date), closed ? closed->stamp.at.on().iso() : "", false},
        {in.say(SheetPhrase::Signature), "", true}};
    return signature;
}

std::string placeText(const PanelPlace& place, const Speech& in) {
    Listed parts;
    if (place.zone != Zone::Envelope)
        parts.list.emplace_back(Term{Term::Of::Zone, std::string(zoneName(place.zone))});
    if (place.gore)
        parts.list.emplace_back(Phrase{SheetPhrase::Gore, {*place.gore}});
    if (place.row)
        parts.list.emplace_back(Phrase{SheetPhrase::Row, {*place.row}});
    return in.say(std::move(parts));
}

std::string valueText(const ReadingTaken& reading, const Speech& in) {
    const auto* quantity = quantityNamed(reading.quantity);
    const auto* unit = quantity ? unitNamed(reading.unit, quantity->dimension) : nullptr;
    const auto figure = [&](double value) { return InUnit{value, unit ? std::string(unit->symbol) : reading.unit}; };
    if (reading.below)
        return in.say(SheetPhrase::Step, {reading.value, figure(*reading.below)});
    return (reading.held ? "≥ " : "") + in.say(figure(reading.value));
}

std::string conditionsText(const TestConditions& conditions, const Speech& in) {
    Listed parts;
    if (conditions.direction)
        parts.list.emplace_back(Term{Term::Of::Direction, *conditions.direction});
    if (conditions.jaw)
        parts.list.emplace_back(Phrase{SheetPhrase::Jaws, {InUnit{conditions.jaw->value(), "mm"}}});
    if (conditions.pressure)
        parts.list.emplace_back(InUnit{conditions.pressure->value(), "Pa"});
    if (conditions.area)
        parts.list.emplace_back(InUnit{conditions.area->value(), "cm2"});
    return in.say(std::move(parts));
}

std::string circumstancesText(const TestCircumstances& circumstances, const Speech& in) {
    Listed parts;
    const auto& [seconds, dry, side, temperature] = circumstances;
    if (seconds)
        parts.list.emplace_back(Phrase{ReadingPhrase::HeldFor, {InUnit{*seconds, "s"}}});
    if (dry)
        parts.list.emplace_back(Phrase{*dry ? ReadingPhrase::Dry : ReadingPhrase::NotDry, {}});
    if (side)
        parts.list.emplace_back(
            Phrase{*side == Side::Inside ? ReadingPhrase::FromInside : ReadingPhrase::FromOutside, {}});
    if (temperature)
        parts.list.emplace_back(InUnit{temperature->value(), "degC"});
    return in.say(std::move(parts));
}

std::string hoursText(const std::optional<Minutes>& time, const Speech& in) {
    return time ? in.say(ReleasePhrase::Hours, {hoursAndMinutes(*time)}) : in.say(ReleasePhrase::NotKnown);
}

std::string who(const std::string& by, CivilDate on) { return by.empty() ? on.iso() : by + ", " + on.iso(); }

std::string_view sheetName(SheetKind kind) { return sheetNames[static_cast<std::size_t>(kind)]; }

std::optional<SheetKind> sheetFrom(std::string_view name) {
    for (std::size_t i = 0; i < sheetNames.size(); ++i)
        if (sheetNames[i] == name)
            return static_cast<SheetKind>(i);
    return std::nullopt;
}

paper::Document sheet(SheetKind kind, const BenchFile& file, const Speech& in) {
    switch (kind) {
    case SheetKind::Report:
        return inspectionReport(file, in);
    case SheetKind::Release:
        return releasePaper(file, in);
    case SheetKind::Logbook:
        return logbookPage(file, in);
    case SheetKind::Map:
        return envelopeMapPage(file, in);
    case SheetKind::Discrepancies:
        return discrepancyList(file, in);
    }
    return {};
}

std::vector<SheetKind> sheetsOf(const BenchFile& file) {
    std::vector<SheetKind> kinds;
    const auto& closed = file.inspection.closed;
    if (!closed || closed->body.outcome != Outcome::Abandoned) {
        kinds = {SheetKind::Release, SheetKind::Logbook};
        if (hasOpenDefects(file))
            kinds.push_back(SheetKind::Discrepancies);
    }
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
