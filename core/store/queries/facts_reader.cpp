// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/facts_reader.h"

#include "store/projection/kept.h"
#include "store/projection/usage_row.h"
#include "store/queries/scoped.h"

#include <algorithm>
#include <iterator>
#include <unordered_map>
#include <utility>

namespace crownring {

namespace {

DayOrMonth monthOrDay(const std::string& text, const Statement& row) {
    const auto date = DayOrMonth::parse(text);
    if (!date)
        throw row.unread();
    return *date;
}

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
    : m_names(names), m_use(connection, totals), m_balloons(connection, names, totals, one), m_one(one),
      m_items(connection, scoped(one,
                                 "SELECT item_no, day, kind, serial, type, made, minutes, landings, inflations"
                                 " FROM item_entered WHERE stands = 1",
                                 "item_no", " ORDER BY item_no")
                              .c_str()),
      m_stays(connection, scoped(one,
                                 "SELECT item_no, from_at, from_id, until_at, until_id, balloon_no, place, in_minutes,"
                                 " in_landings, in_inflations, out_minutes, out_landings, out_inflations FROM stay"
                                 " WHERE 1 = 1",
                                 "item_no", " ORDER BY item_no, from_at, from_id")
                              .c_str()),
      m_carriers(connection, scoped(one,
                                    "SELECT item_no, from_at, from_id, until_at, until_id, carrier_no, direct FROM part"
                                    " WHERE 1 = 1",
                                    "item_no", " ORDER BY item_no, from_at, from_id, direct, carrier_no")
                                 .c_str()),
      m_kits(connection, scoped(one,
                                "SELECT k.item_no, CAST(SUM(k.minutes) AS BIGINT), CAST(SUM(k.landings) AS BIGINT),"
                                " CAST(SUM(k.inflations) AS BIGINT),"
                                " CAST(SUM(k.at) AS BIGINT), CAST(SUM(k.at * k.minutes) AS BIGINT),"
                                " CAST(SUM(CASE WHEN k.at < ? THEN k.minutes ELSE 0 END) AS BIGINT),"
                                " CAST(SUM(CASE WHEN k.at < ? THEN k.landings ELSE 0 END) AS BIGINT),"
                                " CAST(SUM(CASE WHEN k.at < ? THEN k.inflations ELSE 0 END) AS BIGINT)"
                                " FROM kit_flight k JOIN item_entered e"
                                " ON e.item_no = k.item_no AND e.stands = 1 AND k.at >= e.day * 1440 WHERE 1 = 1",
                                "k.item_no", " GROUP BY k.item_no ORDER BY k.item_no")
                             .c_str()),
      m_done(connection,
             scoped(one,
                    "SELECT item_no, at, entry_id, requirement_no, method, stated_minutes, stated_landings,"
                    " stated_inflations, minutes, landings, inflations, ref, paper, expires FROM done WHERE 1 = 1",
                    "item_no", " ORDER BY item_no, at, entry_id")
                 .c_str()),
      // Few closings are lists, so all of them are looked for from there.
      m_lists(
          connection,
          scoped(
              one,
              "SELECT o.item_no, o.inspection, c.at, c.entry_id, c.outcome FROM " +
                  std::string(one ? "opening o CROSS JOIN closing c" : "closing c CROSS JOIN opening o") +
                  " WHERE c.outcome IN (1, 3) AND o.inspection = c.inspection AND NOT EXISTS (SELECT 1 FROM opening f"
                  " WHERE f.inspection = o.inspection AND (f.at, f.entry_id) < (o.at, o.entry_id))",
              "o.item_no", " ORDER BY o.item_no, c.at, c.entry_id")
              .c_str()),
      m_events(connection, scoped(one,
                                  "SELECT subject_no, at, entry_id, event, celsius, lasted FROM occurrence"
                                  " WHERE sort = 1",
                                  "subject_no", " ORDER BY subject_no, at, entry_id")
                               .c_str()),
      m_defects(connection, scoped(one,
                                   "SELECT item_no, at, entry_id, defect_no, mark, severity, what, until_day,"
                                   " until_minutes, reading_id, cleared_in, raised FROM defect_mark WHERE 1 = 1",
                                   "item_no", " ORDER BY item_no, at, entry_id")
                                .c_str()),
      m_service(connection), m_releases(connection, one) {}

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
    m_accounts.clear();
    m_tally = {};
    if (!m_one) {
        startOver();
        m_names.readAll();
        m_working.reserve(m_names.count());
        m_accounts.push_back({Part::Balloon, Account::all, m_balloons.readAll()});
    }
    readItems(on, item);
    readStays(end, item);
    readCarriers(end, item);
    readKits(end, item);
    readDone(end, item);
    readEvents(end, item);
    readDefects(end, item);
    readLists(end, item);
    readOperations(on);
    readService(end);
    if (!std::exchange(m_serviceRead, true))
        m_accounts.push_back(m_service.account());
    m_accounts.push_back({Part::Facts, item.value_or(Account::all), m_tally});
    std::vector<ItemFacts> facts;
    facts.reserve(m_working.size());
    m_carried.clear();
    for (auto& working : m_working) {
        finishClock(working, end);
        if (!working.carried.empty())
            m_carried.emplace(working.facts.id, std::move(working.carried));
        facts.push_back(std::move(working.facts));
    }
    return facts;
}

void FactsReader::startOver() {
    m_balloons.begin();
    m_balloonsRead.clear();
    m_serviceRead = false;
    m_releases.begin();
}

FactsReader::Working* FactsReader::rowOf(Walk& walk, Statement& row, int columns) {
    m_tally.add(row.digest(columns));
    return walk.to(row.read<std::int64_t>());
}

void FactsReader::readItems(CivilDate on, std::optional<std::int64_t> item) {
    run(m_items, item);
    while (m_items.next()) {
        m_tally.add(m_items.digest());
        Working working;
        working.item = m_items.read<std::int64_t>();
        auto& facts = working.facts;
        facts.entered = m_items.read<CivilDate>();
        if (on < facts.entered)
            continue;
        facts.id = ItemId(m_names.text(working.item));
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

void FactsReader::readBalloon(std::int64_t balloon) {
    if (m_one && m_balloonsRead.insert(balloon).second)
        m_accounts.push_back({Part::Balloon, balloon, m_balloons.read(balloon)});
}

void FactsReader::readStays(Moment end, std::optional<std::int64_t> item) {
    std::vector<Working*> open;
    std::vector<Usage> in;
    std::vector<FlightTotals::Asked> asked;
    Walk walk(m_working);
    run(m_stays, item);
    while (m_stays.next()) {
        auto* working = rowOf(walk, m_stays);
        Stamp from;
        from.at = m_stays.read<Moment>();
        if (!working || !(from.at < end))
            continue;
        from.id = m_stays.read<EntryId>();
        const auto until = m_stays.read<std::optional<Moment>>();
        const auto untilId = m_stays.read<std::optional<EntryId>>();
        const auto balloon = m_stays.read<std::int64_t>();
        readBalloon(balloon);
        for (const auto& event : m_balloons.events(balloon)) {
            const bool before = until && !(event.stamp < Stamp{*until, untilId.value_or(EntryId())});
            if (event.stamp.at < end && ((!(event.stamp < from) && !before) ||
                                         m_balloons.flewIn(balloon, event.stamp.at.on(), from, until, untilId)))
                working->facts.events.push_back(event);
        }
        auto place = m_stays.read<std::string>();
        const auto began = usageFrom(m_stays);
        if (until && *until < end) {
            working->use += usageFrom(m_stays) - began;
            continue;
        }
        working->balloon = balloon;
        working->facts.balloon = Registration(m_names.text(balloon));
        working->facts.place = std::move(place);
        open.push_back(working);
        in.push_back(began);
        asked.push_back({balloon, end});
    }
    const auto flown = m_balloons.flownBefore(asked);
    for (std::size_t at = 0; at < open.size(); ++at)
        open[at]->use += flown[at] - in[at];
}

void FactsReader::readCarriers(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(m_carriers, item);
    while (m_carriers.next()) {
        auto* working = rowOf(walk, m_carriers);
        Stamp from;
        from.at = m_carriers.read<Moment>();
        from.id = m_carriers.read<EntryId>();
        const auto until = m_carriers.read<std::optional<Moment>>();
        const auto untilId = m_carriers.read<std::optional<EntryId>>();
        if (!working || !(from.at < end))
            continue;
        const auto carrier = m_carriers.read<std::int64_t>();
        const bool isDirect = m_carriers.read<bool>();
        const bool isPast = until && *until < end;
        if (isDirect && !isPast)
            working->facts.carrier = ItemId(m_names.text(carrier));
        if (isDirect)
            continue;
        if (!isPast)
            working->carriers.push_back(carrier);
        const auto ended = until ? std::optional(Stamp{*until, untilId.value_or(EntryId())}) : std::nullopt;
        working->carried.push_back({ItemId(m_names.text(carrier)), from, ended});
    }
}

void FactsReader::readKits(Moment end, std::optional<std::int64_t> item) {
    constexpr int whateverTheDay = 6; // when they were flown, too: what came before a day depends on it
    const auto until = end.minutes();
    Walk walk(m_working);
    run(m_kits, item, until, until, until);
    while (m_kits.next()) {
        auto* working = rowOf(walk, m_kits, whateverTheDay);
        for (int column = 1; column < whateverTheDay; ++column)
            m_kits.skip();
        const auto use = usageFrom(m_kits);
        if (working)
            working->use += use;
    }
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
    run(m_done, item);
    while (m_done.next()) {
        // What became of the release that it stands under decides whether it counts.
        RowDigest digest;
        digest.add(static_cast<std::int64_t>(m_done.digest()));
        auto* working = walk.to(m_done.read<std::int64_t>());
        Accomplishment done;
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
        const auto ref = m_done.read<std::optional<std::string>>();
        const auto ground = m_done.read<Ground>();
        done.expires = m_done.read<std::optional<CivilDate>>();
        static const Release none;
        const auto& release = ref ? m_releases.of(*ref) : none;
        release.addTo(digest);
        m_tally.add(digest.value());
        if (!working || release.isWithheld(end) || !(done.stamp.at < end))
            continue;
        if (ground == Ground::Review || release.isSigned(end))
            done.evidence = Evidence::Signed;
        else if (ground == Ground::Paper)
            done.evidence = Evidence::Paper;
        if (working != of)
            keep();
        of = working;
        history.push_back(std::move(done));
    }
    keep();
}

void FactsReader::readEvents(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(m_events, item);
    while (m_events.next()) {
        auto* working = rowOf(walk, m_events);
        auto event = occurrenceFrom(m_events);
        if (working && event.stamp.at < end)
            working->facts.events.push_back(std::move(event));
    }
    for (auto& working : m_working) {
        auto& events = working.facts.events;
        std::ranges::sort(events, {}, &Occurrence::stamp);
        // What was fitted and in a kit of that day, too, suffered it once.
        const auto same = [](const Occurrence& a, const Occurrence& b) { return a.stamp == b.stamp; };
        events.erase(std::unique(events.begin(), events.end(), same), events.end());
    }
}

void FactsReader::readDefects(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(m_defects, item);
    while (m_defects.next()) {
        // What became of the visit that it was cleared in decides whether it counts.
        RowDigest digest;
        digest.add(static_cast<std::int64_t>(m_defects.digest()));
        auto* working = walk.to(m_defects.read<std::int64_t>());
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
        const auto visit = m_defects.read<std::optional<std::string>>();
        mark.raised = m_defects.read<bool>();
        if (visit) {
            const auto& release = m_releases.of(*visit);
            release.addTo(digest);
            if (!release.answersFor(mark.stamp, end))
                mark.unsignedIn = InspectionId(*visit);
        }
        m_tally.add(digest.value());
        if (!working || !(mark.stamp.at < end))
            continue;
        working->facts.defects.push_back(std::move(mark));
    }
}

namespace {

/// The latest of a visit holds.
void addIncomplete(std::vector<IncompleteWork>& works, IncompleteWork work) {
    std::erase_if(works, [&](const IncompleteWork& each) { return each.inspection == work.inspection; });
    works.push_back(std::move(work));
}

}

void FactsReader::readLists(Moment end, std::optional<std::int64_t> item) {
    Walk walk(m_working);
    run(m_lists, item);
    while (m_lists.next()) {
        RowDigest digest;
        digest.add(static_cast<std::int64_t>(m_lists.digest()));
        auto* working = walk.to(m_lists.read<std::int64_t>());
        auto inspection = m_lists.read<std::string>();
        auto closed = stampFrom(m_lists);
        const auto outcome = m_lists.read<Outcome>();
        const auto& release = m_releases.of(inspection);
        release.addTo(digest);
        m_tally.add(digest.value());
        if (working && outcome == Outcome::Discrepancies && release.isPending(end) && release.closed == closed)
            working->facts.lists.push_back({InspectionId(inspection), closed});
        if (working && outcome == Outcome::Incomplete && closed.at < end && !release.isClosed(end))
            addIncomplete(working->facts.incomplete, {InspectionId(inspection), std::move(closed)});
    }
}

}
