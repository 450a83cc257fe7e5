// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"
#include "record/chain/chain.h"
#include "store/queries/clock_reader.h"
#include "store/queries/fabric_reader.h"
#include "store/sql_record.h"

#include <algorithm>

namespace crownring {

Result<std::vector<JournalLine>> SqlRecord::told(const Told& asked) {
    return guarded([&] {
        std::vector<JournalLine> lines;
        std::string text = "SELECT DISTINCT t.at, t.entry_id FROM told t JOIN entry e ON e.entry_id = t.entry_id"
                           " WHERE t.sort = ? AND t.at < ?";
        std::optional<std::int64_t> number;
        if (asked.name) {
            number = m_names.find(asked.subject, *asked.name);
            if (!number)
                return lines;
            text += " AND t.subject_no = ?";
        }
        for (std::size_t i = 0; i < asked.kinds.size(); ++i)
            text += i == 0 ? " AND (e.kind = ?" : " OR e.kind = ?";
        text += asked.kinds.empty() ? "" : ")";
        text += " ORDER BY t.at, t.entry_id";
        Statement rows(*m_connection, text.c_str());
        rows.bind(static_cast<int>(asked.subject));
        rows.bind(Moment::endOf(asked.on).minutes());
        if (number)
            rows.bind(*number);
        for (const auto kind : asked.kinds)
            rows.bind(std::string(kind));
        rows.runBound();
        while (rows.next()) {
            rows.skip();
            if (auto line = m_journal.line(rows.read<EntryId>()); line && !line->unread)
                lines.push_back(std::move(*line));
        }
        return lines;
    });
}

Result<void> SqlRecord::fabric(const std::vector<ItemId>& items, CivilDate on,
                               const std::function<void(const FabricHistory&)>& take) {
    return guarded([&] {
        FabricReader reader(*m_connection, m_names);
        if (items.empty())
            return reader.readAll(on, take);
        for (const auto& item : items)
            if (const auto number = m_names.find(item))
                reader.readOne(*number, on, take);
    });
}

Result<std::vector<std::optional<Figures>>> SqlRecord::clocks(const std::vector<ItemDay>& asked) {
    return guarded([&]() -> Result<std::vector<std::optional<Figures>>> {
               std::vector<ClockReader::Asked> numbered;
               numbered.reserve(asked.size());
               for (const auto& [item, day] : asked) {
                   const auto number = m_names.find(item);
                   if (!number)
                       return problem(UseFault::NoItem, {item});
                   numbered.push_back({*number, day});
               }
               return ClockReader(*m_connection, m_projector.totals()).read(numbered);
           })
        .and_then([](auto&& answer) { return std::forward<decltype(answer)>(answer); });
}

Result<std::string> SqlRecord::keepPicture(const Picture& picture) {
    if (m_readOnlyReason)
        return tl::unexpected(*m_readOnlyReason);
    return guarded([&] {
        const auto digest = hex(sha256(picture.bytes));
        const Interrupted interrupted(*this);
        Transaction transaction(*m_connection);
        Statement put(*m_connection,
                      "INSERT INTO picture (digest, media, bytes) VALUES (?, ?, ?) ON CONFLICT DO NOTHING");
        put.run(digest, picture.media, QByteArray::fromStdString(picture.bytes));
        transaction.commit();
        return digest;
    });
}

Result<std::optional<Picture>> SqlRecord::picture(const std::string& digest) {
    return guarded([&]() -> std::optional<Picture> {
        Statement row(*m_connection, "SELECT media, bytes FROM picture WHERE digest = ?");
        row.run(digest);
        if (!row.next())
            return std::nullopt;
        Picture picture;
        picture.media = row.read<std::string>();
        picture.bytes = row.read<QByteArray>().toStdString();
        return picture;
    });
}

}
