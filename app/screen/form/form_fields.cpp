// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/form_fields.h"

#include "screen/form/asked_back.h"
#include "words/border.h"

#include <QVariantMap>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

QVariantList choicesOf(const FormField& field) {
    const auto chosen = field.value.split(u'\n');
    QVariantList list;
    for (const auto& choice : field.choices)
        list += QVariantMap{{QStringLiteral("value"), choice.value},
                            {QStringLiteral("label"), choice.label},
                            {QStringLiteral("detail"), choice.detail},
                            {QStringLiteral("chosen"), chosen.contains(choice.value)}};
    return list;
}

}

QVariant FormFields::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_fields.size()))
        return {};
    const auto& field = m_fields[static_cast<std::size_t>(index.row())];
    switch (role) {
    case KeyRole:
        return inward(field.key);
    case Qt::DisplayRole:
    case LabelRole:
        return field.label;
    case HintRole:
        return field.hint;
    case TypeRole:
        return static_cast<int>(field.kind);
    case ValueRole:
        return field.value;
    case ChosenRole: {
        const auto at = std::ranges::find(field.choices, field.value, &Choice::value);
        return at == field.choices.end() ? field.value : at->label;
    }
    case RequiredRole:
        return field.required;
    case ShownRole:
        return field.shown;
    case PastRole:
        return field.kind == FormField::Kind::Date && field.notAfter.has_value();
    case ProblemRole:
        return field.problem;
    case WayRole:
        return field.wayTo;
    case UnderstoodRole:
        return field.understood();
    case QuestionRole:
        return AskedBack::isOpen(field) ? AskedBack::question(field) : QString();
    case MeantRole:
        return AskedBack::meant(field);
    case ChoicesRole:
        return choicesOf(field);
    default:
        return {};
    }
}

QHash<int, QByteArray> FormFields::roleNames() const {
    return {{KeyRole, "key"},
            {LabelRole, "label"},
            {HintRole, "hint"},
            {TypeRole, "type"},
            {ValueRole, "value"},
            {ChosenRole, "chosenLabel"},
            {ChoicesRole, "choices"},
            {RequiredRole, "needed"},
            {ShownRole, "shown"},
            {PastRole, "past"},
            {ProblemRole, "problem"},
            {WayRole, "wayTo"},
            {UnderstoodRole, "understood"},
            {QuestionRole, "question"},
            {MeantRole, "meant"}};
}

const FormField* FormFields::field(std::string_view key) const {
    const auto at = std::ranges::find(m_fields, key, &FormField::key);
    return at == m_fields.end() ? nullptr : &*at;
}

QString FormFields::value(std::string_view key) const {
    const auto* at = field(key);
    return at ? at->value : QString();
}

void FormFields::told(std::size_t row) { emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row))); }

template <class Change>
void FormFields::change(std::string_view key, Change change) {
    const auto at = std::ranges::find(m_fields, key, &FormField::key);
    if (at == m_fields.end())
        return;
    const auto before = *at;
    change(*at);
    if (!(before == *at))
        told(static_cast<std::size_t>(at - m_fields.begin()));
}

void FormFields::setValue(int row, const QString& value) {
    auto& field = m_fields[static_cast<std::size_t>(row)];
    if (field.value == value)
        return;
    field.value = value;
    field.touched = true;
    field.problem.clear();
    field.wayTo.clear();
    told(static_cast<std::size_t>(row));
}

void FormFields::toggle(int row, const QString& choice) {
    auto chosen = m_fields[static_cast<std::size_t>(row)].value.split(u'\n', Qt::SkipEmptyParts);
    if (chosen.removeAll(choice) == 0)
        chosen += choice;
    setValue(row, chosen.join(u'\n'));
}

void FormFields::take(int row, Choice choice) {
    auto& field = m_fields[static_cast<std::size_t>(row)];
    const auto value = choice.value;
    if (std::ranges::find(field.choices, value, &Choice::value) == field.choices.end())
        field.choices.push_back(std::move(choice));
    if (!field.value.split(u'\n').contains(value))
        toggle(row, value);
    else
        setProblem(field.key, {});
}

void FormFields::setChoices(std::string_view key, std::vector<Choice> choices) {
    change(key, [&](FormField& field) {
        QStringList kept;
        for (const auto& choice : choices)
            if (field.value.split(u'\n').contains(choice.value))
                kept += choice.value;
        field.value = kept.join(u'\n');
        field.choices = std::move(choices);
        field.touched = false;
    });
}

void FormFields::setProblem(std::string_view key, const QString& problem, const QString& wayTo) {
    change(key, [&](FormField& field) {
        field.problem = problem;
        field.wayTo = wayTo;
    });
}

void FormFields::setQuestion(std::string_view key, const QString& question) {
    change(key, [&](FormField& field) { field.question = question; });
}

void FormFields::propose(std::string_view key, const QString& value) {
    change(key, [&](FormField& field) {
        if (!field.touched)
            field.value = value;
    });
}

void FormFields::setShown(std::string_view key, bool shown) {
    change(key, [&](FormField& field) { field.shown = shown; });
}

void FormFields::answer(int row) {
    auto& field = m_fields[static_cast<std::size_t>(row)];
    field.answered = AskedBack::question(field);
    told(static_cast<std::size_t>(row));
}

void FormFields::clearProblems() {
    for (std::size_t row = 0; row < m_fields.size(); ++row)
        if (!m_fields[row].problem.isEmpty()) {
            m_fields[row].problem.clear();
            m_fields[row].wayTo.clear();
            told(row);
        }
}

int FormFields::firstMarked() const {
    const auto at = std::ranges::find_if(
        m_fields, [](const FormField& field) { return !field.problem.isEmpty() || AskedBack::isOpen(field); });
    return at == m_fields.end() ? -1 : static_cast<int>(at - m_fields.begin());
}

}
