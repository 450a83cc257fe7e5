// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A code as people type it.

#include <QString>

#include <string>

namespace crownring::words {

/// As core takes it: composed (Unicode's form C), so that one key of a keyboard is one code wherever it is typed.
[[nodiscard]] inline std::string codeTyped(const QString& typed) {
    return typed.normalized(QString::NormalizationForm_C).toStdString();
}

}
