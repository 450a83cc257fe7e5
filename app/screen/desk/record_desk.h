// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The one thread on which the record is read and written. The screen hands questions over and gets plain values back.
///
///     hear(desk->ask([on](Record& record) { return due(record, {}, on); }), this, [this](auto answer) { … });

#include "store/record_file.h"

#include <QFuture>
#include <QFutureWatcher>
#include <QObject>
#include <QPromise>
#include <QThread>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <functional>
#include <memory>
#include <vector>

class QTimer;
class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Prover;

/// Calls `then` with the result on the owner's thread, unless the owner is gone or the question could not be asked.
template <class Answer, class Then>
void hear(QFuture<Answer> future, QObject* owner, Then then) {
    auto* watcher = new QFutureWatcher<Answer>(owner);
    QObject::connect(watcher, &QFutureWatcherBase::finished, owner, [watcher, then = std::move(then)]() mutable {
        watcher->deleteLater();
        if (watcher->future().resultCount() > 0)
            then(watcher->result());
    });
    watcher->setFuture(future);
}

class RecordDesk : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(Desk)
    QML_SINGLETON
    Q_PROPERTY(State state READ state NOTIFY stateChanged FINAL)
    Q_PROPERTY(bool open READ isOpen NOTIFY stateChanged FINAL)
    Q_PROPERTY(QString location READ location NOTIFY stateChanged FINAL)
    /// Why the record cannot be opened, or why it may only be read.
    Q_PROPERTY(QString trouble READ trouble NOTIFY stateChanged FINAL)
    Q_PROPERTY(bool readOnly READ readOnly NOTIFY stateChanged FINAL)
    /// Something in it is not what was written there: nothing can be said from it, and it may only be read.
    Q_PROPERTY(bool damaged READ isDamaged NOTIFY stateChanged FINAL)
    /// Not empty where what this program was told to be written once is no longer in the record: it is an older copy,
    /// or its end was cut off.
    Q_PROPERTY(QString setBack READ setBack NOTIFY stateChanged FINAL)
    /// The demo fleet was asked for on the screen: the record that was open before waits.
    Q_PROPERTY(bool demo READ isDemo NOTIFY stateChanged FINAL)

public:
    enum class State { Waiting, Opening, Filling, Open, Failed };
    Q_ENUM(State)

    /// Takes a parent, be it none: QML would make a singleton of its own of what can be made without arguments.
    explicit RecordDesk(QObject* parent);
    /// Waits until the work under way is done.
    ~RecordDesk() override;
    static RecordDesk* create(QQmlEngine*, QJSEngine*);

    /// Opens (and makes, if need be) the record. A record that was made now is filled with `firstEntries`, one JSON
    /// object a line; an empty text leaves it empty.
    void open(const QString& location, const QByteArray& firstEntries = {});
    /// The program opens a record with the demo fleet, apart from the user's own.
    Q_INVOKABLE void askDemo();
    Q_INVOKABLE void askOwn();
    /// Whether what is opened from now on is proven as a whole beside its use; else each answer proves what it reads.
    void proveWhole(bool asked) { m_provesWhole = asked; }
    /// Somebody said that it is meant to be set back.
    Q_INVOKABLE void goOnSetBack();

    /// Runs `function(Record&)` on the storage thread, after all that was asked before. The future ends without a
    /// result when there is no record.
    template <class Function>
    [[nodiscard]] auto ask(Function function) -> QFuture<std::invoke_result_t<Function, Record&>>;

    /// Said by whoever has written: everything shown is asked anew.
    void written() { emit changed(); }

    [[nodiscard]] State state() const { return m_state; }
    [[nodiscard]] bool isOpen() const { return m_state == State::Open; }
    [[nodiscard]] QString location() const { return m_location; }
    [[nodiscard]] QString trouble() const { return m_trouble; }
    [[nodiscard]] bool readOnly() const { return m_readOnly; }
    [[nodiscard]] bool isDamaged() const { return m_damaged; }
    [[nodiscard]] QString setBack() const { return m_setBack; }
    [[nodiscard]] bool isDemo() const { return m_demo; }
    /// It was filled with what the program brings: nothing in it is the user's own.
    [[nodiscard]] bool isBrought() const { return m_brought; }

signals:
    void stateChanged();
    /// Another record takes the place of what was open: what is shown of that goes.
    void opening();
    void demoAsked();
    void ownAsked();
    /// The record was opened or written to, here or by another program.
    void changed();

private:
    void hand(std::function<void()> work);
    /// On the storage thread: whether another program has written.
    void lookForOthers();
    void lookForProof();
    void setState(State state, const QString& trouble = {});
    void openThere(const std::string& location, const QByteArray& firstEntries);
    /// Tells the screen when the record was found damaged, or is so no more.
    void tellDamage();
    /// Keeps outside the record what it acknowledged.
    void keepAcknowledged();
    /// Looks whether all that was acknowledged once is there.
    void tellSetBack();
    void saySetBack(const QString& said);
    /// What a record that was not intact held when another was opened in its place.
    struct Left {
        std::optional<EntryId> first;
        std::vector<Acknowledged> ends;
    };
    [[nodiscard]] Left left();
    /// Looks whether that is here, where this is a copy of it.
    void tellLeft(const Left& left);

    QThread m_thread;
    QObject* m_worker;                ///< lives on the thread
    QTimer* m_looking;                ///< its
    QTimer* m_proving;                ///< its
    Prover* m_prover;                 ///< its
    std::unique_ptr<Record> m_record; ///< touched on the thread only
    State m_state = State::Waiting;
    QString m_location;
    QString m_trouble;
    QString m_setBack;
    QString m_openedAt; ///< touched on the thread only, as the two after it
    bool m_damageTold = false;
    std::optional<Acknowledged> m_acknowledged; ///< and kept
    bool m_readOnly = false;
    bool m_damaged = false;
    bool m_demo = false;
    bool m_brought = false;
    std::atomic_bool m_provesWhole = true;
};

template <class Function>
auto RecordDesk::ask(Function function) -> QFuture<std::invoke_result_t<Function, Record&>> {
    auto promise = std::make_shared<QPromise<std::invoke_result_t<Function, Record&>>>();
    auto future = promise->future();
    promise->start();
    // A promise that is let go of unfinished cancels its future.
    hand([this, promise = std::move(promise), function = std::move(function)]() mutable {
        if (m_record) {
            const auto state = m_record->snapshot(); // what is asked together fits together; what fails says so itself
            promise->addResult(function(*m_record));
            promise->finish();
            tellDamage();
            keepAcknowledged();
        }
        promise.reset();
    });
    return future;
}

}
