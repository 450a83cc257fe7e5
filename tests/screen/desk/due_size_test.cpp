// SPDX-License-Identifier: GPL-3.0-or-later

/// The due list with 250,000 rows: sifted off the GUI thread, shown without a reset.

#include "screen/desk/due_model.h"
#include "screen/next/due_sieve.h"
#include "test_class.h"

#include <QElapsedTimer>
#include <QTest>

#include <array>
#include <memory>

namespace due_size_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr std::size_t rowsInAll = 250'000;

struct LargeSheet {
    Sheet sheet;
    std::vector<Requirement> requirements;

    LargeSheet() {
        constexpr std::size_t each = 5;
        DueList due;
        due.on = *CivilDate::parse("2026-11-25");
        requirements.resize(each);
        for (std::size_t at = 0; at < each; ++at) {
            requirements[at].id = RequirementId("rule." + std::to_string(at));
            requirements[at].title = std::array{"alpha", "beta", "gamma", "delta", "epsilon"}.at(at);
        }
        due.items.resize(rowsInAll / each);
        for (std::size_t at = 0; at < due.items.size(); ++at) {
            auto& item = due.items[at];
            item.id = ItemId("CYL-" + std::to_string(at));
            item.kind = static_cast<ItemKind>(at % itemKindCount);
            item.balloon = Registration("QE-" + std::to_string(at % 5000));
        }
        for (std::size_t at = 0; at < rowsInAll; ++at) {
            DueRow row;
            row.item = &due.items[at / each];
            row.requirement = &requirements[at % each];
            LimitState limit;
            limit.clock = ClockName::Months;
            const Days left(static_cast<std::int64_t>(at % 700) - 40);
            limit.reach = CalendarReach{due.on, addDays(due.on, left.value()), left, left};
            limit.standing = left < Days(0) ? Standing::Lapsed : left < Days(31) ? Standing::Nearing : Standing::Clear;
            row.state.standing = limit.standing;
            row.state.governs = ClockName::Months;
            row.state.limits = {limit};
            due.rows.push_back(std::move(row));
        }
        sheet = std::make_shared<const FleetSheet>(std::move(due));
    }
};

}

class DueSizeTest : public QObject {
    Q_OBJECT

private slots:
    void aQuarterOfAMillionRows() {
        LargeSheet large;
        QElapsedTimer timer;
        timer.start();
        const auto all = sift(*large.sheet, {});
        const auto sifted = timer.restart();
        QCOMPARE(all.rows.size(), rowsInAll);
        DueModel model;
        model.show(large.sheet, all.rows);
        const auto shown = timer.restart();
        DueSieve sieve;
        sieve.reckoned = Reckoned::Lapsed;
        const auto lapsed = sift(*large.sheet, sieve);
        timer.restart();
        model.show(large.sheet, lapsed.rows);
        const auto filtered = timer.restart();
        QCOMPARE(model.count(), static_cast<int>(lapsed.rows.size()));
        QVERIFY(!lapsed.rows.empty() && lapsed.rows.size() < rowsInAll);
        qInfo("sift %lld ms, show all %lld ms, show a part %lld ms", static_cast<long long>(sifted),
              static_cast<long long>(shown), static_cast<long long>(filtered));
        // Generous for a slow machine; a quadratic slip takes minutes.
        QVERIFY(sifted < 5000 && shown < 3000 && filtered < 3000);
    }

    void wordsAreSoughtInEveryRow() {
        LargeSheet large;
        DueSieve sieve;
        sieve.words = QStringLiteral("cyl-123 epsilon");
        const auto found = sift(*large.sheet, sieve);
        QCOMPARE(found.rows.size(), std::size_t(111)); // CYL-123, CYL-1230 … 1239, CYL-12300 … 12399
    }
};

CROWNRING_TEST(DueSizeTest, QCoreApplication)

}

#include "due_size_test.moc"
