// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/adopt_text.h"

#include "acts/post.h"

#include <utility>

namespace crownring {

TextAdopted asShipped(StatementText text, const std::string& organisation) {
    const auto& ships = shipped(text).wording;
    return {ships.text, ships.revision, ships.title, ships.body, ships.source, organisation};
}

Results<Receipt> adoptTexts(Journal& journal, Books& books, std::vector<TextAdopted> texts, CivilDate on,
                            const std::string& by) {
    std::vector<NumberedEntry> entries;
    for (auto& text : texts) {
        Entry entry;
        entry.on = on;
        entry.by = by;
        entry.body = std::move(text);
        entries.push_back({std::move(entry), 0});
    }
    return post(journal, books, std::move(entries), {});
}

Results<Receipt> confirmTexts(Journal& journal, Books& books, const std::vector<NamedText>& texts,
                              const Confirming& confirming) {
    std::vector<NumberedEntry> entries;
    for (const auto& text : texts) {
        Entry entry;
        entry.on = confirming.on;
        entry.by = confirming.person.text();
        entry.body = TextConfirmed{text.text,
                                   text.checklist,
                                   text.revision,
                                   text.digest,
                                   confirming.against,
                                   confirming.person,
                                   std::string(capacityName(confirming.capacity)),
                                   {}};
        entries.push_back({std::move(entry), 0});
    }
    return post(journal, books, std::move(entries), {});
}

}
