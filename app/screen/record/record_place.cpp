// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/record/record_place.h"

#include "answers/due.h"
#include "record/chain/recorded.h"
#include "record/entry_json.h"
#include "screen/desk/day.h"
#include "screen/desk/fleet.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "screen/form/form_plan.h"
#include "words/border.h"
#include "words/question_text.h"
#include "words/sentence.h"
#include "words/sentences.h"
#include "words/words.h"
#include "writing/target.h"

#include <QDir>
#include <QFileInfo>
#include <QPointer>
#include <QStandardPaths>
#include <QStringList>

#include <memory>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {
constexpr int linesAtOnce = 100;

Choice choiceOf(const Question& question, const Titles& titles) {
    return {
        inward(question.stamp.id.text()),
        RecordPlace::tr("%1 · %2 · %3")
            .arg(inward(question.stamp.at.on().iso()), inward(question.subject), Sentences::question(question.kind)),
        words::questionText(question, titles),
        -1,
        -1,
        false,
        QVariant::fromValue(question)};
}
}

void RecordPlace::movedIn() {
    connect(&house().desk, &RecordDesk::changed, this, &RecordPlace::look);
    connect(&house().desk, &RecordDesk::opening, this, &RecordPlace::closeEntry);
    showKinds();
    look();
}

RecordPlace::~RecordPlace() { stopVerifying(); }

void RecordPlace::setWords(const QString& words) {
    if (words == m_words)
        return;
    m_words = words;
    look();
}

void RecordPlace::setKind(const QString& kind) {
    if (kind == m_kind)
        return;
    m_kind = kind;
    showKinds();
    look();
}

void RecordPlace::showKinds() {
    std::vector<Choice> choices{{{}, tr("every kind"), {}, -1, -1, m_kind.isEmpty()}};
    for (const auto name : kindNames())
        choices.push_back({inward(name), Sentences::kind(name), {}, -1, -1, inward(name) == m_kind});
    m_kinds.show(std::move(choices));
}

JournalQuery RecordPlace::query() const {
    return {.text = outward(m_words),
            .kind = m_kind.isEmpty() ? std::nullopt : std::optional(outward(m_kind)),
            .before = {},
            .limit = linesAtOnce};
}

void RecordPlace::look() {
    emit changed();
    const auto turn = ++m_turn;
    hear(house().desk.ask([query = query()](Record& record) { return record.lines(query); }), this,
         [this, turn](const Result<std::vector<JournalLine>>& lines) {
             if (turn != m_turn)
                 return;
             m_problem = lines ? QString() : Words::problem(lines.error());
             m_journal.show(lines ? *lines : std::vector<JournalLine>{}, house().fleet.titles());
             m_more = lines && lines->size() == linesAtOnce;
             m_ready = true;
             emit changed();
         });
    m_questionsAsked = false;
    lookAtQuestions();
    if (!m_entry.isEmpty())
        openEntry(m_entry);
}

void RecordPlace::showMore() {
    const auto oldest = m_journal.oldest();
    if (!m_more || !oldest)
        return;
    m_more = false;
    auto next = query();
    next.before = *oldest;
    hear(house().desk.ask([next](Record& record) { return record.lines(next); }), this,
         [this, turn = m_turn](const Result<std::vector<JournalLine>>& lines) {
             if (turn != m_turn || !lines)
                 return;
             m_journal.append(*lines);
             m_more = lines->size() == linesAtOnce;
             emit changed();
         });
}

void RecordPlace::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    emit shownChanged();
    lookAtQuestions();
}

/// When somebody looks: all that was ever stated is read for it.
void RecordPlace::lookAtQuestions() {
    if (!m_shown || std::exchange(m_questionsAsked, true))
        return;
    using Asked = std::shared_ptr<std::vector<Choice>>;
    // A large fleet has tens of thousands: their sentences are made before they come to the screen's thread.
    hear(house().desk.ask([on = house().day.date()](Record& record) {
        const auto asked = std::make_shared<std::vector<Choice>>();
        const auto obligations = obligationsOn(record, on);
        const auto titles = obligations ? titlesOf(obligations->adoptions()) : Titles();
        if (const auto questions = record.questions())
            for (const auto& question : *questions)
                asked->push_back(choiceOf(question, titles));
        return asked;
    }),
         this, [this](const Asked& asked) { m_questions.show(std::move(*asked)); });
}

