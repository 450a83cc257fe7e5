// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What all lists on the screen have in common: a count, and rows that change in place.
///
/// A model keeps a vector of plain rows and hands a new one to `replaceRows`; views are told which rows went, came,
/// moved or changed, so that a scroll position and a focused row survive. A row type has `sameAs(other)`: the same
/// thing, perhaps with other content; and `==`.

#include <QAbstractListModel>
#include <QMetaEnum>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <iterator>
#include <utility>
#include <vector>

namespace crownring::screen {

class ListBase : public QAbstractListModel {
    Q_OBJECT
    QML_NAMED_ELEMENT(ListBase)
    QML_UNCREATABLE("made by the places")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int count() const { return rowCount(QModelIndex()); }
    /// What QML calls a role is what the list's `Role` calls it: StandingWordRole is "standingWord".
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

protected:
    template <class Row>
    void replaceRows(std::vector<Row>& have, std::vector<Row> next);
    /// Other content for one row; nothing where it is not in the list.
    template <class Row>
    void changeRow(std::vector<Row>& have, Row next);
    /// All rows are told to be drawn again.
    void touchAll();

private:
    /// Longer stretches than this are taken out and put in as a whole: moving row by row is quadratic.
    static constexpr std::ptrdiff_t longestWalk = 400;

    template <class Row>
    void walk(std::vector<Row>& have, const std::vector<Row>& next, std::ptrdiff_t first, std::ptrdiff_t haveEnd,
              std::ptrdiff_t nextEnd);
    template <class Row>
    void swapStretch(std::vector<Row>& have, std::vector<Row>& next, std::ptrdiff_t first, std::ptrdiff_t haveEnd,
                     std::ptrdiff_t nextEnd);
    template <class Row>
    void takeContent(std::vector<Row>& have, std::vector<Row>& next, std::ptrdiff_t begin, std::ptrdiff_t end);
};

template <class Row>
void ListBase::replaceRows(std::vector<Row>& have, std::vector<Row> next) {
    const auto before = have.size();
    const auto shorter = static_cast<std::ptrdiff_t>(std::min(have.size(), next.size()));
    std::ptrdiff_t first = 0;
    while (first < shorter && have[static_cast<std::size_t>(first)].sameAs(next[static_cast<std::size_t>(first)]))
        ++first;
    auto haveEnd = static_cast<std::ptrdiff_t>(have.size());
    auto nextEnd = static_cast<std::ptrdiff_t>(next.size());
    while (haveEnd > first && nextEnd > first &&
           have[static_cast<std::size_t>(haveEnd - 1)].sameAs(next[static_cast<std::size_t>(nextEnd - 1)])) {
        --haveEnd;
        --nextEnd;
    }
    const auto end = static_cast<std::ptrdiff_t>(next.size());
    if (std::max(haveEnd, nextEnd) - first <= longestWalk) {
        walk(have, next, first, haveEnd, nextEnd);
        takeContent(have, next, 0, end);
    } else {
        swapStretch(have, next, first, haveEnd, nextEnd);
        takeContent(have, next, 0, first);
        takeContent(have, next, nextEnd, end);
    }
    if (have.size() != before)
        emit countChanged();
}

template <class Row>
void ListBase::changeRow(std::vector<Row>& have, Row next) {
    const auto at = std::find_if(have.begin(), have.end(), [&](const Row& row) { return row.sameAs(next); });
    if (at == have.end() || *at == next)
        return;
    *at = std::move(next);
    const auto changed = index(static_cast<int>(at - have.begin()));
    emit dataChanged(changed, changed);
}

template <class Row>
void ListBase::swapStretch(std::vector<Row>& have, std::vector<Row>& next, std::ptrdiff_t first, std::ptrdiff_t haveEnd,
                           std::ptrdiff_t nextEnd) {
    if (haveEnd > first) {
        beginRemoveRows({}, static_cast<int>(first), static_cast<int>(haveEnd - 1));
        have.erase(have.begin() + first, have.begin() + haveEnd);
        endRemoveRows();
    }
    if (nextEnd > first) {
        beginInsertRows({}, static_cast<int>(first), static_cast<int>(nextEnd - 1));
        have.insert(have.begin() + first, std::make_move_iterator(next.begin() + first),
                    std::make_move_iterator(next.begin() + nextEnd));
        endInsertRows();
    }
}

template <class Row>
void ListBase::walk(std::vector<Row>& have, const std::vector<Row>& next, std::ptrdiff_t first, std::ptrdiff_t haveEnd,
                    std::ptrdiff_t nextEnd) {
    for (auto at = haveEnd - 1; at >= first; --at) {
        const auto& row = have[static_cast<std::size_t>(at)];
        if (std::none_of(next.begin() + first, next.begin() + nextEnd, [&](const Row& r) { return r.sameAs(row); })) {
            beginRemoveRows({}, static_cast<int>(at), static_cast<int>(at));
            have.erase(have.begin() + at);
            endRemoveRows();
            --haveEnd;
        }
    }
    for (auto at = first; at < nextEnd; ++at) {
        const auto& wanted = next[static_cast<std::size_t>(at)];
        const auto found =
            std::find_if(have.begin() + at, have.begin() + haveEnd, [&](const Row& row) { return row.sameAs(wanted); });
        const auto from = found - have.begin();
        if (from == haveEnd) {
            beginInsertRows({}, static_cast<int>(at), static_cast<int>(at));
            have.insert(have.begin() + at, wanted);
            endInsertRows();
            ++haveEnd;
        } else if (from != at) {
            beginMoveRows({}, static_cast<int>(from), static_cast<int>(from), {}, static_cast<int>(at));
            std::rotate(have.begin() + at, have.begin() + from, have.begin() + from + 1);
            endMoveRows();
        }
    }
}

template <class Row>
void ListBase::takeContent(std::vector<Row>& have, std::vector<Row>& next, std::ptrdiff_t begin, std::ptrdiff_t end) {
    for (auto at = begin; at < end; ++at) {
        const auto first = at;
        for (; at < end; ++at) {
            auto& row = have[static_cast<std::size_t>(at)];
            auto& wanted = next[static_cast<std::size_t>(at)];
            const bool same = row == wanted;
            row = std::move(wanted);
            if (same)
                break;
        }
        if (at > first)
            emit dataChanged(index(static_cast<int>(first)), index(static_cast<int>(at - 1)));
    }
}

inline QHash<int, QByteArray> ListBase::roleNames() const {
    const auto roles = metaObject()->enumerator(metaObject()->indexOfEnumerator("Role"));
    QHash<int, QByteArray> names;
    for (int at = 0; at < roles.keyCount(); ++at) {
        QByteArray name = roles.key(at);
        name.chop(qsizetype(sizeof "Role") - 1);
        name.front() = static_cast<char>(name.front() - 'A' + 'a');
        names.insert(roles.value(at), name);
    }
    return names;
}

inline void ListBase::touchAll() {
    if (count() > 0)
        emit dataChanged(index(0), index(count() - 1));
}

}
