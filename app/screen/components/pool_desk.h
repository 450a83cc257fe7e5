// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pool: every item of a kind wherever it is, sifted by lot, by the quarter in which it falls due, by words;
/// several are ticked for what is done with a batch.

#include "answers/parts/pool.h"
#include "screen/components/pool_model.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

#include <map>

namespace crownring::screen {

class PoolDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// What is not seen is not asked for.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::PoolModel* items READ items CONSTANT FINAL)
    /// A kind of items, and any lot where it is empty.
    Q_PROPERTY(crownring::screen::ChoiceModel* kinds READ kinds CONSTANT FINAL)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* lots READ lots CONSTANT FINAL)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY changed FINAL)
    /// Those in which something falls due, with how many; "?" where no day is known.
    Q_PROPERTY(crownring::screen::ChoiceModel* quarters READ quarters CONSTANT FINAL)
    Q_PROPERTY(QString quarter READ quarter WRITE setQuarter NOTIFY changed FINAL)
    /// What is away, and nothing else.
    Q_PROPERTY(bool awayOnly READ awayOnly WRITE setAwayOnly NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    /// What is shown is of before the latest entry: nothing is done with it until it is asked anew.
    Q_PROPERTY(bool renewing READ renewing NOTIFY changed FINAL)
    Q_PROPERTY(int away READ away NOTIFY changed FINAL)
    Q_PROPERTY(QStringList ticked READ ticked NOTIFY changed FINAL)
    /// What may be done with all that are ticked.
    Q_PROPERTY(bool maySend READ maySend NOTIFY changed FINAL)
    Q_PROPERTY(bool mayReturn READ mayReturn NOTIFY changed FINAL)
    Q_PROPERTY(bool mayFill READ mayFill NOTIFY changed FINAL)

public:
    using Resident::Resident;

    Q_INVOKABLE void toggle(const QString& item);
    Q_INVOKABLE void tickShown();
    Q_INVOKABLE void tickNone();

    [[nodiscard]] bool shown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] bool ready() const { return m_ready; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] PoolModel* items() { return &m_items; }
    [[nodiscard]] ChoiceModel* kinds() { return &m_kinds; }
    [[nodiscard]] QString kind() const { return m_kind; }
    void setKind(const QString& kind);
    [[nodiscard]] ChoiceModel* lots() { return &m_lots; }
    [[nodiscard]] QString lot() const { return m_lot; }
    void setLot(const QString& lot);
    [[nodiscard]] ChoiceModel* quarters() { return &m_quarters; }
    [[nodiscard]] QString quarter() const { return m_quarter; }
    void setQuarter(const QString& quarter);
    [[nodiscard]] bool awayOnly() const { return m_awayOnly; }
    void setAwayOnly(bool awayOnly);
    [[nodiscard]] QString words() const { return m_words.join(u' '); }
    void setWords(const QString& words);
    [[nodiscard]] QString summary() const;
    [[nodiscard]] bool renewing() const;
    [[nodiscard]] int away() const;
    [[nodiscard]] QStringList ticked() const;
    [[nodiscard]] bool maySend() const;
    [[nodiscard]] bool mayReturn() const;
    [[nodiscard]] bool mayFill() const;

signals:
    void changed();
    void shownChanged();

private:
    void movedIn() override;
    void follow();
    void ask();
    void look();
    [[nodiscard]] bool fits(const PoolItem& item, const PoolLine& line) const;
    [[nodiscard]] std::vector<const PoolItem*> tickedItems() const;
    /// Is it so of all that are ticked, and is something?
    template <class IsSo>
    [[nodiscard]] bool all(IsSo isSo) const;

    Sheet m_sheet; ///< for which the pool was asked
    std::vector<PoolItem> m_pool;
    PoolModel m_items;
    ChoiceModel m_kinds;
    ChoiceModel m_lots;
    ChoiceModel m_quarters;
    QString m_kind = QStringLiteral("cylinder");
    QString m_lot;
    QString m_quarter;
    QStringList m_words;
    QString m_problem;
    std::map<ItemId, std::optional<OutOfService>> m_ticked; ///< as they were then
    int m_turn = 0;
    bool m_asking = false;
    bool m_awayOnly = false;
    bool m_shown = false;
    bool m_ready = false;
};

}
