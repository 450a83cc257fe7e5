// SPDX-License-Identifier: GPL-3.0-or-later
/// That another program has written is noticed without asking for anything; what one wrote oneself is none of others.
#include "scratch.h"
#include "shared_database.h"
#include "test_class.h"

#include <QtTest>

namespace others_wrote_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":10})";
constexpr const char* laterFlight = R"({"entry":"flight.logged","on":"2024-02-02","balloon":"QE-ONE","minutes":10})";

}

class OthersWroteTest : public QObject {
    Q_OBJECT

    std::optional<Scratch> m_scratch;
    std::unique_ptr<Record> m_here;
    std::unique_ptr<Record> m_there;

    [[nodiscard]] bool wrote() { return m_here->othersWrote().value(); }

    /// A server tells it a moment later.
    [[nodiscard]] bool noticed() {
        return QTest::qWaitFor([&] { return wrote(); }, 30'000);
    }

private slots:
    void initTestCase_data() {
        QTest::addColumn<bool>("shared");
        QTest::newRow("a file") << false;
        if (!sharedLocation().empty())
            QTest::newRow("a server") << true;
    }
    void init() {
        QFETCH_GLOBAL(bool, shared);
        if (shared)
            emptyShared();
        else
            m_scratch.emplace();
        const auto opened = [&](const char* writer) {
            return shared ? openedShared(writer)
                          : openRecord(m_scratch->file(), OpenMode::OrCreate, WriterId(writer)).value();
        };
        m_here = opened("here");
        m_there = opened("there");
    }
    void cleanup() {
        m_here.reset();
        m_there.reset();
        m_scratch.reset();
    }

    void nobodyHasWrittenBeforeItIsAskedFirst() {
        posted(*m_there, balloon);
        QVERIFY(!wrote());
        QTest::qWait(50);
        QVERIFY(!wrote());
    }
    void whatAnotherWroteIsNoticedOnce() {
        QVERIFY(!wrote());
        posted(*m_there, balloon);
        QVERIFY(noticed());
        QTest::qWait(50);
        QVERIFY(!wrote());
        posted(*m_there, flight);
        QVERIFY(noticed());
    }
    void aNameThatNobodyKnowsIsAskedAndBothWriteOn() {
        posted(*m_here, balloon);
        QVERIFY(!m_here->facts({Registration("QE-TWO"), {}}, day("2024-02-01")));
        QVERIFY(!m_here->told({Subject::Defect, "none", {}, day("2024-02-01")}) ||
                m_here->told({Subject::Defect, "none", {}, day("2024-02-01")})->empty());
        posted(*m_there, flight);
        posted(*m_here, laterFlight);
        QCOMPARE(m_there->verify().value().entries, 3);
    }
    void whatOneWritesOneselfIsNone() {
        QVERIFY(!wrote());
        posted(*m_here, balloon);
        QTest::qWait(50);
        QVERIFY(!wrote());
    }
    void whatIsRefusedIsNone() {
        QVERIFY(!wrote());
        QVERIFY(!problemsOf(*m_there, flight).empty());
        QTest::qWait(50);
        QVERIFY(!wrote());
    }
    void askingBetweenTellsNothingNewButHidesNothing() {
        QVERIFY(!wrote());
        posted(*m_there, balloon);
        QCOMPARE(m_here->balloons(day("2024-06-01")).value().size(), std::size_t(1));
        QVERIFY(noticed());
    }
};

CROWNRING_TEST(OthersWroteTest, QCoreApplication)

}

#include "others_wrote_test.moc"
