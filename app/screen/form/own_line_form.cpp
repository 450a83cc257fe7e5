// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/own_line_form.h"

#include "bench/checklist/own_line.h"
#include "record/new_id.h"
#include "words/border.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;
using Kind = FormField::Kind;

FormField ofChoices(std::string key, const QString& label, Kind kind, bool required, std::vector<Choice> choices,
                    const QString& hint = {}) {
    auto made = plannedField(std::move(key), label, kind, required, hint);
    made.choices = std::move(choices);
    return made;
}

/// A document of one line that nothing but its place is said of.
Json blank(const std::string& name, const std::string& on) {
    const auto day = CivilDate::parse(on);
    const auto sections = sectionsOfShelf();
    return Json::parse(checklistText(
        ownLine(name, day ? *day : CivilDate::fromDayNumber(0), {sections.front().id, {}, name, name, name, true})));
}

}

std::vector<FormField> OwnLineForm::fields() {
    std::vector<Choice> sections;
    for (const auto& section : sectionsOfShelf())
        sections.push_back(plainChoice(inward(section.id), inward(section.title)));
    std::vector<Choice> kinds;
    for (int at = 0; at < itemKindCount; ++at)
        kinds.push_back(
            plainChoice(inward(itemKindName(static_cast<ItemKind>(at))), Words::kind(static_cast<ItemKind>(at))));
    return {ofChoices("document.lines.0.section", tr("Section"), Kind::Choice, true, std::move(sections)),
            ofChoices("document.lines.0.kinds", tr("Once for each"), Kind::Several, false, std::move(kinds),
                      tr("None chosen: once a visit.")),
            plannedField("document.lines.0.title", tr("Line"), Kind::Text, true),
            plannedField("document.lines.0.look_for", tr("What to look for"), Kind::Text, true),
            plannedField("document.lines.0.sources.part-ml", tr("What asks for it"), Kind::Text, true,
                         tr("handbook, bulletin or letter, with its number"))};
}

Json OwnLineForm::entry(Json gathered, const Json& before) {
    const bool corrects = before.is_object();
    const auto name = corrects ? before.value("checklist", std::string()) : "own-" + newEntryId().text().substr(0, 13);
    auto document = corrects ? before.at("document") : blank(name, gathered.value("on", std::string()));
    const auto& said = gathered.at("document").at("lines").at(0);
    auto& line = document.at("lines").at(0);
    line["kinds"] = said.value("kinds", Json::array());
    for (const char* key : {"section", "title", "look_for"})
        line[key] = said.at(key);
    const auto& source = said.at("sources").at("part-ml");
    line["sources"] = {{"part-ml", source}, {"us-14cfr", source}};
    document["title"] = line["title"];
    document["source"] = source;
    auto& sections = document.at("sections");
    const auto section = line["section"].get<std::string>();
    for (const auto& shelf : sectionsOfShelf())
        if (shelf.id == section && document.at("lines").size() == 1)
            sections = Json::array({{{"id", shelf.id}, {"title", shelf.title}}});
    gathered["checklist"] = name;
    gathered["document"] = std::move(document);
    return gathered;
}

}
