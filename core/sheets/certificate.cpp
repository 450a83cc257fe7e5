// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release_phrase.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"
#include "sheets/wording_lines.h"

namespace crownring {

namespace {

using namespace paper;

SheetPhrase titleOf(const BenchFile& file) {
    const auto outcome = file.inspection.closed ? file.inspection.closed->body.outcome : Outcome::Released;
    const bool partMl = regimeOf(file.visit()) == Regime::PartMl;
    if (outcome == Outcome::Abandoned)
        return SheetPhrase::Abandoned;
    if (isOfComponents(file.visit()))
        return outcome != Outcome::Released ? SheetPhrase::ComponentsNotReleased
               : partMl                     ? SheetPhrase::ComponentCertificate
                                            : SheetPhrase::ComponentReturn;
    if (!file.inspection.opened.body.balloon)
        return SheetPhrase::WorkOnItems;
    if (file.inspection.approved)
        return SheetPhrase::ApprovedSince;
    if (partMl)
        return outcome == Outcome::Released ? SheetPhrase::ReleaseToService : SheetPhrase::WithoutRelease;
    return outcome == Outcome::Released ? SheetPhrase::ReturnToService : SheetPhrase::NoReturnToService;
}

/// What a release says besides: what of the work was not done, and the minor defects that it leaves
/// open, what was found and taken out of the record.
std::vector<Fact> further(const BenchFile& file, Outcome outcome, const Speech& in) {
    std::vector<Fact> facts;
    if (outcome == Outcome::Released || outcome == Outcome::Discrepancies)
        if (const auto lacking = workNotDone(file); !lacking.empty())
            facts.push_back({in.say(SheetPhrase::NotDone), workText(file, lacking, in)});
    if (const auto open = openMinorText(file, outcome, in); !open.empty())
        facts.push_back({in.say(SheetPhrase::OpenDefects), open});
    if (const auto out = takenOutText(file, in); !out.empty())
        facts.push_back({in.say(SheetPhrase::Voided), out});
    return facts;
}

}

paper::Document releasePaper(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, titleOf(file), in);
    const auto facts = factsOf(file);
    addWhatItIs(document, file, in);
    addSince(document, file, in);
    if (isOfComponents(file.visit()))
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::NoFormOfAuthority), Emphasis::Quiet});
    addEarlierRelease(document, file, in);
    addSections(document, facts, further(file, facts.outcome, in), in);
    addStatement(document, file, facts, in);
    document.blocks.emplace_back(signatureOf(file, in));
    if (!correctionsTable(file, in).rows.empty())
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::CorrectedSinceSee), Emphasis::Strong});
    return document;
}

// ML.A.801(f), from memory; 145.A.50(e), read: the fact that it is incomplete stands on it before it is issued.
paper::Document incompleteRelease(const BenchFile& file, const Speech& in) {
    const auto& release = file.inspection.incomplete;
    if (!release || !file.atIncomplete) {
        auto document = blankSheet(file, SheetPhrase::IncompleteRelease, in);
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::NoIncompleteRelease), Emphasis::Plain});
        return document;
    }
    const auto& then = *file.atIncomplete;
    const auto& body = release->body;
    auto document = blankSheet(then, SheetPhrase::IncompleteRelease, in);
    document.title = in.say(SheetPhrase::IncompleteRelease); // signed, although the visit is open
    addCopyNote(document, body.signatory, release->stamp.at.on(), body.seal, body.proof, in);
    Signing signing;
    signing.outcome = Outcome::Incomplete;
    signing.person = body.signatory;
    signing.capacity = capacityFrom(body.capacity).value_or(signing.capacity);
    signing.manuals = body.manuals;
    signing.limitations = body.limitations;
    signing.within = body.within;
    signing.on = release->stamp.at.on();
    auto facts = releaseFacts(then, signing);
    facts.outstanding = outstandingOf(body);
    addSections(document, facts, further(then, Outcome::Incomplete, in), in);
    document.blocks.emplace_back(
        confirmedStatement({body.statement, statementOf(facts).source}, body.confirmed, file.wordings.adopted, in));
    document.blocks.emplace_back(signatureOf(body.signatory, body.capacity, body.licence, release->stamp.at.on(), in));
    if (file.inspection.closed)
        document.blocks.emplace_back(
            Paragraph{in.say(SheetPhrase::EndedSince, {file.inspection.closed->stamp.at.on()}), Emphasis::Strong});
    return document;
}

}
