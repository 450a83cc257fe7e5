// SPDX-License-Identifier: GPL-3.0-or-later

/// Tags: which item it is, for eyes and for a camera. The code is ISO/IEC 18004: its three finders, its quiet zone, and
/// its squares as they are laid out, found again in the picture of the page.

#include "print/readback.h"
#include "print/tags/qr_code.h"
#include "print/tags/tag_sheet.h"
#include "test_class.h"

#include <QPainter>

namespace tag_sheet_test {

using namespace crownring;
using namespace crownring::print;

namespace {

ItemFacts cylinder(const char* id, const char* serial) {
    ItemFacts item;
    item.id = ItemId(id);
    item.kind = ItemKind::Cylinder;
    item.type = "Flask";
    item.serial = serial;
    return item;
}

/// Dark squares of a finder: a ring round a block of three (ISO/IEC 18004, 6.3.3).
bool isFinder(const QrCode& code, int left, int top) {
    for (int row = 0; row < 7; ++row)
        for (int column = 0; column < 7; ++column) {
            const bool ring = row == 0 || row == 6 || column == 0 || column == 6;
            const bool block = row >= 2 && row <= 4 && column >= 2 && column <= 4;
            if (code.isDark(left + column, top + row) != (ring || block))
                return false;
        }
    return true;
}

}

class TagSheetTest : public QObject {
    Q_OBJECT
private slots:
    void aTagNamesItsItemAndNothingElse() {
        const Readback read(tagSheet({cylinder("CYL-9001", "TF9001"), cylinder("CYL-9002", "TF9002")},
                                     *CivilDate::parse("2026-11-25")));
        for (const char* words : {"CYL-9001", "CYL-9002", "TF9001", "Flask", "cylinder", "nothing of its state"})
            QVERIFY2(read.plain().contains(QString::fromLatin1(words)), qPrintable(read.plain()));
        for (const char* state : {"RELEASED", "released", "serviceable"})
            QVERIFY2(!read.plain().contains(QString::fromLatin1(state)), qPrintable(read.plain()));
    }

    void whatACameraReadsNamesTheItemAgain() {
        for (const char* name : {"CYL-9001", "Müller 7/2", "a:b"})
            QVERIFY(itemOfTag(tagText(ItemId(name))) == ItemId(name));
        for (const char* other : {"", "CYL-9001", "crownring:item:", "https://example.org/CYL-9001"})
            QVERIFY(!itemOfTag(other));
    }

    void theCodeHasItsFindersAndHoldsLongNames() {
        QVERIFY(!QrCode::of({}));
        QVERIFY(!QrCode::of(std::string(3000, 'x'))); // more than any code holds at that level
        const auto small = QrCode::of("crownring:item:CYL-9001");
        const auto large = QrCode::of("crownring:item:" + std::string(200, 'x'));
        QVERIFY(small && large && small->side() < large->side());
        for (const auto* code : {&*small, &*large}) {
            QVERIFY((code->side() - 17) % 4 == 0); // 21, 25, 29 …
            QVERIFY(isFinder(*code, 0, 0) && isFinder(*code, code->side() - 7, 0) &&
                    isFinder(*code, 0, code->side() - 7));
        }
    }

    void everySquareIsDrawnWhereItIsWithItsQuietZone() {
        const auto code = QrCode::of("crownring:item:CYL-9001");
        const int squares = code->side() + 8;
        QImage picture(squares * 6, squares * 6, QImage::Format_RGB32);
        picture.fill(Qt::red);
        {
            QPainter painter(&picture);
            code->draw(painter, QRectF(picture.rect()));
        }
        for (int row = 0; row < squares; ++row)
            for (int column = 0; column < squares; ++column) {
                const bool inside = row >= 4 && column >= 4 && row < squares - 4 && column < squares - 4;
                const bool dark = inside && code->isDark(column - 4, row - 4);
                QCOMPARE(picture.pixelColor(column * 6 + 3, row * 6 + 3), QColor(dark ? Qt::black : Qt::white));
            }
    }

    void itStandsOnThePageAtTheSizeThatIsRead() {
        const auto page = renderPages(tagSheet({cylinder("CYL-9001", "TF9001")}, *CivilDate::parse("2026-11-25")),
                                      PageFormat::A4, 300)
                              .front();
        QVERIFY(page.save(QStringLiteral(PICTURES "/tags.png")));
        int left = page.width(), right = 0;
        for (int y = 0; y < page.height() / 2; ++y)
            for (int x = page.width() / 3; x < page.width() / 2; ++x)
                if (page.pixelColor(x, y) == QColor(Qt::black)) {
                    left = std::min(left, x);
                    right = std::max(right, x);
                }
        const double millimetresWide = (right - left + 1) / 300.0 * 25.4;
        QVERIFY2(millimetresWide > 20 && millimetresWide < 30, qPrintable(QString::number(millimetresWide)));
    }
};

CROWNRING_TEST(TagSheetTest, QGuiApplication)

}

#include "tag_sheet_test.moc"
