// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The fits of fabric that the screen shows numbers from: at most one for each channel, for the day asked. A fit is
/// read from the record on its thread and computed on another one, never on that of the interface; it tells how far it
/// is and can be stopped. After new readings of one set the fit there is carried on, which takes no second.

#include "answers/fabric/fit.h"

#include <QFuture>
#include <QObject>

#include <memory>
#include <stop_token>
#include <vector>

namespace crownring::screen {

struct House;

class FabricFits : public QObject {
    Q_OBJECT

public:
    enum class State { Idle, Fitting, Ready, Stopped, Failed };

    /// @pre the house lives longer
    explicit FabricFits(House& house);
    /// Stops what is under way.
    ~FabricFits() override;

    /// Begins to fit the record of a channel as it is on the day asked, unless that is there or under way; what is
    /// under way of another channel is stopped.
    void ask(std::shared_ptr<const FabricRecord> record);
    void stop();

    /// Null before it is there, and once the day or the record has changed.
    [[nodiscard]] SharedFit fit(const FabricChannel& channel) const;
    [[nodiscard]] const std::vector<SharedFit>& fits() const { return m_fits; } ///< those that are there
    [[nodiscard]] State state() const { return m_state; }
    [[nodiscard]] double progress() const { return m_progress; } ///< 0..1, of the fit under way
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void changed();
    void progressed();

private:
    void forget();
    void take(SharedFit fit);
    void setState(State state, const QString& problem = {});
    [[nodiscard]] SharedFit earlierFit(const FabricChannel& channel) const;

    std::vector<SharedFit> m_fits;    ///< of the day and record as they are
    std::vector<SharedFit> m_earlier; ///< of the record before its last changes, to carry on from
    std::optional<FabricChannel> m_asked;
    std::stop_source m_stop;
    QFuture<void> m_running;
    State m_state = State::Idle;
    double m_progress = 0;
    QString m_problem;
    int m_turn = 0;
};

}
