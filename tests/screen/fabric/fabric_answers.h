// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the fabric desk tells, asked by the words of the question.

#include "screen/fabric/fabric_desk.h"

namespace crownring::screen {

/// Milliseconds that a fit may take, on a machine that does much besides.
inline constexpr int patience = 120'000;

inline QString answerTo(FabricDesk& desk, const QString& words) {
    for (const auto& row : desk.answers()->choices())
        if (row.label.contains(words))
            return row.detail;
    return {};
}

}
