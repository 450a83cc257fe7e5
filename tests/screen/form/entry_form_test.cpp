// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "screen/form/form_hand.h"
#include "test_class.h"

#include <QAbstractItemModelTester>

namespace entry_form_test {

using namespace crownring;
using namespace crownring::screen;

class EntryFormTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<FormHand> m_hand;

    /// What the latest entry of a kind says.
    std::optional<JournalLine> latest(const char* kind) {
        auto lines = m_hand->house().desk.ask(
            [kind](Record& record) { return record.lines({.text = {}, .kind = kind, .before = {}, .limit = 1}); });
        lines.waitForFinished();
        const auto answer = lines.result();
        return answer && !answer->empty() ? std::optional(answer->front()) : std::nullopt;
    }
    void correctLatest(EntryForm& form, const char* kind) {
        form.correct(QString::fromStdString(latest(kind)->entry.id.text()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 30'000);
        QVERIFY(m_hand->asked(form));
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
    }
    void cleanup() { m_hand.reset(); }

    void aFlightMovesTheClockOfWhatIsFitted() {
        QCOMPARE(m_hand->minutesOf("E-1"), 6000);
        In<EntryForm> form(m_hand->house());
        QAbstractItemModelTester tester(form.fields(), QAbstractItemModelTester::FailureReportingMode::Fatal);
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1:05");
        QVERIFY(m_hand->save(form));
        QVERIFY(!form.isOpen());
        QCOMPARE(m_hand->minutesOf("E-1"), 6065);
    }

    void undoTakesItBackAndTheRecordKeepsBoth() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "65 min");
        QVERIFY(m_hand->save(form));
        QVERIFY(m_hand->house().notice.undoable());
        m_hand->house().notice.undo();
        QTRY_COMPARE_WITH_TIMEOUT(m_hand->minutesOf("E-1"), 6000, 30'000);
    }

    void anOpenDefectIsClearedFromItsRow() {
        auto posted = m_hand->house().desk.ask([](Record& record) {
            return postText(record, record,
                            R"({"entry":"defect.found","on":"2026-11-20","defect":"D 1","item":"E-1",)"
                            R"("what":"torn","severity":"barring"})"
                            "\n"
                            R"({"entry":"person.entitled","on":"2020-01-01","person":"tester","licence":"L 1",)"
                            R"("capacity":"independent-certifying-staff"})",
                            {});
        });
        posted.waitForFinished();
        QVERIFY(posted.result().has_value());
        m_hand->house().desk.written();
        QVERIFY(m_hand->settled());
        const auto* row = m_hand->house().fleet.sheet()->worstOf(ItemId("E-1"));
        QVERIFY(row != nullptr && row->state.standing == Standing::Lapsed);
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("defect.cleared"), QStringLiteral("B-ONE"), QStringLiteral("E-1"),
                   QString::fromStdString(row->requirement->id.text()));
        FormHand::set(form, "what", "sewn");
        QVERIFY(m_hand->save(form));
        QVERIFY(m_hand->house().fleet.sheet()->worstOf(ItemId("E-1")) == nullptr);
    }

