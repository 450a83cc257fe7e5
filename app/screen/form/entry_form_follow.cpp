// SPDX-License-Identifier: GPL-3.0-or-later

/// What the other fields of a form say when one of them is changed.

#include "answers/kit_at.h"
#include "record/new_id.h"
#include "screen/desk/house.h"
#include "screen/form/asked_back.h"
#include "screen/form/consequences.h"
#include "screen/form/entry_form.h"
#include "screen/form/plans/ahead_form.h"
#include "screen/form/plans/component_form.h"
#include "screen/form/plans/event_form.h"
#include "screen/form/plans/reading_form.h"
#include "screen/form/service_form.h"
#include "words/border.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

struct FittedThen {
    std::vector<ItemId> fitted;
    bool mayStay = false; ///< it is what is fitted today, and nothing was flown since
};

Result<FittedThen> fittedThen(Books& books, const Registration& balloon, const Stamp& at, CivilDate today) {
    auto fitted = kitAt(books, balloon, at);
    if (!fitted)
        return tl::unexpected(fitted.error());
    const auto now = books.facts({balloon, {}}, today);
    if (!now)
        return tl::unexpected(now.error());
    const auto flights = books.flights(balloon, at.at.on(), today);
    if (!flights)
        return tl::unexpected(flights.error());
    const bool flownSince =
        std::ranges::any_of(*flights, [&](const LoggedFlight& flight) { return at < flight.stamp; });
    const bool same = now->size() == fitted->size() && std::ranges::all_of(*now, [&](const ItemFacts& item) {
                          return std::ranges::count(*fitted, item.id) > 0;
                      });
    return FittedThen{std::move(*fitted), same && !flownSince};
}

Result<FittingDay> fittingDay(Books& books, const Registration& balloon, CivilDate on, CivilDate today) {
    const auto flights = books.flights(balloon, on, std::max(on, today));
    if (!flights)
        return tl::unexpected(flights.error());
    FittingDay day;
    day.later = static_cast<int>(flights->size());
    day.flights = static_cast<int>(
        std::ranges::count_if(*flights, [&](const LoggedFlight& flight) { return flight.stamp.at.on() == on; }));
    return day;
}

const std::string hoursOf = "-hours ";

bool limitsByHours(const DueRow& row) {
    return !row.requirement->once && std::ranges::any_of(row.requirement->limits, [](const Limit& limit) {
        return limit.clock == ClockName::Minutes;
    });
}

FormField hoursField(const ItemId& item) {
    return plannedField(hoursOf + item.text(), EntryForm::tr("Hours of %1 on that day").arg(inward(item.text())),
                        FormField::Kind::Duration, false,
                        EntryForm::tr("the record does not know them; left empty, it stays unproven"));
}

/// Of the items that a requirement was done on besides the one: those of whom the record does not know what the clock
/// showed on that day; none where hours do not matter.
std::vector<ItemId> unknownHours(const FormFields& form, const FleetSheet& sheet) {
    std::vector<ItemId> items;
    const auto* on = form.field("on");
    const auto day = on ? on->day() : std::nullopt;
    const RequirementId requirement(outward(form.value("requirement")));
    for (const auto& name : form.value("-also").split(u'\n', Qt::SkipEmptyParts)) {
        const ItemId item(outward(name));
        const auto* facts = sheet.item(item);
        if (!facts || (facts->clock.minutes && day && *day >= facts->entered))
            continue;
        if (std::ranges::any_of(sheet.rowsOf(item), [&](const DueRow* row) {
                return row->requirement->id == requirement && limitsByHours(*row);
            }))
            items.push_back(item);
    }
    return items;
}

/// Asks for the hours of these and of no other, and asks back about those that are left empty.
void askHours(FormFields& form, const std::vector<ItemId>& items) {
    auto fields = form.fields();
    std::vector<FormField> asked;
    QStringList empty;
    for (const auto& item : items) {
        const auto* field = form.field(hoursOf + item.text());
        asked.push_back(field ? *field : hoursField(item));
        if (asked.back().value.trimmed().isEmpty())
            empty += inward(item.text());
    }
    std::erase_if(fields, [](const FormField& field) { return field.key.starts_with(hoursOf); });
    const auto also = std::ranges::find(fields, std::string_view("-also"), &FormField::key);
    if (also == fields.end())
        return;
    fields.insert(std::next(also), asked.begin(), asked.end());
    if (!std::ranges::equal(fields, form.fields(), {}, &FormField::key, &FormField::key))
        form.show(std::move(fields));
    form.setQuestion(
        "-also", empty.isEmpty()
                     ? QString()
                     : EntryForm::tr("What the clock showed on that day is not known of %1. It counts hours, so that "
                                     "without them this stays unproven. State them below. Is it left so?")
                           .arg(empty.join(QStringLiteral(", "))));
}

}

