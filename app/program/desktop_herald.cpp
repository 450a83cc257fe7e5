// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/desktop_herald.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace crownring {

namespace {

const QString service = QStringLiteral("org.freedesktop.Notifications");
const QString path = QStringLiteral("/org/freedesktop/Notifications");

/// Calls `then` with the reply, or with what went wrong instead.
template <class Then>
void call(const QString& method, const QVariantList& arguments, QObject* owner, Then then) {
    auto message = QDBusMessage::createMethodCall(service, path, service, method);
    message.setArguments(arguments);
    auto* watcher = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(message), owner);
    QObject::connect(watcher, &QDBusPendingCallWatcher::finished, owner, [watcher, then = std::move(then)] {
        watcher->deleteLater();
        then(*watcher);
    });
}

}

void DesktopHerald::say(const screen::Tiding& tiding, std::function<void(bool)> said, std::function<void()> followed) {
    auto bus = QDBusConnection::sessionBus();
    if (!bus.isConnected())
        return said(false);
    if (!m_followed)
        bus.connect(service, path, service, QStringLiteral("ActionInvoked"), this, SLOT(follow(uint, QString)));
    m_followed = std::move(followed);
    // Where a service reads markup, a name with an ampersand is written otherwise.
    call(QStringLiteral("GetCapabilities"), {}, this,
         [this, tiding, said = std::move(said)](const QDBusPendingReply<QStringList>& reply) {
             if (reply.isError())
                 return said(false);
             notify(tiding, reply.value().contains(QStringLiteral("body-markup")), said);
         });
}

void DesktopHerald::notify(const screen::Tiding& tiding, bool markup, std::function<void(bool)> said) {
    constexpr int asTheServiceLikes = -1;
    const auto text = markup ? tiding.text.toHtmlEscaped() : tiding.text;
    call(QStringLiteral("Notify"),
         {QStringLiteral("Crownring"), m_number, QString(), tiding.title, text,
          QStringList{QStringLiteral("default"), tr("What comes next")}, QVariantMap(), asTheServiceLikes},
         this, [this, said = std::move(said)](const QDBusPendingReply<uint>& reply) {
             if (!reply.isError())
                 m_number = reply.value();
             said(!reply.isError());
         });
}

void DesktopHerald::follow(uint number, const QString&) {
    if (number == m_number && m_followed)
        m_followed();
}

}
