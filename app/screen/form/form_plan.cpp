// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/form_plan.h"

#include "registry/likely_flight.h"
#include "rules/due/defects.h"
#include "rules/programme/programme.h"
#include "screen/desk/item_choices.h"
#include "screen/form/bench_form_plan.h"
#include "screen/form/plans/ahead_form.h"
#include "screen/form/plans/component_form.h"
#include "screen/form/plans/directive_form.h"
#include "screen/form/plans/event_form.h"
#include "screen/form/plans/reading_form.h"
#include "screen/form/service_form.h"
#include "screen/form/whole_balloon.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

using Kind = FormField::Kind;
using Fields = std::vector<FormField>;

FormField field(std::string key, const QString& label, Kind kind, bool required = false, const QString& hint = {}) {
    return plannedField(std::move(key), label, kind, required, hint);
}

FormField choice(std::string key, const QString& label, std::vector<Choice> choices, const std::string& value,
                 bool required = true) {
    auto made = field(std::move(key), label, Kind::Choice, required);
    made.choices = std::move(choices);
    made.value = inward(value);
    return made;
}

FormField several(std::string key, const QString& label, std::vector<Choice> choices, const QString& value,
                  const QString& hint) {
    auto made = field(std::move(key), label, Kind::Several, false, hint);
    made.choices = std::move(choices);
    made.value = value;
    return made;
}

Choice plain(const QString& value, const QString& label) { return plainChoice(value, label); }

Fields clockFields(const std::string& under, const QString& hint, bool unknownAllowed) {
    constexpr std::int64_t likelyHours = 5000;
    constexpr std::int64_t likelyTimes = 10'000;
    Fields fields{field(under + ".minutes", FormPlan::tr("Hours"), Kind::Duration, false, hint),
                  field(under + ".landings", FormPlan::tr("Landings"), Kind::Count),
                  field(under + ".inflations", FormPlan::tr("Inflations"), Kind::Count)};
    for (auto& each : fields) {
        each.unknownAllowed = unknownAllowed;
        each.likely = each.kind == Kind::Duration ? 60 * likelyHours : likelyTimes;
    }
    return fields;
}

void add(Fields& fields, Fields more) { fields.insert(fields.end(), more.begin(), more.end()); }

Fields flightFields(const FormSubject& subject, const FleetSheet& sheet) {
    auto minutes = field("minutes", FormPlan::tr("Time in service, hours"), Kind::Duration, true,
                         FormPlan::tr("1:05, 1.1, 1h05 or 65 min"));
    minutes.likely = longestLikelyFlight.value();
    auto landings = field("landings", FormPlan::tr("Landings"), Kind::Count);
    auto inflations = field("inflations", FormPlan::tr("Inflations"), Kind::Count);
    landings.value = inflations.value = QStringLiteral("1");
    landings.likely = inflations.likely = mostLikelyOfOneFlight;
    constexpr std::int64_t mostKilograms = 250, mostLitres = 500,
                           mostLoad = 2500; // of a large balloon, common practice
    const auto fuel = [](const char* key, const QString& label, std::int64_t likely, const QString& hint = {}) {
        auto made = field(key, label, Kind::Decimal, false, hint);
        made.likely = likely;
        return made;
    };
    return {choice("balloon", FormPlan::tr("Balloon"), FormPlan::balloons(sheet), subject.balloon),
            minutes,
            field("on", FormPlan::tr("Day"), Kind::Date, true),
            field("kit", FormPlan::tr("What flew"), Kind::Kit, false,
                  FormPlan::tr("Tap what did not fly, and say what flew instead.")),
            landings,
            inflations,
            field("time", FormPlan::tr("Time (UTC)"), Kind::Time, false, FormPlan::tr("HH:MM; may stay empty")),
            field("max_temp_c", FormPlan::tr("Highest envelope temperature, °C"), Kind::Decimal),
            field("tethered", FormPlan::tr("Tethered"), Kind::Check),
            fuel("fuel_kg", FormPlan::tr("Fuel burnt, kg"), mostKilograms,
                 FormPlan::tr("with temperature and load it shows whether the balloon burns more than it did")),
            fuel("fuel_l", FormPlan::tr("or in litres"), mostLitres),
            field("oat_c", FormPlan::tr("Temperature outside, °C"), Kind::Decimal),
            fuel("load_kg", FormPlan::tr("People and what they took along, kg"), mostLoad)};
}

