// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/form_field.h"

#include "civil/moment.h"
#include "exchange/text/plain_text.h"
#include "measure/decimal_text.h"
#include "measure/duration_text.h"
#include "problem/faults/components/part_fault.h"
#include "problem/faults/table_fault.h"
#include "problem/faults/use_fault.h"
#include "problem/faults/written_fault.h"
#include "words/border.h"
#include "words/in_full.h"

#include <QLocale>
#include <QStringList>

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
    const auto colon = text.find(':');
    auto iso = colon == 1 ? "0" + text : text;
    if (!iso.ends_with('Z'))
        iso += 'Z';
    const auto time = TimeOfDay::parse(iso);
    if (!time)
        return tl::unexpected(time.error());
    return Json(time->iso());
}

Value textFrom(const QString& text, FormField::Kind kind) {
    constexpr qsizetype mostInALine = 200;
    constexpr qsizetype mostInAll = 20'000;
    const auto most = kind == FormField::Kind::Lines ? mostInAll : mostInALine;
    if (text.size() > most)
        return problem(UseFault::TooLong, {text.size(), most});
    return Json(outward(text));
}

Result<Minutes> durationIn(const QString& text) { return parseDuration(outward(text), BareNumber::Hours); }

}

DateOrder dateOrderHere() {
    const auto format = QLocale().dateFormat(QLocale::ShortFormat);
    const auto day = format.indexOf(u'd');
    const auto month = format.indexOf(u'M');
    const auto year = format.indexOf(u'y');
    if (year < day && year < month)
        return DateOrder::YearMonthDay;
    return month < day ? DateOrder::MonthDayYear : DateOrder::DayMonthYear;
}

std::optional<CivilDate> FormField::day() const {
    if (kind != Kind::Date && kind != Kind::Made)
        return std::nullopt;
    if (const auto read = readDate(outward(value), dateOrderHere()))
        return read;
    const auto made = kind == Kind::Made ? DayOrMonth::parse(outward(value)) : Result<DayOrMonth>(DayOrMonth());
    return kind == Kind::Made && made ? std::optional(made->lastDay()) : std::nullopt;
}

Value FormField::json() const {
    const auto text = outward(value);
    if (text.empty())
        return unknownAllowed ? Json(nullptr) : std::optional<Json>();
    if (unknownAllowed && text == "?")
        return Json(nullptr);
    switch (kind) {
    case Kind::Text:
    case Kind::Secret:
    case Kind::Lines:
        return textFrom(value, kind);
    case Kind::Choice:
    case Kind::OneOf:
        return Json(text);
    case Kind::Check:
        return Json(true);
    case Kind::Time:
        return timeFrom(text);
    case Kind::Count:
        return countFrom(value.trimmed());
    case Kind::Decimal:
        return decimalFrom(text);
    case Kind::Date:
    case Kind::Made: {
        const auto month = kind == Kind::Made ? DayOrMonth::parse(text) : Result<DayOrMonth>(DayOrMonth());
        const auto read = day();
        if (!read && !month && std::holds_alternative<PartFault>(month.error().fault))
            return tl::unexpected(month.error()); // a stamp, with what it may mean
        if (!read)
            return crownring::problem(kind == Kind::Made ? WrittenFault::NotADateOrMonth : WrittenFault::NotADate,
                                      {text});
        const bool isMonth = kind == Kind::Made && month && month->isMonth();
        const auto first = isMonth ? CivilDate::fromYearMonthDay(read->year(), read->month(), 1) : read;
        if (notAfter && first && *first > *notAfter)
            return crownring::problem(TableFault::LaterThanToday, {text});
        return Json(isMonth ? month->iso() : read->iso());
    }
    case Kind::Duration: {
        const auto minutes = durationIn(value);
        if (!minutes)
            return tl::unexpected(minutes.error());
        return Json(minutes->value());
    }
    case Kind::Several:
    case Kind::Photographs: {
        Json list = Json::array();
        for (const auto& each : value.split(u'\n', Qt::SkipEmptyParts))
            list.push_back(outward(each));
        return list;
    }
    case Kind::Kit:
        break;
    }
    return std::optional<Json>();
}

QString FormField::understood() const {
    if (value.trimmed().isEmpty())
        return {};
    if (kind == Kind::Duration) {
        const auto minutes = durationIn(value);
        return minutes ? inFull(*minutes) : QString();
    }
    if (kind == Kind::Made)
        if (const auto month = DayOrMonth::parse(outward(value)))
            return inFull(*month);
    if (const auto read = day())
        return inFull(*read);
    if (kind == Kind::Decimal) {
        const auto number = json();
        return number && *number ? QLocale().toString((*number)->get<double>(), 'g', 8) : QString();
    }
    return {};
}

void FormField::take(const Json& from) {
    if (from.is_null()) {
        value = unknownAllowed ? QString() : QStringLiteral("?");
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

}
