// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One field of a form: what is asked, how it is typed, what was understood, what is wrong with it.

#include "problem/problem.h"
#include "screen/lists/choice_model.h"

#include <nlohmann/json.hpp>

namespace crownring::screen {

struct FormField {
    enum class Kind {
        Text,
        Date,     ///< YYYY-MM-DD
        Made,     ///< a date or a month
        Time,     ///< HH:MM, UTC
        Duration, ///< "1:35", "95 min", "1.5 h"
        Count,    ///< a whole number
        Decimal,
        Choice,  ///< one of `choices`
        Several, ///< some of `choices`
        Check,   ///< "true" or empty
    };

    std::string key; ///< of the entry; "clock.minutes" reaches into an object
    QString label;
    QString hint;
    Kind kind = Kind::Text;
    QString value; ///< of `Several`: the values, each on its line
    std::vector<Choice> choices;
    bool required = false;
    bool unknownAllowed = false;  ///< "?" says that nobody knows: null in the entry
    bool onlyWhenTouched = false; ///< left out of the entry while it is as it was proposed
    bool touched = false;
    QString problem;

    [[nodiscard]] bool sameAs(const FormField& other) const { return key == other.key; }
    bool operator==(const FormField&) const = default;
    /// The value as the entry has it; nothing when the field is empty.
    [[nodiscard]] Result<std::optional<nlohmann::json>> json() const;
    /// What the program makes of the text, where that is not plain to see: "1:35 h".
    [[nodiscard]] QString understood() const;
    void take(const nlohmann::json& value);
};

class FormFields : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by an entry form")

public:
    enum Role {
        KeyRole = Qt::UserRole + 1,
        LabelRole,
        HintRole,
        TypeRole, ///< number of `FormField::Kind`
        ValueRole,
        ChoicesRole, ///< list of {value, label, chosen}
        RequiredRole,
        ProblemRole,
        UnderstoodRole,
    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_fields.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    void show(std::vector<FormField> fields) { replaceRows(m_fields, std::move(fields)); }
    [[nodiscard]] const std::vector<FormField>& fields() const { return m_fields; }
    [[nodiscard]] QString value(std::string_view key) const;
    void setValue(int row, const QString& value);
    void toggle(int row, const QString& choice);
    /// Replaces what can be chosen and lets go of values that no longer can.
    void setChoices(std::string_view key, std::vector<Choice> choices, bool chooseAll);
    void setProblem(std::string_view key, const QString& problem);
    void clearProblems();

private:
    void told(std::size_t row);
    std::vector<FormField> m_fields;
};

}