std::optional<Registration> EntryForm::balloonOf(std::string_view key) const {
    const auto text = outward(m_fields.value(key));
    return text.empty() ? std::nullopt : std::optional(Registration(text));
}

std::optional<Moment> EntryForm::moment() const {
    const auto* on = m_fields.field("on");
    const auto day = on ? on->day() : std::nullopt;
    if (!day)
        return std::nullopt;
    const auto time = FittingPlan::timeOf({}, m_fields.value("time"));
    return Moment(*day, time.value_or(crownring::Kind<FlightLogged>::time));
}

std::vector<std::string> EntryForm::keysOf(std::string_view within) const {
    std::vector<std::string> keys;
    for (const auto& field : m_fields.fields())
        if (field.key.find(within) != std::string::npos)
            keys.push_back(field.key);
    return keys;
}

/// Only an envelope has gores, panel rows and vents.
void EntryForm::showPlace() {
    const auto sheet = house().fleet.sheet();
    const auto* item = sheet ? sheet->item(ItemId(outward(m_fields.value("item")))) : nullptr;
    const bool hasPanels = item && item->kind == ItemKind::Envelope;
    for (const char* key : {"gore", "row", "zone"})
        if (m_fields.field(key))
            m_fields.setShown(key, hasPanels || m_writing.before.contains(key));
}

void EntryForm::follow(std::string_view key) {
    const auto sheet = house().fleet.sheet();
    if (!sheet)
        return;
    const bool isNew = m_amends.empty();
    const auto& kind = m_writing.kind;
    const auto value = [this](std::string_view of) { return outward(m_fields.value(of)); };
    if (m_signed)
        showCode();
    if (key == "item")
        showPlace();
    if (kind == kindName<ReadingTaken>() && (key == "item" || key == "quantity"))
        ReadingForm::follow(key, m_fields, *sheet);
    if (key == "-fresh")
        for (const auto& each : keysOf("brought_forward."))
            m_fields.setShown(each, value("-fresh").empty());
    if (isNew && kind == kindName<ItemEntered>() && (key == "kind" || key == "made"))
        m_fields.setQuestion("made", AskedBack::ofAge(value("kind"), value("made")));
    if (key == "-when" && m_fields.field("-when"))
        m_fields.setShown("time", value("-when") == "at");
    if (kind == kindName<FlightLogged>() && (key == "balloon" || key == "on" || key == "time"))
        askKit();
    if (isNew && key == "balloon" && kind == kindName<VisitPlanned>())
        m_fields.setChoices("covers", AheadForm::works(*sheet, value("balloon")));
    if (isNew && key == "balloon" && kind == kindName<ItemFitted>())
        m_fields.setChoices("item", FormPlan::itemsNotOn(*sheet, value("balloon")));
    if (isNew && key == "balloon" && kind == kindName<ItemRemoved>())
        m_fields.setChoices("item", FormPlan::items(*sheet, value("balloon")));
    if (isNew && key == "item" && kind == kindName<RequirementDone>())
        m_fields.setChoices("requirement", FormPlan::requirements(*sheet, value("item")));
    if (isNew && (key == "item" || key == "requirement") && kind == kindName<RequirementDone>())
        m_fields.setChoices("method", FormPlan::methods(*sheet, value("requirement")));
    if (isNew && kind == kindName<ItemFitted>())
        offerAlso(FormPlan::poolLike(*sheet, value("item")));
    if (isNew && kind == kindName<RequirementDone>())
        offerAlso(FormPlan::alsoBound(*sheet, value("item"), value("requirement")));
    askHoursOfOthers();
    if (ServiceForm::known(kind)) {
        ServiceForm::showAsked(kind, m_fields, *sheet);
        m_follows = ServiceForm::follows(kind, m_fields, *sheet);
        emit changed();
    }
    if (ComponentForm::known(kind))
        ComponentForm::showAsked(kind, m_fields, *sheet);
    if (isNew && kind == kindName<EventReported>()) {
        EventForm::showAsked(m_fields, *sheet);
        m_follows = EventForm::follows(m_fields, *sheet);
        emit changed();
    }
    if (DirectiveForm::known(kind))
        followDirective(key);
    if (kind == kindName<ItemFitted>() || kind == kindName<ItemRemoved>())
        askDay();
}

void EntryForm::askHoursOfOthers() {
    const auto sheet = house().fleet.sheet();
    if (sheet && m_amends.empty() && m_writing.kind == kindName<RequirementDone>())
        askHours(m_fields, unknownHours(m_fields, *sheet));
}

