// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/form_writing.h"

#include "record/entry_json.h"
#include "screen/form/asked_back.h"
#include "screen/form/own_line_form.h"
#include "screen/form/plans/ahead_form.h"
#include "screen/form/plans/directive_form.h"
#include "words/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;

/// Left as it was proposed, and said by nobody.
bool isUnsaid(const FormField& field, const Json& before) {
    return !field.isWritten() || !field.shown || field.kind == FormField::Kind::Kit ||
           (field.onlyWhenTouched && !field.touched && !before.contains(field.key));
}

}

Json::json_pointer pointerTo(std::string key) {
    std::replace(key.begin(), key.end(), '.', '/');
    return Json::json_pointer("/" + key);
}

Json unasked(Json entry, const std::vector<FormField>& fields) {
    for (const auto& field : fields)
        entry.erase(topKey(field.key));
    for (const char* own : {"id", "entry"})
        entry.erase(own);
    return entry;
}

std::string topKey(const std::string& key) { return key.substr(0, key.find('.')); }

std::optional<Json> FormWriting::gathered(FormFields& fields) const {
    Json object = {{"entry", kind}};
    fields.clearProblems();
    const auto all = fields.fields();
    for (const auto& field : all) {
        if (field.shown && field.required && field.value.trimmed().isEmpty())
            fields.setProblem(field.key, QCoreApplication::translate("FormWriting", "This is needed."));
        if (isUnsaid(field, before))
            continue;
        const auto value = field.json();
        if (!value)
            fields.setProblem(field.key, Words::problem(value.error()));
        else if (*value)
            object[pointerTo(field.key)] = **value;
    }
    if (fields.firstMarked() >= 0)
        return std::nullopt;
    for (const auto& [key, value] : given.items())
        if (!object.contains(key))
            object[key] = value;
    if (kind == kindName<DirectiveIssued>())
        return DirectiveForm::entry(std::move(object), fields, before);
    if (AheadForm::known(kind))
        return AheadForm::entry(kind, std::move(object));
    return kind == kindName<ChecklistAdopted>() ? OwnLineForm::entry(std::move(object), before) : object;
}

Json FormWriting::changes(const FormFields& fields, const Json& gathered) const {
    Json with = Json::object();
    // Read and written again, so that what is left out and what is as usual say the same.
    const auto was = entryFrom(before);
    const auto is = entryFrom(gathered);
    const auto old = was ? toJson(*was) : before;
    const auto now = is ? toJson(*is) : gathered;
    for (const auto& field : fields.fields()) {
        const auto key = topKey(field.key);
        if (key == "by" || !field.isWritten())
            continue; // who corrects says so in the correction; who wrote first stays
        const bool had = old.contains(key);
        const bool has = now.contains(key);
        if (has && (!had || old.at(key) != now.at(key)))
            with[key] = now.at(key);
        else if (had && !has)
            with[key] = nullptr;
    }
    return with;
}

}
