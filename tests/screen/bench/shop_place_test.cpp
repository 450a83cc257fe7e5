// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "answers/type_book.h"
#include "bench/checklist/checklist.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/shop_place.h"
#include "screen/bench/visit_opening.h"
#include "screen/demo_house.h"
#include "screen/desk/record_desk.h"
#include "screen/desk/record_pictures.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QBuffer>
#include <QImage>
#include <QQuickTextureFactory>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace shop_place_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

void set(EntryForm& form, std::string_view key, const QString& value) {
    const auto& fields = form.fields()->fields();
    const auto at = std::ranges::find(fields, key, &FormField::key);
    QVERIFY2(at != fields.end(), std::string(key).c_str());
    form.setValue(static_cast<int>(at - fields.begin()), value);
}

const Choice* named(ChoiceModel* model, const QString& label) {
    const auto& choices = model->choices();
    const auto at = std::ranges::find(choices, label, &Choice::label);
    return at == choices.end() ? nullptr : &*at;
}

}

/// What releases rest on can be seen and entered without a file, and photographs come back out of the record.
class ShopPlaceTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

    bool save(EntryForm& form) {
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        return QTest::qWaitFor([&] { return !saved.isEmpty(); }, 30'000) && m_demo->settled();
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        m_demo->house.habits.setPerson(QStringLiteral("the office"));
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void whatTheDemoFleetRestsOnIsListed() {
        In<ShopPlace> shop(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(shop.people()->rowCount({}) > 0 && shop.testers()->rowCount({}) > 0, 30'000);
        QVERIFY(shop.types()->rowCount({}) > 0);
        QCOMPARE(shop.problem(), QString());
    }

    void aPersonATesterATypeAndALimitAreEntered() {
        In<ShopPlace> shop(m_demo->house);
        In<EntryForm> form(m_demo->house);
        form.beginAtBench(QStringLiteral("person.entitled"), {}, {}, {});
        set(form, "person", QStringLiteral("insp. 77"));
        set(form, "capacity", QStringLiteral("mechanic"));
        set(form, "licence", QStringLiteral("A&P 77"));
        set(form, "until", QStringLiteral("2026-11-24"));
        set(form, "on", QStringLiteral("2020-01-01"));
        QVERIFY2(save(form), qPrintable(form.problem()));
        QTRY_VERIFY_WITH_TIMEOUT(named(shop.people(), QStringLiteral("insp. 77")) != nullptr, 30'000);
        QVERIFY(!named(shop.people(), QStringLiteral("insp. 77"))->chosen); // ended the day before

        form.beginAtBench(QStringLiteral("tester.calibrated"), {}, {}, {});
        set(form, "tester", QStringLiteral("gauge 77"));
        set(form, "until", QStringLiteral("2026-11-25"));
        set(form, "on", QStringLiteral("2026-01-01"));
        QVERIFY2(save(form), qPrintable(form.problem()));
        QTRY_VERIFY_WITH_TIMEOUT(named(shop.testers(), QStringLiteral("gauge 77")) != nullptr, 30'000);
        QVERIFY(named(shop.testers(), QStringLiteral("gauge 77"))->chosen); // the last good day

        form.beginAtBench(QStringLiteral("limit.stated"), {}, {}, {});
        set(form, "type", QStringLiteral("Type 77"));
        set(form, "kind", QStringLiteral("envelope"));
        set(form, "quantity", QStringLiteral("grab-strength"));
        set(form, "unit", QStringLiteral("lbf"));
        set(form, "proof", QStringLiteral("30"));
        set(form, "source", QStringLiteral("manual 77, 5.2"));
        QVERIFY2(save(form), qPrintable(form.problem()));
        QTRY_VERIFY_WITH_TIMEOUT(std::ranges::any_of(shop.types()->choices(),
                                                     [](const Choice& each) {
                                                         return each.label.startsWith(QStringLiteral("Type 77")) &&
                                                                each.detail.contains(QStringLiteral("30 lbf"));
                                                     }),
                                 30'000);
    }

    /// The jaws of 25 mm and of 1 in are one test: what is stated for it again takes the place of what was, here as
    /// where readings are judged.
    void aLimitThatIsStatedAgainStandsAlone() {
        bool posted = false;
        const std::string start = R"({"entry":"limit.stated","on":"2026-01-01","type":"Type 78","kind":"envelope",)"
                                  R"("quantity":"grab-strength","unit":"N","source":"manual 78",)";
        const auto lines =
            start + R"("least":133,"jaw_mm":25})" + "\n" + start + R"("least":150,"jaw_mm":25.4})" + "\n";
        std::size_t judged = 0;
        hear(m_demo->house.desk.ask([lines, on = m_demo->house.day.date()](Record& record) -> std::size_t {
            if (!postText(record, record, lines, {}))
                return 0;
            const auto book = typeBook(record, on);
            return static_cast<std::size_t>(std::ranges::count_if(
                book->limits, [](const StatedLimit& limit) { return limit.type == TypeName("Type 78"); }));
        }),
             &m_demo->house.desk, [&](std::size_t count) {
                 judged = count;
                 posted = true;
             });
        QVERIFY(QTest::qWaitFor([&] { return posted; }, 30'000));
        QCOMPARE(judged, std::size_t{1});
        m_demo->house.desk.written();
        In<ShopPlace> shop(m_demo->house);
        const auto ofType = [&] {
            std::vector<QString> rows;
            for (const auto& each : shop.types()->choices())
                if (each.label.startsWith(QStringLiteral("Type 78")))
                    rows.push_back(each.detail);
            return rows;
        };
        QTRY_COMPARE_WITH_TIMEOUT(ofType().size(), std::size_t{1}, 30'000);
        QVERIFY2(ofType().front().contains(QStringLiteral("150 N")), qPrintable(ofType().front()));
    }

    void aLineOfOnesOwnComesInTheNextChecklist() {
        In<ShopPlace> shop(m_demo->house);
        In<EntryForm> form(m_demo->house);
        form.beginAtBench(QStringLiteral("checklist.adopted"), {}, {}, {});
        set(form, "document.lines.0.section", QStringLiteral("basket"));
        set(form, "document.lines.0.kinds", QStringLiteral("basket"));
        set(form, "document.lines.0.title", QStringLiteral("Rope handles counted"));
        set(form, "document.lines.0.look_for", QStringLiteral("All four are there."));
        form.save();
        QVERIFY(form.isOpen()); // what asks for it is missing
        set(form, "document.lines.0.sources.part-ml", QStringLiteral("our handbook, 4.2"));
        QVERIFY2(save(form), qPrintable(form.problem()));
        QTRY_VERIFY_WITH_TIMEOUT(named(shop.lines(), QStringLiteral("Rope handles counted")) != nullptr, 30'000);
        const auto entry = named(shop.lines(), QStringLiteral("Rope handles counted"))->value;

        form.correct(entry);
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 30'000);
        set(form, "document.lines.0.title", QStringLiteral("Rope handles, four"));
        form.save(); // first it says what moves
        QTRY_VERIFY_WITH_TIMEOUT(!form.follows().isEmpty(), 30'000);
        QVERIFY2(save(form), qPrintable(form.problem()));
        QTRY_VERIFY_WITH_TIMEOUT(named(shop.lines(), QStringLiteral("Rope handles, four")) != nullptr, 30'000);
        QVERIFY(named(shop.lines(), QStringLiteral("Rope handles counted")) == nullptr);

        In<VisitOpening> opening(m_demo->house);
        opening.begin(QStringLiteral("QE-OVA"));
        QTRY_VERIFY_WITH_TIMEOUT(opening.canOpen(), 30'000);
        QSignalSpy opened(&opening, &VisitOpening::opened);
        opening.openIt();
        QTRY_COMPARE_WITH_TIMEOUT(opened.size(), 1, 30'000);
        In<InspectionDesk> desk(m_demo->house);
        desk.setInspection(opened.front().front().toString());
        QTRY_VERIFY_WITH_TIMEOUT(desk.loaded(), 30'000);
        const auto kept = keptChecklist(desk.file()->inspection.opened.body.checklist);
        QVERIFY(kept.has_value());
        const auto line = std::ranges::find(kept->lines, std::string("Rope handles, four"), &ChecklistLine::title);
        QVERIFY(line != kept->lines.end());
        QCOMPARE(line->section, std::string("basket"));
        QCOMPARE(line->kinds, std::vector{ItemKind::Basket});
    }

    void aPhotographComesBackAsItWasKept() {
        QImage image(40, 30, QImage::Format_RGB32);
        image.fill(Qt::red);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        QVERIFY(buffer.open(QIODevice::WriteOnly) && image.save(&buffer, "PNG"));
        auto kept = m_demo->house.desk.ask([picture = Picture{"image/png", bytes.toStdString()}](Record& record) {
            return record.keepPicture(picture);
        });
        kept.waitForFinished();
        QVERIFY(kept.result().has_value());
        const auto digest = QString::fromStdString(*kept.result());

        RecordPictures pictures(m_demo->house.desk);
        const auto answered = [&](const QString& name, const QSize& wanted) {
            std::unique_ptr<QQuickImageResponse> response(pictures.requestImageResponse(name, wanted));
            QSignalSpy finished(response.get(), &QQuickImageResponse::finished);
            [[maybe_unused]] const bool came = QTest::qWaitFor([&] { return !finished.isEmpty(); }, 30'000);
            return response;
        };
        const auto whole = answered(digest, {});
        QCOMPARE(whole->errorString(), QString());
        const std::unique_ptr<QQuickTextureFactory> texture(whole->textureFactory());
        QCOMPARE(texture->image().size(), QSize(40, 30));
        QCOMPARE(texture->image().pixelColor(20, 15), QColor(Qt::red));
        const auto small = answered(digest, {20, 20});
        const std::unique_ptr<QQuickTextureFactory> smaller(small->textureFactory());
        QCOMPARE(smaller->textureSize(), QSize(20, 15));
        QVERIFY(!answered(QString(64, u'0'), {})->errorString().isEmpty());
    }
};

CROWNRING_TEST(ShopPlaceTest, QGuiApplication)

}

#include "shop_place_test.moc"
