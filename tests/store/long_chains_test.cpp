// SPDX-License-Identifier: GPL-3.0-or-later

/// What a long history of corrections costs, by the work that is done: twice as many may ask twice as much. Time would
/// say as much about the machine.

#include "scratch.h"
#include "test_class.h"

#include <QtTest>

#include <atomic>
#include <cstdlib>
#include <new>

namespace {

std::atomic<std::int64_t> asked{0};

}

// Whatever is read, parsed, patched and written here asks for memory in proportion.
void* operator new(std::size_t size) {
    ++asked;
    if (auto* memory = std::malloc(size == 0 ? 1 : size))
        return memory;
    throw std::bad_alloc();
}
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
    ++asked;
    return std::malloc(size == 0 ? 1 : size);
}
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, const std::nothrow_t&) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr int many = 60;

std::string correctionOf(const std::string& target, int number, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2024-06-01","id":"c)" + std::to_string(1000 + number) +
           R"(","replaces":")" + target + R"(","with":)" + with + "}\n";
}

/// Each of the one before it.
std::string chain(int length) {
    auto lines = correctionOf("f1", 0, R"({"minutes":75})");
    for (int i = 1; i < length; ++i)
        lines += correctionOf("c" + std::to_string(999 + i), i, R"({"note":"slip )" + std::to_string(i) + R"("})");
    return lines;
}

/// Each voids the one before it.
std::string voids(int length) {
    std::string lines;
    for (int i = 0; i < length; ++i)
        lines += R"({"entry":"entry.voided","on":"2024-06-01","id":"v)" + std::to_string(1000 + i) + R"(","voids":")" +
                 (i == 0 ? "f1" : "v" + std::to_string(999 + i)) + R"(","reason":"a slip"})" + "\n";
    return lines;
}

/// All of one flight.
std::string heap(int length) {
    std::string lines;
    for (int i = 0; i < length; ++i)
        lines += correctionOf("f1", i, R"({"minutes":)" + std::to_string(61 + i) + "}");
    return lines;
}

std::int64_t minutesOn(Record& record) {
    return record.facts({{}, {ItemId("E1")}}, day("2024-12-31")).value().front().clock.minutes->value();
}

class Amended {
public:
    Amended() {
        posted(*m_scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"flight.logged","on":"2024-05-01","id":"f1","balloon":"QE-ONE","minutes":60})");
    }
    /// How often memory was asked for while this was posted.
    std::int64_t workOf(const std::string& lines) {
        const auto before = asked.load();
        posted(*m_scratch.record, lines);
        return asked.load() - before;
    }
    Record& record() { return *m_scratch.record; }

private:
    Scratch m_scratch;
};

}

class LongChainsTest : public QObject {
    Q_OBJECT

    template <class Lines>
    static void costsInProportion(Lines lines, std::int64_t minutes) {
        const auto few = Amended().workOf(lines(many));
        Amended amended;
        const auto twice = amended.workOf(lines(2 * many));
        QVERIFY2(twice < few * 5 / 2, qPrintable(QStringLiteral("%1 after %2").arg(twice).arg(few)));
        QCOMPARE(minutesOn(amended.record()), minutes);
        QVERIFY(amended.record().rebuild());
        QCOMPARE(minutesOn(amended.record()), minutes);
    }

private slots:
    void aChainOfCorrections() { costsInProportion(chain, 75); }
    void manyCorrectionsOfOneEntry() { costsInProportion(heap, 60 + 2 * many); }
    void aChainOfVoids() { costsInProportion(voids, 60); }
};

CROWNRING_TEST(LongChainsTest, QCoreApplication)
#include "long_chains_test.moc"
