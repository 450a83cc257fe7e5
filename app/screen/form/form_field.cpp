// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/form_field.h"

#include "civil/moment.h"
#include "measure/decimal_text.h"
#include "measure/duration_text.h"
#include "problem/faults/use_fault.h"
#include "words/border.h"
#include "words/words.h"

#include <QLocale>
#include <QStringList>
#include <QVariantMap>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;
using Value = Result<std::optional<Json>>;

Value countFrom(const QString& text) {
    bool ok = false;
    const auto number = text.toLongLong(&ok);
    if (!ok || number < 0)
        return problem(UseFault::NotAWholeNumber);
    return Json(number);
}

Value decimalFrom(const std::string& text) {
    const auto number = parseDecimal(text);
    if (!number)
        return problem(UseFault::NotANumber);
    return Json(*number);
}

Value timeFrom(const std::string& text) {
    const auto iso = text.ends_with('Z') ? text : text + "Z";
    const auto time = TimeOfDay::parse(iso);
    if (!time)
        return tl::unexpected(time.error());
    return Json(time->iso());
}

}

Result<std::optional<Json>> FormField::json() const {
    const auto text = outward(value);
    if (text.empty())
        return std::optional<Json>();
    if (unknownAllowed && text == "?")
        return Json(nullptr);
    switch (kind) {
    case Kind::Text:
    case Kind::Choice:
        return Json(text);
    case Kind::Check:
        return Json(true);
    case Kind::Time:
        return timeFrom(text);
    case Kind::Count:
        return countFrom(value.trimmed());
    case Kind::Decimal:
        return decimalFrom(text);
    case Kind::Date: {
        const auto date = CivilDate::parse(text);
        if (!date)
            return tl::unexpected(date.error());
        return Json(text);
    }
    case Kind::Made: {
        const auto made = DayOrMonth::parse(text);
        if (!made)
            return tl::unexpected(made.error());
        return Json(text);
    }
    case Kind::Duration: {
        const auto minutes = parseDuration(text);
        if (!minutes)
            return tl::unexpected(minutes.error());
        return Json(minutes->value());
    }
    case Kind::Several: {
        Json list = Json::array();
        for (const auto& each : value.split(u'\n', Qt::SkipEmptyParts))
            list.push_back(outward(each));
        return list;
    }
    }
    return std::optional<Json>();
}

QString FormField::understood() const {
    if (value.trimmed().isEmpty())
        return {};
    if (kind == Kind::Duration) {
        const auto minutes = parseDuration(outward(value));
        return minutes ? Words::hours(minutes->value()) : QString();
    }
    if (kind == Kind::Decimal) {
        const auto number = json();
        return number && *number ? QLocale().toString((*number)->get<double>(), 'g', 8) : QString();
    }
    return {};
}

void FormField::take(const Json& from) {
    if (from.is_null()) {
        value = QStringLiteral("?");
    } else if (kind == Kind::Duration && from.is_number_integer()) {
        value = inward(hoursAndMinutes(Minutes{from.get<std::int64_t>()}));
    } else if (from.is_string()) {
        value = inward(from.get<std::string>());
    } else if (from.is_boolean()) {
        value = from.get<bool>() ? QStringLiteral("true") : QString();
    } else if (from.is_array()) {
        QStringList values;
        for (const auto& each : from)
            values += inward(each.get<std::string>());
        value = values.join(u'\n');
    } else {
        value = inward(from.dump());
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
    case RequiredRole:
        return field.required;
    case ProblemRole:
        return field.problem;
    case UnderstoodRole:
        return field.understood();
    case ChoicesRole: {
        const auto chosen = field.value.split(u'\n');
        QVariantList list;
        for (const auto& choice : field.choices)
            list += QVariantMap{{QStringLiteral("value"), choice.value},
                                {QStringLiteral("label"), choice.label},
                                {QStringLiteral("chosen"), chosen.contains(choice.value)}};
        return list;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> FormFields::roleNames() const {
    return {{KeyRole, "key"},         {LabelRole, "label"},     {HintRole, "hint"},
            {TypeRole, "type"},       {ValueRole, "value"},     {ChoicesRole, "choices"},
            {RequiredRole, "needed"}, {ProblemRole, "problem"}, {UnderstoodRole, "understood"}};
}

QString FormFields::value(std::string_view key) const {
    const auto at = std::find_if(m_fields.begin(), m_fields.end(), [&](const FormField& f) { return f.key == key; });
    return at == m_fields.end() ? QString() : at->value;
}

void FormFields::told(std::size_t row) { emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row))); }

void FormFields::setValue(int row, const QString& value) {
    auto& field = m_fields[static_cast<std::size_t>(row)];
    if (field.value == value)
        return;
    field.value = value;
    field.touched = true;
    field.problem.clear();
    told(static_cast<std::size_t>(row));
}

void FormFields::toggle(int row, const QString& choice) {
    auto chosen = m_fields[static_cast<std::size_t>(row)].value.split(u'\n', Qt::SkipEmptyParts);
    if (chosen.removeAll(choice) == 0)
        chosen += choice;
    setValue(row, chosen.join(u'\n'));
}

void FormFields::setChoices(std::string_view key, std::vector<Choice> choices, bool chooseAll) {
    for (std::size_t row = 0; row < m_fields.size(); ++row) {
        auto& field = m_fields[row];
        if (field.key != key)
            continue;
        QStringList kept;
        for (const auto& choice : choices)
            if (chooseAll || field.value.split(u'\n').contains(choice.value))
                kept += choice.value;
        field.value = kept.join(u'\n');
        field.choices = std::move(choices);
        field.touched = false;
        told(row);
        return; // a key stands once
    }
}

void FormFields::setProblem(std::string_view key, const QString& problem) {
    for (std::size_t row = 0; row < m_fields.size(); ++row)
        if (m_fields[row].key == key) {
            m_fields[row].problem = problem;
            told(row);
        }
}

void FormFields::clearProblems() {
    for (std::size_t row = 0; row < m_fields.size(); ++row)
        if (!m_fields[row].problem.isEmpty()) {
            m_fields[row].problem.clear();
            told(row);
        }
}

}
