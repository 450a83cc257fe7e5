// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Takes the entries of the bench from JSON. Inside the record room only.

#include "record/entry.h"
#include "record/json/object_reader.h"

namespace crownring {

[[nodiscard]] ReadingTaken readReading(ObjectReader& reader);
[[nodiscard]] InspectionOpened readInspectionOpened(ObjectReader& reader);
[[nodiscard]] LineSettled readLineSettled(ObjectReader& reader);
[[nodiscard]] DefectFound readDefectFound(ObjectReader& reader);
[[nodiscard]] DefectDeferred readDefectDeferred(ObjectReader& reader);
[[nodiscard]] DefectCleared readDefectCleared(ObjectReader& reader);
[[nodiscard]] RepairMade readRepairMade(ObjectReader& reader);
[[nodiscard]] PartReplaced readPartReplaced(ObjectReader& reader);
[[nodiscard]] InspectionClosed readInspectionClosed(ObjectReader& reader);
[[nodiscard]] PersonEntitled readPersonEntitled(ObjectReader& reader);
[[nodiscard]] TesterCalibrated readTesterCalibrated(ObjectReader& reader);
[[nodiscard]] TypeDescribed readTypeDescribed(ObjectReader& reader);
[[nodiscard]] LimitStated readLimitStated(ObjectReader& reader);
[[nodiscard]] FabricStated readFabricStated(ObjectReader& reader);
[[nodiscard]] ChecklistAdopted readChecklistAdopted(ObjectReader& reader);

}
