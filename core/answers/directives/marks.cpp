// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/told.h"
#include "rules/due/due_phrase.h"

namespace crownring {

namespace {

/// What is done, and that of which nobody knows whether it binds, is not unknown any more.
bool isUnknown(const DirectiveRow& row) { return row.applicability.applies == Truth::Unknown && row.done.empty(); }

DuePhrase phraseOf(WhyBound why) {
    switch (why) {
    case WhyBound::AllHolds:
        return DuePhrase::BoundAll;
    case WhyBound::OtherKind:
        return DuePhrase::BoundOtherKind;
    case WhyBound::OtherType:
        return DuePhrase::BoundOtherType;
    case WhyBound::OtherSerial:
        return DuePhrase::BoundOtherSerial;
    case WhyBound::NothingFitted:
        return DuePhrase::BoundNothingFitted;
    case WhyBound::TypeMissing:
        return DuePhrase::BoundTypeMissing;
    case WhyBound::SerialMissing:
        return DuePhrase::BoundSerialMissing;
    case WhyBound::SerialShape:
        return DuePhrase::BoundSerialShape;
    case WhyBound::PartsUnlisted:
        return DuePhrase::BoundPartsUnlisted;
    case WhyBound::NearlyAlike:
        return DuePhrase::BoundNearly;
    case WhyBound::EntriesDiffer:
        return DuePhrase::BoundEntriesDiffer;
    }
    return DuePhrase::BoundPartsUnlisted;
}

DirectiveMark markOf(const DirectiveRow& row) {
    const auto& issued = row.directive;
    DirectiveMark mark{issued.directive,
                       issued.revision,
                       issued.title,
                       issued.issuer + ", " + issued.source,
                       {},
                       issued.recommended,
                       isUnknown(row),
                       row.state.standing,
                       row.state.next,
                       row.done.empty() ? std::nullopt : std::optional(row.done.back().evidence)};
    if (mark.isUnknown)
        mark.note = whyOf(row);
    else if (!issued.terminating.empty())
        mark.note = Phrase{DuePhrase::DirectiveEndedBy, {issued.terminating}};
    return mark;
}

}

std::string_view standingOf(const DirectiveRow& row) {
    if (row.life != DirectiveRow::Life::InForce)
        return row.life == DirectiveRow::Life::Upcoming ? "upcoming" : "superseded";
    if (row.applicability.applies == Truth::No)
        return "not-bound";
    return standingText(isUnknown(row) ? Standing::Unproven : row.state.standing);
}

int directivePlace(const DirectiveRow& row) {
    if (row.life != DirectiveRow::Life::InForce)
        return standingCount + 1 + static_cast<int>(row.life);
    if (row.applicability.applies == Truth::No)
        return standingCount;
    for (int place = 0; place < standingCount; ++place)
        if (standingText(static_cast<Standing>(place)) == standingOf(row))
            return place;
    return standingCount;
}

Phrase whyOf(const DirectiveRow& row) {
    if (row.excused)
        return {DuePhrase::BoundAnswered, {row.excused->body.why, row.excused->by, row.excused->stamp.at.on()}};
    return whyOf(row.applicability);
}

Phrase whyOf(const Applicability& applicability) {
    const auto code = phraseOf(applicability.why);
    return code == DuePhrase::BoundAll || code == DuePhrase::BoundOtherKind ? Phrase{code, {}}
                                                                            : Phrase{code, {applicability.about}};
}

Result<DirectiveMarks> directiveMarks(Books& books, const std::vector<ItemFacts>& items, const DirectivesAsked& asked) {
    const auto rows = directiveRows(books, items, asked);
    if (!rows)
        return tl::unexpected(rows.error());
    DirectiveMarks marks;
    for (const auto& row : *rows)
        if (row.life == DirectiveRow::Life::InForce && row.applicability.applies != Truth::No)
            marks[row.item->id].push_back(markOf(row));
    return marks;
}

}
