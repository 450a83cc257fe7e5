// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A shop with one balloon, and the desks of its bench, driven as a hand would.

#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "screen/bench/release_desk.h"
#include "screen/bench/small_bench.h"
#include "screen/bench/visit_opening.h"
#include "screen/demo_house.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace bench_walk_test {

using namespace crownring;
using namespace crownring::screen;

struct Shop {
    Shop() : house(*CivilDate::parse("2026-11-25"), false) {
        house.habits.setPerson(QStringLiteral("insp. A"));
        house.habits.setInspector(QStringLiteral("insp. A"));
        house.desk.open(folder.filePath(QStringLiteral("record.sqlite")), QByteArray(smallBench));
    }
    [[nodiscard]] bool ready() {
        return QTest::qWaitFor([this] { return house.fleet.ready(); }, 30'000);
    }
    template <class Function>
    auto ask(Function function) {
        auto future = house.desk.ask(std::move(function));
        future.waitForFinished();
        return future.result();
    }
    QTemporaryDir folder;
    House house;
};

/// Until the record has answered all that was asked.
template <class Desks>
void settle(Desks& desks) {
    static_cast<void>(QTest::qWaitFor([&] { return !desks.inspection.saving() && !desks.release.signing(); }, 10'000));
    QTest::qWait(2);
}

/// What is left alone by that: each is looked at by itself, where its readings are there.
template <class Desks>
void lookAtTheRest(Desks& desks) {
    for (const auto& row : std::vector(desks.inspection.lines()->rows())) {
        const auto count = row.readings.split(u' '); // "1 of 2 readings"
        const bool unread =
            row.apart == QStringLiteral("settled by its readings") && (count.size() < 3 || count[0] != count[2]);
        const bool unflown = isFlown(row.line.toStdString()); // nobody flew
        if (row.state == 0 && (unread || unflown))
            desks.inspection.leaveOut(row.at, 1, QStringLiteral("Manual, page 6"));
        else if (row.state == 0)
            desks.inspection.settle(row.at, 1);
    }
    settle(desks);
}

template <class Desks>
void lookAtEverything(Desks& desks) {
    for (int part = 0; part < desks.inspection.parts()->count(); ++part) {
        desks.inspection.setPartAt(part);
        desks.inspection.settleRest();
        settle(desks);
        lookAtTheRest(desks);
    }
}

/// Every reading that is asked for, each as it should be.
template <class Desks>
void takeReadings(Desks& desks) {
    auto& reading = desks.reading;
    for (int i = 0; i < 12 && !reading.series()->choices().empty() && reading.series()->choices().front().number > 0;
         ++i) {
        reading.setCurrent(0);
        if (reading.canHold())
            reading.hold();
        else if (reading.stepped())
            reading.enter(QStringLiteral("104"), QStringLiteral("110"));
        else
            reading.enter(QStringLiteral("8"));
        if (!reading.question().isEmpty())
            reading.stand();
        settle(desks);
    }
}

/// With a code of the signatory's own; who has none yet sets it.
inline void signWith(ReleaseDesk& release, const QString& code) {
    release.code()->setCode(code);
    release.code()->setAgain(code);
    if (!release.signer().isEmpty())
        static_cast<void>(QTest::qWaitFor([&] { return release.code()->isReady(); }, 5'000));
    release.sign();
}

struct Desks {
    explicit Desks(House& house) : opening(house), inspection(house), release(house) {
        reading.setDesk(&inspection);
        release.setDesk(&inspection);
    }
    [[nodiscard]] bool open(const QString& visit = {}) {
        opening.begin(QStringLiteral("QE-SML"));
        if (!QTest::qWaitFor([this] { return opening.canOpen() && opening.chosenWork() > 0; }, 10'000))
            return false;
        if (!visit.isEmpty())
            opening.setVisit(visit);
        return openIt();
    }
    /// With a kind of visit chosen, and what is proposed for it.
    [[nodiscard]] bool choose(const char* visit) {
        opening.begin(QStringLiteral("QE-SML"));
        if (!QTest::qWaitFor([this] { return opening.known(); }, 10'000))
            return false;
        opening.setVisit(QLatin1String(visit));
        return QTest::qWaitFor([this] { return opening.known() && opening.canOpen(); }, 10'000);
    }
    [[nodiscard]] bool openIt() {
        QSignalSpy opened(&opening, &VisitOpening::opened);
        opening.openIt();
        if (!QTest::qWaitFor([&] { return opened.size() == 1; }, 10'000))
            return false;
        inspection.setInspection(opened.first().first().toString());
        return QTest::qWaitFor([this] { return inspection.loaded(); }, 10'000);
    }
    /// Writes down what was done on the burner.
    void works() {
        WorkPerformed work;
        work.inspection = inspection.file()->inspection.id;
        work.item = ItemId("BRN-1");
        work.what = "new O-rings";
        work.data = "Flare manual, 4";
        work.grade = Grade::Minor;
        inspection.post({work});
        settle();
    }
    void settle() { bench_walk_test::settle(*this); }
    void looksAtEverything() { lookAtEverything(*this); }
    void signs(const QString& code = QStringLiteral("basket wire 7")) { signWith(release, code); }
    void reads() { takeReadings(*this); }

    In<VisitOpening> opening;
    In<InspectionDesk> inspection;
    ReadingDesk reading;
    In<ReleaseDesk> release;
};

}
