// SPDX-License-Identifier: GPL-3.0-or-later
#include "lint/kinds_that_lack.h"
#include "record/entry_json.h"
#include "record/random_entries.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <set>

namespace kinds_test {

using namespace crownring;
using nlohmann::json;

namespace {

/// Whether a name stands in what is under a key: as a text, in a list, or in the objects of a list.
bool speaksOf(const json& value, const std::string& name) {
    return value.is_structured() ? std::ranges::any_of(value, [&](const json& each) { return speaksOf(each, name); })
                                 : value == json(name);
}

}

// Of a kind everything is stated.
static_assert(EntryKind<FlightLogged> && EntryKind<sample::Whole>);
static_assert(!EntryKind<sample::WithoutName> && !EntryKind<sample::WithoutTime>);
static_assert(!EntryKind<sample::WithoutMentions> && !EntryKind<sample::WithoutBrings>);
static_assert(!EntryKind<sample::WithoutToldUnder> && !EntryKind<sample::WithoutHasRows>);
static_assert(!EntryKind<sample::WithoutInspection> && !EntryKind<sample::WithoutRead>);
static_assert(!EntryKind<sample::WithoutWrite> && !EntryKind<sample::WithoutKeys>);
static_assert(!EntryKind<sample::NotStated> && !EntryKind<int>);
static_assert(OfInspection<LineSettled> && OfInspection<ReadingTaken> && !OfInspection<FlightLogged>);

class KindsTest : public QObject {
    Q_OBJECT

private slots:
    void aNameIsAThingAndWhatBecameOfIt() {
        const QRegularExpression form(QStringLiteral("^[a-z]+\\.[a-z]+$"));
        std::set<std::string_view> names;
        for (const auto name : kindNames()) {
            QVERIFY2(form.match(QString::fromUtf8(name.data(), qsizetype(name.size()))).hasMatch(), name.data());
            QVERIFY2(names.insert(name).second, name.data());
        }
        QCOMPARE(names.size(), std::variant_size_v<Body>);
        QCOMPARE(kindName(FlightLogged()), Kind<FlightLogged>::name);
    }

    void whatIsSaidOfAnEntryStandsInItsText() {
        QVERIFY(rc::check([] {
            const auto entry = *random::anyEntry();
            const auto text = toJson(entry);
            for (const auto& [named, key] : mentions(entry.body))
                RC_ASSERT(text.contains(key) && speaksOf(text[std::string(key)], named.name));
            for (const auto& named : toldUnder(entry.body))
                RC_ASSERT(speaksOf(text, named.name));
            if (const auto brought = broughtBy(entry.body))
                RC_ASSERT(speaksOf(text, brought->name));
            const auto inspection = inspectionOf(entry.body);
            if (!std::holds_alternative<ReleaseRevoked>(entry.body) &&
                !std::holds_alternative<ReturnApproved>(entry.body) && // they come after the last word
                !std::holds_alternative<ReviewSigned>(entry.body))     // an act of its own, beside it
                RC_ASSERT(inspection.has_value() == text.contains("inspection"));
            if (inspection)
                RC_ASSERT(text["inspection"] == inspection->text());
        }));
    }

    void whatIsMentionedComesInTheOrderOfComplaint() {
        const DefectDeferred deferral{DefectId("D-1"), ItemId("E1"),      "dry", {}, {},
                                      PersonId("Ida"), InspectionId("I1")};
        QStringList told;
        for (const auto& [named, key] : mentions(deferral))
            told += QString::fromUtf8(key.data(), qsizetype(key.size())) + u' ' + QString::fromStdString(named.name);
        QCOMPARE(told, (QStringList{"defect D-1", "item E1", "inspection I1", "agreed_by Ida"}));
        QVERIFY(mentions(EntryVoided{EntryId("e"), "twice"}).empty());
    }

    void anEventIsOfAnItemOrOfABalloon() {
        EventReported event{ItemId("E1"), "hard-landing", {}, {}};
        QCOMPARE(mentions(event).at(0).named.subject, Subject::Item);
        event.subject = Registration("QE-ONE");
        QCOMPARE(mentions(event).size(), std::size_t{1});
        QCOMPARE(mentions(event).at(0).named.subject, Subject::Balloon);
    }

    void aProgrammeMentionsWhomItBinds() {
        ProgrammeAdopted adopted{ProgrammeId("p"), BoundEverything{}, {}, {}};
        QVERIFY(mentions(adopted).empty());
        adopted.bound = BoundItems{{ItemId("E1"), ItemId("B1")}};
        QCOMPARE(mentions(adopted).size(), std::size_t{2});
        QCOMPARE(mentions(adopted).at(1).key, std::string_view("items"));
    }

    void everyKindIsMet() {
        std::set<std::size_t> met;
        const auto entries = random::anyEntry();
        rc::Random random(20261125);
        for (int i = 0; i < 1000; ++i)
            met.insert(entries(random.split(), 20).value().body.index());
        QCOMPARE(met.size(), std::variant_size_v<Body>);
    }

    void withoutATimeTheKindDecides() {
        const auto at = [](const Body& body) { return QString::fromStdString(defaultTime(body).iso()); };
        QCOMPARE(at(ItemFitted()), QStringLiteral("00:00Z"));
        QCOMPARE(at(EventReported()), QStringLiteral("00:00Z"));
        QCOMPARE(at(FlightLogged()), QStringLiteral("12:00Z"));
        QCOMPARE(at(RequirementDone()), QStringLiteral("18:00Z"));
        QCOMPARE(at(ReadingTaken()), QStringLiteral("18:00Z"));
        QCOMPARE(at(DefectFound()), QStringLiteral("18:00Z"));
        QCOMPARE(at(DefectDeferred()), QStringLiteral("18:01Z"));
        QCOMPARE(at(DefectCleared()), QStringLiteral("18:02Z"));
        QCOMPARE(at(InspectionClosed()), QStringLiteral("18:10Z"));
        QCOMPARE(at(ItemRemoved()), QStringLiteral("23:59Z"));
    }
};

CROWNRING_TEST(KindsTest, QCoreApplication)

}

#include "kinds_test.moc"
