// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "answers/bench_file.h"
#include "answers/closing.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Nothing is written, and the first problem has this code.
void expectTurnedAway(Shop& shop, const std::string& lines, Code code) {
    const auto before = shop.entries();
    const auto problems = problemsOf(shop.record(), lines);
    QVERIFY(!problems.empty());
    QCOMPARE(problems.front().code(), code);
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    QCOMPARE(shop.entries(), before);
}

std::string correction(const EntryId& of, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2026-06-05","by":"Ada Rhos","note":"misread","replaces":")" + of.text() +
           R"(","with":)" + with + "}";
}

std::string unsaid(const EntryId& of, const std::string& said) {
    return R"({"entry":"entry.corrected","on":"2026-06-05","with":{"value":310},)" + said + R"(,"replaces":")" +
           of.text() + "\"}";
}

std::string unsaidOf(const EntryId& of, const std::string& with, const std::string& said) {
    return R"({"entry":"entry.corrected","on":"2026-06-05","with":)" + with + "," + said + R"(,"replaces":")" +
           of.text() + "\"}";
}
const std::vector<std::string> besideTheStatement{R"({"licence":"QE.66.9"})", R"({"limitations":"none"})",
                                                  R"({"manuals":["Manual 78"]})"};

std::string voided(const EntryId& id) {
    return R"({"entry":"entry.voided","on":"2026-06-03","reason":"wrong balloon","voids":")" + id.text() + R"("})";
}

}

