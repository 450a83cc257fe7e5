// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/plans/component_form.h"

#include "rules/due/obligations.h"
#include "rules/standing/standing.h"
#include "screen/desk/item_choices.h"
#include "screen/form/form_fields.h"
#include "words/border.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <functional>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;
using Typed = FormField::Kind;

constexpr std::string_view filled = kindName<CylinderFilled>();

FormField tapOf(std::string key, const QString& label, std::vector<Choice> choices, bool required = false) {
    auto made = plannedField(std::move(key), label, Typed::OneOf, required);
    made.choices = std::move(choices);
    return made;
}

std::vector<FormField> releaseFields(const QString& hint) {
    std::vector<Choice> forms{plainChoice({}, ComponentForm::tr("none"))};
    for (int at = 0; at < releaseFormCount; ++at) {
        const auto form = static_cast<ReleaseForm>(at);
        forms.push_back(plainChoice(inward(releaseFormName(form)), Words::releaseForm(form)));
    }
    return {tapOf("release.form", ComponentForm::tr("Released by"), std::move(forms)),
            plannedField("release.number", ComponentForm::tr("Its number"), Typed::Text, true, hint)};
}

/// Where something was sent before, as far as it is still there.
std::vector<Choice> houses(const FleetSheet& sheet) {
    std::vector<Choice> choices;
    for (const auto& item : sheet.items())
        if (item.out && item.out->state == ServiceState::Away && !item.out->to.empty())
            if (const auto to = inward(item.out->to); std::ranges::find(choices, to, &Choice::value) == choices.end())
                choices.push_back(plainChoice(to, to));
    return choices;
}

std::vector<FormField> sentFields(const FleetSheet& sheet) {
    auto to = plannedField("to", ComponentForm::tr("To whom"), Typed::Text, true,
                           ComponentForm::tr("what is fitted comes off; nothing is asked of what is away"));
    to.choices = houses(sheet);
    return {std::move(to)};
}

bool blocksFilling(const FleetSheet& sheet, const QString& requirement) {
    return std::ranges::any_of(sheet.adoptions(), [&](const Adoption& adoption) {
        return std::ranges::any_of(adoption.programme->requirements, [&](const Requirement& each) {
            return each.blocks == Blocks::Filling && each.id.text() == outward(requirement);
        });
    });
}

/// The test for transport that an item is under: the one that was done on it last, else the one that binds it where it
/// is or was; nothing where neither says.
QString transportTestOf(const FleetSheet& sheet, const std::string& id, const FormSubject& subject) {
    const auto* item = sheet.item(ItemId(id));
    if (!item)
        return {};
    for (auto done = item->done.rbegin(); done != item->done.rend(); ++done)
        if (const auto requirement = inward(done->requirement.text()); blocksFilling(sheet, requirement))
            return requirement;
    const auto before = subject.lastOn.find(item->id);
    const auto balloon = item->balloon || before == subject.lastOn.end() ? item->balloon : before->second;
    const Obligations obligations(sheet.adoptions());
    for (const auto& held : obligations.of(item->id, balloon).all())
        if (held.requirement->blocks == Blocks::Filling && binds(*held.requirement, *item))
            return inward(held.requirement->id.text());
    return {};
}

/// Of a programme of aircraft rules: an inspection of the balloon, which no test house carries out.
bool isOfAircraft(const FleetSheet& sheet, const QString& requirement) {
    return std::ranges::any_of(sheet.adoptions(), [&](const Adoption& adoption) {
        return !adoption.programme->regime.empty() &&
               std::ranges::any_of(adoption.programme->requirements,
                                   [&](const Requirement& each) { return each.id.text() == outward(requirement); });
    });
}

