// SPDX-License-Identifier: GPL-3.0-or-later

/// The code of who signs with a form.

#include "screen/form/entry_form.h"

#include <algorithm>

namespace crownring::screen {

void EntryForm::askForCode(bool isSigned) {
    m_signed = isSigned;
    auto fields = m_fields.fields();
    std::erase_if(fields, [](const FormField& field) { return field.kind == FormField::Kind::Secret; });
    if (isSigned) {
        fields.push_back(plannedField("-code", tr("Your code"), FormField::Kind::Secret, true,
                                      tr("of whoever signs; at least 8 characters")));
        fields.push_back(plannedField("-code-again", tr("The same again"), FormField::Kind::Secret, true));
        for (auto& field : fields)
            field.shown &= field.kind != FormField::Kind::Secret;
    }
    m_fields.show(std::move(fields));
    m_code.ask({});
    if (isSigned)
        showCode();
}

void EntryForm::showCode() {
    if (!m_signed)
        return;
    m_code.ask(m_fields.value(m_writing.kind == kindName<ReviewSigned>() ? "reviewer" : "by"));
    m_code.setCode(m_fields.value("-code"));
    m_code.setAgain(m_fields.value("-code-again"));
    m_fields.setShown("-code", m_code.isAsked());
    m_fields.setShown("-code-again", m_code.isFirst());
    if (m_follows != m_code.about()) {
        m_follows = m_code.about();
        emit changed();
    }
}

/// With the reason at its field.
bool EntryForm::lacksCode() {
    if (!m_signed || m_code.isReady())
        return false;
    if (!m_code.isAsked()) { // the record has not answered yet
        m_problem = tr("Whose code it is is still being looked up. Try again in a moment.");
        return true;
    }
    m_fields.setProblem(m_code.isFirst() ? "-code-again" : "-code",
                        m_code.problem().isEmpty() ? tr("This is needed.") : m_code.problem());
    return true;
}

}
