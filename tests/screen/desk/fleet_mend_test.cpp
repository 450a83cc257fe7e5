// SPDX-License-Identifier: GPL-3.0-or-later

/// What was touched is asked again alone; the sheet and what places show of it are then as if all had been asked anew.

#include "acts/post.h"
#include "screen/balloons/balloons_place.h"
#include "screen/demo_house.h"
#include "screen/next/next_place.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

#include <random>

namespace fleet_mend_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr auto strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

/// "QE-OVA/ml.inspection clear …" of each row, so that a difference can be read.
QStringList rowTexts(const Row<DueRow>& rows) {
    QStringList texts;
    for (const auto& row : rows)
        texts += QString::fromStdString(row.item->id.text() + "/" + row.requirement->id.text());
    return texts;
}

/// What triggered a row lies in facts of its own list.
bool sameState(Assessment a, Assessment b) {
    if ((a.trigger == nullptr) != (b.trigger == nullptr) || (a.trigger && !(*a.trigger == *b.trigger)))
        return false;
    a.trigger = b.trigger = nullptr;
    return a == b;
}

/// Runs days of a small company at random.
class Company {
public:
    explicit Company(House& house) : m_house(house) {
        for (const auto& card : house.fleet.sheet()->balloons())
            m_balloons.push_back(card.balloon);
        for (const auto& item : house.fleet.sheet()->items())
            m_items.push_back(item.id);
    }

    Entry something() {
        Entry entry;
        entry.on = addDays(m_house.day.date(), -static_cast<int>(roll(3) == 0 ? roll(400) : 0));
        entry.by = "office";
        entry.body = body(roll(9));
        return entry;
    }
    EntryId last;

private:
    std::size_t roll(std::size_t sides) { return m_dice() % sides; }
    const Registration& balloon() { return m_balloons[roll(m_balloons.size())]; }
    const ItemId& item() { return m_items[roll(m_items.size())]; }
    Body body(std::size_t which) {
        switch (which) {
        case 0:
        case 1:
        case 2: {
            FlightLogged flight;
            flight.balloon = balloon();
            flight.use.minutes = Minutes(30 + static_cast<std::int64_t>(roll(120)));
            if (roll(3) == 0)
                flight.kit = {item(), item()};
            if (flight.kit && flight.kit->front() == flight.kit->back())
                flight.kit->pop_back();
            return flight;
        }
        case 3:
        case 4:
            return RequirementDone{item(), RequirementId("ml.inspection"), {}, {}, {}};
        case 5:
            return EventReported{balloon(), "hard-landing", {}, {}};
        case 6: {
            DefectFound found;
            found.defect = DefectId("D-" + std::to_string(m_dice()));
            found.item = item();
            found.what = "torn";
            return found;
        }
        case 7:
            if (!last.empty())
                return EntryVoided{std::exchange(last, EntryId()), "a slip"};
            return EventReported{item(), "over-temperature", {}, {}};
        default:
            return ItemFitted{balloon(), item(), {}};
        }
    }

    House& m_house;
    std::vector<Registration> m_balloons;
    std::vector<ItemId> m_items;
    std::mt19937 m_dice{20261125};
};

}

class FleetMendTest : public QObject {
    Q_OBJECT
private:
    std::unique_ptr<DemoHouse> m_demo;

