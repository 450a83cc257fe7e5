// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The place Record: the journal and its search, open questions, verification, backup.

#include "screen/desk/journal_model.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <memory>

namespace crownring::screen {

class RecordPlace : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::JournalModel* journal READ journal CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* kinds READ kinds CONSTANT FINAL)
    /// Value: the entry that raises it; label: of what; detail: the question.
    Q_PROPERTY(crownring::screen::ChoiceModel* questions READ questions CONSTANT FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed FINAL)
    Q_PROPERTY(bool more READ more NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    /// Whether somebody looks at it.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

    Q_PROPERTY(bool verifying READ verifying NOTIFY verifyChanged FINAL)
    Q_PROPERTY(double verified READ verified NOTIFY verifyChanged FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY verifyChanged FINAL)
    Q_PROPERTY(bool intact READ intact NOTIFY verifyChanged FINAL)

    Q_PROPERTY(bool backingUp READ backingUp NOTIFY backupChanged FINAL)
    Q_PROPERTY(QString backup READ backup NOTIFY backupChanged FINAL)
    Q_PROPERTY(bool backupFailed READ backupFailed NOTIFY backupChanged FINAL)

    /// The entry opened: as it was written.
    Q_PROPERTY(QString entry READ entry NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString entryTitle READ entryTitle NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString entryFacts READ entryFacts NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString entryText READ entryText NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString entryHash READ entryHash NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool entryAmendable READ entryAmendable NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool entryFlight READ entryFlight NOTIFY entryChanged FINAL) ///< a flight, and it counts
    /// Digests of the photographs that it names, as it stands now.
    Q_PROPERTY(QStringList entryPhotographs READ entryPhotographs NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool entryCorrectable READ entryCorrectable NOTIFY entryChanged FINAL)

public:
    using Resident::Resident;
    ~RecordPlace() override;

    [[nodiscard]] JournalModel* journal() { return &m_journal; }
    [[nodiscard]] ChoiceModel* kinds() { return &m_kinds; }
    [[nodiscard]] ChoiceModel* questions() { return &m_questions; }
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString& words);
    [[nodiscard]] QString kind() const { return m_kind; }
    void setKind(const QString& kind);
    [[nodiscard]] bool more() const { return m_more; }
    [[nodiscard]] bool ready() const { return m_ready; }
    [[nodiscard]] bool shown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] QString problem() const { return m_problem; }
    Q_INVOKABLE void showMore();

    [[nodiscard]] bool verifying() const { return m_verifying; }
    [[nodiscard]] double verified() const { return m_verified; }
    [[nodiscard]] QString verdict() const { return m_verdict; }
    [[nodiscard]] bool intact() const { return m_intact; }
    Q_INVOKABLE void verify();
    Q_INVOKABLE void stopVerifying();

    [[nodiscard]] bool backingUp() const { return m_backingUp; }
    [[nodiscard]] QString backup() const { return m_backup; }
    [[nodiscard]] bool backupFailed() const { return m_backupFailed; }
    /// Another record takes the place of this one.
    Q_INVOKABLE void openFile(const QUrl& file);
    Q_INVOKABLE void backUpTo(const QUrl& file);
    /// A name that says the day: crownring-2026-11-25.sqlite
    Q_INVOKABLE [[nodiscard]] QUrl proposedBackup() const;

    Q_INVOKABLE void openEntry(const QString& entry);
    Q_INVOKABLE void closeEntry();
    [[nodiscard]] QString entry() const { return m_entry; }
    [[nodiscard]] QString entryTitle() const { return m_entryTitle; }
    [[nodiscard]] QString entryFacts() const { return m_entryFacts; }
    [[nodiscard]] QString entryText() const { return m_entryText; }
    [[nodiscard]] QString entryHash() const { return m_entryHash; }
    [[nodiscard]] bool entryAmendable() const { return m_entryAmendable; }
    [[nodiscard]] bool entryFlight() const { return m_entryFlight; }
    [[nodiscard]] QStringList entryPhotographs() const { return m_entryPhotographs; }
    [[nodiscard]] bool entryCorrectable() const { return m_entryCorrectable; }

signals:
    void shownChanged();
    void changed();
    void verifyChanged();
    void backupChanged();
    void entryChanged();

private:
    void movedIn() override;
    void look();
    [[nodiscard]] JournalQuery query() const;
    void lookAtQuestions();
    void showKinds();
    void takeEntry(const JournalLine& line);
    void takeNoEntry(const QString& why);

    JournalModel m_journal;
    ChoiceModel m_kinds;
    ChoiceModel m_questions;
    QString m_words;
    QString m_kind;
    QString m_problem;
    int m_turn = 0;
    bool m_more = false;
    bool m_ready = false;
    bool m_shown = true;
    bool m_questionsAsked = true; ///< since something was written last

    std::shared_ptr<std::atomic_bool> m_stop;
    double m_verified = 0;
    bool m_verifying = false;
    bool m_intact = true;
    QString m_verdict;

    bool m_backingUp = false;
    bool m_backupFailed = false;
    QString m_backup;

    QString m_entry;
    QString m_entryTitle;
    QString m_entryFacts;
    QString m_entryText;
    QString m_entryHash;
    bool m_entryAmendable = false;
    bool m_entryCorrectable = false;
    bool m_entryFlight = false;
    QStringList m_entryPhotographs;
};

}
