// SPDX-License-Identifier: GPL-3.0-or-later

/// The gore gauge must say the standing in grey: every two signs differ in shape, at the sizes that are used.

#include "screen/parts/gore_sign.h"
#include "screen/told_in_grey.h"
#include "test_class.h"

#include <QImage>
#include <QPainter>
#include <QTest>

namespace gore_sign_test {

using namespace crownring;
using namespace crownring::screen;
using sample::difference;

namespace {

QImage sign(Reckoned standing, double used, QSize size) {
    QImage image(size, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    drawGore(painter, QRectF(QPointF(0, 0), QSizeF(size)), standing, used, QColor(60, 60, 60));
    return image;
}

int darkPoints(const QImage& image, int fromY, int toY) {
    int dark = 0;
    for (int y = fromY; y < toY; ++y)
        for (int x = 0; x < image.width(); ++x)
            dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
    return dark;
}

}

class GoreSignTest : public QObject {
    Q_OBJECT

private slots:
    void everyTwoStandingsDifferInGrey_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("in a list") << QSize(20, 34);
        QTest::newRow("on a page") << QSize(44, 75);
        QTest::newRow("in a stack") << QSize(11, 18);
    }
    void everyTwoStandingsDifferInGrey() {
        QFETCH(QSize, size);
        for (int a = 0; a < reckonedCount; ++a)
            for (int b = a + 1; b < reckonedCount; ++b) {
                // The hard case: as much used in either.
                const auto first = sign(static_cast<Reckoned>(a), 0.95, size);
                const auto second = sign(static_cast<Reckoned>(b), 0.95, size);
                QVERIFY2(difference(first, second) > 0.025,
                         qPrintable(QStringLiteral("%1 and %2: %3").arg(a).arg(b).arg(difference(first, second))));
            }
    }

    void itFillsFromTheMouthUpward() {
        const QSize size(44, 75);
        int before = -1;
        for (const double used : {0.0, 0.25, 0.5, 0.75, 1.0}) {
            const auto image = sign(Reckoned::Clear, used, size);
            const int dark = darkPoints(image, 0, size.height());
            QVERIFY(dark > before);
            before = dark;
        }
        const auto half = sign(Reckoned::Clear, 0.5, size);
        QVERIFY(darkPoints(half, 44, 75) > 3 * darkPoints(half, 10, 40));
    }
};

CROWNRING_TEST(GoreSignTest, QGuiApplication)

}

#include "gore_sign_test.moc"
