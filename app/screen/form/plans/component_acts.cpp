// SPDX-License-Identifier: GPL-3.0-or-later

/// From what is written in the forms of components to the acts.

#include "acts/components.h"
#include "acts/post.h"
#include "screen/desk/written_now.h"
#include "screen/form/plans/component_form.h"
#include "words/border.h"

#include <QStringList>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;

std::string textIn(const Json& object, const char* key) { return object.value(key, std::string()); }

CivilDate dayIn(const Json& object, const char* key) { return CivilDate::parse(textIn(object, key)).value(); }

std::vector<ItemId> itemsIn(const Json& object, const char* key) {
    std::vector<ItemId> items;
    for (const auto& each : object.value(key, Json::array()))
        items.emplace_back(each.get<std::string>());
    return items;
}

std::optional<PartRelease> releaseIn(const Json& object) {
    const auto release = object.value("release", Json::object());
    const auto form = releaseFormFrom(textIn(release, "form"));
    return form ? std::optional(PartRelease{*form, textIn(release, "number")}) : std::nullopt;
}

/// What goes on in the place of the other, of its kind and type.
std::optional<ItemEntered> newPart(const Json& said, const ItemFacts* off) {
    if (!said.contains("new") || !off)
        return std::nullopt;
    const auto& part = said.at("new");
    ItemEntered entered;
    entered.item = ItemId(textIn(part, "item"));
    entered.kind = off->kind;
    entered.type = off->type;
    if (const auto serial = textIn(part, "serial"); !serial.empty())
        entered.serial = serial;
    if (const auto made = DayOrMonth::parse(textIn(part, "made")))
        entered.made = *made;
    entered.lot = textIn(said, "lot");
    entered.release = releaseIn(said);
    return entered;
}

Returning returningFrom(const Json& said) {
    Returning returning;
    returning.condemned = itemsIn(said, "condemned");
    for (const auto& item : itemsIn(said, "items"))
        if (std::ranges::find(returning.condemned, item) == returning.condemned.end())
            returning.items.push_back(item);
    for (const auto& item : returning.items)
        if (const auto done = textIn(said.value("done", Json::object()), item.text().c_str()); !done.empty())
            returning.each.emplace(item, RequirementId(done));
    returning.method = textIn(said, "method");
    returning.mark = textIn(said, "mark");
    returning.ref = textIn(said, "ref");
    returning.licence = textIn(said, "licence");
    if (const auto signatory = textIn(said, "signatory"); !signatory.empty())
        returning.signatory = PersonId(signatory);
    returning.release = releaseIn(said);
    if (said.contains("tested"))
        returning.tested = dayIn(said, "tested");
    returning.day = dayIn(said, "on");
    returning.by = textIn(said, "by");
    return returning;
}

/// One entry each, on the day and by whom the form says.
std::vector<NumberedEntry> entriesOf(const Json& said, std::vector<Body> bodies, const std::optional<TimeOfDay>& time) {
    std::vector<NumberedEntry> entries;
    for (auto& body : bodies) {
        Entry entry;
        entry.on = dayIn(said, "on");
        entry.time = time;
        entry.by = textIn(said, "by");
        entry.note = textIn(said, "note");
        entry.body = std::move(body);
        entries.push_back({std::move(entry), 0});
    }
    return entries;
}

std::vector<Body> bodiesOf(std::string_view kind, const Json& said, const ItemFacts* off) {
    std::vector<Body> bodies;
    if (kind == ComponentForm::fitted) {
        ItemFitted fitted;
        fitted.item = ItemId(textIn(said, "item"));
        fitted.to = itemsIn(said, "items").front();
        fitted.place = textIn(said, "place");
        fitted.release = releaseIn(said);
        fitted.lot = textIn(said, "lot");
        bodies.emplace_back(std::move(fitted));
    } else if (kind == ComponentForm::takenOff && off) {
        ItemRemoved removed;
        removed.item = off->id;
        removed.from = off->carrier;
        if (!off->carrier && off->balloon)
            removed.balloon = *off->balloon;
        bodies.emplace_back(std::move(removed));
        if (said.contains("unserviceable"))
            bodies.emplace_back(ItemState{off->id, ServiceState::Unserviceable, {}});
    } else {
        for (const auto& item : itemsIn(said, "items"))
            bodies.emplace_back(CylinderFilled{item, said.at("level_percent").get<double>()});
    }
    return bodies;
}

}

FormAct ComponentForm::act(std::string_view kind, const Json& said, const FleetSheet& sheet, CivilDate today) {
    const auto now = timeOfAct(dayIn(said, "on"), today);
    const auto items = itemsIn(said, "items");
    const auto count = static_cast<int>(items.size());
    const auto first = items.empty() ? QString() : inward(items.front().text());
    const auto* off = items.empty() ? nullptr : sheet.item(items.front());
    if (kind == sent) {
        const Sending sending{items, textIn(said, "to"), dayIn(said, "on"), textIn(said, "by"), now};
        return {[sending](Record& record) { return sendAway(record, record, sending); },
                tr("%n items sent to %1", nullptr, count).arg(inward(sending.to))};
    }
    if (kind == returned) {
        auto returning = returningFrom(said);
        returning.time = now;
        QStringList condemned;
        for (const auto& item : returning.condemned)
            condemned += inward(item.text());
        return {[returning](Record& record) { return takeBack(record, record, returning); },
                joined({tr("%n items came back", nullptr, count), doneText(returning, sheet),
                        condemned.isEmpty() ? QString()
                                            : tr("condemned of them: %1").arg(condemned.join(QStringLiteral(", ")))},
                       QStringLiteral("; "))};
    }
    if (kind == replaced) {
        Replacing replacing;
        replacing.off = items.front();
        replacing.enters = newPart(said, off);
        replacing.on = replacing.enters ? replacing.enters->item : ItemId(textIn(said, "with"));
        replacing.release = releaseIn(said);
        replacing.lot = textIn(said, "lot");
        replacing.unserviceable = said.contains("unserviceable");
        replacing.day = dayIn(said, "on");
        replacing.by = textIn(said, "by");
        replacing.time = now;
        return {[replacing](Record& record) { return replaceItem(record, record, replacing); },
                tr("%1 replaced by %2").arg(first, inward(replacing.on.text()))};
    }
    const auto told = kind == fitted     ? tr("%1 fitted to %2").arg(inward(textIn(said, "item")), first)
                      : kind == takenOff ? tr("%1 taken off").arg(first)
                                         : tr("%n cylinders filled", nullptr, count);
    // What comes off is kept apart at that moment: of an earlier day after its flights.
    const auto time = now ? now : kind == takenOff ? std::optional(TimeOfDay(23, 59)) : std::nullopt;
    return {[entries = entriesOf(said, bodiesOf(kind, said, off), time)](Record& record) {
                return postBehind(record, record, entries);
            },
            told};
}

}
