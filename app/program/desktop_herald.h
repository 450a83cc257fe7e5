// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Notifications of the desktop, by the service org.freedesktop.Notifications (Desktop Notifications
/// Specification 1.2). Where there is none nothing is said, and nobody is told so.

#include "screen/desk/tidings/herald.h"

#include <QObject>

namespace crownring {

class DesktopHerald : public QObject, public screen::Herald {
    Q_OBJECT

public:
    void say(const screen::Tiding& tiding, std::function<void(bool)> said, std::function<void()> followed) override;

private slots:
    void follow(uint number, const QString& action);

private:
    void notify(const screen::Tiding& tiding, bool markup, std::function<void(bool)> said);

    std::function<void()> m_followed;
    uint m_number = 0; ///< of the latest one; 0: none
};

}
