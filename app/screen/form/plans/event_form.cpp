// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/plans/event_form.h"

#include "answers/events/told_events.h"
#include "registry/known_events.h"
#include "rules/due/obligations.h"
#include "rules/standing/standing.h"
#include "screen/desk/item_choices.h"
#include "screen/form/fitting_plan.h"
#include "screen/form/form_fields.h"
#include "words/border.h"
#include "words/moment_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <cmath>

namespace crownring::screen {

using namespace words;

namespace {

using Typed = FormField::Kind;

constexpr std::string_view reported = kindName<EventReported>();
constexpr std::string_view notified = kindName<EventNotified>();
constexpr const char* onItem = "-of";

std::vector<FormField> eventFields(const FormSubject& subject, const FleetSheet& sheet) {
    auto about =
        plannedField(subject.item.empty() ? "balloon" : "item",
                     subject.item.empty() ? EventForm::tr("Balloon") : EventForm::tr("Item"), Typed::Choice, true);
    about.choices = subject.item.empty() ? FormPlan::balloons(sheet) : FormPlan::items(sheet, {});
    about.value = inward(subject.item.empty() ? subject.balloon : subject.item);
    const auto* item = subject.item.empty() ? nullptr : sheet.item(ItemId(subject.item));
    auto event = plannedField("event", EventForm::tr("What happened"), Typed::OneOf, true);
    for (const auto& each : knownEvents)
        if (!item || !each.of || each.of == item->kind)
            event.choices.push_back(plainChoice(inward(std::string(each.name)), Words::event(std::string(each.name))));
    if (knownEvent(subject.requirement)) // what is proposed
        event.value = inward(subject.requirement);
    auto of = plannedField(onItem, EventForm::tr("To which of its items"), Typed::OneOf, true);
    auto minutes = plannedField("minutes", EventForm::tr("For how many minutes"), Typed::Count);
    constexpr int longestLikely = 120;
    minutes.likely = longestLikely;
    return {
        std::move(about),
        std::move(event),
        std::move(of),
        plannedField("temp_c", EventForm::tr("Hottest, °C"), Typed::Decimal, false,
                     EventForm::tr("of the fabric, or of a vessel near a fire: the upper edge of the tell-tale's "
                                   "band")),
        std::move(minutes),
        plannedField("on", EventForm::tr("Day"), Typed::Date, true),
        plannedField("time", EventForm::tr("Time (UTC)"), Typed::Time, false, EventForm::tr("HH:MM; may stay empty")),
        plannedField("altitude_m", EventForm::tr("At an altitude of, m"), Typed::Decimal)};
}

std::vector<FormField> notifiedFields() {
    auto to = plannedField("to", EventForm::tr("Reported to"), Typed::OneOf, true);
    to.choices = {plainChoice(inward(std::string(informedName(Informed::Authority))), EventForm::tr("the authority")),
                  plainChoice(inward(std::string(informedName(Informed::Holder))),
                              EventForm::tr("the holder of the type certificate"))};
    to.value = to.choices.front().value;
    return {
        std::move(to), plannedField("on", EventForm::tr("Reported on"), Typed::Date, true),
        plannedField("time", EventForm::tr("Time (UTC)"), Typed::Time, false, EventForm::tr("HH:MM; may stay empty")),
        plannedField("ref", EventForm::tr("Number of the report"), Typed::Text)};
}

/// What the event happens to: the item, or all of the balloon.
std::vector<const ItemFacts*> concerned(const FormFields& fields, const FleetSheet& sheet) {
    const auto* of = fields.field(onItem);
    const auto named = fields.field("item") ? fields.value("item") : of && of->shown ? of->value : QString();
    if (!named.isEmpty()) {
        const auto* item = sheet.item(ItemId(outward(named)));
        return item ? std::vector{item} : std::vector<const ItemFacts*>();
    }
    const auto balloon = outward(fields.value("balloon"));
    return balloon.empty() ? std::vector<const ItemFacts*>() : sheet.itemsOf(Registration(balloon));
}

/// A requirement that the event makes due, with the items on which it does.
struct Raised {
    const Requirement* requirement = nullptr;
    std::vector<const ItemFacts*> items;
};

std::vector<Raised> raisedBy(const std::string& event, const std::vector<const ItemFacts*>& items,
                             const FleetSheet& sheet) {
    std::vector<Raised> raised;
    const Obligations obligations(sheet.adoptions());
    for (const auto* item : items)
        for (const auto& held : obligations.of(item->id, item->balloon).all()) {
            const auto& triggers = held.requirement->triggeredBy;
            if (std::ranges::find(triggers, event) == triggers.end() || !binds(*held.requirement, *item))
                continue;
            const auto known = std::ranges::find_if(
                raised, [&](const Raised& each) { return each.requirement->id == held.requirement->id; });
            if (known == raised.end())
                raised.push_back({held.requirement, {item}});
            else
                known->items.push_back(item);
        }
    return raised;
}

QString saidOf(const Raised& raised) {
    QStringList items;
    for (const auto* item : raised.items)
        items += ItemChoices::name(*item);
    const auto& requirement = *raised.requirement;
    const auto line = requirement.force != Force::Mandatory ? EventForm::tr("Recommended at once: %1, on %2 (%3)")
                      : requirement.blocks == Blocks::Filling
                          ? EventForm::tr("Due at once, before it is filled: %1, on %2 (%3)")
                          : EventForm::tr("Due at once, no flight before it is released: %1, on %2 (%3)");
    return line.arg(words::said(requirement.title), items.join(QStringLiteral(", ")), words::said(requirement.source));
}

}

bool EventForm::known(std::string_view kind) { return kind == reported || kind == notified; }

std::vector<FormField> EventForm::fields(std::string_view kind, const FormSubject& subject, const FleetSheet& sheet) {
    return kind == reported ? eventFields(subject, sheet) : notifiedFields();
}

QString EventForm::title(std::string_view kind) {
    return kind == reported ? tr("Report an event") : tr("It was reported outside");
}

QString EventForm::verb(std::string_view) { return tr("Enter it"); }

void EventForm::showAsked(FormFields& fields, const FleetSheet& sheet) {
    if (!fields.field("event"))
        return;
    const auto event = outward(fields.value("event"));
    const auto* known = knownEvent(event);
    const auto balloon = outward(fields.value("balloon"));
    const bool isOfAnItem = known && known->of && fields.field("balloon") && !balloon.empty();
    if (isOfAnItem) {
        std::vector<Choice> choices;
        for (const auto* item : sheet.itemsOf(Registration(balloon)))
            if (item->kind == *known->of)
                choices.push_back(plainChoice(inward(item->id.text()), ItemChoices::name(*item)));
        if (choices != fields.field(onItem)->choices)
            fields.setChoices(onItem, choices);
        if (choices.size() == 1)
            fields.propose(onItem, choices.front().value);
    }
    if (fields.field(onItem))
        fields.setShown(onItem, isOfAnItem);
    const bool isHot = event == "over-temperature" || event == "fire" || event == "flame-contact" ||
                       event == "coil-run-dry" || !fields.value("temp_c").isEmpty();
    fields.setShown("temp_c", isHot);
    fields.setShown("minutes",
                    isHot || event == "immersion" || event == "packed-wet" || !fields.value("minutes").isEmpty());
    fields.setShown("altitude_m", !fields.value("altitude_m").isEmpty() || event == "over-temperature");
}

QString EventForm::follows(const FormFields& fields, const FleetSheet& sheet) {
    const auto event = outward(fields.value("event"));
    if (event.empty() || (!fields.field("item") && fields.value("balloon").isEmpty()))
        return {};
    QStringList lines;
    for (const auto& each : raisedBy(event, concerned(fields, sheet), sheet))
        lines += saidOf(each);
    if (lines.isEmpty())
        lines += tr("No programme that is adopted for it waits for this: it is kept, and nothing follows. What the "
                    "type's own manual asks, it asks all the same.");
    const auto* known = knownEvent(event);
    const auto* on = fields.field("on");
    const auto day = on ? on->day() : std::nullopt;
    if (known && known->mayBeReported && day) {
        const auto time = FittingPlan::timeOf({}, fields.value("time"));
        const Moment until(Moment(*day, time.value_or(TimeOfDay())).minutes() + std::int64_t{hoursToReport} * 60);
        lines += tr("If it is to be reported to the authority: within %1 hours, by %2 (%3). Nothing is reported by "
                    "writing it here.")
                     .arg(hoursToReport)
                     .arg(momentSaid(until), inward(std::string(reportRule)));
    }
    return lines.join(u'\n');
}

void EventForm::nameItem(nlohmann::json& entry, const FormFields& fields) {
    const auto* of = fields.field(onItem);
    if (!of || !of->shown || of->value.isEmpty() || !entry.contains("balloon"))
        return;
    entry.erase("balloon");
    entry["item"] = outward(of->value);
}

void EventForm::takeFlight(FormFields& fields, const Entry& flight) {
    const auto& flown = std::get<FlightLogged>(flight.body);
    fields.propose("on", inward(flight.on.iso()));
    if (flight.time) {
        const Moment landed(momentOf(flight).minutes() + flown.use.minutes.value());
        if (landed.on() == flight.on) {
            constexpr int minutesOfHour = 60;
            const auto minute = static_cast<int>(landed.minutes() - Moment::startOf(flight.on).minutes());
            fields.propose("time",
                           inward(TimeOfDay(minute / minutesOfHour, minute % minutesOfHour).iso().substr(0, 5)));
        }
    }
    if (flown.track && flown.track->highest)
        fields.propose("altitude_m", QString::number(std::round(flown.track->highest->value())));
    if (flown.hottest)
        fields.propose("temp_c", QString::number(flown.hottest->value()));
}

}
