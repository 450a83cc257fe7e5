// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "screen/form/form_hand.h"
#include "screen/form/whole_balloon.h"
#include "test_class.h"

namespace many_at_once_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr auto bulletin = R"({"programme":"sb-7","revision":"1","title":"Load tapes of early envelopes","source":"SB 7",
"requirements":[{"id":"sb-7.tapes","title":"Look at the load tapes","source":"SB 7, 2.1","kinds":["envelope"],
"action":"inspect","limits":[{"clock":"months","every":12}]}]})";

}

class ManyAtOnceTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<FormHand> m_hand;

    [[nodiscard]] int linesOf(const char* kind) {
        auto lines = m_hand->house().desk.ask(
            [kind](Record& record) { return record.lines({.text = {}, .kind = kind, .before = {}, .limit = 100}); });
        lines.waitForFinished();
        return static_cast<int>(lines.result()->size());
    }
    static void beginWhole(EntryForm& form) {
        form.begin(QStringLiteral("whole-balloon"));
        FormHand::set(form, "balloon", "B-TWO");
        FormHand::set(form, "programme", "part-ml-hot-air");
        FormHand::set(form, "on", "2026-11-01");
        FormHand::set(form, "envelope.item", "E-2");
        FormHand::set(form, "envelope.brought_forward.minutes", "250");
        FormHand::set(form, "basket.item", "K-2");
        FormHand::set(form, "burner.item", "R-2");
    }

