// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The lists of discrepancies that ground a balloon: what of each still stands, who may approve the return to service,
/// why not yet, and the exact words.

#include "acts/approve_return.h"
#include "screen/returns/signers.h"
#include "screen/signing/own_code.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class ReturnDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Whose lists are shown; empty: none.
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY balloonChanged FINAL)
    /// value: the inspection; label: which list; detail: how much of it stands; number: how many items still stand
    Q_PROPERTY(crownring::screen::ChoiceModel* lists READ lists CONSTANT FINAL)
    /// Of all lists. value: its name in the due list; label: what; detail: item, inspection, whether it is answered;
    /// chosen: it still stands
    Q_PROPERTY(crownring::screen::ChoiceModel* listed READ listed CONSTANT FINAL)
    /// The due list has a list of that balloon, and what is on it is being asked.
    Q_PROPERTY(bool askingLists READ isAskingLists NOTIFY listsChanged FINAL)
    /// Who may approve, and why not yet, is being asked.
    Q_PROPERTY(bool askingPeople READ isAskingPeople NOTIFY changed FINAL)
    /// The inspection whose return is to be approved; empty while none is.
    Q_PROPERTY(QString inspection READ inspection NOTIFY changed FINAL)
    /// value: person; label: person and capacity; detail: licence, or why not
    Q_PROPERTY(crownring::screen::ChoiceModel* people READ people CONSTANT FINAL)
    /// Who approves, and as what: a place among `people`, -1 until somebody is chosen.
    Q_PROPERTY(int signerAt READ signerAt WRITE setSignerAt NOTIFY changed FINAL)
    Q_PROPERTY(QString signer READ signer NOTIFY changed FINAL) ///< the person; empty until then
    /// With which the signer signs.
    Q_PROPERTY(crownring::screen::OwnCode* code READ code CONSTANT FINAL)
    /// label: why not; detail: what would answer it, and the rule
    Q_PROPERTY(crownring::screen::ChoiceModel* refusals READ refusals CONSTANT FINAL)
    /// What is signed by. value: its key at the wording desk; label: which; detail: who confirmed it, or that nobody
    /// did; chosen: somebody did
    Q_PROPERTY(crownring::screen::ChoiceModel* wording READ wording CONSTANT FINAL)
    Q_PROPERTY(bool mayApprove READ mayApprove NOTIFY changed FINAL)
    Q_PROPERTY(QString statement READ statement NOTIFY changed FINAL) ///< what is signed, word for word
    Q_PROPERTY(QString statementSource READ statementSource NOTIFY changed FINAL)
    /// What counts from then on, and from which day.
    Q_PROPERTY(QString accomplished READ accomplished NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution CONSTANT FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool approving READ isApproving NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] QString balloon() const { return m_balloon; }
    void setBalloon(const QString& balloon);
    [[nodiscard]] ChoiceModel* lists() { return &m_lists; }
    [[nodiscard]] ChoiceModel* listed() { return &m_listed; }
    [[nodiscard]] bool isAskingLists() const { return !m_listsKnown && m_expected; }
    [[nodiscard]] bool isAskingPeople() const { return !m_peopleKnown; }
    [[nodiscard]] QString inspection() const { return m_inspection; }
    [[nodiscard]] ChoiceModel* people() { return &m_people; }
    [[nodiscard]] int signerAt() const { return placeOf(m_signer, m_people); }
    void setSignerAt(int at);
    [[nodiscard]] QString signer() const;
    [[nodiscard]] OwnCode* code() { return &m_code; }
    [[nodiscard]] ChoiceModel* refusals() { return &m_refusals; }
    [[nodiscard]] ChoiceModel* wording() { return &m_wording; }
    [[nodiscard]] bool mayApprove() const { return m_mayApprove && m_signer && !m_approving; }
    [[nodiscard]] QString statement() const { return m_statement; }
    [[nodiscard]] QString statementSource() const { return m_statementSource; }
    [[nodiscard]] QString accomplished() const { return m_accomplished; }
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool isApproving() const { return m_approving; }

    /// The item that a row of `listed` is on.
    Q_INVOKABLE QString itemAt(int row) const;
    /// What stands there is a defect, which is rectified; else a requirement, which is done.
    [[nodiscard]] Q_INVOKABLE bool isDefect(int row) const;
    /// Readings answer it, which a visit takes.
    [[nodiscard]] Q_INVOKABLE bool isRead(int row) const;
    /// Of a reason that stands in the way: the item and the row that a visit reads; empty where none answers it so.
    [[nodiscard]] Q_INVOKABLE QStringList readingOfRefusal(int row) const;
    /// Nobody is chosen yet.
    Q_INVOKABLE void begin(const QString& inspection);
    /// Approves what is shown. Refused while anything stands in the way.
    Q_INVOKABLE void approve();

signals:
    void balloonChanged();
    void changed();
    void listsChanged();
    void approvedNow();

private:
    void movedIn() override;
    void look();
    void expect();
    void show(const std::vector<Discrepancies>& lists);
    [[nodiscard]] Approving asApproved() const;
    void draft();
    void takeDraft(const ReturnDraft& draft);

    QString m_balloon;
    ChoiceModel m_lists;
    ChoiceModel m_listed;
    std::vector<ItemId> m_items;         ///< of the rows of `listed`
    std::vector<bool> m_read;            ///< the same: readings answer them
    std::vector<QStringList> m_readings; ///< of the rows of `refusals`
    QString m_inspection;
    ChoiceModel m_people;
    ChoiceModel m_refusals;
    ChoiceModel m_wording;
    std::optional<Signer> m_signer;
    OwnCode m_code;
    std::optional<TimeOfDay> m_closedAt; ///< where the list was signed on the day asked
    QString m_statement;
    QString m_statementSource;
    QString m_accomplished;
    QString m_problem;
    bool m_expected = false;   ///< the due list has one
    bool m_listsKnown = true;  ///< of that balloon
    bool m_peopleKnown = true; ///< of that inspection
    bool m_european = true;
    int m_turn = 0;
    int m_draftTurn = 0;
    bool m_mayApprove = false;
    bool m_approving = false;
};

}
