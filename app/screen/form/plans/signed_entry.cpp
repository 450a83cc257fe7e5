// SPDX-License-Identifier: GPL-3.0-or-later

/// A form that somebody signs: whose code is asked for, and what is signed, which is read before it is.

#include "acts/sign_review.h"
#include "record/entry_json.h"
#include "screen/desk/house.h"
#include "screen/form/entry_form.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

ReviewSigning signingOf(const Entry& entry) {
    const auto& said = std::get<ReviewSigned>(entry.body);
    return {said.balloon,
            said.act,
            said.form,
            said.certificate,
            said.expires,
            said.reviewer,
            capacityFrom(said.capacity).value_or(Capacity::AirworthinessReviewStaff),
            said.findings,
            said.photographs,
            said.inspection,
            entry.on,
            entry.time};
}

/// The words, who signs them as what, what will be printed, and who has confirmed the words.
QString readable(const ReviewDraft& draft) {
    const auto& said = std::get<ReviewSigned>(draft.entry.body);
    const auto capacity = capacityFrom(said.capacity);
    QStringList lines{EntryForm::tr("What is signed, word for word: “%1”").arg(inward(said.statement)),
                      EntryForm::tr("Signed by %1, %2: %3")
                          .arg(inward(said.reviewer.text()), capacity ? words::said(termOf(*capacity)) : QString(),
                               inward(said.authorisation))};
    if (said.expires)
        lines += EntryForm::tr("The certificate expires on %1.").arg(inward(said.expires->iso()));
    for (const auto& each : said.confirmed)
        lines += EntryForm::tr("The wording was confirmed against %1 by %2 on %3.")
                     .arg(inward(each.against), inward(each.by.text()), inward(each.on.iso()));
    return lines.join(u'\n');
}

}

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
    const auto follows = joined({m_read, m_code.about()}, QStringLiteral("\n"));
    if (m_follows != follows) {
        m_follows = follows;
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

bool EntryForm::isReadFirst() const { return m_amends.empty() && m_writing.kind == kindName<ReviewSigned>(); }

bool EntryForm::isSigning() const { return m_signed && (!isReadFirst() || !m_read.isEmpty()); }

/// What the form leaves to the rule, the day on which the certificate expires, is asked of it.
void EntryForm::readOut() {
    auto object = m_writing.gathered(m_fields);
    if (!object || lacksCode()) {
        if (m_problem.isEmpty())
            tellMarked();
        emit changed();
        return;
    }
    const bool asksDay =
        !object->contains("expires") && object->value("act", "") != reviewActName(ReviewAct::Recommendation);
    if (asksDay)
        (*object)["expires"] = object->at("on");
    const auto entry = entryFrom(*object);
    if (!entry)
        return tell({entry.error()});
    auto signing = signingOf(*entry);
    if (asksDay)
        signing.expires.reset();
    m_saving = true;
    emit changed();
    hear(house().desk.ask([signing](Record& record) { return draftReview(record, signing); }), this,
         [this](const Result<ReviewDraft>& draft) {
             m_saving = false;
             if (!draft)
                 return tell({draft.error()});
             if (!draft->refusals.empty())
                 return tell(draft->refusals);
             if (const auto& said = std::get<ReviewSigned>(draft->entry.body); said.expires)
                 m_fields.propose("expires", inward(said.expires->iso())); // what was read is what is posted
             m_read = readable(*draft);
             showCode();
             emit changed();
         });
}

QString EntryForm::verb() const {
    if (isReadFirst())
        return m_read.isEmpty() ? tr("Read what is signed") : FormPlan::verb(m_writing.kind);
    if (!corrects())
        return FormPlan::verb(m_writing.kind);
    return m_tried.is_null() ? tr("See what it moves") : tr("Post the correction");
}

}