Fields itemFields(const FormSubject& subject, const FleetSheet&) {
    std::vector<Choice> kinds;
    for (int at = 0; at < itemKindCount; ++at)
        kinds.push_back(plain(inward(itemKindName(static_cast<ItemKind>(at))), Words::kind(static_cast<ItemKind>(at))));
    Fields fields{field("item", FormPlan::tr("Name of the item"), Kind::Text, true,
                        FormPlan::tr("As you call it: ENV-101. It stays for good.")),
                  choice("kind", FormPlan::tr("Kind"), kinds, {}),
                  field("serial", FormPlan::tr("Serial number"), Kind::Text),
                  field("type", FormPlan::tr("Type"), Kind::Text),
                  field("made", FormPlan::tr("Made"), Kind::Made, false, FormPlan::tr("a day, or YYYY-MM as stamped")),
                  field("-fresh", FormPlan::tr("New: it has never been used"), Kind::Check)};
    add(fields,
        clockFields("brought_forward",
                    FormPlan::tr("What its clock showed at the start of that day. What is left empty is unknown, and "
                                 "limits on it stay unproven."),
                    true));
    fields.front().value = inward(subject.item);
    return fields;
}

/// The same of several items at once; what can be chosen follows from the others.
FormField alsoField(const QString& label) {
    auto also = several("-also", label, {}, {}, {});
    also.shown = false;
    return also;
}

Fields doneFields(const FormSubject& subject, const FleetSheet& sheet) {
    Fields fields{choice("item", FormPlan::tr("Item"), FormPlan::items(sheet, subject.balloon), subject.item),
                  choice("requirement", FormPlan::tr("Requirement"), FormPlan::requirements(sheet, subject.item),
                         subject.requirement),
                  alsoField(FormPlan::tr("Done on these too")),
                  choice("method", FormPlan::tr("Method"), FormPlan::methods(sheet, subject.requirement), {}, false),
                  field("ref", FormPlan::tr("Reference on the paper"), Kind::Text),
                  field("signatory", FormPlan::tr("Signed on it by"), Kind::Text),
                  field("licence", FormPlan::tr("Under the licence"), Kind::Text, false,
                        FormPlan::tr("without paper, signature and licence it is only stated"))};
    add(fields,
        clockFields("clock", FormPlan::tr("Only where the paper states the clock; else it is computed."), false));
    return fields;
}

Fields adoptFields(const FormSubject& subject, const FleetSheet& sheet) {
    std::vector<Choice> programmes;
    for (const auto& text : shelf())
        if (const auto programme = programmeFrom(text))
            programmes.push_back(plain(inward(programme->id.text()), words::said(programme->title)));
    auto everything = field("everything", FormPlan::tr("Everything, the pool too"), Kind::Check);
    return {choice("programme", FormPlan::tr("Programme"), programmes, subject.programme),
            field("on", FormPlan::tr("Binds from"), Kind::Date, true,
                  FormPlan::tr("the day of its adoption, or the one that it states; a day to come is allowed")),
            everything,
            several("balloons", FormPlan::tr("Balloons"), FormPlan::balloons(sheet), inward(subject.balloon),
                    FormPlan::tr("Whatever is fitted to them, on any later day.")),
            several("items", FormPlan::tr("Items"), FormPlan::itemsNotOn(sheet, "*"), inward(subject.item),
                    FormPlan::tr("Items of the pool, bound one by one. Choose either balloons or items."))};
}

