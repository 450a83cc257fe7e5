// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/legible.h"

#include "text/shown.h"
#include "text/utf8.h"

#include <algorithm>
#include <array>
#include <span>
#include <utility>

namespace crownring {

namespace {

using Range = std::pair<char32_t, char32_t>;

bool isWithin(std::span<const Range> ranges, char32_t point) {
    return std::ranges::any_of(ranges,
                               [&](const Range& range) { return range.first <= point && point <= range.second; });
}

/// Unicode's general category Zs but for the plain space.
bool isOtherSpace(char32_t point) {
    static constexpr std::array<Range, 6> spaces{
        {{0xA0, 0xA0}, {0x1680, 0x1680}, {0x2000, 0x200A}, {0x202F, 0x202F}, {0x205F, 0x205F}, {0x3000, 0x3000}}};
    return isWithin(spaces, point);
}

bool takesNoRoom(char32_t point) {
    static constexpr std::array<Range, 9> ignored{{{0xAD, 0xAD},
                                                   {0x034F, 0x034F},
                                                   {0x115F, 0x1160},
                                                   {0x17B4, 0x17B5},
                                                   {0x180B, 0x180F},
                                                   {0x3164, 0x3164},
                                                   {0xFE00, 0xFE0F},
                                                   {0xFFA0, 0xFFA0},
                                                   {0xE0000, 0xE0FFF}}};
    return isWithin(ignored, point);
}

}

bool isLegible(std::string_view name) {
    if (name.empty() || name.front() == ' ' || name.back() == ' ')
        return false;
    while (!name.empty()) {
        const auto length = sequenceLength(name);
        if (length == 0)
            return false;
        const auto point = pointOf(name.substr(0, length));
        if (isHidden(point) || isOtherSpace(point) || takesNoRoom(point))
            return false;
        name.remove_prefix(length);
    }
    return true;
}

std::optional<HiddenCharacter> firstHidden(std::string_view text) {
    HiddenCharacter at;
    while (!text.empty()) {
        const auto length = sequenceLength(text);
        at.point = length == 0 ? char32_t{0xFFFD} : pointOf(text.substr(0, length));
        const bool isLayout = at.point == '\n' || at.point == '\t' || (at.point == '\r' && text.starts_with("\r\n"));
        if (length == 0 || (!isLayout && (isHidden(at.point) || takesNoRoom(at.point))))
            return at;
        ++at.place;
        if (at.point == '\n') {
            ++at.line;
            at.place = 1;
        }
        text.remove_prefix(length);
    }
    return std::nullopt;
}

}
