// SPDX-License-Identifier: GPL-3.0-or-later

/// A hundred days of flights, swaps, fittings and corrections as somebody enters them in the forms, hardly ever with a
/// time; and the same days as entries that each state their time, in a record of their own. The clocks are the same.

#include "acts/post.h"
#include "screen/form/form_hand.h"
#include "store/record_file.h"
#include "test_class.h"

#include <QTemporaryDir>

#include <map>
#include <random>

namespace random_days_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

const std::vector<std::string> balloons = {"B-ONE", "B-TWO"};
const std::vector<std::string> baskets = {"K-1", "K-2", "K-3"};
const std::vector<std::string> cylinders = {"C-1", "C-2", "C-3", "C-4"};

/// The same days, each entry with its time: written by hand here, by nothing of the forms.
class Timed {
public:
    void balloonEntered(const std::string& balloon) { writeAtFirst("balloon.entered", said("balloon", balloon)); }
    void itemEntered(const std::string& item, const std::string& kind) {
        writeAtFirst("item.entered", said("item", item) + "," + said("kind", kind) +
                                         R"(,"brought_forward":{"minutes":6000,"landings":100,"inflations":100})");
    }
    void moved(bool fitted, const std::string& day, const std::string& time, const std::string& balloon,
               const std::string& item) {
        write(fitted ? "item.fitted" : "item.removed", day, time, said("balloon", balloon) + "," + said("item", item));
    }
    /// @param kit empty: what is fitted
    void flown(const std::string& id, const std::string& day, const std::string& time, const std::string& balloon,
               int minutes, const std::vector<std::string>& kit) {
        auto keys = said("id", id) + "," + said("balloon", balloon) + R"(,"minutes":)" + std::to_string(minutes);
        std::string items;
        for (const auto& item : kit)
            items += (items.empty() ? "\"" : ",\"") + item + "\"";
        write("flight.logged", day, time, kit.empty() ? keys : keys + R"(,"kit":[)" + items + "]");
    }
    void corrected(const std::string& flight, int minutes) {
        write("entry.corrected", "2026-11-25", "08:00Z",
              said("replaces", flight) + R"(,"with":{"minutes":)" + std::to_string(minutes) + "}");
    }
    [[nodiscard]] const std::string& text() const { return m_text; }

private:
    static std::string said(const std::string& key, const std::string& value) {
        return "\"" + key + "\":\"" + value + "\"";
    }
    void writeAtFirst(const std::string& kind, const std::string& keys) {
        m_text += "{" + said("entry", kind) + "," + said("on", "2026-01-01") + "," + keys + "}\n";
    }
    void write(const std::string& kind, const std::string& day, const std::string& time, const std::string& keys) {
        m_text += "{" + said("entry", kind) + "," + said("on", day) + "," + said("time", time) + "," + keys + "}\n";
    }
    std::string m_text;
};

std::string timeOf(int hour) { return (hour < 10 ? "0" : "") + std::to_string(hour) + ":00Z"; }

}

class RandomDaysTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<FormHand> m_hand;
    std::mt19937 m_chance{20261125};
    Timed m_timed;
    int m_acts = 0;
    int m_corrections = 0;
    int m_stayed = 0;
    std::map<std::string, std::string> m_where; ///< the balloon that each item is fitted to, at noon
    std::optional<std::string> m_lastFlight;    ///< its id in the timed record

    int below(int end) { return std::uniform_int_distribution<int>(0, end - 1)(m_chance); }
    template <class List>
    const auto& oneOf(const List& list) {
        return list[static_cast<std::size_t>(below(static_cast<int>(list.size())))];
    }

    void enter(const std::string& item, const char* kind) {
        QVERIFY(m_hand->enterItem(item.c_str(), kind));
        m_timed.itemEntered(item, kind);
    }
    void fitAtFirst(const std::string& balloon, const std::string& item) {
        QVERIFY(m_hand->fit(balloon.c_str(), item.c_str()));
        m_where[item] = balloon;
        m_timed.moved(true, "2026-01-01", "00:00Z", balloon, item);
    }
    [[nodiscard]] std::optional<std::string> balloonOf(const std::string& item) {
        const auto* facts = m_hand->item(item.c_str());
        return facts && facts->balloon ? std::optional(facts->balloon->text()) : std::nullopt;
    }

    /// A flight, perhaps with one basket or cylinder in the place of another, once or from then on.
    void fly(const std::string& day, int hour) {
        const auto balloon = oneOf(balloons);
        const auto minutes = 10 + below(100);
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QString::fromStdString(balloon));
        FormHand::set(form, "on", day.c_str());
        FormHand::set(form, "minutes", (std::to_string(minutes) + " min").c_str());
        QVERIFY(m_hand->asked(form));
        const auto before = form.kit()->kit();
        std::vector<std::string> once;
        if (below(2) == 0 && !before.empty()) {
            const auto& pool = below(2) == 0 ? baskets : cylinders;
            const auto out = std::ranges::find_if(
                before, [&](const ItemId& item) { return std::ranges::count(pool, item.text()) > 0; });
            const auto in = std::ranges::find_if(
                pool, [&](const std::string& item) { return std::ranges::count(before, ItemId(item)) == 0; });
            if (out != before.end() && in != pool.end()) {
                const auto from = balloonOf(*in);
                form.kit()->ask(static_cast<int>(rowOf(form, out->text())));
                form.kit()->pick(QString::fromStdString(*in));
                if (form.kit()->asked() >= 0)
                    form.kit()->ask(form.kit()->asked());
                if (form.kit()->mayStay() && below(2) == 0) {
                    form.kit()->setStays(true);
                    ++m_stayed;
                    const auto just = timeOf(hour - 1);
                    m_timed.moved(false, day, just, balloon, out->text());
                    if (from)
                        m_timed.moved(false, day, just, *from, *in);
                    m_timed.moved(true, day, just, balloon, *in);
                    m_where.erase(out->text());
                    m_where[*in] = balloon;
                } else {
                    once = {*in};
                    for (const auto& [item, where] : m_where)
                        if (where == balloon && item != out->text())
                            once.push_back(item);
                }
            }
        }
        if (!FormHand::askedAt(form, "kit").isEmpty())
            FormHand::answer(form, "kit");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem() + FormHand::problemAt(form, "kit")));
        m_lastFlight = "flight-" + std::to_string(++m_acts);
        m_timed.flown(*m_lastFlight, day, timeOf(hour), balloon, minutes, once);
    }
    static int rowOf(EntryForm& form, const std::string& item) {
        for (int row = 0; row < form.kit()->count(); ++row)
            if (form.kit()->data(form.kit()->index(row), FlightKit::ItemRole).toString().toStdString() == item)
                return row;
        return -1;
    }

    /// After the day's flights an item leaves its balloon, or one of the pool is fitted.
    void moveOne(const std::string& day) {
        const auto& item = oneOf(cylinders);
        const auto on = balloonOf(item);
        const auto balloon = on ? *on : oneOf(balloons);
        In<EntryForm> form(m_hand->house());
        form.begin(on ? QStringLiteral("item.removed") : QStringLiteral("item.fitted"), QString::fromStdString(balloon),
                   QString::fromStdString(item));
        FormHand::set(form, "on", day.c_str());
        FormHand::set(form, "-when", "after");
        QVERIFY(m_hand->asked(form));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        m_timed.moved(!on, day, "23:59Z", balloon, item);
        if (on)
            m_where.erase(item); // the day's flights are over
        else
            m_where[item] = balloon;
        ++m_acts;
    }

    /// The latest flight was longer, or shorter.
    void correct() {
        auto lines = m_hand->house().desk.ask([](Record& record) {
            return record.lines({.text = {}, .kind = "flight.logged", .before = {}, .limit = 1});
        });
        lines.waitForFinished();
        const auto answer = lines.result();
        QVERIFY(answer && !answer->empty());
        const auto minutes = 10 + below(100);
        if (Minutes(minutes) == std::get<FlightLogged>(nowOf(answer->front()).body).use.minutes)
            return;
        In<EntryForm> form(m_hand->house());
        form.correct(QString::fromStdString(answer->front().entry.id.text()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 30'000);
        QVERIFY(m_hand->asked(form));
        FormHand::set(form, "minutes", (std::to_string(minutes) + " min").c_str());
        if (!FormHand::askedAt(form, "kit").isEmpty())
            FormHand::answer(form, "kit");
        QVERIFY2(m_hand->saveCorrection(form), qPrintable(form.problem()));
        m_timed.corrected(*m_lastFlight, minutes);
        ++m_corrections;
    }

private slots:
    void aHundredDaysGiveTheClocksOfTheirTimes() {
        m_hand = std::make_unique<FormHand>();
        for (const auto& balloon : balloons) {
            QVERIFY(m_hand->enterBalloon(balloon.c_str()));
            m_timed.balloonEntered(balloon);
        }
        for (const char* item : {"E-1", "E-2"})
            enter(item, "envelope");
        for (const auto& item : baskets)
            enter(item, "basket");
        for (const auto& item : cylinders)
            enter(item, "cylinder");
        fitAtFirst("B-ONE", "E-1");
        fitAtFirst("B-ONE", "K-1");
        fitAtFirst("B-ONE", "C-1");
        fitAtFirst("B-ONE", "C-2");
        fitAtFirst("B-TWO", "E-2");
        fitAtFirst("B-TWO", "K-2");
        fitAtFirst("B-TWO", "C-3");
        auto day = *CivilDate::parse("2026-02-01");
        for (int number = 0; number < 100 && !QTest::currentTestFailed(); ++number, day = addDays(day, 1)) {
            const auto on = day.iso();
            const int flights = 1 + below(3);
            for (int flight = 0; flight < flights && !QTest::currentTestFailed(); ++flight)
                fly(on, 6 + 4 * flight);
            if (below(3) == 0)
                moveOne(on);
            if (below(4) == 0)
                correct();
        }
        QVERIFY(m_stayed > 10);
        QVERIFY(m_corrections > 10);

        const QTemporaryDir folder;
        const auto record =
            openRecord(folder.filePath(QStringLiteral("timed.sqlite")).toStdString(), OpenMode::OrCreate);
        QVERIFY(record.has_value());
        const auto posted = postText(**record, **record, m_timed.text(), "timed.jsonl");
        QVERIFY2(posted.has_value(), posted ? "" : text(posted.error().front()).c_str());
        const auto facts = (*record)->facts({}, *CivilDate::parse("2026-11-25"));
        QVERIFY(facts.has_value());
        QCOMPARE(facts->size(), std::size_t{9});
        for (const auto& item : *facts) {
            const auto* ours = m_hand->item(item.id.text().c_str());
            QVERIFY(ours != nullptr);
            QVERIFY2(ours->clock == item.clock, item.id.text().c_str());
            QVERIFY2(ours->balloon == item.balloon, item.id.text().c_str());
        }
        auto questions = m_hand->house().desk.ask([](Record& own) { return own.questions(); });
        questions.waitForFinished();
        QVERIFY(questions.result()->empty());
        qInfo("%d flights and fittings, %d of them swaps that stayed, %d corrections", m_acts, m_stayed, m_corrections);
    }
};

CROWNRING_TEST(RandomDaysTest, QCoreApplication)

}

#include "random_days_test.moc"
