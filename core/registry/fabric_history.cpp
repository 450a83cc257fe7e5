// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/fabric_history.h"

#include <algorithm>

namespace crownring {

bool answers(const Stamped<RepairMade>& repair, const Stamped<ReadingTaken>& reading,
             const std::vector<DefectMark>& defects) {
    return repair.body.defect && repair.stamp.at.on() == reading.stamp.at.on() &&
           std::ranges::any_of(defects, [&](const DefectMark& mark) {
               return mark.defect == *repair.body.defect && mark.failed == reading.stamp.id;
           });
}

}
