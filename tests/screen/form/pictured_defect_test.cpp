// SPDX-License-Identifier: GPL-3.0-or-later

/// A defect with photographs: what is chosen is kept with the entry and not before, what cannot be read costs nothing
/// of the form, and every page that tells of the defect has the pictures.

#include "form_hand.h"
#include "screen/desk/journal_model.h"
#include "screen/desk/kept_photograph.h"
#include "screen/next/due_detail.h"
#include "screen/record/record_place.h"
#include "test_class.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>

namespace pictured_defect_test {

using namespace crownring;
using namespace crownring::screen;

class PicturedDefectTest : public QObject {
    Q_OBJECT

    std::unique_ptr<FormHand> m_hand;
    QTemporaryDir m_folder;

    [[nodiscard]] QUrl made(const QString& name, int width, int height, const char* format = "JPG") {
        QImage image(width, height, QImage::Format_RGB32);
        image.fill(QColor(width % 256, height % 256, 80));
        const auto path = m_folder.filePath(name);
        return image.save(path, format) ? QUrl::fromLocalFile(path) : QUrl();
    }
    [[nodiscard]] static bool attach(EntryForm& form, const QUrl& file) {
        form.attach(FormHand::rowOf(form, "photographs"), file);
        return QTest::qWaitFor([&] { return !form.reading(); }, 20'000);
    }
    [[nodiscard]] static QStringList chosen(EntryForm& form) {
        return form.fields()->value("photographs").split(u'\n', Qt::SkipEmptyParts);
    }
    void begin(EntryForm& form) {
        form.begin(QStringLiteral("defect.found"), QStringLiteral("B-ONE"));
        FormHand::set(form, "what", "a torn load tape");
        FormHand::set(form, "item", "E-1");
    }
    [[nodiscard]] std::optional<Picture> kept(const QString& digest) {
        auto picture = m_hand->house().desk.ask(
            [digest = digest.toStdString()](Record& record) { return record.picture(digest); });
        picture.waitForFinished();
        return picture.result().value();
    }
    [[nodiscard]] std::optional<JournalLine> latest(const char* kind) {
        auto lines = m_hand->house().desk.ask(
            [kind](Record& record) { return record.lines({.text = {}, .kind = kind, .before = {}, .limit = 1}); });
        lines.waitForFinished();
        const auto answer = lines.result();
        return answer && !answer->empty() ? std::optional(answer->front()) : std::nullopt;
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
    }
    void cleanup() { m_hand.reset(); }

    void itIsKeptWithTheEntryAndNotBefore() {
        In<EntryForm> form(m_hand->house());
        begin(form);
        QVERIFY(attach(form, made(QStringLiteral("tape.jpg"), 3000, 2000)));
        QCOMPARE(chosen(form).size(), 1);
        const auto digest = chosen(form).front();
        QVERIFY(!kept(digest));
        QVERIFY(m_hand->save(form));
        const auto picture = kept(digest);
        QVERIFY(picture);
        QCOMPARE(picture->media, std::string("image/jpeg"));
        QCOMPARE(QImage::fromData(QByteArray::fromStdString(picture->bytes)).size(), QSize(2000, 1333));

        const auto line = latest("defect.found");
        QVERIFY(line);
        const auto& found = std::get<DefectFound>(line->entry.body);
        QCOMPARE(found.photographs, std::vector{digest.toStdString()});
        In<DueDetail> detail(m_hand->house());
        detail.show(QStringLiteral("E-1"), QStringLiteral("defect/") + QString::fromStdString(found.defect.text()));
        QVERIFY(detail.isDefect());
        QTRY_COMPARE_WITH_TIMEOUT(detail.photographs(), QStringList(digest), 20'000);
        In<RecordPlace> place(m_hand->house());
        place.openEntry(QString::fromStdString(line->entry.id.text()));
        QTRY_COMPARE_WITH_TIMEOUT(place.entryPhotographs(), QStringList(digest), 20'000);
        QVERIFY2(place.entryTitle().endsWith(QStringLiteral(", 1 photograph")), qPrintable(place.entryTitle()));
        QCOMPARE(JournalModel::photographsOf(line->entry), QStringList(digest));
    }

    void whatIsLeftOutAgainIsNotKept() {
        In<EntryForm> form(m_hand->house());
        begin(form);
        QVERIFY(attach(form, made(QStringLiteral("one.png"), 40, 30, "PNG")));
        QVERIFY(attach(form, made(QStringLiteral("two.png"), 50, 30, "PNG")));
        QVERIFY(attach(form, made(QStringLiteral("two again.png"), 50, 30, "PNG")));
        const auto both = chosen(form);
        QCOMPARE(both.size(), 2);
        form.toggle(FormHand::rowOf(form, "photographs"), both.front());
        QVERIFY(m_hand->save(form));
        QVERIFY(!kept(both.front()));
        QVERIFY(kept(both.back()));
        QCOMPARE(std::get<DefectFound>(latest("defect.found")->entry.body).photographs.size(), std::size_t(1));
    }

    void whatCannotBeReadIsSaidAndCostsNothing_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("said");
        QTest::newRow("no picture") << QStringLiteral("notes.jpg") << QStringLiteral("no picture");
        QTest::newRow("gone") << QStringLiteral("gone.jpg") << QStringLiteral("cannot be read");
        QTest::newRow("too large") << QStringLiteral("wall.png") << QStringLiteral("too large");
    }
    void whatCannotBeReadIsSaidAndCostsNothing() {
        QFETCH(QString, name);
        QFETCH(QString, said);
        QFile notes(m_folder.filePath(QStringLiteral("notes.jpg")));
        QVERIFY(notes.open(QIODevice::WriteOnly) && notes.write("no picture at all") > 0);
        notes.close();
        if (name == QStringLiteral("wall.png")) {
            QImage wall(33'000, 1000, QImage::Format_Mono);
            wall.fill(0);
            QVERIFY(wall.save(m_folder.filePath(name)));
        }
        In<EntryForm> form(m_hand->house());
        begin(form);
        QVERIFY(attach(form, made(QStringLiteral("good.jpg"), 60, 40)));
        QVERIFY(attach(form, QUrl::fromLocalFile(m_folder.filePath(name))));
        const auto problem = FormHand::problemAt(form, "photographs");
        QVERIFY2(problem.contains(said) && problem.contains(name), qPrintable(problem));
        QVERIFY(form.isOpen());
        QCOMPARE(form.fields()->value("what"), QStringLiteral("a torn load tape"));
        QCOMPARE(chosen(form).size(), 1);
        QVERIFY(m_hand->save(form));
        QCOMPARE(std::get<DefectFound>(latest("defect.found")->entry.body).photographs.size(), std::size_t(1));
    }

    void aFileThatVanishesOnceItIsChosenIsInTheFormAlready() {
        In<EntryForm> form(m_hand->house());
        begin(form);
        const auto file = made(QStringLiteral("short.jpg"), 60, 40);
        QVERIFY(attach(form, file));
        QVERIFY(QFile::remove(file.toLocalFile()));
        QVERIFY(m_hand->save(form));
        QVERIFY(kept(
            QString::fromStdString(std::get<DefectFound>(latest("defect.found")->entry.body).photographs.front())));
    }

    void aCorrectionShowsThemAndMayAddOne() {
        In<EntryForm> form(m_hand->house());
        begin(form);
        QVERIFY(attach(form, made(QStringLiteral("one.jpg"), 60, 40)));
        QVERIFY(m_hand->save(form));
        form.correct(QString::fromStdString(latest("defect.found")->entry.id.text()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 30'000);
        const auto& field = FormHand::field(form, "photographs");
        QCOMPARE(field.choices.size(), std::size_t(1));
        QCOMPARE(field.choices.front().detail, QStringLiteral("image://record/") + field.value);
        QVERIFY(attach(form, made(QStringLiteral("two.jpg"), 70, 40)));
        QVERIFY2(m_hand->saveCorrection(form), qPrintable(form.problem()));
        const auto line = latest("defect.found");
        const auto& now = std::get<DefectFound>(nowOf(*line).body);
        QCOMPARE(now.photographs.size(), std::size_t(2));
        for (const auto& digest : now.photographs)
            QVERIFY(kept(QString::fromStdString(digest)));
    }

    void fromAFlightItHasItsDayAndWhatFlew() {
        QVERIFY(m_hand->enterItem("K-2", "basket"));
        In<EntryForm> flight(m_hand->house());
        flight.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        QVERIFY(m_hand->asked(flight));
        FormHand::set(flight, "minutes", "1:05");
        FormHand::set(flight, "on", "2026-11-20");
        FormHand::set(flight, "time", "19:10");
        QVERIFY(m_hand->asked(flight));
        QTRY_VERIFY_WITH_TIMEOUT(flight.kit()->count() >= 4, 20'000);
        for (int row = 0; row < flight.kit()->count(); ++row)
            if (flight.kit()->data(flight.kit()->index(row), FlightKit::ItemRole) == QStringLiteral("K-1"))
                flight.kit()->ask(row);
        flight.kit()->pick(QStringLiteral("K-2"));
        QVERIFY(m_hand->save(flight));
        In<EntryForm> form(m_hand->house());
        form.defectOfFlight(QString::fromStdString(latest("flight.logged")->entry.id.text()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 30'000);
        QCOMPARE(form.fields()->value("on"), QStringLiteral("2026-11-20"));
        QVERIFY(form.fields()->value("note").startsWith(QStringLiteral("Found on the flight: B-ONE")));
        QStringList offered;
        for (const auto& choice : FormHand::field(form, "item").choices)
            offered += choice.value;
        offered.sort();
        QCOMPARE(offered, (QStringList{"C-1", "E-1", "K-2", "R-1"}));
        FormHand::set(form, "what", "a scorched corner");
        FormHand::set(form, "item", "K-2");
        QVERIFY(m_hand->save(form));
        const auto line = latest("defect.found");
        QCOMPARE(line->entry.on.iso(), std::string("2026-11-20"));
        QVERIFY2(line->entry.note.starts_with("Found on the flight: B-ONE"), line->entry.note.c_str());
        QVERIFY(latest("flight.logged")->entry.time);
        QVERIFY(line->entry.time);
        QCOMPARE(QString::fromStdString(line->entry.time->iso()),
                 QStringLiteral("19:10Z")); // found on the flight, so not before it
    }

    void whatWasTakenTodayOrYesterdayLiesAtHand() {
        QVERIFY(QDir(m_folder.path()).mkpath(QStringLiteral("pictures/camera")));
        QFile places(m_folder.filePath(QStringLiteral("user-dirs.dirs")));
        QVERIFY(places.open(QIODevice::WriteOnly));
        places.write("XDG_PICTURES_DIR=\"" + m_folder.filePath(QStringLiteral("pictures")).toUtf8() + "\"\n");
        places.close();
        qputenv("XDG_CONFIG_HOME", m_folder.path().toUtf8());
        const auto taken = [&](const QString& name, const QDate& day, int hour) {
            const auto file = made(name, 60, 40);
            QFile at(file.toLocalFile());
            return at.open(QIODevice::ReadWrite) &&
                   at.setFileTime(QDateTime(day, QTime(hour, 0)), QFileDevice::FileModificationTime);
        };
        QVERIFY(taken(QStringLiteral("pictures/holiday.jpg"), QDate(2026, 11, 23), 12));
        QVERIFY(taken(QStringLiteral("pictures/tape.jpg"), QDate(2026, 11, 24), 7));
        QVERIFY(taken(QStringLiteral("pictures/camera/basket.jpg"), QDate(2026, 11, 25), 7));
        In<EntryForm> form(m_hand->house());
        begin(form);
        QTRY_COMPARE_WITH_TIMEOUT(form.latestPictures().size(), 2, 20'000);
        QVERIFY(form.latestPictures().front().endsWith(QStringLiteral("basket.jpg")));
        QVERIFY(attach(form, QUrl(form.latestPictures().back())));
        QCOMPARE(chosen(form).size(), 1);
        qunsetenv("XDG_CONFIG_HOME");
    }
};

CROWNRING_TEST(PicturedDefectTest, QGuiApplication)

}

#include "pictured_defect_test.moc"
