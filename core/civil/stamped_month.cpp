// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/stamped_month.h"

#include <algorithm>
#include <optional>

namespace crownring {

namespace {

bool isNumber(std::string_view part) {
    return (part.size() == 2 || part.size() == 4) &&
           std::ranges::all_of(part, [](char c) { return c >= '0' && c <= '9'; });
}

std::vector<std::string_view> partsOf(std::string_view stamp) {
    constexpr std::string_view gaps = " /-.";
    std::vector<std::string_view> parts;
    for (std::size_t at = 0; at < stamp.size();) {
        const auto end = std::min(stamp.find_first_of(gaps, at), stamp.size());
        if (end > at)
            parts.push_back(stamp.substr(at, end - at));
        at = end + 1;
    }
    return parts;
}

std::optional<std::string> monthOf(std::string_view year, std::string_view month) {
    if (month.size() != 2 || month < "01" || month > "12" || (year.size() == 4 && year < "1583"))
        return std::nullopt; // the calendar of the record begins in 1583
    const std::string century = year.size() == 4 ? "" : year < "70" ? "20" : "19";
    return century + std::string(year) + "-" + std::string(month);
}

}

std::vector<std::string> monthsStamped(std::string_view stamp) {
    const auto parts = partsOf(stamp);
    if (parts.size() < 2 || parts.size() > 3 || !isNumber(parts.front()) || !isNumber(parts.back()))
        return {};
    const bool marked = parts.size() == 3; // the tester's mark stands between month and year in the United States alone
    if (marked && isNumber(parts[1]))
        return {};
    std::vector<std::string> months;
    if (const auto month = monthOf(parts.front(), parts.back()); month && !marked)
        months.push_back(*month);
    if (const auto month = monthOf(parts.back(), parts.front()); month && std::ranges::count(months, *month) == 0)
        months.push_back(*month);
    return months;
}

}
