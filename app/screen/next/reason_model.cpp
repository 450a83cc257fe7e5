// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/reason_model.h"

#include "rules/standing/limit_state.h"
#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

QString capitalised(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

ReasonLine lineOf(const DueRow& row) {
    ReasonLine line;
    line.item = inward(row.item->id.text());
    line.requirement = inward(row.requirement->id.text());
    line.title =
        ReasonModel::tr("%1 %2: %3").arg(Words::kind(row.item->kind), line.item, words::said(row.requirement->title));
    line.title = capitalised(line.title);
    line.source = words::said(row.requirement->source);
    line.standing = static_cast<int>(reckonedAs(row.state));
    line.word = Words::standing(row.state);
    line.word = capitalised(line.word); // it begins a sentence here
    line.used = DueTexts::used(row);
    return line;
}

QString stateText(const DueRow& row) {
    const auto left = DueTexts::left(row);
    const auto due = DueTexts::due(row);
    if (const auto because = Words::because(row); !because.isEmpty())
        return because;
    if (left.isEmpty() || due.isEmpty())
        return Words::standing(row.state);
    return ReasonModel::tr("Due %1: %2.").arg(due, left);
}

/// What is not known is as bad as what is not proven.
ReasonLine unknownLine() {
    ReasonLine line;
    line.standing = static_cast<int>(Standing::Unproven);
    return line;
}

ReasonLine incompleteLine(const RigUpReason& reason) {
    auto line = unknownLine();
    line.word = ReasonModel::tr("Incomplete");
    line.source = ReasonModel::tr("A balloon is one envelope, one basket, one burner and at least one cylinder.");
    if (reason.count == 0) {
        line.title = capitalised(ReasonModel::tr("%1: none chosen").arg(Words::kind(reason.part)));
        line.text = ReasonModel::tr("This kit is no whole balloon.");
        line.mend = ReasonModel::tr("Choose the one that flies.");
    } else {
        line.title = capitalised(ReasonModel::tr("%1: %2 chosen").arg(Words::kinds(reason.part)).arg(reason.count));
        line.text = ReasonModel::tr("A balloon flies with one.");
        line.mend = ReasonModel::tr("Leave out what does not fly.");
    }
    return line;
}

ReasonLine cannotSayLine(const ItemFacts& item) {
    auto line = unknownLine();
    line.item = inward(item.id.text());
    line.word = ReasonModel::tr("Cannot be said");
    line.title = capitalised(ReasonModel::tr("%1 %2").arg(Words::kind(item.kind), line.item));
    line.text = ReasonModel::tr("No mandatory requirement that was adopted binds it.");
    line.source = ReasonModel::tr("The programmes that the record has adopted.");
    line.mend = ReasonModel::tr("Adopt the programme that it is kept by, in Rules.");
    return line;
}

ReasonLine notEnteredLine(const ItemId& part) {
    auto line = unknownLine();
    line.item = inward(part.text());
    line.word = ReasonModel::tr("Cannot be said");
    line.title = line.item;
    line.text = ReasonModel::tr("It is a part of this kit, and not in the record on that day.");
    line.source = ReasonModel::tr("What the record says is fitted to it.");
    line.mend = ReasonModel::tr("Enter it, or its removal, in Record.");
    return line;
}

ReasonLine outLine(const ItemFacts& item) {
    auto line = unknownLine();
    line.item = inward(item.id.text());
    line.word = ReasonModel::tr("Out of service");
    line.title = capitalised(ReasonModel::tr("%1 %2").arg(Words::kind(item.kind), line.item));
    line.text = capitalised(words::said(reasonOf(*item.out)) + u'.');
    line.source = ReasonModel::tr("What the record says of its state.");
    line.mend = item.out->state == ServiceState::Condemned
                    ? ReasonModel::tr("Fly another.")
                    : ReasonModel::tr("Fly another, or put it back in service from its page.");
    return line;
}

ReasonLine beyondLine(const ItemFacts& item, const Phrase& beyond) {
    auto line = unknownLine();
    line.item = inward(item.id.text());
    line.word = ReasonModel::tr("Beyond its release");
    line.title = capitalised(ReasonModel::tr("%1 %2").arg(Words::kind(item.kind), line.item));
    line.text = capitalised(words::said(beyond) + u'.');
    line.source = ReasonModel::tr("The release after incomplete maintenance.");
    line.mend = ReasonModel::tr("Do what is outstanding and sign the closing release.");
    return line;
}

ReasonLine unreadLine(const Question& question) {
    auto line = unknownLine();
    line.word = ReasonModel::tr("Cannot be said");
    line.title = ReasonModel::tr("Entry %1").arg(inward(question.subject));
    line.text = ReasonModel::tr("It cannot be read: it may be about this kit.");
    line.source = words::said(question.detail);
    line.mend = ReasonModel::tr("Void it, in Record, and write it again as it should be.");
    return line;
}

/// Which limit is reached, and how far into the flight; then what its tolerance is good for.
QString tooLongText(const RigUpReason& reason, const PlannedFlight& flight) {
    const auto* reach = reason.limit ? reason.limit->usage() : nullptr;
    if (!reach)
        return reason.limit ? ReasonModel::tr("The flight needs more than is left: %1.").arg(Words::left(*reason.limit))
                            : ReasonModel::tr("The flight needs more than is left.");
    const auto amount = [&](ClockCount count) { return Words::amount(reason.limit->clock, count.value()); };
    QStringList text;
    if (reach->left > ClockCount(0))
        text += ReasonModel::tr("%1 planned: the limit at %2 is reached %3 into the flight.")
                    .arg(amount(figureOf(flight.use, reason.limit->clock)), amount(reach->due), amount(reach->left));
    else
        text += ReasonModel::tr("The limit at %1 is reached: nothing is left.").arg(amount(reach->due));
    if (reach->toleranceLeft > std::max(reach->left, ClockCount(0))) {
        const bool counts = flight.positioning || reason.row->requirement->toleranceFor == ToleranceFor::Flight;
        text += (counts ? ReasonModel::tr("Its tolerance too is used up, %1 into it.")
                        : ReasonModel::tr("Its tolerance, up to %1 into it, only serves to reach the place of the "
                                          "inspection."))
                    .arg(amount(reach->toleranceLeft));
    }
    return text.join(u' ');
}

/// What may be flown past the limit.
QString toleranceText(const LimitState& limit, const PlannedFlight& flight) {
    if (const auto* reach = limit.calendar())
        return ReasonModel::tr("Its last day was %1: this flies in its tolerance, up to %2.")
            .arg(Words::due(limit), inward(addDays(reach->due, (reach->toleranceLeft - reach->left).value()).iso()));
    const auto* reach = limit.usage();
    if (!reach)
        return {};
    const auto amount = [&](ClockCount count) { return Words::amount(limit.clock, count.value()); };
    const auto end = amount(ClockCount(reach->due.value() + reach->toleranceLeft.value() - reach->left.value()));
    if (reach->left <= ClockCount(0))
        return ReasonModel::tr("The limit at %1 is reached: this flies in its tolerance, up to %2.")
            .arg(amount(reach->due), end);
    const auto planned = figureOf(flight.use, limit.clock);
    return ReasonModel::tr("%1 planned: the limit at %2 is reached %3 into the flight, the rest flies in its "
                           "tolerance, up to %4.")
        .arg(amount(planned), amount(reach->due), amount(reach->left), end);
}

/// What is left of a tolerance that does not count for this flight.
QString positioningText(const RigUpReason& reason) {
    const auto left = reason.limit ? Words::toleranceLeft(*reason.limit) : QString();
    return left.isEmpty() ? ReasonModel::tr("In a tolerance that only serves to reach the place of the inspection.")
                          : ReasonModel::tr("In a tolerance that only serves to reach the place of the inspection: %1 "
                                            "of it left.")
                                .arg(left);
}

QString mendOf(const DueRow& row) {
    switch (row.state.standing) {
    case Standing::Spent:
        return ReasonModel::tr("Its life limit is reached: fly another item.");
    case Standing::Unproven:
        return ReasonModel::tr("Enter the paper that proves when it was last done, or have it done.");
    default:
        return ReasonModel::tr("Have it done, or fly another item.");
    }
}

}

