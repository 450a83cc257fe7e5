// SPDX-License-Identifier: GPL-3.0-or-later

/// Qt Charts from QML draws with classes of Qt Widgets: under a QGuiApplication the first ChartView brings the program
/// down, under a QApplication it is drawn. Each is tried in a process of its own, which is this program once more.

#include "test_class.h"

#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

namespace charts_test {

namespace {

constexpr const char* chart = R"(
import QtQuick
import QtCharts
ChartView {
    width: 320; height: 240
    antialiasing: false
    legend.visible: false
    LineSeries {
        color: "#ff0000"
        width: 4
        XYPoint { x: 0; y: 0 }
        XYPoint { x: 1; y: 2 }
        XYPoint { x: 2; y: 1 }
    }
})";

int pixelsOf(const QImage& picture, QRgb tone) {
    int found = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            found += picture.pixel(x, y) == tone ? 1 : 0;
    return found;
}

/// 0 when the line of the chart was seen in a frame.
int draw() {
    QQmlEngine engine;
    QQmlComponent component(&engine);
    component.setData(chart, QUrl());
    const std::unique_ptr<QObject> made(component.create());
    auto* item = qobject_cast<QQuickItem*>(made.get());
    if (item == nullptr) {
        qWarning("%s", qPrintable(component.errorString()));
        return 2;
    }
    QQuickWindow window;
    window.resize(320, 240);
    item->setParentItem(window.contentItem());
    window.show();
    if (!QTest::qWaitForWindowExposed(&window))
        return 3;
    const bool drawn = QTest::qWaitFor([&] { return pixelsOf(window.grabWindow(), qRgb(255, 0, 0)) > 200; }, 10'000);
    item->setParentItem(nullptr);
    return drawn ? 0 : 4;
}

struct Ended {
    QProcess::ExitStatus manner;
    int status;
    QByteArray words;
};

Ended drawnUnder(const char* application) {
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(QCoreApplication::applicationFilePath(),
                  {QStringLiteral("charts"), QStringLiteral("--draw-under"), QLatin1String(application)});
    process.waitForFinished(60'000);
    return {process.exitStatus(), process.exitCode(), process.readAll()};
}

}

class ChartsTest : public QObject {
    Q_OBJECT
private slots:
    void areDrawnUnderAnApplicationOfWidgets() {
        const auto ended = drawnUnder("QApplication");
        QVERIFY2(ended.manner == QProcess::NormalExit, ended.words.constData());
        QVERIFY2(ended.status == 0, ended.words.constData());
    }
    void areNotDrawnUnderAnyLess() {
        const auto ended = drawnUnder("QGuiApplication");
        QVERIFY(ended.manner == QProcess::CrashExit || ended.status != 0);
    }
    void soTheProgramMakesAnApplicationOfWidgets() {
        QFile source(QStringLiteral(CROWNRING_SOURCE_DIR "/app/program/main.cpp"));
        QVERIFY(source.open(QIODevice::ReadOnly));
        const auto text = source.readAll();
        QVERIFY(text.contains("\n    QApplication application(argc, argv);\n"));
        QVERIFY(!text.contains("QGuiApplication"));
    }
};

static int run(int argc, char** argv) {
    if (argc == 3 && qstrcmp(argv[1], "--draw-under") == 0) {
        if (qstrcmp(argv[2], "QApplication") == 0) {
            QApplication application(argc, argv);
            return draw();
        }
        QGuiApplication application(argc, argv);
        return draw();
    }
    QCoreApplication application(argc, argv);
    ChartsTest test;
    return QTest::qExec(&test, argc, argv);
}
CROWNRING_TEST_RUN(run)

}

#include "charts_test.moc"