Fields balloonFields(const FormSubject&, const FleetSheet&) {
    return {field("balloon", FormPlan::tr("Registration"), Kind::Text, true),
            field("title", FormPlan::tr("Name or type"), Kind::Text),
            several("operations", FormPlan::tr("Operations"),
                    {plain(QStringLiteral("for-hire"), Words::operation("for-hire")),
                     plain(QStringLiteral("instruction"), Words::operation("instruction"))},
                    {}, FormPlan::tr("Some requirements bind the operation, not the balloon."))};
}

Fields ownerFields(const FormSubject& subject, const FleetSheet& sheet) {
    return {choice("balloon", FormPlan::tr("Balloon"), FormPlan::balloons(sheet), subject.balloon),
            field("owner", FormPlan::tr("Owner"), Kind::Text, true,
                  FormPlan::tr("name and address, as on the certificate of registration")),
            field("operator", FormPlan::tr("Operated by"), Kind::Text, false, FormPlan::tr("where that is another"))};
}

/// A fitting among the flights of its day: without it nobody knows which of them it was for.
FormField whenField() {
    auto when = choice("-when", FormPlan::tr("When on that day"),
                       {plain(QStringLiteral("before"), FormPlan::tr("before the day's flights")),
                        plain(QStringLiteral("after"), FormPlan::tr("after the day's flights")),
                        plain(QStringLiteral("at"), FormPlan::tr("at a time"))},
                       {});
    when.kind = Kind::OneOf;
    return when;
}

FormField timeField() {
    auto time = field("time", FormPlan::tr("Time (UTC)"), Kind::Time, true, FormPlan::tr("HH:MM"));
    time.shown = false;
    return time;
}

Fields fittingFields(const FormSubject& subject, const FleetSheet& sheet) {
    return {choice("balloon", FormPlan::tr("Balloon"), FormPlan::balloons(sheet), subject.balloon),
            choice("item", FormPlan::tr("Item"), FormPlan::itemsNotOn(sheet, subject.balloon), subject.item),
            field("place", FormPlan::tr("Place on the balloon"), Kind::Text, false,
                  FormPlan::tr("cylinder 1, left burner … may stay empty")),
            alsoField(FormPlan::tr("These too")),
            field("on", FormPlan::tr("Day"), Kind::Date, true),
            whenField(),
            timeField()};
}

Fields removalFields(const FormSubject& subject, const FleetSheet& sheet) {
    return {choice("balloon", FormPlan::tr("Balloon"), FormPlan::balloons(sheet), subject.balloon),
            choice("item", FormPlan::tr("Item"), FormPlan::items(sheet, subject.balloon), subject.item),
            field("on", FormPlan::tr("Day"), Kind::Date, true), whenField(), timeField()};
}

Fields voidFields(const FormSubject&, const FleetSheet&) {
    return {field("reason", FormPlan::tr("Why"), Kind::Text, true)};
}

Fields wholeFields(const FormSubject&, const FleetSheet& sheet) { return WholeBalloon::fields(sheet); }

struct Plan {
    Fields (*fields)(const FormSubject&, const FleetSheet&);
    const char* title;
    const char* verb;
};