ReasonLine reasonLine(const RigUpReason& reason, const PlannedFlight& flight) {
    if (reason.kind == RigUpReason::Kind::Incomplete)
        return incompleteLine(reason);
    if (reason.kind == RigUpReason::Kind::CannotSay)
        return cannotSayLine(*reason.item);
    if (reason.kind == RigUpReason::Kind::NotEntered)
        return notEnteredLine(*reason.unknown);
    if (reason.kind == RigUpReason::Kind::OutOfService)
        return outLine(*reason.item);
    if (reason.kind == RigUpReason::Kind::Unread)
        return unreadLine(*reason.unread);
    if (reason.kind == RigUpReason::Kind::BeyondRelease)
        return beyondLine(*reason.item, *reason.beyond);
    auto line = lineOf(*reason.row);
    switch (reason.kind) {
    case RigUpReason::Kind::Incomplete:
    case RigUpReason::Kind::CannotSay:
    case RigUpReason::Kind::NotEntered:
    case RigUpReason::Kind::OutOfService:
    case RigUpReason::Kind::Unread:
    case RigUpReason::Kind::BeyondRelease:
    case RigUpReason::Kind::Standing:
        line.text = stateText(*reason.row);
        line.mend = mendOf(*reason.row);
        break;
    case RigUpReason::Kind::TooLong:
        line.text = tooLongText(reason, flight);
        line.mend = ReasonModel::tr("Fly shorter, have it done before, or fly another item.");
        break;
    case RigUpReason::Kind::Positioning:
        line.text = positioningText(reason);
        line.mend = ReasonModel::tr("Mark the flight as one to the place of the inspection, or have it done.");
        break;
    }
    return line;
}

ReasonLine noteLine(const DueRow& row) {
    auto line = lineOf(row);
    line.text = stateText(row);
    line.mend = DueTexts::remark(row);
    return line;
}

ReasonLine toleranceLine(const ToleranceUse& use, const PlannedFlight& flight) {
    auto line = lineOf(*use.row);
    line.text = toleranceText(use.limit, flight);
    line.mend = use.row->requirement->toleranceFor == ToleranceFor::Positioning
                    ? ReasonModel::tr("Only because the flight is to reach the place of the inspection.")
                    : ReasonModel::tr("Have it done before the tolerance ends.");
    return line;
}

QVariant ReasonModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemRole:
        return line.item;
    case RequirementRole:
        return line.requirement;
    case Qt::DisplayRole:
    case TitleRole:
        return line.title;
    case SaysRole:
        return line.text;
    case SourceRole:
        return line.source;
    case MendRole:
        return line.mend;
    case WordRole:
        return line.word;
    case StandingRole:
        return line.standing;
    case UsedRole:
        return line.used;
    case SpokenRole:
        return joined({line.title, line.word, line.text, line.mend, line.source}, QStringLiteral(", "));
    default:
        return {};
    }
}

}
