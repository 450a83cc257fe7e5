// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Photographs of the record for QML: `image://record/DIGEST`. What the record does not hold is an error of the image.

#include <QQuickAsyncImageProvider>

namespace crownring::screen {

class RecordDesk;

class RecordPictures : public QQuickAsyncImageProvider {
public:
    /// @param desk lives longer than the engine
    explicit RecordPictures(RecordDesk& desk) : m_desk(desk) {}
    QQuickImageResponse* requestImageResponse(const QString& digest, const QSize& wanted) override;

private:
    RecordDesk& m_desk;
};

}
