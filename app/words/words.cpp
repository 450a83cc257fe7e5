// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/words.h"

#include "measure/duration_text.h"
#include "rules/due/defects.h"
#include "words/border.h"
#include "words/problem_words.h"
#include "words/terms.h"

#include <QStringList>

#include <algorithm>

namespace crownring::words {

QString Words::standing(Reckoned reckoned) {
    switch (reckoned) {
    case Reckoned::Spent:
        return tr("spent");
    case Reckoned::Lapsed:
        return tr("lapsed");
    case Reckoned::Unproven:
        return tr("unproven");
    case Reckoned::Tolerance:
        return tr("in tolerance");
    case Reckoned::Nearing:
        return tr("nearing");
    case Reckoned::Clear:
        return tr("clear");
    case Reckoned::Closed:
        return tr("closed");
    case Reckoned::Deferred:
        return tr("deferred");
    case Reckoned::NotRequired:
        return tr("not required");
    }
    return {};
}

QString Words::standing(const Assessment& state) { return standing(reckonedAs(state)); }

QString Words::kind(ItemKind kind) {
    switch (kind) {
    case ItemKind::Envelope:
        return tr("envelope");
    case ItemKind::Basket:
        return tr("basket");
    case ItemKind::Burner:
        return tr("burner");
    case ItemKind::Cylinder:
        return tr("cylinder");
    case ItemKind::Hose:
        return tr("hose");
    case ItemKind::Instrument:
        return tr("instrument");
    case ItemKind::Other:
        return tr("other item");
    }
    return {};
}

QString Words::kinds(ItemKind kind) {
    switch (kind) {
    case ItemKind::Envelope:
        return tr("envelopes");
    case ItemKind::Basket:
        return tr("baskets");
    case ItemKind::Burner:
        return tr("burners");
    case ItemKind::Cylinder:
        return tr("cylinders");
    case ItemKind::Hose:
        return tr("hoses");
    case ItemKind::Instrument:
        return tr("instruments");
    case ItemKind::Other:
        return tr("other items");
    }
    return {};
}

QString Words::action(Action action) {
    switch (action) {
    case Action::Inspect:
        return tr("inspect");
    case Action::Test:
        return tr("test");
    case Action::Service:
        return tr("service");
    case Action::Replace:
        return tr("replace");
    case Action::Retire:
        return tr("retire");
    case Action::Comply:
        return tr("comply");
    }
    return {};
}

QString Words::clock(ClockName clock) {
    switch (clock) {
    case ClockName::Minutes:
        return tr("time in service");
    case ClockName::Landings:
        return tr("landings");
    case ClockName::Inflations:
        return tr("inflations");
    case ClockName::Months:
    case ClockName::Days:
        return tr("calendar");
    case ClockName::Inspections:
        return tr("inspections");
    }
    return {};
}

QString Words::event(const std::string& event) { return term({Term::Of::Event, event}); }

QString Words::operation(const std::string& operation) {
    if (operation == "for-hire")
        return tr("for hire");
    if (operation == "instruction")
        return tr("instruction");
    return inward(operation);
}

QString Words::service(ServiceState state) {
    switch (state) {
    case ServiceState::InService:
        return tr("in service");
    case ServiceState::LaidUp:
        return tr("laid up");
    case ServiceState::Sold:
        return tr("sold");
    case ServiceState::Scrapped:
        return tr("scrapped");
    case ServiceState::Lost:
        return tr("lost");
    case ServiceState::Away:
        return tr("away for a test or work");
    case ServiceState::Unserviceable:
        return tr("unserviceable");
    case ServiceState::Quarantined:
        return tr("quarantined");
    case ServiceState::Condemned:
        return tr("condemned for good");
    }
    return {};
}

QString Words::releaseForm(ReleaseForm form) {
    switch (form) {
    case ReleaseForm::EasaForm1:
        return tr("EASA Form 1");
    case ReleaseForm::Faa81303:
        return tr("FAA Form 8130-3");
    case ReleaseForm::OwnerAccepted:
        return tr("acceptance of the owner");
    case ReleaseForm::Declaration:
        return tr("declaration of the maker");
    case ReleaseForm::Inspection:
        return tr("visit");
    }
    return {};
}

QString Words::vesselMaterial(VesselMaterial material) {
    switch (material) {
    case VesselMaterial::Aluminium:
        return tr("aluminium");
    case VesselMaterial::Steel:
        return tr("steel");
    case VesselMaterial::Stainless:
        return tr("stainless steel");
    case VesselMaterial::Titanium:
        return tr("titanium");
    case VesselMaterial::Composite:
        return tr("composite");
    }
    return {};
}

QString Words::days(std::int64_t days) { return days == 1 ? tr("1 day") : tr("%1 days").arg(days); }
QString Words::months(std::int64_t months) { return months == 1 ? tr("1 month") : tr("%1 months").arg(months); }
QString Words::hours(std::int64_t minutes) { return tr("%1\u00a0h").arg(inward(hoursAndMinutes(Minutes{minutes}))); }
QString Words::landings(std::int64_t n) { return n == 1 ? tr("1 landing") : tr("%1 landings").arg(n); }
QString Words::inflations(std::int64_t n) { return n == 1 ? tr("1 inflation") : tr("%1 inflations").arg(n); }

QString Words::amount(ClockName clock, std::int64_t amount) {
    switch (clock) {
    case ClockName::Minutes:
        return hours(amount);
    case ClockName::Landings:
        return landings(amount);
    case ClockName::Inflations:
        return inflations(amount);
    case ClockName::Months:
        return months(amount);
    case ClockName::Days:
        return days(amount);
    case ClockName::Inspections:
        return amount == 1 ? tr("1 inspection") : tr("%1 inspections").arg(amount);
    }
    return {};
}

QString Words::left(const LimitState& limit) {
    if (const auto* reach = limit.calendar())
        return left(ClockName::Days, reach->left.value(), tr("last day"));
    const auto* reach = limit.usage();
    return reach ? left(limit.clock, reach->left.value(), tr("nothing left")) : QString();
}

QString Words::left(ClockName unit, std::int64_t left, const QString& none) {
    if (left < 0)
        return tr("%1 past").arg(amount(unit, -left));
    if (unit == ClockName::Inspections && left == 1)
        return tr("with the next inspection");
    return left == 0 ? none : amount(unit, left);
}

QString Words::toleranceLeft(const LimitState& limit) {
    if (const auto* reach = limit.calendar())
        return days(reach->toleranceLeft.value());
    const auto* reach = limit.usage();
    return reach ? amount(limit.clock, reach->toleranceLeft.value()) : QString();
}

QString Words::last(const LimitState& limit) {
    if (const auto* reach = limit.calendar())
        return inward(reach->last.iso());
    const auto* reach = limit.usage();
    return reach ? amount(limit.clock, reach->last.value()) : QString();
}

QString Words::due(const LimitState& limit) {
    if (const auto* reach = limit.calendar())
        return inward(reach->due.iso());
    const auto* reach = limit.usage();
    return reach ? amount(limit.clock, reach->due.value()) : QString();
}

QString Words::figures(const Figures& figures) {
    const auto unknown = tr("unknown %1");
    return QStringList{
        figures.minutes ? hours(figures.minutes->value()) : unknown.arg(tr("hours")),
        figures.landings ? landings(figures.landings->value()) : unknown.arg(tr("landings")),
        figures.inflations ? inflations(figures.inflations->value()) : unknown.arg(tr("inflations")),
    }
        .join(QStringLiteral(" · "));
}

QString Words::serials(const SerialRange& range) {
    const auto from = inward(range.from.value_or(std::string()));
    const auto to = inward(range.to.value_or(std::string()));
    if (to.isEmpty())
        return tr("serial numbers from %1").arg(from);
    return from.isEmpty() ? tr("serial numbers up to %1").arg(to) : tr("serial numbers %1 to %2").arg(from, to);
}

QString Words::because(const DueRow& row) {
    const auto defect = row.state.because == Because::Defect ? defectOf(row.requirement->id) : std::nullopt;
    if (defect)
        for (const auto& open : openDefects(*row.item))
            if (open.found->defect == *defect && isGrounding(*open.found))
                return tr("An open defect that grounds: it is rectified before the next flight. Nobody "
                          "defers it.");
    return because(row.state);
}

QString Words::because(const Assessment& state) {
    switch (state.because) {
    case Because::Limits:
        if (state.standing == Standing::Unproven && std::ranges::any_of(state.limits, &LimitState::isProven))
            return tr("What its clock showed when it was last done is not recorded: correct that entry to state it.");
        return state.standing == Standing::Unproven ? tr("The record holds nothing that its clock can start from.")
                                                    : QString();
    case Because::NotRequired:
        return tr("The balloon's operations do not call for it.");
    case Because::Exempt:
        return tr("Not compulsory yet: the item is under the ages and hours that the source names.");
    case Because::Triggered:
        return state.trigger ? tr("Made due by an event: %1 on %2.")
                                   .arg(event(state.trigger->event), inward(state.trigger->stamp.at.on().iso()))
                             : tr("Made due by an event.");
    case Because::TypeMissing:
        return tr("It binds certain types, and this item's type is not in the record.");
    case Because::SerialMissing:
        return tr("It binds certain serial numbers, and this item's is not in the record.");
    case Because::Done:
        return tr("Done; it is required once.");
    case Because::Ended:
        return tr("Ended by its terminating action.");
    case Because::RowFull:
        return tr("It was done too often in a row; the fuller act is required first.");
    case Because::Defect:
        return tr("An open defect: it is rectified or, where the rules let it wait, deferred by who may.");
    case Because::Deferred:
        return tr("A deferred defect: it is to be rectified before its limit.");
    case Because::DeferredElsewhere:
        return tr(
            "A deferred defect: who agreed to that may not for what the balloon is flown for. It is rectified, or "
            "deferred by who may.");
    case Because::Directive:
        return state.standing == Standing::Unproven
                   ? tr("A directive that binds it: the record holds nothing that its limit can start from.")
               : state.standing == Standing::Closed
                   ? tr("A directive that was complied with; nothing of it is left to do.")
                   : tr("A directive that binds it. No tolerance applies, and nothing puts it off but an alternative "
                        "that its issuer approved.");
    case Because::DirectiveUnknown:
        return tr("Nobody can say whether this directive binds it: what it depends on is not in the record.");
    case Because::Incomplete:
        return tr("Its maintenance was released incomplete: it flies within the limitation of that release alone, "
                  "until what is outstanding is done and the closing release is signed.");
    case Because::Listed:
        return tr(
            "An inspection was closed with a list of discrepancies: each item on it is rectified, and then a rated "
            "person approves the return to service.");
    case Because::Fabric:
        switch (state.standing) {
        case Standing::Spent:
            return tr("A reading was beyond the bound, and the manual of its type retires the envelope for that.");
        case Standing::Lapsed:
            return tr("A panel was beyond the bound when it was read last: it is to be replaced, as the manual says.");
        case Standing::Unproven:
            return tr("All that was read is inconclusive: test it as the manual says.");
        case Standing::Nearing:
            return tr("A reading was close to the bound.");
        default:
            return {};
        }
    }
    return {};
}

QString Words::problem(const Problem& problem) {
    QStringList where;
    if (!problem.where.file.empty())
        where += inward(problem.where.file);
    if (problem.where.line > 0)
        where += tr("line %1").arg(problem.where.line);
    if (!problem.where.key.empty())
        where += inward(problem.where.key);
    QString text = words::message(problem);
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    if (!where.isEmpty())
        text = tr("%1: %2").arg(where.join(QStringLiteral(", ")), text);
    if (QString mend = words::mend(problem); !mend.isEmpty()) {
        mend[0] = mend[0].toUpper();
        text = tr("%1. %2").arg(text, mend);
    }
    if (!text.endsWith(u'.'))
        text += u'.';
    return text;
}

QString Words::problems(const std::vector<Problem>& problems) {
    constexpr std::size_t shown = 5;
    QStringList lines;
    for (std::size_t at = 0; at < std::min(problems.size(), shown); ++at)
        lines += problem(problems[at]);
    if (problems.size() > shown)
        lines += tr("… and %1 more.").arg(problems.size() - shown);
    return lines.join(u'\n');
}

std::optional<CivilDate> calendarDue(const Assessment& state) {
    std::optional<CivilDate> earliest;
    for (const auto& limit : state.limits)
        if (const auto* reach = limit.calendar())
            earliest = earliest ? std::min(*earliest, reach->due) : reach->due;
    return earliest;
}

}
