// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A directive about an envelope, and attempts to answer it.

#include "acts/shop.h"
#include "answers/due.h"
#include "said.h"

#include <QtTest>

namespace directives_gate_test {

using namespace crownring;
using namespace crownring::testing;

inline const std::string directive =
    R"({"entry":"directive.issued","on":"2026-05-01","id":"ad","by":"Sam Help","directive":"AD-1","revision":"0","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2026-05-20","source":"invented for tests","applies":{"kinds":["envelope"]},"first":{"before_flight":true},"repeat":{"months":6}})";

inline std::string answered(const std::string& rest, const std::string& on = "2026-05-25") {
    return R"({"entry":"directive.answered","directive":"AD-1","revision":"0","on":")" + on + "\"," + rest + "}";
}
inline std::string done(const std::string& rest) {
    return R"("item":"E1","answer":"done","method":"paragraph 1")" + (rest.empty() ? rest : "," + rest);
}

inline std::string allCarriedOut(const Shop& shop) {
    return R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","line":"papers.directives","state":"done")" +
           shop.about() + "}";
}
inline std::string answeredInVisit(const Shop& shop) {
    return R"({"entry":"directive.answered","directive":"AD-1","revision":"0","on":"2026-06-01","by":"Ada Rhos",)"
           R"("item":"E1","answer":"done","method":"paragraph 1")" +
           shop.about() + "}";
}
inline std::string correctedToDone(const EntryId& line) {
    return R"({"entry":"entry.corrected","on":"2026-06-01","by":"Ada Rhos","note":"done",)"
           R"("with":{"state":"done","why":null,"page":null},"replaces":")" +
           line.text() + "\"}";
}
inline std::string dueInDecember() {
    auto later = directive;
    const std::string first = R"({"before_flight":true})";
    return later.replace(later.find(first), first.size(), R"({"by":"2026-12-31"})");
}

struct Bound {
    Shop shop;
    Bound() { shop.say(directive); }
    [[nodiscard]] Standing standing(const char* on = "2026-06-01") const {
        const auto list = due(shop.record(), {std::nullopt, {ItemId("E1")}}, day(on));
        for (const auto& row : list.value().rows)
            if (directiveOf(row.requirement->id))
                return row.state.standing;
        return Standing::Closed;
    }
};

template <class Refused>
void refused(const std::string& entry, Refused fault) {
    Bound record;
    const auto problems = problemsOf(record.shop.record(), entry);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

inline void taken(const std::string& entry) {
    Bound record;
    const auto problems = problemsOf(record.shop.record(), entry);
    QVERIFY2(problems.empty(), problems.empty() ? "" : qPrintable(words::line(problems.front())));
}

}
