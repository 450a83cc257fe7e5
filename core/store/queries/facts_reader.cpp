// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/facts_reader.h"

#include "registry/clock.h"

#include <algorithm>
#include <iterator>
#include <unordered_map>

namespace crownring {

namespace {

std::string scoped(bool one, std::string text, const char* column, const char* order) {
    if (one)
        text += std::string(" AND ") + column + " = ?";
    return text + order;
}

DayOrMonth monthOrDay(const std::string& text, const Statement& row) {
    const auto date = DayOrMonth::parse(text);
    if (!date)
        throw row.unread();
    return *date;
}

bool earlier(const Occurrence& a, const Occurrence& b) { return a.stamp < b.stamp; }

}

/// Rows and items both come in the order of item numbers: each row's item is found by going on, never by searching.
class FactsReader::Walk {
public:
    explicit Walk(std::vector<Working>& items) : m_items(items) {}
    Working* to(std::int64_t item) {
        while (m_at < m_items.size() && m_items[m_at].item < item)
            ++m_at;
        return m_at < m_items.size() && m_items[m_at].item == item ? &m_items[m_at] : nullptr;
    }

private:
    std::vector<Working>& m_items;
    std::size_t m_at = 0;
};

FactsReader::FactsReader(const Connection& connection, Names& names, FlightTotals& totals, bool one)
    : m_names(names), m_totals(totals), m_use(connection, totals), m_one(one),
      m_items(connection, scoped(one,
                                 "SELECT item_no, day, kind, serial, type, made, minutes, landings, inflations"
                                 " FROM item_entered WHERE stands = 1 AND day <= ?",
                                 "item_no", " ORDER BY item_no")
                              .c_str()),
      m_stays(connection, scoped(one,
                                 "SELECT item_no, balloon_no, place, until_at, in_minutes, in_landings, in_inflations,"
                                 " out_minutes, out_landings, out_inflations FROM stay WHERE from_at < ?",
                                 "item_no", " ORDER BY item_no, from_at, from_id")
                              .c_str()),
      m_kits(connection, scoped(one,
                                "SELECT k.item_no, CAST(SUM(k.minutes) AS BIGINT), CAST(SUM(k.landings) AS BIGINT),"
                                " CAST(SUM(k.inflations) AS BIGINT) FROM kit_flight k JOIN item_entered e"
                                " ON e.item_no = k.item_no AND e.stands = 1 AND k.at >= e.day * 1440 WHERE k.at < ?",
                                "k.item_no", " GROUP BY k.item_no ORDER BY k.item_no")
                             .c_str()),
      m_done(connection, scoped(one,
                                "SELECT item_no, at, entry_id, requirement_no, method, stated_minutes, stated_landings,"
                                " stated_inflations, minutes, landings, inflations, ref, paper FROM done WHERE at < ?",
                                "item_no", " ORDER BY item_no, at, entry_id")
                             .c_str()),
      // The first closing of an inspection is the one that holds: it is read last.
      m_closings(connection, scoped(one, "SELECT inspection, outcome FROM closing WHERE 1 = 1", "inspection",
                                    " ORDER BY inspection, at DESC, entry_id DESC")
                                 .c_str()),
      m_revocations(connection, scoped(one, "SELECT inspection FROM revocation WHERE 1 = 1", "inspection", "").c_str()),
      m_itemEvents(
          connection,
          scoped(one,
                 "SELECT subject_no, at, entry_id, event, celsius, lasted FROM occurrence WHERE sort = 1 AND at < ?",
                 "subject_no", " ORDER BY subject_no, at, entry_id")
              .c_str()),
      m_balloonEvents(
          connection,
          scoped(one,
                 "SELECT s.item_no, o.at, o.entry_id, o.event, o.celsius, o.lasted FROM occurrence o JOIN stay s"
                 " ON s.balloon_no = o.subject_no AND (s.from_at, s.from_id) <= (o.at, o.entry_id)"
                 " AND (s.until_at IS NULL OR (s.until_at, s.until_id) > (o.at, o.entry_id))"
                 " WHERE o.sort = 2 AND o.at < ?",
                 "s.item_no", " ORDER BY s.item_no, o.at, o.entry_id")
              .c_str()),
      m_defects(connection, scoped(one,
                                   "SELECT item_no, at, entry_id, defect_no, mark, severity, what, until_day,"
                                   " until_minutes, reading_id FROM defect_mark WHERE at < ?",
                                   "item_no", " ORDER BY item_no, at, entry_id")
                                .c_str()),
      m_operations(connection, "SELECT balloon_no, operations FROM balloon_entered WHERE stands = 1 AND day <= ?"),
      m_operationsOf(connection,
                     "SELECT operations FROM balloon_entered WHERE stands = 1 AND day <= ? AND balloon_no = ?"),
      m_service(connection) {}

template <class... Values>
void FactsReader::run(Statement& statement, std::optional<std::int64_t> item, const Values&... values) {
    if (m_one)
        statement.run(values..., item.value_or(0));
    else
        statement.run(values...);
}

std::vector<ItemFacts> FactsReader::read(CivilDate on, std::optional<std::int64_t> item) {
    const auto end = Moment::endOf(on);
    m_working.clear();
    if (!m_one) {
        m_names.readAll();
        m_working.reserve(m_names.count());
    }
    readItems(on, item);
    readStays(end, item);
    readKits(end, item);
    m_releases.clear();
    if (!m_one)
        readReleases();
    readDone(end, item);
    readEvents(m_itemEvents, end, item);
    readEvents(m_balloonEvents, end, item);
    readDefects(end, item);
    readOperations(on);
    readService(end);
    std::vector<ItemFacts> facts;
    facts.reserve(m_working.size());
    for (auto& working : m_working) {
        finishClock(working, end);
        facts.push_back(std::move(working.facts));
    }
    return facts;
}

void FactsReader::readItems(CivilDate on, std::optional<std::int64_t> item) {
    run(m_items, item, on.dayNumber());
    while (m_items.next()) {
        Working working;
        working.item = m_items.read<std::int64_t>();
        auto& facts = working.facts;
        facts.id = ItemId(m_names.text(working.item));
        facts.entered = m_items.read<CivilDate>();
        facts.kind = m_items.read<ItemKind>();
        facts.serial = m_items.read<std::optional<std::string>>();
        facts.type = m_items.read<std::optional<std::string>>();
        if (const auto made = m_items.read<std::optional<std::string>>())
            facts.made = monthOrDay(*made, m_items);
        facts.broughtForward.minutes = m_items.read<std::optional<Minutes>>();
        facts.broughtForward.landings = m_items.read<std::optional<Landings>>();
        facts.broughtForward.inflations = m_items.read<std::optional<Inflations>>();
        m_working.push_back(std::move(working));
    }
}

void FactsReader::readStays(Moment end, std::optional<std::int64_t> item) {
    struct Stretch {
        Working* working;
        std::int64_t balloon;
        Usage in;
    };
    std::vector<Stretch> open;
    Walk walk(m_working);
    run(m_stays, item, end.minutes());
    while (m_stays.next()) {
        auto* working = walk.to(m_stays.read<std::int64_t>());
        if (!working)
            continue;
        const auto balloon = m_stays.read<std::int64_t>();
        const auto place = m_stays.read<std::string>();
        const auto until = m_stays.read<std::optional<Moment>>();
        Usage in, out;
        in.minutes = m_stays.read<Minutes>();
        in.landings = m_stays.read<Landings>();
        in.inflations = m_stays.read<Inflations>();
        if (until && *until < end) {
            out.minutes = m_stays.read<Minutes>();
            out.landings = m_stays.read<Landings>();
            out.inflations = m_stays.read<Inflations>();
            working->use += out - in;
            continue;
        }
        working->balloon = balloon;
        working->facts.balloon = Registration(m_names.text(balloon));
        working->facts.place = place;
        open.push_back({working, balloon, in});
    }
    std::unordered_map<std::int64_t, std::size_t> places;
    std::vector<FlightTotals::Asked> asked;
    for (const auto& stretch : open)
        if (places.emplace(stretch.balloon, asked.size()).second)
            asked.push_back({stretch.balloon, end});
    const auto flown = m_totals.before(asked);
    for (const auto& stretch : open)
        stretch.working->use += flown[places.at(stretch.balloon)] - stretch.in;
}

void FactsReader::readKits(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(m_kits, item, end.minutes());
    while (m_kits.next()) {
        auto* working = walk.to(m_kits.read<std::int64_t>());
        Usage use;
        use.minutes = m_kits.read<Minutes>();
        use.landings = m_kits.read<Landings>();
        use.inflations = m_kits.read<Inflations>();
        if (working)
            working->use += use;
    }
}

template <class... Of>
void FactsReader::readReleases(const Of&... inspection) {
    m_closings.run(inspection...);
    while (m_closings.next()) {
        auto closed = m_closings.read<std::string>();
        const bool released = m_closings.read<int>() == static_cast<int>(Outcome::Released);
        m_releases[std::move(closed)] = released ? Release::Holds : Release::None;
    }
    m_revocations.run(inspection...);
    while (m_revocations.next())
        m_releases[m_revocations.read<std::string>()] = Release::Revoked;
}

FactsReader::Release FactsReader::releaseOf(const std::optional<std::string>& ref) {
    if (!ref)
        return Release::None;
    if (m_one && !m_releases.contains(*ref)) {
        m_releases.emplace(*ref, Release::None);
        readReleases(*ref);
    }
    const auto known = m_releases.find(*ref);
    return known == m_releases.end() ? Release::None : known->second;
}

void FactsReader::readDone(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    // An item's history is gathered here and then kept in a vector of its own size.
    std::vector<Accomplishment> history;
    Working* of = nullptr;
    const auto keep = [&] {
        if (of)
            of->facts.done.assign(std::make_move_iterator(history.begin()), std::make_move_iterator(history.end()));
        history.clear();
    };
    run(m_done, item, end.minutes());
    while (m_done.next()) {
        auto* working = walk.to(m_done.read<std::int64_t>());
        if (!working)
            continue;
        if (working != of)
            keep();
        of = working;
        auto& done = history.emplace_back();
        done.stamp.at = m_done.read<Moment>();
        done.stamp.id = m_done.read<EntryId>();
        done.requirement = RequirementId(m_names.read(m_done));
        done.method = m_done.read<std::optional<std::string>>().value_or("");
        done.stated.minutes = m_done.read<std::optional<Minutes>>();
        done.stated.landings = m_done.read<std::optional<Landings>>();
        done.stated.inflations = m_done.read<std::optional<Inflations>>();
        done.clock.minutes = m_done.read<std::optional<Minutes>>();
        done.clock.landings = m_done.read<std::optional<Landings>>();
        done.clock.inflations = m_done.read<std::optional<Inflations>>();
        const auto release = releaseOf(m_done.read<std::optional<std::string>>());
        const bool paper = m_done.read<bool>();
        if (release == Release::Holds)
            done.evidence = Evidence::Signed;
        else if (paper)
            done.evidence = Evidence::Paper;
        if (release == Release::Revoked)
            history.pop_back();
    }
    keep();
}

void FactsReader::readEvents(Statement& statement, Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(statement, item, end.minutes());
    while (statement.next()) {
        auto* working = walk.to(statement.read<std::int64_t>());
        if (!working)
            continue;
        Occurrence event;
        event.stamp.at = statement.read<Moment>();
        event.stamp.id = statement.read<EntryId>();
        event.event = statement.read<std::string>();
        event.hottest = statement.read<std::optional<Celsius>>();
        event.lasted = statement.read<std::optional<Minutes>>();
        auto& events = working->facts.events;
        events.insert(std::upper_bound(events.begin(), events.end(), event, earlier), std::move(event));
    }
}

void FactsReader::readDefects(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(m_defects, item, end.minutes());
    while (m_defects.next()) {
        auto* working = walk.to(m_defects.read<std::int64_t>());
        if (!working)
            continue;
        DefectMark mark;
        mark.stamp.at = m_defects.read<Moment>();
        mark.stamp.id = m_defects.read<EntryId>();
        mark.defect = DefectId(m_names.read(m_defects));
        mark.kind = m_defects.read<DefectMark::Kind>();
        mark.severity = m_defects.read<Severity>();
        mark.what = m_defects.read<std::string>();
        if (const auto day = m_defects.read<std::optional<CivilDate>>())
            mark.until = *day;
        mark.untilMinutes = m_defects.read<std::optional<Minutes>>();
        mark.failed = m_defects.read<std::optional<EntryId>>();
        working->facts.defects.push_back(std::move(mark));
    }
}

void FactsReader::readOperations(CivilDate on) {
    std::map<std::int64_t, std::vector<std::string>> operations;
    if (m_one) {
        for (const auto& working : m_working)
            if (working.balloon != 0) {
                m_operationsOf.run(on.dayNumber(), working.balloon);
                if (m_operationsOf.next())
                    operations[working.balloon] = m_operationsOf.read<std::vector<std::string>>();
                m_operationsOf.finish();
            }
    } else {
        m_operations.run(on.dayNumber());
        while (m_operations.next()) {
            const auto balloon = m_operations.read<std::int64_t>();
            operations[balloon] = m_operations.read<std::vector<std::string>>();
        }
    }
    for (auto& working : m_working)
        if (const auto found = operations.find(working.balloon); found != operations.end())
            working.facts.operations = found->second;
}

/// An item is out of service by itself, or with the balloon that it is on.
void FactsReader::readService(Moment end) {
    using Out = std::unordered_map<std::int64_t, OutOfService>;
    const auto items = m_one ? Out() : m_service.allOut(Subject::Item, end);
    const auto balloons = m_one ? Out() : m_service.allOut(Subject::Balloon, end);
    const auto among = [](const Out& out, std::int64_t number) {
        const auto found = out.find(number);
        return found == out.end() ? std::nullopt : std::optional(found->second);
    };
    for (auto& working : m_working) {
        auto& out = working.facts.out;
        out = m_one ? m_service.outOf(Subject::Item, working.item, end) : among(items, working.item);
        if (out || working.balloon == 0)
            continue;
        out = m_one ? m_service.outOf(Subject::Balloon, working.balloon, end) : among(balloons, working.balloon);
        if (out)
            out->with = working.facts.balloon;
    }
}

void FactsReader::finishClock(Working& working, Moment end) {
    auto& facts = working.facts;
    const auto& forward = facts.broughtForward;
    facts.clock = forward + working.use;
    if (forward.minutes && forward.landings && forward.inflations)
        return;
    m_use.load(working.item, facts.entered);
    facts.clock = clockBefore(Stamp::before(end), {facts.entered, forward}, facts.done,
                              [&](const Stamp& stamp) { return m_use.before(stamp); });
}

}
