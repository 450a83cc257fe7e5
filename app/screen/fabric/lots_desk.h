// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The fabric of the whole fleet: which lots age faster than the others of theirs, what could be found at all, and how
/// the forecasts of the last years did.

#include "answers/fabric/lots.h"
#include "answers/fabric/score.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QFuture>

#include <memory>
#include <stop_token>

namespace crownring::screen {

class FabricFits;

class LotsDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Nothing is asked of the record before it is shown.
    Q_PROPERTY(bool active READ isActive WRITE setActive NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> channels READ channels NOTIFY changed FINAL) ///< the quantities that any manual bounds
    Q_PROPERTY(int channel READ channel WRITE setChannel NOTIFY changed FINAL)
    /// label: the lot and its word; detail: how fast it ages; standing: the gauge of the word; chosen: it stands out
    Q_PROPERTY(crownring::screen::ChoiceModel* lots READ lots CONSTANT FINAL)
    Q_PROPERTY(QString detectable READ detectable NOTIFY changed FINAL) ///< the smallest effect, for each fabric
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ isReady NOTIFY changed FINAL)
    Q_PROPERTY(bool working READ isWorking NOTIFY workChanged FINAL)
    Q_PROPERTY(double progress READ progress NOTIFY workChanged FINAL)

    Q_PROPERTY(QString score READ score NOTIFY scoreChanged FINAL)
    /// label: what was foretold; detail: what came
    Q_PROPERTY(crownring::screen::ChoiceModel* bins READ bins CONSTANT FINAL)
    Q_PROPERTY(bool scoring READ isScoring NOTIFY scoreChanged FINAL)
    Q_PROPERTY(double scored READ scored NOTIFY scoreChanged FINAL) ///< 0..1

public:
    using Resident::Resident;
    /// Stops what is under way.
    ~LotsDesk() override;

    [[nodiscard]] bool isActive() const { return m_active; }
    void setActive(bool active);
    [[nodiscard]] int channel() const { return m_channel; }
    void setChannel(int channel);
    [[nodiscard]] QStringList channels() const;
    [[nodiscard]] ChoiceModel* lots() { return &m_lots; }
    [[nodiscard]] ChoiceModel* bins() { return &m_bins; }
    [[nodiscard]] QString detectable() const { return m_detectable; }
    [[nodiscard]] QString problem() const;
    [[nodiscard]] bool isReady() const { return m_ready; }
    [[nodiscard]] bool isWorking() const;
    [[nodiscard]] double progress() const;
    [[nodiscard]] QString score() const { return m_score; }
    [[nodiscard]] bool isScoring() const { return m_scoring; }
    [[nodiscard]] double scored() const { return m_scored; }

    Q_INVOKABLE void begin();
    Q_INVOKABLE void stop();
    /// Fits each half-year of the last years anew: takes as many times as long.
    Q_INVOKABLE void beginScore();

signals:
    void changed();
    void workChanged();
    void scoreChanged();

private:
    void movedIn() override;
    [[nodiscard]] FabricFits& fits() const;
    void look();
    void compare();
    void showScore(const Score& score);
    void forgetScore();

    bool m_active = false;
    std::vector<FabricChannel> m_channels;
    int m_channel = 0;
    std::shared_ptr<const FabricRecord> m_fleet; ///< of the channel at hand
    bool m_reading = false;
    bool m_comparing = false;
    bool m_ready = false;
    QString m_problem;
    QString m_detectable;
    QString m_score;
    bool m_scoring = false;
    double m_scored = 0;
    int m_turn = 0;
    std::stop_source m_stop;
    QFuture<void> m_running;
    ChoiceModel m_lots;
    ChoiceModel m_bins;
};

}
