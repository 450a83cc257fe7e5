// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/near_name.h"

#include "text/digit.h"
#include "text/near.h"
#include "text/skeleton.h"

#include <algorithm>
#include <string>
#include <vector>

namespace crownring {

namespace {

bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

std::string withoutZeros(std::string_view written) {
    std::string left;
    for (std::size_t at = 0; at < written.size(); ++at) {
        const bool begins = left.empty() || !isDigit(left.back());
        const bool goesOn = at + 1 < written.size() && isDigit(written[at + 1]);
        if (!(written[at] == '0' && begins && goesOn))
            left += written[at];
    }
    return left;
}

/// As it looks; a sign that looks like no letter says nothing, unless there is nothing else.
std::string looksOf(std::string_view written) {
    const auto folded = skeleton(withoutZeros(written));
    std::string plain;
    std::ranges::copy_if(folded, std::back_inserter(plain),
                         [](char c) { return static_cast<unsigned char>(c) < 0x80; });
    return plain.empty() ? folded : plain;
}

/// What stands between blanks and the signs of lists.
std::vector<std::string> wordsOf(std::string_view written) {
    std::vector<std::string> words(1);
    for (const char c : written)
        if (std::string_view(" ,;|+&()[]\t\n").find(c) == std::string_view::npos)
            words.back() += c;
        else if (!words.back().empty())
            words.emplace_back();
    if (words.back().empty())
        words.pop_back();
    return words;
}

/// Some of its words, one behind the other, are what is sought.
bool holds(std::string_view written, const std::string& sought) {
    const auto words = wordsOf(written);
    for (std::size_t first = 0; first < words.size(); ++first) {
        std::string some;
        for (auto at = first; at < words.size(); ++at)
            if (some += (at == first ? "" : " ") + words[at]; looksOf(some) == sought)
                return true;
    }
    return false;
}

/// Runs of letters and of digits.
std::vector<std::string> runsOf(std::string_view written) {
    std::vector<std::string> runs;
    bool isOpen = false;
    for (const char c : withoutZeros(written)) {
        const bool counts = isLetter(c) || isDigit(c);
        if (counts && isOpen && isDigit(runs.back().back()) == isDigit(c))
            runs.back() += c;
        else if (counts)
            runs.emplace_back(1, c);
        isOpen = counts;
    }
    return runs;
}

bool isSlip(std::string_view written, std::string_view asked) {
    constexpr std::size_t shortWord = 4;
    const auto one = runsOf(written);
    const auto other = runsOf(asked);
    return one.size() == other.size() && std::ranges::equal(one, other, [](const auto& a, const auto& b) {
               return looksOf(a) == looksOf(b) || (isLetter(a.front()) && isLetter(b.front()) &&
                                                   std::min(a.size(), b.size()) >= shortWord && isNearly(a, b));
           });
}

}

bool isNearlyType(std::string_view written, std::string_view asked) {
    return holds(written, looksOf(asked)) || holds(asked, looksOf(written)) || isSlip(written, asked);
}

bool isNearlyPart(std::string_view written, std::string_view asked) {
    return looksOf(written) == looksOf(asked) || isNearly(written, asked);
}

}
