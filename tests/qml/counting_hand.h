// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMap>
#include <QQuickItem>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QTest>

#include <utility>

namespace crownring::screen {

/// A hand that counts what it does.
class CountingHand {
public:
    explicit CountingHand(QQuickWindow& window) : m_window(window) {}

    [[nodiscard]] int count() const { return m_count; }
    /// Where they went: "bench.rest 11, bench.figure 3 …".
    [[nodiscard]] QString whereTo() const {
        QStringList all;
        for (auto each = m_where.begin(); each != m_where.end(); ++each)
            all += each.key() + QLatin1Char(' ') + QString::number(each.value());
        return all.join(QStringLiteral(", "));
    }
    [[nodiscard]] QQuickItem* find(const QString& name) const {
        for (auto* item : m_window.findChildren<QQuickItem*>(name))
            if (item->isVisible())
                return item;
        return findBelow(m_window.contentItem(), name);
    }
    [[nodiscard]] bool tap(const QString& name) {
        auto* item = awaited(name);
        if (item == nullptr)
            return false;
        static const QRegularExpression number(QStringLiteral("[0-9]+"));
        ++m_where[QString(name).replace(number, QStringLiteral("#"))];
        if (!inSight(*item)) {
            ++m_count; // the flick that brings it into sight
            ++m_where[QStringLiteral("flicks")];
            item->forceActiveFocus(Qt::TabFocusReason);
            QTest::qWait(100);
        }
        return tapAt(item->mapRectToScene(item->boundingRect()).center().toPoint());
    }
    /// Opens a field of choices, brings the one into sight and taps it: two taps and, where it is far down, a flick.
    [[nodiscard]] bool pick(const QString& name, int row) {
        auto* field = find(name);
        if (field == nullptr || row < 0 || !tap(name))
            return false;
        auto* popup = field->property("popup").value<QObject*>();
        if (!QTest::qWaitFor([&] { return popup->property("opened").toBool(); }, 10'000))
            return false;
        auto* list = popup->property("contentItem").value<QQuickItem*>();
        QQuickItem* option = nullptr;
        if (!QMetaObject::invokeMethod(list, "itemAtIndex", Q_RETURN_ARG(QQuickItem*, option), Q_ARG(int, row)))
            return false;
        const auto inSight = [&] {
            return option != nullptr && option->mapRectToItem(list, option->boundingRect()).bottom() <= list->height();
        };
        if (!inSight()) {
            ++m_count; // the flick
            QMetaObject::invokeMethod(list, "positionViewAtIndex", Q_ARG(int, row), Q_ARG(int, 0));
            QTest::qWait(50);
            QMetaObject::invokeMethod(list, "itemAtIndex", Q_RETURN_ARG(QQuickItem*, option), Q_ARG(int, row));
        }
        if (option == nullptr || !tapAt(option->mapRectToScene(option->boundingRect()).center().toPoint()))
            return false;
        return QTest::qWaitFor([&] { return !popup->property("visible").toBool(); }, 10'000);
    }
    void key(Qt::Key which, Qt::KeyboardModifiers with = Qt::NoModifier) {
        ++m_count;
        QTest::keyClick(&m_window, which, with);
    }
    /// Brings what is out of sight into it.
    void flick() { ++m_count; }
    /// The digits of a figure are not counted. Waits for the keyboard to be where something can be written.
    void type(const QString& figure) {
        const auto isAtText = [this] {
            const auto* at = m_window.activeFocusItem();
            return at != nullptr && at->flags().testFlag(QQuickItem::ItemAcceptsInputMethod);
        };
        static_cast<void>(QTest::qWaitFor(isAtText, 10'000));
        for (const auto character : figure)
            QTest::keyClick(&m_window, character.toLatin1());
    }
    /// Where the keyboard is already nothing is to be tapped.
    [[nodiscard]] bool into(const QString& name) {
        auto* item = find(name);
        return item != nullptr && (item->hasActiveFocus() || tap(name));
    }

    [[nodiscard]] bool tapAt(QPoint at) {
        ++m_count;
        QTest::mouseClick(&m_window, Qt::LeftButton, {}, at);
        QTest::qWait(30);
        return true;
    }

private:
    /// Waits until it is there, can be tapped and stands still; how long that takes is the machine's affair. Null where
    /// it does not come.
    [[nodiscard]] QQuickItem* awaited(const QString& name) const {
        QQuickItem* item = nullptr;
        QRectF before;
        const auto isStill = [&] {
            item = find(name);
            if (item == nullptr || !item->isEnabled())
                return false;
            const auto now = item->mapRectToScene(item->boundingRect());
            return now == std::exchange(before, now);
        };
        return QTest::qWaitFor(
                   [&] {
                       QTest::qWait(20);
                       return isStill();
                   },
                   10'000)
                   ? item
                   : nullptr;
    }
    /// Inside the window, and inside all that cuts off what stands in it.
    [[nodiscard]] bool inSight(const QQuickItem& item) const {
        const auto area = item.mapRectToScene(item.boundingRect()).toRect();
        for (auto* at = item.parentItem(); at != nullptr; at = at->parentItem())
            if (at->clip() && !at->mapRectToScene(at->boundingRect()).toRect().contains(area))
                return false;
        return QRect(0, 0, m_window.width(), m_window.height()).contains(area);
    }
    static QQuickItem* findBelow(QQuickItem* item, const QString& name) {
        if (item->objectName() == name && item->isVisible())
            return item;
        for (auto* child : item->childItems())
            if (auto* found = findBelow(child, name))
                return found;
        return nullptr;
    }

    QQuickWindow& m_window;
    int m_count = 0;
    QMap<QString, int> m_where; ///< by what was tapped; keys and places of the map are the rest
};

}
