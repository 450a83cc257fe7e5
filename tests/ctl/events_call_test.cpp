// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl events and fuel: the keys of their answers.

#include "ctl/own_record.h"
#include "ctl/sample_events.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace events_call_test {

using namespace crownring;
using namespace crownring::testing;

class EventsCallTest : public QObject, OwnRecord {
    Q_OBJECT

    [[nodiscard]] nlohmann::json rows() const {
        return ctl({"events", "--on", "2026-05-05", "--balloon", "QE-ONE", "--days", "60", "--json"})
            .document()["rows"];
    }

private slots:
    void initTestCase() { QCOMPARE(ctl({"post", "-"}, QByteArray(sampleEvents) + burningFlights()).code, 0); }

    void anEventIsToldWithWhatItMadeDueAndItsClock() {
        const auto told = rows();
        QCOMPARE(told.size(), std::size_t{2}); // the mildew is older
        const auto& wire = told[0];
        QCOMPARE(wire["entry"].get<std::string>(), std::string("wire"));
        QCOMPARE(wire["balloon"].get<std::string>(), std::string("QE-ONE"));
        QCOMPARE(wire["altitude_m"].get<double>(), 35.0);
        QVERIFY(wire["made_due"].empty()); // nothing that is adopted waits for it
        QCOMPARE(wire["report"]["until"].get<std::string>(), std::string("2026-05-06 06:40 UTC"));
        QVERIFY(wire["report"]["rule"].get<std::string>().find("376/2014") != std::string::npos);
        QVERIFY(wire["report"]["made"].empty());
        const auto& dry = told[1];
        QCOMPARE(dry["item"].get<std::string>(), std::string("R1"));
        QCOMPARE(dry["minutes"].get<int>(), 2);
        QCOMPARE(dry["made_due"].size(), std::size_t{1});
        QCOMPARE(dry["made_due"][0]["requirement"].get<std::string>(), std::string("event.coil-run-dry"));
        QCOMPARE(dry["made_due"][0]["standing"].get<std::string>(), std::string("lapsed"));
        QVERIFY(!dry["made_due"][0]["source"].get<std::string>().empty());
        QCOMPARE(dry["report"]["until"].get<std::string>(), std::string("2026-05-04 00:00 UTC")); // no time was stated
    }
    void whatWasDoneSinceIsToldAndTheBalloonHasItAsAPaper() {
        QVERIFY(rows()[1]["answered"].empty());
        QCOMPARE(
            ctl({"post", "-"},
                R"({"entry":"requirement.done","on":"2026-05-04","item":"R1","requirement":"event.coil-run-dry","ref":"WO 7","signatory":"Ada","licence":"L 1"})")
                .code,
            0);
        const auto dry = rows()[1];
        QVERIFY(dry["made_due"].empty());
        QCOMPARE(dry["answered"].dump(),
                 std::string(
                     R"([{"done":"2026-05-04","evidence":"paper","item":"R1","requirement":"event.coil-run-dry"}])"));
        const auto file = path("events.pdf");
        const QStringList asked{"events", "--on", "2026-05-05", "--balloon", "QE-ONE", "--to", file};
        QCOMPARE(ctl(asked).code, 0);
        QCOMPARE(ctl(asked).code, 2); // it is there
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")});
        QVERIFY(reader.waitForFinished());
        const auto paper = QString::fromUtf8(reader.readAllStandardOutput());
        for (const char* words :
             {"QE-ONE", "coil run dry", "done on", "wire contact", "nothing that is adopted", "06:40 UTC"})
            QVERIFY2(paper.contains(QLatin1String(words)), words);
        QCOMPARE(ctl({"events", "--to", file, "--force"}).code, 2); // of which balloon?
    }
    void fuelIsProposedByTheLog() {
        const auto fuel = ctl({"fuel", "QE-ONE", "--on", "2026-05-05", "--json"}).document();
        QCOMPARE(fuel["unit"].get<std::string>(), std::string("kg/h"));
        QCOMPARE(fuel["flights"].get<int>(), 15);
        QCOMPARE(fuel["alike"].get<int>(), 12);
        QVERIFY(fuel["raised"].get<bool>() && !fuel["reported"].get<bool>());
        QVERIFY(std::abs(fuel["rise"].get<double>() - 0.185) < 0.01);
        QVERIFY(fuel["interval"][0].get<double>() > 0);
        QVERIFY(!fuel.contains("why"));
        QVERIFY(ctl({"fuel", "QE-ONE", "--on", "2026-03-15", "--json"}).document().contains("why"));
    }
    /// Its own sheet, printed and photographed; poppler's pdftoppm stands for both.
    void aTagOnAPictureIsItsItem() {
        const auto picture = [&](const char* item) {
            const auto sheet = path("tags.pdf");
            if (ctl({"tags", "--items", item, "--to", sheet, "--on", "2026-05-05", "--force"}).code != 0)
                return QString();
            const auto made =
                answerOf(QStringLiteral("pdftoppm"), {"-r", "110", "-png", "-singlefile", sheet, path(item)});
            return made.code == 0 ? path(item) + QStringLiteral(".png") : QString();
        };
        const auto burner = picture("R1");
        const auto read = ctl({"tag", burner, "--on", "2026-05-05", "--json"});
        QVERIFY2(read.code == 0, read.err.constData());
        QCOMPARE(read.document()["item"].get<std::string>(), std::string("R1"));
        QCOMPARE(read.document()["kind"].get<std::string>(), std::string("burner"));
        QCOMPARE(read.document()["balloon"].get<std::string>(), std::string("QE-ONE"));
        const auto before = ctl({"tag", burner, "--on", "2025-12-31"}); // it is in the record since 2026
        QCOMPARE(before.code, 2);
        QVERIFY2(before.err.contains("no item of that name"), before.err.constData());
        QCOMPARE(ctl({"tag", path("tags.pdf"), "--on", "2026-05-05"}).code, 2);
    }
    void thatItWasReportedIsSaidWhereAnEntrySaysSo() {
        QCOMPARE(ctl({"post", "-"}, wireWasNotified).code, 0);
        const auto made = rows()[0]["report"]["made"];
        QCOMPARE(made.size(), std::size_t{1});
        QCOMPARE(made[0]["to"].get<std::string>(), std::string("authority"));
        QCOMPARE(made[0]["ref"].get<std::string>(), std::string("ECR-7"));
        const auto table = ctl({"events", "--on", "2026-05-05"}).out;
        QVERIFY2(table.contains("reported to the authority (ECR-7)"), table.constData());
        QCOMPARE(ctl({"verify", "--json"}).document()["intact"].get<bool>(), true);
    }
};

CROWNRING_TEST(EventsCallTest, QCoreApplication)

}

#include "events_call_test.moc"
