// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/directives/directive_words.h"

#include "words/border.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

QString between() { return QStringLiteral(" · "); }

QStringList narrowed(const std::vector<std::string>& types, const std::vector<SerialSpan>& serials) {
    QStringList parts;
    QStringList names;
    for (const auto& type : types)
        names += inward(type);
    if (!names.isEmpty())
        parts += DirectiveWords::tr("type %1").arg(names.join(DirectiveWords::tr(" or ")));
    for (const auto& span : serials)
        parts += Words::serials({span.from, span.to});
    return parts;
}

QStringList amounts(const DoneWithin& within) {
    QStringList all;
    for (const auto& limit : limitsFrom(within))
        all += Words::amount(limit.clock, limit.every);
    return all;
}

QString evidenceIn(Evidence evidence) {
    return evidence == Evidence::Signed  ? DirectiveWords::tr("released in a visit")
           : evidence == Evidence::Paper ? DirectiveWords::tr("a paper shows it")
                                         : QString();
}

}

QString DirectiveWords::name(const DirectiveIssued& issued) {
    return tr("%1 rev. %2").arg(inward(issued.directive.text()), inward(issued.revision));
}

QString DirectiveWords::about(const DirectiveLine& line) {
    const auto& issued = line.issued.body;
    const auto life = line.life == DirectiveRow::Life::Superseded ? tr("superseded")
                      : line.life == DirectiveRow::Life::Upcoming ? tr("not effective yet")
                                                                  : QString();
    return joined({inward(issued.issuer), tr("effective %1").arg(inward(issued.effective.iso())),
                   issued.recommended ? tr("recommended") : QString(), life},
                  between());
}

QString DirectiveWords::counts(const DirectiveLine& line) {
    if (line.life == DirectiveRow::Life::Superseded)
        return tr("answered for %1").arg(line.bound());
    if (line.life == DirectiveRow::Life::Upcoming)
        return tr("will bind %1 · unknown %2").arg(line.bound()).arg(line.count(DirectiveShare::Unknown));
    const auto counted = [&](const QString& said, DirectiveShare share) { return said.arg(line.count(share)); };
    return joined({tr("bound %1").arg(line.bound()), counted(tr("answered %1"), DirectiveShare::Answered),
                   counted(tr("overdue %1"), DirectiveShare::Overdue),
                   line.count(DirectiveShare::AtOnce) > 0
                       ? counted(tr("before the next flight %1"), DirectiveShare::AtOnce)
                       : QString(),
                   counted(tr("unknown %1"), DirectiveShare::Unknown)},
                  between());
}

QString DirectiveWords::applies(const AppliesTo& applies) {
    QStringList kinds;
    for (const auto kind : applies.kinds)
        kinds += Words::kinds(kind);
    QStringList lines{joined(QStringList{kinds.join(tr(", "))} + narrowed(applies.types, applies.serials), between())};
    for (const auto& part : applies.fitted) {
        const auto where = part.in
                               ? tr("only where a %1 is fitted in the %2").arg(inward(part.part), Words::kind(*part.in))
                               : tr("only where a %1 is fitted to the balloon").arg(inward(part.part));
        lines += joined(QStringList{where} + narrowed(part.types, part.serials), between());
    }
    return lines.join(u'\n');
}

QString DirectiveWords::rule(const DirectiveIssued& issued) {
    QStringList first;
    if (issued.beforeFlight)
        first += tr("before the next flight");
    if (issued.until)
        first += tr("by %1").arg(inward(issued.until->iso()));
    for (const auto& amount : amounts(issued.first))
        first += tr("within %1 from the effective day").arg(amount);
    QStringList lines;
    lines += first.isEmpty() ? tr("Without a deadline.") : tr("First: %1.").arg(first.join(tr(", or ")));
    const auto again = amounts(issued.repeat);
    lines += again.isEmpty() ? tr("Done once.") : tr("Again: every %1.").arg(again.join(tr(" or ")));
    if (!issued.terminating.empty())
        lines += tr("Ended by: %1.").arg(inward(issued.terminating));
    lines += issued.recommended ? tr("Recommended: it never grounds.")
                                : tr("Mandatory: no tolerance of inspections applies.");
    return lines.join(u'\n');
}

int DirectiveWords::standing(const DirectiveRow& row) {
    if (row.life != DirectiveRow::Life::InForce)
        return -1;
    switch (shareOf(row)) {
    case DirectiveShare::NotBound:
        return -1;
    case DirectiveShare::Unknown:
        return static_cast<int>(Standing::Unproven);
    case DirectiveShare::Overdue:
    case DirectiveShare::AtOnce:
    case DirectiveShare::Open:
    case DirectiveShare::Answered:
        break;
    }
    return static_cast<int>(row.state.standing);
}

int DirectiveWords::standing(const DirectiveLine& line) {
    int worst = -1;
    for (const auto* row : line.rows)
        if (const int each = standing(*row); each >= 0 && (worst < 0 || each < worst))
            worst = each;
    return worst;
}

QString DirectiveWords::word(const DirectiveRow& row) {
    const auto share = shareOf(row);
    if (share == DirectiveShare::NotBound)
        return row.excused ? tr("not applicable") : tr("not bound");
    if (share == DirectiveShare::Unknown)
        return tr("unknown");
    if (row.life == DirectiveRow::Life::Upcoming)
        return tr("will be bound");
    if (row.life == DirectiveRow::Life::Superseded)
        return tr("answered");
    if (share == DirectiveShare::AtOnce)
        return tr("before the next flight");
    const auto& next = row.state.next;
    const auto due = next && next->isProven() ? joined({Words::due(*next), Words::left(*next)}, between()) : QString();
    if (share == DirectiveShare::Overdue)
        return joined({tr("overdue"), due.isEmpty() && row.directive.beforeFlight ? tr("before the next flight") : due},
                      between());
    const auto said = share == DirectiveShare::Answered ? tr("answered") : tr("open");
    return joined({said, due.isEmpty() ? due : tr("next %1").arg(due)}, between());
}

QString DirectiveWords::done(const DirectiveRow& row) {
    if (row.done.empty())
        return {};
    const auto& last = row.done.back();
    const auto& said = last.said.body;
    return joined(
        {tr("done %1: %2").arg(inward(last.said.stamp.at.on().iso()), inward(said.method)),
         last.evidence == Evidence::Stated ? tr("stated by %1").arg(inward(last.said.by)) : inward(last.said.by),
         inward(said.ref), evidenceIn(last.evidence), said.terminating ? tr("which ended it") : QString(),
         said.amoc.empty() ? QString() : tr("by other means: %1").arg(inward(said.amoc))},
        between());
}

}
