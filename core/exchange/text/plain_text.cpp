// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/plain_text.h"

#include "problem/faults/table_fault.h"
#include "text/utf8.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace crownring {

namespace {

void appendUtf8(std::string& to, std::uint32_t point) {
    const auto put = [&](std::uint32_t byte) { to.push_back(static_cast<char>(static_cast<unsigned char>(byte))); };
    if (point < 0x80) {
        put(point);
    } else if (point < 0x800) {
        put(0xC0 | (point >> 6));
        put(0x80 | (point & 0x3F));
    } else {
        put(0xE0 | (point >> 12));
        put(0x80 | ((point >> 6) & 0x3F));
        put(0x80 | (point & 0x3F));
    }
}

/// Windows-1252, bytes 0x80 to 0x9F; the five that it leaves open become the replacement character.
constexpr std::array<std::uint32_t, 32> windowsPoints = {
    0x20AC, 0xFFFD, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0xFFFD, 0x017D, 0xFFFD, 0xFFFD, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0xFFFD, 0x017E, 0x0178,
};

std::string fromWindows1252(std::string_view bytes) {
    std::string utf8;
    utf8.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        const std::uint32_t byte = static_cast<unsigned char>(c);
        appendUtf8(utf8, byte >= 0x80 && byte < 0xA0 ? windowsPoints[byte - 0x80] : byte);
    }
    return utf8;
}

/// U+00C0 to U+00FF without their accents; a space where there is no plain letter.
constexpr std::array<std::string_view, 64> plainLetters = {
    "a", "a", "a", "a", "a", "a", "ae", "c", "e",  "e",  "e", "e", "i", "i", "i", "i", "d",  "n", "o",  "o", "o", "o",
    "o", " ", "o", "u", "u", "u", "u",  "y", "th", "ss", "a", "a", "a", "a", "a", "a", "ae", "c", "e",  "e", "e", "e",
    "i", "i", "i", "i", "d", "n", "o",  "o", "o",  "o",  "o", " ", "o", "u", "u", "u", "u",  "y", "th", "y",
};

/// One letter folded; a space for punctuation.
std::string_view foldedLetter(std::string_view letter) {
    constexpr std::string_view small = "abcdefghijklmnopqrstuvwxyz";
    const auto lead = static_cast<unsigned char>(letter[0]);
    if (letter.size() == 1) {
        if (lead >= 'A' && lead <= 'Z')
            return small.substr(lead - std::size_t{'A'}, 1);
        return (lead >= 'a' && lead <= 'z') || isDigit(letter[0]) ? letter : std::string_view(" ");
    }
    if (lead == 0xC2 || lead == 0xE2)
        return " ";
    return lead == 0xC3 ? plainLetters[static_cast<unsigned char>(letter[1]) - std::size_t{0x80}] : letter;
}

}

Result<PlainText> plainText(std::string_view bytes, const std::string& file) {
    if (bytes.size() > largestImport)
        return problem(TableFault::TooLarge, {largestImport / (1024 * 1024)}, {file, 0, {}});
    if (bytes.starts_with("\xEF\xBB\xBF"))
        bytes.remove_prefix(3);
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF"))
        return problem(TableFault::Utf16, {}, {file, 0, {}});
    if (bytes.find('\0') != std::string_view::npos)
        return problem(TableFault::NotText, {}, {file, 0, {}});
    if (isUtf8(bytes))
        return PlainText{std::string(bytes), false};
    return PlainText{fromWindows1252(bytes), true};
}

std::string folded(std::string_view utf8) {
    std::string result;
    while (!utf8.empty()) {
        const auto length = std::max<std::size_t>(sequenceLength(utf8), 1);
        const auto letter = foldedLetter(utf8.substr(0, length));
        utf8.remove_prefix(length);
        if (letter != " ")
            result += letter;
        else if (!result.empty() && result.back() != ' ')
            result += ' ';
    }
    if (!result.empty() && result.back() == ' ')
        result.pop_back();
    return result;
}

std::string_view trimmed(std::string_view utf8) {
    constexpr std::string_view blanks = " \t\r\n";
    constexpr std::string_view noBreak = "\xC2\xA0";
    for (auto before = utf8.size() + 1; before != utf8.size();) {
        before = utf8.size();
        while (!utf8.empty() && blanks.find(utf8.front()) != std::string_view::npos)
            utf8.remove_prefix(1);
        while (!utf8.empty() && blanks.find(utf8.back()) != std::string_view::npos)
            utf8.remove_suffix(1);
        if (utf8.starts_with(noBreak))
            utf8.remove_prefix(noBreak.size());
        if (utf8.ends_with(noBreak))
            utf8.remove_suffix(noBreak.size());
    }
    return utf8;
}

bool allDigits(std::string_view text) { return !text.empty() && std::all_of(text.begin(), text.end(), isDigit); }

}
