// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The forms of a directive that is entered, and of the answer to one: for an item, or for many at once.

#include "answers/directives/book.h"
#include "bench/release/entitlement.h"
#include "screen/form/form_plan.h"

#include <optional>

namespace crownring::screen {

class FormFields;

/// What the record knows when such a form is opened.
struct DirectivesKnown {
    std::vector<Said<DirectiveIssued>> issued;
    std::vector<DirectiveRow::Life> lives; ///< of each of them
    std::vector<Entitlement> entitlements;
};

class DirectiveForm {
    Q_DECLARE_TR_FUNCTIONS(DirectiveForm)

public:
    [[nodiscard]] static bool known(std::string_view kind);
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static QString title(std::string_view kind);
    /// What is wrong and how to mend it, by the names of the form's fields; nothing where the fault's own words do.
    [[nodiscard]] static std::optional<QString> problem(const Problem& problem);
    /// A deadline was asked for, and one is stated by now, in whichever field.
    static void unmark(FormFields& fields);

    /// What was gathered as the entry has it: ranges and parts are typed as lines.
    /// @param before what an entry says that is corrected; null for a new one
    [[nodiscard]] static nlohmann::json entry(nlohmann::json gathered, const FormFields& fields,
                                              const nlohmann::json& before);
    /// The other way round.
    static void take(std::vector<FormField>& fields, const nlohmann::json& entry);
    /// Shows the fields that the others ask for.
    static void showAsked(std::string_view kind, FormFields& fields);
    /// Offers what the record knows: issuers, what may be superseded, in which capacity the person answers.
    static void offer(FormFields& fields, const DirectivesKnown& known, const std::string& directive,
                      const std::string& revision);

    /// Whom it would bind as it is written by now; nothing while no kind of items is chosen.
    [[nodiscard]] static std::optional<AppliesTo> applies(const FormFields& fields);
    /// In words: who is bound, of whom nobody knows, and who is not; each with why.
    [[nodiscard]] static QString follows(const std::vector<BoundItem>& bound);
    /// What is about to be entered, in words: its number, from when on, by when, how often, its force. Empty while
    /// number, effective day or the deadline of a mandatory one lack.
    [[nodiscard]] static QString saidBack(const FormFields& fields);

private:
    static std::vector<FormField> issueFields();
    static std::vector<FormField> answerFields(const FormSubject& subject, const FleetSheet& sheet);
};

}
