// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pictures of the camera's folder while somebody looks: those of today and yesterday, new ones as they come.

#include "screen/desk/resident.h"

#include <QStringList>
#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class CameraPictures : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool watching READ isWatching WRITE setWatching NOTIFY changed FINAL)
    Q_PROPERTY(QStringList pictures READ pictures NOTIFY changed FINAL) ///< URLs, latest first
    Q_PROPERTY(QString folder READ folder NOTIFY changed FINAL)         ///< empty: the user's folders of pictures

public:
    using Resident::Resident;
    [[nodiscard]] bool isWatching() const { return m_looks.isActive(); }
    void setWatching(bool watching);
    [[nodiscard]] QStringList pictures() const { return m_pictures; }
    [[nodiscard]] QString folder() const;
    /// Where the camera puts its pictures; it is remembered.
    Q_INVOKABLE void lookIn(const QUrl& folder);

signals:
    void changed();

private:
    void movedIn() override;
    void look();

    QTimer m_looks;
    QStringList m_pictures;
};

}
