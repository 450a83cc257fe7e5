// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/plans/ahead_form.h"

#include "answers/forecast/weekend.h"
#include "registry/likely_flight.h"
#include "rules/due/headline.h"
#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Typed = FormField::Kind;

constexpr auto plannedFlight = kindName<FlightPlanned>();
constexpr auto plannedVisit = kindName<VisitPlanned>();
constexpr char workSeparator = '\t'; ///< item and requirement: no name holds it

FormField balloonAheadField(const FormSubject& subject, const FleetSheet& sheet) {
    auto made = plannedField("balloon", AheadForm::tr("Balloon"), Typed::Choice, true);
    made.choices = FormPlan::balloons(sheet);
    made.value = inward(subject.balloon);
    return made;
}

FormField worksAheadField(const FormSubject& subject, const FleetSheet& sheet) {
    auto made = plannedField("covers", AheadForm::tr("What it should cover"), Typed::Several, false,
                             AheadForm::tr("what comes first stands first"));
    made.choices = AheadForm::works(sheet, subject.balloon);
    return made;
}

}

bool AheadForm::known(std::string_view kind) {
    return kind == kindName<UsePlanned>() || kind == plannedFlight || kind == plannedVisit;
}

std::vector<FormField> AheadForm::fields(std::string_view kind, const FormSubject& subject, const FleetSheet& sheet) {
    std::vector<FormField> fields{balloonAheadField(subject, sheet)};
    if (kind == plannedFlight) {
        auto minutes =
            plannedField("minutes", tr("Planned time, hours"), Typed::Duration, true, tr("1:05, 1.1, 1h05 or 65 min"));
        minutes.likely = longestLikelyFlight.value();
        fields.push_back(std::move(minutes));
        fields.push_back(plannedField("on", tr("Day"), Typed::Date, true));
    } else if (kind == plannedVisit) {
        fields.push_back(plannedField("station", tr("Station"), Typed::Text, true));
        fields.push_back(plannedField("from", tr("First day"), Typed::Date, true));
        fields.push_back(plannedField("to", tr("Last day"), Typed::Date, true));
        fields.push_back(worksAheadField(subject, sheet));
    } else {
        fields.push_back(plannedField("from", tr("First day"), Typed::Date, true));
        fields.push_back(plannedField("to", tr("Last day"), Typed::Date, false,
                                      tr("left empty: until further notice, as of a sale")));
        fields.push_back(plannedField("times", tr("So many times the usual pace"), Typed::Decimal, false,
                                      tr("0 for a pause; 2 for twice as much")));
        fields.push_back(plannedField("flights_a_week", tr("Or so many flights a week"), Typed::Decimal));
    }
    return fields;
}

QString AheadForm::title(std::string_view kind) {
    return kind == plannedFlight  ? tr("Plan a flight")
           : kind == plannedVisit ? tr("Plan a visit")
                                  : tr("Plan how it is flown");
}

QString AheadForm::verb(std::string_view) { return tr("Plan it"); }

void AheadForm::propose(std::string_view kind, std::vector<FormField>& fields, CivilDate day) {
    if (kind != plannedFlight)
        return;
    for (auto& field : fields)
        if (field.key == "on") {
            field.notAfter.reset();
            field.value = inward(weekendFrom(day).front().iso());
        }
}

std::vector<Choice> AheadForm::works(const FleetSheet& sheet, const std::string& balloon) {
    std::vector<Choice> choices;
    if (balloon.empty())
        return choices;
    auto rows = sheet.rowsOf(Registration(balloon));
    std::erase_if(rows, [](const DueRow* row) {
        return row->state.standing == Standing::Closed || !isRequired(row->state) || isOfTheRecord(*row);
    });
    std::stable_partition(rows.begin(), rows.end(), [](const DueRow* row) { return isBinding(*row); });
    for (const auto* row : rows)
        choices.push_back({inward(row->item->id.text() + workSeparator + row->requirement->id.text()),
                           tr("%1, %2").arg(said(row->requirement->title), inward(row->item->id.text())),
                           DueTexts::left(*row), -1, static_cast<int>(reckonedAs(row->state)), false});
    return choices;
}

nlohmann::json AheadForm::entry(std::string_view kind, nlohmann::json gathered) {
    const auto covers = gathered.find("covers");
    if (kind != plannedVisit || covers == gathered.end())
        return gathered;
    auto works = nlohmann::json::array();
    for (const auto& each : *covers) {
        const auto said = each.get<std::string>();
        const auto at = said.find(workSeparator);
        works.push_back({{"item", said.substr(0, at)}, {"requirement", said.substr(at + 1)}});
    }
    *covers = std::move(works);
    if (covers->empty())
        gathered.erase(covers);
    return gathered;
}

nlohmann::json AheadForm::asAsked(const std::string& key, const nlohmann::json& value) {
    if (key != "covers" || !value.is_array())
        return value;
    auto choices = nlohmann::json::array();
    for (const auto& work : value)
        choices.push_back(work.at("item").get<std::string>() + workSeparator +
                          work.at("requirement").get<std::string>());
    return choices;
}

}
