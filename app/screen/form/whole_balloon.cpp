// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/whole_balloon.h"

#include "rules/programme/programme.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;
using Kind = FormField::Kind;

constexpr std::array singleParts = {ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner};

std::string keyOf(ItemKind kind, const char* of) { return std::string(itemKindName(kind)) + "." + of; }

/// Types of the kind that the record holds, the most frequent first.
std::vector<Choice> typesOf(const FleetSheet& sheet, ItemKind kind) {
    constexpr std::size_t mostOffered = 6;
    std::map<std::string, int> counts;
    for (const auto& item : sheet.items())
        if (item.kind == kind && item.type)
            ++counts[*item.type];
    std::vector<std::pair<std::string, int>> types(counts.begin(), counts.end());
    std::ranges::stable_sort(types, std::greater(), &std::pair<std::string, int>::second);
    std::vector<Choice> choices;
    for (std::size_t at = 0; at < std::min(types.size(), mostOffered); ++at)
        choices.push_back(plainChoice(inward(types[at].first), inward(types[at].first)));
    return choices;
}

void addPart(std::vector<FormField>& fields, const FleetSheet& sheet, ItemKind kind) {
    constexpr std::int64_t likelyMinutes = 5000 * 60;
    const auto named = [&](const QString& what) { return WholeBalloon::tr("%1: %2").arg(Words::kind(kind), what); };
    fields.push_back(plannedField(keyOf(kind, "item"), named(WholeBalloon::tr("its name")), Kind::Text, false,
                                  WholeBalloon::tr("as you call it; it stays for good")));
    fields.push_back(plannedField(keyOf(kind, "type"), named(WholeBalloon::tr("type")), Kind::Text));
    fields.back().choices = typesOf(sheet, kind);
    fields.push_back(plannedField(keyOf(kind, "serial"), named(WholeBalloon::tr("serial number")), Kind::Text));
    fields.push_back(plannedField(keyOf(kind, "made"), named(WholeBalloon::tr("made")), Kind::Made, false,
                                  WholeBalloon::tr("a day, or YYYY-MM as stamped")));
    fields.push_back(plannedField(keyOf(kind, "brought_forward.minutes"), named(WholeBalloon::tr("hours")),
                                  Kind::Duration, false, WholeBalloon::tr("left empty: unknown, and never zero")));
    fields.back().likely = likelyMinutes;
    fields.push_back(
        plannedField(keyOf(kind, "brought_forward.landings"), named(WholeBalloon::tr("landings")), Kind::Count));
    fields.push_back(
        plannedField(keyOf(kind, "brought_forward.inflations"), named(WholeBalloon::tr("inflations")), Kind::Count));
}

std::vector<Choice> programmes() {
    std::vector<Choice> choices;
    for (const auto& text : shelf())
        if (const auto programme = programmeFrom(text))
            choices.push_back(plainChoice(inward(programme->id.text()), words::said(programme->title)));
    return choices;
}

/// "CYL-1; TA4015; 2016-05; 250": a cylinder a line, its parts apart by semicolons or tabs.
Result<Json> cylinderFrom(const QString& line, bool fresh) {
    const auto parts = QString(line).replace(u'\t', u';').split(u';');
    constexpr std::array keys = {"item", "serial", "made", "minutes"};
    Json cylinder = Json::object();
    Json hours = nullptr;
    for (qsizetype at = 0; at < std::min<qsizetype>(parts.size(), keys.size()); ++at) {
        const std::string_view key = keys[static_cast<std::size_t>(at)];
        FormField field;
        field.kind = key == "made" ? Kind::Made : key == "minutes" ? Kind::Duration : Kind::Text;
        field.value = parts.at(at).trimmed();
        const auto value = field.json();
        if (!value)
            return tl::unexpected(value.error());
        if (*value && key == "minutes")
            hours = **value;
        else if (*value)
            cylinder[std::string(key)] = **value;
    }
    if (!fresh)
        cylinder["brought_forward"] = {{"minutes", hours}, {"landings", nullptr}, {"inflations", nullptr}};
    return cylinder;
}

