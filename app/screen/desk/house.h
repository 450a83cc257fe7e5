// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What all places share, alive as long as the program. It is made once, by who starts the program or a test, and
/// handed down: nothing of it can be reached from anywhere else.

#include "screen/desk/day.h"
#include "screen/desk/fleet.h"
#include "screen/desk/habits.h"
#include "screen/desk/notice.h"
#include "screen/desk/record_desk.h"

#include <QJSEngine>

#include <memory>
#include <typeindex>
#include <unordered_map>

class QQmlEngine;

namespace crownring::screen {

struct House {
    /// @param remembered false: habits are neither read nor written (tests, pictures)
    House(CivilDate today, bool remembered);

    /// Before the engine loads anything: what it makes lives in this house, and must be gone before it.
    void open(QQmlEngine& engine);
    /// @pre the engine was opened
    [[nodiscard]] static House& of(const QQmlEngine& engine);

    /// What a module above keeps once for the house, made when it is first asked for: `house.one<FabricFits>()`.
    template <class Kept>
    [[nodiscard]] Kept& one() {
        auto& kept = m_kept[typeid(Kept)];
        if (!kept)
            kept = std::make_unique<Kept>(*this);
        return static_cast<Kept&>(*kept);
    }

    Habits habits;
    Day day;
    RecordDesk desk;
    Fleet fleet;
    Notice notice;

private:
    std::unordered_map<std::type_index, std::unique_ptr<QObject>> m_kept;
};

/// What QML knows by name stays the house's own.
template <class Thing>
[[nodiscard]] Thing* lent(Thing& thing) {
    QJSEngine::setObjectOwnership(&thing, QJSEngine::CppOwnership);
    return &thing;
}

}