private slots:
    void init() { m_hand = std::make_unique<FormHand>(); }
    void cleanup() { m_hand.reset(); }

    void aWholeBalloonIsOneForm() {
        In<EntryForm> form(m_hand->house());
        beginWhole(form);
        FormHand::set(form, "cylinders", "C-1; 4711; 2016-05; 120\nC-2;4712\n\nC-3\nC-4\nC-5");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto& sheet = m_hand->house().fleet.sheet();
        QCOMPARE(sheet->itemsOf(Registration("B-TWO")).size(), std::size_t{8});
        QCOMPARE(m_hand->minutesOf("E-2"), 250 * 60);
        QVERIFY(!m_hand->item("E-2")->clock.landings.has_value());
        QCOMPARE(m_hand->minutesOf("C-1"), 120 * 60);
        QCOMPARE(QString::fromStdString(m_hand->item("C-1")->made->iso()), QStringLiteral("2016-05"));
        QCOMPARE(m_hand->item("C-2")->serial, std::optional<std::string>("4712"));
        QVERIFY(!m_hand->item("C-2")->clock.minutes.has_value());
        QVERIFY(sheet->headlineOf(Registration("B-TWO")).row != nullptr); // the rules bind it
    }
    void thePapersOfWhatWasUsedAreAskedForAtOnce() {
        In<EntryForm> form(m_hand->house());
        beginWhole(form);
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 20'000);
        QVERIFY2(form.about().contains(QStringLiteral("papers of B-TWO")), qPrintable(form.about()));
        const ItemId item(form.fields()->value("item").toStdString());
        const RequirementId requirement(form.fields()->value("requirement").toStdString());
        const auto standing = [&] {
            for (const auto* row : m_hand->house().fleet.sheet()->rowsOf(item))
                if (row->requirement->id == requirement)
                    return row->state.standing;
            return Standing::Spent;
        };
        QVERIFY(standing() == Standing::Unproven);
        QVERIFY(FormHand::field(form, "clock.minutes").required); // it counts hours
        FormHand::set(form, "on", "2026-03-01");
        QVERIFY(!m_hand->save(form)); // the day alone proves nothing of the hours
        FormHand::set(form, "clock.minutes", "240");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QVERIFY(standing() != Standing::Unproven);
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 20'000); // and on to the next one
        form.cancel();
        QVERIFY(m_hand->settled());
        QVERIFY(!form.isOpen()); // left is left
    }
    void newIsNeverUsed() {
        In<EntryForm> form(m_hand->house());
        beginWhole(form);
        FormHand::set(form, "-fresh", "true");
        FormHand::set(form, "cylinders", "C-1");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("E-2"), 0); // what was typed before is hidden, and not said
        QCOMPARE(m_hand->minutesOf("C-1"), 0);
    }
    void aBadLineSaysWhichAndNothingIsWritten() {
        In<EntryForm> form(m_hand->house());
        beginWhole(form);
        FormHand::set(form, "cylinders", "C-1\nC-2; 1; soon");
        QVERIFY(!m_hand->save(form));
        QVERIFY2(FormHand::problemAt(form, "cylinders").startsWith(QStringLiteral("Line 2")),
                 qPrintable(FormHand::problemAt(form, "cylinders")));
        QCOMPARE(linesOf("balloon.entered"), 0);
    }
    void aPartNeedsAName() {
        In<EntryForm> form(m_hand->house());
        beginWhole(form);
        FormHand::set(form, "basket.item", "");
        FormHand::set(form, "basket.serial", "77");
        QVERIFY(!m_hand->save(form));
        QVERIFY(!FormHand::problemAt(form, "basket.item").isEmpty());
    }
    void aNameThatIsTakenStopsAllOfIt() {
        QVERIFY(m_hand->enterItem("k 2", "basket"));
        In<EntryForm> form(m_hand->house());
        beginWhole(form);
        QVERIFY(!m_hand->save(form));
        QCOMPARE(FormHand::field(form, "basket.item").wayTo, QStringLiteral("item k 2"));
        QCOMPARE(linesOf("balloon.entered"), 0);
    }

    void oneFittingListForSeveralCylinders() {
        QVERIFY(m_hand->rigOne());
        for (const char* item : {"C-2", "C-3", "C-4"})
            QVERIFY(m_hand->enterItem(item, "cylinder"));
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.fitted"), QStringLiteral("B-ONE"), QStringLiteral("C-2"));
        QVERIFY(m_hand->asked(form));
        QVERIFY(FormHand::field(form, "-also").shown);
        form.toggle(FormHand::rowOf(form, "-also"), QStringLiteral("C-3"));
        form.toggle(FormHand::rowOf(form, "-also"), QStringLiteral("C-4"));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        for (const char* item : {"C-2", "C-3", "C-4"})
            QCOMPARE(m_hand->item(item)->balloon, std::optional(Registration("B-ONE")));
    }
    void oneRequirementDoneOnSeveralItems() {
        QVERIFY(m_hand->rigOne());
        In<EntryForm> form(m_hand->house());
        form.adopt(QStringLiteral("part-ml-hot-air"));
        form.toggle(FormHand::rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY(m_hand->save(form));
        form.begin(QStringLiteral("requirement.done"), QStringLiteral("B-ONE"), QStringLiteral("E-1"),
                   QStringLiteral("ml.inspection"));
        QVERIFY(FormHand::field(form, "-also").choices.size() >= 3);
        for (const char* item : {"K-1", "R-1"})
            form.toggle(FormHand::rowOf(form, "-also"), QString::fromUtf8(item));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(linesOf("requirement.done"), 3);
        int clear = 0;
        for (const auto& row : m_hand->house().fleet.sheet()->rows())
            clear += row.requirement->id.text() == "ml.inspection" && row.state.standing == Standing::Clear ? 1 : 0;
        QCOMPARE(clear, 3);
    }
    /// Late paper, of a day before the items were entered: what stays unproven is said, and can be stated.
    void whoseHoursAreNotKnownIsAskedFor() {
        QVERIFY(m_hand->rigOne());
        In<EntryForm> form(m_hand->house());
        form.adopt(QStringLiteral("part-ml-hot-air"));
        form.toggle(FormHand::rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY(m_hand->save(form));
        form.begin(QStringLiteral("requirement.done"), QStringLiteral("B-ONE"), QStringLiteral("E-1"),
                   QStringLiteral("ml.inspection"));
        FormHand::set(form, "clock.minutes", "90");
        for (const char* item : {"K-1", "R-1"})
            form.toggle(FormHand::rowOf(form, "-also"), QString::fromUtf8(item));
        QCOMPARE(FormHand::rowOf(form, "-hours K-1"), -1); // today they are known
        FormHand::set(form, "on", "2025-12-20");
        QVERIFY2(FormHand::askedAt(form, "-also").contains(QStringLiteral("K-1, R-1")),
                 qPrintable(FormHand::askedAt(form, "-also")));
        FormHand::set(form, "-hours K-1", "95");
        QVERIFY(!FormHand::askedAt(form, "-also").contains(QStringLiteral("K-1")));
        QVERIFY(!m_hand->save(form)); // R-1 is asked about
        QCOMPARE(linesOf("requirement.done"), 0);
        FormHand::answer(form, "-also");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(linesOf("requirement.done"), 3);
        for (const auto& row : m_hand->house().fleet.sheet()->rows()) {
            if (row.requirement->id.text() != "ml.inspection")
                continue;
            if (row.item->id == ItemId("K-1"))
                QCOMPARE(row.state.standing, Standing::Nearing);
            if (row.item->id == ItemId("R-1"))
                QCOMPARE(row.state.standing, Standing::Unproven);
        }
    }
    void anAdoptionSaysForWhom() {
        QVERIFY(m_hand->rigOne());
        In<EntryForm> form(m_hand->house());
        form.adopt(QStringLiteral("part-ml-hot-air"));
        QVERIFY(!m_hand->save(form));
        QCOMPARE(form.problem(), QStringLiteral("Choose balloons, or items, or everything."));
    }
    void aBulletinIsAdoptedFromItsFile() {
        QVERIFY(m_hand->rigOne());
        const QTemporaryDir folder;
        QFile file(folder.filePath(QStringLiteral("sb.json")));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(bulletin);
        file.close();
        In<EntryForm> form(m_hand->house());
        form.adoptFile(QUrl::fromLocalFile(file.fileName()));
        QVERIFY(form.isOpen());
        QVERIFY2(form.about().contains(QStringLiteral("Load tapes")), qPrintable(form.about()));
        form.toggle(FormHand::rowOf(form, "balloons"), QStringLiteral("B-ONE"));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        int bound = 0;
        for (const auto& row : m_hand->house().fleet.sheet()->rows())
            bound += row.requirement->id.text() == "sb-7.tapes" ? 1 : 0;
        QVERIFY(bound > 0);
        form.adoptFile(QUrl::fromLocalFile(folder.filePath(QStringLiteral("none.json"))));
        QVERIFY(!form.isOpen());
        QVERIFY(m_hand->house().notice.trouble());
    }
    void aBulletinFromAFileBindsFromTheStatedDayTheSerialsThatItNames() {
        QVERIFY(m_hand->rigOne());
        for (const auto& [item, serial] : {std::pair("E-50", "50"), std::pair("E-150", "150")}) {
            In<EntryForm> entering(m_hand->house());
            entering.begin(QStringLiteral("item.entered"), {}, QString::fromUtf8(item));
            FormHand::set(entering, "kind", "envelope");
            FormHand::set(entering, "serial", serial);
            FormHand::set(entering, "on", "2026-01-01");
            QVERIFY2(m_hand->save(entering), qPrintable(entering.problem()));
        }
        const QTemporaryDir folder;
        QFile file(folder.filePath(QStringLiteral("sb.json")));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(QByteArray(bulletin).replace("\"kinds\"", R"("serials":[{"from":"100","to":"250"}],"kinds")"));
        file.close();
        In<EntryForm> form(m_hand->house());
        form.adoptFile(QUrl::fromLocalFile(file.fileName()));
        QVERIFY2(form.about().contains(QStringLiteral("Look at the load tapes: serial numbers 100 to 250")),
                 qPrintable(form.about()));
        QCOMPARE(form.fields()->value("on"), QStringLiteral("2026-11-25"));
        FormHand::set(form, "on", "2027-01-15"); // a day to come, as the bulletin states it
        FormHand::set(form, "everything", "true");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto boundOn = [&](const char* day) {
            auto bound = m_hand->house().desk.ask([on = CivilDate::parse(day).value()](Record& record) {
                QStringList items;
                const auto list = due(record, {}, on);
                for (const auto& row : list ? list->rows : std::vector<DueRow>())
                    if (row.requirement->id.text() == "sb-7.tapes" && row.item->serial)
                        items += QString::fromStdString(row.item->id.text());
                return items;
            });
            bound.waitForFinished();
            return bound.result();
        };
        QCOMPARE(boundOn("2027-01-14"), QStringList());
        QCOMPARE(boundOn("2027-01-15"), QStringList("E-150"));
    }
    void aPilotWritesADefectDown() {
        QVERIFY(m_hand->rigOne());
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("defect.found"), QStringLiteral("B-ONE"));
        FormHand::set(form, "what", "a hole in gore 7\nas long as a hand");
        FormHand::set(form, "item", "E-1");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->item("E-1")->defects.size(), std::size_t{1});
        QVERIFY(m_hand->item("E-1")->defects.front().what.find('\n') != std::string::npos); // lines stay lines
        QCOMPARE(m_hand->house().fleet.sheet()->worstOf(ItemId("E-1"))->state.standing, Standing::Lapsed);
    }
};

CROWNRING_TEST(ManyAtOnceTest, QCoreApplication)

}

#include "many_at_once_test.moc"
