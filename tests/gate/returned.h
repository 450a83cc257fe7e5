// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A US annual that ended with a list of discrepancies on 2026-06-02, and what is said after it. Ines Holt may release
/// an annual, Kit Moor, a mechanic, may not, but approve the return to service. All of it is invented.

#include "acts/approve_return.h"
#include "acts/shop.h"
#include "problem/faults/release_fault.h"
#include "said.h"

#include <QtTest>

namespace crownring::testing {

class ListedShop : public Shop {
public:
    static Signing ines(Outcome outcome = Outcome::Discrepancies) {
        auto by = signing("Ines Holt", Capacity::InspectionAuthorization);
        by.outcome = outcome;
        return by;
    }
    /// A torn panel and, deferrable, a chafed tape are on the list.
    ListedShop& listed() {
        ready(Visit::UsAnnual);
        find("D-1", "barring");
        find("D-2", "minor");
        const auto signedList = sign(ines());
        QTEST_ASSERT(signedList.has_value());
        return *this;
    }
    Receipt cleared(const char* defect, const char* on, const char* more = "", const char* by = "Kit Moor") {
        return say(R"({"entry":"defect.cleared","item":"E1","what":"panel replaced","defect":")" + std::string(defect) +
                   R"(","by":")" + by + R"(","on":")" + on + '"' + more + "}");
    }
    [[nodiscard]] static Approving approving(const char* on, const char* person = "Ines Holt",
                                             Capacity capacity = Capacity::InspectionAuthorization) {
        return {PersonId(person), capacity, day(on)};
    }
    Results<Receipt> approve(const Approving& by, std::optional<TimeOfDay> time = {}) {
        return approveReturn(record(), record(), inspection, by, time);
    }
    [[nodiscard]] DueList dueOn(const char* on) const {
        return due(record(), {Registration("QE-ONE"), {}}, day(on)).value();
    }
    /// Of the row of that name on E1, where there is one.
    [[nodiscard]] std::optional<Assessment> state(const std::string& requirement, const char* on) const {
        const auto list = dueOn(on);
        for (const auto& row : list.rows)
            if (row.requirement->id.text() == requirement && row.item->id == ItemId("E1"))
                return row.state;
        return std::nullopt;
    }
    [[nodiscard]] std::string listName() const { return "list/" + inspection.text(); }
    [[nodiscard]] bool isGrounded(const char* on) const {
        const auto row = state(listName(), on);
        return row && row->standing == Standing::Lapsed;
    }
    /// From when the annual of E1 counts, by the record on that day.
    [[nodiscard]] std::optional<CivilDate> annualFrom(const char* on) const {
        const auto list = dueOn(on);
        for (const auto& row : list.rows)
            if (row.requirement->id == RequirementId("us.annual") && row.item->id == ItemId("E1"))
                for (const auto& limit : row.state.limits)
                    if (const auto* reach = limit.calendar())
                        return reach->last;
        return std::nullopt;
    }
    /// An approval as a shop's own system posts it, with what it accomplished.
    [[nodiscard]] std::string posted(const std::string& more = {}, const std::string& done = "us.annual") const {
        auto text = R"({"entry":"return.approved","on":"2026-06-20","by":"Ines Holt","signatory":"Ines Holt",)"
                    R"("capacity":"inspection-authorization","licence":"A&P 6, IA","statement":"The signature )"
                    R"(constitutes the approval for return to service only for the work performed.")" +
                    about() + more + "}";
        if (!done.empty())
            text += R"(
{"entry":"requirement.done","on":"2026-06-02","item":"E1","requirement":")" +
                    done + R"(","ref":")" + inspection.text() + "\"}";
        return text;
    }
};

/// Refused for that alone, in words.
inline void expectOnly(const std::vector<Problem>& problems, ReleaseFault fault) {
    QVERIFY(!problems.empty());
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    QCOMPARE(problems.size(), std::size_t{1});
}

}
