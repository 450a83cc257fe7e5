// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"

#include "problem/faults/written_fault.h"

#include <charconv>
#include <cstdlib>
#include <initializer_list>
#include <optional>

namespace crownring {

namespace {

std::string_view withoutBlanks(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// Takes the first of `endings` that `text` ends with off its end.
bool takeEnding(std::string_view& text, std::initializer_list<std::string_view> endings) {
    for (const auto ending : endings)
        if (text.size() > ending.size() && text.ends_with(ending)) {
            text = withoutBlanks(text.substr(0, text.size() - ending.size()));
            return true;
        }
    return false;
}

std::optional<std::int64_t> wholeNumber(std::string_view text) {
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || text.empty() || text.front() == '-')
        return std::nullopt;
    return value;
}

/// A decimal number times `unit`, rounded half up; no floating point, so that 0.025 h is 1.5 min and not nearly so.
/// "1,500" may be a thousand and a half or one and a half: such a number is no number here.
std::optional<std::int64_t> decimalTimes(std::string_view text, std::int64_t unit) {
    constexpr std::size_t mostDecimals = 15;
    const auto at = text.find_first_of(".,");
    const auto whole = wholeNumber(text.substr(0, at));
    if (!whole || *whole > largestCount)
        return std::nullopt;
    if (at == std::string_view::npos)
        return *whole * unit;
    auto decimals = text.substr(at + 1);
    if (decimals.empty() || (decimals.size() == 3 && *whole > 0))
        return std::nullopt;
    if (decimals.find_first_not_of("0123456789") != std::string_view::npos)
        return std::nullopt;
    decimals = decimals.substr(0, mostDecimals);
    std::int64_t scale = 1;
    for (std::size_t i = 0; i < decimals.size(); ++i)
        scale *= 10;
    const auto part = wholeNumber(decimals).value_or(0) * unit;
    if (unit == 1 && part % scale != 0)
        return std::nullopt;
    return *whole * unit + (2 * part + scale) / (2 * scale);
}

Result<Minutes> refuse(std::string_view text) { return problem(WrittenFault::NotADuration, {text}); }

std::optional<std::int64_t> hoursColonMinutes(std::string_view text, std::string_view separator) {
    const auto at = text.find(separator);
    if (at == std::string_view::npos)
        return std::nullopt;
    const auto hours = wholeNumber(withoutBlanks(text.substr(0, at)));
    const auto minutes = wholeNumber(withoutBlanks(text.substr(at + separator.size())));
    if (!hours || !minutes || *minutes > 59 || *hours > largestCount / 60)
        return std::nullopt;
    const auto sum = *hours * 60 + *minutes;
    return sum <= largestCount ? std::optional(sum) : std::nullopt;
}

}

Result<Minutes> parseDuration(std::string_view text, BareNumber bare) {
    auto rest = withoutBlanks(text);
    if (rest.find(':') != std::string_view::npos) {
        takeEnding(rest, {"h"});
        const auto minutes = hoursColonMinutes(rest, ":");
        return minutes ? Result<Minutes>(Minutes(*minutes)) : refuse(text);
    }
    const bool inMinutes = takeEnding(rest, {"minutes", "minute", "mins", "min", "m", "'"});
    for (const auto separator : {"hours", "hour", "hrs", "hr", "h"})
        if (const auto minutes = hoursColonMinutes(rest, separator))
            return Minutes(*minutes);
    const bool inHours = takeEnding(rest, {"hours", "hour", "hrs", "hr", "h"});
    if (inHours && inMinutes)
        return refuse(text);
    const bool hours = inHours || (!inMinutes && bare == BareNumber::Hours);
    const auto minutes = decimalTimes(rest, hours ? 60 : 1);
    if (!minutes || *minutes > largestCount)
        return refuse(text);
    return Minutes(*minutes);
}

std::string hoursAndMinutes(Minutes minutes) {
    const auto size = std::abs(minutes.value());
    const auto rest = size % 60;
    return (minutes.value() < 0 ? "-" : "") + std::to_string(size / 60) + (rest < 10 ? ":0" : ":") +
           std::to_string(rest);
}

std::string decimalHours(Minutes minutes) {
    const auto tenths = (std::abs(minutes.value()) + 3) / 6;
    return (minutes.value() < 0 && tenths > 0 ? "-" : "") + std::to_string(tenths / 10) + "." +
           std::to_string(tenths % 10);
}

}
