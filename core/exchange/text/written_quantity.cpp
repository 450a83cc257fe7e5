// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/written_quantity.h"

#include "exchange/text/plain_text.h"
#include "measure/decimal_text.h"
#include "measure/duration_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <initializer_list>
#include <string>
#include <utility>

namespace crownring {

namespace {

constexpr std::size_t longestCell = 40;

bool isBareNumber(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789.,") == std::string_view::npos;
}

bool oneOf(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::optional<std::int64_t> hoursPointMinutes(std::string_view text) {
    const auto mark = text.find_first_of(".,");
    const auto hours = readCount(text.substr(0, mark));
    if (!hours || mark == std::string_view::npos)
        return hours ? std::optional<std::int64_t>(*hours * 60) : std::nullopt;
    const auto minutes = readCount(text.substr(mark + 1));
    if (!minutes || *minutes > 59 || text.size() - mark != 3)
        return std::nullopt;
    return *hours * 60 + *minutes;
}

std::optional<std::int64_t> bareMinutes(std::string_view text, BareDuration bare) {
    if (bare == BareDuration::HoursPointMinutes)
        return hoursPointMinutes(text);
    const auto unit = bare == BareDuration::Hours ? BareNumber::Hours : BareNumber::Minutes;
    const auto minutes = parseDuration(text, unit);
    return minutes ? std::optional<std::int64_t>(minutes->value()) : std::nullopt;
}

/// h:mm:ss to the nearest minute.
std::optional<std::int64_t> withSeconds(std::string_view text) {
    const auto mark = text.rfind(':');
    const auto seconds = readCount(text.substr(mark + 1));
    const auto minutes = parseDuration(text.substr(0, mark));
    if (!seconds || *seconds > 59 || !minutes)
        return std::nullopt;
    return minutes->value() + (*seconds >= 30 ? 1 : 0);
}

/// Words for hours and minutes become "h" and "min".
std::string inShortUnits(std::string_view text) {
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        auto end = at;
        while (end < text.size() && !isDigit(text[end]) && text[end] != ' ' && text[end] != ':')
            ++end;
        const auto word = folded(text.substr(at, end - at));
        if (end == at)
            result.push_back(text[end++]);
        else if (oneOf(word, {"h", "hr", "hrs", "hour", "hours", "std", "stunde", "stunden", "heure", "heures", "hora",
                              "horas"}))
            result += "h";
        else if (oneOf(word, {"m", "mn", "min", "mins", "minute", "minutes", "minuten", "minuto", "minutos"}))
            result += "min";
        else
            result += text.substr(at, end - at);
        at = end;
    }
    return result;
}

std::optional<std::int64_t> spelledMinutes(std::string_view text) {
    if (std::count(text.begin(), text.end(), ':') == 2)
        return withSeconds(text);
    const auto minutes = parseDuration(inShortUnits(text));
    return minutes ? std::optional<std::int64_t>(minutes->value()) : std::nullopt;
}

std::optional<Minutes> withinAFlight(std::optional<std::int64_t> minutes, std::int64_t most) {
    return minutes && *minutes <= most ? std::optional<Minutes>(Minutes(*minutes)) : std::nullopt;
}

}

std::optional<Minutes> readDuration(std::string_view text, BareDuration bare) {
    text = trimmed(text);
    if (text.size() > longestCell)
        return std::nullopt;
    return withinAFlight(isBareNumber(text) ? bareMinutes(text, bare) : spelledMinutes(text), longestFlight.value());
}

std::optional<Minutes> likelyDuration(std::string_view text, BareDuration bare) {
    constexpr Minutes longestInHours{24 * 60};
    const auto minutes = readDuration(text, bare);
    const bool unlikely =
        minutes && bare != BareDuration::Minutes && isBareNumber(trimmed(text)) && *minutes > longestInHours;
    return unlikely ? std::nullopt : minutes;
}

std::optional<std::int64_t> readCount(std::string_view text) {
    text = trimmed(text);
    std::int64_t value = 0;
    constexpr std::size_t mostDigits = 9;
    if (!allDigits(text) || text.size() > mostDigits)
        return std::nullopt;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::optional<Celsius> readCelsius(std::string_view text, TemperatureUnit bare) {
    text = trimmed(text);
    if (text.size() > longestCell)
        return std::nullopt;
    const auto figures = text.substr(0, text.find_last_of("0123456789") + 1);
    const auto unit = folded(text.substr(figures.size()));
    const auto value = parseDecimal(figures);
    if (!value || !oneOf(unit, {"", "c", "f", "celsius", "fahrenheit", "deg c", "deg f"}))
        return std::nullopt;
    const bool fahrenheit = unit.empty() ? bare == TemperatureUnit::Fahrenheit : unit.find('f') != std::string::npos;
    const double celsius = fahrenheit ? (*value - 32) / 1.8 : *value;
    return Celsius(std::round(celsius * 10) / 10);
}

std::optional<AmountUnit> amountUnitNamed(std::string_view word) {
    if (oneOf(word, {"kg", "kgs", "kilogram", "kilograms", "kilogramm", "kilo", "kilos"}))
        return AmountUnit::Kilograms;
    if (oneOf(word, {"lb", "lbs", "pound", "pounds"}))
        return AmountUnit::Pounds;
    if (oneOf(word, {"l", "litre", "litres", "liter", "liters", "litro", "litros"}))
        return AmountUnit::Litres;
    // A gallon alone may be an imperial one.
    const bool isOfTheUs =
        word.starts_with("us") && oneOf(word.substr(word.rfind(' ') + 1), {"gal", "gals", "gallon", "gallons"});
    if (word == "usg" || isOfTheUs)
        return AmountUnit::UsGallons;
    return std::nullopt;
}

std::optional<WrittenAmount> readAmount(std::string_view text) {
    text = trimmed(text);
    if (text.size() > longestCell)
        return std::nullopt;
    const auto figures = text.substr(0, text.find_last_of("0123456789") + 1);
    const auto word = folded(text.substr(figures.size()));
    const auto value = parseDecimal(figures);
    const auto unit = amountUnitNamed(word);
    if (!value || (!word.empty() && !unit))
        return std::nullopt;
    return WrittenAmount{*value, unit};
}

double inKilogramsOrLitres(double value, AmountUnit unit) {
    constexpr double poundKg = 0.45359237;
    constexpr double gallonLitres = 3.785411784;
    const double factor = unit == AmountUnit::Pounds ? poundKg : unit == AmountUnit::UsGallons ? gallonLitres : 1;
    return std::round(value * factor * 10) / 10;
}

std::optional<bool> readYesNo(std::string_view text) {
    const auto word = folded(text);
    if (oneOf(word, {"yes", "y", "true", "1", "x", "ja", "j", "oui", "o", "si", "s", "tethered", "gefesselt", "captif",
                     "cautivo"}))
        return true;
    if (oneOf(word, {"no", "n", "false", "0", "nein", "non", "free", "frei", "libre"}) || trimmed(text) == "-")
        return false;
    return std::nullopt;
}

}