    void wrongFieldsSayWhatIsWrongAndNothingIsWritten() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        form.save();
        QCOMPARE(FormHand::problemAt(form, "minutes"), QStringLiteral("This is needed."));
        FormHand::set(form, "minutes", "soon");
        FormHand::set(form, "on", "2026-02-30");
        form.save();
        QVERIFY(!FormHand::problemAt(form, "minutes").isEmpty());
        QVERIFY(!FormHand::problemAt(form, "on").isEmpty());
        QVERIFY(form.isOpen());
        QCOMPARE(m_hand->minutesOf("E-1"), 6000);
    }

    void whatWasUnderstoodIsShown() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1,5 h");
        QCOMPARE(form.fields()->fields()[static_cast<std::size_t>(FormHand::rowOf(form, "minutes"))].understood(),
                 QStringLiteral("1 hour 30 minutes"));
    }

    void aCorrectionChangesOnlyWhatWasChanged() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1:05");
        FormHand::set(form, "note", "over the lake");
        QVERIFY(m_hand->save(form));
        correctLatest(form, "flight.logged");
        QCOMPARE(form.fields()->value("minutes"), QStringLiteral("1:05"));
        QCOMPARE(form.fields()->value("note"), QStringLiteral("over the lake"));
        form.save();
        QCOMPARE(form.problem(), QStringLiteral("Nothing was changed."));
        FormHand::set(form, "minutes", "1:15");
        QVERIFY(m_hand->saveCorrection(form));
        QCOMPARE(m_hand->minutesOf("E-1"), 6075);
        const auto correction = latest("entry.corrected");
        QCOMPARE(QString::fromStdString(std::get<EntryCorrected>(correction->entry.body).with),
                 QStringLiteral("{\"minutes\":75}"));
    }

    void theTimeOfAFlightIsWrittenAndACorrectionLeavesIt() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        QVERIFY(FormHand::field(form, "time").shown);
        FormHand::set(form, "minutes", "1:05");
        FormHand::set(form, "time", "6:40");
        QVERIFY(m_hand->save(form));
        correctLatest(form, "flight.logged");
        FormHand::set(form, "minutes", "1:15");
        QVERIFY(m_hand->saveCorrection(form));
        QCOMPARE(QString::fromStdString(std::get<EntryCorrected>(latest("entry.corrected")->entry.body).with),
                 QStringLiteral("{\"minutes\":75}"));
        QCOMPARE(QString::fromStdString(nowOf(*latest("flight.logged")).time.value().iso()), QStringLiteral("06:40Z"));
    }

    void aCorrectionIsOfWhoCorrects() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1:05");
        FormHand::set(form, "by", "the pilot");
        QVERIFY(m_hand->save(form));
        m_hand->house().habits.setPerson(QStringLiteral("the office"));
        correctLatest(form, "flight.logged");
        QCOMPARE(form.fields()->value("by"), QStringLiteral("the office"));
        QVERIFY2(form.about().contains(QStringLiteral("the pilot")), qPrintable(form.about()));
        FormHand::set(form, "minutes", "1:15");
        QVERIFY(m_hand->saveCorrection(form));
        QCOMPARE(QString::fromStdString(latest("entry.corrected")->entry.by), QStringLiteral("the office"));
        QCOMPARE(QString::fromStdString(nowOf(*latest("flight.logged")).by), QStringLiteral("the pilot"));
        QCOMPARE(m_hand->house().habits.person(), QStringLiteral("the office"));
    }

    /// However much moves, all of it is named, and what worsens stands first.
    void aCorrectionNamesAllThatItMoves() {
        QVERIFY(m_hand->enterItem("C-2", "cylinder") && m_hand->fit("B-ONE", "C-2"));
        for (int at = 3; at < 14; ++at) {
            const auto name = "C-" + std::to_string(at);
            QVERIFY(m_hand->enterItem(name.c_str(), "cylinder") && m_hand->fit("B-ONE", name.c_str()));
        }
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1:05");
        QTRY_COMPARE_WITH_TIMEOUT(form.kit()->count(), 16, 20'000);
        QVERIFY(m_hand->save(form));
        correctLatest(form, "flight.logged");
        FormHand::set(form, "minutes", "2:05");
        QVERIFY(!m_hand->save(form));
        const auto lines = form.follows().split(u'\n').mid(1);
        QCOMPARE(lines.size(), 16);
        QVERIFY2(lines.front().startsWith(QStringLiteral("envelope E-1")), qPrintable(form.follows()));
    }

    void aCorrectionSaysWhatItMovesBeforeItIsWritten() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1:05");
        QVERIFY(m_hand->save(form));
        correctLatest(form, "flight.logged");
        FormHand::set(form, "minutes", "2:05");
        QVERIFY(!m_hand->save(form));
        QVERIFY2(form.follows().contains(QStringLiteral("E-1: 102:05\u00a0h")), qPrintable(form.follows()));
        QVERIFY(form.follows().contains(QStringLiteral("was 101:05\u00a0h")));
        const auto lines = form.follows().split(u'\n').mid(1);
        QCOMPARE(lines.size(), 4); // each on its line, as a balloon is told of
        for (const auto& [line, item] : {std::pair(0, "envelope E-1"), std::pair(1, "basket K-1"),
                                         std::pair(2, "burner R-1"), std::pair(3, "cylinder C-1")})
            QVERIFY2(lines.at(line).startsWith(QLatin1String(item)), qPrintable(lines.at(line)));
        QCOMPARE(m_hand->minutesOf("E-1"), 6065); // nothing is written yet
        QVERIFY(!latest("entry.corrected").has_value());
        FormHand::set(form, "minutes", "3:05"); // another one is tried out anew
        QCOMPARE(form.follows(), QString());
        QVERIFY(m_hand->saveCorrection(form));
        QCOMPARE(m_hand->minutesOf("E-1"), 6185);
    }

    void aCorrectionOpensWithTheKitOfItsDay() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1");
        FormHand::set(form, "on", "2026-11-01");
        QVERIFY(m_hand->save(form));
        QVERIFY(m_hand->enterItem("K-2", "basket"));
        form.begin(QStringLiteral("item.removed"), QStringLiteral("B-ONE"), QStringLiteral("K-1"));
        FormHand::set(form, "on", "2026-11-10");
        FormHand::set(form, "-when", "after");
        QVERIFY(m_hand->save(form));
        QVERIFY(m_hand->fit("B-ONE", "K-2", "2026-11-11"));
        correctLatest(form, "flight.logged");
        QTRY_COMPARE_WITH_TIMEOUT(form.kit()->count(), 4, 10'000);
        QVERIFY(std::ranges::count(form.kit()->kit(), ItemId("K-1")) == 1);
        QVERIFY(std::ranges::count(form.kit()->kit(), ItemId("K-2")) == 0);
    }

    void aProgrammeFromTheShelfBindsFromItsDay() {
        In<EntryForm> form(m_hand->house());
        form.adopt(QStringLiteral("part-ml-hot-air"));
        form.toggle(FormHand::rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto& sheet = m_hand->house().fleet.sheet();
        QVERIFY(!sheet->rows().empty());
        QCOMPARE(sheet->headlineOf(Registration("B-ONE")).row->state.standing,
                 Standing::Unproven); // nothing was ever done: never clear
    }

    void doneIsOfferedOnlyWhatBindsTheItem() {
        In<EntryForm> form(m_hand->house());
        form.adopt(QStringLiteral("part-ml-hot-air"));
        form.toggle(FormHand::rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY(m_hand->save(form));
        form.begin(QStringLiteral("requirement.done"), QStringLiteral("B-ONE"), QStringLiteral("E-1"),
                   QStringLiteral("ml.inspection"));
        const auto& field = form.fields()->fields()[static_cast<std::size_t>(FormHand::rowOf(form, "requirement"))];
        QVERIFY(!field.choices.empty());
        FormHand::set(form, "ref", "JC 7");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        bool found = false;
        for (const auto& row : m_hand->house().fleet.sheet()->rows())
            if (row.requirement->id.text() == "ml.inspection" && row.item->id.text() == "E-1") {
                found = true;
                QCOMPARE(row.state.standing, Standing::Clear);
            }
        QVERIFY(found);
    }
};

CROWNRING_TEST(EntryFormTest, QCoreApplication)

}

#include "entry_form_test.moc"
