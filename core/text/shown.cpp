// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/shown.h"

#include "text/utf8.h"

namespace crownring {

namespace {

constexpr std::string_view digits = "0123456789ABCDEF";

bool isLineEndOrTab(char32_t point) { return point == U'\n' || point == U'\t' || point == U'\r'; }

void appendHex(std::string& to, char32_t value, int width) {
    for (int shift = 4 * (width - 1); shift >= 0; shift -= 4)
        to += digits[value >> shift & 0xF];
}

/// Goes over the text; `show` is given each code point that is hidden, `bad` each byte that is no UTF-8.
template <class Show, class Bad>
std::string rewritten(std::string_view text, const Show& show, const Bad& bad) {
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const auto length = sequenceLength(text);
        if (length == 0) {
            bad(out, static_cast<unsigned char>(text.front()));
            text.remove_prefix(1);
            continue;
        }
        const auto sequence = text.substr(0, length);
        const auto point = pointOf(sequence);
        if (!isHidden(point) || !show(out, point))
            out += sequence;
        text.remove_prefix(length);
    }
    return out;
}

std::string visible(std::string_view text, bool oneLine) {
    return rewritten(
        text,
        [&](std::string& out, char32_t point) {
            if (!oneLine && isLineEndOrTab(point))
                return false;
            out += "<U+";
            appendHex(out, point, 4);
            out += '>';
            return true;
        },
        [](std::string& out, unsigned char byte) {
            out += "<byte ";
            appendHex(out, byte, 2);
            out += '>';
        });
}

}

bool isHidden(char32_t point) {
    const auto within = [&](char32_t first, char32_t last) { return point >= first && point <= last; };
    return point < 0x20 || within(0x7F, 0x9F) || point == 0x061C || within(0x200B, 0x200F) || within(0x2028, 0x202E) ||
           within(0x2060, 0x2069) || point == 0xFEFF;
}

std::string shown(std::string_view text) { return visible(text, false); }

std::string shownOnOneLine(std::string_view text) { return visible(text, true); }

std::string escapedJson(std::string_view serialised) {
    return rewritten(
        serialised,
        [](std::string& out, char32_t point) {
            if (isLineEndOrTab(point))
                return false; // between values: inside a text the serialiser has escaped it
            out += "\\u";
            appendHex(out, point, 4);
            return true;
        },
        [](std::string& out, unsigned char byte) { out += static_cast<char>(byte); });
}

}
