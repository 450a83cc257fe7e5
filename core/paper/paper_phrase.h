// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Words that papers need whatever stands on them.

#include "problem/argument.h"

namespace crownring {

enum class PaperPhrase : std::uint8_t {
    Record,
    Gore,
    Row,
    Reading,
    Verdict,
    Passed,
    Failed,
    Line,
    Source,
    Mark,
    Finding,
    By,
    Open,
    Done,
    NotApplicable,
    Number,
    Items,
};

}
