// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a test expects of an attempt to sign.

#include "acts/shop.h"
#include "said.h"

#include <QtTest>

namespace crownring::testing {

/// It is refused for this alone, signing writes nothing and says why, and the record's own gate agrees.
inline void expectRefused(Shop& shop, const Signing& by, const QString& kind, const char* rule) {
    const auto refusals = shop.draft(by).refusals;
    QCOMPARE(shop.refused(by).join(QLatin1Char(' ')), kind);
    for (const auto& refusal : refusals) {
        QVERIFY2(refusal.rule.find(rule) != std::string::npos, refusal.rule.c_str());
        QVERIFY2(isSentence(words::message(refusal)) && isSentence(words::mend(refusal)),
                 qPrintable(words::message(refusal)));
    }
    const auto before = shop.entries();
    const auto answer = shop.sign(by);
    QVERIFY(!answer);
    QCOMPARE(answer.error().size(), refusals.size());
    for (const auto& problem : answer.error())
        QCOMPARE(problem.code(), Code::NotReleasable);
    QCOMPARE(shop.entries(), before);
    QVERIFY(shop.now().isOpen());
}

/// Nothing stands in the way, and it can be signed.
inline void expectReleased(Shop& shop, const Signing& by) {
    QCOMPARE(shop.refused(by).join(QLatin1Char(' ')), QString());
    const auto answer = shop.sign(by);
    QVERIFY2(answer, answer ? "" : text(answer.error().front()).c_str());
    QVERIFY(!shop.now().isOpen());
}

}
