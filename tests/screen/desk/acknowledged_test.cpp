// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "screen/desk/house.h"
#include "screen/desk/proof/acknowledgements.h"
#include "test_class.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace crownring;
using namespace crownring::screen;

namespace {

std::string balloon(const char* name) {
    return R"({"entry":"balloon.entered","on":"2026-01-01","balloon":")" + std::string(name) + "\"}";
}

}

/// What the record acknowledged is kept outside it.
class AcknowledgedTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder{QDir::currentPath() + QStringLiteral("/acknowledged-XXXXXX")};
    QString m_file = m_folder.filePath(QStringLiteral("record.crownring"));

    /// What the screen says of the record when it opens it; posts `lines` then.
    QString openedAndPosted(const std::string& lines, bool goOn = false) {
        House house(CivilDate::parse("2026-11-25").value(), false);
        auto& desk = house.desk;
        desk.open(m_file);
        if (!QTest::qWaitFor([&] { return desk.isOpen(); }, 30'000))
            return desk.trouble();
        const auto said = desk.setBack();
        if (goOn)
            desk.goOnSetBack();
        if (!lines.empty()) {
            auto posted = desk.ask([lines](Record& record) { return postText(record, record, lines, {}).has_value(); });
            if (!QTest::qWaitFor([&] { return posted.isFinished(); }, 30'000) || !posted.result())
                return QStringLiteral("not posted");
        }
        return said;
    }

private slots:
    void initTestCase() {
        // Of what lies in the folder for what is temporary nobody keeps anything; the tree may lie there.
        QVERIFY(QDir(m_folder.path()).mkdir(QStringLiteral("temporary")));
        qputenv("TMPDIR", QFile::encodeName(m_folder.filePath(QStringLiteral("temporary"))));
    }
    void anOlderCopyInItsPlaceIsNoticed() {
        QCOMPARE(openedAndPosted(balloon("QE-ONE")), QString());
        QVERIFY(QFile::copy(m_file, m_file + QStringLiteral(".older")));
        QCOMPARE(openedAndPosted(balloon("QE-TWO")), QString());
        QCOMPARE(acknowledgedAt(m_file).size(), 1U);
        QCOMPARE(openedAndPosted({}), QString());
        QVERIFY(QFile::remove(m_file));
        QVERIFY(QFile::rename(m_file + QStringLiteral(".older"), m_file));
        const auto said = openedAndPosted({});
        QVERIFY2(said.startsWith(QStringLiteral("Entry 2 of ")), qPrintable(said));
        QVERIFY(!openedAndPosted({}, true).isEmpty());
        QCOMPARE(openedAndPosted({}), QString());
    }
};

CROWNRING_TEST(AcknowledgedTest, QCoreApplication)
#include "acknowledged_test.moc"
