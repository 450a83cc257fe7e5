// SPDX-License-Identifier: GPL-3.0-or-later

/// Photographs from the camera's folder, at the bench: what the camera puts there is offered by itself, whole and once,
/// and goes to the line that is open.

#include "screen/bench/bench_hands.h"
#include "screen/bench/camera_pictures.h"
#include "test_class.h"

#include <QBuffer>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QUrl>

namespace camera_pictures_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Desks;
using bench_walk_test::Shop;

namespace {

/// A camera's folder, on the day of the shop.
class Camera {
public:
    explicit Camera(House& house) : m_day(QDate::fromString(house.day.today(), Qt::ISODate)), pictures(house) {
        pictures.lookIn(QUrl::fromLocalFile(m_folder.path()));
        pictures.setWatching(true);
    }
    [[nodiscard]] static QByteArray picture(Qt::GlobalColor tone) {
        QImage image(640, 480, QImage::Format_RGB32);
        image.fill(tone);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "JPG");
        return bytes;
    }
    /// As far as it is written, `quiet` seconds ago.
    void writes(const char* name, const QByteArray& bytes, int quiet = 0) {
        QFile file(path(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        QCOMPARE(file.write(bytes), bytes.size());
        file.flush();
        const auto now = QDateTime::currentDateTimeUtc();
        const auto at = m_day > now.date() ? QDateTime(m_day, QTime(12, 0)) : now;
        QVERIFY(file.setFileTime(at.addSecs(-quiet), QFileDevice::FileModificationTime));
    }
    [[nodiscard]] QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
    [[nodiscard]] QString url(const char* name) const { return QUrl::fromLocalFile(path(name)).toString(); }

private:
    QTemporaryDir m_folder;
    QDate m_day;

public:
    In<CameraPictures> pictures;
};

constexpr int soon = 3000; // ms: it looks each second

}

class CameraPicturesTest : public QObject {
    Q_OBJECT
private slots:
    void whatTheCameraPutsThereIsOfferedAtOnceAndGoesToTheLine() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open());
        Camera camera(shop.house);
        QTest::qWait(50);
        QCOMPARE(camera.pictures.pictures(), QStringList());
        camera.writes("tape.jpg", Camera::picture(Qt::darkRed));
        QTRY_COMPARE_WITH_TIMEOUT(camera.pictures.pictures(), QStringList(camera.url("tape.jpg")), soon);
        const int row = desks.inspection.showLine(QStringLiteral("envelope.panels"));
        QVERIFY(row >= 0);
        desks.inspection.addPhotograph(row, QUrl(camera.pictures.pictures().front()));
        QTRY_VERIFY_WITH_TIMEOUT(
            desks.inspection.lines()->rows()[static_cast<std::size_t>(row)].photographs.size() == 1, 10'000);
        const auto digest = desks.inspection.lines()->rows()[static_cast<std::size_t>(row)].photographs.front();
        QCOMPARE(digest.size(), 64);
        const auto kept = shop.ask([digest = digest.toStdString()](Record& record) { return record.picture(digest); });
        QVERIFY(kept && *kept && (*kept)->media == "image/jpeg");
        // Put again to the same line it stands there once.
        desks.inspection.addPhotograph(row, QUrl(camera.pictures.pictures().front()));
        desks.settle();
        QTest::qWait(500);
        QCOMPARE(desks.inspection.lines()->rows()[static_cast<std::size_t>(row)].photographs.size(), 1);
    }
    void aPictureThatIsStillBeingWrittenWaits() {
        Shop shop;
        QVERIFY(shop.ready());
        Camera camera(shop.house);
        const auto whole = Camera::picture(Qt::darkYellow);
        camera.writes("wicker.jpg", whole.left(whole.size() / 2));
        camera.writes("other.jpg", Camera::picture(Qt::darkBlue)); // so that it has looked
        QTRY_COMPARE_WITH_TIMEOUT(camera.pictures.pictures(), QStringList(camera.url("other.jpg")), soon);
        camera.writes("wicker.jpg", whole);
        QTRY_COMPARE_WITH_TIMEOUT(camera.pictures.pictures().size(), 2, soon);
    }
    void oneThatNobodyWritesToAnyMoreIsWholeHoweverItEnds() {
        Shop shop;
        QVERIFY(shop.ready());
        Camera camera(shop.house);
        const auto whole = Camera::picture(Qt::gray);
        camera.writes("odd.jpg", whole.left(whole.size() - 2) + QByteArray(200, ' '), 60);
        QTRY_COMPARE_WITH_TIMEOUT(camera.pictures.pictures(), QStringList(camera.url("odd.jpg")), soon);
    }
    void nothingIsOfferedTwice() {
        Shop shop;
        QVERIFY(shop.ready());
        Camera camera(shop.house);
        camera.writes("tape.jpg", Camera::picture(Qt::red));
        QTRY_COMPARE_WITH_TIMEOUT(camera.pictures.pictures().size(), 1, soon);
        camera.writes("tape.jpg", Camera::picture(Qt::red)); // touched again
        camera.writes("frame.jpg", Camera::picture(Qt::green));
        QTRY_COMPARE_WITH_TIMEOUT(camera.pictures.pictures().size(), 2, soon);
        auto names = camera.pictures.pictures();
        QCOMPARE(names.removeDuplicates(), 0);
    }
};

CROWNRING_TEST(CameraPicturesTest, QGuiApplication)

}

#include "camera_pictures_test.moc"
