// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The fabric of one envelope: what was read of it and where, what its readings and those of the fleet say of it to
/// come, and on what that rests. All numbers of a forecast come from a fit that runs elsewhere (`FabricFits`).

#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/envelope/panel_model.h"
#include "screen/fabric/ageing_chart.h"
#include "screen/fabric/fabric_sight.h"
#include "screen/lists/choice_model.h"

#include <QVariantMap>

namespace crownring::screen {

class FabricFits;

class FabricDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString envelope READ envelope WRITE setEnvelope NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> channels READ channels NOTIFY changed FINAL) ///< the quantities that its manual bounds
    Q_PROPERTY(int channel READ channel WRITE setChannel NOTIFY changed FINAL)
    /// Why there is nothing to show; empty when there is.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool read READ isRead NOTIFY changed FINAL)                 ///< the readings are there
    Q_PROPERTY(bool foretold READ isForetold NOTIFY foretoldChanged FINAL) ///< the forecast is there
    Q_PROPERTY(bool working READ isWorking NOTIFY workChanged FINAL)
    Q_PROPERTY(bool stopped READ isStopped NOTIFY workChanged FINAL)
    Q_PROPERTY(double progress READ progress NOTIFY workChanged FINAL)
    Q_PROPERTY(QString work READ work NOTIFY workChanged FINAL) ///< what is under way, in words

    /// How it stands by what was read of it, from the due list; empty where nothing was. A forecast has no say in it.
    Q_PROPERTY(QString byReadings READ byReadings NOTIFY standingChanged FINAL)
    Q_PROPERTY(bool beyond READ isBeyond NOTIFY standingChanged FINAL) ///< a reading is beyond its bound

    /// What a rigger asks. label: the question; detail: the answer
    Q_PROPERTY(crownring::screen::ChoiceModel* answers READ answers CONSTANT FINAL)
    /// On what the answers rest, in plain words; empty where they may stand alone.
    Q_PROPERTY(QString ground READ ground NOTIFY foretoldChanged FINAL)
    /// The fabric sets. label: which panels; detail: what is known of them
    Q_PROPERTY(crownring::screen::ChoiceModel* sets READ sets CONSTANT FINAL)
    /// What the next test could tell. label: the test; detail: how much narrower the forecast would be
    Q_PROPERTY(crownring::screen::ChoiceModel* pulls READ pulls CONSTANT FINAL)
    Q_PROPERTY(bool warranted READ isForetoldByReadings NOTIFY foretoldChanged FINAL) ///< figures to come may be shown
    Q_PROPERTY(QString leftOut READ leftOut NOTIFY changed FINAL)       ///< readings that are not counted, and why
    Q_PROPERTY(QString fitted READ fitted NOTIFY foretoldChanged FINAL) ///< how the numbers were found

    Q_PROPERTY(crownring::screen::AgeingChart* chart READ chart CONSTANT FINAL)

    Q_PROPERTY(crownring::screen::PanelModel* panels READ panels CONSTANT FINAL)
    Q_PROPERTY(int gores READ gores NOTIFY changed FINAL)
    Q_PROPERTY(int rows READ rows NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> lots READ lots NOTIFY changed FINAL) ///< in the order of the marks' numbers
    /// The map's time: 0 shows what was read, more what is expected then.
    Q_PROPERTY(double hoursAhead READ hoursAhead WRITE setHoursAhead NOTIFY aheadChanged FINAL)
    Q_PROPERTY(double mostAhead READ mostAhead CONSTANT FINAL)
    Q_PROPERTY(QString aheadSays READ aheadSays NOTIFY aheadChanged FINAL) ///< "in 60 h, about 2027-05-03"

public:
    using Resident::Resident;

    [[nodiscard]] QString envelope() const { return m_envelope; }
    void setEnvelope(const QString& envelope);
    [[nodiscard]] int channel() const { return m_channel; }
    void setChannel(int channel);
    [[nodiscard]] QString problem() const;
    [[nodiscard]] bool isRead() const { return m_sight != nullptr; }
    [[nodiscard]] bool isForetold() const { return m_outlook != nullptr; }
    [[nodiscard]] QString byReadings() const;
    [[nodiscard]] bool isBeyond() const;
    [[nodiscard]] bool isForetoldByReadings() const;
    [[nodiscard]] bool isWorking() const;
    [[nodiscard]] bool isStopped() const;
    [[nodiscard]] double progress() const;
    [[nodiscard]] QString work() const;
    [[nodiscard]] QString ground() const;
    [[nodiscard]] QString leftOut() const;
    [[nodiscard]] QString fitted() const;
    [[nodiscard]] QStringList channels() const;
    [[nodiscard]] ChoiceModel* answers() { return &m_answers; }
    [[nodiscard]] ChoiceModel* sets() { return &m_sets; }
    [[nodiscard]] ChoiceModel* pulls() { return &m_pulls; }
    [[nodiscard]] AgeingChart* chart() { return &m_chart; }
    [[nodiscard]] PanelModel* panels() { return &m_panels; }
    [[nodiscard]] int gores() const;
    [[nodiscard]] int rows() const;
    [[nodiscard]] QStringList lots() const;
    [[nodiscard]] double hoursAhead() const { return m_hoursAhead; }
    void setHoursAhead(double hours);
    [[nodiscard]] double mostAhead() const { return FabricOutlook::mostAhead; }
    [[nodiscard]] QString aheadSays() const;

    /// What a reading of the quantity at hand is written with, at that panel: for a form.
    Q_INVOKABLE QVariantMap readingAt(int gore, int row) const;
    /// "warp, jaws of 25 mm": the test that the limit is stated for.
    Q_INVOKABLE QString testSays() const;
    /// Computes the forecast, where it was stopped.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void stop();

signals:
    void changed();
    void foretoldChanged();
    void workChanged();
    void aheadChanged();
    void standingChanged();

private:
    void movedIn() override;
    [[nodiscard]] FabricFits& fits() const;
    [[nodiscard]] const DueRow* rowOfReadings() const;
    void look();
    void takeSight(const Result<FabricSight>& sight);
    void foretell();
    void show();
    void showMap();

    QString m_envelope;
    int m_channel = 0;
    QString m_problem;
    std::shared_ptr<const FabricSight> m_sight;
    std::shared_ptr<const FabricOutlook> m_outlook;
    bool m_foretelling = false;
    double m_hoursAhead = 0;
    int m_turn = 0;
    ChoiceModel m_answers;
    ChoiceModel m_sets;
    ChoiceModel m_pulls;
    AgeingChart m_chart;
    PanelModel m_panels;
};

}
