// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/directive_status.h"

#include "bench/release/release_phrase.h"
#include "sheets/review_phrase.h"
#include "sheets/sheet_parts.h"

#include <algorithm>

namespace crownring {

namespace {

using namespace paper;

ReviewPhrase statusOf(const DirectiveStatusLine& line) {
    const auto& standing = line.standing;
    if (standing == "not-bound")
        return ReviewPhrase::StatusNotApplicable;
    if (standing == "unproven")
        return ReviewPhrase::StatusUnproven;
    if (standing == "lapsed")
        return line.atOnce ? ReviewPhrase::StatusAtOnce : ReviewPhrase::StatusOverdue;
    if (standing == "closed")
        return ReviewPhrase::StatusClosed;
    if (standing == "superseded")
        return ReviewPhrase::StatusSuperseded;
    return standing == "upcoming" ? ReviewPhrase::StatusUpcoming : ReviewPhrase::StatusOpen;
}

std::string numberText(const DirectiveStatusLine& line, const Speech& in) {
    auto text = in.say(ReviewPhrase::DirectiveNumber, {line.directive, line.revision, line.effective, line.issuer});
    return line.recommended ? in.say(ReviewPhrase::DirectiveAdvised, {text}) : text;
}

std::string methodText(const DirectiveStatusLine& line, const Speech& in) {
    return line.by.empty() ? line.method : in.say(ReviewPhrase::ByOtherMeans, {line.method, line.by});
}

std::string doneText(const DirectiveStatusLine& line, const Speech& in) {
    if (!line.on)
        return {};
    return in.say(*line.on) + ", " + hoursText(line.hours, in);
}

}

paper::Document directiveStatus(const Registration& balloon, CivilDate on,
                                const std::vector<DirectiveStatusLine>& lines, const Speech& in) {
    Document document;
    document.title = in.say(ReviewPhrase::DirectiveStatus);
    document.subtitle = in.say(ReviewPhrase::StatusOn, {balloon, on});
    document.caution = in.say(ReleasePhrase::CautionText);
    if (lines.empty()) {
        document.blocks.emplace_back(Paragraph{in.say(ReviewPhrase::NoDirectives), Emphasis::Plain});
        return document;
    }
    Table table;
    for (const auto label : {ReviewPhrase::Directive, ReviewPhrase::DirectiveItem, ReviewPhrase::DirectiveState,
                             ReviewPhrase::DirectiveMethod, ReviewPhrase::DirectiveDone, ReviewPhrase::DirectiveNext})
        table.columns.push_back({in.say(label)});
    for (const auto& line : lines)
        table.rows.push_back({numberText(line, in) + ": " + line.title, line.item.text(),
                              in.say(statusOf(line), {line.why}), methodText(line, in), doneText(line, in),
                              in.say(line.next)});
    document.blocks.emplace_back(std::move(table));
    document.blocks.emplace_back(Paragraph{in.say(ReviewPhrase::StatusRests), Emphasis::Quiet});
    return document;
}

}
