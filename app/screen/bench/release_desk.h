// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The release: who signs, as what, on which data; why not yet; the exact words; and after signing, what is due next.

#include "acts/sign.h"
#include "screen/bench/inspection_desk.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"
#include "screen/returns/release_bounds.h"
#include "screen/returns/signers.h"
#include "screen/signing/own_code.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class ReleaseDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::InspectionDesk* desk READ desk WRITE setDesk NOTIFY changed FINAL REQUIRED)
    /// value: person; label: person and capacity; detail: licence, or why not
    Q_PROPERTY(crownring::screen::ChoiceModel* people READ people CONSTANT FINAL)
    /// Who signs, and as what: a place among `people`, -1 until somebody is chosen.
    Q_PROPERTY(int signerAt READ signerAt WRITE setSignerAt NOTIFY changed FINAL)
    Q_PROPERTY(QString signer READ signer NOTIFY changed FINAL) ///< the person; empty until then
    /// With which the signer signs; asked for unless the inspection is abandoned.
    Q_PROPERTY(crownring::screen::OwnCode* code READ code CONSTANT FINAL)
    /// Of what was signed: with what code, or that it was with none.
    Q_PROPERTY(QString provenBy READ provenBy NOTIFY changed FINAL)
    /// 0 release, 1 list of discrepancies, 2 abandon, 3 release after incomplete maintenance
    Q_PROPERTY(int outcome READ outcome WRITE setOutcome NOTIFY changed FINAL)
    Q_PROPERTY(QString manuals READ manuals WRITE setManuals NOTIFY changed FINAL) ///< one a line
    Q_PROPERTY(QString limitations READ limitations WRITE setLimitations NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::ReleaseBounds* bounds READ bounds CONSTANT FINAL) ///< with 3
    /// With 3: lines that need not be done, and may be said to be outstanding. value: its id; chosen: it is
    Q_PROPERTY(crownring::screen::ChoiceModel* optional READ optional CONSTANT FINAL)
    /// Such a release is one of the visit's rules.
    /// An inspection may end with a list of discrepancies, other work may not.
    Q_PROPERTY(bool mayBeListed READ mayBeListed NOTIFY changed FINAL)
    Q_PROPERTY(bool mayBeIncomplete READ mayBeIncomplete NOTIFY changed FINAL)
    /// value: the line's id where it is about one; label: why not; detail: what would answer it, and the rule
    Q_PROPERTY(crownring::screen::ChoiceModel* refusals READ refusals CONSTANT FINAL)
    Q_PROPERTY(bool maySign READ maySign NOTIFY changed FINAL)
    /// With 3: why no check flight can rest on it, a line each; empty where one can. It may be signed all the same.
    Q_PROPERTY(QString noCheckFlight READ noCheckFlight NOTIFY changed FINAL)
    Q_PROPERTY(QString statement READ statement NOTIFY changed FINAL) ///< what is signed, word for word
    Q_PROPERTY(QString statementSource READ statementSource NOTIFY changed FINAL)
    /// What is signed by. value: its key at the wording desk; label: which; detail: who confirmed it, or that nobody
    /// did; chosen: somebody did
    Q_PROPERTY(crownring::screen::ChoiceModel* wording READ wording CONSTANT FINAL)
    /// label: heading; detail: its paragraphs
    Q_PROPERTY(crownring::screen::ChoiceModel* sections READ sections CONSTANT FINAL)
    /// After the close: label: what is due next; detail: item, when
    Q_PROPERTY(crownring::screen::ChoiceModel* dueNext READ dueNext CONSTANT FINAL)
    /// For owner's visits: what the rule forbids; label: the rule's clause; detail: its words
    Q_PROPERTY(crownring::screen::ChoiceModel* ownerRules READ ownerRules CONSTANT FINAL)
    Q_PROPERTY(QString caution READ cautionText CONSTANT FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// From the tap until the desk shows it as signed.
    Q_PROPERTY(bool signing READ signing NOTIFY changed FINAL)
    /// A name for the papers: balloon or items, visit, day.
    Q_PROPERTY(QUrl proposedPaper READ proposedPaper NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] InspectionDesk* desk() const { return m_desk; }
    void setDesk(InspectionDesk* desk);
    [[nodiscard]] ChoiceModel* people() { return &m_people; }
    [[nodiscard]] int signerAt() const { return placeOf(m_signer, m_people); }
    void setSignerAt(int at);
    [[nodiscard]] QString signer() const;
    void setSigner(const std::optional<Signer>& signer);
    [[nodiscard]] OwnCode* code() { return &m_code; }
    [[nodiscard]] QString provenBy() const;
    [[nodiscard]] int outcome() const { return m_outcome; }
    void setOutcome(int outcome);
    [[nodiscard]] QString manuals() const { return m_manuals; }
    void setManuals(const QString& manuals);
    [[nodiscard]] QString limitations() const { return m_limitations; }
    void setLimitations(const QString& limitations);
    [[nodiscard]] ReleaseBounds* bounds() { return &m_bounds; }
    [[nodiscard]] ChoiceModel* optional() { return &m_optional; }
    [[nodiscard]] bool mayBeListed() const;
    [[nodiscard]] bool mayBeIncomplete() const;
    Q_INVOKABLE void toggleOutstanding(const QString& line);
    [[nodiscard]] ChoiceModel* refusals() { return &m_refusals; }
    [[nodiscard]] bool maySign() const {
        return m_maySign && !m_signing && (m_outcome != 3 || m_bounds.problem().isEmpty());
    }
    [[nodiscard]] QString noCheckFlight() const { return m_noCheckFlight; }
    [[nodiscard]] QString statement() const { return m_statement; }
    [[nodiscard]] QString statementSource() const { return m_statementSource; }
    [[nodiscard]] ChoiceModel* wording() { return &m_wording; }
    [[nodiscard]] ChoiceModel* sections() { return &m_sections; }
    [[nodiscard]] ChoiceModel* dueNext() { return &m_dueNext; }
    [[nodiscard]] ChoiceModel* ownerRules() { return &m_ownerRules; }
    [[nodiscard]] QString cautionText() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool signing() const { return m_signing; }

    [[nodiscard]] QUrl proposedPaper() const;
    /// Signs what is shown. Refused while anything stands in the way.
    Q_INVOKABLE void sign();
    /// What answers a reason, and can be gone to: "line", "reading", "equipment" of one, "work" that is described, its
    /// "grade", to "describe" it, the "defects"; empty: nothing.
    [[nodiscard]] Q_INVOKABLE QString wayOfRefusal(int row) const;
    /// The item that a reason is about; empty where it is about none.
    [[nodiscard]] Q_INVOKABLE QString itemOfRefusal(int row) const;
    /// The same of the reading or the work.
    [[nodiscard]] Q_INVOKABLE QString entryOfRefusal(int row) const;
    /// Writes the papers of the inspection to a PDF. @param letter the American size
    Q_INVOKABLE void print(const QUrl& file, bool letter);

signals:
    void changed();
    void signedNow();

private:
    void movedIn() override { m_code.moveInto(house()); }
    [[nodiscard]] Signing asSigned() const;
    [[nodiscard]] const Refusal* refusalAt(int row) const;
    void refresh();
    void clear();
    void takeDraft(const ReleaseDraft& draft);
    void showPeople();
    void showOptional();
    void proposeSigner();
    void showDueNext();

    InspectionDesk* m_desk = nullptr;
    ChoiceModel m_people;
    ReleaseBounds m_bounds;
    ChoiceModel m_optional;
    ChoiceModel m_refusals;
    std::vector<Refusal> m_drafted; ///< the same
    ChoiceModel m_wording;
    ChoiceModel m_sections;
    ChoiceModel m_dueNext;
    ChoiceModel m_ownerRules;
    std::optional<Signer> m_signer;
    OwnCode m_code;
    QString m_manuals;
    QString m_proposedManuals;
    QString m_limitations;
    QStringList m_outstanding; ///< of `optional` those that are
    QString m_statement;
    QString m_statementSource;
    QString m_noCheckFlight;
    QString m_problem;
    QString m_shownFor; ///< the inspection that manuals and signer were proposed for
    int m_outcome = 0;
    int m_turn = 0;
    bool m_maySign = false;
    bool m_signing = false;
};

}
