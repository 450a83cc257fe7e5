// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The fields of a form, as QML draws them.

#include "screen/form/form_field.h"

namespace crownring::screen {

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
        ChosenRole,  ///< the label of what is chosen
        ChoicesRole, ///< list of {value, label, chosen}
        RequiredRole,
        ShownRole,
        PastRole, ///< a day that has been: today and yesterday are one tap
        ProblemRole,
        WayRole, ///< what the problem speaks of can be gone to
        UnderstoodRole,
        QuestionRole, ///< asked back; empty once it is answered
        MeantRole,    ///< what may have been meant instead
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
    [[nodiscard]] const FormField* field(std::string_view key) const;
    [[nodiscard]] QString value(std::string_view key) const;
    void setValue(int row, const QString& value);
    void toggle(int row, const QString& choice);
    /// One more to choose, and chosen.
    void take(int row, Choice choice);
    /// Replaces what can be chosen and lets go of values that no longer can.
    void setChoices(std::string_view key, std::vector<Choice> choices);
    void setProblem(std::string_view key, const QString& problem, const QString& wayTo = {});
    void setQuestion(std::string_view key, const QString& question);
    /// Puts a value in, unless somebody has chosen one.
    void propose(std::string_view key, const QString& value);
    void setShown(std::string_view key, bool shown);
    /// "It is so."
    void answer(int row);
    void clearProblems();
    /// The first row that is wrong or asked about; -1 when there is none.
    [[nodiscard]] int firstMarked() const;

private:
    /// Tells of the row with the key after `change` was made to it.
    template <class Change>
    void change(std::string_view key, Change change);
    void told(std::size_t row);
    std::vector<FormField> m_fields;
};

}
