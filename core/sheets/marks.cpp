// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/marks.h"

#include <algorithm>

namespace crownring {

std::string Marks::of(const std::string& words) {
    if (words.empty())
        return {};
    const auto found = std::ranges::find(m_words, words);
    const auto number = static_cast<std::size_t>(found - m_words.begin());
    if (found == m_words.end())
        m_words.push_back(words);
    return sign(number);
}

std::vector<paper::Fact> Marks::listed() const {
    std::vector<paper::Fact> facts;
    for (std::size_t number = 0; number < m_words.size(); ++number)
        facts.push_back({sign(number), m_words[number]});
    return facts;
}

std::string Marks::sign(std::size_t number) const {
    if (m_by == By::Numbers)
        return std::to_string(number + 1);
    std::string letters; // A … Z, AA …
    for (auto left = number + 1; left > 0; left = (left - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (left - 1) % 26));
    return letters;
}

}
