// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The border between the core (UTF-8 `std::string`) and Qt.

#include <QString>
#include <QStringList>

#include <string>
#include <string_view>

namespace crownring::words {

[[nodiscard]] inline QString inward(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// The parts that say something, with `between` between them.
[[nodiscard]] inline QString joined(QStringList parts, const QString& between) {
    parts.removeAll(QString());
    return parts.join(between);
}

/// For headings: a line ends after no hyphen of a name or a day, "QE-LAKE", "2026-11-25".
[[nodiscard]] inline QString unbroken(QString text) { return text.replace(u'-', QStringLiteral("-\u2060")); }

[[nodiscard]] inline std::string outward(const QString& text) { return text.trimmed().toStdString(); }

}
