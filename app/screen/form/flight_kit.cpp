// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/flight_kit.h"

#include "screen/desk/item_choices.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <array>

namespace crownring::screen {

using namespace words;

namespace {

/// What there is one of on a balloon.
constexpr std::array single = {ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner};

}

QVariant FlightKit::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_rows.size()))
        return {};
    const auto& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemRole:
        return inward(row.item().text());
    case Qt::DisplayRole:
    case NameRole:
        return nameOf(row.item());
    case SpokenRole:
        return textOf(row);
    case StandingRole: {
        const auto* worst = m_sheet ? m_sheet->worstOf(row.item()) : nullptr;
        return worst ? static_cast<int>(reckonedAs(worst->state)) : -1;
    }
    case FliesRole:
        return row.flies.has_value();
    case ChangedRole:
        return row.differs() || row.undecided;
    default:
        return {};
    }
}

QHash<int, QByteArray> FlightKit::roleNames() const {
    return {{ItemRole, "item"},         {NameRole, "name"},   {SpokenRole, "spoken"},
            {StandingRole, "standing"}, {FliesRole, "flies"}, {ChangedRole, "differing"}};
}

void FlightKit::show(const Sheet& sheet, const Registration& balloon, const std::vector<ItemId>& fitted,
                     const std::optional<std::vector<ItemId>>& flew) {
    m_sheet = sheet;
    m_balloon = balloon;
    m_asked = -1;
    m_said = flew.has_value();
    m_stays = false;
    std::vector<Row> rows;
    for (const auto& item : fitted)
        rows.push_back(
            {item, !flew || std::ranges::count(*flew, item) > 0 ? std::optional(item) : std::nullopt, false});
    if (flew)
        for (const auto& item : *flew) {
            if (std::ranges::count(fitted, item) > 0)
                continue;
            // What flew instead of something of its kind stands in its place.
            const auto instead = std::ranges::find_if(
                rows, [&](const Row& row) { return row.fitted && !row.flies && kindOf(*row.fitted) == kindOf(item); });
            if (instead != rows.end())
                instead->flies = item;
            else
                rows.push_back({std::nullopt, item, false});
        }
    const auto placeOf = [&](const Row& row) {
        const auto* facts = sheet ? sheet->item(row.item()) : nullptr;
        return std::pair(kindOf(row.item()), facts ? facts->place : std::string());
    };
    std::ranges::stable_sort(rows, {}, placeOf);
    replaceRows(m_rows, std::move(rows));
    touchAll();
    emit changed();
}

void FlightKit::clear() {
    replaceRows(m_rows, {});
    m_sheet.reset();
    m_asked = -1;
    m_said = m_stays = m_mayStay = false;
    emit changed();
}

void FlightKit::setMayStay(bool may) {
    m_mayStay = may;
    emit changed();
}

void FlightKit::setStays(bool stays) {
    m_stays = stays;
    emit changed();
}

void FlightKit::ask(int row) {
    const bool again = row == m_asked;
    if (row >= 0 && row < count()) {
        auto& part = m_rows[static_cast<std::size_t>(row)];
        part.undecided = !again && !part.differs();
        told(row);
    }
    offer(again ? -1 : row);
}

void FlightKit::add() { ask(count()); }

void FlightKit::offer(int row) {
    m_asked = row >= 0 && row <= count() ? row : -1;
    if (m_asked >= 0)
        m_sift.offer(offered());
    emit changed();
}

void FlightKit::pick(const QString& item) {
    const ItemId picked(outward(item));
    if (m_asked < 0 || !m_sheet || !m_sheet->item(picked))
        return;
    if (m_asked == count()) {
        beginInsertRows({}, m_asked, m_asked);
        m_rows.push_back({std::nullopt, picked, false});
        endInsertRows();
        emit countChanged();
        offer(-1);
        return;
    }
    const auto at = m_asked;
    m_rows[static_cast<std::size_t>(at)].flies = picked;
    m_rows[static_cast<std::size_t>(at)].undecided = false;
    told(at);
    offer(kindOf(picked) == ItemKind::Cylinder ? nextCylinder(at) : -1);
}

int FlightKit::nextCylinder(int after) const {
    for (int step = 1; step < count(); ++step) {
        const auto at = (after + step) % count();
        const auto& row = m_rows[static_cast<std::size_t>(at)];
        if (kindOf(row.item()) == ItemKind::Cylinder && !row.differs())
            return at;
    }
    return -1;
}

void FlightKit::leaveOut() {
    if (m_asked < 0 || m_asked >= count())
        return;
    const auto at = static_cast<std::size_t>(m_asked);
    if (m_rows[at].fitted) {
        m_rows[at].flies.reset();
        m_rows[at].undecided = false;
        told(m_asked);
    } else {
        beginRemoveRows({}, m_asked, m_asked);
        m_rows.erase(m_rows.begin() + m_asked);
        endRemoveRows();
        emit countChanged();
    }
    offer(-1);
}

void FlightKit::putBack() {
    if (m_asked < 0 || m_asked >= count() || !m_rows[static_cast<std::size_t>(m_asked)].fitted)
        return;
    auto& row = m_rows[static_cast<std::size_t>(m_asked)];
    row.flies = row.fitted;
    row.undecided = false;
    told(m_asked);
    offer(-1);
}

