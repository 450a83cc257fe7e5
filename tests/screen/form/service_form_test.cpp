// SPDX-License-Identifier: GPL-3.0-or-later

/// Out of service and back, and another registration, by the forms: what follows is said before it is written, and is
/// so after.

#include "form_hand.h"
#include "screen/balloons/balloons_place.h"
#include "screen/balloons/subject_page.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::screen;

class ServiceFormTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;
    const Registration m_balloon{"QE-OVA"};

    [[nodiscard]] House& house() { return m_demo->house; }
    [[nodiscard]] const Sheet& sheet() { return house().fleet.sheet(); }
    /// Opens the form of a kind about the balloon; the fields are set by key.
    void begin(EntryForm& form, const char* kind, std::initializer_list<std::pair<const char*, const char*>> values) {
        form.begin(QString::fromLatin1(kind), QStringLiteral("QE-OVA"));
        for (const auto& [key, value] : values)
            FormHand::set(form, key, value);
    }
    [[nodiscard]] bool save(EntryForm& form) {
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        return QTest::qWaitFor([&] { return !form.saving(); }, 30'000) && !saved.isEmpty() && m_demo->settled();
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        house().habits.setPerson(QStringLiteral("tester"));
        QVERIFY(m_demo->ready());
    }

    void aLaidUpBalloonLeavesTheListsAndItsPageSaysWhatLapsesMeanwhile() {
        const auto rows = sheet()->rowsOf(m_balloon).size();
        const auto items = sheet()->itemsOf(m_balloon).size();
        QVERIFY(rows > 5);
        In<BalloonsPlace> place(house());
        QTRY_COMPARE_WITH_TIMEOUT(place.balloons()->count(), 40, 30'000);
        const int outBefore = place.itemsOut();
        In<EntryForm> form(house());
        begin(form, "balloon.state", {{"state", "laid-up"}, {"on", "2026-11-20"}});
        QVERIFY2(form.follows().contains(QStringLiteral("2026-11-20")), qPrintable(form.follows()));
        QVERIFY2(form.follows().contains(QString::number(rows) + QStringLiteral(" requirements leave the lists")),
                 qPrintable(form.follows()));
        QVERIFY2(form.follows().contains(QString::number(items) + QStringLiteral(" items")),
                 qPrintable(form.follows()));
        QVERIFY(!FormHand::field(form, "to").shown);
        QVERIFY(save(form));
        QCOMPARE(sheet()->rowsOf(m_balloon).size(), std::size_t(0));
        QTRY_COMPARE_WITH_TIMEOUT(place.balloons()->count(), 39, 30'000);
        QCOMPARE(place.balloonsOut(), 1);
        QCOMPARE(place.itemsOut(), outBefore + static_cast<int>(items));
        place.setWords(QStringLiteral("QE-OVA"));
        QTRY_COMPARE_WITH_TIMEOUT(place.balloons()->count(), 0, 30'000);
        QCOMPARE(place.balloonsBeside(), 1); // hidden, and not unknown
        place.setWords({});
        place.setOutOfService(true);
        QTRY_COMPARE_WITH_TIMEOUT(place.balloons()->count(), 1, 30'000);
        QCOMPARE(place.balloons()->data(place.balloons()->index(0), BalloonModel::WordRole).toString(),
                 QStringLiteral("laid up"));

        In<SubjectPage> page(house());
        page.showBalloon(QStringLiteral("QE-OVA"));
        QVERIFY2(page.outOfService().contains(QStringLiteral("laid up since 2026-11-20")),
                 qPrintable(page.outOfService()));
        QTRY_COMPARE_WITH_TIMEOUT(page.dues()->count(), static_cast<int>(rows), 30'000);
        page.showBalloon(QStringLiteral("QE-OVB"));
        QVERIFY(page.outOfService().isEmpty());

        In<EntryForm> back(house());
        begin(back, "balloon.state", {{"state", "in-service"}, {"on", "2026-11-25"}});
        QVERIFY(!back.follows().isEmpty());
        QVERIFY(save(back));
        QCOMPARE(sheet()->rowsOf(m_balloon).size(), rows);
    }

    void whatIsSoldSaysToWhomAndTheRequirementsCanStillBeWrittenDown() {
        const auto id = sheet()->itemsOf(Registration("QE-OVD")).front()->id;
        In<EntryForm> form(house());
        form.begin(QStringLiteral("item.state"), {}, QString::fromStdString(id.text()));
        FormHand::set(form, "state", "sold");
        QVERIFY(FormHand::field(form, "to").shown);
        FormHand::set(form, "to", "a club");
        QVERIFY(save(form));
        QCOMPARE(sheet()->item(id)->out->to, std::string("a club"));
        QCOMPARE(sheet()->rowsOf(id).size(), std::size_t(0));
        In<EntryForm> done(house());
        done.begin(QStringLiteral("requirement.done"), {}, QString::fromStdString(id.text()));
        QVERIFY(!FormHand::field(done, "requirement").choices.empty());
        In<EntryForm> fitting(house());
        fitting.begin(QStringLiteral("item.fitted"), QStringLiteral("QE-OVB"));
        const auto& choices = FormHand::field(fitting, "item").choices;
        QVERIFY(std::ranges::find(choices, QString::fromStdString(id.text()), &Choice::value) == choices.end());
    }

    // ML.A.504, from memory.
    void whatIsQuarantinedComesOffAndComesBackWithARelease() {
        const auto id = sheet()->itemsOf(Registration("QE-OVF")).front()->id;
        const auto of = QString::fromStdString(id.text());
        In<EntryForm> form(house());
        form.begin(QStringLiteral("item.state"), {}, of);
        FormHand::set(form, "state", "quarantined");
        FormHand::set(form, "on", "2026-11-23");
        QVERIFY(!FormHand::field(form, "to").shown);
        QVERIFY(!FormHand::field(form, "release.form").shown);
        QVERIFY(save(form));
        QVERIFY(!sheet()->item(id)->balloon);
        QCOMPARE(sheet()->item(id)->out->state, ServiceState::Quarantined);
        In<EntryForm> back(house());
        back.begin(QStringLiteral("item.state"), {}, of);
        FormHand::set(back, "state", "in-service");
        FormHand::set(back, "on", "2026-11-25");
        QVERIFY(FormHand::field(back, "release.form").shown);
        QVERIFY(!save(back));
        FormHand::set(back, "release.form", "easa-form-1");
        FormHand::set(back, "release.number", "QE 12");
        QVERIFY(save(back));
        QVERIFY(!sheet()->item(id)->out);
    }

    void anotherRegistrationComesWithItsEntryAndTakesAllOver() {
        const Registration renamed("QE-OVC");
        const auto items = sheet()->itemsOf(renamed).size();
        const auto rows = sheet()->rowsOf(renamed).size();
        const auto before = *sheet()->card(renamed);
        In<EntryForm> form(house());
        begin(form, "balloon.renamed", {{"balloon", "QE-OVC"}, {"to", "QE-ANEW"}, {"on", "2026-11-25"}});
        QVERIFY2(form.follows().contains(QStringLiteral("QE-ANEW")), qPrintable(form.follows()));
        QVERIFY(save(form));
        const Registration anew("QE-ANEW");
        const auto* card = sheet()->card(anew);
        QVERIFY(card);
        QCOMPARE(card->title, before.title);
        QCOMPARE(card->operations, before.operations);
        QCOMPARE(sheet()->itemsOf(anew).size(), items);
        QCOMPARE(sheet()->rowsOf(anew).size(), rows);
        QVERIFY(!sheet()->card(renamed)->inService());
        In<SubjectPage> page(house());
        page.showBalloon(QStringLiteral("QE-ANEW"));
        QVERIFY2(page.about().contains(QStringLiteral("QE-OVC until 2026-11-25")), qPrintable(page.about()));
        page.showBalloon(QStringLiteral("QE-OVC"));
        QVERIFY2(page.outOfService().contains(QStringLiteral("flies as QE-ANEW since 2026-11-25")),
                 qPrintable(page.outOfService()));
    }

    // 02: the operations are those that `balloon.entered` carries.
    void aRegistrationThatWasEnteredWithoutTheOperationsSaysWhatIsAskedNoLonger() {
        FormHand hand;
        In<EntryForm> form(hand.house());
        form.begin(QStringLiteral("balloon.entered"));
        FormHand::set(form, "balloon", "B-OLD");
        FormHand::set(form, "on", "2026-01-01");
        form.toggle(FormHand::rowOf(form, "operations"), QStringLiteral("for-hire"));
        QVERIFY2(hand.save(form), qPrintable(form.problem()));
        QVERIFY(hand.enterBalloon("B-NEW") && hand.enterItem("E-1", "envelope") && hand.fit("B-OLD", "E-1"));
        form.adopt(QStringLiteral("us-14cfr"));
        form.toggle(FormHand::rowOf(form, "balloons"), QStringLiteral("B-OLD"));
        QVERIFY2(hand.save(form), qPrintable(form.problem()));
        const auto hundredHour = [&] {
            for (const auto* row : hand.house().fleet.sheet()->rowsOf(ItemId("E-1")))
                if (row->requirement->id.text() == "us.hundred-hour")
                    return isRequired(row->state);
            return false;
        };
        QVERIFY(hundredHour());
        form.begin(QStringLiteral("balloon.renamed"), QStringLiteral("B-OLD"));
        FormHand::set(form, "to", "B-NEWER"); // a new one takes over what was said of the former
        QVERIFY2(!form.follows().contains(QStringLiteral("without")), qPrintable(form.follows()));
        FormHand::set(form, "to", "B-NEW");
        QVERIFY2(
            form.follows().startsWith(QStringLiteral("B-NEW was entered without: for hire. 1 requirement that binds "
                                                     "only such operation is then not required.")),
            qPrintable(form.follows()));
        QVERIFY2(hand.save(form), qPrintable(form.problem() + FormHand::problemAt(form, "to")));
        QCOMPARE(hand.item("E-1")->balloon, std::optional(Registration("B-NEW")));
        QVERIFY(!hundredHour());
    }

    void aRegistrationThatAnotherBalloonHasIsNotTaken() {
        In<EntryForm> form(house());
        begin(form, "balloon.renamed", {{"to", "qe-ovb"}});
        QVERIFY(!save(form));
        QVERIFY2(FormHand::problemAt(form, "to").contains(QStringLiteral("QE-OVB")), qPrintable(form.problem()));
    }
};

CROWNRING_TEST(ServiceFormTest, QCoreApplication)
#include "service_form_test.moc"
