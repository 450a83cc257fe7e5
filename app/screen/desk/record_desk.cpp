// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/record_desk.h"

#include "acts/post.h"
#include "problem/faults/store_fault.h"
#include "screen/desk/house.h"
#include "screen/desk/proof/acknowledgements.h"
#include "screen/desk/proof/prover.h"
#include "words/border.h"
#include "words/problem_words.h"
#include "words/words.h"

#include <QDir>
#include <QFileInfo>
#include <QTimer>

#include <chrono>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

/// What another program writes is to be on the screen within two seconds.
constexpr std::chrono::milliseconds betweenLooks{400};
/// What is altered round the program is noticed so long after it, and the time of a proof.
constexpr std::chrono::milliseconds betweenProofs{5000};

/// What stands in the folder for what is temporary is gone soon, and nobody asks for it.
bool isKept(const QString& location) {
    return !QFileInfo(location).absoluteFilePath().startsWith(QDir::tempPath() + QLatin1Char('/'));
}

}

RecordDesk::RecordDesk(QObject* parent)
    : QObject(parent), m_worker(new QObject), m_looking(new QTimer(m_worker)), m_proving(new QTimer(m_worker)) {
    m_thread.setObjectName(QStringLiteral("storage"));
    m_prover = new Prover(
        [this](const Verdict& verdict) {
            if (m_record) {
                m_record->heed(verdict);
                tellDamage();
            }
        },
        m_worker);
    m_looking->setInterval(betweenLooks);
    connect(m_looking, &QTimer::timeout, m_worker, [this] { lookForOthers(); });
    m_proving->setInterval(betweenProofs);
    connect(m_proving, &QTimer::timeout, m_worker, [this] { lookForProof(); });
    for (auto* timer : {m_looking, m_proving})
        connect(&m_thread, &QThread::started, timer, qOverload<>(&QTimer::start));
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
}

RecordDesk::~RecordDesk() {
    hand([this] {
        m_prover->stop();
        m_record.reset();
    });
    QMetaObject::invokeMethod(
        m_worker, [this] { m_thread.quit(); }, Qt::QueuedConnection);
    m_thread.wait();
}

RecordDesk* RecordDesk::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).desk); }

void RecordDesk::hand(std::function<void()> work) {
    QMetaObject::invokeMethod(m_worker, std::move(work), Qt::QueuedConnection);
}

void RecordDesk::lookForOthers() {
    // Where the record cannot be asked now, who asks it for something says so.
    if (m_record && m_record->othersWrote().value_or(false))
        QMetaObject::invokeMethod(this, [this] { emit changed(); });
}

void RecordDesk::lookForProof() {
    if (m_record && m_provesWhole)
        m_prover->look(*m_record, outward(m_openedAt));
}

void RecordDesk::open(const QString& location, const QByteArray& firstEntries) {
    m_location = location;
    m_brought = !firstEntries.isEmpty();
    m_setBack.clear();
    emit opening();
    setState(State::Opening);
    hand([this, to = outward(location), firstEntries] { openThere(to, firstEntries); });
}

void RecordDesk::askDemo() {
    m_demo = true;
    emit demoAsked();
}

void RecordDesk::askOwn() {
    m_demo = false;
    emit ownAsked();
}

