// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What flies on one flight: what is fitted, with any item of the record in its place, for this flight or from now on.

#include "screen/desk/fleet.h"
#include "screen/lists/choice_sift.h"

#include <nlohmann/json.hpp>

#include <set>

namespace crownring::screen {

class FlightKit : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by an entry form")
    /// What to choose from for the part that is asked for.
    Q_PROPERTY(crownring::screen::ChoiceSift* sift READ sift CONSTANT FINAL)
    /// The row that another item is asked for; `count` when one is added; -1 when none is.
    Q_PROPERTY(int asked READ asked NOTIFY changed FINAL)
    /// "Instead of basket BSK-204"
    Q_PROPERTY(QString asking READ asking NOTIFY changed FINAL)
    /// Something else flies than what is fitted.
    Q_PROPERTY(bool differs READ differs NOTIFY changed FINAL)
    Q_PROPERTY(bool stays READ stays WRITE setStays NOTIFY changed FINAL)
    /// The kit can be changed from now on.
    Q_PROPERTY(bool mayStay READ mayStay NOTIFY changed FINAL)
    /// What will be written besides the flight, and what follows: "BSK-235 instead of BSK-204, this flight only."
    Q_PROPERTY(QString told READ told NOTIFY changed FINAL)

public:
    enum Role { ItemRole = Qt::UserRole + 1, NameRole, SpokenRole, StandingRole, FliesRole, ChangedRole };
    Q_ENUM(Role)

    /// A change of what is fitted, at the moment of the flight.
    struct Move {
        bool fitted = true; ///< else removed
        Registration balloon;
        ItemId item;
        std::string place;
    };

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// @param fitted what flies if nothing is said
    /// @param flew what the entry says that flew, where it says so
    void show(const Sheet& sheet, const Registration& balloon, const std::vector<ItemId>& fitted,
              const std::optional<std::vector<ItemId>>& flew = std::nullopt);
    void clear();
    /// Another kit is fitted from now on only where what is fitted today is what flew.
    void setMayStay(bool may);

    /// Asks what flies instead; asked again, no longer. Until something is chosen the part is undecided.
    Q_INVOKABLE void ask(int row);
    Q_INVOKABLE void add();
    Q_INVOKABLE void pick(const QString& item);
    /// The part that is asked for does not fly; asked again, it does.
    Q_INVOKABLE void leaveOut();
    /// What was fitted flies again in its place.
    Q_INVOKABLE void putBack();

    [[nodiscard]] ChoiceSift* sift() { return &m_sift; }
    [[nodiscard]] int asked() const { return m_asked; }
    [[nodiscard]] QString asking() const;
    [[nodiscard]] bool differs() const;
    [[nodiscard]] bool stays() const { return m_stays && m_mayStay; }
    void setStays(bool stays);
    [[nodiscard]] bool mayStay() const { return m_mayStay && differs(); }
    [[nodiscard]] QString told() const;
    /// Asked back: a flight without an envelope, with two baskets; empty when there is nothing to ask.
    [[nodiscard]] QString question() const;
    /// Said to fly no more, and not yet what instead; empty when there is no such part.
    [[nodiscard]] QString undecided() const;
    /// What flies, in the order of the ids.
    [[nodiscard]] std::vector<ItemId> kit() const;
    /// It is said what flew: other than what is fitted, or as an entry said before.
    [[nodiscard]] bool isSaid() const { return m_said || differs(); }
    /// What is removed and fitted with the flight, in their order; empty unless it stays.
    [[nodiscard]] std::vector<Move> moves() const;

signals:
    void changed();

private:
    struct Row {
        std::optional<ItemId> fitted; ///< what flies if nothing is said; none for what was added
        std::optional<ItemId> flies;
        bool undecided = false; ///< tapped, and nothing chosen
        [[nodiscard]] bool differs() const { return fitted != flies; }
        [[nodiscard]] const ItemId& item() const { return flies ? *flies : *fitted; }
        [[nodiscard]] bool sameAs(const Row& other) const { return fitted == other.fitted && flies == other.flies; }
        bool operator==(const Row&) const = default;
    };

    [[nodiscard]] QString nameOf(const ItemId& item) const;
    [[nodiscard]] QString textOf(const Row& row) const;
    [[nodiscard]] static QString changeOf(const Row& row);
    [[nodiscard]] ItemKind kindOf(const ItemId& item) const;
    [[nodiscard]] int countOf(ItemKind kind) const;
    [[nodiscard]] std::vector<Choice> offered() const;
    /// Cylinders go by the handful: the next one that is still as it was; -1 when none is.
    [[nodiscard]] int nextCylinder(int after) const;
    void offer(int row);
    void told(int row);

    Sheet m_sheet;
    Registration m_balloon;
    std::vector<Row> m_rows;
    ChoiceSift m_sift;
    int m_asked = -1;
    bool m_said = false;
    bool m_stays = false;
    bool m_mayStay = false;
};

}