/// What was written of the hours of another item goes into its entry; false where that cannot be read.
bool EntryForm::statesHours(nlohmann::json& other) {
    const auto* hours = m_fields.field(hoursOf + other.at("item").get<std::string>());
    if (!hours)
        return true;
    const auto minutes = hours->json();
    if (!minutes) {
        m_fields.setProblem(std::string(hours->key), Words::problem(minutes.error()));
        return false;
    }
    if (*minutes)
        other["clock"]["minutes"] = **minutes;
    return true;
}

void EntryForm::offerAlso(std::vector<Choice> choices) {
    const auto* field = m_fields.field("-also");
    if (!field || field->choices == choices)
        return;
    m_fields.setShown("-also", !choices.empty());
    m_fields.setChoices("-also", std::move(choices));
}

void EntryForm::askKit() {
    const auto balloon = balloonOf("balloon");
    const auto at = moment();
    const auto sheet = house().fleet.sheet();
    if (m_writing.kind != kindName<FlightLogged>() || !sheet)
        return;
    if (!balloon || !at)
        return m_kit.clear();
    std::optional<std::vector<ItemId>> flew;
    if (!m_amends.empty() && m_writing.before.contains("kit")) {
        flew.emplace();
        for (const auto& item : m_writing.before.at("kit"))
            flew->emplace_back(item.get<std::string>());
    }
    const Stamp stamp{*at, m_amends.empty() ? newEntryId() : EntryId(m_amends)};
    hear(house().desk.ask([balloon = *balloon, stamp, today = house().day.todayDate()](Record& record) {
        return fittedThen(record, balloon, stamp, today);
    }),
         this, [this, turn = ++m_turn, sheet, balloon = *balloon, flew](const Result<FittedThen>& then) {
             if (turn != m_turn)
                 return;
             m_kit.show(sheet, balloon, then ? then->fitted : std::vector<ItemId>{}, flew);
             m_kit.setMayStay(then && then->mayStay && m_amends.empty());
         });
}

/// A record states what happened, so what stood against it bars nobody from writing it, and is said before.
void EntryForm::askAgainst() {
    if (m_writing.kind != kindName<FlightLogged>() || !m_amends.empty())
        return;
    const auto turn = ++m_against;
    const auto at = moment();
    const auto kit = m_kit.kit();
    const auto take = [this](const QString& follows) {
        if (follows == m_follows)
            return;
        m_follows = follows;
        emit changed();
    };
    if (!at || kit.empty())
        return take({});
    hear(
        house().desk.ask([kit, on = at->on()](Record& record) -> Result<QStringList> {
            const auto answer = checkRigUp(record, kit, on, {});
            return answer ? Result<QStringList>(Consequences::against(answer->verdict))
                          : tl::unexpected(answer.error());
        }),
        this, [this, turn, take, on = at->on()](const Result<QStringList>& against) {
            if (turn != m_against)
                return;
            take(
                against && !against->isEmpty()
                    ? tr("On %1 the record had something against what flew. The flight can be written all the same: it "
                         "says what happened.\n%2")
                          .arg(inward(on.iso()), against->join(u'\n'))
                    : QString());
        });
}

void EntryForm::askDay() {
    const auto balloon = balloonOf("balloon");
    const auto* on = m_fields.field("on");
    const auto day = on ? on->day() : std::nullopt;
    m_follows.clear();
    emit changed();
    if (!balloon || !day)
        return;
    hear(house().desk.ask([balloon = *balloon, on = *day, today = house().day.todayDate()](Record& record) {
        return fittingDay(record, balloon, on, today);
    }),
         this, [this, turn = ++m_turn](const Result<FittingDay>& answer) {
             if (turn == m_turn && answer)
                 takeDay(*answer);
         });
}

void EntryForm::takeDay(const FittingDay& day) {
    const auto sheet = house().fleet.sheet();
    const auto balloon = balloonOf("balloon");
    if (!sheet || !balloon)
        return;
    const bool fitted = m_writing.kind == kindName<ItemFitted>();
    const ItemId item(outward(m_fields.value("item")));
    m_follows = FittingPlan::follows(*sheet, *balloon, item, fitted, day);
    m_fields.setQuestion("item", fitted ? FittingPlan::question(*sheet, *balloon, item) : QString());
    // Where nothing was flown on the day it does not matter when, and need not be asked.
    if (m_amends.empty())
        m_fields.propose("-when", day.flights > 0 ? QString()
                                  : fitted        ? QStringLiteral("before")
                                                  : QStringLiteral("after"));
    emit changed();
}

}
