// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Two balloons whose burners have other valves, and ways to write directives about them. All of it is invented.

#include "store/scratch.h"

#include <string>

namespace crownring::testing {

inline constexpr const char* twoBurners =
    R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","type":"T-77","serial":"0150"}
{"entry":"item.entered","on":"2024-01-01","item":"E2","kind":"envelope","type":"T-77","serial":"A-201"}
{"entry":"item.entered","on":"2024-01-01","item":"R1","kind":"burner","type":"Twin B","serial":"9"}
{"entry":"item.entered","on":"2024-01-01","item":"R2","kind":"burner","type":"Twin B"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"C1","kind":"cylinder"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"R1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"C1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"E2"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"R2"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ole Berg","capacity":"pilot-owner","licence":"QE.BPL.2","balloons":["QE-ONE"]})";

/// @param rest what it says of force, deadlines and the like, with a comma in front
inline std::string issued(const std::string& number, const std::string& applies,
                          const std::string& rest = R"(,"first":{"before_flight":true})",
                          const std::string& effective = "2025-03-01", const std::string& revision = "0") {
    return R"({"entry":"directive.issued","on":"2025-02-01","directive":")" + number + R"(","revision":")" + revision +
           R"(","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":")" +
           effective + R"(","source":"invented for tests","applies":)" + applies + rest + "}";
}
/// Signed by who may.
inline std::string complied(const std::string& number, const std::string& item, const std::string& on,
                            const std::string& rest = "", const std::string& revision = "0") {
    return R"({"entry":"directive.answered","on":")" + on + R"(","by":"Ada Rhos","capacity":)" +
           R"("independent-certifying-staff","directive":")" + number + R"(","revision":")" + revision +
           R"(","item":")" + item + R"(","answer":"done","method":"paragraph 1")" + rest + "}";
}
inline std::string excused(const std::string& number, const std::string& item, const std::string& on) {
    return R"({"entry":"directive.answered","on":")" + on +
           R"(","by":"Ada Rhos","capacity":"independent-certifying-staff","directive":")" + number +
           R"(","revision":"0","item":")" + item + R"(","answer":"not-applicable","why":"seen: another valve"})";
}
/// A list of parts with one valve, and no other parts.
inline std::string valveIn(const std::string& item, const std::string& type, const std::string& serial,
                           const std::string& on = "2024-01-01") {
    return R"({"entry":"parts.listed","on":")" + on + R"(","item":")" + item + R"(","whole":true,"parts":[{"part":)" +
           R"("pilot-valve","whole":true,"type":")" + type + R"(","serial":")" + serial + R"("}]})";
}
inline constexpr const char* burnersWithValve =
    R"({"kinds":["burner"],"fitted":[{"part":"pilot-valve","in":"burner","types":["X-2"]}]})";
inline constexpr const char* envelopesWithValve =
    R"({"kinds":["envelope"],"fitted":[{"part":"pilot-valve","in":"burner","types":["X-2"]}]})";

}
