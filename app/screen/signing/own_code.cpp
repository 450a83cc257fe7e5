// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/signing/own_code.h"

#include "screen/desk/house.h"
#include "trust/codes_told.h"
#include "trust/own_key.h"
#include "words/border.h"
#include "words/own_code_text.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

void OwnCode::ask(const QString& person) {
    const auto trimmed = person.trimmed();
    if (trimmed == m_person)
        return;
    m_person = trimmed;
    m_code.clear(); // it is another's
    m_again.clear();
    m_kept = Kept::Unknown;
    emit changed();
    lookAgain();
}

void OwnCode::lookAgain() {
    const auto turn = ++m_turn;
    if (m_person.isEmpty() || !house().desk.isOpen())
        return;
    hear(house().desk.ask([person = outward(m_person)](Record& record) { return codeStateOf(record, person); }), this,
         [this, turn](const Result<CodeState>& state) {
             if (turn != m_turn)
                 return;
             if (state) {
                 m_kept = state->kept ? Kept::One : state->isKnown ? Kept::None : Kept::NoPerson;
                 m_since = state->kept ? inward(state->kept->stamp.at.on().iso()) : QString();
             }
             emit changed();
         });
}

void OwnCode::forget() {
    m_code.clear();
    m_again.clear();
    emit changed();
}

QString OwnCode::about() const {
    switch (m_kept) {
    case Kept::Unknown:
    case Kept::NoPerson:
        return {};
    case Kept::None:
        return tr("The record keeps no code of %1 yet. What is written here becomes it: from now on it is asked "
                  "whenever something is signed in that name. It is kept nowhere, so nobody can look it up.")
            .arg(m_person);
    case Kept::One:
        return tr("%1 signs with the code set on %2.").arg(m_person, m_since);
    }
    return {};
}

void OwnCode::setCode(const QString& code) {
    if (m_code == code)
        return;
    m_code = code;
    emit changed();
}

void OwnCode::setAgain(const QString& again) {
    if (m_again == again)
        return;
    m_again = again;
    emit changed();
}

QString OwnCode::problem() const {
    if (!isFirst() || m_again.isEmpty())
        return {};
    if (m_code.toUcs4().size() < qsizetype(shortestCode))
        return tr("At least %n character(s).", nullptr, int(shortestCode));
    return m_code == m_again ? QString() : tr("The two are not the same.");
}

bool OwnCode::isReady() const {
    switch (m_kept) {
    case Kept::Unknown:
        return false;
    case Kept::NoPerson:
        return true;
    case Kept::None:
        return !m_again.isEmpty() && problem().isEmpty();
    case Kept::One:
        return !m_code.isEmpty();
    }
    return false;
}

SaidCode OwnCode::said() const {
    if (!isAsked())
        return {};
    return {codeTyped(m_code), isFirst()};
}

}
