// SPDX-License-Identifier: GPL-3.0-or-later

/// A name is text, whatever is in it: a balloon called `<img src='far'>` is read as such in every place, and fetches
/// nothing.

#include "heard_warnings.h"
#include "program/places.h"
#include "screen/bench/small_bench.h"
#include "screen/demo_house.h"
#include "test_class.h"

#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>

namespace plain_names_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* balloon = "<img src='far.png'>";

QByteArray namedLikeHtml() {
    return QByteArray(smallBench)
        .replace("QE-SML", balloon)
        .replace("ENV-1", "<img src='envelope.png'>")
        .replace("Small Heron", "<h1>Heron")
        .replace("Heron 60", "<b>60<br>")
        .replace("insp. A", "<i>inspector");
}

/// All texts that can be seen below an item and hold `part`: rows of lists are nobody's children but on the screen.
void collect(QQuickItem* below, const QString& part, QList<QQuickItem*>& found) {
    if (!below->isVisible())
        return;
    if (below->property("textFormat").isValid() && below->property("text").toString().contains(part))
        found += below;
    for (auto* child : below->childItems())
        collect(child, part, found);
}

}

class PlainNamesTest : public QObject {
    Q_OBJECT
private:
    QTemporaryDir m_folder;
    std::unique_ptr<HeardWarnings> m_warnings;
    std::unique_ptr<House> m_house;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;

private slots:
    void initTestCase() {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        m_warnings = std::make_unique<HeardWarnings>();
        m_house = std::make_unique<House>(*CivilDate::parse("2026-11-25"), false);
        m_house->desk.open(m_folder.filePath(QStringLiteral("record.sqlite")), namedLikeHtml());
        m_engine = std::make_unique<QQmlApplicationEngine>();
        QVERIFY(loadFrame(*m_engine, *m_house));
        m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
        QVERIFY(m_window != nullptr && QTest::qWaitForWindowExposed(m_window));
        QVERIFY2(QTest::qWaitFor([this] { return m_house->fleet.ready(); }, 60'000),
                 qPrintable(m_house->desk.trouble()));
    }
    void cleanupTestCase() {
        QCOMPARE(HeardWarnings::all(), QStringList()); // a picture that is sought and not found would be one
        m_engine.reset();
        m_house.reset();
    }

    void everyPlaceReadsItAsText_data() {
        QTest::addColumn<QString>("place");
        for (const char* place : {"next", "next/0", "rig-up/*", "balloons/*", "bench/open/*", "record"})
            QTest::newRow(place) << QString::fromLatin1(place).replace(u'*', QString::fromLatin1(balloon));
    }
    void everyPlaceReadsItAsText() {
        QFETCH(QString, place);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)));
        const auto shown = [this](const QString& part) {
            QList<QQuickItem*> found;
            collect(m_window->contentItem(), part, found);
            return found;
        };
        QTRY_VERIFY_WITH_TIMEOUT(shown(QStringLiteral("<")).size() > 1, 30'000);
        for (const auto* item : shown(QStringLiteral("<")))
            QVERIFY2(item->property("textFormat").toInt() == Qt::PlainText,
                     qPrintable(item->property("text").toString()));
    }
};

CROWNRING_TEST(PlainNamesTest, QApplication)

}

#include "plain_names_test.moc"
