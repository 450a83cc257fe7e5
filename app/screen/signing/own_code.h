// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A code of the signatory's own, as it is asked for before somebody signs: what the record keeps of the person, and
/// what was typed. It is let go of as soon as it has served.

#include "acts/own_code.h"
#include "screen/desk/resident.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class OwnCode : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by what is signed with it")
    Q_PROPERTY(QString person READ person NOTIFY changed FINAL)
    /// A code is asked for: not of a person that the record does not know otherwise, who signs without.
    Q_PROPERTY(bool asked READ isAsked NOTIFY changed FINAL)
    /// The record keeps none of the person yet: what is written becomes it, and is written twice.
    Q_PROPERTY(bool first READ isFirst NOTIFY changed FINAL)
    /// What is asked for, in words.
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code WRITE setCode NOTIFY changed FINAL)
    Q_PROPERTY(QString again READ again WRITE setAgain NOTIFY changed FINAL)
    /// What is wrong with what was typed; empty while nothing is.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// It may be signed with.
    Q_PROPERTY(bool ready READ isReady NOTIFY changed FINAL)

public:
    using Resident::Resident;
    /// Whose code it is; empty: nobody's. The record is asked what it keeps of the person.
    void ask(const QString& person);
    /// The same again: somebody may have set one meanwhile.
    Q_INVOKABLE void lookAgain();
    /// What was typed is let go of.
    Q_INVOKABLE void forget();

    [[nodiscard]] QString person() const { return m_person; }
    [[nodiscard]] bool isAsked() const { return m_kept == Kept::None || m_kept == Kept::One; }
    [[nodiscard]] bool isFirst() const { return m_kept == Kept::None; }
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString code() const { return m_code; }
    void setCode(const QString& code);
    [[nodiscard]] QString again() const { return m_again; }
    void setAgain(const QString& again);
    [[nodiscard]] QString problem() const;
    [[nodiscard]] bool isReady() const;
    [[nodiscard]] SaidCode said() const;

signals:
    void changed();

private:
    enum class Kept {
        Unknown,  ///< it is being asked
        NoPerson, ///< the record knows nobody of that name
        None,
        One,
    };
    QString m_person;
    QString m_code;
    QString m_again;
    QString m_since;
    Kept m_kept = Kept::Unknown;
    int m_turn = 0;
};

}