void RecordDesk::openThere(const std::string& location, const QByteArray& firstEntries) {
    const auto tell = [this](State state, const QString& trouble = {}, bool readOnly = false) {
        QMetaObject::invokeMethod(this, [this, state, trouble, readOnly] {
            m_readOnly = readOnly;
            m_damaged = false;
            setState(state, trouble);
        });
    };
    m_prover->stop();
    auto record = openRecord(location, OpenMode::OrCreate);
    if (!record)
        return tell(State::Failed, Words::problem(record.error()));
    if (!firstEntries.isEmpty()) {
        const auto lines = (*record)->lines({.text = {}, .kind = {}, .before = {}, .limit = 1});
        if (!lines)
            return tell(State::Failed, Words::problem(lines.error()));
        if (lines->empty()) {
            tell(State::Filling);
            const std::string_view text(firstEntries.constData(), static_cast<std::size_t>(firstEntries.size()));
            const auto posted = postText(**record, **record, text, "fleet.jsonl");
            if (!posted)
                return tell(State::Failed, Words::problems(posted.error()));
        }
    }
    const auto before = left();
    m_record = std::move(*record);
    m_damageTold = false;
    m_acknowledged.reset();
    m_openedAt = inward(location);
    tellSetBack();
    tellLeft(before);
    static_cast<void>(m_record->othersWrote()); // from here on
    const auto readOnly = m_record->readOnlyReason();
    tell(State::Open, readOnly ? words::message(*readOnly) : QString(), readOnly.has_value());
    lookForProof();
}

void RecordDesk::keepAcknowledged() {
    const auto end = m_record->lastAcknowledged();
    if (!end || end == m_acknowledged)
        return;
    m_acknowledged = end;
    if (isKept(m_openedAt))
        screen::keepAcknowledged(m_openedAt, *end);
}

void RecordDesk::tellSetBack() {
    const auto expected = acknowledgedAt(m_openedAt);
    const auto missing = m_record->missing(expected);
    if (missing && missing->empty())
        return;
    const auto said = missing
                          ? tr("Entry %1 of %2 was written here once and is not in this record: it is an older copy, "
                               "or its end was cut off.")
                                .arg(missing->front().sequence)
                                .arg(inward(missing->front().writer.text()))
                          : Words::problem(missing.error());
    saySetBack(said);
}

void RecordDesk::saySetBack(const QString& said) {
    QMetaObject::invokeMethod(this, [this, said] {
        m_setBack = said;
        emit stateChanged();
    });
}

namespace {

std::optional<EntryId> firstOf(Record& record) {
    const auto lines = record.lines({.text = {}, .kind = {}, .before = 2, .limit = 1});
    return lines && !lines->empty() ? std::optional(lines->front().entry.id) : std::nullopt;
}

/// Of all writers.
std::uint64_t entriesTo(const std::vector<Acknowledged>& ends) {
    std::uint64_t entries = 0;
    for (const auto& end : ends)
        entries += end.sequence;
    return entries;
}

}

RecordDesk::Left RecordDesk::left() {
    const auto why = m_record ? m_record->readOnlyReason() : std::nullopt;
    if (!why || !isDamage(why->fault))
        return {};
    return {firstOf(*m_record), m_record->ends().value_or(std::vector<Acknowledged>{})};
}

void RecordDesk::tellLeft(const Left& left) {
    const auto missing = m_record->missing(left.ends);
    const auto here = m_record->ends();
    if (!left.first || left.first != firstOf(*m_record) || !missing || missing->empty() || !here)
        return;
    const auto before = entriesTo(left.ends), now = entriesTo(*here);
    saySetBack(before > now
                   ? tr("This is an older copy: the record that was left has %1 entries, this one %2. What the "
                        "later ones said, defects and visits among them, is not known here: enter it again.")
                         .arg(before)
                         .arg(now)
                   : tr("This is another copy: it does not hold all that the record that was left held."));
}

void RecordDesk::goOnSetBack() {
    m_setBack.clear();
    forgetAcknowledged(m_location);
    emit stateChanged();
}

void RecordDesk::tellDamage() {
    const auto why = m_record->readOnlyReason();
    const bool damaged = why && isDamage(why->fault);
    if (damaged == std::exchange(m_damageTold, damaged))
        return;
    QMetaObject::invokeMethod(this, [this, damaged, trouble = damaged ? Words::problem(*why) : QString()] {
        m_damaged = damaged;
        m_readOnly = damaged;
        m_trouble = trouble;
        emit stateChanged();
        if (!damaged)
            emit changed();
    });
}

void RecordDesk::setState(State state, const QString& trouble) {
    m_state = state;
    m_trouble = trouble;
    emit stateChanged();
    if (state == State::Open)
        emit changed();
}

}
