// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/wording/named_text.h"

#include "bench/checklist/checklist.h"
#include "record/chain/chain.h"

#include <algorithm>

namespace crownring {

namespace {

struct Shipped {
    NamedText named;
    const std::string* document = nullptr;
};

NamedText asWritten(const Checklist& checklist, const std::string& document) {
    return {{}, ChecklistId(checklist.id), checklist.revision, hex(sha256(document)), checklist.title};
}

const std::vector<Shipped>& shelf() {
    static const auto lists = [] {
        std::vector<Shipped> all;
        for (const auto* texts : {&checklistShelf(), &formerChecklists()})
            for (const auto& text : *texts)
                all.push_back({asWritten(keptChecklist(text).value(), text), &text});
        return all;
    }();
    return lists;
}

}

NamedText named(const Wording& wording) {
    return {wording.text, {}, wording.revision, digestOf(wording), wording.title};
}

std::optional<NamedText> namedChecklist(const std::string& document) {
    if (document.empty())
        return std::nullopt;
    const auto checklist = keptChecklist(document);
    if (!checklist)
        return std::nullopt;
    auto held = asWritten(*checklist, document);
    for (const auto& each : shelf())
        if (each.named.checklist == held.checklist && each.named.revision == held.revision)
            return each.named;
    return held;
}

const std::vector<NamedText>& shippedChecklists() {
    static const auto all = [] {
        std::vector<NamedText> names;
        for (const auto& each : shelf())
            names.push_back(each.named);
        return names;
    }();
    return all;
}

std::vector<Visit> visitsOfChecklist(const std::string& document) {
    std::vector<Visit> visits;
    if (const auto checklist = keptChecklist(document))
        for (const auto visit : allVisits)
            if (!linesFor(*checklist, visit).empty())
                visits.push_back(visit);
    return visits.empty() ? std::vector(allVisits.begin(), allVisits.end()) : visits;
}

std::string_view shippedDocument(const NamedText& checklist) {
    for (const auto& each : shelf())
        if (each.named.checklist == checklist.checklist && each.named.revision == checklist.revision)
            return *each.document;
    return {};
}

bool isOf(const TextConfirmed& said, const NamedText& named) {
    return said.text == named.text && said.checklist == named.checklist && said.revision == named.revision &&
           said.digest == named.digest;
}

std::string titleOf(const ConfirmedText& confirmed, const AdoptedTexts& adopted) {
    if (confirmed.text) {
        if (const auto own = adopted.find(*confirmed.text); own != adopted.end())
            return own->second.wording.title;
        const auto known = statementTextFrom(*confirmed.text);
        return known ? shipped(*known).wording.title : confirmed.text->text();
    }
    for (const auto& each : shippedChecklists())
        if (each.checklist == confirmed.checklist && each.revision == confirmed.revision)
            return each.title;
    return confirmed.checklist ? confirmed.checklist->text() : std::string();
}

}
