// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/plan_work.h"

#include "screen/next/plan/asked_books.h"

#include <QtConcurrent>

#include <chrono>
#include <optional>
#include <utility>

namespace crownring::screen {

namespace {

/// Nothing where it was stopped.
std::optional<PlanFound> foundIn(RecordDesk& desk, PlanQuestion question, const std::stop_token& stop,
                                 std::atomic_bool& reading) {
    AskedBooks books(desk, stop, reading);
    auto already = alreadyPlanned(books, question.asked, question.letGo);
    if (stop.stop_requested())
        return std::nullopt;
    if (!already)
        return tl::unexpected(already.error());
    auto plan = plannedVisits(books, holding(question.asked, *already), stop);
    if (stop.stop_requested())
        return std::nullopt;
    if (!plan)
        return tl::unexpected(plan.error());
    return PlanFound(
        std::make_shared<const PlanAnswer>(PlanAnswer{std::move(question), std::move(*already), std::move(*plan)}));
}

}

PlanWork::PlanWork(QObject* parent) : QObject(parent) {
    m_seconds.setInterval(std::chrono::seconds(1));
    connect(&m_seconds, &QTimer::timeout, this, [this] {
        ++m_lasts;
        emit went();
    });
}

PlanWork::~PlanWork() {
    m_stop.request_stop();
    m_running.waitForFinished();
}

void PlanWork::begin(RecordDesk& desk, PlanQuestion question, std::function<void(const PlanFound&)> then) {
    m_stop.request_stop();
    m_stop = {};
    m_reading = std::make_shared<std::atomic_bool>(true);
    m_lasts = 0;
    m_seconds.start();
    const auto turn = ++m_turn;
    auto running =
        QtConcurrent::run(&m_threads, [&desk, question = std::move(question), stop = m_stop.get_token(),
                                       reading = m_reading] { return foundIn(desk, question, stop, *reading); });
    m_running = QFuture<void>(running);
    hear(std::move(running), this, [this, turn, then = std::move(then)](const std::optional<PlanFound>& found) {
        if (turn != m_turn || !found)
            return;
        m_seconds.stop();
        then(*found);
        emit went();
    });
    emit went();
}

void PlanWork::stop() {
    if (!isUnderWay())
        return;
    ++m_turn;
    m_stop.request_stop();
    m_seconds.stop();
    emit went();
}

}
