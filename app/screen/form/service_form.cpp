// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/service_form.h"

#include "rules/standing/binding.h"
#include "screen/desk/item_choices.h"
#include "screen/form/form_fields.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Kind = FormField::Kind;

bool isRenaming(std::string_view kind) { return kind == kindName<BalloonRenamed>(); }
bool isOfItem(std::string_view kind) { return kind == kindName<ItemState>(); }

FormField subjectField(const char* key, const QString& label, std::vector<Choice> choices, const std::string& value) {
    auto made = plannedField(key, label, Kind::Choice, true);
    made.choices = std::move(choices);
    made.value = inward(value);
    return made;
}

}

bool ServiceForm::known(std::string_view kind) {
    return isOfItem(kind) || isRenaming(kind) || kind == kindName<BalloonState>();
}

std::vector<FormField> ServiceForm::fields(std::string_view kind, const FormSubject& subject, const FleetSheet& sheet) {
    if (!known(kind))
        return {};
    std::vector<FormField> fields;
    if (isOfItem(kind))
        fields.push_back(subjectField("item", tr("Item"), FormPlan::items(sheet, {}), subject.item));
    else
        fields.push_back(subjectField("balloon", tr("Balloon"), FormPlan::balloons(sheet), subject.balloon));
    if (isRenaming(kind)) {
        fields.push_back(plannedField("to", tr("New registration"), Kind::Text, true));
    } else {
        auto state = plannedField("state", tr("From then on it is"), Kind::OneOf, true);
        for (int each = 0; each < (isOfItem(kind) ? serviceStateCount : balloonStateCount); ++each)
            state.choices.push_back(plainChoice(inward(serviceStateName(static_cast<ServiceState>(each))),
                                                Words::service(static_cast<ServiceState>(each))));
        auto to = plannedField("to", isOfItem(kind) ? tr("Sold to, or away at") : tr("Sold to"), Kind::Text);
        to.shown = false;
        fields.push_back(std::move(state));
        fields.push_back(std::move(to));
        if (isOfItem(kind)) {
            auto form = plannedField("release.form", tr("Released by"), Kind::OneOf);
            for (const auto each : {ReleaseForm::EasaForm1, ReleaseForm::Faa81303, ReleaseForm::Inspection})
                form.choices.push_back(plainChoice(inward(releaseFormName(each)), Words::releaseForm(each)));
            auto number = plannedField("release.number", tr("Its number"), Kind::Text);
            form.shown = number.shown = false;
            fields.push_back(std::move(form));
            fields.push_back(std::move(number));
        }
    }
    fields.push_back(plannedField("on", tr("Day"), Kind::Date, true));
    return fields;
}

QString ServiceForm::title(std::string_view kind) {
    return isRenaming(kind) ? tr("Another registration")
           : isOfItem(kind) ? tr("In service, or out of it: an item")
                            : tr("In service, or out of it: a balloon");
}

QString ServiceForm::verb() { return tr("Enter it"); }

QString ServiceForm::follows(std::string_view kind, const FormFields& fields, const FleetSheet& sheet) {
    const auto value = [&](const char* key) { return fields.value(key).trimmed(); };
    const auto* on = fields.field("on");
    const auto day = on ? on->day() : std::nullopt;
    const auto state = serviceStateFrom(outward(value("state")));
    if (isRenaming(kind)) {
        const auto* card = sheet.card(Registration(outward(value("balloon"))));
        return card && !value("to").isEmpty() ? renamedFollows(*card, value("to"), sheet) : QString();
    }
    if (!day || !state)
        return {};
    if (isOfItem(kind)) {
        const auto* item = sheet.item(ItemId(outward(value("item"))));
        return item ? itemFollows(*item, *state, inward(day->iso()), sheet) : QString();
    }
    const auto* card = sheet.card(Registration(outward(value("balloon"))));
    return card ? balloonFollows(*card, *state, inward(day->iso()), sheet) : QString();
}

QString ServiceForm::outFollows(const QString& whose, std::size_t rows, ServiceState state, const QString& day) {
    QStringList lines{
        tr("From %1 on nothing is asked of %2: %n requirements leave the lists.", nullptr, static_cast<int>(rows))
            .arg(day, whose)};
    if (state == ServiceState::LaidUp)
        lines += tr("What lapses meanwhile stands on its page; back in service, all of it is asked again.");
    lines += tr("The record keeps everything. A flight on a later day is questioned.");
    return lines.join(u' ');
}

QString ServiceForm::itemFollows(const ItemFacts& item, ServiceState state, const QString& day,
                                 const FleetSheet& sheet) {
    const auto name = ItemChoices::name(item);
    if (state != ServiceState::InService)
        return outFollows(name, sheet.rowsOf(item.id).size(), state, day);
    if (item.out && item.out->with)
        return tr("It stays out of service as long as it is fitted to %1.").arg(inward(item.out->with->text()));
    return tr("From %1 on all that %2 is bound by is asked again, the time out of service counted.").arg(day, name);
}

