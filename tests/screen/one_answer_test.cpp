// SPDX-License-Identifier: GPL-3.0-or-later

/// The screen and crownringctl are asked the same of one record and tell the same figures, or withhold them both.

#include "ctl/answer.h"
#include "demo_house.h"
#include "screen/balloons/balloon_model.h"
#include "screen/bench/small_bench.h"
#include "screen/bench/visit_opening.h"
#include "screen/desk/due_model.h"
#include "screen/fabric/fabric_answers.h"
#include "screen/fabric/fabric_desk.h"
#include "screen/fabric/fabric_words.h"
#include "test_class.h"
#include "words/words.h"

#include <QApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QtTest>

#include <cmath>

using namespace crownring;
using namespace crownring::screen;
using namespace crownring::testing;
using namespace crownring::words;
using nlohmann::json;

namespace {

QStringList matches(const QString& text, const QString& pattern) {
    QStringList found;
    auto each = QRegularExpression(pattern).globalMatch(text);
    while (each.hasNext())
        found += each.next().captured();
    found.sort();
    return found;
}

QStringList figuresIn(const QString& text) { return matches(text, QStringLiteral(R"(\d+(\.\d+)?)")); }
QStringList daysIn(const QString& text) { return matches(text, QStringLiteral(R"(\d{4}-\d\d-\d\d)")); }

/// What crownringctl tells of a band, as the screen would write it.
template <class Written>
QStringList told(const json& band, Written written) {
    QStringList figures;
    for (const auto* place : {"p05", "p50", "p95"})
        if (band.is_object() && !band[place].is_null())
            figures += written(band[place]);
    figures.sort();
    return figures;
}

/// Each hundred hours flown, three pulls, weaker each time.
std::string pulled(int hundreds, int hoursBetween, double first) {
    std::string entries;
    for (int step = 1; step <= hundreds; ++step) {
        const auto day = step <= 9 ? "2025-0" + std::to_string(step) : "2025-" + std::to_string(step);
        entries += R"({"entry":"flight.logged","on":")" + day + R"(-01","balloon":"QE-SML","minutes":)" +
                   std::to_string(hoursBetween * 60) + "}\n";
        for (int gore = 1; gore <= 3; ++gore) {
            const double value = first * std::exp(-0.002 * step * hoursBetween) * (0.95 + 0.05 * gore);
            entries += R"({"entry":"reading.taken","on":")" + day +
                       R"(-02","item":"ENV-1","quantity":"grab-strength","unit":"N","jaw_mm":25,"row":10,"gore":)" +
                       std::to_string(gore) + R"(,"value":)" + std::to_string(std::lround(value)) + "}\n";
        }
    }
    return entries;
}

std::string held(int pulls) {
    std::string entries;
    for (int gore = 1; gore <= pulls; ++gore)
        entries +=
            R"({"entry":"reading.taken","on":"2025-03-02","item":"ENV-1","quantity":"grab-strength","unit":"N","jaw_mm":25,"row":10,"gore":)" +
            std::to_string(gore) + R"(,"held_at":135})" + "\n";
    return entries;
}

}

class OneAnswerTest : public QObject {
    Q_OBJECT

    static Answer ctl(const QString& record, QStringList words) {
        return answerOf(QStringLiteral(CROWNRINGCTL), QStringList{QStringLiteral("--record"), record} + words);
    }

