// SPDX-License-Identifier: GPL-3.0-or-later
/// What is altered round the program in a record that is open is noticed, though nobody asks for a verification and no
/// answer rests on it.
#include "acts/post.h"
#include "screen/desk/record_desk.h"
#include "store/connection/connection.h"
#include "test_class.h"

#include <QtTest>

namespace prover_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* shed = R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"flight.logged","id":"f","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-03-01","balloon":"QE-ONE","minutes":60})";

void alter(const QString& file) {
    const Connection other(file.toStdString(), Access::ReadWrite);
    other.run("DROP TRIGGER entry_is_never_changed");
    other.run("UPDATE entry SET body = replace(body, '60', '50') WHERE entry_id = 'f'");
}

}

class ProverTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath("shed.crownring");
    std::unique_ptr<RecordDesk> m_desk;
    int m_changed = 0;

    bool isPosted() {
        auto posted =
            m_desk->ask([](Record& record) { return postText(record, record, flight, "flight.jsonl").has_value(); });
        posted.waitForFinished();
        return posted.result();
    }
    bool isProven() {
        auto proven = m_desk->ask([](Record& record) { return record.isProven().value(); });
        proven.waitForFinished();
        return proven.result();
    }
    void open(bool proveWhole = true) {
        m_desk = std::make_unique<RecordDesk>(nullptr);
        m_desk->proveWhole(proveWhole);
        connect(m_desk.get(), &RecordDesk::changed, this, [this] { ++m_changed; });
        m_desk->open(m_file, shed);
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isOpen(), 30'000);
    }

private slots:
    void init() { open(); }
    void cleanup() {
        m_desk.reset();
        for (const auto* ending : {"", "-wal", "-shm", ".copy"})
            QFile::remove(m_file + QLatin1String(ending));
    }

    void whileItIsOpen() {
        QVERIFY(isProven());
        QVERIFY(isPosted());
        QVERIFY(isProven());
        alter(m_file);
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isDamaged(), 60'000);
        QVERIFY(m_desk->readOnly());
        QVERIFY2(m_desk->trouble().contains("'f' is not what was written"), qPrintable(m_desk->trouble()));
        QVERIFY(!isPosted());
    }
    void beforeItIsOpened() {
        m_desk.reset();
        alter(m_file);
        open();
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isDamaged(), 30'000);
        QVERIFY(!isPosted());
    }
    void aCopyIsProvenAndNothingIsAskedAnewForIt() {
        m_desk.reset();
        QVERIFY(QFile::copy(m_file, m_file + ".copy"));
        QVERIFY(QFile::remove(m_file));
        QVERIFY(QFile::rename(m_file + ".copy", m_file));
        m_changed = 0;
        open(false);
        QVERIFY(!isProven());
        QTest::qWait(1000); // two looks for what others wrote
        const int alone = std::exchange(m_changed, 0);
        m_desk.reset();
        open();
        QTRY_VERIFY_WITH_TIMEOUT(isProven(), 30'000);
        QTest::qWait(1000);
        QCOMPARE(m_changed, alone);
        QVERIFY(!m_desk->isDamaged());
    }
    /// Nothing that it says knows of what was written later.
    void theBackupThatTakesItsPlaceSaysWhatItLacks() {
        m_desk.reset();
        QVERIFY(QFile::copy(m_file, m_file + ".copy"));
        open();
        QVERIFY(isPosted());
        alter(m_file);
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isDamaged(), 60'000);
        m_desk->open(m_file + ".copy");
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isOpen() && !m_desk->isDamaged(), 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->setBack().isEmpty(), 30'000);
        QVERIFY2(m_desk->setBack().contains("older copy") && m_desk->setBack().contains("3 entries, this one 2"),
                 qPrintable(m_desk->setBack()));
        m_desk->goOnSetBack();
        QVERIFY(m_desk->setBack().isEmpty());
        const QTemporaryDir elsewhere;
        m_desk->open(elsewhere.filePath("other.crownring"));
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isOpen(), 30'000);
        QTest::qWait(200);
        QVERIFY(m_desk->setBack().isEmpty());
        m_desk.reset();
    }
    void itIsClosedWhileAProofIsUnderWay() {
        m_desk.reset();
        QVERIFY(QFile::copy(m_file, m_file + ".copy"));
        for (int i = 0; i < 5; ++i) {
            RecordDesk desk(nullptr);
            desk.open(m_file + ".copy");
            QTRY_VERIFY_WITH_TIMEOUT(desk.isOpen(), 30'000);
        }
        QVERIFY(openRecord((m_file + ".copy").toStdString(), OpenMode::Existing).value()->verify().value().intact);
    }
};

CROWNRING_TEST(ProverTest, QCoreApplication)

}

#include "prover_test.moc"
