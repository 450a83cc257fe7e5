// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// "The balloon came in": choose it or loose items, the kind of visit, and what is to be done; then open the
/// inspection.

#include "acts/open_inspection.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

#include <memory>
#include <set>

namespace crownring::screen {

class VisitOpening : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::ChoiceModel* balloons READ balloons CONSTANT FINAL)
    /// Of the balloon, or all loose ones found by `words`; chosen ones come along.
    Q_PROPERTY(crownring::screen::ChoiceModel* items READ items CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* visits READ visits CONSTANT FINAL)
    /// value: a row's number; label: the requirement; detail: item and why; number: 0 mandatory, 1 recommended;
    /// chosen: to be done
    Q_PROPERTY(crownring::screen::ChoiceModel* proposals READ proposals CONSTANT FINAL)
    /// Mandatory directives that stand open on the items: answered on their line of the checklist. label: which;
    /// detail: item and how it stands; standing
    Q_PROPERTY(crownring::screen::ChoiceModel* directives READ directives CONSTANT FINAL)
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY changed FINAL)
    Q_PROPERTY(QString visit READ visit WRITE setVisit NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    Q_PROPERTY(QString order READ order WRITE setOrder NOTIFY changed FINAL) ///< the shop's own number
    Q_PROPERTY(QString inspector READ inspector WRITE setInspector NOTIFY changed FINAL)
    Q_PROPERTY(int chosenItems READ chosenItems NOTIFY changed FINAL)
    Q_PROPERTY(int chosenWork READ chosenWork NOTIFY changed FINAL)
    /// What is due on the items chosen was read.
    Q_PROPERTY(bool known READ known NOTIFY changed FINAL)
    /// An inspection after an event, of which none is reported: that comes first.
    Q_PROPERTY(bool eventUnknown READ isEventUnknown NOTIFY changed FINAL)
    Q_PROPERTY(bool canOpen READ canOpen NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] ChoiceModel* balloons() { return &m_balloons; }
    [[nodiscard]] ChoiceModel* items() { return &m_items; }
    [[nodiscard]] ChoiceModel* visits() { return &m_visits; }
    [[nodiscard]] ChoiceModel* proposals() { return &m_proposals; }
    [[nodiscard]] ChoiceModel* directives() { return &m_directives; }
    [[nodiscard]] QString balloon() const { return m_balloon; }
    /// Takes all that is fitted to it; an empty text goes back to loose items.
    void setBalloon(const QString& balloon);
    [[nodiscard]] QString visit() const { return m_visit; }
    void setVisit(const QString& visit);
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString& words);
    [[nodiscard]] QString order() const { return m_order; }
    void setOrder(const QString& order) { m_order = order; }
    [[nodiscard]] QString inspector() const;
    void setInspector(const QString& inspector);
    [[nodiscard]] int chosenItems() const { return static_cast<int>(m_chosen.size()); }
    [[nodiscard]] int chosenWork() const;
    [[nodiscard]] bool known() const { return m_offer != nullptr; }
    [[nodiscard]] bool isEventUnknown() const { return m_offer && m_offer->eventUnknown; }
    [[nodiscard]] bool canOpen() const { return !m_chosen.empty() && !m_asking && !isEventUnknown(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Begins anew, for a balloon or for none.
    Q_INVOKABLE void begin(const QString& balloon = {});
    /// The same for a rectification under the balloon's rules, in which that is done on the item.
    Q_INVOKABLE void beginRectification(const QString& balloon, const QString& item, const QString& requirement);
    Q_INVOKABLE void toggleItem(const QString& item);
    Q_INVOKABLE void toggleWork(const QString& value);
    /// Opens it; `opened` follows, or `problem` says why not.
    Q_INVOKABLE void openIt();

signals:
    void changed();
    void opened(const QString& inspection);

private:
    void movedIn() override;
    void look();
    void showChoices();
    [[nodiscard]] Choice choiceOf(const ItemFacts& item) const;
    [[nodiscard]] std::optional<Regime> onlyRegime() const;
    void showVisits();
    void showProposals();
    void showDirectives();
    void askOffer();
    void takeOffer(const std::shared_ptr<const Offer>& offer);
    void dropFitted();

    Sheet m_sheet; ///< what the choices are of
    ChoiceModel m_balloons;
    ChoiceModel m_items;
    ChoiceModel m_visits;
    ChoiceModel m_proposals;
    ChoiceModel m_directives;
    QString m_balloon;
    QString m_visit;
    QString m_words;
    QString m_order;
    QString m_problem;
    std::set<ItemId> m_chosen;
    std::shared_ptr<const Offer> m_offer;
    std::set<std::size_t> m_work; ///< chosen proposals
    std::optional<Work> m_wanted; ///< of a rectification
    int m_turn = 0;
    bool m_asking = false;
    bool m_visitChosen = false;
};

}
