// SPDX-License-Identifier: GPL-3.0-or-later
/// What a place asks together is of one state of the record, whoever writes beside.
#include "acts/post.h"
#include "screen/desk/record_desk.h"
#include "test_class.h"

#include <QtTest>

namespace one_state_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

std::size_t entriesOf(Record& record) { return record.lines({}).value().size(); }

}

class OneStateTest : public QObject {
    Q_OBJECT
private slots:
    void whatAnotherWritesBetweenTwoQuestionsIsSeenByTheNextJob() {
        const QTemporaryDir folder;
        const auto file = folder.filePath("shed.crownring");
        RecordDesk desk(nullptr);
        desk.open(file, balloon);
        QTRY_VERIFY_WITH_TIMEOUT(desk.isOpen(), 30'000);
        const auto job = desk.ask([&](Record& record) {
            const auto before = entriesOf(record);
            const auto other = openRecord(file.toStdString(), OpenMode::Existing, WriterId("other")).value();
            const bool posted = postText(*other, *other, flight, "flight.jsonl").has_value();
            return std::tuple(before, posted, entriesOf(record));
        });
        QTRY_VERIFY_WITH_TIMEOUT(job.isFinished(), 30'000);
        QCOMPARE(job.result(), std::tuple(std::size_t{1}, true, std::size_t{1}));
        const auto next = desk.ask([](Record& record) {
            const auto before = entriesOf(record);
            const bool posted = postText(record, record, flight, "flight.jsonl").has_value();
            return std::tuple(before, posted, entriesOf(record));
        });
        QTRY_VERIFY_WITH_TIMEOUT(next.isFinished(), 30'000);
        QCOMPARE(next.result(), std::tuple(std::size_t{2}, true, std::size_t{3}));
    }
};

CROWNRING_TEST(OneStateTest, QCoreApplication)

}

#include "one_state_test.moc"
