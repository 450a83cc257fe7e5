// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The whole fleet on the day asked: asked once of the record, then shared by all places. A sheet never changes; a new
/// day or a new entry makes a new sheet.

#include "answers/balloon_lines.h"
#include "registry/books.h"
#include "rules/due/due_list.h"
#include "words/sentences.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <unordered_map>
#include <vector>

class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Day;
class RecordDesk;

using RowNumbers = std::vector<std::uint32_t>;

struct FleetSheet {
    CivilDate on;
    DueList due;
    std::vector<BalloonCard> balloons;

    std::unordered_map<ItemId, RowNumbers> rowsOfItem;          ///< into due.rows, worst first
    std::unordered_map<ItemId, const ItemFacts*> items;         ///< into due.items
    std::unordered_map<Registration, RowNumbers> rowsOfBalloon; ///< of what is fitted
    std::unordered_map<Registration, std::vector<const ItemFacts*>> itemsOfBalloon;
    Headlines headlines; ///< into due.rows

    std::shared_ptr<const words::Titles> titles; ///< of every requirement in force anywhere

    /// The worst row that counts; null when there is none.
    [[nodiscard]] const DueRow* worstOf(const ItemId& item) const;
    /// What governs a balloon; its row is null where nothing does.
    [[nodiscard]] const Headline& headlineOf(const Registration& balloon) const;
    [[nodiscard]] const BalloonCard* card(const Registration& balloon) const;
    [[nodiscard]] const ItemFacts* item(const ItemId& item) const;
};
using Sheet = std::shared_ptr<const FleetSheet>;

/// Builds the sheet; runs on the storage thread.
[[nodiscard]] Result<Sheet> fleetSheet(Books& books, CivilDate on);

class Fleet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    Q_PROPERTY(bool asking READ asking NOTIFY askingChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ empty NOTIFY changed FINAL)

public:
    /// @pre both live longer
    Fleet(const Day& day, RecordDesk& desk);
    static Fleet* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] const Sheet& sheet() const { return m_sheet; } ///< null before the first answer
    /// None before the first answer.
    [[nodiscard]] std::shared_ptr<const words::Titles> titles() const;
    [[nodiscard]] bool ready() const { return m_sheet != nullptr; }
    [[nodiscard]] bool asking() const { return m_asking; }
    [[nodiscard]] QString problem() const { return m_problem; }
    /// Nothing was entered up to the day asked.
    [[nodiscard]] bool empty() const;

signals:
    void changed();
    void askingChanged();

private:
    void askAgain();
    void setAsking(bool asking);

    const Day& m_day;
    RecordDesk& m_desk;
    Sheet m_sheet;
    QString m_problem;
    int m_turn = 0;
    bool m_asking = false;
};

}
