// SPDX-License-Identifier: GPL-3.0-or-later

/// Starts the screen over a record as the program does, says how long it took, and ends:
///
///     crownring_start_once RECORD NANOSECONDS     (the steady clock's, when the process was asked for)
///     usable 412.3                                a frame answers a key that was pressed on the first frame, ms
///     complete 1312.8                             a frame shows the due list, ms

#include "kept_memory.h"
#include "program/machine_day.h"
#include "program/places.h"
#include "screen/desk/house.h"

#include <QApplication>
#include <QKeyEvent>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTextStream>
#include <QTimer>

#include <chrono>

using namespace crownring::screen;

namespace {

class Stopwatch : public QObject {
public:
    Stopwatch(QQuickWindow& window, const Fleet& fleet, qint64 began) : m_window(window), m_began(began) {
        connect(&window, &QQuickWindow::frameSwapped, this, &Stopwatch::frame);
        connect(&fleet, &Fleet::listed, this, [this, &fleet] {
            m_filled = fleet.list() != nullptr;
            m_window.update();
        });
    }

private:
    enum class Waiting { FirstFrame, Answer, List };

    void frame() {
        if (m_waiting == Waiting::FirstFrame) {
            m_waiting = Waiting::Answer;
            press(Qt::Key_2); // to the balloons
        } else if (m_waiting == Waiting::Answer && m_window.property("place").toInt() == 1) {
            say("usable");
            m_waiting = Waiting::List;
            press(Qt::Key_1); // and back
        } else if (m_waiting == Waiting::List && m_filled) {
            say("complete");
            QCoreApplication::exit(0);
        }
        m_window.update();
    }
    void press(Qt::Key key) {
        QCoreApplication::postEvent(&m_window, new QKeyEvent(QEvent::KeyPress, key, Qt::ControlModifier));
        QCoreApplication::postEvent(&m_window, new QKeyEvent(QEvent::KeyRelease, key, Qt::ControlModifier));
    }
    void say(const char* what) const {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        const auto passed = std::chrono::duration_cast<std::chrono::nanoseconds>(now).count() - m_began;
        QTextStream(stdout) << what << ' ' << static_cast<double>(passed) / 1e6 << Qt::endl;
    }

    QQuickWindow& m_window;
    qint64 m_began;
    Waiting m_waiting = Waiting::FirstFrame;
    bool m_filled = false;
};

}

int main(int argc, char** argv) {
    crownring::keepFreedMemory();
    QApplication application(argc, argv);
    const auto arguments = QApplication::arguments();
    if (arguments.size() != 3)
        return 2;
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    useOwnFont();
    House house(crownring::machineDay(), false);
    QQmlApplicationEngine engine;
    if (!loadFrame(engine, house))
        return 2;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    const Stopwatch stopwatch(*window, house.fleet, arguments[2].toLongLong());
    QTimer::singleShot(0, &house.desk, [&] { house.desk.open(arguments[1], {}); });
    return QApplication::exec();
}
