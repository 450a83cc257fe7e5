// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/directives.h"

#include "acts/post.h"

namespace crownring {

Results<Receipt> answerForMany(Journal& journal, Books& books, const AnsweringMany& answering) {
    std::vector<NumberedEntry> entries;
    for (const auto& item : answering.items) {
        Entry entry;
        entry.on = answering.day;
        entry.by = answering.by;
        entry.note = answering.note;
        auto answer = answering.answer;
        answer.item = item;
        answer.balloon.reset();
        entry.body = std::move(answer);
        entries.push_back({std::move(entry), 0});
    }
    return post(journal, books, std::move(entries), {});
}

}
