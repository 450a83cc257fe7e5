// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "screen/demo_house.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

using namespace crownring;
using namespace crownring::screen;

class EntryFormTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<DemoHouse> m_demo;

    static int rowOf(EntryForm& form, std::string_view key) {
        const auto& fields = form.fields()->fields();
        for (std::size_t at = 0; at < fields.size(); ++at)
            if (fields[at].key == key)
                return static_cast<int>(at);
        return -1;
    }
    static void set(EntryForm& form, std::string_view key, const char* value) {
        form.setValue(rowOf(form, key), QString::fromUtf8(value));
    }
    static QString problemAt(EntryForm& form, std::string_view key) {
        return form.fields()->fields()[static_cast<std::size_t>(rowOf(form, key))].problem;
    }
    bool save(EntryForm& form) {
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        return QTest::qWaitFor([&] { return !saved.isEmpty(); }, 10'000) && m_demo->settled();
    }
    [[nodiscard]] std::int64_t minutesOf(const char* item) const {
        const auto* facts = m_demo->house.fleet.sheet()->item(ItemId(item));
        return facts && facts->clock.minutes ? facts->clock.minutes->value() : -1;
    }
    /// A balloon B-ONE with an envelope E-1 that came with 100:00 h.
    void rigOne() {
        In<EntryForm> form(m_demo->house);
        form.begin(QStringLiteral("balloon.entered"));
        set(form, "balloon", "B-ONE");
        set(form, "on", "2026-01-01");
        QVERIFY(save(form));
        form.begin(QStringLiteral("item.entered"));
        set(form, "item", "E-1");
        set(form, "kind", "envelope");
        set(form, "brought_forward.minutes", "100:00");
        set(form, "on", "2026-01-01");
        QVERIFY(save(form));
        form.begin(QStringLiteral("item.fitted"), QStringLiteral("B-ONE"), QStringLiteral("E-1"));
        set(form, "on", "2026-01-01");
        QVERIFY(save(form));
    }

private slots:
    void init() {
        m_demo = std::make_unique<DemoHouse>(DemoHouse::Filled::Empty);
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
        rigOne();
    }
    void cleanup() { m_demo.reset(); }

    void aFlightMovesTheClockOfWhatIsFitted() {
        QCOMPARE(minutesOf("E-1"), 6000);
        In<EntryForm> form(m_demo->house);
        QAbstractItemModelTester tester(form.fields(), QAbstractItemModelTester::FailureReportingMode::Fatal);
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        set(form, "minutes", "1:05");
        QVERIFY(save(form));
        QVERIFY(!form.isOpen());
        QCOMPARE(minutesOf("E-1"), 6065);
    }

    void undoTakesItBackAndTheRecordKeepsBoth() {
        In<EntryForm> form(m_demo->house);
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        set(form, "minutes", "65 min");
        QVERIFY(save(form));
        QVERIFY(m_demo->house.notice.undoable());
        m_demo->house.notice.undo();
        QTRY_COMPARE_WITH_TIMEOUT(minutesOf("E-1"), 6000, 30'000);
    }

    void anOpenDefectIsClearedFromItsRow() {
        auto posted = m_demo->house.desk.ask([](Record& record) {
            return postText(record, record,
                            R"({"entry":"defect.found","on":"2026-11-20","defect":"D 1","item":"E-1",)"
                            R"("what":"torn","severity":"barring"})",
                            {});
        });
        posted.waitForFinished();
        QVERIFY(posted.result().has_value());
        m_demo->house.desk.written();
        QVERIFY(m_demo->settled());
        const auto* row = m_demo->house.fleet.sheet()->worstOf(ItemId("E-1"));
        QVERIFY(row != nullptr && row->state.standing == Standing::Lapsed);
        In<EntryForm> form(m_demo->house);
        form.begin(QStringLiteral("defect.cleared"), QStringLiteral("B-ONE"), QStringLiteral("E-1"),
                   QString::fromStdString(row->requirement->id.text()));
        set(form, "what", "sewn");
        QVERIFY(save(form));
        QVERIFY(m_demo->house.fleet.sheet()->worstOf(ItemId("E-1")) == nullptr);
    }

    void wrongFieldsSayWhatIsWrongAndNothingIsWritten() {
        In<EntryForm> form(m_demo->house);
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        form.save();
        QCOMPARE(problemAt(form, "minutes"), QStringLiteral("This is needed."));
        set(form, "minutes", "soon");
        set(form, "on", "2026-02-30");
        form.save();
        QVERIFY(!problemAt(form, "minutes").isEmpty());
        QVERIFY(!problemAt(form, "on").isEmpty());
        QVERIFY(form.isOpen());
        QCOMPARE(minutesOf("E-1"), 6000);
    }

    void whatWasUnderstoodIsShown() {
        In<EntryForm> form(m_demo->house);
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        set(form, "minutes", "1,5 h");
        QCOMPARE(form.fields()->fields()[static_cast<std::size_t>(rowOf(form, "minutes"))].understood(),
                 QStringLiteral("1:30\u00a0h"));
    }

    void aCorrectionChangesOnlyWhatWasChanged() {
        In<EntryForm> form(m_demo->house);
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        set(form, "minutes", "1:05");
        set(form, "note", "over the lake");
        QVERIFY(save(form));
        std::optional<JournalLine> flight;
        hear(m_demo->house.desk.ask([](Record& record) {
            return record.lines({.text = {}, .kind = "flight.logged", .before = {}, .limit = 1});
        }),
             this, [&](const Result<std::vector<JournalLine>>& lines) { flight = lines->front(); });
        QTRY_VERIFY_WITH_TIMEOUT(flight.has_value(), 30'000);
        form.correct(QString::fromStdString(flight->entry.id.text()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 30'000);
        QCOMPARE(form.fields()->value("minutes"), QStringLiteral("1:05"));
        QCOMPARE(form.fields()->value("note"), QStringLiteral("over the lake"));
        form.save();
        QCOMPARE(form.problem(), QStringLiteral("Nothing was changed."));
        set(form, "minutes", "1:15");
        QVERIFY(save(form));
        QCOMPARE(minutesOf("E-1"), 6075);
        std::optional<JournalLine> correction;
        hear(m_demo->house.desk.ask([](Record& record) {
            return record.lines({.text = {}, .kind = "entry.corrected", .before = {}, .limit = 1});
        }),
             this, [&](const Result<std::vector<JournalLine>>& lines) { correction = lines->front(); });
        QTRY_VERIFY_WITH_TIMEOUT(correction.has_value(), 30'000);
        QCOMPARE(QString::fromStdString(std::get<EntryCorrected>(correction->entry.body).with),
                 QStringLiteral("{\"minutes\":75}"));
    }

    void aProgrammeFromTheShelfBindsFromItsDay() {
        In<EntryForm> form(m_demo->house);
        form.adopt(QStringLiteral("part-ml-hot-air"));
        form.toggle(rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY2(save(form), qPrintable(form.problem()));
        const auto& sheet = m_demo->house.fleet.sheet();
        QVERIFY(!sheet->rows().empty());
        QCOMPARE(sheet->headlineOf(Registration("B-ONE")).row->state.standing,
                 Standing::Unproven); // nothing was ever done: never clear
    }

    void doneIsOfferedOnlyWhatBindsTheItem() {
        In<EntryForm> form(m_demo->house);
        form.adopt(QStringLiteral("part-ml-hot-air"));
        form.toggle(rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY(save(form));
        form.begin(QStringLiteral("requirement.done"), QStringLiteral("B-ONE"), QStringLiteral("E-1"),
                   QStringLiteral("ml.inspection"));
        const auto& field = form.fields()->fields()[static_cast<std::size_t>(rowOf(form, "requirement"))];
        QVERIFY(!field.choices.empty());
        set(form, "ref", "JC 7");
        QVERIFY2(save(form), qPrintable(form.problem()));
        bool found = false;
        for (const auto& row : m_demo->house.fleet.sheet()->rows())
            if (row.requirement->id.text() == "ml.inspection" && row.item->id.text() == "E-1") {
                found = true;
                QCOMPARE(row.state.standing, Standing::Clear);
            }
        QVERIFY(found);
    }
};

CROWNRING_TEST(EntryFormTest, QCoreApplication)
#include "entry_form_test.moc"
