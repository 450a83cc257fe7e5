// SPDX-License-Identifier: GPL-3.0-or-later
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* weak = R"("value":120)";
constexpr const char* weakToo = R"("value":125)";

std::string misread(const EntryId& reading) {
    return R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" + reading.text() +
           R"(","with":{"value":210}})";
}

std::string takenBack(const EntryId& reading) {
    return R"({"entry":"entry.voided","on":"2026-06-01","reason":"slipped in the jaws","voids":")" + reading.text() +
           "\"}";
}

}

/// What a reading beyond its limit found is put right before anybody says that it is cleared.
class PutRightTest : public QObject {
    Q_OBJECT

    std::unique_ptr<Shop> m_shop;
    EntryId m_reading;

    void expectRefused() {
        const auto before = m_shop->entries();
        const auto problems = problemsOf(m_shop->record(), m_shop->clearing("D-1"));
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY(spokenMessage(problems.front()).find("120 N") != std::string::npos);
        QCOMPARE(m_shop->entries(), before);
    }
    void expectCleared() { QVERIFY(problemsOf(m_shop->record(), m_shop->clearing("D-1")).empty()); }

private slots:
    void init() {
        m_shop = std::make_unique<Shop>();
        m_reading = m_shop->ready(Visit::PartMlInspection).pull(5, weak).ids.at(0);
        m_shop->find("D-1", "barring", m_reading);
        expectRefused();
    }
    void cleanup() { m_shop.reset(); }

    void aRepairForTheDefect() {
        m_shop->say(m_shop->repair("D-1"));
        expectCleared();
    }
    void aRepairThatCameBeforeTheReadingIsNone() {
        auto repair = m_shop->repair("D-1");
        repair.replace(repair.find("2026-06-01"), 10, "2026-05-31");
        repair.replace(repair.find(m_shop->about()), m_shop->about().size(), "");
        m_shop->say(repair);
        expectRefused();
    }
    void anotherReadingInThePlace() {
        m_shop->pull(6); // beside it says nothing
        expectRefused();
        m_shop->pull(5, weakToo); // beyond the limit as well
        expectRefused();
        m_shop->pull(5);
        expectCleared();
    }
    void aReadingThatWasMisread() {
        m_shop->say(misread(m_reading));
        expectCleared();
    }
    void aReadingThatWasTakenBack() {
        m_shop->say(takenBack(m_reading));
        expectCleared();
    }
};

CROWNRING_TEST(PutRightTest, QCoreApplication)
#include "put_right_test.moc"