    /// When the limit that governs a row is due, as crownringctl tells it and as the screen would write it.
    static QString dueOf(const json& row) {
        for (const auto& limit : row["limits"])
            if (limit["clock"] == row["governs"] && limit["standing"] == row["standing"] && !limit["due"].is_null())
                return limit["due"].is_string() ? QString::fromStdString(limit["due"].get<std::string>())
                                                : Words::amount(*clockNameFrom(limit["clock"].get<std::string>()),
                                                                limit["due"].get<std::int64_t>());
        return {};
    }

private slots:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }

    /// What governs a row, and the order of the rows.
    void theDueList() {
        DemoHouse demo;
        QVERIFY(demo.ready());
        const auto answer = ctl(
            demo.folder.filePath(QStringLiteral("record.sqlite")),
            {QStringLiteral("due"), QStringLiteral("--on"), QStringLiteral("2026-11-25"), QStringLiteral("--json")});
        QVERIFY2(answer.code == 0, answer.err.constData());
        const auto told = answer.document()["rows"];
        const auto sheet = demo.house.fleet.sheet();
        QCOMPARE(told.size(), sheet->rows().size());
        for (std::size_t at = 0; at < told.size(); ++at) {
            const auto& row = sheet->rows()[at];
            QCOMPARE(told[at]["item"].get<std::string>(), row.item->id.text());
            QCOMPARE(told[at]["requirement"].get<std::string>(), row.requirement->id.text());
            QCOMPARE(told[at]["standing"].get<std::string>(), std::string(standingText(row.state.standing)));
            QCOMPARE(dueOf(told[at]), DueTexts::due(row));
        }
        // What governs each balloon.
        const auto balloons = ctl(demo.folder.filePath(QStringLiteral("record.sqlite")),
                                  {QStringLiteral("balloons"), QStringLiteral("--on"), QStringLiteral("2026-11-25"),
                                   QStringLiteral("--json")})
                                  .document()["balloons"];
        QCOMPARE(balloons.size(), sheet->balloons().size());
        for (const auto& each : balloons) {
            const auto line = balloonLine(*sheet, *sheet->card(Registration(each["balloon"].get<std::string>())));
            const auto& headline = sheet->headlineOf(Registration(each["balloon"].get<std::string>()));
            QCOMPARE(std::string(standingText(static_cast<Standing>(line.standing))),
                     each["standing"].get<std::string>());
            QCOMPARE(headline.row == nullptr, each["requirement"].is_null());
            if (headline.row) {
                QCOMPARE(headline.row->requirement->id.text(), each["requirement"].get<std::string>());
                QCOMPARE(headline.row->item->id.text(), each["item"].get<std::string>());
            }
        }
    }

    /// The visits that can be opened are those that the gate takes.
    void theVisits() {
        QTemporaryDir folder;
        const auto file = folder.filePath(QStringLiteral("one.sqlite"));
        House house(*CivilDate::parse("2026-11-25"), false);
        house.desk.open(file, QByteArray(smallBench));
        QVERIFY(QTest::qWaitFor([&] { return house.fleet.ready(); }, patience));
        VisitOpening opening;
        QStringList offered;
        for (const auto& visit : opening.visits()->choices())
            offered += visit.value;
        const auto opened = [&](const QString& visit) {
            const auto entry = QStringLiteral(R"({"entry":"inspection.opened","on":"2026-11-25","inspection":"I %1",)"
                                              R"("visit":"%1","items":["ENV-1"]})")
                                   .arg(visit);
            return answerOf(QStringLiteral(CROWNRINGCTL),
                            {QStringLiteral("--record"), file, QStringLiteral("post"), QStringLiteral("-")},
                            entry.toUtf8());
        };
        for (const auto& visit : offered)
            QCOMPARE(opened(visit).code, 0);
        const auto refused = opened(QStringLiteral("picnic"));
        QCOMPARE(refused.code, 2);
        QVERIFY2(QString::fromUtf8(refused.err).contains(offered.join(QStringLiteral(", "))), refused.err.constData());
    }

    void fabric_data() {
        QTest::addColumn<QByteArray>("entries");
        QTest::addColumn<bool>("enough");
        QTest::addColumn<int>("ends"); ///< of the band of life that are told
        const auto row = [](const char* name, const std::string& entries, bool enough, int ends) {
            QTest::newRow(name) << QByteArray::fromStdString(entries) << enough << ends;
        };
        row("held tests alone", held(3), false, 1);
        row("one test", pulled(1, 20, 300), false, 1);
        row("tests of one age", pulled(1, 150, 400), false, 1);
        row("tests of many ages", pulled(5, 70, 400), true, 3);
        row("beyond its limit already", pulled(8, 100, 400), false, 0);
    }
    void fabric() {
        QFETCH(QByteArray, entries);
        QFETCH(bool, enough);
        QFETCH(int, ends);
        QTemporaryDir folder;
        const auto file = folder.filePath(QStringLiteral("one.sqlite"));
        House house(*CivilDate::parse("2026-11-25"), false);
        house.desk.open(file, QByteArray(smallBench) + entries);
        QVERIFY(QTest::qWaitFor([&] { return house.fleet.ready(); }, patience));
        In<FabricDesk> desk(house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold(); }, patience));

        const QStringList call{QStringLiteral("fabric"), QStringLiteral("forecast"), QStringLiteral("ENV-1"),
                               QStringLiteral("--on"), QStringLiteral("2026-11-25")};
        const auto answer = ctl(file, call + QStringList{QStringLiteral("--json")});
        QVERIFY2(answer.code == 0, answer.err.constData());
        const auto document = answer.document();

        QCOMPARE(document["enough"].get<bool>(), enough);
        QCOMPARE(desk.isForetoldByReadings(), enough);

        const auto strength = [](double value) { return QLocale().toString(value, 'f', value < 10 ? 1 : 0); };
        QCOMPARE(figuresIn(answerTo(desk, QStringLiteral("How strong"))), told(document["strength"], strength));
        const double now = document["hours_now"];
        const auto more = [&](double hours) { return QString::number(std::lround(hours - now)); };
        QCOMPARE(figuresIn(answerTo(desk, QStringLiteral("Until its limit"))), told(document["life"], more));
        QCOMPARE(told(document["life"], more).size(), ends);
        const auto day = [](const json& date) { return QString::fromStdString(date.get<std::string>()); };
        QCOMPARE(daysIn(answerTo(desk, QStringLiteral("On which day"))), told(document["dates"], day));

        const auto chance = [&](const char* key) {
            return document[key].is_null() ? QStringLiteral("not known from these readings")
                                           : FabricWords::chance(document[key].get<double>());
        };
        QCOMPARE(answerTo(desk, QStringLiteral("Chance that one test")), chance("fails_next"));
        QCOMPARE(answerTo(desk, QStringLiteral("Chance that the fabric itself")), chance("below_by_next"));
        QCOMPARE(desk.pulls()->count(), static_cast<int>(document["next_reading"].size()));
        QCOMPARE(desk.chart()->hasBand(), enough);

        desk.setHoursAhead(100);
        const auto foretold = std::ranges::count(desk.panels()->marks(), panel::Reading::Forecast, &PanelMark::reading);
        QCOMPARE(foretold > 0, enough);

        // The page for people tells no more than the document: each figure of it that is no fact is withheld.
        const auto page = QString::fromUtf8(ctl(file, call).out);
        QCOMPARE(page.contains(QStringLiteral("to the limit at")), ends == 3);
        QCOMPARE(page.contains(QStringLiteral("the next test fails")), enough);
        QCOMPARE(page.contains(QStringLiteral("would narrow")), !document["next_reading"].empty());
    }
};

CROWNRING_TEST(OneAnswerTest, QApplication)
#include "one_answer_test.moc"
