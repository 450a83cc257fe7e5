// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Keeps registrations and serial numbers whole: where a line of a text would end behind a hyphen ("QE-" and "LAKE"),
/// its hyphens are joined to what follows (U+2060). Other texts stay as they are written.

#include <QPointer>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

/// Whether a line of what a Text shows ends behind a hyphen inside a word.
[[nodiscard]] bool isTorn(const QQuickItem& text);

class KeptNames : public QObject {
    Q_OBJECT
    QML_ELEMENT
    /// The text that is looked after; it wraps.
    Q_PROPERTY(QQuickItem* of READ of WRITE setOf NOTIFY ofChanged REQUIRED FINAL)

public:
    using QObject::QObject;
    [[nodiscard]] QQuickItem* of() const { return m_of; }
    void setOf(QQuickItem* of);

signals:
    void ofChanged();

private slots:
    void look();

private:
    QPointer<QQuickItem> m_of;
};

}
