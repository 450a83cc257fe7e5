// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who says something outside the window, on the user's desktop.

#include <QString>

#include <functional>

namespace crownring::screen {

struct Tiding {
    QString title;
    QString text; ///< plain, a line or two
};

class Herald {
public:
    Herald() = default;
    Herald(const Herald&) = delete;
    Herald& operator=(const Herald&) = delete;
    virtual ~Herald() = default;
    /// @param said is called once, perhaps later: whether the desktop took it
    /// @param followed is called when the user goes after it, perhaps never
    virtual void say(const Tiding& tiding, std::function<void(bool)> said, std::function<void()> followed) = 0;
};

}
