// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A defect is found, graded down, taken out: as entries.

#include "record/entry.h"

#include <string>

namespace crownring::testing::gradings {

inline std::string found(const char* severity, const char* by = "Ole Berg") {
    return R"({"entry":"defect.found","on":"2026-05-20","item":"E1","what":"a torn panel","defect":"D-1","severity":")" +
           std::string(severity) + R"(","by":")" + by + R"("})";
}

inline std::string graded(const EntryId& id, const char* severity, const std::string& by,
                          const std::string& note = "below the limit of the manual") {
    return R"({"entry":"entry.corrected","on":"2026-05-21","by":")" + by + R"(","note":")" + note +
           R"(","replaces":")" + id.text() + R"(","with":{"severity":")" + severity + R"(","graded_by":")" + by +
           R"("}})";
}

inline std::string taken(const EntryId& id, const std::string& by) {
    return R"({"entry":"entry.voided","on":"2026-05-21","reason":"it was another envelope","by":")" + by +
           R"(","voids":")" + id.text() + R"("})";
}

inline std::string voidedOn(const char* on, const EntryId& id, const char* reason, const char* by = "") {
    return R"({"entry":"entry.voided","on":")" + std::string(on) + R"(","reason":")" + reason + R"(","voids":")" +
           id.text() + '"' + (*by ? R"(,"by":")" + std::string(by) + '"' : std::string()) + "}";
}

inline std::string moved(const EntryId& id) {
    return R"({"entry":"entry.corrected","on":"2026-05-21","replaces":")" + id.text() + R"(","with":{"item":"B1"}})";
}
inline const std::string gradedByAda = R"(,"graded_by":"Ada Rhos")";
inline const std::string with = R"("with":{)";
inline const std::string withReason = R"("with":{"note":"below the limit of the manual",)";
/// Others write, too.
inline const std::string meanwhile =
    R"({"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"})";
inline constexpr const char* underAdd = R"(["for-hire"])";

}
