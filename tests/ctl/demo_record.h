// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record with the demo fleet, as crownringctl posts it.

#include "ctl/answer.h"
#include "made_once.h"

namespace crownring::testing {

inline bool copyDemoRecord(const QString& to) {
    return copyOfMadeOnce(QFileInfo(QStringLiteral(CROWNRINGCTL)), QStringLiteral("demo"), to, [](const QString& file) {
        return answerOf(QStringLiteral(CROWNRINGCTL),
                        {"--record", file, "post", QStringLiteral(CROWNRING_SOURCE_DIR "/demo_data/fleet.jsonl")})
                   .code == 0;
    });
}

}
