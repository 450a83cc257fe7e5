// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/command_line.h"

#include <QtCore/QByteArray>
#include <QtGui/QGuiApplication>

#include <algorithm>
#include <string_view>

int main(int argc, char** argv) {
    // Paper needs fonts, and so an application that can draw; it needs no screen.
    const auto isPaper = [](std::string_view each) {
        return each == "print" || each.starts_with("--to") || each.ends_with(".pdf");
    };
    if (std::any_of(argv, argv + argc, isPaper)) {
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        const QGuiApplication application(argc, argv);
        return crownring::ctl::runCommandLine(argc, argv);
    }
    const QCoreApplication application(argc, argv);
    return crownring::ctl::runCommandLine(argc, argv);
}
