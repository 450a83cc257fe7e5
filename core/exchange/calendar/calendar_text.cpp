// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/calendar/calendar_text.h"

#include <libical/ical.h>

#include <algorithm>
#include <cstdlib>
#include <memory>

namespace crownring {

namespace {

struct FreeComponent {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

/// No control characters but the end of a line: 3.3.11 takes none.
std::string plainText(std::string_view text) {
    std::string plain;
    for (const char letter : text)
        if (static_cast<unsigned char>(letter) >= 0x20 && letter != 0x7f)
            plain += letter;
        else if (letter == '\n')
            plain += letter;
        else
            plain += ' ';
    return plain;
}

icaltimetype dayOf(CivilDate day) {
    auto time = icaltime_null_date();
    time.year = day.year();
    time.month = day.month();
    time.day = day.day();
    return time;
}

icaltimetype startOfUtc(CivilDate day) {
    auto time = dayOf(day);
    time.is_date = 0;
    time.hour = time.minute = time.second = 0;
    time.zone = icaltimezone_get_utc_timezone();
    return time;
}

void add(icalcomponent* to, icalproperty* property) { icalcomponent_add_property(to, property); }

icalcomponent* eventOf(const CalendarEvent& event, CivilDate on) {
    auto* component = icalcomponent_new(ICAL_VEVENT_COMPONENT);
    add(component, icalproperty_new_uid(event.uid.c_str()));
    add(component, icalproperty_new_dtstamp(startOfUtc(on)));
    add(component, icalproperty_new_sequence(std::max(on.dayNumber(), 0)));
    add(component, icalproperty_new_dtstart(dayOf(event.first)));
    add(component, icalproperty_new_dtend(dayOf(addDays(std::max(event.first, event.last), 1))));
    add(component, icalproperty_new_summary(plainText(event.summary).c_str()));
    if (!event.description.empty())
        add(component, icalproperty_new_description(plainText(event.description).c_str()));
    for (const auto& category : event.categories)
        add(component, icalproperty_new_categories(plainText(category).c_str()));
    add(component, icalproperty_new_transp(event.isBusy ? ICAL_TRANSP_OPAQUE : ICAL_TRANSP_TRANSPARENT));
    return component;
}

}

std::string calendarUid(std::span<const std::string_view> parts) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string uid;
    for (const auto part : parts) {
        if (!uid.empty())
            uid += '.';
        for (const char letter : part) {
            const auto byte = static_cast<unsigned char>(letter);
            const bool isPlain = (byte >= '0' && byte <= '9') || (byte >= 'a' && byte <= 'z') ||
                                 (byte >= 'A' && byte <= 'Z') || byte == '-';
            if (isPlain)
                uid += letter;
            else
                ((uid += '%') += digits[byte >> 4U]) += digits[byte & 0xfU];
        }
    }
    return uid + "@crownring";
}

std::string calendarText(std::span<const CalendarEvent> events, std::string_view name, CivilDate on) {
    const Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    add(calendar.get(), icalproperty_new_version("2.0"));
    add(calendar.get(), icalproperty_new_prodid("-//Crownring//crownringctl//EN"));
    add(calendar.get(), icalproperty_new_calscale("GREGORIAN"));
    add(calendar.get(), icalproperty_new_method(ICAL_METHOD_PUBLISH));
    if (!name.empty()) {
        auto* named = icalproperty_new_x(plainText(name).c_str());
        icalproperty_set_x_name(named, "X-WR-CALNAME");
        add(calendar.get(), named);
    }
    for (const auto& event : events)
        icalcomponent_add_component(calendar.get(), eventOf(event, on));
    const std::unique_ptr<char, decltype(&free)> text(icalcomponent_as_ical_string_r(calendar.get()), &free);
    return text.get();
}

}
