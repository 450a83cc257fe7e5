// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/demo.h"

#include <QFile>

namespace crownring {

QByteArray demoFleet() {
    QFile file(QStringLiteral(":/demo/fleet.jsonl"));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}