/// What may have been done on them, with on how many where it is not asked of all; the tests for transport first.
/// @param items each with its own test for transport as its detail
std::vector<Choice> doneChoices(const std::vector<Choice>& items, const FleetSheet& sheet) {
    std::vector<Choice> choices;
    for (const auto& item : items)
        for (auto& each : FormPlan::requirements(sheet, outward(item.value))) {
            const bool isTransport = blocksFilling(sheet, each.value);
            if (isOfAircraft(sheet, each.value) || (isTransport && !item.detail.isEmpty() && item.detail != each.value))
                continue;
            const auto known = std::ranges::find(choices, each.value, &Choice::value);
            if (known != choices.end())
                ++known->number;
            else
                choices.push_back({each.value, each.label, {}, 1, -1, isTransport});
        }
    const auto all = static_cast<int>(items.size());
    for (auto& each : choices)
        if (each.number < all)
            each.label = ComponentForm::tr("%1 (of %2 of them)").arg(each.label).arg(each.number);
    std::ranges::stable_sort(choices, std::greater(), &Choice::chosen);
    if (std::ranges::count(choices, true, &Choice::chosen) > 1)
        choices.insert(choices.begin(),
                       plainChoice(inward(ComponentForm::ofEach), ComponentForm::tr("of each its test for transport")));
    return choices;
}

std::vector<FormField> returnedFields(const FormSubject& subject, const FleetSheet& sheet) {
    std::vector<Choice> items;
    QStringList unknown;
    for (const auto& id : subject.items) {
        const auto* item = sheet.item(ItemId(id));
        items.push_back(plainChoice(inward(id), item && item->serial
                                                    ? ComponentForm::tr("%1, %2").arg(inward(id), inward(*item->serial))
                                                    : inward(id)));
        items.back().detail = transportTestOf(sheet, id, subject);
        if (items.back().detail.isEmpty())
            unknown += inward(id);
    }
    auto done = tapOf("requirement", ComponentForm::tr("What was done"), doneChoices(items, sheet));
    done.required = true; // nobody says for the user that something was tested
    if (!unknown.isEmpty())
        done.hint = ComponentForm::tr("under which test for transport it is, the record does not say of %1")
                        .arg(unknown.join(QStringLiteral(", ")));
    done.choices.push_back(
        plainChoice(inward(ComponentForm::ofNone), ComponentForm::tr("nothing that is asked of them")));
    auto condemned = plannedField("condemned", ComponentForm::tr("Condemned there, for good"), Typed::Several);
    condemned.choices = std::move(items);
    std::vector<FormField> fields{
        plannedField("ref", ComponentForm::tr("Document that came with them"), Typed::Text, true),
        std::move(done),
        tapOf("method", ComponentForm::tr("How"), {}, true),
        plannedField("mark", ComponentForm::tr("The tester's mark"), Typed::Text),
        plannedField("signatory", ComponentForm::tr("Who signed the document"), Typed::Text),
        plannedField("licence", ComponentForm::tr("Licence of who signed it"), Typed::Text, false,
                     ComponentForm::tr("with both the document shows the test; without it stays an open question")),
        plannedField("tested", ComponentForm::tr("Tested on"), Typed::Date, false,
                     ComponentForm::tr("left empty: on the day of the return")),
        std::move(condemned)};
    for (auto& each : releaseFields(ComponentForm::tr("of the document")))
        fields.push_back(std::move(each));
    return fields;
}

/// How it may have been done, where that decides when it is due again.
std::vector<Choice> methodsOf(const FormFields& fields, const FleetSheet& sheet) {
    const auto chosen = outward(fields.value("requirement"));
    const auto* condemned = fields.field("condemned");
    if (chosen != ComponentForm::ofEach || !condemned)
        return FormPlan::methods(sheet, chosen);
    std::vector<Choice> methods;
    for (const auto& item : condemned->choices)
        for (auto& each : FormPlan::methods(sheet, outward(item.detail)))
            if (std::ranges::find(methods, each.value, &Choice::value) == methods.end())
                methods.push_back(std::move(each));
    return methods;
}

/// Of the kind, fitted to nothing and in service; those of the type first.
std::vector<Choice> spares(const FleetSheet& sheet, const ItemFacts* like) {
    std::vector<Choice> same;
    std::vector<Choice> others;
    for (const auto& item : sheet.items())
        if (!item.balloon && !item.carrier && !item.out && (!like || (item.kind == like->kind && item.id != like->id)))
            (like && item.type == like->type ? same : others).push_back(ItemChoices::of(sheet, item));
    same.insert(same.end(), others.begin(), others.end());
    return same;
}

