// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/tally/tallies.h"

namespace crownring {

Tallies::Tallies(const Connection& connection, Names& names, FlightTotals& totals)
    : m_names(names), m_facts(connection, names, totals, true), m_fabric(connection, names),
      m_balloons(connection, names, totals, true), m_fitted(connection), m_adoptions(connection), m_service(connection),
      m_book(connection), m_toldRows(connection, "SELECT sort, subject_no, at, entry_id FROM told"),
      m_amendmentRows(connection, "SELECT target_id, entry_no FROM amendment"),
      m_subjects(connection, "SELECT name_no FROM name WHERE sort = ?"),
      m_lastFlight(connection, "SELECT 1 FROM flight f LEFT JOIN flown w ON w.balloon_no = f.balloon_no AND w.at = f.at"
                               " AND w.entry_id = f.entry_id AND w.minutes = f.minutes_to"
                               " AND w.landings = f.landings_to AND w.inflations = f.inflations_to"
                               " WHERE w.balloon_no IS NULL AND f.balloon_no = ? AND (f.at, f.entry_id) ="
                               " (SELECT g.at, g.entry_id FROM flight g WHERE g.balloon_no = f.balloon_no"
                               " ORDER BY g.at DESC, g.entry_id DESC LIMIT 1)"),
      m_pictures(connection, "SELECT digest, media FROM picture") {}

StoreError Tallies::notIntact(const Account& account) {
    if (account.subject > Account::all && account.part != Part::Amendments)
        return StoreError(StoreFault::SubjectNotIntact, {m_names.text(account.subject)});
    return StoreError(StoreFault::NotIntact);
}

void Tallies::check(const Account& account) {
    if (account.tally != m_book.kept(account.part, account.subject))
        throw notIntact(account);
}

void Tallies::check(const Touch& touch) {
    for (const auto& account : read(touch))
        check(account);
    if (touch.of == Touch::Of::Balloon)
        checkLastFlight(touch.subject);
}

void Tallies::checkLastFlight(std::int64_t balloon) {
    m_lastFlight.run(balloon);
    const bool differs = m_lastFlight.next();
    m_lastFlight.finish();
    if (differs)
        throw notIntact({Part::Balloon, balloon, {}});
}

std::vector<Account> Tallies::read(const Touch& touch) {
    const auto subject = touch.subject;
    switch (touch.of) {
    case Touch::Of::Item: {
        const auto last = CivilDate::last();
        m_facts.startOver();
        static_cast<void>(m_facts.read(last, subject));
        return {{Part::Facts, subject, m_facts.tally()}, m_fabric.readOne(subject, last, [](const FabricHistory&) {})};
    }
    case Touch::Of::Balloon:
        return {{Part::Balloon, subject, m_balloons.read(subject)}, m_fitted.account(subject)};
    case Touch::Of::Adoptions:
        return {m_adoptions.count()};
    case Touch::Of::Service:
        return {m_service.account()};
    }
    return {};
}

void Tallies::settle(const std::set<Touch>& touched, const Moved& told) {
    std::map<Part, Tally> moved;
    for (const auto& touch : touched)
        for (const auto& [part, subject, tally] : read(touch)) {
            const auto before = m_book.kept(part, subject);
            if (tally == before)
                continue;
            m_book.keep(part, subject, tally);
            if (subject == Account::all)
                continue;
            auto& by = moved[part];
            by += tally;
            by -= before;
        }
    for (const auto& [part, by] : moved)
        m_book.move(part, Account::all, by);
    for (const auto& [subject, by] : told)
        m_book.move(Part::Told, subject, by);
}

std::vector<Touch> Tallies::everything() {
    std::vector<Touch> all{{Touch::Of::Adoptions, 0}, {Touch::Of::Service, 0}};
    for (const auto& [subject, of] :
         {std::pair{Subject::Item, Touch::Of::Item}, std::pair{Subject::Balloon, Touch::Of::Balloon}}) {
        m_subjects.run(static_cast<int>(subject));
        while (m_subjects.next())
            all.push_back({of, m_subjects.read<std::int64_t>()});
    }
    return all;
}

void Tallies::makeAnew() {
    m_book.clear();
    const auto all = everything();
    settle({all.begin(), all.end()});
    for (const auto& [of, tally] : readTold())
        m_book.keep(of.first, of.second, tally);
    settlePictures();
}

std::map<std::pair<Part, std::int64_t>, Tally> Tallies::readTold() {
    std::map<std::pair<Part, std::int64_t>, Tally> told;
    m_toldRows.run();
    while (m_toldRows.next()) {
        const auto sort = m_toldRows.read<Subject>();
        const auto number = m_toldRows.read<std::int64_t>();
        Stamp stamp;
        stamp.at = m_toldRows.read<Moment>();
        stamp.id = m_toldRows.read<EntryId>();
        for (const auto subject : {number, Account::ofSort(sort)})
            told[{Part::Told, subject}].add(toldDigest(sort, number, stamp));
    }
    m_amendmentRows.run();
    while (m_amendmentRows.next()) {
        const auto target = m_amendmentRows.read<EntryId>();
        told[{Part::Amendments, accountOf(target)}].add(amendmentDigest(target, m_amendmentRows.read<std::int64_t>()));
    }
    return told;
}

Account Tallies::pictures() {
    Account account{Part::Pictures, Account::all, {}};
    m_pictures.run();
    while (m_pictures.next())
        account.tally.add(m_pictures.digest());
    return account;
}

void Tallies::settlePictures() { m_book.keep(Part::Pictures, Account::all, pictures().tally); }

bool Tallies::picturesAreWhole() {
    const auto known = m_book.kept(Part::Pictures, Account::all);
    return known == Tally() || known == pictures().tally;
}

void Tallies::checkAll() {
    m_names.readAll();
    std::map<Part, Tally> sums;
    std::set<std::pair<Part, std::int64_t>> known{{Part::Pictures, Account::all}};
    for (const auto& touch : everything())
        for (const auto& account : read(touch)) {
            check(account);
            known.emplace(account.part, account.subject);
            if (account.subject != Account::all)
                sums[account.part] += account.tally;
        }
    for (const auto& [part, sum] : sums) {
        check(Account{part, Account::all, sum});
        known.emplace(part, Account::all);
    }
    for (const auto& [of, tally] : readTold()) {
        check(Account{of.first, of.second, tally});
        known.insert(of);
    }
    // Of what has no name yet: the first to get one would be refused.
    for (const auto& each : m_book.everything())
        if (!known.contains(each))
            throw StoreError(StoreFault::NotIntact);
}

}
