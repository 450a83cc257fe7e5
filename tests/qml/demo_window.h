// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The program's whole window over a copy of the demo fleet, and what QML complained of meanwhile.

#include "heard_warnings.h"
#include "program/places.h"
#include "screen/demo_house.h"

#include <QDir>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>

#include <memory>

namespace crownring::screen {

class DemoWindow {
public:
    /// Waits until it is shown and the fleet's sheet is there. @return false where that does not come
    [[nodiscard]] bool open(DemoHouse::Filled filled = DemoHouse::Filled::Demo) {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        m_warnings = std::make_unique<HeardWarnings>();
        m_demo = std::make_unique<DemoHouse>(filled);
        m_engine = std::make_unique<QQmlApplicationEngine>();
        if (!loadFrame(*m_engine, m_demo->house))
            return false;
        m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
        return m_window != nullptr && QTest::qWaitForWindowExposed(m_window) && m_demo->ready();
    }
    /// @return what was complained of
    [[nodiscard]] QStringList close() {
        auto heard = HeardWarnings::all();
        m_engine.reset();
        m_demo.reset();
        return heard;
    }
    /// Keeps what is to be seen as a picture, once all stands where it belongs. @return false where it is not kept
    [[nodiscard]] bool photograph(const QString& name) const {
        QTest::qWait(300);
        QDir().mkpath(QStringLiteral(PICTURES));
        return m_window->grabWindow().save(
            QStringLiteral(PICTURES "/%1-%2x%3.png").arg(name).arg(m_window->width()).arg(m_window->height()));
    }
    /// What is to be seen under that name; null where nothing is.
    [[nodiscard]] QQuickItem* find(const QString& name) const { return below(m_window->contentItem(), name); }
    [[nodiscard]] DemoHouse& demo() const { return *m_demo; }
    [[nodiscard]] QQuickWindow* window() const { return m_window; }
    [[nodiscard]] QQmlApplicationEngine& engine() const { return *m_engine; }

private:
    static QQuickItem* below(QQuickItem* item, const QString& name) {
        if (item->objectName() == name && item->isVisible())
            return item;
        const auto children = item->childItems();
        for (auto* child : children)
            if (auto* found = below(child, name))
                return found;
        return nullptr;
    }

    std::unique_ptr<HeardWarnings> m_warnings;
    std::unique_ptr<DemoHouse> m_demo;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;
};

}
