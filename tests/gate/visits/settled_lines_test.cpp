// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace settled_lines_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }
std::string settled(const Shop& shop, const std::string& line) {
    return R"({"entry":"line.settled","on":"2026-06-01","item":"E1","state":"done","line":)" + quoted(line) +
           shop.about() + "}";
}

std::string correctedLine(const EntryId& id) {
    return R"({"entry":"entry.corrected","on":"2026-06-01","with":{"line":"no-such"},"replaces":)" + quoted(id.text()) +
           "}";
}

}

/// A line is one of the checklist that the inspection was opened with (02: "each of its lines done").
class SettledLinesTest : public QObject {
    Q_OBJECT
private slots:
    void aLineThatTheListDoesNotHaveIsRefusedWithTheNearest() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        const auto first = shop.now().checklist.lines.front().id;
        const auto problems = problemsOf(shop.record(), settled(shop, first + "x"));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReleaseFault::NoSuchLine));
        QCOMPARE(problems.front().where.key, std::string("line"));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY(spokenMend(problems.front()).find("'" + first + "'") != std::string::npos);
    }
    void norIsOneCorrectedIntoIt() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        const auto first = shop.now().checklist.lines.front().id;
        const auto id = shop.say(settled(shop, first)).ids.front();
        const auto problems = problemsOf(shop.record(), correctedLine(id));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReleaseFault::NoSuchLine));
    }
};

CROWNRING_TEST(SettledLinesTest, QCoreApplication)

}

#include "settled_lines_test.moc"
