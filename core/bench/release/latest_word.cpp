// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/latest_word.h"

#include "bench/reading/verdict.h"

namespace crownring {

bool takesThePlaceOf(const TypeDescribed& later, const TypeDescribed& earlier) {
    return later.type == earlier.type && later.kind == earlier.kind;
}

bool takesThePlaceOf(const LimitStated& later, const LimitStated& earlier) {
    return later.type == earlier.type && later.kind == earlier.kind && later.zone == earlier.zone &&
           later.conditions.direction == earlier.conditions.direction &&
           seriesOf(later.quantity, later.conditions) == seriesOf(earlier.quantity, earlier.conditions) &&
           limitFrom(later).has_value();
}

bool takesThePlaceOf(const ChecklistAdopted& later, const ChecklistAdopted& earlier) {
    return later.checklist == earlier.checklist;
}

bool takesThePlaceOf(const PersonEntitled& later, const PersonEntitled& earlier) {
    return later.person == earlier.person && later.capacity == earlier.capacity && later.balloons == earlier.balloons &&
           (!later.until || (earlier.until && *later.until >= *earlier.until));
}

bool takesThePlaceOf(const TesterCalibrated& later, const TesterCalibrated& earlier) {
    return later.tester == earlier.tester && later.until >= earlier.until;
}

}
