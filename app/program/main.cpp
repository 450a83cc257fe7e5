// SPDX-License-Identifier: GPL-3.0-or-later

/// crownring: the screen program. It opens the record that is named, or one of its own, which begins with the demo
/// fleet.

#include "kept_memory.h"
#include "picture.h"
#include "places.h"
#include "program/demo.h"
#include "program/house.h"
#include "program/machine_day.h"
#include "program/picture.h"
#include "program/places.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/problem_words.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFontDatabase>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextStream>
#include <QTimer>

#include <algorithm>
#include <string_view>

using namespace crownring;
using namespace crownring::screen;
using namespace crownring::words;

namespace {

struct Orders {
    QString record;
    bool demo = false;
    bool dark = false;
    std::optional<CivilDate> on;
    std::optional<PictureOrder> picture;
};

int refuse(const QString& text) {
    QTextStream(stderr) << text << Qt::endl;
    return 2;
}

QString tr(const char* text) { return QCoreApplication::translate("Program", text); }

/// What the command line asks for, or why it makes no sense.
tl::expected<Orders, QString> ordersFrom(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(tr("Continued airworthiness of hot-air balloons. Crownring keeps records and "
                                        "computes; it never declares a balloon "
                                        "airworthy."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOption({QStringLiteral("record"), tr("The record to open or make: a file, or postgresql://…"),
                      QStringLiteral("FILE")});
    parser.addOption({QStringLiteral("demo"), tr("Open a new record with the demo fleet, thrown away at the end.")});
    parser.addOption({QStringLiteral("on"), tr("Answer for this day instead of today."), QStringLiteral("DATE")});
    parser.addOption({QStringLiteral("dark"), tr("Use the dark tones.")});
    parser.addOption({QStringLiteral("picture"), tr("Write a picture of a place and end."), QStringLiteral("FILE")});
    parser.addOption({QStringLiteral("place"),
                      tr("The place of the picture: next, rig-up, balloons, bench, rules or record."),
                      QStringLiteral("NAME"), QStringLiteral("next")});
    parser.addOption(
        {QStringLiteral("size"), tr("The size of the picture."), QStringLiteral("WxH"), QStringLiteral("1280x800")});
    parser.process(arguments);

    Orders orders;
    orders.record = parser.value(QStringLiteral("record"));
    orders.demo = parser.isSet(QStringLiteral("demo"));
    orders.dark = parser.isSet(QStringLiteral("dark"));
    if (orders.demo && !orders.record.isEmpty())
        return tl::unexpected(tr("--demo opens a record of its own: give either --demo or --record."));
    if (parser.isSet(QStringLiteral("on"))) {
        const auto on = CivilDate::parse(outward(parser.value(QStringLiteral("on"))));
        if (!on)
            return tl::unexpected(words::line(on.error()));
        orders.on = *on;
    }
    if (parser.isSet(QStringLiteral("picture"))) {
        const auto size = sizeFrom(parser.value(QStringLiteral("size")));
        if (!size.isValid())
            return tl::unexpected(tr("--size is written as 1280x800, at least 360x640."));
        orders.picture =
            PictureOrder{parser.value(QStringLiteral("picture")), parser.value(QStringLiteral("place")), size};
    }
    return orders;
}

QString ownRecord() {
    const auto folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return folder + QStringLiteral("/fleet.sqlite");
}

}

int main(int argc, char* argv[]) {
    keepFreedMemory();
    if (std::any_of(argv, argv + argc,
                    [](const char* each) { return std::string_view(each).starts_with("--picture"); })) {
        // A picture needs no display; what the user has set stays.
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
            qputenv("QT_QUICK_BACKEND", "software");
    }
    // Qt Charts needs a QApplication; the style is Basic, which the parts dress.
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("crownring"));
    QApplication::setApplicationDisplayName(QStringLiteral("Crownring"));
    QApplication::setApplicationVersion(QStringLiteral(CROWNRING_VERSION));
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

    QTemporaryDir demoFolder;
    const auto location = orders->demo               ? demoFolder.filePath(QStringLiteral("demo.sqlite"))
                          : orders->record.isEmpty() ? ownRecord()
                                                     : orders->record;
    // A record that the user names begins empty; only the program's own begins with the demo fleet.
    const auto first = orders->record.isEmpty() ? demoFleet() : QByteArray();
    QTimer::singleShot(0, &house.desk, [&] { house.desk.open(location, first); }); // after the first frame
    QTimer midnight;
    QObject::connect(&midnight, &QTimer::timeout, &house.day, [&] { house.day.setToday(machineDay()); });
    midnight.start(60'000);
    if (orders->picture)
        takePicture(engine, house, *orders->picture);
    return QApplication::exec();
}
