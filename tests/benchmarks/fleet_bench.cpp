// SPDX-License-Identifier: GPL-3.0-or-later

/// What the screen takes for a fleet of some size, against the same answer without one:
///
///     crownring_fleet_bench BALLOONS
/// Each in time passed and, "worked", in what the whole program worked for it: on a shared machine that compares.
///
///     headless    the due list of everything, asked of the record, ms; median of 3
///     complete    from the open record to a frame that shows the list, ms
///     governed    and until what governs each balloon is there, ms
///     longest     the longest that the window worked without answering meanwhile, ms
///     flight      one flight logged, from its entry to the frame that shows what it changed, ms; median of 40
///     busy        what the whole program worked for it, ms; median of 40
///     stopped     the longest that the window worked without answering then, ms
///
/// The record is made once, in CROWNRING_BENCH_FOLDER.

#include "acts/post.h"
#include "answers/due.h"
#include "kept_memory.h"
#include "large_fleet.h"
#include "program/places.h"
#include "screen/desk/due_model.h"
#include "screen/desk/house.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTextStream>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <ctime>
#include <thread>
#include <utility>

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr int flightsOfEach = 500;
constexpr int flightsMeasured = 40;

double median(std::vector<double> times) {
    std::ranges::sort(times);
    return times[times.size() / 2];
}

double worked(clockid_t whose) {
    timespec spent{};
    clock_gettime(whose, &spent);
    return static_cast<double>(spent.tv_sec) * 1e3 + static_cast<double>(spent.tv_nsec) / 1e6;
}

double busy() { return worked(CLOCK_PROCESS_CPUTIME_ID); }

double passed(const QElapsedTimer& watch) { return static_cast<double>(watch.nsecsElapsed()) / 1e6; }

void say(const char* what, double time) { QTextStream(stdout) << what << ' ' << time << Qt::endl; }

double headless(const std::string& file, const bench::FleetSize& size) {
    const auto record = bench::largeFleet(file, size);
    std::vector<double> times;
    std::vector<double> work;
    for (int i = 0; i < 3; ++i) {
        const auto before = busy();
        QElapsedTimer watch;
        watch.start();
        if (due(*record, {}, bench::askedDay())->rows.empty())
            std::abort();
        times.push_back(passed(watch));
        work.push_back(busy() - before);
    }
    say("headless, worked", median(work));
    return median(times);
}

/// The longest that the window's thread worked without answering a caller; what other programs take of the machine does
/// not count.
class Heartbeat {
public:
    Heartbeat() : m_beating([this] { beat(); }) {}
    ~Heartbeat() {
        m_ends = true;
        m_beating.join();
    }
    double longest() { return std::exchange(m_longest, 0); }

private:
    void beat() {
        while (!m_ends) {
            QMetaObject::invokeMethod(
                &m_window,
                [this] {
                    const auto now = worked(CLOCK_THREAD_CPUTIME_ID);
                    m_longest = std::max(m_longest, now - m_last);
                    m_last = now;
                },
                Qt::QueuedConnection);
            std::this_thread::sleep_for(std::chrono::milliseconds(2));
        }
    }
    QObject m_window; ///< lives on its thread
    double m_longest = 0;
    double m_last = worked(CLOCK_THREAD_CPUTIME_ID);
    std::atomic_bool m_ends = false;
    std::thread m_beating;
};

class Screen {
public:
    explicit Screen(QQuickWindow& window, House& house) : m_window(window), m_house(house) {
        m_list = window.findChild<QObject*>(QStringLiteral("next"))
                     ->property("place")
                     .value<QObject*>()
                     ->property("list")
                     .value<DueModel*>();
    }
    [[nodiscard]] const DueModel& list() const { return *m_list; }
    /// Works until it is so and a frame has shown it.
    template <class IsSo>
    void until(const IsSo& isSo) {
        while (!isSo())
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        bool drawn = false;
        const auto seen = QObject::connect(&m_window, &QQuickWindow::frameSwapped, &m_window, [&] { drawn = true; });
        m_window.update();
        while (!drawn)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        QObject::disconnect(seen);
    }
    void logFlight(int balloon, int nth) {
        auto entry = bench::flightOf(balloon, nth, "");
        entry.on = m_house.day.date();
        const auto before = m_house.fleet.sheet();
        hear(m_house.desk.ask([entry](Record& record) { return postOne(record, record, entry); }), &m_house.desk,
             [this](const Results<Receipt>& receipt) {
                 if (!receipt)
                     std::abort();
                 m_house.desk.written();
             });
        until([&] { return m_house.fleet.sheet() != before && !m_house.fleet.asking(); });
    }

private:
    QQuickWindow& m_window;
    House& m_house;
    DueModel* m_list = nullptr;
};

}

int main(int argc, char** argv) {
    keepFreedMemory();
    QApplication application(argc, argv);
    const int balloons = QApplication::arguments().value(1).toInt();
    if (balloons < 1)
        return 2;
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    useOwnFont();
    const auto file = balloons == 10'000
                          ? bench::folder() + "/crownring-bench-worked.crownring" // what the due list is measured with
                          : bench::folder() + "/crownring-bench-screen-" + std::to_string(balloons) + ".crownring";
    say("headless", headless(file, {balloons, balloons * flightsOfEach}));

    House house(bench::askedDay(), false);
    QQmlApplicationEngine engine;
    if (!loadFrame(engine, house))
        return 2;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    Screen screen(*window, house);
    screen.until([] { return true; });

    Heartbeat heart;
    QElapsedTimer watch;
    house.desk.open(QString::fromStdString(file));
    screen.until([&] { return house.desk.isOpen(); });
    const auto begun = busy();
    watch.start();
    screen.until([&] { return screen.list().count() > 0; });
    say("complete", passed(watch));
    say("complete, worked", busy() - begun);
    screen.until([&] { return house.fleet.ready() && !house.fleet.asking(); });
    say("governed", passed(watch));
    say("longest", heart.longest());

    std::vector<double> times;
    std::vector<double> work;
    for (int nth = 0; nth < flightsMeasured; ++nth) {
        const auto before = busy();
        watch.start();
        screen.logFlight((nth * 7) % balloons, nth);
        times.push_back(passed(watch));
        work.push_back(busy() - before);
    }
    say("flight", median(times));
    say("busy", median(work));
    say("stopped", heart.longest());
    return 0;
}
