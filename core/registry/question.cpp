// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/question.h"

#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, questionKindCount> questionNames = {
    "fitted-elsewhere", "fitted-again",    "removed-not-fitted",   "clock-backward",
    "clock-differs",    "entered-twice",   "not-entered",          "correction-idle",
    "unreadable",       "only-stated",     "flown-out-of-service", "happened-out-of-service",
    "two-states",       "code-by-another", "filled-out-of-service"};

}

std::string_view questionName(Question::Kind kind) { return questionNames[static_cast<std::size_t>(kind)]; }

}