std::vector<FormField> replacedFields(const FormSubject& subject, const FleetSheet& sheet) {
    auto with = plannedField("with", ComponentForm::tr("Goes on"), Typed::Choice, true);
    with.choices = spares(sheet, sheet.item(ItemId(subject.item)));
    auto from = tapOf("-from", ComponentForm::tr("What goes on is"),
                      {plainChoice(QStringLiteral("pool"), ComponentForm::tr("in the pool")),
                       plainChoice(QStringLiteral("new"), ComponentForm::tr("a new part"))},
                      true);
    from.value = with.choices.empty() ? QStringLiteral("new") : QStringLiteral("pool");
    std::vector<FormField> fields{std::move(from), std::move(with),
                                  plannedField("new.item", ComponentForm::tr("Its name"), Typed::Text, true,
                                               ComponentForm::tr("as you call it; it stays for good")),
                                  plannedField("new.serial", ComponentForm::tr("Serial number on"), Typed::Text),
                                  plannedField("new.made", ComponentForm::tr("Made"), Typed::Made, false,
                                               ComponentForm::tr("a day, or YYYY-MM as stamped"))};
    for (auto& each : releaseFields(ComponentForm::tr("of the document that it came with")))
        fields.push_back(std::move(each));
    fields.push_back(plannedField("lot", ComponentForm::tr("Lot"), Typed::Text));
    fields.push_back(plannedField("unserviceable",
                                  ComponentForm::tr("What comes off is unserviceable: kept apart until it is released"),
                                  Typed::Check));
    return fields;
}

std::vector<FormField> fittedFields(const FormSubject& subject, const FleetSheet& sheet) {
    auto item = plannedField("item", ComponentForm::tr("Part"), Typed::Choice, true);
    item.choices = spares(sheet, nullptr);
    std::erase_if(item.choices, [&](const Choice& each) { return each.value == inward(subject.item); });
    std::vector<FormField> fields{std::move(item),
                                  plannedField("place", ComponentForm::tr("Place on it"), Typed::Text)};
    for (auto& each : releaseFields(ComponentForm::tr("of the document that it came with")))
        fields.push_back(std::move(each));
    fields.push_back(plannedField("lot", ComponentForm::tr("Lot"), Typed::Text));
    return fields;
}

std::vector<FormField> filledFields(const FormSubject& subject, const FleetSheet& sheet) {
    std::vector<FormField> fields;
    if (subject.items.empty()) {
        fields.push_back(plannedField("item", ComponentForm::tr("Cylinder"), Typed::Choice, true));
        for (const auto& each : sheet.items())
            if (each.kind == ItemKind::Cylinder && (!each.out || each.id.text() == subject.item))
                fields.back().choices.push_back(ItemChoices::of(sheet, each));
        fields.back().value = inward(subject.item);
    }
    fields.push_back(
        plannedField("level_percent", ComponentForm::tr("Filled to, % of the water capacity"), Typed::Decimal, true));
    constexpr int mostFilled = 85; // a fixed level gauge stands at 80 (common practice, no source)
    fields.back().likely = mostFilled;
    return fields;
}

}

bool ComponentForm::isAct(std::string_view kind) {
    return kind == sent || kind == returned || kind == replaced || kind == fitted || kind == takenOff;
}
bool ComponentForm::known(std::string_view kind) { return isAct(kind) || kind == filled; }

std::vector<FormField> ComponentForm::fields(std::string_view kind, const FormSubject& subject,
                                             const FleetSheet& sheet) {
    if (kind == sent)
        return sentFields(sheet);
    if (kind == returned)
        return returnedFields(subject, sheet);
    if (kind == replaced)
        return replacedFields(subject, sheet);
    if (kind == fitted)
        return fittedFields(subject, sheet);
    if (kind == takenOff)
        return {
            plannedField("unserviceable", tr("It is unserviceable: kept apart until it is released"), Typed::Check)};
    return filledFields(subject, sheet);
}

QString ComponentForm::title(std::string_view kind) {
    return kind == sent       ? tr("Send to a test house or a shop")
           : kind == returned ? tr("Back from a test house or a shop")
           : kind == replaced ? tr("Replace a part")
           : kind == fitted   ? tr("Fit a part")
           : kind == takenOff ? tr("Take a part off")
                              : tr("Filling of cylinders");
}

