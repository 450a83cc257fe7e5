// SPDX-License-Identifier: GPL-3.0-or-later

/// The signs of readings say without colour what they are, are sharp, and lie where their figure lies.

#include "screen/fabric/ageing_sign.h"
#include "test_class.h"

#include <QImage>
#include <QPainter>
#include <QTest>

#include <vector>

namespace ageing_sign_test {

using namespace crownring::screen;
using ageing::Kind;

namespace {

constexpr int side = 60;
constexpr QPointF at(30, 30);
constexpr double size = 16;
const AgeingTones grey{QColor(20, 20, 20), QColor(20, 20, 20), QColor(255, 255, 255)};

QImage sign(const AgeingMark& mark, double upper = 14, const AgeingTones& tones = grey) {
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawAgeingMark(painter, mark, at, upper, size, tones);
    return image;
}

bool isDark(const QImage& image, int x, int y) { return qGray(image.pixel(x, y)) < 128; }

int darkIn(const QImage& image, const QRect& area) {
    int dark = 0;
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x)
            dark += isDark(image, x, y) ? 1 : 0;
    return dark;
}
int darkInRow(const QImage& image, int y) { return darkIn(image, {0, y, side, 1}); }

int differing(const QImage& a, const QImage& b) {
    int differ = 0;
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            differ += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 64 ? 1 : 0;
    return differ;
}

}

class AgeingSignTest : public QObject {
    Q_OBJECT

private slots:
    void everyTwoSignsDifferInGrey() {
        std::vector<QImage> signs;
        for (const auto kind : {Kind::Value, Kind::AtLeast, Kind::AtMost, Kind::Between})
            for (const bool fails : {false, true})
                for (const bool hollow : {false, true})
                    signs.push_back(sign({kind, fails, hollow}));
        for (std::size_t a = 0; a < signs.size(); ++a)
            for (std::size_t b = a + 1; b < signs.size(); ++b)
                QVERIFY2(differing(signs[a], signs[b]) >= 6, qPrintable(QStringLiteral("%1 and %2").arg(a).arg(b)));
    }
    void theArrowOfAtLeastStandsOnItsFigureAndPointsUp() {
        const auto arrow = sign({Kind::AtLeast, false, false});
        QVERIFY(darkIn(arrow, {0, 32, side, side - 32}) == 0);           // nothing below the figure
        QVERIFY(darkIn(arrow, {0, 0, side, 13}) == 0);                   // nor above its height
        QVERIFY(darkInRow(arrow, 30) + darkInRow(arrow, 29) >= 7);       // the bar at the figure
        QVERIFY(darkInRow(arrow, 26) >= 1 && darkInRow(arrow, 26) <= 3); // the shaft
        QVERIFY(darkInRow(arrow, 22) > darkInRow(arrow, 18));            // the head narrows upward
        QVERIFY(isDark(arrow, 30, 17) || isDark(arrow, 29, 17));         // to a point
    }
    void theArrowOfAtMostIsTheSameUpsideDown() {
        const auto up = sign({Kind::AtLeast, false, false});
        const auto down = sign({Kind::AtMost, false, false});
        QVERIFY(differing(up.mirrored(), down) == 0);
        QVERIFY(differing(up, down) > 40);
    }
    void theArrowIsSharp() {
        const auto arrow = sign({Kind::AtLeast, false, false});
        int full = 0;
        int partly = 0;
        for (int y = 0; y < side; ++y)
            for (int x = 0; x < side; ++x) {
                const int tone = qGray(arrow.pixel(x, y));
                full += tone < 40 ? 1 : 0;
                partly += tone >= 40 && tone < 250 ? 1 : 0;
            }
        QVERIFY2(full >= 40 && full > partly, qPrintable(QStringLiteral("%1 full, %2 partly").arg(full).arg(partly)));
    }
    void whatIsOfOtherFabricIsHollow_data() {
        QTest::addColumn<Kind>("kind");
        QTest::addColumn<QPoint>("inside");
        QTest::newRow("value") << Kind::Value << QPoint(30, 30);
        QTest::newRow("at least") << Kind::AtLeast << QPoint(30, 20);
        QTest::newRow("at most") << Kind::AtMost << QPoint(30, 39);
        QTest::newRow("between") << Kind::Between << QPoint(30, 22);
    }
    void whatIsOfOtherFabricIsHollow() {
        QFETCH(Kind, kind);
        QFETCH(QPoint, inside);
        const auto full = sign({kind, false, false});
        const auto hollow = sign({kind, false, true});
        QVERIFY(isDark(full, inside.x(), inside.y()));
        QVERIFY(!isDark(hollow, inside.x(), inside.y()));
    }
    void whatFailsIsCrossedAndNothingElseHasItsTone() {
        const AgeingTones tones{Qt::black, Qt::red, Qt::white};
        for (const auto kind : {Kind::Value, Kind::AtLeast, Kind::AtMost, Kind::Between}) {
            const auto failing = sign({kind, true, false}, 14, tones);
            const auto passing = sign({kind, false, false}, 14, tones);
            const QPoint middle(30, kind == Kind::Between ? 22 : 30);
            for (const int reach : {-4, 4}) {
                QCOMPARE(qRed(failing.pixel(middle.x() + reach, middle.y() + reach)), 255);
                QVERIFY(qGreen(failing.pixel(middle.x() + reach, middle.y() + reach)) < 128);
            }
            for (int y = 0; y < side; ++y)
                for (int x = 0; x < side; ++x)
                    QVERIFY(qRed(passing.pixel(x, y)) == qGreen(passing.pixel(x, y)));
        }
    }
    void betweenReachesFromOneFigureToTheOther() {
        const auto bar = sign({Kind::Between, false, false}, 10);
        for (int y = 11; y < 30; ++y)
            QVERIFY2(isDark(bar, 30, y), qPrintable(QString::number(y)));
        QVERIFY(darkIn(bar, {0, 0, side, 8}) == 0);
        QVERIFY(darkIn(bar, {0, 33, side, side - 33}) == 0);
        const auto shortest = sign({Kind::Between, false, false}, 30); // both figures the same
        QVERIFY(isDark(shortest, 30, 27) && isDark(shortest, 30, 32));
    }
};

CROWNRING_TEST(AgeingSignTest, QCoreApplication)

}

#include "ageing_sign_test.moc"
