// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The place Rules: programmes in force on the day asked, those that bind from a later one and those on the shelf,
/// their requirements with sources, and whom each binds.

#include "rules/due/obligations.h"
#include "rules/programme/requirement.h"
#include "screen/desk/due_model.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

#include <map>

namespace crownring::screen {

class RulesPlace : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// In force first, then what was adopted for a later day, then the shelf.
    Q_PROPERTY(crownring::screen::ChoiceModel* programmes READ programmes CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* requirements READ requirements CONSTANT FINAL)
    /// The adoptions of the programme chosen, latest first.
    Q_PROPERTY(crownring::screen::ChoiceModel* adoptions READ adoptions CONSTANT FINAL)
    /// Rows of the requirement chosen: whom it binds, worst first.
    Q_PROPERTY(crownring::screen::DueModel* bound READ bound CONSTANT FINAL)
    /// What is not seen is not followed: whom a programme binds is counted over the whole fleet.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(QString programme READ programme NOTIFY changed FINAL)
    Q_PROPERTY(bool inForce READ inForce NOTIFY changed FINAL)
    /// Of one that binds nothing yet: the day from which it does, and whom it will bind is counted for that day.
    Q_PROPERTY(QString bindsFrom READ bindsFrom NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note NOTIFY changed FINAL)
    Q_PROPERTY(QString requirement READ requirement NOTIFY changed FINAL)
    Q_PROPERTY(QString requirementTitle READ requirementTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString requirementSource READ requirementSource NOTIFY changed FINAL)
    Q_PROPERTY(QString requirementRule READ requirementRule NOTIFY changed FINAL)
    Q_PROPERTY(QString requirementFacts READ requirementFacts NOTIFY changed FINAL)
    Q_PROPERTY(QString requirementNote READ requirementNote NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] ChoiceModel* programmes() { return &m_programmes; }
    [[nodiscard]] ChoiceModel* requirements() { return &m_requirements; }
    [[nodiscard]] ChoiceModel* adoptions() { return &m_adoptions; }
    [[nodiscard]] DueModel* bound() { return &m_bound; }
    [[nodiscard]] bool shown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] QString programme() const { return m_programme; }
    [[nodiscard]] bool inForce() const { return m_inForce; }
    [[nodiscard]] QString bindsFrom() const { return m_bindsFrom; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString requirement() const { return m_requirement; }
    [[nodiscard]] QString requirementTitle() const;
    [[nodiscard]] QString requirementSource() const;
    [[nodiscard]] QString requirementRule() const;
    /// Action, kinds, force and what it blocks.
    [[nodiscard]] QString requirementFacts() const;
    [[nodiscard]] QString requirementNote() const;

    Q_INVOKABLE void showProgramme(const QString& programme);
    Q_INVOKABLE void showRequirement(const QString& requirement);
    /// Finds the programme too.
    Q_INVOKABLE void find(const QString& requirement);

signals:
    void changed();
    void shownChanged();

private:
    void movedIn() override;
    void follow();
    void look();
    void askComing();
    void lookAtProgrammes();
    void lookAtProgramme();
    [[nodiscard]] const Requirement* chosen() const;
    /// What a programme that was adopted for a later day binds once all that is adopted by now is in force.
    [[nodiscard]] std::map<RequirementId, QStringList> willBind(const std::vector<Adoption>& all) const;

    ChoiceModel m_programmes;
    ChoiceModel m_requirements;
    ChoiceModel m_adoptions;
    DueModel m_bound;
    Sheet m_sheet;
    std::vector<Adoption> m_coming; ///< for days after the one asked, in the order of their stamps
    int m_turn = 0;
    std::vector<std::shared_ptr<const Programme>> m_known; ///< latest revision in force, else the shelf's
    std::shared_ptr<const Programme> m_open;
    QString m_programme;
    QString m_requirement;
    QString m_bindsFrom;
    bool m_inForce = false;
    bool m_shown = true;
};

}
