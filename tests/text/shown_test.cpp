// SPDX-License-Identifier: GPL-3.0-or-later
#include "test_class.h"
#include "text/shown.h"
#include "text/utf8.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>

namespace shown_test {

using namespace crownring;

/// Names are text everywhere: nothing of them is obeyed, nothing of them is hidden.
class ShownTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsHiddenBecomesVisible_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("shows");
        QTest::newRow("plain") << QByteArray("QE-OAK, Ümläut 気球") << QByteArray("QE-OAK, Ümläut 気球");
        QTest::newRow("a terminal's command") << QByteArray("a\x1b[2Jb") << QByteArray("a<U+001B>[2Jb");
        QTest::newRow("nothing") << QByteArray("a\0b", 3) << QByteArray("a<U+0000>b");
        QTest::newRow("C1") << QByteArray("a\xC2\x9B"
                                          "b")
                            << QByteArray("a<U+009B>b");
        QTest::newRow("delete") << QByteArray("a\x7F"
                                              "b")
                                << QByteArray("a<U+007F>b");
        // UAX #9, table of explicit directional formatting characters.
        QTest::newRow("right to left") << QByteArray("\u202Egnp.exe") << QByteArray("<U+202E>gnp.exe");
        QTest::newRow("isolate") << QByteArray("a\u2066b\u2069c") << QByteArray("a<U+2066>b<U+2069>c");
        QTest::newRow("no room") << QByteArray("a\u200Bb\uFEFFc") << QByteArray("a<U+200B>b<U+FEFF>c");
        QTest::newRow("no UTF-8") << QByteArray("a\xFF"
                                                "b")
                                  << QByteArray("a<byte FF>b");
        QTest::newRow("a surrogate") << QByteArray("\xED\xA0\x80") << QByteArray("<byte ED><byte A0><byte 80>");
        QTest::newRow("lines") << QByteArray("one\ntwo\tthree") << QByteArray("one\ntwo\tthree");
    }
    void whatIsHiddenBecomesVisible() {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, shows);
        QCOMPARE(QByteArray::fromStdString(shown(text.toStdString())), shows);
    }
    void onOneLineThereAreNoLines() { QCOMPARE(shownOnOneLine("one\ntwo"), std::string("one<U+000A>two")); }
    void jsonStaysTheSameDocument() {
        const QString name = QStringLiteral("QE-") + QChar(0x202E) + QStringLiteral("KAO\n") + QChar(0x9B);
        const auto serialised = QJsonDocument(QJsonObject{{"name", name}}).toJson();
        const auto escaped = QByteArray::fromStdString(escapedJson(serialised.toStdString()));
        QVERIFY(escaped.contains("\\u202E") && escaped.contains("\\u009B"));
        QCOMPARE(QJsonDocument::fromJson(escaped)["name"].toString(), name);
    }
    void theFirstBadByteIsNamed() {
        QVERIFY(!firstBadByte("grün"));
        QCOMPARE(firstBadByte("ab\xC3"), std::optional<std::size_t>(2));
        QCOMPARE(firstBadByte("\xC0\x80"), std::optional<std::size_t>(0)); // overlong
    }
};

CROWNRING_TEST(ShownTest)

}

#include "shown_test.moc"
