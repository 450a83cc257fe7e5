// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/adoption_reader.h"

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
    : m_adoptions(connection, "SELECT at, entry_id, programme, digest, bound FROM adoption WHERE at < ?"
                              " ORDER BY at, entry_id"),
      m_document(connection, "SELECT document FROM adoption WHERE at = ? AND entry_id = ?"),
      m_latest(connection,
               "SELECT document FROM adoption WHERE programme = ? ORDER BY at DESC, entry_id DESC LIMIT 1") {}

std::vector<AdoptedProgramme> AdoptionReader::read(CivilDate on, Documents& known) {
    std::vector<AdoptedProgramme> adoptions;
    m_adoptions.run(Moment::endOf(on).minutes());
    while (m_adoptions.next()) {
        AdoptedProgramme each;
        each.stamp.at = m_adoptions.read<Moment>();
        each.stamp.id = m_adoptions.read<EntryId>();
        each.programme = m_adoptions.read<ProgrammeId>();
        each.digest = m_adoptions.read<std::string>();
        each.bound = boundFrom(m_adoptions);
        auto& document = known[each.digest];
        if (!document)
            document = std::make_shared<const std::string>(documentOf(each.stamp));
        each.document = document;
        adoptions.push_back(std::move(each));
    }
    return adoptions;
}

std::string AdoptionReader::documentOf(const Stamp& stamp) {
    m_document.run(stamp.at.minutes(), stamp.id);
    m_document.next();
    auto document = m_document.read<std::string>();
    m_document.finish();
    return document;
}

std::string AdoptionReader::latestDocument(const ProgrammeId& programme) {
    m_latest.run(programme);
    return m_latest.next() ? m_latest.read<std::string>() : std::string();
}

}
