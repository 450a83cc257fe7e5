// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/adoption_reader.h"

#include "record/chain/chain.h"
#include "record/entry_json.h"

namespace crownring {

namespace {

Bound boundFrom(Statement& row) {
    const auto entry = entryFrom(row.read<std::string>());
    const auto* adopted = entry ? std::get_if<ProgrammeAdopted>(&entry->body) : nullptr;
    if (!adopted) // without it requirements would be missing, and nobody would know
        throw row.unread();
    return adopted->bound;
}

}

AdoptionReader::AdoptionReader(const Connection& connection)
    : m_adoptions(connection, "SELECT at, entry_id, programme, digest, bound FROM adoption ORDER BY at, entry_id"),
      m_document(connection, "SELECT document FROM adoption WHERE at = ? AND entry_id = ?"),
      m_latest(connection,
               "SELECT document FROM adoption WHERE programme = ? ORDER BY at DESC, entry_id DESC LIMIT 1") {}

std::vector<AdoptedProgramme> AdoptionReader::read(CivilDate on, Documents& known) {
    std::vector<AdoptedProgramme> adoptions;
    m_account = {Part::Adoptions, Account::all, {}};
    m_adoptions.run();
    while (m_adoptions.next()) {
        m_account.tally.add(m_adoptions.digest());
        AdoptedProgramme each;
        each.stamp.at = m_adoptions.read<Moment>();
        if (!(each.stamp.at < Moment::endOf(on)))
            continue;
        each.stamp.id = m_adoptions.read<EntryId>();
        each.programme = m_adoptions.read<ProgrammeId>();
        each.digest = m_adoptions.read<std::string>();
        each.bound = boundFrom(m_adoptions);
        auto& document = known[each.digest];
        if (!document)
            document = std::make_shared<const std::string>(documentOf(each.stamp, each.digest));
        each.document = document;
        adoptions.push_back(std::move(each));
    }
    return adoptions;
}

Account AdoptionReader::count() {
    m_account = {Part::Adoptions, Account::all, {}};
    m_adoptions.run();
    while (m_adoptions.next())
        m_account.tally.add(m_adoptions.digest());
    return m_account;
}

std::string AdoptionReader::documentOf(const Stamp& stamp, const std::string& digest) {
    m_document.run(stamp.at.minutes(), stamp.id);
    m_document.next();
    auto document = m_document.read<std::string>();
    if (hex(sha256(document)) != digest)
        throw m_document.unread();
    m_document.finish();
    return document;
}

std::string AdoptionReader::latestDocument(const ProgrammeId& programme) {
    m_latest.run(programme);
    return m_latest.next() ? m_latest.read<std::string>() : std::string();
}

}
