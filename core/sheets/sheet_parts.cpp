// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_parts.h"

#include "bench/release/accomplished.h"
#include "bench/release/release_phrase.h"
#include "bench/release/signed_phrase.h"
#include "measure/duration_text.h"
#include "measure/unit.h"
#include "registry/reading_phrase.h"
#include "sheets/sheets.h"
#include "sheets/wording_lines.h"

#include <algorithm>
#include <iterator>

namespace crownring {

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
            if (file.inspection.concerns(item))
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

std::string provenText(const std::optional<Proof>& proof, const Speech& in) {
    constexpr std::size_t shown = 16;
    return proof ? in.say(SignedPhrase::WithCode, {proof->key.substr(0, shown)}) : in.say(SignedPhrase::WithoutCode);
}

void addCopyNote(paper::Document& document, const PersonId& signatory, CivilDate on, const std::optional<Seal>& seal,
                 const std::optional<Proof>& proof, const Speech& in) {
    const auto note =
        in.say(SheetPhrase::CopyOf, {on, signatory.text()}) + " " +
        (seal ? in.say(SheetPhrase::SealOver, {seal->entries.size(), seal->digest}) : in.say(SheetPhrase::NoSeal)) +
        " " + provenText(proof, in);
    document.blocks.emplace_back(paper::Paragraph{note, paper::Emphasis::Quiet});
}

void addWhatItIs(paper::Document& document, const BenchFile& file, const Speech& in) {
    const auto& closed = file.inspection.closed;
    if (!closed) {
        document.blocks.emplace_back(
            paper::Paragraph{in.say(SheetPhrase::DraftNote, {file.on}), paper::Emphasis::Strong});
        addUnconfirmed(document, file, in);
    } else if (closed->body.signatory)
        addCopyNote(document, *closed->body.signatory, closed->stamp.at.on(), closed->body.seal, closed->body.proof,
                    in);
    else
        document.blocks.emplace_back(paper::Paragraph{
            in.say(SheetPhrase::CopyUnsigned, {who(closed->by, closed->stamp.at.on())}), paper::Emphasis::Quiet});
}

std::vector<Argument> outstandingOf(const ReleaseIncomplete& release) {
    std::vector<Argument> outstanding;
    for (const auto& each : release.outstanding)
        outstanding.push_back(each.item ? Argument(Phrase{ReleasePhrase::OutstandingOn, {each.title, *each.item}})
                                        : Argument(each.title));
    return outstanding;
}

void addStatement(paper::Document& document, const BenchFile& file, const ReleaseFacts& facts, const Speech& in) {
    const auto prescribed = statementOf(facts);
    const auto text = file.inspection.closed ? file.inspection.closed->body.statement : prescribed.text;
    const auto& closed = file.inspection.closed;
    if (!text.empty() && closed && closed->body.signatory)
        document.blocks.emplace_back(
            confirmedStatement({text, prescribed.source}, closed->body.confirmed, file.wordings.adopted, in));
    else if (!text.empty())
        document.blocks.emplace_back(paper::Statement{text, prescribed.source});
    else if (prescribed.because)
        document.blocks.emplace_back(paper::Paragraph{in.say(*prescribed.because), paper::Emphasis::Quiet});
}

void addEarlierRelease(paper::Document& document, const BenchFile& file, const Speech& in) {
    const auto& release = file.inspection.incomplete;
    if (!release)
        return;
    document.blocks.emplace_back(paper::Paragraph{
        in.say(SheetPhrase::EarlierRelease, {who(release->body.signatory.text(), release->stamp.at.on()),
                                             Listed{limitsOfFlight(release->body.limitations, release->body.within)},
                                             Listed{outstandingOf(release->body)}}),
        paper::Emphasis::Plain});
}

void addSections(paper::Document& document, ReleaseFacts facts, std::vector<paper::Fact> further, const Speech& in) {
    facts.person.clear();
    facts.capacity.reset();
    facts.licence.clear();
    facts.title.clear(); // it stands under the paper's own
    auto sections = sectionsOf(facts);
    if (!sections.empty())
        sections.pop_back(); // the caution
    paper::Facts head{{}, 2, 0.13, true, 0.35};
    paper::Facts rows{{}, 1, 0.18, true};
    const Argument times = Phrase{ReleasePhrase::TimeInService, {}};
    const std::vector<Argument> ofShortPieces{Phrase{ReleasePhrase::DataUsed, {}},
                                              Phrase{ReleasePhrase::ReadingsTaken, {}}};
    constexpr std::size_t few = 9; // beside the aircraft; the times of more items run on over the whole width
    const bool isLong = std::ranges::any_of(sections, [&](const ReleaseSection& section) {
        return section.heading == times && section.paragraphs.size() > few;
    });
    for (std::size_t number = 0; number < sections.size(); ++number) {
        const auto& section = sections[number];
        const bool ofAircraft = number == 0 || section.heading == times;
        const bool runsOn =
            std::ranges::find(ofShortPieces, section.heading) != ofShortPieces.end() || (isLong && ofAircraft);
        std::string lines;
        for (const auto& paragraph : section.paragraphs)
            lines += (lines.empty() ? "" : runsOn ? "; " : "\n") + in.say(paragraph);
        (ofAircraft && !isLong ? head : rows).facts.push_back({in.say(section.heading), lines});
    }
    rows.facts.insert(rows.facts.end(), std::make_move_iterator(further.begin()),
                      std::make_move_iterator(further.end()));
    if (!head.facts.empty())
        document.blocks.emplace_back(std::move(head));
    document.blocks.emplace_back(std::move(rows));
}

std::string workText(const BenchFile& file, const std::vector<Work>& work, const Speech& in) {
    std::vector<std::pair<RequirementId, Listed>> done;
    for (const auto& each : work) {
        const auto there = std::ranges::find(done, each.requirement, &std::pair<RequirementId, Listed>::first);
        (there == done.end() ? done.emplace_back(each.requirement, Listed()) : *there)
            .second.list.emplace_back(each.item);
    }
    std::string text;
    for (auto& [requirement, items] : done)
        text += (text.empty() ? "" : "; ") +
                in.say(ReleasePhrase::Accomplished, {titleOf(file, requirement), std::move(items)});
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
                   {who(revoked->by, revoked->stamp.at.on()), revoked->body.reason}) +
                " " + provenText(revoked->body.proof, in),
            paper::Emphasis::Strong});
    if (const auto& approved = file.inspection.approved)
        document.blocks.emplace_back(paper::Paragraph{
            in.say(SheetPhrase::ReturnApproved, {who(approved->body.signatory.text(), approved->stamp.at.on()),
                                                 approved->body.licence, approved->body.statement}) +
                " " + provenText(approved->body.proof, in),
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
    if (const auto& closed = file.inspection.closed)
        return signatureOf(closed->body.signatory.value_or(PersonId()), closed->body.capacity, closed->body.licence,
                           closed->stamp.at.on(), in);
    return {in.say(SheetPhrase::ToBeSigned),
            {{in.say(SheetPhrase::Name), "", false},
             {in.say(SheetPhrase::ActingAs), "", false},
             {in.say(SheetPhrase::LicenceNumber), "", false},
             {in.say(SheetPhrase::Date), "", false},
             {in.say(SheetPhrase::Signature), "", true}}};
}

paper::Signature signatureOf(const PersonId& signatory, const std::string& capacity, const std::string& licence,
                             CivilDate on, const Speech& in) {
    const auto as = capacityFrom(capacity);
    return {in.say(SheetPhrase::SignedInTheRecord),
            {{in.say(SheetPhrase::Name), signatory.text(), false},
             {in.say(SheetPhrase::ActingAs), as ? in.say(termOf(*as)) : "", false},
             {in.say(SheetPhrase::LicenceNumber), licence, false},
             {in.say(SheetPhrase::Date), on.iso(), false},
             {in.say(SheetPhrase::Signature), "", true}}};
}

std::string placeText(const PanelPlace& place, const Speech& in) {
    Listed parts;
    if (place.basket)
        parts.list.emplace_back(Term{Term::Of::Zone, std::string(basketPlaceName(*place.basket))});
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

}
