// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/wording/wording_rows.h"

#include "screen/wording/wording_desk.h"
#include "words/border.h"

namespace crownring::screen {

using namespace words;

namespace {

QString byWhom(const ConfirmedText& each) {
    return WordingDesk::tr("confirmed against %1 by %2, %3, on %4")
        .arg(inward(each.against), inward(each.by.text()), inward(each.licence), inward(each.on.iso()));
}

}

std::vector<Choice> draftedWording(const std::vector<WordingState>& states) {
    std::vector<Choice> rows;
    for (const auto& each : states) {
        const bool isConfirmed = each.adopted && each.confirmed;
        rows.push_back({WordingDesk::keyOf(each.named),
                        WordingDesk::tr("%1, revision %2").arg(inward(each.named.title), inward(each.named.revision)),
                        isConfirmed ? byWhom(*each.confirmed)
                        : each.adopted
                            ? WordingDesk::tr("wording not confirmed against the current rule")
                            : WordingDesk::tr("the program's own wording, adopted by nobody and not confirmed "
                                              "against the current rule"),
                        -1, -1, isConfirmed});
    }
    return rows;
}

std::vector<Choice> signedWording(const std::vector<ConfirmedText>& confirmed, const WordingBook& book) {
    std::vector<Choice> rows;
    for (const auto& each : confirmed) {
        const auto id = each.text ? each.text->text() : each.checklist->text();
        rows.push_back(
            {inward(id + " " + each.revision),
             WordingDesk::tr("%1, revision %2").arg(inward(titleOf(each, book.adopted)), inward(each.revision)),
             byWhom(each), -1, -1, true});
    }
    return rows;
}

}