    [[nodiscard]] House& house() { return m_demo->house; }
    Sheet askedAnew() {
        auto asked = house().desk.ask([on = house().day.date()](Record& record) -> Result<Sheet> {
            return FleetSheet::listed(record, on).and_then([&](const Sheet& list) {
                return FleetSheet::governed(list, record);
            });
        });
        asked.waitForFinished();
        return asked.result().value();
    }
    /// Posts and waits for the sheet that knows of it. The id of the entry; none where it was refused.
    std::optional<EntryId> post(const Entry& entry) {
        auto posted = house().desk.ask([entry](Record& record) { return postOne(record, record, entry); });
        posted.waitForFinished();
        if (!posted.result())
            return std::nullopt;
        house().desk.written();
        if (!QTest::qWaitFor([this] { return !house().fleet.asking(); }, 60'000))
            return std::nullopt;
        return posted.result()->ids.front();
    }
    void compareRows(const FleetSheet& kept, const FleetSheet& anew) {
        QCOMPARE(rowTexts(kept.rows()), rowTexts(anew.rows()));
        QCOMPARE(kept.rowCount(), anew.rowCount());
        for (std::size_t at = 0; at < anew.rows().size(); ++at)
            QVERIFY2(sameState(kept.rows()[at].state, anew.rows()[at].state),
                     qPrintable(rowTexts(anew.rows())[qsizetype(at)]));
        QCOMPARE(kept.items().size(), anew.items().size());
        for (std::size_t at = 0; at < anew.items().size(); ++at)
            QVERIFY2(kept.items()[at] == anew.items()[at], anew.items()[at].id.text().c_str());
    }
    void compareBalloons(const FleetSheet& kept, const FleetSheet& anew) {
        QCOMPARE(kept.balloons().size(), anew.balloons().size());
        for (const auto& card : anew.balloons()) {
            const auto& have = *kept.card(card.balloon);
            const auto* name = card.balloon.text().c_str();
            QVERIFY2(have.flown == card.flown && have.flights == card.flights, name);
            QVERIFY2(have.lastFlight == card.lastFlight && have.items == card.items, name);
            const auto& one = kept.headlineOf(card.balloon);
            const auto& other = anew.headlineOf(card.balloon);
            QVERIFY2((one.row == nullptr) == (other.row == nullptr), name);
            if (one.row)
                QVERIFY2(one.row->item->id == other.row->item->id &&
                             one.row->requirement->id == other.row->requirement->id,
                         name);
            QVERIFY2(one.limit == other.limit && one.comes == other.comes, name);
        }
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }

    void daysOfACompanyLeaveWhatAskingAnewGives() {
        Company company(house());
        In<NextPlace> next(house());
        In<NextPlace> soonest(house());
        In<BalloonsPlace> balloons(house());
        soonest.setSoonestFirst(true);
        soonest.setKind(QStringLiteral("envelope"));
        QAbstractItemModelTester tester(next.list(), strict);
        QAbstractItemModelTester other(soonest.list(), strict);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready() && soonest.ready(), 30'000);
        int mended = 0;
        int refused = 0;
        for (int i = 0; i < 40; ++i) {
            const auto before = house().fleet.sheet();
            const auto entry = company.something();
            const auto id = post(entry);
            if (!id) {
                ++refused;
                continue;
            }
            company.last = std::holds_alternative<FlightLogged>(entry.body) ? *id : company.last;
            const auto kept = house().fleet.sheet();
            mended += kept->mends(before) ? 1 : 0;
            QVERIFY(kept != before);
            QCOMPARE(kept->mends(before), !std::holds_alternative<ItemFitted>(entry.body));
            if (i % 8 != 7)
                continue;
            const auto anew = askedAnew();
            compareRows(*kept, *anew);
            compareBalloons(*kept, *anew);
            if (QTest::currentTestFailed())
                return;
            for (auto* place : {&next, &soonest}) {
                DueSieve sieve;
                if (place == &soonest)
                    sieve = {.balloon = {},
                             .kind = ItemKind::Envelope,
                             .reckoned = {},
                             .bin = {},
                             .words = {},
                             .order = DueOrder::Soonest};
                const auto sifted = sift(*anew, sieve);
                QTRY_COMPARE_WITH_TIMEOUT(place->list()->count(), static_cast<int>(sifted.rows.size()), 30'000);
                const auto shows = [&] {
                    for (int at = 0; at < place->list()->count(); ++at) {
                        const auto& one = *place->list()->row(at);
                        const auto& two = *sifted.rows[static_cast<std::size_t>(at)];
                        if (one.item->id != two.item->id || one.requirement->id != two.requirement->id ||
                            !sameState(one.state, two.state))
                            return false;
                    }
                    return true;
                };
                QTRY_VERIFY_WITH_TIMEOUT(shows(), 30'000);
                for (int at = 0; at < reckonedCount; ++at)
                    QCOMPARE(place->standings()->choices()[std::size_t(at)].number,
                             sifted.spread.bySort[std::size_t(at)]);
                for (int bin = 0; bin < calendarBins; ++bin)
                    QCOMPARE(place->calendar()
                                 ->data(place->calendar()->index(bin), HorizonModel::TallyRole)
                                 .value<QList<int>>(),
                             QList<int>(sifted.spread.calendar[std::size_t(bin)].begin(),
                                        sifted.spread.calendar[std::size_t(bin)].end()));
            }
            const auto registerShows = [&] {
                return std::ranges::all_of(anew->balloons().pointers(), [&](const BalloonCard* card) {
                    const auto line = balloonLine(*anew, *card);
                    const auto at = balloons.balloons()->find(line.balloon);
                    const auto text = [&](int role) {
                        return balloons.balloons()->data(balloons.balloons()->index(at), role).toString();
                    };
                    return text(BalloonModel::FlownRole) == line.flown && text(BalloonModel::WorstRole) == line.worst &&
                           text(BalloonModel::RemainsRole) == line.left;
                });
            };
            QTRY_VERIFY_WITH_TIMEOUT(registerShows(), 30'000);
        }
        qInfo("%d of 40 mended, %d refused", mended, refused);
        QVERIFY(mended > 20);
    }

    void oneFlightTouchesTheRowsOfWhatFlewAlone() {
        In<NextPlace> next(house());
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        const Registration balloon("QE-OVA");
        const auto rows = house().fleet.sheet()->rowsOf(balloon).size();
        QSignalSpy resets(next.list(), &QAbstractItemModel::modelReset);
        QSignalSpy comings(next.list(), &QAbstractItemModel::rowsInserted);
        QSignalSpy goings(next.list(), &QAbstractItemModel::rowsRemoved);
        QSignalSpy changes(next.list(), &QAbstractItemModel::dataChanged);
        Entry entry;
        entry.on = house().day.date();
        entry.by = "pilot";
        FlightLogged flight;
        flight.balloon = balloon;
        flight.use.minutes = Minutes(60);
        entry.body = flight;
        QVERIFY(post(entry));
        QCOMPARE(resets.size(), 0);
        QCOMPARE(comings.size(), 0);
        QCOMPARE(goings.size(), 0);
        QVERIFY(changes.size() > 0);
        QVERIFY(changes.size() <= static_cast<qsizetype>(rows));
        for (const auto& change : changes)
            QCOMPARE(change[0].toModelIndex(), change[1].toModelIndex()); // single rows
    }

    void whatIsWrittenWhileAllIsAskedIsNotMissed() {
        house().day.stepDays(1); // asks for everything
        Entry entry;
        entry.on = house().day.date();
        entry.by = "pilot";
        FlightLogged flight;
        flight.balloon = Registration("QE-OVA");
        flight.use.minutes = Minutes(60);
        entry.body = flight;
        const auto before = house().fleet.sheet()->card(flight.balloon)->flights;
        QVERIFY(post(entry));
        QCOMPARE(house().fleet.sheet()->card(flight.balloon)->flights, before + 1);
        compareRows(*house().fleet.sheet(), *askedAnew());
    }
};

CROWNRING_TEST(FleetMendTest, QCoreApplication)

}

#include "fleet_mend_test.moc"
