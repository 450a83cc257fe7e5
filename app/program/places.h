// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The QML modules, linked in: what the program and the tests of QML share.

class QQmlApplicationEngine;
class QQmlEngine;

namespace crownring::screen {

struct House;

/// B612 from the resources becomes the application's font; where it was not built in, the system's sans stays.
void useOwnFont();
/// Tells the engine where the modules are: resources under /qt/qml are not searched by themselves in Qt 6.4.
void addModules(QQmlEngine& engine);
/// The same, and the house that the places live in. @pre it lives longer than the engine
void addPlaces(QQmlEngine& engine, House& house);
/// Loads the main window. False when it cannot be loaded; Qt has then said why.
[[nodiscard]] bool loadFrame(QQmlApplicationEngine& engine, House& house);

}
