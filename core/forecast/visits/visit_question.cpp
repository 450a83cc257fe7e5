// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/visit_question.h"

#include <algorithm>

namespace crownring {

namespace {

bool keepsPattern(const VisitTask::Due& due, int week) {
    return due.keeps && due.keepsFrom <= week && week <= due.latest;
}

}

std::size_t VisitTask::next(std::size_t due, int week) const {
    return keepsPattern(dues[due], week) ? *dues[due].keeps : after[static_cast<std::size_t>(week)].due;
}

double VisitTask::wasted(std::size_t due, int week) const {
    if (keepsPattern(dues[due], week))
        return 0;
    const double bought = after[static_cast<std::size_t>(week)].life - dues[due].life;
    return std::clamp(1 - bought, 0.0, 1.0);
}

}
