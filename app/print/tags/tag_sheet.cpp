// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/tags/tag_sheet.h"

#include "words/words.h"

#include <QtCore/QCoreApplication>

namespace crownring::print {

namespace {

constexpr std::string_view scheme = "crownring:item:";

std::string said(const char* text) { return QCoreApplication::translate("TagSheet", text).toStdString(); }

paper::Label tagOf(const ItemFacts& item) {
    paper::Label tag;
    tag.title = item.id.text();
    tag.subtitle = words::Words::kind(item.kind).toStdString();
    if (item.type)
        tag.facts.push_back({said(QT_TRANSLATE_NOOP("TagSheet", "Type")), *item.type});
    if (item.serial)
        tag.facts.push_back({said(QT_TRANSLATE_NOOP("TagSheet", "Serial number")), *item.serial});
    if (item.made)
        tag.facts.push_back({said(QT_TRANSLATE_NOOP("TagSheet", "Made")), item.made->iso()});
    tag.code = tagText(item.id);
    return tag;
}

}

std::string tagText(const ItemId& item) { return std::string(scheme) + item.text(); }

std::optional<ItemId> itemOfTag(const std::string& text) {
    if (!text.starts_with(scheme) || text.size() == scheme.size())
        return std::nullopt;
    return ItemId(text.substr(scheme.size()));
}

paper::Document tagSheet(const std::vector<ItemFacts>& items, CivilDate on) {
    paper::Document document;
    document.title = said(QT_TRANSLATE_NOOP("TagSheet", "Tags"));
    document.recordId = on.iso();
    document.caution =
        said(QT_TRANSLATE_NOOP("TagSheet", "A tag says which item it is, and nothing of its state: ask the record."));
    paper::Labels tags;
    for (const auto& item : items)
        tags.labels.push_back(tagOf(item));
    document.blocks.emplace_back(std::move(tags));
    return document;
}

}