/// What follows a signature: the accomplishments, the lock, and corrections that stay legible. And the same gate for
/// entries that a shop's own system posts.
class LockedInspectionTest : public QObject {
    Q_OBJECT
private slots:
    void whatItAccomplishesIsPosted() {
        // ML.A.302(d)(1)(a) (quoted): every 12 months or 100 h, the next interval from when it takes place.
        Shop shop;
        const auto receipt = shop.ready(Visit::PartMlInspection).sign(Shop::signing()).value();
        QCOMPARE(receipt.ids.size(), std::size_t{2});
        const auto posted = shop.record().line(receipt.ids.at(1)).value().value();
        const auto& done = std::get<RequirementDone>(posted.entry.body);
        QCOMPARE(done.item, ItemId("E1"));
        QCOMPARE(done.requirement, RequirementId("ml.inspection"));
        QCOMPARE(done.ref, shop.inspection.text());
        const auto list = due(shop.record(), {Registration("QE-ONE"), {}}, day("2026-06-02")).value();
        const auto row = std::ranges::find_if(
            list.rows, [](const auto& each) { return each.requirement->id == RequirementId("ml.inspection"); });
        QVERIFY(row != list.rows.end());
        QCOMPARE(row->state.standing, Standing::Clear);
        std::set<std::string> next;
        for (const auto& limit : row->state.limits)
            next.insert(limit.calendar() ? limit.calendar()->due.iso()
                                         : std::to_string(limit.usage()->due.value()) + " min");
        QCOMPARE(next, (std::set<std::string>{"2027-06-02", "18000 min"}));
    }
    void anotherTextIsRefused_data() {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("value");
        QTest::newRow("statement") << "statement"
                                   << R"("This aircraft is fit to fly.")";
        QTest::newRow("none") << "statement"
                              << R"("")";
        QTest::newRow("licence") << "licence"
                                 << R"("QE.66.2")";
        QTest::newRow("clocks") << "clocks"
                                << R"([{"item":"E1","minutes":11000,"landings":190,"inflations":195}])";
        QTest::newRow("nothing excepted") << "excepted"
                                          << "";
        QTest::newRow("seal")
            << "seal"
            << R"({"entries":["x"],"digest":"0000000000000000000000000000000000000000000000000000000000000000"})";
    }
    /// The text of a signature is what the record composes of it.
    void anotherTextIsRefused() {
        QFETCH(QString, key);
        QFETCH(QString, value);
        Shop shop;
        auto closing = nlohmann::json::parse(shop.ready(Visit::PartMlInspection).closing());
        QVERIFY(closing.contains("excepted")); // the certificate of airworthiness review was never proven
        closing.erase(key.toStdString());
        if (!value.isEmpty())
            closing[key.toStdString()] = nlohmann::json::parse(value.toStdString());
        const auto problems = problemsOf(shop.record(), closing.dump());
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().where.key, key.toStdString());
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY(shop.now().isOpen());
        // What clocks and seal are, the record knows by itself.
        QVERIFY(problemsOf(shop.record(), shop.closing()).empty());
    }
    void theSealCoversWhatWasSaid() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto said = shop.now().lines.size() + shop.now().readings.size() + 1;
        QVERIFY(shop.sign(Shop::signing()));
        const auto closed = shop.now().closed->body;
        QCOMPARE(closed.seal->entries.size(), said);
        QCOMPARE(closed.seal->digest, sealDigest(shop.record(), closed.seal->entries).value());
        // AMC M.A.801(e)1(a), read in a UK consolidated copy; with "Part-ML" from memory.
        QVERIFY(closed.statement.starts_with("Certifies that the work specified except as otherwise specified was "
                                             "carried out in accordance with Part-ML"));
        QCOMPARE(closed.licence, std::string("QE.66.1"));
    }
    void aFlightLoggedLateChangesNoPaper() {
        // ML.A.801(e) (from memory): the release states the total time; what was signed stays as it was.
        Shop shop;
        QVERIFY(shop.ready(Visit::PartMlInspection).sign(Shop::signing()));
        const auto signedFor = shop.now().closed->body.clocks;
        QCOMPARE(signedFor.size(), std::size_t{1});
        QCOMPARE(signedFor[0].clock.minutes, std::optional(Minutes{12000}));
        shop.say(R"({"entry":"flight.logged","on":"2026-06-02","time":"05:00Z","balloon":"QE-ONE","minutes":90})");
        const auto later = benchFile(shop.record(), shop.inspection, day("2026-06-05")).value();
        QCOMPARE(later.items[0].clock.minutes, std::optional(Minutes{12000}));
        const auto facts = shop.record().facts({Registration("QE-ONE"), {}}, day("2026-06-05")).value();
        QCOMPARE(facts[0].clock.minutes, std::optional(Minutes{12090}));
    }
    void whatWasToBeDoneStandsUnderTheSignature() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto opening = shop.now().opened.id;
        expectTurnedAway(shop, correction(opening, R"({"inspection":"another"})"), Code::CannotAmend);
        QVERIFY(shop.sign(Shop::signing()));
        for (const char* with : {R"({"checklist":null})", R"({"visit":"part-ml-special"})", R"({"balloon":null})",
                                 R"({"work":null})", R"({"inspection":"another"})"})
            expectTurnedAway(shop, correction(opening, with), Code::CannotAmend);
    }
    void aLineCorrectedAwayTakesItsGroundAway() {
        Shop shop;
        shop.say(
            R"({"entry":"programme.adopted","on":"2016-05-01","programme":"own","everything":true,"document":{"programme":"own","revision":"1","title":"Own","source":"invented","requirements":[{"id":"own.clean","title":"Clean","source":"invented","kinds":["envelope"],"action":"service","limits":[{"clock":"months","every":12}]}]}})");
        shop.open(Visit::PartMlInspection, {{ItemId("E1"), RequirementId("own.clean")}}).carriedOut().measured();
        QVERIFY(shop.sign(Shop::signing()));
        const auto lines = shop.now().lines;
        const auto own = std::ranges::find(lines, "do/own.clean", [](const auto& line) { return line.body.line; });
        shop.say(correction(own->id, R"({"state":"not-applicable","why":"other","finding":"never done"})"));
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-20")).value();
        QCOMPARE(file.unsupported.size(), std::size_t{1});
        QCOMPARE(file.unsupported.front().fault, Fault(ReleaseFault::NotAccomplished));
    }
    void nothingMoreIsTaken() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(shop.sign(Shop::signing()));
        const auto late = shop.about() + "}";
        for (
            const std::string entry :
            {R"({"entry":"line.settled","on":"2026-06-03","line":"envelope.crown-ring","item":"E1","state":"done")",
             R"({"entry":"line.settled","on":"2026-06-01","line":"envelope.crown-ring","item":"E1","state":"open")",
             R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","unit":"N","value":1)",
             R"({"entry":"defect.found","on":"2026-06-01","item":"E1","defect":"D","what":"x","severity":"minor")",
             R"({"entry":"repair.made","on":"2026-06-01","item":"E1","method":"patch")",
             R"({"entry":"part.replaced","on":"2026-06-01","item":"E1","part":"valve","release_document":"Form 1")",
             R"({"entry":"inspection.closed","on":"2026-06-03","outcome":"abandoned")"})
            expectTurnedAway(shop, entry + late, Code::NotReleasable);
        // Elsewhere the work goes on.
        shop.say(
            R"({"entry":"defect.found","on":"2026-06-04","item":"E1","defect":"D","what":"x","severity":"barring"})");
    }
    void aCorrectionSpeaksAndBothTextsStayLegible() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto settled =
            shop.say(
                    R"({"entry":"line.settled","on":"2026-06-01","item":"E1","state":"done","line":"envelope.crown-ring","finding":"dent, 2 mm")" +
                    shop.about() + "}")
                .ids.at(0);
        const auto closed = shop.sign(Shop::signing()).value().ids.at(0);
        shop.say(correction(settled, R"({"finding":"dent, 3 mm"})"));
        shop.say(correction(closed, R"({"limitations":"not above 2,000 m"})"));
        const auto now = shop.now();
        const auto line = std::ranges::find(now.lines, settled, &Said<LineSettled>::id);
        QCOMPARE(line->body.finding, std::string("dent, 3 mm"));
        QCOMPARE(std::get<LineSettled>(line->first->body).finding, std::string("dent, 2 mm"));
        QCOMPARE(now.closed->body.limitations, std::string("not above 2,000 m"));
        QCOMPARE(std::get<InspectionClosed>(now.closed->first->body).limitations, std::string());
        // What is sealed are the entries as they were written.
        QCOMPARE(now.closed->body.seal->digest, sealDigest(shop.record(), now.closed->body.seal->entries).value());
    }
    void aCorrectionUnderASignatureSaysByWhomAndWhy() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5).ids.at(0);
        shop.say(unsaid(reading, R"("by":"Ada Rhos")")); // before it is signed it is a slip of the pen
        QVERIFY(shop.sign(Shop::signing()));
        for (const char* said : {R"("note":"misread")", R"("by":"Ada Rhos")", R"("by":" ","note":"misread")"})
            expectTurnedAway(shop, unsaid(reading, said), Code::CannotAmend);
        shop.say(correction(reading, R"({"value":305})"));
    }
    void soDoesOneOfWhatStandsBesideTheStatement() {
        Shop shop;
        const auto closing = shop.ready(Visit::PartMlInspection).sign(Shop::signing()).value().ids.front();
        for (const auto& with : besideTheStatement)
            for (const char* said : {R"("by":"Ada Rhos")", R"("note":"misread")", R"("by":" ","note":"misread")"}) {
                const auto problems = problemsOf(shop.record(), unsaidOf(closing, with, said));
                QCOMPARE(problems.size(), std::size_t{1});
                QCOMPARE(problems.front().fault, Fault(ReleaseFault::CorrectedUnsaid));
            }
    }
    void whatWasSignedIsNotCorrectedIntoSomethingElse() {
        Shop shop;
        const auto closed = shop.ready(Visit::PartMlInspection).sign(Shop::signing()).value().ids.at(0);
        shop.say(
            R"({"entry":"inspection.opened","on":"2026-06-01","inspection":"other","visit":"part-ml-special","items":["E1"]})");
        for (const char* with :
             {R"({"outcome":"abandoned"})", R"({"signatory":"Una Past"})", R"({"capacity":"pilot-owner"})",
              R"({"statement":"fit to fly"})", R"({"seal":null})", R"({"clocks":null})", R"({"inspection":"other"})"})
            expectTurnedAway(shop, correction(closed, with), Code::CannotAmend);
        // Nor by way of a correction of a correction.
        const auto harmless = shop.say(correction(closed, R"({"limitations":"none"})")).ids.at(0);
        expectTurnedAway(shop, correction(harmless, R"({"with":{"outcome":"abandoned"}})"), Code::CannotAmend);
        shop.say(correction(harmless, R"({"with":{"limitations":"daylight only"}})"));
        QCOMPARE(shop.now().closed->body.limitations, std::string("daylight only"));
        QCOMPARE(shop.now().closed->body.outcome, Outcome::Released);
        // Nor in the batch that closes another.
        shop.inspection = InspectionId("other");
        expectTurnedAway(
            shop,
            R"({"entry":"inspection.closed","id":"z","on":"2026-06-02","outcome":"abandoned")" + shop.about() + "}\n" +
                R"({"entry":"entry.corrected","on":"2026-06-02","replaces":"z","with":{"outcome":"released","signatory":"Ada Rhos","capacity":"independent-certifying-staff"}})",
            Code::CannotAmend);
    }
    void whatWasSaidIsNotTakenAway() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5).ids.at(0);
        const auto closed = shop.sign(Shop::signing()).value().ids.at(0);
        expectTurnedAway(shop, voided(reading), Code::NotReleasable);
        // A correction may be taken back: then the first words speak again.
        const auto corrected = shop.say(correction(reading, R"({"value":310})")).ids.at(0);
        shop.say(voided(corrected));
        expectTurnedAway(shop, voided(closed), Code::NotReleasable);
        QCOMPARE(shop.now().readings.size(), std::size_t{4});
    }
    void aShopsOwnReleaseIsHeldToTheSame() {
        // 14 CFR 43.11(a)(5), ML.A.403(a) (from memory): see release_gate_test.
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        expectTurnedAway(shop, shop.closing(), Code::NotReleasable);
        QVERIFY(shop.now().isOpen());
        // Nor with the defect in the same batch, found before or after.
        shop.say(shop.clearing("D-1"));
        const auto again =
            R"({"entry":"defect.found","on":"2026-06-01","time":"20:00Z","item":"E1","defect":"D-1","what":"again","severity":"barring"})";
        expectTurnedAway(shop, shop.closing() + "\n" + again, Code::NotReleasable);
        QVERIFY(problemsOf(shop.record(), shop.closing()).empty());
        QCOMPARE(shop.now().closed->body.outcome, Outcome::Released);
    }
    void inOneBatchWithTheClearingItIsTaken() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        // What arrives behind the closing is no part of what was signed, whatever its time says.
        expectTurnedAway(shop, shop.closing() + "\n" + shop.clearing("D-1"), Code::NotReleasable);
        QVERIFY(problemsOf(shop.record(), shop.clearing("D-1") + "\n" + shop.closing()).empty());
        QCOMPARE(shop.now().closed->body.outcome, Outcome::Released);
    }
    void aShopPostsAWholeInspectionAtOnce() {
        Shop shop;
        shop.inspection = InspectionId("from the shop");
        const std::string lines =
            R"({"entry":"inspection.opened","on":"2026-06-01","visit":"part-ml-special","items":["E1"],"balloon":"QE-ONE")" +
            shop.about() + "}\n" +
            R"({"entry":"line.settled","on":"2026-06-01","line":"envelope laid out and looked over","item":"E1","state":"done")" +
            shop.about() + "}\n";
        Shop twin; // what the record composes of it is known once it is there
        twin.inspection = shop.inspection;
        twin.say(lines);
        expectTurnedAway(shop, lines + twin.closing("discrepancies"), Code::NotReleasable); // there is none
        QVERIFY(problemsOf(shop.record(), lines + twin.closing()).empty());
    }
    void noWordIsSlippedInBehindTheClosing() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto word =
            R"({"entry":"line.settled","on":"2026-06-01","line":"envelope.crown-ring","item":"E1","state":"open")" +
            shop.about() + "}";
        expectTurnedAway(shop, shop.closing() + "\n" + word, Code::NotReleasable);
        QVERIFY(problemsOf(shop.record(), shop.closing()).empty());
    }
    void twoClosingsInOneBatch() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        expectTurnedAway(shop, shop.closing() + "\n" + shop.closing(), Code::NotReleasable);
    }
    void aCapacityThatDoesNotExist() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        expectTurnedAway(
            shop,
            R"({"entry":"inspection.closed","on":"2026-06-02","outcome":"released","signatory":"Ada Rhos","capacity":"sailmaker")" +
                shop.about() + "}",
            Code::BadValue);
        expectTurnedAway(shop,
                         R"({"entry":"inspection.closed","on":"2026-06-02","outcome":"released")" + shop.about() + "}",
                         Code::MissingKey);
    }
};

CROWNRING_TEST(LockedInspectionTest, QCoreApplication)
#include "locked_inspection_test.moc"