Json itemOf(Json part, ItemKind kind, bool fresh) {
    part["entry"] = kindName<ItemEntered>();
    part["kind"] = itemKindName(kind);
    auto& before = part["brought_forward"];
    for (const char* clock : {"minutes", "landings", "inflations"})
        if (!before.contains(clock))
            before[clock] = nullptr;
    if (fresh)
        part.erase("brought_forward");
    return part;
}

}

std::vector<FormField> WholeBalloon::fields(const FleetSheet& sheet) {
    std::vector<FormField> fields{plannedField("balloon", tr("Registration"), Kind::Text, true),
                                  plannedField("title", tr("Name or type"), Kind::Text),
                                  plannedField("programme", tr("Rules it flies under"), Kind::Several, false,
                                               tr("All that bind it: an item follows several at once.")),
                                  plannedField("operations", tr("Operations"), Kind::Several, false,
                                               tr("Some requirements bind the operation, not the balloon.")),
                                  plannedField("on", tr("Since when the record speaks of it"), Kind::Date, true),
                                  plannedField("-fresh", tr("All of it is new and has never been used"), Kind::Check)};
    fields[2].choices = programmes();
    fields[3].choices = {plainChoice(QStringLiteral("for-hire"), Words::operation("for-hire")),
                         plainChoice(QStringLiteral("instruction"), Words::operation("instruction"))};
    for (const auto kind : singleParts)
        addPart(fields, sheet, kind);
    fields.push_back(plannedField("cylinders", tr("Cylinders, one a line"), Kind::Lines, false,
                                  tr("name; serial number; made; hours – as CYL-1; TA4015; 2016-05; 250")));
    return fields;
}

QString WholeBalloon::wrongLines(const QString& cylinders, bool fresh) {
    int number = 0;
    for (const auto& line : cylinders.split(u'\n')) {
        ++number;
        if (line.trimmed().isEmpty())
            continue;
        const auto cylinder = cylinderFrom(line, fresh);
        if (!cylinder)
            return tr("Line %1: %2").arg(QString::number(number), Words::problem(cylinder.error()));
        if (!cylinder->contains("item"))
            return tr("Line %1: the name comes first, then a semicolon.").arg(number);
    }
    return {};
}

std::vector<std::string> WholeBalloon::nameless(const Json& gathered) {
    std::vector<std::string> keys;
    for (const auto kind : singleParts)
        if (const auto part = gathered.find(itemKindName(kind)); part != gathered.end() && !part->contains("item"))
            keys.push_back(keyOf(kind, "item"));
    return keys;
}

std::vector<Json> WholeBalloon::entries(const Json& gathered, bool fresh) {
    const auto& balloon = gathered.at("balloon");
    std::vector<Json> items;
    for (const auto kind : singleParts)
        if (const auto part = gathered.find(itemKindName(kind)); part != gathered.end() && part->contains("item"))
            items.push_back(itemOf(*part, kind, fresh));
    for (const auto& line : inward(gathered.value("cylinders", std::string())).split(u'\n', Qt::SkipEmptyParts))
        if (const auto cylinder = cylinderFrom(line, fresh); cylinder && cylinder->contains("item"))
            items.push_back(itemOf(*cylinder, ItemKind::Cylinder, fresh));
    std::vector<Json> entries{{{"entry", kindName<BalloonEntered>()}, {"balloon", balloon}}};
    for (const char* key : {"title", "operations"})
        if (gathered.contains(key))
            entries.front()[key] = gathered.at(key);
    entries.insert(entries.end(), items.begin(), items.end());
    for (const auto& item : items)
        entries.push_back({{"entry", kindName<ItemFitted>()}, {"balloon", balloon}, {"item", item.at("item")}});
    for (const auto& programme : gathered.value("programme", Json::array()))
        entries.push_back(
            {{"entry", kindName<ProgrammeAdopted>()}, {"programme", programme}, {"balloons", Json::array({balloon})}});
    for (auto& entry : entries) {
        entry["on"] = gathered.at("on");
        entry["by"] = gathered.at("by");
    }
    return entries;
}

}
