// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/headline.h"
#include "rules/shed.h"
#include "test_class.h"

namespace headline_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

/// Rows of one balloon on 2024-07-01, worst first.
class Balloon {
public:
    Balloon& with(const std::string& keys, const Item& item) {
        const auto number = m_requirements.size();
        m_requirements.push_back(std::make_shared<Requirement>(
            rulesFrom({R"("id": "r)" + std::to_string(number) + R"(", )" + keys}).all().front()));
        m_items.push_back(std::make_shared<ItemFacts>(item));
        m_rows.push_back({m_items.back().get(), m_requirements.back().get(), nullptr,
                          on("2024-07-01", *m_requirements.back(), *m_items.back())});
        return *this;
    }
    Balloon& pace(std::int64_t minutes, std::int64_t days) {
        return m_pace = {{Minutes(minutes), {}, {}}, Days(days)}, *this;
    }
    /// The number of the row that governs, and when it comes: "r1 2024-08-08".
    [[nodiscard]] QString headline() const {
        std::vector<const DueRow*> rows;
        for (const auto& row : m_rows)
            rows.push_back(&row);
        std::ranges::stable_sort(rows, [](const DueRow* a, const DueRow* b) { return comesBefore(*a, *b); });
        const auto answer = headlineOf(
            rows, [this](const ItemFacts&) { return m_pace; }, day("2024-07-01"));
        if (!answer.row)
            return QStringLiteral("nothing");
        return QString::fromStdString(answer.row->requirement->id.text() +
                                      (answer.comes ? " " + answer.comes->iso() : std::string()));
    }

    /// The numbers of the rows as one meets them.
    [[nodiscard]] QString order() const {
        std::vector<const DueRow*> rows;
        for (const auto& row : m_rows)
            rows.push_back(&row);
        QStringList numbers;
        for (const auto* row : asTheyCome(
                 rows, [this](const ItemFacts&) { return m_pace; }, day("2024-07-01")))
            numbers += QString::fromStdString(row->requirement->id.text());
        return numbers.join(u' ');
    }

private:
    RecentUse m_pace;
    std::vector<std::shared_ptr<Requirement>> m_requirements;
    std::vector<std::shared_ptr<ItemFacts>> m_items;
    std::vector<DueRow> m_rows;
};

const auto* const yearly = R"("limits": [{"clock": "months", "every": 12}])";
const auto* const hundredHours = R"("limits": [{"clock": "minutes", "every": 6000}])";

Item doneOn(const char* requirement, const char* date, std::int64_t since = 0) {
    return Item().done(requirement, date).at(clockOf(since));
}

}

/// One line a balloon says what comes next, and is never clearer than what can ground it.
class HeadlineTest : public QObject {
    Q_OBJECT
private slots:
    void nothingThatBindsIsNoHeadline() {
        QCOMPARE(Balloon().headline(), "nothing");
        QCOMPARE(
            Balloon().with(std::string(yearly) + R"(, "force": "recommended")", doneOn("r0", "2024-01-01")).headline(),
            "nothing");
    }
    void theSoonestMandatoryDateGoverns() {
        QCOMPARE(Balloon()
                     .with(yearly, doneOn("r0", "2024-05-01"))
                     .with(yearly, doneOn("r1", "2023-08-20"))
                     .with(yearly, doneOn("r2", "2024-03-01"))
                     .headline(),
                 "r1 2024-08-20");
    }
    void aRecommendedOrFillingRowNeverGoverns_data() {
        QTest::addColumn<QString>("apart");
        QTest::newRow("recommended") << R"(, "force": "recommended")";
        QTest::newRow("filling") << R"(, "blocks": "filling")";
        QTest::newRow("not called for") << R"(, "operations": ["for-hire"])";
    }
    void aRecommendedOrFillingRowNeverGoverns() {
        QFETCH(QString, apart);
        const auto keys = yearly + apart.toStdString();
        // Sooner, nearing, or lapsed long ago: it makes no difference.
        for (const auto* done : {"2023-09-01", "2023-07-10", "2020-01-01"})
            QCOMPARE(Balloon().with(keys, doneOn("r0", done)).with(yearly, doneOn("r1", "2024-05-01")).headline(),
                     "r1 2025-05-01");
    }
    void whatIsDueNextStandsAsItComes() {
        // As the headline: 12 h at 1.5 h a week are eight weeks.
        const std::string recommended = R"(, "force": "recommended")";
        const std::string hours = R"("limits": [{"clock": "minutes", "every": 6000, "look_ahead": 0}])";
        QCOMPARE(Balloon()
                     .with(yearly, doneOn("r0", "2024-05-01"))
                     .with(yearly + recommended, doneOn("r1", "2023-08-02"))
                     .with(hours, doneOn("r2", "2024-01-01").at(clockOf(5280)))
                     .with(yearly, doneOn("r3", "2023-10-01"))
                     .with(yearly, doneOn("r4", "2023-01-01")) // lapsed
                     .pace(90, 7)
                     .order(),
                 "r4 r2 r3 r0 r1");
    }
    void hoursAtTheRecentPaceComeBeforeADate() {
        // 12 h left at 18 h a year: 243 days and a third.
        QCOMPARE(Balloon()
                     .with(yearly, doneOn("r0", "2024-05-01"))
                     .with(hundredHours, doneOn("r1", "2023-01-01", 6000 - 720))
                     .pace(18 * 60, 365)
                     .headline(),
                 "r1 2025-03-01");
    }
    void whatIsNotFlownNeverComesByHours() {
        QCOMPARE(Balloon()
                     .with(hundredHours, doneOn("r0", "2023-01-01", 5000))
                     .with(yearly, doneOn("r1", "2024-05-01"))
                     .pace(0, 730)
                     .headline(),
                 "r1 2025-05-01");
    }
    void theWorseStandingGovernsThoughItComesLater() {
        // 5 h left is nearing, and at this pace comes in three years; the annual in six weeks is clear.
        QCOMPARE(Balloon()
                     .with(yearly, doneOn("r0", "2023-08-15"))
                     .with(hundredHours, doneOn("r1", "2023-01-01", 5700))
                     .pace(100, 365)
                     .headline()
                     .left(2),
                 "r1");
        QCOMPARE(
            Balloon().with(yearly, doneOn("r0", "2024-05-01")).with(yearly, doneOn("none", "2020-01-01")).headline(),
            "r1");
    }
    void ofOneRowTheLimitThatComesFirst() {
        const auto* both = R"("limits": [{"clock": "months", "every": 12}, {"clock": "minutes", "every": 6000}])";
        QCOMPARE(Balloon().with(both, doneOn("r0", "2024-05-01", 3000)).pace(3000, 100).headline(), "r0 2024-10-09");
        QCOMPARE(Balloon().with(both, doneOn("r0", "2024-05-01", 3000)).pace(100, 100).headline(), "r0 2025-05-01");
        // 5 h left is what makes it nearing: at no known pace that says so, and not the annual of next year.
        QCOMPARE(Balloon().with(both, doneOn("r0", "2024-05-01", 5700)).pace(0, 0).headline(), "r0");
        const auto last = std::string(both) + R"(, "whichever": "last")";
        QCOMPARE(Balloon().with(last, doneOn("r0", "2024-05-01", 3000)).pace(3000, 100).headline(), "r0 2025-05-01");
    }
};

CROWNRING_TEST(HeadlineTest)

}

#include "headline_test.moc"
