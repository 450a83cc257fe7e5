// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/written_time.h"

#include "exchange/text/plain_text.h"

#include <algorithm>
#include <charconv>
#include <string>

namespace crownring {

namespace {

/// One or two digits at the start of `text`, taken off it.
std::optional<int> takeNumber(std::string_view& text, std::size_t most = 2) {
    std::size_t length = 0;
    while (length < std::min(text.size(), most) && isDigit(text[length]))
        ++length;
    if (length == 0)
        return std::nullopt;
    int value = 0;
    std::from_chars(text.data(), text.data() + length, value);
    text.remove_prefix(length);
    return value;
}

bool takeMark(std::string_view& text, std::string_view marks) {
    if (text.empty() || marks.find(text.front()) == std::string_view::npos)
        return false;
    text.remove_prefix(1);
    return true;
}

/// Hours, minutes and optional seconds, in seconds; what follows stays in `text`.
std::optional<int> takeClock(std::string_view& text) {
    const bool compact = text.size() >= 4 && allDigits(text.substr(0, 4));
    const auto hours = takeNumber(text);
    if (!hours || (!compact && !takeMark(text, ":.hH")))
        return std::nullopt;
    const auto digits = text.size();
    const auto minutes = takeNumber(text);
    if (!minutes || digits - text.size() != 2 || *hours > 23 || *minutes > 59)
        return std::nullopt;
    int seconds = 0;
    if (takeMark(text, ":")) {
        const auto stated = takeNumber(text);
        if (!stated || *stated > 59)
            return std::nullopt;
        seconds = *stated;
        if (takeMark(text, "."))
            takeNumber(text, 9);
    }
    return (*hours * 60 + *minutes) * 60 + seconds;
}

/// "+02:00", "+0200", "-03"; nothing when it is no offset.
std::optional<int> offsetFrom(std::string_view text) {
    if (text.empty() || (text.front() != '+' && text.front() != '-'))
        return std::nullopt;
    const int sign = text.front() == '-' ? -1 : 1;
    text.remove_prefix(1);
    const auto hours = takeNumber(text);
    takeMark(text, ":");
    const auto minutes = text.empty() ? std::optional<int>(0) : takeNumber(text);
    if (!hours || !minutes || !text.empty() || *hours > 14 || *minutes > 59)
        return std::nullopt;
    return sign * (*hours * 60 + *minutes);
}

/// Twelve-hour clock: 12 am is midnight, 12 pm is noon.
std::optional<int> inHalfDay(int seconds, bool afternoon) {
    constexpr int hour = 3600;
    if (seconds < hour || seconds >= 13 * hour)
        return std::nullopt;
    return seconds % (12 * hour) + (afternoon ? 12 * hour : 0);
}

}

std::optional<WrittenTime> readTime(std::string_view text) {
    text = trimmed(text);
    const auto seconds = takeClock(text);
    if (!seconds)
        return std::nullopt;
    auto rest = trimmed(text);
    WrittenTime time{*seconds, std::nullopt};
    if (const auto offset = offsetFrom(rest)) {
        time.offsetMinutes = offset;
        return time;
    }
    auto words = folded(rest);
    if (words.starts_with("am") || words.starts_with("pm") || words.starts_with("a m") || words.starts_with("p m")) {
        const auto twelve = inHalfDay(*seconds, words.front() == 'p');
        if (!twelve)
            return std::nullopt;
        time.seconds = *twelve;
        words.erase(0, words[1] == 'm' ? 2 : 3);
        words = folded(words);
    }
    if (words == "z" || words == "utc" || words == "gmt" || words == "zulu")
        time.offsetMinutes = 0;
    else if (!words.empty() && words != "uhr" && words != "h" && words != "lt" && words != "local")
        return std::nullopt;
    return time;
}

std::pair<std::string_view, std::string_view> dateAndTime(std::string_view text) {
    text = trimmed(text);
    const auto colon = text.find(':');
    if (colon == std::string_view::npos)
        return {text, {}};
    const auto gap = text.find_last_of(" T", colon);
    if (gap == std::string_view::npos)
        return {text, {}};
    return {trimmed(text.substr(0, gap)), text.substr(gap + 1)};
}

}
