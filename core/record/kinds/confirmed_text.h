// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who had confirmed the wording that was signed, as the signature carries it: whoever reads the paper in ten years
/// need not look for it.

#include "civil/civil_date.h"
#include "measure/name.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>
#include <vector>

namespace crownring {

class ObjectReader;

/// One text or one checklist.
struct ConfirmedText {
    std::optional<TextId> text;
    std::optional<ChecklistId> checklist;
    std::string revision;
    std::string digest; ///< of what was confirmed: 64 hex digits
    PersonId by;
    std::string licence;
    CivilDate on;
    std::string against; ///< which rule, as amended when
    bool operator==(const ConfirmedText&) const = default;
};

/// Key "confirmed"; absent: none. Inside the record room only.
[[nodiscard]] std::vector<ConfirmedText> readConfirmed(ObjectReader& reader);
void writeConfirmed(nlohmann::json& into, const std::vector<ConfirmedText>& confirmed);

/// Keys "text" and "checklist", of which one must be there.
void readWhich(ObjectReader& reader, std::optional<TextId>& text, std::optional<ChecklistId>& checklist);

}
