// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Pictures of places, made without a screen: for the guide, and to be looked at by tests.

#include <QSize>
#include <QString>

class QQmlApplicationEngine;

namespace crownring::screen {

struct House;

struct PictureOrder {
    QString file;
    QString place; ///< next, rig-up, balloons, rules, record; with a subject: balloons/QE-OVA
    QSize size{1280, 800};
    bool force = false; ///< a file that is there is replaced
};

/// "1280x800"; nothing for anything else and below 360 x 640.
[[nodiscard]] QSize sizeFrom(const QString& text);

/// Shows the place in the engine's window, waits until the record has answered, writes a PNG and ends the program: exit
/// 0 when the file was written.
void takePicture(QQmlApplicationEngine& engine, House& house, const PictureOrder& order);

}
