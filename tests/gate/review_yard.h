// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A balloon, and what is said of its airworthiness reviews, as entries.

#include "acts/confirmed_wording.h"
#include "answers/due.h"
#include "answers/review/reviews.h"
#include "problem/faults/review_fault.h"
#include "said.h"
#include "store/scratch.h"

#include <stdexcept>
#include <string>
#include <vector>

namespace crownring::testing::reviews {

/// A balloon under Part-ML with everything inspected in 2025; who may review it. All of it is invented.
inline std::string yard(const std::string& operations = "[]") {
    std::string text =
        R"({"entry":"balloon.entered","on":"2020-01-01","balloon":"QE-ONE","operations":)" + operations + "}\n";
    for (const std::string item : {R"("E1","kind":"envelope")", R"("B1","kind":"basket")", R"("R1","kind":"burner")",
                                   R"("C1","kind":"cylinder")"})
        text += R"({"entry":"item.entered","on":"2020-01-01","item":)" + item + "}\n";
    for (const std::string item : {"E1", "B1", "R1", "C1"})
        text += R"({"entry":"item.fitted","on":"2020-01-01","balloon":"QE-ONE","item":")" + item +
                R"("})"
                "\n" +
                R"({"entry":"requirement.done","on":"2025-01-20","requirement":"ml.inspection","item":")" + item +
                R"(","ref":"WO 1","signatory":"Odo Vale","licence":"QE.66.7"})" + "\n";
    return text +
           R"({"entry":"programme.adopted","on":"2020-01-01","programme":"part-ml-hot-air","balloons":["QE-ONE"]}
{"entry":"person.entitled","on":"2024-06-01","person":"Cai Mo","capacity":"airworthiness-review-staff","licence":"ARS 3","organisation":"Lakeside","approval":"QE.CAO.0031"}
{"entry":"person.entitled","on":"2024-06-01","person":"Nia Sol","capacity":"review-authorisation","licence":"ARA 9"}
{"entry":"person.entitled","on":"2020-06-01","person":"Nia Sol","capacity":"independent-certifying-staff","licence":"QE.66.9"}
{"entry":"person.entitled","on":"2020-06-01","person":"Ole Berg","capacity":"pilot-owner","licence":"BPL 4"}
)" + adoptedAsShipped("2024-06-01") +
           confirmedBy("Cai Mo", Capacity::AirworthinessReviewStaff, "2024-06-02", "ARS 3, Lakeside, QE.CAO.0031") +
           confirmedBy("Nia Sol", Capacity::IndependentCertifyingStaff, "2024-06-02", "QE.66.9");
}

/// From its paper.
inline std::string before(const char* on, const char* printed) {
    return R"({"entry":"requirement.done","item":"E1","requirement":"ml.arc-review","ref":"ARC 1","signatory":"Odo Vale","licence":"QE.CAO.0031","on":")" +
           std::string(on) + R"(","expires":")" + printed + R"("})";
}

inline std::string signedBy(
    const char* on, const char* printed, const char* act = "review",
    const std::string& more =
        R"(,"reviewer":"Cai Mo","capacity":"airworthiness-review-staff","authorisation":"ARS 3, Lakeside, QE.CAO.0031")") {
    return R"({"entry":"review.signed","balloon":"QE-ONE","item":"E1","form":"EASA Form 15c","certificate":"ARC 2","act":")" +
           std::string(act) + R"(","on":")" + on + R"(","expires":")" + printed + R"(")" + more + "}";
}

inline QString dueOf(Record& record, const char* on) {
    const auto list = due(record, {}, day(on)).value();
    for (const auto& row : list.rows)
        if (row.requirement->id == RequirementId("ml.arc-review") && row.state.limits.at(0).calendar())
            return QString::fromStdString(row.state.limits.at(0).calendar()->due.iso());
    return {};
}

inline std::vector<ReviewFault> faultsOf(Record& record, const std::string& lines) {
    std::vector<ReviewFault> faults;
    for (const auto& each : problemsOf(record, lines)) {
        if (!isSaid(each))
            throw std::runtime_error(words::line(each).toStdString());
        faults.push_back(std::get<ReviewFault>(each.fault));
    }
    return faults;
}

/// Only said, on that day.
inline std::string statedOn(const char* on, const char* item = "E1", const char* requirement = "ml.arc-review") {
    return R"({"entry":"requirement.done","on":")" + std::string(on) + R"(","item":")" + item + R"(","requirement":")" +
           requirement + R"("})";
}
inline std::string extendedOn(const char* on) {
    return R"({"entry":"requirement.done","item":"E1","requirement":"ml.arc-extension","ref":"ARC 1","signatory":"Cai Mo","licence":"ARS 3","on":")" +
           std::string(on) + R"("})";
}
inline std::string under(const char* person, const char* capacity, const char* authorisation) {
    return R"(,"reviewer":")" + std::string(person) + R"(","capacity":")" + capacity + R"(","authorisation":")" +
           authorisation + R"(")";
}
inline std::string corrected(const std::string& id, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2025-06-02","by":"Cai Mo","replaces":")" + id + R"(","with":)" + with +
           "}";
}
inline std::string taken(const std::string& id, const std::string& by) {
    return R"({"entry":"entry.voided","on":"2025-06-03","reason":"printed anew","voids":")" + id + R"(")" + by + "}";
}
inline const std::string tornWire =
    R"({"entry":"defect.found","on":"2025-05-01","item":"B1","what":"a broken wire","defect":"D-1","severity":"deferrable"})";
inline const std::string wireReplaced =
    R"({"entry":"defect.cleared","on":"2025-05-02","by":"Nia Sol","item":"B1","what":"replaced","defect":"D-1"})";
inline const std::string envelopeRemoved =
    R"({"entry":"item.removed","on":"2025-05-01","balloon":"QE-ONE","item":"E1"})";
inline const std::string adoption =
    R"({"entry":"programme.adopted","on":"2020-01-01","programme":"part-ml-hot-air","balloons":["QE-ONE"]})";
inline const std::string printedExpiry = R"(,"expires":"2026-06-01")";
inline const std::string byCai = R"(,"by":"Cai Mo")";
inline const std::string laterExpiry = R"({"expires":"2026-06-02"})";
inline const std::string laterDay = R"({"on":"2025-06-03"})";
inline const std::string furtherFinding = R"({"findings":"a placard was faded"})";

}