QString FlightKit::asking() const {
    if (m_asked < 0)
        return {};
    if (m_asked == count())
        return tr("What flew too?");
    const auto& row = m_rows[static_cast<std::size_t>(m_asked)];
    return tr("Instead of %1").arg(nameOf(row.fitted ? *row.fitted : row.item()));
}

bool FlightKit::differs() const { return std::ranges::any_of(m_rows, &Row::differs); }

QString FlightKit::told() const {
    QStringList lines;
    for (const auto& row : m_rows)
        if (row.differs())
            lines += changeOf(row);
    if (lines.isEmpty())
        return {};
    for (const auto& move : moves())
        if (!move.fitted && move.balloon != m_balloon)
            lines += tr("%1 leaves %2").arg(inward(move.item.text()), inward(move.balloon.text()));
    const auto text = lines.join(QStringLiteral(" · "));
    return stays() ? tr("%1. It stays so.").arg(text) : tr("%1. On this flight only.").arg(text);
}

QString FlightKit::question() const {
    if (!m_sheet || m_balloon.text().empty())
        return {};
    QStringList lacking;
    QStringList doubled;
    for (const auto kind : single) {
        const int number = countOf(kind);
        if (number == 0)
            lacking += Words::kind(kind);
        else if (number > 1)
            doubled += tr("%1 × %2").arg(QString::number(number), Words::kind(kind));
    }
    QStringList asked;
    if (!lacking.isEmpty())
        asked += tr("Nothing of this kind flies: %1.").arg(lacking.join(QStringLiteral(", ")));
    if (!doubled.isEmpty())
        asked += tr("More than one of it flies: %1.").arg(doubled.join(QStringLiteral(", ")));
    for (const auto& id : kit())
        if (const auto* item = m_sheet->item(id); item && item->out)
            asked += tr("%1 is out of service: %2.").arg(ItemChoices::name(*item), words::said(reasonOf(*item->out)));
    return asked.isEmpty() ? QString() : tr("%1 Is it so?").arg(asked.join(u' '));
}

QString FlightKit::undecided() const {
    QStringList names;
    for (const auto& row : m_rows)
        if (row.undecided)
            names += inward(row.item().text());
    if (!names.isEmpty())
        return tr("Did not fly: %1? Choose what flew instead, or “Nothing instead”, or “As fitted”.")
            .arg(names.join(QStringLiteral(", ")));
    return !m_rows.empty() && m_asked == count() ? tr("Choose what flew too, or tap “something else” again.")
                                                 : QString();
}

std::vector<ItemId> FlightKit::kit() const {
    std::vector<ItemId> items;
    for (const auto& row : m_rows)
        if (row.flies)
            items.push_back(*row.flies);
    std::ranges::sort(items);
    items.erase(std::unique(items.begin(), items.end()), items.end());
    return items;
}

std::vector<FlightKit::Move> FlightKit::moves() const {
    std::vector<Move> moves;
    if (!stays() || !m_sheet)
        return moves;
    const auto flying = kit();
    for (const auto& row : m_rows) {
        if (!row.differs())
            continue;
        const auto* before = row.fitted ? m_sheet->item(*row.fitted) : nullptr;
        if (row.fitted && std::ranges::count(flying, *row.fitted) == 0)
            moves.push_back({false, m_balloon, *row.fitted, {}});
        const auto* coming = row.flies ? m_sheet->item(*row.flies) : nullptr;
        if (!coming || coming->balloon == m_balloon)
            continue;
        if (coming->balloon)
            moves.push_back({false, *coming->balloon, *row.flies, {}});
        moves.push_back({true, m_balloon, *row.flies, before ? before->place : std::string()});
    }
    return moves;
}

QString FlightKit::nameOf(const ItemId& item) const {
    const auto* facts = m_sheet ? m_sheet->item(item) : nullptr;
    return facts ? ItemChoices::name(*facts) : inward(item.text());
}

QString FlightKit::textOf(const Row& row) const { return row.differs() ? changeOf(row) : nameOf(*row.flies); }

QString FlightKit::changeOf(const Row& row) {
    const auto name = [](const ItemId& item) { return inward(item.text()); };
    if (!row.flies)
        return tr("without %1").arg(name(*row.fitted));
    return row.fitted ? tr("%1 instead of %2").arg(name(*row.flies), name(*row.fitted))
                      : tr("%1 too").arg(name(*row.flies));
}

ItemKind FlightKit::kindOf(const ItemId& item) const {
    const auto* facts = m_sheet ? m_sheet->item(item) : nullptr;
    return facts ? facts->kind : ItemKind::Other;
}

int FlightKit::countOf(ItemKind kind) const {
    return static_cast<int>(
        std::ranges::count_if(m_rows, [&](const Row& row) { return row.flies && kindOf(*row.flies) == kind; }));
}

std::vector<Choice> FlightKit::offered() const {
    const auto flying = kit();
    const auto wanted =
        m_asked < count() ? std::optional(kindOf(m_rows[static_cast<std::size_t>(m_asked)].item())) : std::nullopt;
    std::vector<Choice> pool;
    std::vector<Choice> elsewhere;
    for (const auto& item : m_sheet->items())
        if ((!wanted || item.kind == *wanted) && std::ranges::count(flying, item.id) == 0)
            (item.balloon || item.out ? elsewhere : pool).push_back(ItemChoices::of(*m_sheet, item));
    pool.insert(pool.end(), elsewhere.begin(), elsewhere.end());
    return pool;
}

void FlightKit::told(int row) { emit dataChanged(index(row), index(row)); }

}
