// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/command_line.h"

#include <QtCore/QByteArray>
#include <QtGui/QGuiApplication>

#include <algorithm>
#include <string_view>

int main(int argc, char** argv) {
    // Paper needs fonts, and so an application that can draw; it needs no screen.
    if (std::any_of(argv, argv + argc, [](const char* each) { return std::string_view(each) == "print"; })) {
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        const QGuiApplication application(argc, argv);
        return crownring::ctl::runCommandLine(argc, argv);
    }
    const QCoreApplication application(argc, argv);
    return crownring::ctl::runCommandLine(argc, argv);
}
