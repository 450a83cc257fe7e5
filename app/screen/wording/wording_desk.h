// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The wording that is signed: what is adopted and by whom, who confirmed it against which rule, and the one place
/// where it is read, adopted and confirmed.

#include "answers/wording/wording_lines.h"
#include "screen/desk/record_desk.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>

namespace crownring::screen {

class WordingDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// value: its key; label: what it is; detail: who adopted and who confirmed it, or that nobody did; number: 1 where
    /// it is confirmed, else 0
    Q_PROPERTY(crownring::screen::ChoiceModel* texts READ texts CONSTANT FINAL)
    Q_PROPERTY(QString key READ key NOTIFY changed FINAL) ///< of the one that is shown; empty: none
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString body READ body NOTIFY changed FINAL) ///< word for word; of a checklist its lines
    Q_PROPERTY(QString source READ source NOTIFY changed FINAL)
    /// That nobody has adopted or confirmed it, in plain words; empty where it may be signed by.
    Q_PROPERTY(QString lacking READ lacking NOTIFY changed FINAL)
    Q_PROPERTY(QString adopted READ adopted NOTIFY changed FINAL)        ///< by whom and from when
    Q_PROPERTY(bool mayBeAdopted READ mayBeAdopted NOTIFY changed FINAL) ///< it is a text
    Q_PROPERTY(bool mayBeConfirmed READ mayBeConfirmed NOTIFY changed FINAL)
    /// label: who confirmed it and as what; detail: when, against which rule
    Q_PROPERTY(crownring::screen::ChoiceModel* confirmations READ confirmations CONSTANT FINAL)
    /// value: person; label: person and capacity; detail: licence
    Q_PROPERTY(crownring::screen::ChoiceModel* people READ people CONSTANT FINAL)
    Q_PROPERTY(int personAt READ personAt WRITE setPersonAt NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool writing READ writing NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] ChoiceModel* texts() { return &m_texts; }
    [[nodiscard]] QString key() const { return m_key; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString body() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] QString lacking() const;
    [[nodiscard]] QString adopted() const;
    [[nodiscard]] bool mayBeAdopted() const { return line() && line()->isText(); }
    [[nodiscard]] bool mayBeConfirmed() const { return line() && (!line()->isText() || line()->adopted); }
    [[nodiscard]] ChoiceModel* confirmations() { return &m_confirmations; }
    [[nodiscard]] ChoiceModel* people() { return &m_people; }
    [[nodiscard]] int personAt() const { return m_personAt; }
    void setPersonAt(int at);
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool writing() const { return m_writing; }

    /// @param key of `texts`; empty: the list alone
    Q_INVOKABLE void show(const QString& key);
    /// As it stands, or in an own wording with a revision of its own.
    Q_INVOKABLE void adopt(const QString& organisation, const QString& body, const QString& revision);
    /// By the person chosen.
    Q_INVOKABLE void confirm(const QString& against);

    /// "part-ml-release 2026-11"
    [[nodiscard]] static QString keyOf(const NamedText& named);

signals:
    void changed();
    void confirmedNow();

private:
    void movedIn() override;
    void look();
    void showLists();
    void showPeople();
    void write(const std::function<Results<Receipt>(Record&)>& act, bool confirming);
    [[nodiscard]] const WordingLine* line() const;

    ChoiceModel m_texts;
    ChoiceModel m_confirmations;
    ChoiceModel m_people;
    std::vector<WordingLine> m_lines;
    std::vector<Entitlement> m_entitlements;
    QString m_key;
    QString m_problem;
    int m_personAt = -1;
    int m_turn = 0;
    bool m_writing = false;
};

}