QString ServiceForm::balloonFollows(const BalloonCard& card, ServiceState state, const QString& day,
                                    const FleetSheet& sheet) {
    const auto name = inward(card.balloon.text());
    if (state == ServiceState::InService)
        return tr("From %1 on all that %2 and what is fitted to it are bound by is asked again, the time out of "
                  "service counted.")
            .arg(day, name);
    const auto items = static_cast<int>(sheet.itemsOf(card.balloon).size());
    const auto whose = items == 0 ? name : tr("%1 and the %n items fitted to it", nullptr, items).arg(name);
    const auto text = outFollows(whose, sheet.rowsOf(card.balloon).size(), state, day);
    return state == ServiceState::LaidUp || items == 0
               ? text
               : tr("%1 What does not go with it is to be removed first.").arg(text);
}

QString ServiceForm::renamedFollows(const BalloonCard& card, const QString& to, const FleetSheet& sheet) {
    const auto from = inward(card.balloon.text());
    const auto items = static_cast<int>(sheet.itemsOf(card.balloon).size());
    QStringList lines{
        tr("%n items go over to %1, each with its own clock and history.", nullptr, items).arg(to),
        tr("What was adopted for %1 binds %2.").arg(from, to),
        tr("The flights that were logged for %1 (%2, %3) stay with it: the count of %4 begins anew, and its page "
           "names both.")
            .arg(from)
            .arg(card.flights)
            .arg(Words::hours(card.flown.minutes.value()), to),
        tr("%1 leaves the lists.").arg(from)};
    if (const auto* taken = sheet.card(Registration(outward(to)))) {
        const auto operations = operationsFollow(card, *taken, sheet);
        if (!operations.isEmpty())
            lines.prepend(operations);
    }
    return lines.join(u' ');
}

/// What the registration was entered with holds (02: `balloon.entered` carries the operations), and is not guessed from
/// the former one; that less is asked then is said.
QString ServiceForm::operationsFollow(const BalloonCard& card, const BalloonCard& taken, const FleetSheet& sheet) {
    QStringList lacking;
    for (const auto& operation : card.operations)
        if (std::ranges::find(taken.operations, operation) == taken.operations.end())
            lacking += Words::operation(operation);
    const auto& rows = sheet.rowsOf(card.balloon);
    const auto dropped = std::ranges::count_if(rows, [&](const DueRow* row) {
        return calledForBy(*row->requirement, card.operations) && !calledForBy(*row->requirement, taken.operations);
    });
    if (lacking.isEmpty())
        return {};
    const auto to = inward(taken.balloon.text());
    const auto entered = tr("%1 was entered without: %2.").arg(to, lacking.join(tr(", ")));
    if (dropped == 0)
        return entered;
    return QStringList{
        entered,
        tr("%n requirements that bind only such operation are then not required.", nullptr, static_cast<int>(dropped)),
        tr("If it goes on so, correct the entry of %1 first.").arg(to)}
        .join(u' ');
}

void ServiceForm::showAsked(std::string_view kind, FormFields& fields, const FleetSheet& sheet) {
    const auto state = serviceStateFrom(outward(fields.value("state")));
    fields.setShown("to", isRenaming(kind) || state == ServiceState::Sold || state == ServiceState::Away);
    if (!isOfItem(kind))
        return;
    const auto* item = sheet.item(ItemId(outward(fields.value("item"))));
    const bool comesBack = state == ServiceState::InService && item && item->out && !item->out->with &&
                           (isKeptApart(item->out->state) || item->out->state == ServiceState::Away);
    fields.setShown("release.form", comesBack);
    fields.setShown("release.number", comesBack);
}

/// What is kept apart is on nothing.
std::optional<Entry> ServiceForm::comesOffFirst(const Entry& entry, const FleetSheet& sheet) {
    const auto* state = std::get_if<ItemState>(&entry.body);
    const auto* item = state && isKeptApart(state->state) ? sheet.item(state->item) : nullptr;
    if (!item || (!item->balloon && !item->carrier))
        return std::nullopt;
    ItemRemoved removed{{}, state->item, {}, item->carrier};
    if (!item->carrier)
        removed.balloon = *item->balloon;
    Entry first;
    first.on = entry.on;
    first.by = entry.by;
    first.body = std::move(removed);
    return first;
}

std::optional<Entry> ServiceForm::entersFirst(const Entry& entry, const FleetSheet& sheet) {
    if (auto removed = comesOffFirst(entry, sheet))
        return removed;
    const auto* renamed = std::get_if<BalloonRenamed>(&entry.body);
    const auto* former = renamed ? sheet.card(renamed->balloon) : nullptr;
    if (!former)
        return std::nullopt;
    if (const auto* known = sheet.card(renamed->to);
        known && (known->renamed || (known->items == 0 && known->flights == 0)))
        return std::nullopt;
    Entry entered;
    entered.on = entry.on;
    entered.by = entry.by;
    entered.body = BalloonEntered{renamed->to, former->title, former->operations};
    return entered;
}

}
