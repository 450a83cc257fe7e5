// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/command_line.h"

#include <QtCore/QCoreApplication>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    return crownring::ctl::runCommandLine(argc, argv);
}
