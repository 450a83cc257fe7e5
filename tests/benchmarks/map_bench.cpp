// SPDX-License-Identifier: GPL-3.0-or-later

/// How long the envelope map takes for a frame in which every panel is another one, as while a slider moves the
/// forecast: 24 gores of 14 rows over 500 readings, in a window of 1280 x 800.
///
///     crownring_map_bench [FRAMES]                       on the platform and the renderer of the environment
///     QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software crownring_map_bench
///
/// "shown" runs from the new marks to the swapped frame, with the pause in which Qt gathers what else changes; "work"
/// is what the program itself was busy for.

#include "program/places.h"
#include "screen/envelope/panel_model.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickView>
#include <QTextStream>
#include <QTimer>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <numeric>

using namespace crownring::screen;

namespace {

constexpr int gores = 24;
constexpr int rows = 14;
constexpr int readings = 500;
constexpr int lots = 5;
constexpr double limit = 133;

/// What is expected after this part of the slider's way; fabric near the crown ages fastest, and each lot in its way.
std::vector<PanelMark> expectedAt(double part) {
    std::vector<PanelMark> marks;
    for (int number = 0; number < gores * rows; ++number) {
        PanelMark mark;
        mark.gore = number % gores + 1;
        mark.row = number / gores + 1;
        mark.lot = (mark.gore * 7 + mark.row) % lots + 1;
        mark.lotName = QStringLiteral("A-%1").arg(mark.lot);
        const double begun = 240 + (number * 37) % 60;
        const double value = begun * std::exp(-part * (0.3 + 0.06 * mark.row + 0.05 * mark.lot));
        mark.reading = panel::Reading::Forecast;
        mark.share = value / limit;
        mark.text = QString::number(value, 'g', 3);
        mark.says = mark.text + QStringLiteral(" N");
        mark.count = readings / (gores * rows) + (number < readings % (gores * rows) ? 1 : 0);
        marks.push_back(std::move(mark));
    }
    return marks;
}

double busySeconds() {
    timespec spent{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) + static_cast<double>(spent.tv_nsec) / 1e9;
}

class Frames {
public:
    explicit Frames(QQuickView& view) {
        QObject::connect(&view, &QQuickView::frameSwapped, &m_loop, &QEventLoop::quit);
        m_patience.setInterval(5000);
        m_patience.setSingleShot(true);
        QObject::connect(&m_patience, &QTimer::timeout, &m_loop, [this] { m_loop.exit(1); });
    }
    /// False when no frame came.
    bool next() {
        m_patience.start();
        return m_loop.exec() == 0;
    }

private:
    QEventLoop m_loop;
    QTimer m_patience;
};

void say(QTextStream& out, const char* what, std::vector<double> times) {
    std::ranges::sort(times);
    const auto at = [&](double part) { return times[static_cast<std::size_t>(part * double(times.size() - 1))]; };
    const double mean = std::accumulate(times.begin(), times.end(), 0.0) / double(times.size());
    out << qSetFieldWidth(8) << what << qSetFieldWidth(0)
        << QStringLiteral("%1 ms mean, %2 p50, %3 p95, %4 worst")
               .arg(mean, 6, 'f', 2)
               .arg(at(0.5), 6, 'f', 2)
               .arg(at(0.95), 6, 'f', 2)
               .arg(times.back(), 6, 'f', 2)
        << Qt::endl;
}

bool open(QQuickView& view, PanelModel& panels) {
    addModules(*view.engine());
    view.setResizeMode(QQuickView::SizeRootObjectToView);
    view.setInitialProperties({{QStringLiteral("panels"), QVariant::fromValue<PanelModel*>(&panels)},
                               {QStringLiteral("gores"), gores},
                               {QStringLiteral("rows"), rows},
                               {QStringLiteral("forecast"), true}});
    view.setSource(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Envelope/EnvelopeMap.qml")));
    view.resize(1280, 800);
    view.show();
    return view.errors().isEmpty();
}

}

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    useOwnFont();
    const int frames = QApplication::arguments().size() > 1 ? QApplication::arguments().at(1).toInt() : 300;
    PanelModel panels;
    panels.show(expectedAt(0));
    QQuickView view;
    Frames swapped(view);
    if (frames < 1 || !open(view, panels) || !swapped.next())
        return 2;
    std::vector<double> shown;
    std::vector<double> work;
    for (int frame = 1; frame <= frames; ++frame) {
        auto marks = expectedAt(double(frame) / frames);
        const double busy = busySeconds();
        QElapsedTimer watch;
        watch.start();
        panels.show(std::move(marks));
        if (!swapped.next())
            return 2;
        shown.push_back(double(watch.nsecsElapsed()) / 1e6);
        work.push_back((busySeconds() - busy) * 1e3);
    }
    QTextStream out(stdout);
    out << frames << " frames, each with " << panels.count() << " panels of " << readings << " readings" << Qt::endl;
    say(out, "shown", std::move(shown));
    say(out, "work", std::move(work));
    return 0;
}
