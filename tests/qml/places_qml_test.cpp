// SPDX-License-Identifier: GPL-3.0-or-later

/// Runs tst_*.qml of this folder over one record with the demo fleet. What a place would make for a part on its own is
/// there from Crownring.Samples.

#include "heard_warnings.h"
#include "program/places.h"
#include "screen/demo_house.h"
#include "screen/envelope/panel_model.h"
#include "screen/envelope/sample_panels.h"
#include "test_class.h"

#include <QApplication>
#include <QQmlEngine>
#include <QQuickStyle>
#include <QTest>
#include <QtQuickTest>

#include <memory>

namespace places_qml_test {

using namespace crownring::screen;

class SamplePanels : public PanelModel {
    Q_OBJECT

public:
    explicit SamplePanels(QObject* parent = nullptr) : PanelModel(parent) { show(sample::halfDone()); }
};

class Setup : public QObject {
    Q_OBJECT

public slots:
    void applicationAvailable() {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        qmlRegisterType<SamplePanels>("Crownring.Samples", 1, 0, "SamplePanels");
        m_warnings = std::make_unique<HeardWarnings>();
        m_demo = std::make_unique<DemoHouse>();
        if (!m_demo->ready())
            qFatal("%s", qPrintable(m_demo->house.desk.trouble()));
        m_demo->house.habits.setInspector(QStringLiteral("insp. 14"));
    }
    void qmlEngineAvailable(QQmlEngine* engine) { addPlaces(*engine, m_demo->house); }
    void cleanupTestCase() {
        if (const auto heard = HeardWarnings::all(); !heard.isEmpty())
            qFatal("Qt warned: %s", qPrintable(heard.join(u'\n')));
        m_demo.reset();
    }

private:
    std::unique_ptr<HeardWarnings> m_warnings;
    std::unique_ptr<DemoHouse> m_demo;
};

static int run(int argc, char** argv) {
    // As the program does: Qt Charts needs it, and Qt Quick Test takes what is there.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    Setup setup;
    return quick_test_main_with_setup(argc, argv, "crownring", PLACES, &setup);
}
CROWNRING_TEST_RUN(run)

}

#include "places_qml_test.moc"