const std::map<std::string_view, Plan>& plans() {
    static const char* enter = QT_TRANSLATE_NOOP("FormPlan", "Enter it");
    static const std::map<std::string_view, Plan> plans = {
        {kindName<FlightLogged>(),
         {flightFields, QT_TRANSLATE_NOOP("FormPlan", "Log a flight"),
          QT_TRANSLATE_NOOP("FormPlan", "Log the flight")}},
        {WholeBalloon::name,
         {wholeFields, QT_TRANSLATE_NOOP("FormPlan", "A balloon and all of it"),
          QT_TRANSLATE_NOOP("FormPlan", "Enter all of it")}},
        {kindName<BalloonEntered>(), {balloonFields, QT_TRANSLATE_NOOP("FormPlan", "Enter a balloon"), enter}},
        {kindName<BalloonOwned>(), {ownerFields, QT_TRANSLATE_NOOP("FormPlan", "Owner and operator"), enter}},
        {kindName<ItemEntered>(), {itemFields, QT_TRANSLATE_NOOP("FormPlan", "Enter an item"), enter}},
        {kindName<ItemFitted>(),
         {fittingFields, QT_TRANSLATE_NOOP("FormPlan", "Fit an item"), QT_TRANSLATE_NOOP("FormPlan", "Fit it")}},
        {kindName<ItemRemoved>(),
         {removalFields, QT_TRANSLATE_NOOP("FormPlan", "Remove an item"), QT_TRANSLATE_NOOP("FormPlan", "Remove it")}},
        {kindName<RequirementDone>(), {doneFields, QT_TRANSLATE_NOOP("FormPlan", "Requirement done"), enter}},
        {kindName<ProgrammeAdopted>(),
         {adoptFields, QT_TRANSLATE_NOOP("FormPlan", "Adopt a programme"), QT_TRANSLATE_NOOP("FormPlan", "Adopt it")}},
        {kindName<ReadingTaken>(), {ReadingForm::fields, QT_TRANSLATE_NOOP("FormPlan", "Enter a reading"), enter}},
        {kindName<EntryVoided>(),
         {voidFields, QT_TRANSLATE_NOOP("FormPlan", "Void an entry"), QT_TRANSLATE_NOOP("FormPlan", "Void it")}},
    };
    return plans;
}

const Plan* planOf(std::string_view kind) {
    const auto plan = plans().find(kind);
    return plan == plans().end() ? nullptr : &plan->second;
}

}

std::vector<FormField> FormPlan::fields(std::string_view kind, const FormSubject& subject, const FleetSheet& sheet) {
    const auto* plan = planOf(kind);
    auto fields = plan                         ? plan->fields(subject, sheet)
                  : ServiceForm::known(kind)   ? ServiceForm::fields(kind, subject, sheet)
                  : DirectiveForm::known(kind) ? DirectiveForm::fields(kind, subject, sheet)
                  : ComponentForm::known(kind) ? ComponentForm::fields(kind, subject, sheet)
                  : AheadForm::known(kind)     ? AheadForm::fields(kind, subject, sheet)
                  : EventForm::known(kind)     ? EventForm::fields(kind, subject, sheet)
                                               : BenchFormPlan::fields(kind, subject, sheet);
    if (std::ranges::find(fields, "on", &FormField::key) == fields.end())
        fields.insert(fields.begin(), field("on", tr("Day"), Kind::Date, true));
    fields.push_back(field("by", tr("Written by"), Kind::Text, true, tr("you, who write this now")));
    if (!ComponentForm::isAct(kind)) // each of its entries says what it is
        fields.push_back(field("note", tr("Note"), Kind::Lines));
    return fields;
}

bool FormPlan::known(std::string_view kind) {
    return planOf(kind) || AheadForm::known(kind) || ServiceForm::known(kind) || DirectiveForm::known(kind) ||
           ComponentForm::known(kind) || EventForm::known(kind) || BenchFormPlan::known(kind);
}

QString FormPlan::title(std::string_view kind) {
    const auto* plan = planOf(kind);
    if (ServiceForm::known(kind))
        return ServiceForm::title(kind);
    if (DirectiveForm::known(kind))
        return DirectiveForm::title(kind);
    if (ComponentForm::known(kind))
        return ComponentForm::title(kind);
    if (AheadForm::known(kind))
        return AheadForm::title(kind);
    if (EventForm::known(kind))
        return EventForm::title(kind);
    return plan ? tr(plan->title) : BenchFormPlan::title(kind);
}

QString FormPlan::verb(std::string_view kind) {
    if (kind == kindName<ReviewSigned>())
        return tr("I sign this");
    if (ComponentForm::known(kind))
        return ComponentForm::verb(kind);
    if (AheadForm::known(kind))
        return AheadForm::verb(kind);
    if (EventForm::known(kind))
        return EventForm::verb(kind);
    const auto* plan = planOf(kind);
    return plan ? tr(plan->verb) : tr("Enter it");
}

}
