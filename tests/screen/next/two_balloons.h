// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record of two balloons, each an envelope under Part-ML with annual and review due in the spring, and the stations
/// that they may go to. Today is 2026-11-25.

#include "screen/demo_house.h"

#include <QFile>
#include <QUrl>

namespace crownring::screen {

inline constexpr const char* twoBalloons =
    R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.entered","on":"2024-01-01","item":"E2","kind":"envelope"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"E2"}
{"entry":"programme.adopted","on":"2024-01-01","everything":true,"programme":"part-ml-hot-air"}
{"entry":"requirement.done","on":"2026-03-10","item":"E1","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2026-05-20","item":"E1","requirement":"ml.arc-review"}
{"entry":"requirement.done","on":"2026-03-12","item":"E2","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2026-05-22","item":"E2","requirement":"ml.arc-review"}
)";
/// One cheap shed, closed from May on, and a dear loft.
inline constexpr const char* twoStations = R"({"stations":[
{"station":"Shed","visit":200,"at_once":2,"open":[{"from":"2026-11-01","to":"2027-04-30"}]},
{"station":"Loft","visit":300,"at_once":1}]})";

class TwoBalloons {
public:
    TwoBalloons() : m_demo(DemoHouse::Filled::Empty) {}
    [[nodiscard]] bool ready() { return m_demo.ready() && isPosted(m_demo.house, twoBalloons); }
    [[nodiscard]] House& house() { return m_demo.house; }
    /// A file of that text in the record's folder.
    [[nodiscard]] QUrl file(const char* name, const char* text) const {
        QFile file(m_demo.folder.filePath(QLatin1String(name)));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) < 0)
            qFatal("a file cannot be written");
        return QUrl::fromLocalFile(file.fileName());
    }

private:
    DemoHouse m_demo;
};

}
