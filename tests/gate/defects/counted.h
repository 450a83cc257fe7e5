// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A defect is put right, and what becomes of the visit that it was put right in: as entries.

#include "acts/shop.h"

#include <string>

namespace crownring::testing::counted {

inline std::string ended(const Shop& shop, const char* outcome) {
    return R"({"entry":"inspection.closed","on":"2026-06-02","outcome":")" + std::string(outcome) + '"' + shop.about() +
           "}";
}
inline std::string clearedBy(const char* person, const std::string& more = {}) {
    return R"({"entry":"defect.cleared","on":"2026-05-22","item":"E1","what":"sewn","defect":"D-1","by":")" +
           std::string(person) + '"' + more + "}";
}
inline std::string withdrawn(const Shop& shop) {
    return R"({"entry":"release.revoked","on":"2026-06-10","reason":"the gauge was broken","by":"Ada Rhos")" +
           shop.about() + "}";
}

inline const std::string reworked =
    R"({"entry":"work.performed","on":"2026-06-01","what":"vent line replaced","data":"Manual 77, 5-2","grade":"minor","item":"E1")";

}