QString ComponentForm::verb(std::string_view kind) {
    return kind == sent       ? tr("Send them")
           : kind == returned ? tr("Take them back")
           : kind == replaced ? tr("Replace it")
           : kind == fitted   ? tr("Fit it")
           : kind == takenOff ? tr("Take it off")
                              : tr("Enter it");
}

QString ComponentForm::doneText(const Returning& returning, const FleetSheet& sheet) {
    std::map<RequirementId, std::pair<ItemId, int>> counts; ///< one of the items, and of how many
    for (const auto& [item, requirement] : returning.each)
        ++counts.try_emplace(requirement, item, 0).first->second.second;
    if (counts.empty())
        return tr("nothing is recorded as done on them");
    QStringList told;
    for (const auto& [requirement, of] : counts) {
        const auto all = FormPlan::requirements(sheet, of.first.text());
        const auto known = std::ranges::find(all, inward(requirement.text()), &Choice::value);
        told += tr("%1 recorded as done on %n of them", nullptr, of.second)
                    .arg(known == all.end() ? inward(requirement.text()) : known->label);
    }
    auto all = told.join(QStringLiteral(", "));
    return returning.signatory && !returning.licence.empty()
               ? all
               : tr("%1, as stated: who signed it, and with which licence, is not said").arg(all);
}

Json ComponentForm::doneOnEach(const FormFields& fields, const FleetSheet& sheet) {
    Json done = Json::object();
    const auto chosen = fields.value("requirement");
    const auto* condemned = fields.field("condemned");
    for (const auto& item : condemned ? condemned->choices : std::vector<Choice>()) {
        const auto all = FormPlan::requirements(sheet, outward(item.value));
        const bool isUnder = chosen == item.detail || item.detail.isEmpty() || !blocksFilling(sheet, chosen);
        if (chosen == inward(ofEach) && !item.detail.isEmpty())
            done[outward(item.value)] = outward(item.detail);
        else if (isUnder && std::ranges::find(all, chosen, &Choice::value) != all.end())
            done[outward(item.value)] = outward(chosen);
    }
    return done;
}

QString ComponentForm::named(const QStringList& items, const FleetSheet& sheet) {
    constexpr qsizetype shown = 12;
    const auto* item = items.size() == 1 ? sheet.item(ItemId(outward(items.front()))) : nullptr;
    if (item) {
        const auto choice = ItemChoices::of(sheet, *item);
        return joined({item->type ? tr("%1 %2").arg(inward(*item->type), items.front()) : choice.label,
                       item->serial ? tr("serial %1").arg(inward(*item->serial)) : QString(),
                       item->carrier   ? tr("in %1").arg(inward(item->carrier->text()))
                       : item->balloon ? tr("on %1").arg(inward(item->balloon->text()))
                                       : QString()},
                      QStringLiteral(" · "));
    }
    const auto list = items.mid(0, shown).join(QStringLiteral(", "));
    const auto all = tr("%n items: %1", nullptr, static_cast<int>(items.size())).arg(list);
    return items.size() > shown ? tr("%1 … and %2 more").arg(all).arg(items.size() - shown) : all;
}

void ComponentForm::showAsked(std::string_view kind, FormFields& fields, const FleetSheet& sheet) {
    if (fields.field("release.form"))
        fields.setShown("release.number", !fields.value("release.form").isEmpty());
    if (kind == replaced) {
        const bool isNew = fields.value("-from") == QStringLiteral("new");
        fields.setShown("with", !isNew);
        for (const char* key : {"new.item", "new.serial", "new.made"})
            fields.setShown(key, isNew);
    }
    if (kind == returned) {
        auto methods = methodsOf(fields, sheet);
        const auto* method = fields.field("method");
        if (method && method->choices != methods)
            fields.setChoices("method", methods);
        fields.setShown("method", !methods.empty());
        for (const char* key : {"mark", "signatory", "licence", "tested"})
            fields.setShown(key,
                            !fields.value("requirement").isEmpty() && fields.value("requirement") != inward(ofNone));
    }
}

}
