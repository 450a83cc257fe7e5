// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A search for a plan of visits, on a thread of its own, so that the record goes on being read and written meanwhile.
/// What is begun next puts an end to what is under way.

#include "answers/plan/already_planned.h"

#include <QFuture>
#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <atomic>
#include <functional>
#include <memory>
#include <stop_token>
#include <vector>

namespace crownring::screen {

class RecordDesk;

struct PlanQuestion {
    PlanAsked asked; ///< its pins are those of the user
    std::vector<EntryId> letGo{};
};
struct PlanAnswer {
    PlanQuestion question;
    AlreadyPlanned already;
    FleetVisits plan;
};
using PlanFound = Result<std::shared_ptr<const PlanAnswer>>;

class PlanWork : public QObject {
    Q_OBJECT

public:
    explicit PlanWork(QObject* parent = nullptr);
    /// Waits until what is under way has left off.
    ~PlanWork() override;

    /// @pre the desk lives longer
    /// @param then is called on this thread, unless it was stopped
    void begin(RecordDesk& desk, PlanQuestion question, std::function<void(const PlanFound&)> then);
    void stop();

    [[nodiscard]] bool isUnderWay() const { return m_seconds.isActive(); }
    /// A question of it is at the record.
    [[nodiscard]] bool isReading() const { return *m_reading; }
    [[nodiscard]] int lasts() const { return m_lasts; } ///< seconds

signals:
    /// It has begun, goes on for another second, or is over.
    void went();

private:
    QThreadPool m_threads; ///< its own: what was stopped may go on for a while, and keeps nothing else waiting
    std::stop_source m_stop;
    std::shared_ptr<std::atomic_bool> m_reading = std::make_shared<std::atomic_bool>(false);
    QFuture<void> m_running;
    QTimer m_seconds; ///< ticks while it is under way
    int m_lasts = 0;
    int m_turn = 0;
};

}
