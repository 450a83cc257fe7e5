// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/asked_back.h"

#include "registry/likely_flight.h"
#include "words/in_full.h"

namespace crownring::screen {

using namespace words;

namespace {

std::optional<std::int64_t> countIn(const FormField& field) {
    const auto value = field.json();
    if (!value || !*value || !(*value)->is_number_integer())
        return std::nullopt;
    return (*value)->get<std::int64_t>();
}

bool isBareNumber(const QString& text) {
    bool whole = false;
    text.trimmed().toUInt(&whole);
    return whole;
}

}

QString AskedBack::ofDay(CivilDate day) {
    constexpr int lastLikelyYear = 2099;
    if (day < firstLikelyDay())
        return tr("That is the year %1, before there were modern hot-air balloons. Is it so?").arg(day.year());
    if (day.year() > lastLikelyYear)
        return tr("That is the year %1. Is it so?").arg(day.year());
    return {};
}

QString AskedBack::ofAge(std::string_view kind, std::string_view made) {
    const auto of = itemKindFrom(kind);
    const bool counts = of == ItemKind::Cylinder || of == ItemKind::Hose;
    return counts && made.empty()
               ? tr("Which month is stamped on it? Its age counts: what counts from it stays unproven until it is "
                    "known. Is it not known?")
               : QString();
}

QString AskedBack::question(const FormField& field) {
    using Kind = FormField::Kind;
    if (!field.question.isEmpty())
        return field.question;
    if (const auto day = field.day())
        return ofDay(*day);
    if (field.likely != 0 && field.kind == Kind::Decimal) {
        const auto value = field.json();
        return value && *value && (*value)->is_number() && (*value)->get<double>() > static_cast<double>(field.likely)
                   ? tr("Is %1 right? So much is rare.").arg(field.value.trimmed())
                   : QString();
    }
    if (field.likely == 0 || (field.kind != Kind::Duration && field.kind != Kind::Count))
        return {};
    const auto count = countIn(field);
    if (!count || *count <= field.likely)
        return {};
    return field.kind == Kind::Duration ? tr("Is %1 right?").arg(inFull(Minutes(*count)))
                                        : tr("Is %1 right? So many are rare.").arg(*count);
}

bool AskedBack::isOpen(const FormField& field) {
    const auto asked = question(field);
    return !asked.isEmpty() && asked != field.answered;
}

QString AskedBack::meant(const FormField& field) {
    const auto count = countIn(field);
    if (field.kind != FormField::Kind::Duration || !isOpen(field) || !count || !isBareNumber(field.value) ||
        *count / 60 > field.likely)
        return {};
    return tr("%1 min").arg(field.value.trimmed());
}

}
