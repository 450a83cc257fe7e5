// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Listens to what Qt complains about: a binding loop or a failed binding is a failed test.

#include <QMutex>
#include <QStringList>

namespace crownring::screen {

class HeardWarnings {
public:
    HeardWarnings() { s_before = qInstallMessageHandler(&HeardWarnings::hear); }
    ~HeardWarnings() { qInstallMessageHandler(s_before); }

    [[nodiscard]] static QStringList all() {
        const QMutexLocker lock(&s_mutex);
        return s_heard;
    }

private:
    static void hear(QtMsgType type, const QMessageLogContext& context, const QString& text) {
        if (type == QtWarningMsg || type == QtCriticalMsg) {
            const QMutexLocker lock(&s_mutex);
            s_heard += text;
        }
        if (s_before != nullptr)
            s_before(type, context, text);
    }
    static inline QtMessageHandler s_before = nullptr;
    static inline QStringList s_heard;
    static inline QMutex s_mutex;
};

}
