// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/stations_file.h"

#include "problem/faults/use_fault.h"
#include "screen/desk/house.h"
#include "words/border.h"

#include <QFile>
#include <QFileInfo>

namespace crownring::screen {

using namespace words;

namespace {

constexpr qint64 longest = 4'000'000; ///< bytes; of 32 stations with their weeks a hundredth is enough

}

QString stationsFileOf(const House& house) {
    const auto chosen = house.habits.stationsFile();
    return chosen.isEmpty() && house.desk.isBrought() ? QStringLiteral(":/demo/stations.json") : chosen;
}

Result<Stations> stationsIn(const QString& path) {
    const QFileInfo info(path);
    QFile file(path);
    if (!info.isFile() || info.size() > longest || !file.open(QIODevice::ReadOnly))
        return problem(UseFault::FileUnreadable, {}, {.file = outward(path)});
    const auto bytes = file.readAll();
    auto stations = stationsFrom({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (!stations)
        stations.error().where.file = outward(info.fileName());
    return stations;
}

QString stationsText(const QString& path, const Stations& stations) {
    QStringList names;
    for (const auto& station : stations.stations)
        names += inward(station.name);
    return QStringLiteral("%1: %2").arg(QFileInfo(path).fileName(), names.join(QStringLiteral(", ")));
}

}
