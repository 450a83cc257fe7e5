// SPDX-License-Identifier: GPL-3.0-or-later

/// What is done with components by their forms: a batch goes to the test house and comes back, a part is replaced,
/// fitted, taken off, cylinders are filled.

#include "answers/parts/pool.h"
#include "screen/form/form_hand.h"
#include "test_class.h"

namespace component_form_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

const QStringList batch{QStringLiteral("CYL-9001"), QStringLiteral("CYL-9004"), QStringLiteral("CYL-4126")};

}

class ComponentFormTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

    [[nodiscard]] House& house() { return m_demo->house; }
    [[nodiscard]] const ItemFacts& item(const char* id) { return *house().fleet.sheet()->item(ItemId(id)); }
    [[nodiscard]] bool save(EntryForm& form) {
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        return QTest::qWaitFor([&] { return !form.saving(); }, 30'000) && !saved.isEmpty() && m_demo->settled();
    }
    [[nodiscard]] PoolItem pooled(const char* id) {
        auto asked = house().desk.ask([id](Record& record) {
            const auto items = pool(record, {ItemKind::Cylinder, {}}, *CivilDate::parse("2026-11-25")).value();
            for (const auto& each : items)
                if (each.facts.id == ItemId(id))
                    return each;
            return PoolItem();
        });
        asked.waitForFinished();
        return asked.result();
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        house().habits.setPerson(QStringLiteral("tester"));
        QVERIFY2(m_demo->ready(), qPrintable(house().desk.trouble()));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void aBatchGoesAndComesBack() {
        In<EntryForm> form(house());
        form.beginFor(QStringLiteral("components.sent"), batch);
        QVERIFY(form.isOpen() && form.about().contains(QStringLiteral("3 items: CYL-9001")));
        QVERIFY(!save(form)); // to whom?
        QVERIFY(!FormHand::problemAt(form, "to").isEmpty());
        FormHand::set(form, "to", "Test house 3");
        QVERIFY2(save(form), qPrintable(form.problem()));
        QVERIFY(item("CYL-9001").out->state == ServiceState::Away && item("CYL-9001").out->to == "Test house 3");
        QVERIFY(!item("CYL-4126").balloon); // it came off
        QVERIFY(house().notice.undoable() && house().notice.text().contains(QStringLiteral("3 items sent")));

        form.beginFor(QStringLiteral("components.returned"), batch);
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 20'000);
        QCOMPARE(FormHand::field(form, "condemned").choices.size(), std::size_t{3});
        // Two are under ADR, one under the rules of the United States: on each its own test was done.
        // Nobody says for the user that something was tested.
        QVERIFY(FormHand::field(form, "requirement").value.isEmpty() && !FormHand::field(form, "mark").shown);
        form.toggle(FormHand::rowOf(form, "condemned"), QStringLiteral("CYL-9004"));
        FormHand::set(form, "ref", "TH3 26-88");
        QVERIFY(!save(form));
        QVERIFY(!FormHand::problemAt(form, "requirement").isEmpty());
        FormHand::set(form, "requirement", "-each");
        QVERIFY(FormHand::field(form, "method").shown);
        FormHand::set(form, "mark", "TH3");
        QVERIFY(!save(form)); // how it was tested decides the next date
        QVERIFY(!FormHand::problemAt(form, "method").isEmpty());
        FormHand::set(form, "method", "volumetric");
        FormHand::set(form, "signatory", "T. Ester");
        FormHand::set(form, "licence", "TH.12");
        FormHand::set(form, "tested", "2026-11-24"); // they went today
        QVERIFY(!save(form));
        QVERIFY2(FormHand::problemAt(form, "tested").contains(QStringLiteral("was sent on 2026-11-25")),
                 qPrintable(FormHand::problemAt(form, "tested")));
        FormHand::set(form, "tested", "");
        QVERIFY2(save(form), qPrintable(form.problem()));
        QVERIFY(!item("CYL-9001").out);
        QVERIFY(item("CYL-9004").out->state == ServiceState::Condemned);
        const auto tested = pooled("CYL-9001");
        QVERIFY(tested.transport.until && *tested.transport.until > *CivilDate::parse("2027-01-01"));
        QVERIFY(tested.fillable);
        const auto& done = item("CYL-4126").done;
        QVERIFY(done.back().requirement == RequirementId("dot.requalification") && done.back().method == "volumetric");
        QVERIFY(item("CYL-9001").done.back().requirement == RequirementId("adr.periodic-test"));
        QVERIFY2(house().notice.text().contains(QStringLiteral("3 items came back")) &&
                     house().notice.text().contains(QStringLiteral("recorded as done on 1 of them")) &&
                     house().notice.text().contains(QStringLiteral("condemned of them: CYL-9004")),
                 qPrintable(house().notice.text()));
        QVERIFY(item("CYL-9001").done.back().evidence == Evidence::Paper);
        // What was not looked at yet is kept apart at once.
        form.begin(QStringLiteral("item.state"), {}, QStringLiteral("CYL-4126"));
        FormHand::set(form, "state", "quarantined");
        QVERIFY2(save(form), qPrintable(form.problem()));
        QVERIFY(item("CYL-4126").out && item("CYL-4126").out->state == ServiceState::Quarantined);
    }

    void whatIsNotAwayDoesNotComeBack() {
        In<EntryForm> form(house());
        form.beginFor(QStringLiteral("components.returned"), {QStringLiteral("CYL-4006")});
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 20'000);
        FormHand::set(form, "ref", "TH3 26-89");
        FormHand::set(form, "requirement", "-none");
        if (FormHand::field(form, "method").shown)
            form.setValue(FormHand::rowOf(form, "method"), FormHand::field(form, "method").choices.front().value);
        QVERIFY(!save(form));
        QVERIFY2(form.problem().contains(QStringLiteral("is not away")), qPrintable(form.problem()));
    }

    void aCylinderIsFilledUnlessItsTestIsPast() {
        In<EntryForm> form(house());
        form.beginFor(QStringLiteral("cylinder.filled"), {QStringLiteral("CYL-4006"), QStringLiteral("CYL-4035")});
        FormHand::set(form, "level_percent", "85");
        QVERIFY(FormHand::askedAt(form, "level_percent").isEmpty());
        FormHand::set(form, "level_percent", "87");
        QVERIFY(FormHand::askedAt(form, "level_percent").contains(QStringLiteral("Is 87 right?")));
        FormHand::set(form, "level_percent", "78");
        QVERIFY2(save(form), qPrintable(form.problem()));
        QVERIFY(pooled("CYL-4035").component.percent == 78.0);
        form.beginFor(QStringLiteral("cylinder.filled"), {QStringLiteral("CYL-4025")}); // due in 2022
        FormHand::set(form, "level_percent", "78");
        QVERIFY(!save(form));
        QVERIFY2(form.problem().contains(QStringLiteral("must not be filled")) ||
                     FormHand::problemAt(form, "level_percent").contains(QStringLiteral("must not be filled")),
                 qPrintable(form.problem()));
    }

    void aPartIsReplacedByANewOneAndIsKeptApart() {
        QVERIFY(item("VLV-1").carrier == ItemId("CYL-9001"));
        In<EntryForm> form(house());
        form.beginFor(QStringLiteral("component.replaced"), {QStringLiteral("VLV-1")});
        FormHand::set(form, "-from", "new");
        QVERIFY(!FormHand::field(form, "with").shown && FormHand::field(form, "new.item").shown);
        QVERIFY(!FormHand::field(form, "release.number").shown);
        FormHand::set(form, "new.item", "VLV-77");
        FormHand::set(form, "new.serial", "RV77");
        FormHand::set(form, "release.form", "easa-form-1");
        QVERIFY(FormHand::field(form, "release.number").shown);
        FormHand::set(form, "release.number", "QE-145-9");
        FormHand::set(form, "lot", "RV-26-9");
        FormHand::set(form, "unserviceable", "true");
        QVERIFY2(save(form), qPrintable(form.problem()));
        const auto& part = item("VLV-77");
        QVERIFY(part.carrier == ItemId("CYL-9001") && part.type == item("VLV-1").type && part.serial == "RV77");
        QVERIFY(!item("VLV-1").carrier && item("VLV-1").out->state == ServiceState::Unserviceable);
    }

    void aPartIsTakenOffAndFittedAgain() {
        In<EntryForm> form(house());
        form.beginFor(QStringLiteral("component.taken-off"), {QStringLiteral("VLV-77")});
        QVERIFY2(save(form), qPrintable(form.problem()));
        QVERIFY(!item("VLV-77").carrier && !item("VLV-77").out);
        form.beginFor(QStringLiteral("component.fitted"), {QStringLiteral("CYL-9001")});
        FormHand::set(form, "item", "VLV-77");
        FormHand::set(form, "place", "shoulder");
        QVERIFY2(save(form), qPrintable(form.problem()));
        QCOMPARE(item("VLV-77").carrier, std::optional(ItemId("CYL-9001"))); // later than it came off
    }

    void whatIsQuarantinedComesBackWithARelease() {
        QVERIFY(item("VLV-3").out->state == ServiceState::Quarantined);
        In<EntryForm> form(house());
        form.begin(QStringLiteral("item.state"), {}, QStringLiteral("VLV-3"));
        FormHand::set(form, "state", "in-service");
        QVERIFY(FormHand::field(form, "release.form").shown);
        QVERIFY(!save(form)); // by what is it released?
        FormHand::set(form, "release.form", "easa-form-1");
        FormHand::set(form, "release.number", "QE-145-12");
        QVERIFY2(save(form), qPrintable(form.problem()));
        QVERIFY(!item("VLV-3").out);
    }
};

CROWNRING_TEST(ComponentFormTest, QCoreApplication)

}

#include "component_form_test.moc"
