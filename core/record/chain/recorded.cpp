// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/chain/recorded.h"

namespace crownring {

namespace {

constexpr char behind = '/';

}

Recorded recordedFrom(std::string_view text) {
    const auto end = text.find(behind);
    if (end == std::string_view::npos)
        return {std::string(text), {}};
    return {std::string(text.substr(0, end)), std::string(text.substr(end + 1))};
}

std::string recordedAfter(std::string_view before, std::string_view now) {
    const auto last = recordedFrom(before).at;
    return last > now ? last + behind + std::string(now) : std::string(now);
}

}
