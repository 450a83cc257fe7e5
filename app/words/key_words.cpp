// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/key_words.h"

#include "bench/reading/quantity.h"
#include "measure/duration_text.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace crownring::words {

namespace {

using Json = nlohmann::json;

struct Key {
    std::string_view key;
    const char* source;
};

constexpr std::array keys{
    Key{"on", QT_TRANSLATE_NOOP("KeyWords", "day")},
    Key{"time", QT_TRANSLATE_NOOP("KeyWords", "time")},
    Key{"by", QT_TRANSLATE_NOOP("KeyWords", "written by")},
    Key{"note", QT_TRANSLATE_NOOP("KeyWords", "note")},
    Key{"minutes", QT_TRANSLATE_NOOP("KeyWords", "time in service")},
    Key{"landings", QT_TRANSLATE_NOOP("KeyWords", "landings")},
    Key{"inflations", QT_TRANSLATE_NOOP("KeyWords", "inflations")},
    Key{"kit", QT_TRANSLATE_NOOP("KeyWords", "what flew")},
    Key{"max_temp_c", QT_TRANSLATE_NOOP("KeyWords", "highest envelope temperature, °C")},
    Key{"tethered", QT_TRANSLATE_NOOP("KeyWords", "tethered")},
    Key{"balloon", QT_TRANSLATE_NOOP("KeyWords", "balloon")},
    Key{"item", QT_TRANSLATE_NOOP("KeyWords", "item")},
    Key{"kind", QT_TRANSLATE_NOOP("KeyWords", "kind")},
    Key{"serial", QT_TRANSLATE_NOOP("KeyWords", "serial number")},
    Key{"type", QT_TRANSLATE_NOOP("KeyWords", "type")},
    Key{"made", QT_TRANSLATE_NOOP("KeyWords", "made")},
    Key{"brought_forward", QT_TRANSLATE_NOOP("KeyWords", "brought forward")},
    Key{"title", QT_TRANSLATE_NOOP("KeyWords", "name or type")},
    Key{"place", QT_TRANSLATE_NOOP("KeyWords", "place on the balloon")},
    Key{"requirement", QT_TRANSLATE_NOOP("KeyWords", "requirement")},
    Key{"clock", QT_TRANSLATE_NOOP("KeyWords", "clock on the paper")},
    Key{"ref", QT_TRANSLATE_NOOP("KeyWords", "reference on the paper")},
    Key{"method", QT_TRANSLATE_NOOP("KeyWords", "method")},
    Key{"value", QT_TRANSLATE_NOOP("KeyWords", "value")},
    Key{"unit", QT_TRANSLATE_NOOP("KeyWords", "unit")},
    Key{"gore", QT_TRANSLATE_NOOP("KeyWords", "gore")},
    Key{"row", QT_TRANSLATE_NOOP("KeyWords", "panel row")},
    Key{"what", QT_TRANSLATE_NOOP("KeyWords", "what was found or done")},
    Key{"until", QT_TRANSLATE_NOOP("KeyWords", "until")},
    Key{"reason", QT_TRANSLATE_NOOP("KeyWords", "why")},
    Key{"operations", QT_TRANSLATE_NOOP("KeyWords", "operations")},
    Key{"quantity", QT_TRANSLATE_NOOP("KeyWords", "quantity")},
    Key{"severity", QT_TRANSLATE_NOOP("KeyWords", "severity")},
    Key{"visit", QT_TRANSLATE_NOOP("KeyWords", "visit")},
    Key{"state", QT_TRANSLATE_NOOP("KeyWords", "state")},
    Key{"photographs", QT_TRANSLATE_NOOP("KeyWords", "photographs")},
    Key{"event", QT_TRANSLATE_NOOP("KeyWords", "what happened")},
    Key{"altitude_m", QT_TRANSLATE_NOOP("KeyWords", "altitude, m")},
    Key{"fuel_kg", QT_TRANSLATE_NOOP("KeyWords", "fuel, kg")},
    Key{"fuel_l", QT_TRANSLATE_NOOP("KeyWords", "fuel, l")},
    Key{"oat_c", QT_TRANSLATE_NOOP("KeyWords", "outside, °C")},
    Key{"load_kg", QT_TRANSLATE_NOOP("KeyWords", "people and load, kg")},
};

QString translated(const char* source) { return QCoreApplication::translate("KeyWords", source); }

QString valueSaid(std::string_view key, const Json& value);

/// What the record says by a code is said in words.
QString codeSaid(std::string_view key, const std::string& code) {
    if (const auto kind = key == "kind" ? itemKindFrom(code) : std::nullopt)
        return Words::kind(*kind);
    if (key == "event")
        return Words::event(code);
    if (key == "operations")
        return Words::operation(code);
    if (key == "visit")
        return BenchWords::visit(code);
    if (key == "quantity")
        return said(quantityTerm(code));
    if (key == "severity")
        return code == "minor"       ? QCoreApplication::translate("KeyWords", "does not ground the balloon")
               : code == "grounding" ? QCoreApplication::translate("KeyWords", "a danger to flight")
                                     : QCoreApplication::translate("KeyWords", "grounds the balloon, may be deferred");
    return inward(code);
}

QString listSaid(std::string_view key, const Json& list) {
    QStringList parts;
    for (const auto& each : list)
        parts += valueSaid(key, each);
    return parts.join(QStringLiteral(", "));
}

QString objectSaid(const Json& object) {
    QStringList parts;
    for (const auto& [key, value] : object.items())
        parts += value.is_null() ? QCoreApplication::translate("KeyWords", "%1 unknown").arg(keySaid(key))
                                 : QStringLiteral("%1 %2").arg(keySaid(key), valueSaid(key, value));
    return parts.join(QStringLiteral(", "));
}

QString valueSaid(std::string_view key, const Json& value) {
    if (key == "state" && value.is_string())
        if (const auto state = serviceStateFrom(value.get<std::string>()))
            return Words::service(*state);
    if (value.is_string())
        return codeSaid(key, value.get<std::string>());
    if (value.is_boolean())
        return value.get<bool>() ? QCoreApplication::translate("KeyWords", "yes")
                                 : QCoreApplication::translate("KeyWords", "no");
    if (key == "minutes" && value.is_number_integer())
        return Words::hours(value.get<std::int64_t>());
    if (key == "photographs" && value.is_array()) // their digests say nothing to a reader
        return QString::number(value.size());
    if (value.is_array())
        return listSaid(key, value);
    if (value.is_object())
        return objectSaid(value);
    return inward(value.dump());
}

}

QString keySaid(std::string_view key) {
    const auto found = std::ranges::find(keys, key, &Key::key);
    return found == keys.end() ? inward(key).replace(u'_', u' ') : translated(found->source);
}

QString changesSaid(const std::string& with) {
    const auto object = Json::parse(with, nullptr, false);
    if (!object.is_object())
        return inward(with);
    QStringList parts;
    for (const auto& [key, value] : object.items())
        parts += value.is_null() ? QCoreApplication::translate("KeyWords", "%1: left out").arg(keySaid(key))
                                 : QStringLiteral("%1 %2").arg(keySaid(key), valueSaid(key, value));
    return parts.join(QStringLiteral(", "));
}

QString shortId(const std::string& id) {
    constexpr std::size_t longestShown = 24;
    constexpr std::size_t lastShown = 6;
    return id.size() <= longestShown ? inward(id) : QStringLiteral("…") + inward(id.substr(id.size() - lastShown));
}

}
