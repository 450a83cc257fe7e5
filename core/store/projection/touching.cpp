// SPDX-License-Identifier: GPL-3.0-or-later

/// What a change reaches beyond what the entry names: items under a flight, on a balloon, in its kits, of an
/// inspection.

#include "store/projection/projector.h"

namespace crownring {

namespace {

/// Moments between which a flight took off that was aloft on a day, and at or after whose start it landed.
struct AloftOn {
    explicit AloftOn(CivilDate on)
        : start(Moment::startOf(on).minutes()), end(Moment::endOf(on).minutes()),
          earliest(start - longestFlight.value()) {}
    std::int64_t start, end, earliest;
};

}

void Projector::touch(Touch::Of of, std::int64_t subject) {
    const Touch touch{of, subject};
    if (m_touched.insert(touch).second && m_beforeTouch && !m_remaking)
        m_beforeTouch(touch);
}

void Projector::note(const Entry& entry, bool told) {
    const Stamp stamp{momentOf(entry), entry.id};
    std::set<std::int64_t> noted;
    for (const auto& [subject, name] : toldUnder(entry.body)) {
        const auto number = m_names.findOrMake(subject, name);
        if (!noted.insert(number).second)
            continue;
        if (subject == Subject::Item)
            touch(Touch::Of::Item, number);
        (told ? m_putTold : m_dropTold).run(static_cast<int>(subject), number, stamp.at.minutes(), entry.id);
        Tally row;
        row.add(toldDigest(subject, number, stamp));
        for (const auto account : {number, Account::ofSort(subject)}) {
            auto& moved = m_toldMoved[account];
            if (told)
                moved += row;
            else
                moved -= row;
        }
    }
}

void Projector::touchItemsOf(const InspectionId& inspection) {
    m_concernedBy.run(inspection.text(), inspection.text(), inspection.text());
    std::vector<std::int64_t> items;
    while (m_concernedBy.next())
        items.push_back(m_concernedBy.read<std::int64_t>());
    for (const auto each : items)
        touch(Touch::Of::Item, each);
}

void Projector::touchItemsUnder(const FlightTotals::Change& change) {
    const auto at = change.from.at.minutes();
    m_under.run(change.balloon, at, at, at, change.from.at.on().dayNumber());
    std::vector<std::int64_t> items;
    while (m_under.next())
        items.push_back(m_under.read<std::int64_t>());
    for (const auto each : items)
        touch(Touch::Of::Item, each);
}

void Projector::touchItemsOf(std::int64_t balloon) {
    m_items.forgetRenamings();
    std::set<std::int64_t> names{balloon};
    std::vector<std::int64_t> open{balloon};
    std::set<std::int64_t> items;
    while (!open.empty()) {
        const auto name = open.back();
        open.pop_back();
        m_everOn.run(name);
        while (m_everOn.next())
            items.insert(m_everOn.read<std::int64_t>());
        m_formerly.run(name);
        while (m_formerly.next())
            if (const auto former = m_formerly.read<std::int64_t>(); names.insert(former).second)
                open.push_back(former);
    }
    for (const auto item : items)
        touch(Touch::Of::Item, item);
}

void Projector::touchParts() {
    std::vector<std::int64_t> open;
    for (const auto& [of, subject] : m_touched)
        if (of == Touch::Of::Item)
            open.push_back(subject);
    while (!open.empty()) {
        m_everPartOf.run(open.back());
        open.pop_back();
        std::vector<std::int64_t> parts;
        while (m_everPartOf.next())
            parts.push_back(m_everPartOf.read<std::int64_t>());
        for (const auto part : parts)
            if (!m_touched.contains(Touch{Touch::Of::Item, part})) {
                touch(Touch::Of::Item, part);
                open.push_back(part);
            }
    }
}

void Projector::touchBalloonsOf(std::int64_t item) {
    m_mayBeOn.run(item, item);
    std::vector<std::int64_t> balloons;
    while (m_mayBeOn.next())
        balloons.push_back(m_mayBeOn.read<std::int64_t>());
    for (const auto balloon : balloons)
        touch(Touch::Of::Balloon, balloon);
}

void Projector::fallOnKits(const Entry& event, const EventReported& body, std::int64_t balloon, bool reported) {
    std::vector<std::int64_t> items;
    const AloftOn day(event.on);
    m_flownAs.run(balloon, day.earliest, day.end, day.start);
    while (m_flownAs.next())
        items.push_back(m_flownAs.read<std::int64_t>());
    const auto at = momentOf(event).minutes();
    constexpr int ofItem = static_cast<int>(Subject::Item);
    for (const auto item : items) {
        touch(Touch::Of::Item, item);
        if (reported)
            m_putOccurrence.run(ofItem, item, at, event.id, body.event, body.hottest, body.lasted);
        else
            m_dropOccurrence.run(ofItem, item, at, event.id);
    }
}

void Projector::fallOnKit(std::int64_t item, std::int64_t balloon, const Entry& flight, Minutes aloft, bool flown) {
    const auto from = Moment::startOf(flight.on).minutes();
    const auto until = Moment::endOf(Moment(momentOf(flight).minutes() + aloft.value()).on()).minutes();
    if (flown) {
        m_putFallen.run(item, balloon, from, until);
        return;
    }
    std::vector<Stamp> events;
    m_fallen.run(balloon, from, until);
    while (m_fallen.next()) {
        const auto at = m_fallen.read<Moment>();
        events.push_back({at, m_fallen.read<EntryId>()});
    }
    for (const auto& event : events) {
        const AloftOn day(event.at.on());
        m_aboard.run(balloon, day.earliest, day.end, day.start, item);
        const bool stays = m_aboard.next(); // by another flight
        m_aboard.finish();
        if (!stays)
            m_dropOccurrence.run(static_cast<int>(Subject::Item), item, event.at.minutes(), event.id);
    }
}

std::int64_t Projector::item(const ItemId& id) {
    const auto number = m_names.findOrMake(id);
    touch(Touch::Of::Item, number);
    return number;
}

std::int64_t Projector::balloon(const Registration& registration) { return m_names.findOrMake(registration); }

std::pair<int, std::int64_t> Projector::subject(const EventReported& event) {
    if (const auto* id = itemOf(event))
        return {static_cast<int>(Subject::Item), item(*id)};
    const auto number = balloon(*balloonOf(event));
    touch(Touch::Of::Balloon, number);
    return {static_cast<int>(Subject::Balloon), number};
}

}
