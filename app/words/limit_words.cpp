// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/border.h"
#include "words/words.h"

#include <QStringList>

namespace crownring::words {

namespace {

QString withInspections(const Limit& limit) {
    QStringList names;
    for (const auto& each : limit.with)
        names += inward(each.text());
    const auto which = names.join(Words::tr(" or "));
    if (limit.every == 1)
        return Words::tr("with every %1").arg(which);
    return limit.every == 2 ? Words::tr("with every second %1").arg(which)
                            : Words::tr("with one in %1 of %2").arg(limit.every).arg(which);
}

}

QString Words::limit(const Limit& limit) {
    if (!limit.with.empty())
        return withInspections(limit);
    QString text = tr("every %1").arg(amount(limit.clock, limit.every));
    if (limit.clock == ClockName::Months && limit.day == DayRule::MonthEnd)
        text = tr("%1, to the end of the month").arg(text);
    if (limit.first)
        text = tr("%1 (first at %2)").arg(text, amount(limit.clock, *limit.first));
    if (limit.tolerance > 0)
        text = tr("%1, tolerance %2").arg(text, amount(limit.clock, limit.tolerance));
    return text;
}

namespace {

/// Of what is required once only the first interval counts, from where the source starts it.
QString onceWithin(const Limit& limit) {
    const auto within = Words::amount(limit.clock, limit.first.value_or(limit.every));
    return limit.tolerance > 0 ? Words::tr("%1, tolerance %2").arg(within, Words::amount(limit.clock, limit.tolerance))
                               : within;
}

QString onceText(const Requirement& requirement, const QString& within) {
    if (within.isEmpty())
        return Words::tr("once");
    switch (requirement.startsFrom) {
    case StartsFrom::Made:
        return Words::tr("once, within %1 of the day on which it was made").arg(within);
    case StartsFrom::Entered:
        return Words::tr("once, within %1 of the day on which it was entered").arg(within);
    case StartsFrom::Done:
        return Words::tr("once, unproven until it is done");
    }
    return {};
}

}

QString Words::limits(const Requirement& requirement) {
    QStringList parts;
    for (const auto& each : requirement.limits)
        parts += requirement.once ? onceWithin(each) : limit(each);
    QString text = parts.join(requirement.whichever == Whichever::First ? tr(" or ") : tr(" and "));
    if (requirement.once)
        text = onceText(requirement, text);
    if (parts.size() > 1 && !(requirement.once && requirement.startsFrom == StartsFrom::Done))
        text = requirement.whichever == Whichever::First ? tr("%1, whichever comes first").arg(text)
                                                         : tr("%1, whichever comes last").arg(text);
    QStringList events;
    for (const auto& each : requirement.triggeredBy)
        events += event(each);
    if (!events.isEmpty()) {
        const auto after = tr("after %1").arg(events.join(tr(", ")));
        text = text.isEmpty() ? after : tr("%1; also %2").arg(text, after);
    }
    return text;
}

}
