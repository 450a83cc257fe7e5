// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/written_date.h"

#include "exchange/text/plain_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>
#include <utility>
#include <vector>

namespace crownring {

namespace {

/// How the names of the months begin, folded; together they tell all of them apart.
constexpr std::array<std::pair<std::string_view, int>, 25> monthBeginnings = {{
    {"jan", 1}, {"ene", 1},  {"feb", 2},  {"fev", 2},  {"mar", 3},  {"mrz", 3},  {"apr", 4},  {"avr", 4}, {"abr", 4},
    {"may", 5}, {"mai", 5},  {"jun", 6},  {"juin", 6}, {"jul", 7},  {"juil", 7}, {"aug", 8},  {"aou", 8}, {"ago", 8},
    {"sep", 9}, {"oct", 10}, {"okt", 10}, {"nov", 11}, {"dec", 12}, {"dez", 12}, {"dic", 12},
}};

std::optional<int> monthNamed(std::string_view word) {
    for (const auto& [beginning, month] : monthBeginnings)
        if (word.starts_with(beginning))
            return month;
    return std::nullopt;
}

std::optional<int> number(std::string_view digits) {
    int value = 0;
    if (!allDigits(digits) || digits.size() > 4)
        return std::nullopt;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

/// A year of four digits, or of two.
std::optional<int> yearFrom(std::string_view digits) {
    const auto value = number(digits);
    if (!value || (digits.size() != 4 && digits.size() != 2))
        return std::nullopt;
    return digits.size() == 4 ? *value : *value + (*value < 69 ? 2000 : 1900);
}

/// A day or a month of one or two digits.
std::optional<int> partFrom(std::string_view digits) { return digits.size() <= 2 ? number(digits) : std::nullopt; }

std::optional<CivilDate> dateOf(std::optional<int> year, std::optional<int> month, std::optional<int> day) {
    if (!year || !month || !day)
        return std::nullopt;
    return CivilDate::fromYearMonthDay(*year, *month, *day);
}

/// The three parts and the mark between them (0 when they are only apart by blanks).
struct Parts {
    std::vector<std::string> words;
    char mark = 0;
    bool oneMark = true;
};

bool separates(char c) { return c == '-' || c == '/' || c == '.' || c == ',' || c == ' '; }

Parts partsOf(std::string_view text) {
    Parts parts;
    std::string word;
    const auto close = [&] {
        if (!word.empty())
            parts.words.push_back(folded(word));
        word.clear();
    };
    for (const char c : text) {
        if (!separates(c)) {
            word.push_back(c);
            continue;
        }
        close();
        if (c == ' ' || parts.words.size() > 2)
            continue;
        parts.oneMark = parts.oneMark && (parts.mark == 0 || parts.mark == c);
        parts.mark = c;
    }
    close();
    return parts;
}

std::optional<CivilDate> withMonthName(const std::vector<std::string>& words) {
    if (const auto month = monthNamed(words[1]))
        return dateOf(yearFrom(words[2]), month, partFrom(words[0]));
    if (const auto month = monthNamed(words[0]))
        return words[2].size() == 4 ? dateOf(yearFrom(words[2]), month, partFrom(words[1])) : std::nullopt;
    return std::nullopt;
}

std::optional<CivilDate> inOrder(const std::vector<std::string>& words, DateOrder order) {
    switch (order) {
    case DateOrder::DayMonthYear:
        return dateOf(yearFrom(words[2]), partFrom(words[1]), partFrom(words[0]));
    case DateOrder::MonthDayYear:
        return dateOf(yearFrom(words[2]), partFrom(words[0]), partFrom(words[1]));
    case DateOrder::YearMonthDay:
        break;
    }
    return dateOf(yearFrom(words[0]), partFrom(words[1]), partFrom(words[2]));
}

}

std::optional<CivilDate> readDate(std::string_view text, DateOrder order) {
    text = trimmed(text);
    constexpr std::size_t longest = 40;
    if (text.size() > longest)
        return std::nullopt;
    if (text.size() == 8 && allDigits(text))
        return dateOf(number(text.substr(0, 4)), number(text.substr(4, 2)), number(text.substr(6, 2)));
    auto parts = partsOf(text);
    std::erase_if(parts.words, [](const std::string& word) { return word == "de" || word == "del"; });
    if (parts.words.size() != 3)
        return std::nullopt;
    if (!std::all_of(parts.words.begin(), parts.words.end(), [](const auto& word) { return allDigits(word); }))
        return withMonthName(parts.words);
    if (!parts.oneMark || parts.mark == ',')
        return std::nullopt;
    if (parts.words[0].size() == 4)
        return inOrder(parts.words, DateOrder::YearMonthDay);
    return inOrder(parts.words, parts.mark == '.' ? DateOrder::DayMonthYear : order);
}

bool hasShortYear(std::string_view text) {
    const auto words = partsOf(trimmed(text)).words;
    return !words.empty() && std::none_of(words.begin(), words.end(),
                                          [](const auto& word) { return word.size() >= 4 && allDigits(word); });
}

}
