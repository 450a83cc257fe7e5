// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/flight_import.h"
#include "acts/post.h"
#include "exchange/log/flight_log.h"
#include "store/record_file.h"
#include "test_class.h"

#include <QtTest>

namespace named_kit_test {

using namespace crownring;

namespace {

/// D-OABC of an envelope, a basket, a burner and two cylinders, and a pool.
constexpr auto fleet = R"({"entry":"balloon.entered","on":"2025-01-01","balloon":"D-OABC"}
{"entry":"item.entered","on":"2025-01-01","item":"ENV-1","kind":"envelope"}
{"entry":"item.entered","on":"2025-01-01","item":"BSK-1","kind":"basket"}
{"entry":"item.entered","on":"2025-01-01","item":"BSK-2","kind":"basket","serial":"K 77"}
{"entry":"item.entered","on":"2025-01-01","item":"BRN-1","kind":"burner"}
{"entry":"item.entered","on":"2025-01-01","item":"CYL-1","kind":"cylinder"}
{"entry":"item.entered","on":"2025-01-01","item":"CYL-2","kind":"cylinder"}
{"entry":"item.entered","on":"2025-01-01","item":"CYL-3","kind":"cylinder"}
{"entry":"item.entered","on":"2025-01-01","item":"Tank 4","kind":"cylinder"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"D-OABC","item":"ENV-1"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"D-OABC","item":"BSK-1"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"D-OABC","item":"BRN-1"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"D-OABC","item":"CYL-1"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"D-OABC","item":"CYL-2"}
{"entry":"item.removed","on":"2025-06-01","time":"10:00Z","balloon":"D-OABC","item":"CYL-2"}
{"entry":"item.fitted","on":"2025-06-01","time":"10:00Z","balloon":"D-OABC","item":"CYL-3"}
)";

}

class NamedKitTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Record> m_record;

    JudgedProposal judged(const std::string& log) {
        const auto preview = previewFlightLog(log, "log.csv");
        auto all = judge(*m_record, preview.flights);
        return all && all->size() == 1 ? all->front() : JudgedProposal{{}, ProposalState::UnknownBalloon};
    }
    /// "BRN-1 BSK-2 …", or what is unknown.
    QString kit(const std::string& log) {
        const auto found = judged(log);
        if (found.state == ProposalState::UnknownItem)
            return QStringLiteral("? ") + QString::fromStdString(found.unknown);
        if (!found.proposal.flight.kit)
            return QStringLiteral("as fitted");
        QStringList items;
        for (const auto& item : *found.proposal.flight.kit)
            items += QString::fromStdString(item.text());
        return items.join(u' ');
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_record =
            std::move(*openRecord(m_folder->filePath(QStringLiteral("r.sqlite")).toStdString(), OpenMode::OrCreate));
        QVERIFY(postText(*m_record, *m_record, fleet, "fleet").has_value());
    }
    void cleanup() {
        m_record.reset();
        m_folder.reset();
    }

    void whatIsNamedFliesInThePlaceOfItsKind_data() {
        QTest::addColumn<QString>("columns");
        QTest::addColumn<QString>("cells");
        QTest::addColumn<QString>("flew");
        const auto row = [](const char* columns, const char* cells, const char* flew) {
            QTest::addRow("%s: %s", columns, cells)
                << QString::fromUtf8(columns) << QString::fromUtf8(cells) << QString::fromUtf8(flew);
        };
        row("basket", "BSK-2", "BRN-1 BSK-2 CYL-1 CYL-2 ENV-1");
        row("basket", "bsk 2", "BRN-1 BSK-2 CYL-1 CYL-2 ENV-1");
        row("basket", "k77", "BRN-1 BSK-2 CYL-1 CYL-2 ENV-1");
        row("Korb", "BSK-2", "BRN-1 BSK-2 CYL-1 CYL-2 ENV-1");
        row("basket", "", "as fitted");
        row("basket", "BRN-1", "? BRN-1");
        row("basket", "BSK-9", "? BSK-9");
        row("cylinders", "CYL-3/Tank 4", "BRN-1 BSK-1 CYL-3 ENV-1 Tank 4");
        row("cylinders", "CYL-3 CYL-1", "BRN-1 BSK-1 CYL-1 CYL-3 ENV-1");
        row("cylinders", "4", "as fitted");
        row("basket;cylinders", "BSK-2;CYL-3", "BRN-1 BSK-2 CYL-3 ENV-1");
        row("kit", "ENV-1, BSK-2, BRN-1, CYL-3", "BRN-1 BSK-2 CYL-3 ENV-1");
    }
    void whatIsNamedFliesInThePlaceOfItsKind() {
        QFETCH(QString, columns);
        QFETCH(QString, cells);
        QFETCH(QString, flew);
        QCOMPARE(kit("reg;date;min;" + columns.toStdString() + "\nD-OABC;2025-05-01;50;" + cells.toStdString() + "\n"),
                 flew);
    }

    void theRestIsWhatWasFittedAtThatHour() {
        const std::string heading = "reg;date;take-off (UTC);min;basket\n";
        QCOMPARE(kit(heading + "D-OABC;2025-06-01;07:00;50;BSK-2\n"), QStringLiteral("BRN-1 BSK-2 CYL-1 CYL-2 ENV-1"));
        QCOMPARE(kit(heading + "D-OABC;2025-06-01;17:00;50;BSK-2\n"), QStringLiteral("BRN-1 BSK-2 CYL-1 CYL-3 ENV-1"));
    }

    void whatIsAcceptedCountsOnWhatFlew() {
        const auto preview = previewFlightLog("reg;date;min;basket\nD-OABC;2025-05-01;50;BSK-2\n", "log.csv");
        const auto all = judge(*m_record, preview.flights);
        QCOMPARE(accept(*m_record, *m_record, *all, "log.csv")->ids.size(), std::size_t{1});
        const auto clocks =
            m_record->clocks({{ItemId("BSK-1"), CivilDate::last()}, {ItemId("BSK-2"), CivilDate::last()}});
        QCOMPARE((*clocks)[0]->minutes, std::optional(Minutes(0)));
        QCOMPARE((*clocks)[1]->minutes, std::optional(Minutes(50)));
    }

    void aRegistrationInAnotherSpellingIsThatBalloon() {
        for (const char* written : {"d-oabc", "DOABC", "D OABC"}) {
            const auto found = judged(std::string("reg;date;min\n") + written + ";2025-05-01;50\n");
            QCOMPARE(found.state, ProposalState::New);
            QCOMPARE(found.proposal.balloon, Registration("D-OABC"));
            QCOMPARE(found.proposal.flight.balloon, Registration("D-OABC"));
            QCOMPARE(found.written, std::string(written));
        }
        QCOMPARE(judged("reg;date;min\nD-OABD;2025-05-01;50\n").state, ProposalState::UnknownBalloon);
        QCOMPARE(judged("reg;date;min\nD-OABC;2025-05-01;50\n").written, std::string());
    }
};

CROWNRING_TEST(NamedKitTest, QCoreApplication)

}

#include "named_kit_test.moc"
