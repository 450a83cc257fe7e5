// SPDX-License-Identifier: GPL-3.0-or-later

/// Reading tags off pictures: our own sheets, as a camera in the shed sees them.

#include "print/pdf.h"
#include "print/tags/qr_code.h"
#include "print/tags/tag_picture.h"
#include "print/tags/tag_sheet.h"
#include "problem/faults/components/part_fault.h"
#include "problem/faults/use_fault.h"
#include "said.h"
#include "test_class.h"

#include <QPainter>
#include <QTemporaryDir>

namespace tag_picture_test {

using namespace crownring;
using namespace crownring::print;
using namespace crownring::testing;

namespace {

/// The tags of these as they are printed, at so many dots an inch.
QImage sheetOf(const std::vector<const char*>& names, double dots = 120) {
    std::vector<ItemFacts> items;
    for (const auto* name : names) {
        items.emplace_back();
        items.back().id = ItemId(name);
        items.back().kind = ItemKind::Cylinder;
    }
    return renderPages(tagSheet(items, *CivilDate::parse("2026-11-25")), PageFormat::A4, dots).front();
}

QImage turned(const QImage& picture, double degrees) {
    QImage shed(picture.width() * 3 / 2, picture.height() * 3 / 2, QImage::Format_RGB32);
    shed.fill(QColor(0xb0, 0xa8, 0x9c));
    QPainter painter(&shed);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(shed.width() / 2.0, shed.height() / 2.0);
    painter.rotate(degrees);
    painter.drawImage(-picture.width() / 2, -picture.height() / 2, picture);
    return shed;
}

/// Out of focus: each point spread over so many.
QImage blurred(const QImage& picture, int width) {
    return picture
        .scaled(picture.width() / width, picture.height() / width, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
        .scaled(picture.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

QImage codeOf(const std::string& text) {
    QImage picture(300, 300, QImage::Format_RGB32);
    QPainter painter(&picture);
    QrCode::of(text)->draw(painter, QRectF(picture.rect()));
    return picture;
}

Fault faultOf(const Result<ItemId>& read) {
    if (read || !isSaid(read.error()))
        throw std::runtime_error("read, or refused without words");
    return read.error().fault;
}

}

class TagPictureTest : public QObject {
    Q_OBJECT

private slots:
    void aPrintedTagNamesItsItem() {
        for (const auto* name : {"CYL-9001", "Müller 7/2", "a:b"})
            QVERIFY(itemOnPicture(sheetOf({name})) == ItemId(name));
    }
    void turnedAnyWay() {
        const auto sheet = sheetOf({"CYL-9001"});
        for (const double degrees : {17.0, 90.0, 143.0, 180.0, 291.0})
            QVERIFY2(itemOnPicture(turned(sheet, degrees)) == ItemId("CYL-9001"), qPrintable(QString::number(degrees)));
    }
    void outOfFocusAndInBadLight() {
        const auto sheet = sheetOf({"CYL-9001"}, 200);
        QVERIFY(itemOnPicture(blurred(sheet, 4)) == ItemId("CYL-9001"));
        auto dim = sheet.convertToFormat(QImage::Format_RGB32);
        QPainter(&dim).fillRect(dim.rect(), QColor(0, 0, 0, 190));
        QVERIFY(itemOnPicture(dim) == ItemId("CYL-9001"));
    }
    void whatIsNoTagOfOursIsSaid() {
        QCOMPARE(faultOf(itemOnPicture(codeOf("https://example.org/CYL-9001"))), Fault(PartFault::TagOfAnother));
        QImage wall(400, 300, QImage::Format_RGB32);
        wall.fill(Qt::gray);
        QCOMPARE(faultOf(itemOnPicture(wall)), Fault(PartFault::TagNotFound));
    }
    void whichOfSeveralIsNotGuessed() {
        const auto two = itemOnPicture(sheetOf({"CYL-9001", "CYL-9002"}, 150));
        QCOMPARE(faultOf(two), Fault(PartFault::TagsOfSeveral));
        QVERIFY(spokenMessage(two.error()).find("CYL-9002") != std::string::npos);
    }
    void aFileIsRead() {
        const QTemporaryDir folder;
        const auto file = folder.filePath(QStringLiteral("tag.png"));
        QVERIFY(sheetOf({"CYL-9001"}).save(file));
        QVERIFY(itemOnPicture(file.toStdString()) == ItemId("CYL-9001"));
        QCOMPARE(faultOf(itemOnPicture(folder.filePath(QStringLiteral("none.png")).toStdString())),
                 Fault(UseFault::FileUnreadable));
        QFile words(folder.filePath(QStringLiteral("words.png")));
        QVERIFY(words.open(QIODevice::WriteOnly) && words.write("no picture") > 0);
        words.close();
        QCOMPARE(faultOf(itemOnPicture(words.fileName().toStdString())), Fault(UseFault::NoPicture));
    }
};

CROWNRING_TEST(TagPictureTest, QGuiApplication)

}

#include "tag_picture_test.moc"
