// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Photographs of the record for QML: `image://record/DIGEST`. What the record does not hold is an error of the image.

#include <QQuickAsyncImageProvider>

namespace crownring::screen {

class RecordPictures : public QQuickAsyncImageProvider {
public:
    QQuickImageResponse* requestImageResponse(const QString& digest, const QSize& wanted) override;
};

}
