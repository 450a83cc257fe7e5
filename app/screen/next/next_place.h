// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The place Next: the horizon and the list under it, over the whole fleet on the day asked.

#include "screen/desk/due_model.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"
#include "screen/next/due_sieve.h"
#include "screen/next/horizon_model.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class NextPlace : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::DueModel* list READ list CONSTANT FINAL)
    /// What the list is made of while it is grouped and none is opened.
    Q_PROPERTY(crownring::screen::GroupModel* groups READ groups CONSTANT FINAL)
    /// 0 each requirement, 1 by balloon, 2 by visit, 3 by requirement; remembered
    Q_PROPERTY(int grouping READ grouping WRITE setGrouping NOTIFY filterChanged FINAL)
    Q_PROPERTY(bool grouped READ isGrouped NOTIFY filterChanged FINAL) ///< `groups` is what is looked at
    Q_PROPERTY(QString within READ within NOTIFY filterChanged FINAL)  ///< the group that is opened; empty for none
    Q_PROPERTY(crownring::screen::HorizonModel* calendar READ calendar CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::HorizonModel* use READ use CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* standings READ standings CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* balloons READ balloons CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* kinds READ kinds CONSTANT FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY filterChanged FINAL)
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY filterChanged FINAL)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY filterChanged FINAL)
    Q_PROPERTY(int standing READ standing WRITE setStanding NOTIFY filterChanged FINAL)
    Q_PROPERTY(bool soonestFirst READ soonestFirst WRITE setSoonestFirst NOTIFY filterChanged FINAL)
    /// The bin chosen on a lane, -1 for none.
    Q_PROPERTY(int calendarBin READ calendarBin NOTIFY filterChanged FINAL)
    Q_PROPERTY(int lastCalendarBin READ lastCalendarBin NOTIFY filterChanged FINAL) ///< of a range; else the chosen one
    /// So many weeks with what is overdue and unproven are chosen; 0 where something else is.
    Q_PROPERTY(int weeks READ weeks NOTIFY filterChanged FINAL)
    Q_PROPERTY(int useBin READ useBin NOTIFY filterChanged FINAL)
    Q_PROPERTY(bool filtered READ filtered NOTIFY filterChanged FINAL)
    /// "118 of 912 requirements"
    Q_PROPERTY(QString summary READ summary NOTIFY listed FINAL)
    /// "week from 2026-11-30 · left out: 790 clear, 4 deferred"; empty where nothing is chosen on the strip
    Q_PROPERTY(QString range READ range NOTIFY listed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY listed FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] DueModel* list() { return &m_list; }
    [[nodiscard]] GroupModel* groups() { return &m_groups; }
    [[nodiscard]] int grouping() const { return static_cast<int>(m_sieve.grouping); }
    void setGrouping(int grouping);
    [[nodiscard]] bool isGrouped() const { return m_sieve.grouping != Grouping::None && !m_sieve.within; }
    [[nodiscard]] QString within() const { return m_sieve.within ? m_within : QString(); }
    [[nodiscard]] HorizonModel* calendar() { return &m_calendar; }
    [[nodiscard]] HorizonModel* use() { return &m_use; }
    [[nodiscard]] ChoiceModel* standings() { return &m_standings; }
    [[nodiscard]] ChoiceModel* balloons() { return &m_balloons; }
    [[nodiscard]] ChoiceModel* kinds() { return &m_kinds; }

    [[nodiscard]] QString words() const { return m_sieve.words; }
    void setWords(const QString& words);
    [[nodiscard]] QString balloon() const;
    void setBalloon(const QString& balloon);
    [[nodiscard]] QString kind() const;
    void setKind(const QString& kind);
    [[nodiscard]] int standing() const { return m_sieve.reckoned ? static_cast<int>(*m_sieve.reckoned) : -1; }
    void setStanding(int standing);
    [[nodiscard]] bool soonestFirst() const { return m_sieve.order == DueOrder::Soonest; }
    void setSoonestFirst(bool soonest);
    [[nodiscard]] int calendarBin() const { return m_sieve.bin && !m_sieve.bin->byUse ? m_sieve.bin->bin : -1; }
    [[nodiscard]] int lastCalendarBin() const {
        return calendarBin() < 0 ? -1 : std::max(calendarBin(), m_sieve.lastBin);
    }
    [[nodiscard]] int weeks() const;
    [[nodiscard]] int useBin() const { return m_sieve.bin && m_sieve.bin->byUse ? m_sieve.bin->bin : -1; }
    [[nodiscard]] bool filtered() const;
    [[nodiscard]] QString summary() const { return m_summary; }
    [[nodiscard]] QString range() const { return m_range; }
    [[nodiscard]] bool ready() const { return m_ready; }

    /// Choosing the chosen bin again lets go of it.
    Q_INVOKABLE void chooseCalendarBin(int bin);
    Q_INVOKABLE void chooseUseBin(int bin);
    /// From the bin that is chosen to this one, whichever comes first.
    Q_INVOKABLE void stretchTo(int calendarBin);
    /// What is overdue or unproven and what comes in so many weeks.
    Q_INVOKABLE void chooseWeeks(int weeks);
    /// Does that row pass what is filtered by?
    Q_INVOKABLE bool holds(const QString& item, const QString& requirement) const;
    /// Leaves the rows of one group.
    Q_INVOKABLE void openGroup(int row);
    Q_INVOKABLE void leaveGroup();
    Q_INVOKABLE void clearFilters();

signals:
    void filterChanged();
    void listed();

private:
    void movedIn() override;
    void chooseBin(Place place);
    void changeFilter();
    void siftAgain();
    void look();
    void take(const Sheet& sheet, Sifted sifted);
    [[nodiscard]] QString binText(CivilDate on) const;
    void mend(const Sheet& sheet);
    void showSpread(const FleetSheet& sheet);
    void showChoices(const FleetSheet& sheet);

    Sheet m_shown;   ///< whose rows are in the list
    Spread m_spread; ///< of them
    DueSieve m_sieve;
    DueModel m_list;
    GroupModel m_groups;
    QString m_within;
    HorizonModel m_calendar;
    HorizonModel m_use;
    ChoiceModel m_standings;
    ChoiceModel m_balloons;
    ChoiceModel m_kinds;
    QString m_summary;
    QString m_range;
    int m_turn = 0;
    bool m_sifting = false;
    bool m_ready = false;
};

}
