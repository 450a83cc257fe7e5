// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/projection/projector.h"

#include "record/entry_json.h"
#include "registry/item_facts.h"
#include "registry/question.h"
#include "store/projection/kept.h"

#include <nlohmann/json.hpp>

namespace crownring {

namespace {

/// It says itself who signed what, where the release of an inspection does not.
bool isPaper(const RequirementDone& done) { return !done.ref.empty() && done.signatory && !done.licence.empty(); }

/// It bars more than it did; of another defect or item nobody knows what it barred.
bool isRaised(const DefectFound& found, const Entry& written) {
    const auto* first = std::get_if<DefectFound>(&written.body);
    return !first || rankOf(first->severity) < rankOf(found.severity) || (found.reading && !first->reading) ||
           first->defect != found.defect || first->item != found.item;
}

template <class Said>
concept WithoutRows = !Kind<Said>::hasRows;

}

Projector::Projector(const Connection& connection, Names& names)
    : m_connection(connection), m_names(names), m_totals(connection), m_items(connection, names, m_totals),
      m_putItem(connection, "INSERT INTO item_entered (item_no, at, entry_id, day, kind, serial, type, made, minutes,"
                            " landings, inflations) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_dropItem(connection, "DELETE FROM item_entered WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putBalloon(connection, "INSERT INTO balloon_entered (balloon_no, at, entry_id, day, title, operations)"
                               " VALUES (?, ?, ?, ?, ?, ?)"),
      m_dropBalloon(connection, "DELETE FROM balloon_entered WHERE balloon_no = ? AND at = ? AND entry_id = ?"),
      m_putFitting(connection, "INSERT INTO fitting (item_no, at, entry_id, fitted, balloon_no, carrier_no, place)"
                               " VALUES (?, ?, ?, ?, ?, ?, ?)"),
      m_dropFitting(connection, "DELETE FROM fitting WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putKitFlight(connection, "INSERT INTO kit_flight (item_no, at, entry_id, balloon_no, minutes, landings,"
                                 " inflations) VALUES (?, ?, ?, ?, ?, ?, ?)"
                                 " ON CONFLICT (item_no, at, entry_id) DO UPDATE SET balloon_no = excluded.balloon_no,"
                                 " minutes = excluded.minutes, landings = excluded.landings,"
                                 " inflations = excluded.inflations, carried = 0"),
      m_dropKitFlight(connection, "DELETE FROM kit_flight WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putDone(connection, "INSERT INTO done (item_no, at, entry_id, requirement_no, method, stated_minutes,"
                            " stated_landings, stated_inflations, ref, paper, expires)"
                            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_dropDone(connection, "DELETE FROM done WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putOccurrence(connection, "INSERT INTO occurrence (sort, subject_no, at, entry_id, event, celsius, lasted)"
                                  " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (sort, subject_no, at, entry_id)"
                                  " DO UPDATE SET event = excluded.event, celsius = excluded.celsius,"
                                  " lasted = excluded.lasted, carried = 0"),
      m_dropOccurrence(connection,
                       "DELETE FROM occurrence WHERE sort = ? AND subject_no = ? AND at = ? AND entry_id = ?"),
      m_flownAs(connection, "SELECT DISTINCT item_no FROM kit_flight WHERE balloon_no = ? AND carried = 0"
                            " AND at >= ? AND at < ? AND at + minutes >= ?"),
      m_putFallen(connection, "INSERT INTO occurrence (sort, subject_no, at, entry_id, event, celsius, lasted)"
                              " SELECT 1, CAST(? AS BIGINT), at, entry_id, event, celsius, lasted FROM occurrence"
                              " WHERE sort = 2 AND subject_no = ? AND at >= ? AND at < ?"
                              " ON CONFLICT (sort, subject_no, at, entry_id) DO UPDATE SET carried = 0"),
      m_fallen(connection, "SELECT at, entry_id FROM occurrence WHERE sort = 2 AND subject_no = ? AND at >= ?"
                           " AND at < ?"),
      m_aboard(connection, "SELECT 1 FROM kit_flight WHERE balloon_no = ? AND at >= ? AND at < ?"
                           " AND at + minutes >= ? AND item_no = ? AND carried = 0"),
      m_putReading(connection,
                   "INSERT INTO reading (item_no, at, entry_id, quantity, value, held, below, unit, gore, panel_row,"
                   " direction, jaw_mm, pressure_pa, area_cm2, method, inspection, line, tester, confirmed, zone)"
                   " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_dropReading(connection, "DELETE FROM reading WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putRepair(connection, "INSERT INTO repair (item_no, at, entry_id, method, gore, panel_row, width_mm, height_mm,"
                              " lot, defect, inspection, zone) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_dropRepair(connection, "DELETE FROM repair WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putFabric(connection, "INSERT INTO fabric_stated (item_no, at, entry_id, lot, fabric, first_gore, last_gore,"
                              " first_row, last_row) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_dropFabric(connection, "DELETE FROM fabric_stated WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putClosing(connection, "INSERT INTO closing (inspection, at, entry_id, outcome) VALUES (?, ?, ?, ?)"),
      m_dropClosing(connection, "DELETE FROM closing WHERE inspection = ? AND at = ? AND entry_id = ?"),
      m_putRevocation(connection, "INSERT INTO revocation (inspection, at, entry_id) VALUES (?, ?, ?)"),
      m_dropRevocation(connection, "DELETE FROM revocation WHERE inspection = ? AND at = ? AND entry_id = ?"),
      m_putOpening(connection, "INSERT INTO opening (inspection, item_no, at, entry_id) VALUES (?, ?, ?, ?)"
                               " ON CONFLICT DO NOTHING"),
      m_dropOpening(connection, "DELETE FROM opening WHERE inspection = ? AND item_no = ? AND at = ? AND entry_id = ?"),
      m_putApproval(connection, "INSERT INTO approval (inspection, at, entry_id) VALUES (?, ?, ?)"),
      m_dropApproval(connection, "DELETE FROM approval WHERE inspection = ? AND at = ? AND entry_id = ?"),
      m_putTold(connection, "INSERT INTO told (sort, subject_no, at, entry_id) VALUES (?, ?, ?, ?)"
                            " ON CONFLICT DO NOTHING"),
      m_dropTold(connection, "DELETE FROM told WHERE sort = ? AND subject_no = ? AND at = ? AND entry_id = ?"),
      m_putMark(connection,
                "INSERT INTO defect_mark (item_no, at, entry_id, defect_no, mark, severity, what, until_day,"
                " until_minutes, reading_id, cleared_in, raised) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_dropMark(connection, "DELETE FROM defect_mark WHERE item_no = ? AND at = ? AND entry_id = ?"),
      m_putAdoption(connection, "INSERT INTO adoption (at, entry_id, programme, digest, bound, document)"
                                " VALUES (?, ?, ?, ?, ?, ?)"),
      m_dropAdoption(connection, "DELETE FROM adoption WHERE at = ? AND entry_id = ?"),
      m_dropIdle(connection, "DELETE FROM idle_correction WHERE root_id = ?"),
      m_putIdle(connection, "INSERT INTO idle_correction (root_id, entry_id, at) VALUES (?, ?, ?)"),
      m_dropUnread(connection, "DELETE FROM question WHERE sort = ? AND subject_no = ?"),
      m_putUnread(connection, "INSERT INTO question (sort, subject_no, at, entry_id, kind, detail)"
                              " VALUES (?, ?, ?, ?, ?, ?)"),
      m_putService(connection, "INSERT INTO service (sort, subject_no, at, entry_id, state, buyer)"
                               " VALUES (?, ?, ?, ?, ?, ?)"),
      m_dropService(connection, "DELETE FROM service WHERE sort = ? AND subject_no = ? AND at = ? AND entry_id = ?"),
      m_putRenaming(connection, "INSERT INTO renaming (balloon_no, at, entry_id, to_no) VALUES (?, ?, ?, ?)"),
      m_dropRenaming(connection, "DELETE FROM renaming WHERE balloon_no = ? AND at = ? AND entry_id = ?"),
      m_formerly(connection, "SELECT balloon_no FROM renaming WHERE to_no = ?"),
      m_everOn(connection, "SELECT DISTINCT item_no FROM fitting WHERE balloon_no = ?"),
      m_everPartOf(connection, "SELECT DISTINCT item_no FROM fitting WHERE carrier_no = ?"),
      m_under(connection,
              "SELECT DISTINCT s.item_no FROM stay s WHERE s.balloon_no = ? AND (s.until_at IS NULL OR s.until_at >= ?)"
              " AND (s.from_at >= ? OR s.until_at IS NOT NULL"
              " OR EXISTS (SELECT 1 FROM done d WHERE d.item_no = s.item_no AND d.at >= ?)"
              " OR EXISTS (SELECT 1 FROM item_entered e WHERE e.item_no = s.item_no AND e.day >= ?))"),
      m_concernedBy(connection, "SELECT item_no FROM done WHERE ref = ?"
                                " UNION SELECT item_no FROM opening WHERE inspection = ?"
                                " UNION SELECT item_no FROM defect_mark WHERE cleared_in = ?"),
      m_mayBeOn(connection, "WITH RECURSIVE up(item_no) AS (SELECT CAST(? AS BIGINT)"
                            " UNION SELECT f.carrier_no FROM fitting f JOIN up u ON u.item_no = f.item_no"
                            " WHERE f.carrier_no IS NOT NULL),"
                            " may(balloon_no) AS (SELECT balloon_no FROM stay WHERE item_no = ?"
                            " UNION SELECT f.balloon_no FROM fitting f JOIN up u ON u.item_no = f.item_no"
                            " WHERE f.balloon_no IS NOT NULL"
                            " UNION SELECT r.to_no FROM renaming r JOIN may m ON m.balloon_no = r.balloon_no)"
                            " SELECT balloon_no FROM may") {}

/// Puts the rows of an entry.
struct Projector::Put {
    Projector& to;
    const Entry& entry;
    const Entry& written;
    std::int64_t at = momentOf(entry).minutes();

    void operator()(const ItemEntered& body) const {
        to.m_putItem.run(to.item(body.item), at, entry.id, entry.on.dayNumber(), static_cast<int>(body.kind),
                         body.serial, body.type, body.made ? std::optional(body.made->iso()) : std::nullopt,
                         body.broughtForward.minutes, body.broughtForward.landings, body.broughtForward.inflations);
    }
    void operator()(const BalloonEntered& body) const {
        const auto number = to.balloon(body.balloon);
        to.m_enteredBalloons.insert(number);
        to.touch(Touch::Of::Balloon, number);
        to.m_putBalloon.run(number, at, entry.id, entry.on.dayNumber(), body.title,
                            nlohmann::json(body.operations).dump());
    }
    void operator()(const ItemFitted& body) const { fitting(true, body, body.to); }
    void operator()(const ItemRemoved& body) const { fitting(false, body, body.from); }
    template <class Fitting>
    void fitting(bool fitted, const Fitting& body, const std::optional<ItemId>& carrier) const {
        const auto* balloon = balloonUnder(body);
        to.m_putFitting.run(to.item(body.item), at, entry.id, fitted,
                            balloon ? std::optional(to.balloon(*balloon)) : std::nullopt,
                            carrier ? std::optional(to.m_names.findOrMake(*carrier)) : std::nullopt, body.place);
    }
    void operator()(const FlightLogged& body) const {
        const auto number = to.balloon(body.balloon);
        to.touch(Touch::Of::Balloon, number);
        to.m_totals.add(number, entry, body);
        if (body.kit)
            for (const auto& id : *body.kit) {
                const auto aboard = to.item(id);
                to.m_putKitFlight.run(aboard, at, entry.id, number, body.use.minutes, body.use.landings,
                                      body.use.inflations);
                to.fallOnKit(aboard, number, entry, body.use.minutes, true);
            }
    }
    void operator()(const RequirementDone& body) const { done(body, isPaper(body) ? Ground::Paper : Ground::Said); }
    void operator()(const ReviewSigned& body) const {
        if (const auto requirement = requirementOf(body.act))
            done({body.item, *requirement, {}, {}, {}, {}, {}, body.expires}, Ground::Review);
    }
    void done(const RequirementDone& body, Ground ground) const {
        to.m_putDone.run(to.item(body.item), at, entry.id, to.m_names.findOrMake(body.requirement),
                         body.method.empty() ? std::nullopt : std::optional(body.method), body.clock.minutes,
                         body.clock.landings, body.clock.inflations,
                         body.ref.empty() ? std::nullopt : std::optional(body.ref), static_cast<int>(ground),
                         body.expires ? std::optional(std::int64_t{body.expires->dayNumber()}) : std::nullopt);
    }
    void operator()(const ProgrammeAdopted& body) const {
        to.touch(Touch::Of::Adoptions);
        auto without = body;
        without.document.clear();
        auto adoption = entry;
        adoption.body = without;
        to.m_putAdoption.run(at, entry.id, body.programme, body.digest, canonicalText(adoption), body.document);
    }
    void operator()(const ReadingTaken& body) const {
        const auto& [direction, jaw, pressure, area] = body.conditions;
        to.m_putReading.run(to.item(body.item), at, entry.id, body.quantity, body.value, body.held, body.below,
                            body.unit, body.place.gore, body.place.row, direction, jaw, pressure, area, body.method,
                            body.inspection, body.line, body.tester, body.confirmed, zoneOf(body.place));
    }
    void operator()(const RepairMade& body) const {
        to.m_putRepair.run(to.item(body.item), at, entry.id, body.method, body.place.gore, body.place.row, body.width,
                           body.height, body.lot, body.defect, body.inspection, zoneOf(body.place));
    }
    void operator()(const FabricStated& body) const {
        to.m_putFabric.run(to.item(body.item), at, entry.id, body.lot, body.fabric, body.firstGore, body.lastGore,
                           body.firstRow, body.lastRow);
    }
    void operator()(const InspectionClosed& body) const {
        to.touchItemsOf(body.inspection);
        to.m_putClosing.run(body.inspection, at, entry.id, static_cast<int>(body.outcome));
    }
    void operator()(const ReleaseIncomplete& body) const {
        to.touchItemsOf(body.inspection);
        to.m_putClosing.run(body.inspection, at, entry.id, static_cast<int>(Outcome::Incomplete));
    }
    void operator()(const ReleaseRevoked& body) const {
        to.touchItemsOf(body.inspection);
        to.m_putRevocation.run(body.inspection, at, entry.id);
    }
    void operator()(const InspectionOpened& body) const {
        to.touchItemsOf(body.inspection); // another opening of that name speaks no more
        for (const auto& id : body.items)
            to.m_putOpening.run(body.inspection, to.item(id), at, entry.id);
    }
    void operator()(const ReturnApproved& body) const {
        to.touchItemsOf(body.inspection);
        to.m_putApproval.run(body.inspection, at, entry.id);
    }
    void operator()(const EventReported& body) const {
        const auto [subject, number] = to.subject(body);
        to.m_putOccurrence.run(subject, number, at, entry.id, body.event, body.hottest, body.lasted);
        if (balloonOf(body))
            to.fallOnKits(entry, body, number, true);
    }
    void operator()(const DefectFound& body) const {
        mark(body, DefectMark::Kind::Found, body.severity, body.what, {}, {}, body.reading, {},
             isRaised(body, written));
    }
    void operator()(const DefectDeferred& body) const {
        mark(body, DefectMark::Kind::Deferred, Severity::Barring, body.reason, body.until, body.untilMinutes);
    }
    void operator()(const DefectCleared& body) const {
        mark(body, DefectMark::Kind::Cleared, Severity::Barring, body.what, {}, {}, {}, body.inspection);
    }
    template <class OfDefect>
    void mark(const OfDefect& body, DefectMark::Kind kind, Severity severity, const std::string& what,
              const std::optional<CivilDate>& until = {}, const std::optional<Minutes>& untilMinutes = {},
              const std::optional<EntryId>& reading = {}, const std::optional<InspectionId>& clearedIn = {},
              bool raised = false) const {
        to.m_putMark.run(to.item(body.item), at, entry.id, to.m_names.findOrMake(body.defect), static_cast<int>(kind),
                         static_cast<int>(severity), what,
                         until ? std::optional(std::int64_t{until->dayNumber()}) : std::nullopt, untilMinutes, reading,
                         clearedIn, raised);
    }
    void operator()(const ItemState& body) const { state(Subject::Item, to.item(body.item), body); }
    void operator()(const BalloonState& body) const { state(Subject::Balloon, to.balloon(body.balloon), body); }
    template <class Stated>
    void state(Subject sort, std::int64_t number, const Stated& body) const {
        to.touch(Touch::Of::Service);
        to.m_putService.run(static_cast<int>(sort), number, at, entry.id, static_cast<int>(body.state), body.to);
    }
    void operator()(const BalloonRenamed& body) const {
        const auto balloon = to.balloon(body.balloon);
        to.touch(Touch::Of::Service);
        to.m_putRenaming.run(balloon, at, entry.id, to.balloon(body.to));
        to.touchItemsOf(balloon);
    }
    template <WithoutRows Told>
    void operator()(const Told&) const {}
};

/// Takes the rows of an entry away.
struct Projector::TakeAway {
    Projector& from;
    const Entry& entry;
    std::int64_t at = momentOf(entry).minutes();

    void operator()(const ItemEntered& body) const { from.m_dropItem.run(from.item(body.item), at, entry.id); }
    void operator()(const BalloonEntered& body) const {
        const auto number = from.balloon(body.balloon);
        from.m_enteredBalloons.insert(number);
        from.touch(Touch::Of::Balloon, number);
        from.m_dropBalloon.run(number, at, entry.id);
    }
    void operator()(const ItemFitted& body) const { from.m_dropFitting.run(from.item(body.item), at, entry.id); }
    void operator()(const ItemRemoved& body) const { from.m_dropFitting.run(from.item(body.item), at, entry.id); }
    void operator()(const FlightLogged& body) const {
        const auto number = from.balloon(body.balloon);
        from.touch(Touch::Of::Balloon, number);
        from.m_totals.remove(number, entry);
        if (body.kit)
            for (const auto& id : *body.kit) {
                const auto aboard = from.item(id);
                from.m_dropKitFlight.run(aboard, at, entry.id);
                from.fallOnKit(aboard, number, entry, body.use.minutes, false);
            }
    }
    void operator()(const RequirementDone& body) const { from.m_dropDone.run(from.item(body.item), at, entry.id); }
    void operator()(const ReviewSigned& body) const { from.m_dropDone.run(from.item(body.item), at, entry.id); }
    void operator()(const ProgrammeAdopted&) const {
        from.touch(Touch::Of::Adoptions);
        from.m_dropAdoption.run(at, entry.id);
    }
    void operator()(const ReadingTaken& body) const { from.m_dropReading.run(from.item(body.item), at, entry.id); }
    void operator()(const RepairMade& body) const { from.m_dropRepair.run(from.item(body.item), at, entry.id); }
    void operator()(const FabricStated& body) const { from.m_dropFabric.run(from.item(body.item), at, entry.id); }
    void operator()(const InspectionClosed& body) const {
        from.touchItemsOf(body.inspection);
        from.m_dropClosing.run(body.inspection, at, entry.id);
    }
    void operator()(const ReleaseIncomplete& body) const {
        from.touchItemsOf(body.inspection);
        from.m_dropClosing.run(body.inspection, at, entry.id);
    }
    void operator()(const ReleaseRevoked& body) const {
        from.touchItemsOf(body.inspection);
        from.m_dropRevocation.run(body.inspection, at, entry.id);
    }
    void operator()(const InspectionOpened& body) const {
        from.touchItemsOf(body.inspection);
        for (const auto& id : body.items)
            from.m_dropOpening.run(body.inspection, from.item(id), at, entry.id);
    }
    void operator()(const ReturnApproved& body) const {
        from.touchItemsOf(body.inspection);
        from.m_dropApproval.run(body.inspection, at, entry.id);
    }
    void operator()(const EventReported& body) const {
        const auto [subject, number] = from.subject(body);
        from.m_dropOccurrence.run(subject, number, at, entry.id);
        if (balloonOf(body))
            from.fallOnKits(entry, body, number, false);
    }
    void operator()(const DefectFound& body) const { from.m_dropMark.run(from.item(body.item), at, entry.id); }
    void operator()(const DefectDeferred& body) const { from.m_dropMark.run(from.item(body.item), at, entry.id); }
    void operator()(const DefectCleared& body) const { from.m_dropMark.run(from.item(body.item), at, entry.id); }
    void operator()(const ItemState& body) const { state(Subject::Item, from.item(body.item)); }
    void operator()(const BalloonState& body) const { state(Subject::Balloon, from.balloon(body.balloon)); }
    void state(Subject sort, std::int64_t number) const {
        from.touch(Touch::Of::Service);
        from.m_dropService.run(static_cast<int>(sort), number, at, entry.id);
    }
    void operator()(const BalloonRenamed& body) const {
        const auto balloon = from.balloon(body.balloon);
        from.touch(Touch::Of::Service);
        from.m_dropRenaming.run(balloon, at, entry.id);
        from.touchItemsOf(balloon);
    }
    template <WithoutRows Told>
    void operator()(const Told&) const {}
};

void Projector::project(const Entry& entry, const Entry& written) {
    if (const auto brought = broughtBy(entry.body))
        m_names.findOrMake(brought->subject, brought->name);
    std::visit(Put{*this, entry, written}, entry.body);
    note(entry, true);
}

void Projector::withdraw(const Entry& entry) {
    std::visit(TakeAway{*this, entry}, entry.body);
    note(entry, false);
}

void Projector::noteIdle(const AmendmentTree& amended) {
    const auto& root = amended.original().id;
    m_dropIdle.run(root);
    for (const auto& id : amended.amended().notApplicable)
        m_putIdle.run(root, id, momentOf(amended.said(id)).minutes());
}

void Projector::noteUnread(const Entry& entry, bool voided) {
    const auto sort = static_cast<int>(Subject::Entry);
    const auto number = m_names.findOrMake(entry.id);
    m_dropUnread.run(sort, number);
    if (!voided)
        m_putUnread.run(sort, number, Moment::startOf(entry.on).minutes(), entry.id,
                        static_cast<int>(Question::Kind::Unreadable), std::string());
}

}
