// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/projection/item_projection.h"

#include <algorithm>

namespace crownring {

ItemProjection::ItemProjection(const Connection& connection, Names& names, FlightTotals& totals)
    : m_names(names), m_totals(totals), m_use(connection, totals),
      m_entered(connection,
                "SELECT at, entry_id, day, minutes, landings, inflations FROM item_entered WHERE item_no = ?"
                " ORDER BY at, entry_id"),
      m_stands(
          connection,
          "UPDATE item_entered SET stands = CASE WHEN at = ? AND entry_id = ? THEN 1 ELSE 0 END WHERE item_no = ?"),
      m_balloonEntered(connection,
                       "SELECT at, entry_id FROM balloon_entered WHERE balloon_no = ? ORDER BY at, entry_id"),
      m_balloonStands(connection,
                      "UPDATE balloon_entered SET stands = CASE WHEN at = ? AND entry_id = ? THEN 1 ELSE 0 END"
                      " WHERE balloon_no = ?"),
      m_marks(connection, "SELECT at, entry_id, fitted, balloon_no, carrier_no, place FROM fitting WHERE item_no = ?"
                          " ORDER BY at, entry_id"),
      m_dropStays(connection, "DELETE FROM stay WHERE item_no = ?"),
      m_putStay(connection, "INSERT INTO stay (item_no, from_at, from_id, until_at, until_id, balloon_no, place,"
                            " in_minutes, in_landings, in_inflations, out_minutes, out_landings, out_inflations)"
                            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_spokenOf(connection, "SELECT 1 FROM fitting WHERE item_no = ? UNION ALL SELECT 1 FROM done WHERE item_no = ?"
                             " UNION ALL SELECT 1 FROM kit_flight WHERE item_no = ?"
                             " UNION ALL SELECT 1 FROM reading WHERE item_no = ?"
                             " UNION ALL SELECT 1 FROM defect_mark WHERE item_no = ?"
                             " UNION ALL SELECT 1 FROM told WHERE sort = 1 AND subject_no = ?"
                             " UNION ALL SELECT 1 FROM occurrence WHERE sort = 1 AND subject_no = ? LIMIT 1"),
      m_done(connection, "SELECT at, entry_id, stated_minutes, stated_landings, stated_inflations FROM done"
                         " WHERE item_no = ? ORDER BY at, entry_id"),
      m_settleDone(connection, "UPDATE done SET minutes = ?, landings = ?, inflations = ?"
                               " WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_dropQuestions(connection, "DELETE FROM question WHERE sort = ? AND subject_no = ?"),
      m_putQuestion(connection, "INSERT INTO question (sort, subject_no, at, entry_id, kind, detail)"
                                " VALUES (?, ?, ?, ?, ?, ?)"),
      m_renamed(connection, "SELECT at, entry_id, balloon_no, to_no FROM renaming ORDER BY at, entry_id"),
      m_dropParts(connection, "DELETE FROM part WHERE item_no = ?"),
      m_putPart(connection, "INSERT INTO part (item_no, carrier_no, direct, from_at, from_id, until_at, until_id)"
                            " VALUES (?, ?, ?, ?, ?, ?, ?)"),
      m_dropKits(connection, "DELETE FROM kit_flight WHERE item_no = ? AND carried = 1"),
      m_dropEvents(connection, "DELETE FROM occurrence WHERE sort = 1 AND subject_no = ? AND carried = 1"),
      m_shareKits(connection,
                  "INSERT INTO kit_flight (item_no, at, entry_id, balloon_no, minutes, landings, inflations, carried)"
                  " SELECT CAST(? AS BIGINT), at, entry_id, balloon_no, minutes, landings, inflations, 1"
                  " FROM kit_flight WHERE item_no = ? AND carried = 0 AND (at, entry_id) >= (?, ?)"
                  " AND (at, entry_id) < (?, ?) ON CONFLICT DO NOTHING"),
      m_shareEvents(connection,
                    "INSERT INTO occurrence (sort, subject_no, at, entry_id, event, celsius, lasted, carried)"
                    " SELECT 1, CAST(? AS BIGINT), at, entry_id, event, celsius, lasted, 1 FROM occurrence"
                    " WHERE sort = 1 AND subject_no = ? AND carried = 0 AND (at, entry_id) >= (?, ?)"
                    " AND (at, entry_id) < (?, ?) ON CONFLICT DO NOTHING") {}

void ItemProjection::refreshItem(std::int64_t item) {
    std::vector<Question> questions;
    const auto entered = settleEntered(item, questions);
    settleStays(item, entered, questions);
    settleDone(item, entered, questions);
    write(static_cast<int>(Subject::Item), item, questions);
}

void ItemProjection::refreshBalloon(std::int64_t balloon) {
    std::vector<Question> questions;
    std::vector<Stamp> stamps;
    m_balloonEntered.run(balloon);
    while (m_balloonEntered.next()) {
        const auto at = m_balloonEntered.read<Moment>();
        stamps.push_back({at, m_balloonEntered.read<EntryId>()});
    }
    for (std::size_t i = 1; i < stamps.size(); ++i)
        questions.push_back({Question::Kind::EnteredTwice, m_names.text(balloon), stamps[i], {}});
    if (stamps.empty())
        questions.push_back({Question::Kind::NotEntered, m_names.text(balloon), Stamp::before(Moment()), {}});
    else
        m_balloonStands.run(stamps.front().at.minutes(), stamps.front().id, balloon);
    write(static_cast<int>(Subject::Balloon), balloon, questions);
}

std::optional<ItemProjection::Standing> ItemProjection::settleEntered(std::int64_t item,
                                                                      std::vector<Question>& questions) {
    std::optional<Standing> standing;
    m_entered.run(item);
    while (m_entered.next()) {
        Stamp stamp;
        stamp.at = m_entered.read<Moment>();
        stamp.id = m_entered.read<EntryId>();
        if (standing) {
            questions.push_back({Question::Kind::EnteredTwice, m_names.text(item), stamp, {}});
            continue;
        }
        ClockOrigin origin;
        origin.entered = m_entered.read<CivilDate>();
        origin.broughtForward.minutes = m_entered.read<std::optional<Minutes>>();
        origin.broughtForward.landings = m_entered.read<std::optional<Landings>>();
        origin.broughtForward.inflations = m_entered.read<std::optional<Inflations>>();
        standing = Standing{std::move(stamp), origin};
    }
    if (standing)
        m_stands.run(standing->stamp.at.minutes(), standing->stamp.id, item);
    else if (isSpokenOf(item))
        questions.push_back({Question::Kind::NotEntered, m_names.text(item), Stamp::before(Moment()), {}});
    return standing;
}

void ItemProjection::settleStays(std::int64_t item, const std::optional<Standing>& entered,
                                 std::vector<Question>& questions) {
    auto found = whereabouts(ItemId(m_names.text(item)), marksOf(item), renamings());
    std::move(found.questions.begin(), found.questions.end(), std::back_inserter(questions));
    found.stays = settleCarriage(item, std::move(found.stays));

    m_dropStays.run(item);
    for (const auto& stay : found.stays) {
        const auto balloon = *m_names.find(stay.balloon);
        // Flights before 00:00 of the day of entry are inside what was brought forward.
        auto from = stay.from;
        if (entered)
            from = std::max(from, Stamp::before(Moment::startOf(entered->origin.entered)));
        const auto in = m_totals.before(balloon, from);
        Figures out;
        std::optional<std::int64_t> untilAt;
        std::optional<EntryId> untilId;
        if (stay.until) {
            untilAt = stay.until->at.minutes();
            untilId = stay.until->id;
            out = newFigures + m_totals.before(balloon, std::max(from, *stay.until));
        }
        m_putStay.run(item, stay.from.at.minutes(), stay.from.id, untilAt, untilId, balloon, stay.place, in.minutes,
                      in.landings, in.inflations, out.minutes, out.landings, out.inflations);
    }
}

std::vector<FittingMark> ItemProjection::marksOf(std::int64_t item) {
    std::vector<FittingMark> marks;
    m_marks.run(item);
    while (m_marks.next()) {
        FittingMark mark;
        mark.stamp.at = m_marks.read<Moment>();
        mark.stamp.id = m_marks.read<EntryId>();
        mark.fitted = m_marks.read<bool>();
        if (const auto balloon = m_marks.read<std::optional<std::int64_t>>())
            mark.balloon = Registration(m_names.text(*balloon));
        if (const auto carrier = m_marks.read<std::optional<std::int64_t>>())
            mark.carrier = ItemId(m_names.text(*carrier));
        mark.place = m_marks.read<std::string>();
        marks.push_back(std::move(mark));
    }
    return marks;
}

const std::vector<Renaming>& ItemProjection::renamings() {
    if (m_renamings)
        return *m_renamings;
    m_renamings.emplace();
    m_renamed.run();
    while (m_renamed.next()) {
        Renaming each;
        each.stamp.at = m_renamed.read<Moment>();
        each.stamp.id = m_renamed.read<EntryId>();
        each.from = Registration(m_names.read(m_renamed));
        each.to = Registration(m_names.read(m_renamed));
        m_renamings->push_back(std::move(each));
    }
    return *m_renamings;
}

bool ItemProjection::isSpokenOf(std::int64_t item) {
    m_spokenOf.run(item, item, item, item, item, item, item);
    const bool spoken = m_spokenOf.next();
    m_spokenOf.finish();
    return spoken;
}

void ItemProjection::settleDone(std::int64_t item, const std::optional<Standing>& entered,
                                std::vector<Question>& questions) {
    std::vector<Accomplishment> done;
    m_done.run(item);
    while (m_done.next()) {
        Accomplishment each;
        each.stamp.at = m_done.read<Moment>();
        each.stamp.id = m_done.read<EntryId>();
        each.stated.minutes = m_done.read<std::optional<Minutes>>();
        each.stated.landings = m_done.read<std::optional<Landings>>();
        each.stated.inflations = m_done.read<std::optional<Inflations>>();
        done.push_back(std::move(each));
    }
    if (done.empty())
        return;
    if (!entered) {
        for (const auto& each : done)
            m_settleDone.run(each.stated.minutes, each.stated.landings, each.stated.inflations, item,
                             each.stamp.at.minutes(), each.stamp.id);
        return;
    }
    m_use.load(item, entered->origin.entered);
    const auto used = [&](const Stamp& stamp) { return m_use.before(stamp); };
    auto asked = settleClocks(ItemId(m_names.text(item)), done, entered->origin, used);
    std::move(asked.begin(), asked.end(), std::back_inserter(questions));
    for (const auto& each : done)
        m_settleDone.run(each.clock.minutes, each.clock.landings, each.clock.inflations, item, each.stamp.at.minutes(),
                         each.stamp.id);
}

void ItemProjection::write(int sort, std::int64_t subject, const std::vector<Question>& questions) {
    m_dropQuestions.run(sort, subject);
    for (const auto& question : questions)
        m_putQuestion.run(sort, subject, question.stamp.at.minutes(), question.stamp.id,
                          static_cast<int>(question.kind), question.detail.written());
}

}
