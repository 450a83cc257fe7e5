// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/events/event_desk.h"

#include "screen/desk/house.h"
#include "words/border.h"
#include "words/moment_words.h"
#include "words/words.h"

#include <QLocale>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// With an event that may have to be reported and of which the clock is still shown.
std::vector<const ItemFacts*> eventful(const FleetSheet& sheet, const std::string& balloon) {
    const auto since = addDays(sheet.on(), -daysOfReporting);
    std::vector<const ItemFacts*> items;
    for (const auto& item : sheet.items())
        if ((balloon.empty() || (item.balloon && item.balloon->text() == balloon)) &&
            std::ranges::any_of(item.events, [&](const Occurrence& event) { return event.stamp.at.on() >= since; }))
            items.push_back(&item);
    return items;
}

QString percent(double share) { return QLocale().toString(100 * share, 'f', 0); }

}

void EventDesk::movedIn() { connect(&house().fleet, &Fleet::changed, this, &EventDesk::look); }

void EventDesk::setBalloon(const QString& balloon) {
    if (balloon == m_balloon)
        return;
    m_balloon = balloon;
    take({}); // what is shown was of another
    emit asked();
    look();
}

void EventDesk::setLooking(bool looking) {
    if (looking == m_looking)
        return;
    m_looking = looking;
    emit asked();
    look();
}

void EventDesk::look() {
    const auto turn = ++m_turn;
    const auto sheet = house().fleet.sheet();
    if (!m_looking || !sheet)
        return;
    using Answer = Result<Told>;
    hear(house().desk.ask([sheet, balloon = outward(m_balloon)](Record& record) -> Answer {
        const auto on = sheet->on();
        auto events = toldEvents(record, record, eventful(*sheet, balloon), {}, addDays(on, -daysOfReporting), on);
        if (!events)
            return tl::unexpected(events.error());
        Told told{std::move(*events), {}};
        if (balloon.empty() || !sheet->card(Registration(balloon)))
            return told;
        auto fuel = fuelTold(record, Registration(balloon), on);
        if (!fuel)
            return tl::unexpected(fuel.error());
        told.fuel = *fuel;
        return told;
    }),
         this, [this, turn](const Answer& told) {
             if (turn == m_turn && told)
                 take(*told);
         });
}

void EventDesk::take(const Told& told) {
    std::vector<Choice> clocks;
    m_given.clear();
    std::optional<Moment> first;
    for (const auto& each : told.events) {
        if (!each.reportUntil || each.isTold(Informed::Authority))
            continue;
        const auto& event = std::get<EventReported>(each.entry.body);
        const auto subject = std::visit([](const auto& name) { return inward(name.text()); }, event.subject);
        const bool isPast = each.reportUntil->on() < house().day.date();
        Choice line{inward(each.entry.id.text()),
                    tr("%1 · %2 · %3").arg(Words::event(event.event), subject, inward(each.entry.on.iso())),
                    {},
                    -1,
                    -1,
                    false};
        line.detail = (isPast ? tr("If it was to be reported: the 72 hours ended on %1 (%2). No report to the "
                                   "authority is in the record.")
                              : tr("If it is to be reported: by %1 (%2). No report to the authority is in the record."))
                          .arg(momentSaid(*each.reportUntil), inward(std::string(reportRule)));
        if (!each.entry.time)
            line.detail = tr("%1 Counted from 00:00 UTC of that day, since no time is stated.").arg(line.detail);
        if (!each.isTold(Informed::Holder))
            line.detail =
                tr("%1 The holder of the type certificate, who reports failures (%2), hears of it from whoever "
                   "saw it.")
                    .arg(line.detail, inward(std::string(holderRule)));
        clocks.push_back(std::move(line));
        QVariantMap given{{QStringLiteral("event"), inward(each.entry.id.text())}};
        given[itemOf(event) ? QStringLiteral("item") : QStringLiteral("balloon")] = subject;
        m_given.push_back(std::move(given));
        if (!first || *each.reportUntil < *first)
            first = each.reportUntil;
    }
    m_summary = first ? tr("%n events may have to be reported; the first 72 hours end on %1", nullptr,
                           static_cast<int>(clocks.size()))
                            .arg(momentSaid(*first))
                      : QString();
    m_clocks.show(std::move(clocks));
    m_fuel = told.fuel && told.fuel->isProposed() ? fuelSaid(*told.fuel) : QString();
    emit changed();
}

QString EventDesk::fuelSaid(const FuelTold& told) const {
    const auto& rise = *told.rise;
    const auto unit = told.unit == FuelTold::Unit::Kilograms ? tr("kg/h") : tr("l/h");
    const auto rate = [](double value) { return QLocale().toString(value, 'f', 1); };
    return tr("It burns more than it did: %1 %2 on the latest three flights with fuel written down, %3 on %4 like them "
              "before, "
              "which is %5 % "
              "more (%6 to %7 at 95 %). Pilot and wind do that, too.")
        .arg(rate(rise.lately), unit, rate(rise.before), QString::number(rise.alike), percent(rise.share.middle),
             percent(rise.share.low), percent(rise.share.high));
}

QVariantMap EventDesk::givenFor(int row) const {
    return row >= 0 && row < static_cast<int>(m_given.size()) ? m_given[static_cast<std::size_t>(row)] : QVariantMap();
}

}