void RecordPlace::verify() {
    if (m_verifying)
        return;
    m_stop = std::make_shared<std::atomic_bool>(false);
    m_verifying = true;
    m_verified = 0;
    m_verdict.clear();
    emit verifyChanged();
    auto progress = [stop = m_stop, place = QPointer<RecordPlace>(this), desk = &house().desk](double share) {
        // The pointer is only looked at on the screen's own thread.
        QMetaObject::invokeMethod(desk, [place, share] {
            if (place && place->m_verifying) {
                place->m_verified = share;
                emit place->verifyChanged();
            }
        });
        return !stop->load();
    };
    hear(house().desk.ask([progress](Record& record) { return record.verify(progress); }), this,
         [this, stop = m_stop](const Result<Verdict>& verdict) {
             m_verifying = false;
             m_intact = verdict && verdict->intact;
             if (stop->load())
                 m_verdict = tr("Stopped before the end. Nothing is known of the rest.");
             else if (!verdict)
                 m_verdict = Words::problem(verdict.error());
             else if (verdict->intact)
                 m_verdict =
                     tr("All %n entries are as they were written.", nullptr, static_cast<int>(verdict->entries));
             else if (verdict->rebuildMends)
                 m_verdict = tr("All %n entries are as they were written, but what was computed from them is not: %1.",
                                nullptr, static_cast<int>(verdict->entries))
                                 .arg(words::said(*verdict->reason));
             else
                 m_verdict =
                     tr("Entry %1 is not what was written: %2. Keep this file, and restore a backup from before.")
                         .arg(verdict->firstBad ? inward(verdict->firstBad->text()) : tr("unknown"),
                              verdict->reason ? words::said(*verdict->reason) : QString());
             emit verifyChanged();
         });
}

void RecordPlace::stopVerifying() {
    if (m_stop)
        m_stop->store(true);
}

QUrl RecordPlace::proposedBackup() const {
    const QFileInfo documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    const auto folder = documents.isDir() ? documents.filePath() : QDir::homePath();
    return QUrl::fromLocalFile(folder + QStringLiteral("/crownring-%1.sqlite").arg(house().day.today()));
}

void RecordPlace::openFile(const QUrl& file) {
    house().desk.open(file.isLocalFile() ? file.toLocalFile() : file.toString());
}

void RecordPlace::backUpTo(const QUrl& file) {
    const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    if (const auto why = whyNotWritten(outward(path), Replace::Never)) {
        m_backupFailed = true;
        m_backup = Words::problem(*why);
        emit backupChanged();
        return;
    }
    m_backingUp = true;
    m_backup = tr("Writing and checking the copy …");
    m_backupFailed = false;
    emit backupChanged();
    hear(house().desk.ask([to = outward(path)](Record& record) { return record.backUpTo(to); }), this,
         [this, path](const Result<void>& answer) {
             m_backingUp = false;
             m_backupFailed = !answer;
             m_backup = answer ? tr("Copied and checked: %1").arg(path) : Words::problem(answer.error());
             emit backupChanged();
         });
}

void RecordPlace::openEntry(const QString& entry) {
    m_entry = entry;
    hear(house().desk.ask([id = EntryId(outward(m_entry))](Record& record) { return record.line(id); }), this,
         [this](const Result<std::optional<JournalLine>>& line) {
             if (line && *line && inward((*line)->entry.id.text()) == m_entry)
                 takeEntry(**line);
             else if (!line)
                 takeNoEntry(Words::problem(line.error()));
         });
}

void RecordPlace::takeNoEntry(const QString& why) {
    m_entryTitle = why;
    m_entryFacts.clear();
    m_entryText.clear();
    m_entryHash.clear();
    m_entryAmendable = m_entryCorrectable = m_entryFlight = false;
    m_entryPhotographs.clear();
    emit entryChanged();
}

void RecordPlace::takeEntry(const JournalLine& line) {
    m_entryTitle = unbroken(Sentences::of(line, *house().fleet.titles()));
    const auto recorded = recordedFrom(line.recordedAt);
    QStringList facts{tr("number %1").arg(line.number), tr("recorded %1").arg(inward(recorded.at)),
                      tr("writer %1").arg(inward(line.writer.text()))};
    if (!recorded.clockSaid.empty())
        facts += tr("the machine's clock had been set back: it said %1").arg(inward(recorded.clockSaid));
    if (!line.entry.by.empty())
        facts += tr("by %1").arg(inward(line.entry.by));
    if (line.voided)
        facts += tr("voided: it no longer counts");
    else if (line.current)
        facts += tr("corrected: below is what was written at first");
    m_entryFacts = facts.join(QStringLiteral(" · "));
    m_entryText = inward(line.unread ? line.unread->text : toJson(line.entry).dump(2));
    m_entryHash = inward(hex(line.hash));
    m_entryPhotographs = line.unread ? QStringList() : JournalModel::photographsOf(nowOf(line));
    m_entryFlight = JournalModel::isLiveFlight(line);
    m_entryAmendable = !line.voided;
    m_entryCorrectable =
        !line.voided && !line.unread && !amends(line.entry) && FormPlan::known(kindName(line.entry.body));
    emit entryChanged();
}

void RecordPlace::closeEntry() {
    m_entry.clear();
    m_entryTitle.clear();
    emit entryChanged();
}

}
