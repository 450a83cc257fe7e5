// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/hours_of_others.h"

#include "words/border.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

const std::string hoursOf = "-hours ";

bool limitsByHours(const DueRow& row) {
    return !row.requirement->once && std::ranges::any_of(row.requirement->limits, [](const Limit& limit) {
        return limit.clock == ClockName::Minutes;
    });
}

FormField hoursField(const ItemId& item) {
    return plannedField(hoursOf + item.text(), HoursOfOthers::tr("Hours of %1 on that day").arg(inward(item.text())),
                        FormField::Kind::Duration, false,
                        HoursOfOthers::tr("the record does not know them; left empty, it stays unproven"));
}

}

std::vector<ItemId> HoursOfOthers::unknown(const FormFields& form, const FleetSheet& sheet) {
    std::vector<ItemId> items;
    const auto* on = form.field("on");
    const auto day = on ? on->day() : std::nullopt;
    const RequirementId requirement(outward(form.value("requirement")));
    for (const auto& name : form.value("-also").split(u'\n', Qt::SkipEmptyParts)) {
        const ItemId item(outward(name));
        const auto* facts = sheet.item(item);
        if (!facts || (facts->clock.minutes && day && *day >= facts->entered))
            continue;
        if (std::ranges::any_of(sheet.rowsOf(item), [&](const DueRow* row) {
                return row->requirement->id == requirement && limitsByHours(*row);
            }))
            items.push_back(item);
    }
    return items;
}

void HoursOfOthers::ask(FormFields& form, const std::vector<ItemId>& items) {
    auto fields = form.fields();
    std::vector<FormField> asked;
    QStringList empty;
    for (const auto& item : items) {
        const auto* field = of(form, item.text());
        asked.push_back(field ? *field : hoursField(item));
        if (asked.back().value.trimmed().isEmpty())
            empty += inward(item.text());
    }
    std::erase_if(fields, [](const FormField& field) { return field.key.starts_with(hoursOf); });
    const auto also = std::ranges::find(fields, std::string_view("-also"), &FormField::key);
    if (also == fields.end())
        return;
    fields.insert(std::next(also), asked.begin(), asked.end());
    if (!std::ranges::equal(fields, form.fields(), {}, &FormField::key, &FormField::key))
        form.show(std::move(fields));
    form.setQuestion("-also", empty.isEmpty()
                                  ? QString()
                                  : tr("What the clock showed on that day is not known of %1. It counts hours, so that "
                                       "without them this stays unproven. State them below. Is it left so?")
                                        .arg(empty.join(QStringLiteral(", "))));
}

const FormField* HoursOfOthers::of(const FormFields& form, const std::string& item) {
    return form.field(hoursOf + item);
}

}
