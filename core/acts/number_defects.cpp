// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/number_defects.h"

#include <map>
#include <string>

namespace crownring {

namespace {

std::string numberText(int year, int number) {
    auto digits = std::to_string(number);
    digits.insert(0, digits.size() < 3 ? 3 - digits.size() : 0, '0');
    const auto two = std::to_string(100 + year % 100).substr(1);
    return "D" + two + "-" + digits;
}

Result<bool> isTaken(Books& books, int year, int number) {
    const auto told = books.told({Subject::Defect, numberText(year, number), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return !told->empty();
}

/// One behind a number that is taken, without asking for each: twice as far until one is free, then halfway.
Result<int> firstFree(Books& books, int year) {
    int taken = 0;
    int free = 1;
    for (;;) {
        const auto is = isTaken(books, year, free);
        if (!is)
            return tl::unexpected(is.error());
        if (!*is)
            break;
        taken = free;
        free *= 2;
    }
    while (free - taken > 1) {
        const int half = taken + (free - taken) / 2;
        const auto is = isTaken(books, year, half);
        if (!is)
            return tl::unexpected(is.error());
        (*is ? taken : free) = half;
    }
    return free;
}

}

Result<void> numberDefects(Books& books, std::vector<NumberedEntry>& entries) {
    std::map<int, int> next; // by year
    for (auto& [entry, line] : entries) {
        auto* found = std::get_if<DefectFound>(&entry.body);
        if (!found || found->defect.text() != unnumbered)
            continue;
        const int year = entry.on.year();
        auto at = next.find(year);
        if (at == next.end()) {
            const auto free = firstFree(books, year);
            if (!free)
                return tl::unexpected(free.error());
            at = next.emplace(year, *free).first;
        }
        // What was voided left a gap, behind which numbers may be taken.
        for (;; ++at->second) {
            const auto is = isTaken(books, year, at->second);
            if (!is)
                return tl::unexpected(is.error());
            if (!*is)
                break;
        }
        found->defect = DefectId(numberText(year, at->second++));
    }
    return {};
}

}
