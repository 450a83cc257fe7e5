// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The place Bench: the inspections, open ones first.

#include "answers/bench_file.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class BenchPlace : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// value: the inspection's name; label: what is inspected; detail: state and visit; number: the state;
    /// chosen: it is open
    Q_PROPERTY(crownring::screen::ChoiceModel* inspections READ inspections CONSTANT FINAL)
    Q_PROPERTY(int openCount READ openCount NOTIFY listed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY listed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY listed FINAL)
    /// Whether somebody looks at it.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged FINAL)

public:
    enum State { Open, Released, Abandoned, Listed, Withdrawn, Unsupported, Pending };
    Q_ENUM(State)

    using Resident::Resident;
    [[nodiscard]] ChoiceModel* inspections() { return &m_inspections; }
    [[nodiscard]] int openCount() const { return m_openCount; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool ready() const { return m_ready; }
    [[nodiscard]] bool shown() const { return m_shown; }
    void setShown(bool shown);

signals:
    void listed();
    void shownChanged();

private:
    void movedIn() override;
    void askAgain();
    /// Which of the releases shown the record no longer supports: asked when somebody looks, for all that was signed is
    /// read for it.
    void askSupport();
    void show();

    std::vector<InspectionCard> m_cards;
    std::vector<InspectionId> m_unsupported;
    ChoiceModel m_inspections;
    QString m_problem;
    int m_openCount = 0;
    int m_turn = 0;
    int m_supportAsked = 0; ///< the turn that it was asked for
    bool m_ready = false;
    bool m_shown = true;
};

}
