// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/near.h"

#include <algorithm>
#include <string>
#include <vector>

namespace crownring {

namespace {

std::string bare(std::string_view word) {
    std::string left;
    for (const char c : word)
        if (std::string_view(" -_./").find(c) == std::string_view::npos)
            left += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return left;
}

}

std::size_t slipsBetween(std::string_view one, std::string_view other) {
    std::vector<std::size_t> before, last(other.size() + 1), now(other.size() + 1);
    for (std::size_t j = 0; j <= other.size(); ++j)
        last[j] = j;
    for (std::size_t i = 1; i <= one.size(); ++i) {
        now[0] = i;
        for (std::size_t j = 1; j <= other.size(); ++j) {
            now[j] = std::min({last[j] + 1, now[j - 1] + 1, last[j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                now[j] = std::min(now[j], before[j - 2] + 1);
        }
        before = last;
        last = now;
    }
    return last[other.size()];
}

bool isNearly(std::string_view written, std::string_view known) {
    const auto one = bare(written);
    const auto other = bare(known);
    constexpr std::size_t longWord = 8, shortWord = 4;
    const auto length = std::min(one.size(), other.size());
    return one == other || (length >= shortWord && slipsBetween(one, other) <= (length >= longWord ? 2U : 1U));
}

}
