// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"
#include "registry/item_facts.h"
#include "rules/due/defects.h"
#include "sheets/sheet_parts.h"

#include <algorithm>

namespace crownring {

namespace {

template <class Body>
const Said<Body>* lastOf(const std::vector<Said<Body>>& all, const DefectId& defect) {
    const Said<Body>* last = nullptr;
    for (const auto& each : all)
        if (each.body.defect == defect)
            last = &each;
    return last;
}

std::string deferralText(const std::string& reason, const std::string& agreedBy, const std::optional<CivilDate>& until,
                         const std::optional<Minutes>& untilMinutes, const Speech& in) {
    auto text = in.say(SheetPhrase::IsDeferred, {reason});
    if (!agreedBy.empty())
        text = in.say(SheetPhrase::AgreedBy, {text, agreedBy});
    if (until)
        text = in.say(SheetPhrase::UntilDay, {text, *until});
    if (untilMinutes)
        text = in.say(SheetPhrase::UntilClock, {text, hoursAndMinutes(*untilMinutes)});
    return text;
}

/// What the bench said of it last; the words with the most in them.
void speak(DefectLine& line, const Inspection& inspection, const Speech& in) {
    if (const auto* cleared = lastOf(inspection.cleared, line.defect)) {
        line.state = in.say(SheetPhrase::IsCleared,
                            {cleared->body.what + (cleared->body.ref.empty() ? "" : ", " + cleared->body.ref),
                             who(cleared->by, cleared->stamp.at.on())});
        line.open = false;
    } else if (const auto* deferred = lastOf(inspection.deferred, line.defect)) {
        const auto& body = deferred->body;
        line.state = deferralText(body.reason, body.agreedBy.text(), body.until, body.untilMinutes, in);
        line.deferred = true;
    }
}

DefectLine lineOf(const OpenDefect& open, const ItemFacts& item, const BenchFile& file, const Speech& in) {
    DefectLine line{open.found->defect,
                    item.id.text(),
                    in.say(whatOf(file, *open.found)),
                    open.found->severity,
                    in.say(SheetPhrase::IsOpen),
                    true,
                    false,
                    bars(open, item, file.on)};
    if (open.deferred) {
        line.state = deferralText(open.deferred->what, {}, open.deferred->until, open.deferred->untilMinutes, in);
        line.deferred = true;
    }
    return line;
}

std::string gradedText(const std::string& state, const Graded& graded, const Speech& in) {
    return graded.why.empty() ? in.say(SheetPhrase::GradedDownBy, {state, graded.by})
                              : in.say(SheetPhrase::GradedDown, {state, graded.by, graded.why});
}

std::string gradeText(const BenchFile& file, const DefectLine& line, const Speech& in) {
    const auto graded = file.graded.find(line.defect);
    const auto grade = severityText(line.severity, in);
    return graded == file.graded.end() ? grade : gradedText(grade, graded->second, in);
}

/// Who took it out, and why: in words, or that it was at the bench.
DefectLine lineOf(const TakenOut& out, const BenchFile& file, const Speech& in) {
    const auto& found = std::get<DefectFound>(out.entry.body);
    const auto& reason = std::get<EntryVoided>(out.taken.body).reason;
    DefectLine line;
    line.defect = found.defect;
    line.item = found.item.text();
    line.what = in.say(whatOf(file, found));
    line.severity = found.severity;
    line.state = in.say(SheetPhrase::IsVoided, {who(out.taken.by, out.taken.on),
                                                voidReasonFrom(reason) ? in.say(SheetPhrase::TakenBackThere) : reason});
    line.voided = true;
    return line;
}

}

std::string severityText(Severity severity, const Speech& in) {
    return in.say(severity == Severity::Minor       ? SheetPhrase::Minor
                  : severity == Severity::Grounding ? SheetPhrase::Grounding
                                                    : SheetPhrase::BarsFlight);
}

std::string answeredText(const BenchFile& file, const ItemId& item, const RequirementId& requirement,
                         const std::string& state, const Speech& in) {
    return std::ranges::find(file.answered, Work{item, requirement}) == file.answered.end()
               ? state
               : in.say(SheetPhrase::AnsweredSince, {state});
}

std::vector<DefectLine> defectLines(const BenchFile& file, const Speech& in) {
    std::vector<DefectLine> lines;
    for (const auto& found : file.inspection.found) {
        DefectLine line{found.body.defect,
                        found.body.item.text(),
                        in.say(whatOf(file, found.body)),
                        found.body.severity,
                        in.say(SheetPhrase::IsOpen),
                        true,
                        false,
                        found.body.severity != Severity::Minor};
        speak(line, file.inspection, in);
        line.bars = line.bars && line.open && !line.deferred;
        lines.push_back(std::move(line));
    }
    // The record knows more: what was open on the items before, and whether a deferral has ended.
    for (const auto& item : file.items)
        for (const auto& open : openDefects(item)) {
            const auto known = std::ranges::find(lines, open.found->defect, &DefectLine::defect);
            if (known == lines.end())
                lines.push_back(lineOf(open, item, file, in));
            else
                known->bars = bars(open, item, file.on);
        }
    for (auto& line : lines)
        if (const auto said = file.deferrals.find(line.defect); line.deferred && said != file.deferrals.end()) {
            const auto& body = said->second.body;
            line.state = deferralText(body.reason, body.agreedBy.text(), body.until, body.untilMinutes, in);
            line.placard = body.placard;
            line.deferredBy = who(said->second.by, said->second.stamp.at.on());
        }
    for (auto& line : lines)
        if (line.open)
            line.state = answeredText(file, ItemId(line.item), requirementOf(line.defect), line.state, in);
    for (auto& line : lines)
        if (const auto graded = file.graded.find(line.defect); graded != file.graded.end())
            line.state = gradedText(line.state, graded->second, in);
    for (auto& line : lines)
        if (const auto pictured = file.photographs.find(line.defect); pictured != file.photographs.end())
            line.photographs = pictured->second;
    for (const auto& each : file.takenOut)
        lines.push_back(lineOf(each, file, in));
    return lines;
}

std::string takenOutText(const BenchFile& file, const Speech& in) {
    std::string text;
    for (const auto& line : defectLines(file, in))
        if (line.voided)
            text += (text.empty() ? "" : "\n") + in.say(SheetPhrase::OpenDefect, {line.item, line.what, line.state});
    return text;
}

std::string openMinorText(const BenchFile& file, Outcome outcome, const Speech& in) {
    std::string text;
    if (isRelease(outcome))
        for (const auto& line : defectLines(file, in))
            if (line.open && !line.deferred)
                text += (text.empty() ? "" : "\n") +
                        in.say(SheetPhrase::OpenDefect, {line.item, line.what, gradeText(file, line, in)});
    return text;
}

bool listsExceptions(const BenchFile& file) {
    const auto& closed = file.inspection.closed;
    const bool listed = closed ? closed->body.outcome == Outcome::Discrepancies
                               : regimeOf(file.visit()) == Regime::Us14Cfr && isPeriodic(file.visit());
    return listed && !file.excepted.empty();
}

bool hasOpenDefects(const BenchFile& file) {
    const auto isCleared = [&](const Said<DefectFound>& found) {
        return lastOf(file.inspection.cleared, found.body.defect) != nullptr;
    };
    return listsExceptions(file) || !std::ranges::all_of(file.inspection.found, isCleared) ||
           std::ranges::any_of(file.items, [](const ItemFacts& item) { return !openDefects(item).empty(); });
}

}
