// SPDX-License-Identifier: GPL-3.0-or-later

/// Random orders of what two hands say of visits, never through the acts of the program: whatever a signature may not
/// state is refused, and what it may state is taken word for word as the model makes it.

#include "signature_walk.h"
#include "test_class.h"

#include <QtTest>

namespace signature_model_test {

class SignatureModelTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        const auto set = qgetenv("RC_PARAMS");
        if (!set.contains("max_success")) // a walk is seventy transactions
            qputenv("RC_PARAMS", set + " max_success=15");
    }
    void noOrderOfWordsStatesMoreThanWasDone() {
        Counts counts;
        const int asked = qEnvironmentVariableIntValue("CROWNRING_STEPS");
        const int steps = asked > 0 ? asked : 70;
        QVERIFY(rc::check([&] {
            Walk walk(counts);
            for (int i = 0; i < steps; ++i)
                walk.step();
            walk.compareStandings();
        }));
        QString reasons;
        for (const auto& [reason, times] : counts.refused)
            reasons += QStringLiteral(" %1 %2,").arg(QString::fromStdString(reason)).arg(times);
        qInfo("released %d, listed %d, approved %d, once more %d, withdrawn %d, no longer supported %d; refused:%s",
              counts.released, counts.listed, counts.approved, counts.again, counts.revoked, counts.unsupported,
              qPrintable(reasons));
        QVERIFY(counts.released > 0 && counts.listed > 0 && counts.revoked > 0 && counts.unsupported > 0);
        QVERIFY(counts.approved > 0);
        for (const char* reason : {"line open",
                                   "no reason",
                                   "too few",
                                   "tester",
                                   "fails",
                                   "grounding",
                                   "defect",
                                   "person",
                                   "other text",
                                   "word behind",
                                   "wording",
                                   "checklist",
                                   "not accomplished",
                                   "exception left out",
                                   "stands",
                                   "approver",
                                   "left out",
                                   "never done",
                                   "unproven",
                                   "other key",
                                   "other purpose",
                                   "altered",
                                   "proof of no code"})
            QVERIFY2(counts.refused[reason] > 0, reason);
        QCOMPARE(counts.needless, 0);
    }
};

CROWNRING_TEST(SignatureModelTest, QCoreApplication)

}

#include "signature_model_test.moc"
