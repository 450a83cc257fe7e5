// SPDX-License-Identifier: GPL-3.0-or-later

/// crownring: the screen program. It opens the record that is named, the user's own, or one with the demo fleet that is
/// thrown away at the end.

#include "kept_memory.h"
#include "program/demo.h"
#include "program/desktop_herald.h"
#include "program/machine_day.h"
#include "program/orders.h"
#include "program/own_place.h"
#include "program/places.h"
#include "screen/desk/house.h"
#include "screen/desk/tidings/limit_watch.h"

#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTextStream>
#include <QTimer>

using namespace crownring;
using namespace crownring::screen;

namespace {

int refuse(const QString& text) {
    QTextStream(stderr) << text << Qt::endl;
    return 2;
}

QString tr(const char* text) { return QCoreApplication::translate("Program", text); }

void showWhatComesNext(const QQmlApplicationEngine& engine) {
    if (auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0))) {
        window->show();
        window->raise();
        window->requestActivate();
        QMetaObject::invokeMethod(window, "showPlace", Q_ARG(QString, QStringLiteral("next")));
    }
}

int sayWords(int& argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const auto orders = ordersFrom(QCoreApplication::arguments()); // ends the program with what was asked for
    return orders ? 0 : refuse(orders.error());
}

}

int main(int argc, char* argv[]) {
    keepFreedMemory();
    nameProgram(QStringLiteral(CROWNRING_VERSION));
    const std::span<const char* const> arguments(argv, static_cast<std::size_t>(argc));
    if (asksForWords(arguments))
        return sayWords(argc, argv);
    if (asksForPicture(arguments)) {
        // A picture needs no display; what the user has set stays.
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
            qputenv("QT_QUICK_BACKEND", "software");
    }
    // Qt Charts needs a QApplication; the style is Basic, which the parts dress.
    QApplication application(argc, argv);
    QApplication::setApplicationDisplayName(QStringLiteral("Crownring"));
    const auto orders = ordersFrom(QApplication::arguments());
    if (!orders)
        return refuse(orders.error());

    QQuickStyle::setStyle(QStringLiteral("Basic"));
    useOwnFont();
    House house(machineDay(), !orders->picture);
    if (orders->dark)
        house.habits.setDark(true);
    if (orders->on)
        house.day.setAsked(*orders->on);

    QQmlApplicationEngine engine;
    if (!loadFrame(engine, house))
        return refuse(tr("The screen cannot be loaded."));

    const QTemporaryDir demoFolder;
    const auto own = orders->record.isEmpty() ? ownRecord() : orders->record;
    const auto openOwn = [&] { house.desk.open(own); };
    const auto openDemo = [&] { house.desk.open(demoFolder.filePath(QStringLiteral("demo.sqlite")), demoFleet()); };
    QObject::connect(&house.desk, &RecordDesk::demoAsked, &house.desk, openDemo);
    QObject::connect(&house.desk, &RecordDesk::ownAsked, &house.desk, openOwn);
    if (orders->demo) // after the first frame
        QTimer::singleShot(0, &house.desk, openDemo);
    else
        QTimer::singleShot(0, &house.desk, openOwn);
    QTimer midnight;
    QObject::connect(&midnight, &QTimer::timeout, &house.day, [&] { house.day.setToday(machineDay()); });
    midnight.start(60'000);
    DesktopHerald herald;
    std::optional<LimitWatch> watch;
    if (!orders->picture)
        watch.emplace(house, herald, [&] { showWhatComesNext(engine); });
    if (orders->picture)
        takePicture(engine, house, *orders->picture);
    return QApplication::exec();
}
