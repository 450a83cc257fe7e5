// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/wrapping.h"

#include "text/utf8.h"

#include <algorithm>

namespace crownring::paper {

namespace {

bool beginsLetter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0u) != 0x80u; }

/// How many bytes the first `count` letters take.
std::size_t bytesOf(std::string_view text, std::size_t count) {
    std::size_t at = 0;
    for (std::size_t seen = 0; at < text.size(); ++at)
        if (beginsLetter(text[at]) && seen++ == count)
            break;
    return at;
}

void addWord(std::vector<std::string>& lines, std::string_view word, std::size_t width, bool first) {
    const std::size_t space = first ? 0 : 1;
    if (letters(lines.back()) + space + letters(word) <= width) {
        lines.back().append(space, ' ').append(word);
        return;
    }
    if (!first)
        lines.emplace_back();
    for (; letters(word) > width; word.remove_prefix(bytesOf(word, width))) {
        lines.back() = word.substr(0, bytesOf(word, width));
        lines.emplace_back();
    }
    lines.back() = word;
}

}

std::size_t letters(std::string_view text) { return characters(text); }

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    width = std::max<std::size_t>(width, 1);
    std::vector<std::string> lines(1);
    bool first = true;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(" \n"), text.size());
        if (end > 0) {
            addWord(lines, text.substr(0, end), width, first);
            first = false;
        }
        if (end < text.size() && text[end] == '\n') {
            lines.emplace_back();
            first = true;
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

}
