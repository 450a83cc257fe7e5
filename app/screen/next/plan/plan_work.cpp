// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/plan_work.h"

#include "screen/desk/record_desk.h"

#include <QtConcurrent>

#include <chrono>
#include <optional>
#include <utility>

namespace crownring::screen {

namespace {

using Step = PlanWork::Step;

/// Nothing where it was stopped.
std::optional<PlanFound> foundIn(const std::string& location, PlanQuestion question, const std::stop_token& stop,
                                 std::atomic<Step>& step) {
    const auto record = openRecord(location, OpenMode::Existing);
    if (!record)
        return tl::unexpected(record.error());
    const auto state = (*record)->snapshot();
    if (!state)
        return tl::unexpected(state.error());
    auto already = alreadyPlanned(**record, question.asked, question.letGo);
    if (!already)
        return tl::unexpected(already.error());
    if (stop.stop_requested())
        return std::nullopt;
    step = Step::Choosing;
    auto plan = plannedVisits(**record, holding(question.asked, *already));
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

void PlanWork::begin(const std::string& record, PlanQuestion question, std::function<void(const PlanFound&)> then) {
    m_stop.request_stop();
    m_stop = {};
    m_step = std::make_shared<std::atomic<Step>>(Step::Reading);
    m_lasts = 0;
    m_seconds.start();
    const auto turn = ++m_turn;
    auto running = QtConcurrent::run([record, question = std::move(question), stop = m_stop.get_token(),
                                      step = m_step] { return foundIn(record, question, stop, *step); });
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
