// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Stands between a program and a PostgreSQL server's socket, and can lose the answer to a commit that the server has
/// made.

#include <QtCore/QTemporaryDir>
#include <QtCore/QUrl>
#include <QtCore/QUrlQuery>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <array>
#include <atomic>
#include <stdexcept>
#include <string>
#include <string_view>
#include <thread>

namespace crownring::testing {

class ServerBetween {
public:
    /// @param shared the location of the shared database
    explicit ServerBetween(const std::string& shared) {
        QUrl url(QString::fromStdString(shared));
        QUrlQuery keys(url);
        const auto folder = keys.queryItemValue(QStringLiteral("host"), QUrl::FullyDecoded);
        if (!folder.startsWith(QLatin1Char('/')))
            return;
        m_server = folder.toStdString() + "/.s.PGSQL.5432";
        keys.removeQueryItem(QStringLiteral("host"));
        keys.addQueryItem(QStringLiteral("host"), m_folder.path());
        url.setQuery(keys);
        m_location = url.toString().toStdString();
        m_listening = socketAt(m_folder.path().toStdString() + "/.s.PGSQL.5432", ::bind);
        if (m_listening < 0 || ::listen(m_listening, 5) != 0)
            throw std::runtime_error("no socket");
        m_thread = std::thread([this] { serve(); });
    }
    ~ServerBetween() {
        if (m_listening < 0)
            return;
        m_enough = true;
        m_thread.join();
        ::close(m_listening);
    }
    ServerBetween(const ServerBetween&) = delete;
    ServerBetween& operator=(const ServerBetween&) = delete;

    /// Empty where the server is at no socket of this machine.
    [[nodiscard]] std::string location() const { return m_location; }
    void loseTheNextAnswerToACommit() { m_lose = true; }
    void letNobodyInAfterwards() { m_closeThen = true; }
    [[nodiscard]] int lost() const { return m_lost; }

private:
    template <class Attach>
    static int socketAt(const std::string& path, Attach attach) {
        sockaddr_un address{};
        address.sun_family = AF_UNIX;
        path.copy(address.sun_path, sizeof address.sun_path - 1);
        const int made = ::socket(AF_UNIX, SOCK_STREAM, 0);
        return attach(made, reinterpret_cast<sockaddr*>(&address), sizeof address) == 0 ? made : -1;
    }
    bool waits(int socket) const {
        pollfd one{socket, POLLIN, 0};
        return ::poll(&one, 1, 20) > 0;
    }
    void serve() {
        while (!m_enough)
            if (waits(m_listening)) {
                const int client = ::accept(m_listening, nullptr, nullptr);
                if (!m_closed)
                    carry(client, socketAt(m_server, ::connect));
                else
                    ::close(client);
            }
    }
    /// One connection after the other.
    void carry(int client, int server) {
        std::array<char, 65536> bytes{};
        bool committing = false;
        while (!m_enough) {
            if (waits(client)) {
                const auto got = ::read(client, bytes.data(), bytes.size());
                if (got <= 0)
                    break;
                const std::string_view said(bytes.data(), static_cast<std::size_t>(got));
                committing = m_lose && said.find("COMMIT") != std::string_view::npos;
                if (::write(server, bytes.data(), said.size()) < 0)
                    break;
            }
            if (waits(server)) {
                const auto got = ::read(server, bytes.data(), bytes.size());
                if (got > 0 && committing) {
                    m_lose = false;
                    ++m_lost;
                    m_closed = m_closeThen.load();
                    break;
                }
                if (got <= 0 || ::write(client, bytes.data(), static_cast<std::size_t>(got)) < 0)
                    break;
            }
        }
        ::close(client);
        ::close(server);
    }

    QTemporaryDir m_folder;
    std::string m_server;
    std::string m_location;
    int m_listening = -1;
    std::atomic<bool> m_enough = false, m_lose = false, m_closeThen = false, m_closed = false;
    std::atomic<int> m_lost = 0;
    std::thread m_thread;
};

}
