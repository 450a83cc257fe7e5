// SPDX-License-Identifier: GPL-3.0-or-later

/// What happened, and what it made due, stands on the papers of the visit that answers it, and on a paper of the
/// balloon. ML.A.902(b) and ML.A.305, from memory: no flight after it without appropriate action, which the record
/// shows.

#include "every_visit.h"
#include "sheets/event_status.h"
#include "test_class.h"

#include <QtTest>

namespace event_papers_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// The rows of a paper that speak of something.
QStringList rowsWith(const QString& paper, const char* words) {
    return paper.split(u'\n').filter(QLatin1String(words));
}

EventStatusLine overTemperature() {
    EventStatusLine line;
    line.event = {"over-temperature", {}, Celsius(135), Minutes(2)};
    line.event.stamp.at = Moment::startOf(day("2026-05-02"));
    line.subject = "QE-ONE";
    line.madeDue = {{ItemId("E1"), "Strength test", "Manual 4.1", day("2026-05-20")},
                    {ItemId("E1"), "Special inspection", "Appendix II", std::nullopt}};
    return line;
}

QString statusOf(const std::vector<EventStatusLine>& lines) {
    return QString::fromStdString(paper::toText(
        eventStatus(Registration("QE-ONE"), day("2026-01-01"), day("2026-06-01"), lines, english), english, 4000));
}

}

class EventPapersTest : public QObject {
    Q_OBJECT
private slots:
    void theReportAndTheLogbookSayWhatHappenedAndWhatItMadeDue_data() {
        QTest::addColumn<SheetKind>("kind");
        QTest::newRow("report") << SheetKind::Report;
        QTest::newRow("logbook") << SheetKind::Logbook;
    }
    void theReportAndTheLogbookSayWhatHappenedAndWhatItMadeDue() {
        QFETCH(const SheetKind, kind);
        EveryVisit visit(Visit::PartMlSpecial);
        QCOMPARE(visit.sign(), QString());
        const auto paper = visit.paper(kind);
        QVERIFY2(paper.contains(QStringLiteral("What happened")), qPrintable(paper));
        const auto rows = rowsWith(paper, "hard landing");
        QVERIFY2(!rows.isEmpty(), qPrintable(paper));
        QVERIFY2(rows.join(u'\n').contains(QString::fromStdString(spoken(day("2026-05-31")))),
                 qPrintable(rows.join(u'\n')));
        QVERIFY2(rows.join(u'\n').contains(QStringLiteral("Special inspection")), qPrintable(rows.join(u'\n')));
        for (const auto& item : visit.shop.items)
            QVERIFY2(rows.join(u'\n').contains(QString::fromStdString(item.text())), qPrintable(rows.join(u'\n')));
    }
    void theJsonSaysWhatHappenedToo() {
        EveryVisit visit(Visit::PartMlSpecial);
        const auto events = inspectionJson(visit.file(), english).at("events");
        QCOMPARE(events.size(), std::size_t{1});
        QCOMPARE(events[0].at("event").get<std::string>(), std::string("hard-landing"));
        QCOMPARE(events[0].at("on").get<std::string>(), std::string("2026-05-31"));
        QVERIFY(events[0].at("temp_c").is_null() && events[0].at("minutes").is_null());
        QCOMPARE(events[0].at("made_due")[0].at("requirement").get<std::string>(),
                 std::string("ml.special-inspection"));
        QVERIFY(inspectionJson(EveryVisit(Visit::PartMlInspection).file(), english).at("events").empty());
    }
    /// What was answered before, or came after the signature, is another visit's.
    void eachVisitSpeaksOfItsOwnEvents() {
        EveryVisit visit(Visit::PartMlSpecial);
        QCOMPARE(visit.sign(), QString());
        visit.shop.say(R"({"entry":"event.reported","on":"2026-06-10","balloon":"QE-ONE","event":"wire-contact"})");
        QVERIFY(!visit.paper(SheetKind::Report, "2026-06-12").contains(QStringLiteral("wire contact")));
        QCOMPARE(visit.file("2026-06-12").events.size(), std::size_t{1});
        QCOMPARE(visit.file("2026-06-12").events.front().madeDue.size(), visit.shop.items.size());
    }
    void anInspectionThatNothingCalledForSaysNothingOfEvents() {
        EveryVisit visit(Visit::PartMlInspection);
        QVERIFY(visit.file().events.empty());
        QVERIFY(!visit.paper(SheetKind::Report).contains(QStringLiteral("What happened")));
        QVERIFY(!visit.paper(SheetKind::Logbook).contains(QStringLiteral("What happened")));
    }

    void aBalloonsPaperSaysOfEachEventWhatIsOpenAndWhatWasDone() {
        const auto paper = statusOf({overTemperature()});
        for (const char* words : {"QE-ONE", "over-temperature", "135 °C", "0:02 h", "Strength test", "Manual 4.1"})
            QVERIFY2(paper.contains(QString::fromUtf8(words)), words);
        const auto done = rowsWith(paper, "Strength test").value(0);
        QVERIFY2(done.contains(QString::fromStdString(spoken(day("2026-05-20")))) &&
                     !done.contains(QStringLiteral("OPEN")),
                 qPrintable(done));
        QVERIFY(rowsWith(paper, "Special inspection").value(0).contains(QStringLiteral("OPEN")));
    }
    void thatAReportMayBeOwedStandsThereUntilOneIsInTheRecord() {
        auto line = overTemperature();
        line.reportUntil = Moment(Moment::startOf(day("2026-05-05")).minutes() + 400);
        QVERIFY(statusOf({line}).contains(QStringLiteral("06:40 UTC; no report is in the record")));
        line.reportUntil.reset();
        line.reports = {"2026-05-04: told"};
        QVERIFY(statusOf({line}).contains(QStringLiteral("2026-05-04: told")));
    }
    void whatMadeNothingDueIsSaidToHave() {
        auto line = overTemperature();
        line.madeDue.clear();
        QVERIFY(statusOf({line}).contains(QStringLiteral("nothing that is adopted")));
        QVERIFY(statusOf({}).contains(QStringLiteral("No event is reported")));
    }
};

CROWNRING_TEST(EventPapersTest, QCoreApplication)

}

#include "event_papers_test.moc"
