// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What releases rest on, besides the balloons: who is entitled to what, which tester is in calibration, what the
/// types' manuals state, and the organisation's own lines of the checklist. The rows' values are the entries that say
/// so.

#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class ShopPlace : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// In all four: value: the entry; label, detail; chosen: it holds on the day asked.
    Q_PROPERTY(crownring::screen::ChoiceModel* people READ people CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* testers READ testers CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* types READ types CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* lines READ lines CONSTANT FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY listed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] ChoiceModel* people() { return &m_people; }
    [[nodiscard]] ChoiceModel* testers() { return &m_testers; }
    [[nodiscard]] ChoiceModel* types() { return &m_types; }
    [[nodiscard]] ChoiceModel* lines() { return &m_lines; }
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void listed();

private:
    void movedIn() override;
    void askAgain();

    ChoiceModel m_people;
    ChoiceModel m_testers;
    ChoiceModel m_types;
    ChoiceModel m_lines;
    QString m_problem;
    int m_turn = 0;
};

}
