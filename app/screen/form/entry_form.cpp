// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/entry_form.h"

#include "acts/post.h"
#include "record/entry_json.h"
#include "record/new_id.h"
#include "rules/due/defects.h"
#include "screen/desk/house.h"
#include "screen/form/own_line_form.h"
#include "words/border.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;

/// "clock.minutes" as a JSON pointer.
Json::json_pointer pointer(std::string key) {
    std::replace(key.begin(), key.end(), '.', '/');
    return Json::json_pointer("/" + key);
}

std::string topKey(const std::string& key) { return key.substr(0, key.find('.')); }

}

void EntryForm::begin(const QString& kind, const QString& balloon, const QString& item, const QString& requirement) {
    open(outward(kind), {outward(balloon), outward(item), outward(requirement), {}});
    // An open defect is a row of the due list under a name of its own.
    if (const auto defect = defectOf(RequirementId(outward(requirement))); defect && m_kind.starts_with("defect."))
        m_given = {{"item", outward(item)}, {"defect", defect->text()}};
}

void EntryForm::beginAtBench(const QString& kind, const QString& inspection, const QString& defect,
                             const QString& item) {
    begin(kind, {}, item);
    m_given = Json::object();
    if (!inspection.isEmpty())
        m_given["inspection"] = outward(inspection);
    if (!defect.isEmpty())
        m_given["defect"] = outward(defect);
    else if (m_kind == kindName<DefectFound>())
        m_given["defect"] = outward(inspection) + " " + newEntryId().text().substr(0, 13);
    if (!item.isEmpty() && m_kind.starts_with("defect."))
        m_given["item"] = outward(item);
}

void EntryForm::beginWith(const QString& kind, const QString& item, const QVariantMap& given, const QString& about) {
    begin(kind, {}, item);
    m_about = about;
    auto fields = m_fields.fields();
    for (auto at = given.begin(); at != given.end(); ++at) {
        const auto field = std::ranges::find(fields, outward(at.key()), &FormField::key);
        const auto value = Json::parse(QJsonDocument(QJsonArray{QJsonValue::fromVariant(at.value())}).toJson());
        if (field != fields.end())
            field->take(value.at(0));
        else
            m_given[outward(at.key())] = value.at(0);
    }
    m_fields.show(std::move(fields));
    emit changed();
}

void EntryForm::adopt(const QString& programme) {
    open(kindName<ProgrammeAdopted>(), {{}, {}, {}, outward(programme)});
}

void EntryForm::open(std::string_view kind, const FormSubject& subject) {
    const auto sheet = house().fleet.sheet();
    if (!sheet || !FormPlan::known(kind))
        return;
    m_kind = kind;
    m_amends.clear();
    m_before = Json();
    m_given = Json::object();
    m_about.clear();
    m_problem.clear();
    auto fields = FormPlan::fields(m_kind, subject, *sheet);
    for (auto& field : fields) {
        if (field.key == "on")
            field.value = house().day.asked();
        if (field.key == "by")
            field.value = house().habits.person();
    }
    m_fields.show({}); // a new form is new everywhere, also in what the fields remember
    m_fields.show(std::move(fields));
    emit changed();
}

void EntryForm::correct(const QString& entry) {
    hear(house().desk.ask([id = EntryId(outward(entry))](Record& record) { return record.line(id); }), this,
         [this](const Result<std::optional<JournalLine>>& line) {
             if (line && *line && !(*line)->unread)
                 takeEntry(**line);
         });
}

void EntryForm::takeEntry(const JournalLine& line) {
    const auto& entry = nowOf(line);
    const auto object = toJson(entry);
    FormSubject subject;
    subject.balloon = object.value("balloon", std::string());
    subject.item = object.value("item", std::string());
    subject.requirement = object.value("requirement", std::string());
    subject.programme = object.value("programme", std::string());
    open(std::string(kindName(entry.body)), subject);
    if (!isOpen())
        return;
    m_amends = entry.id.text();
    m_before = object;
    m_about = Sentences::of(entry, *house().fleet.titles());
    auto fields = m_fields.fields();
    for (auto& field : fields) {
        const auto at = pointer(field.key);
        if (object.contains(at))
            field.take(object.at(at));
        else if (field.key != "landings" && field.key != "inflations" && field.key != "kit")
            field.value.clear();
        // What was true then need not be what can be chosen today.
        if (field.kind == FormField::Kind::Choice && !field.value.isEmpty() &&
            std::none_of(field.choices.begin(), field.choices.end(),
                         [&](const Choice& choice) { return choice.value == field.value; }))
            field.choices.insert(field.choices.begin(), {field.value, field.value, {}, -1, -1, false});
    }
    m_fields.show(std::move(fields));
    emit changed();
}

void EntryForm::voidEntry(const QString& entry) {
    open(kindName<EntryVoided>(), {});
    m_amends = outward(entry);
    m_about = tr("The entry stays in the journal and no longer counts: %1").arg(entry);
    emit changed();
}

void EntryForm::setValue(int row, const QString& value) {
    if (row < 0 || row >= m_fields.count())
        return;
    m_fields.setValue(row, value);
    follow(m_fields.fields()[static_cast<std::size_t>(row)].key);
}

void EntryForm::toggle(int row, const QString& choice) {
    if (row >= 0 && row < m_fields.count())
        m_fields.toggle(row, choice);
}

void EntryForm::follow(std::string_view key) {
    const auto sheet = house().fleet.sheet();
    if (!sheet || !m_amends.empty())
        return;
    const auto value = [this](std::string_view of) { return outward(m_fields.value(of)); };
    if (key == "balloon" && m_kind == kindName<FlightLogged>())
        m_fields.setChoices("kit", FormPlan::items(*sheet, value("balloon")), true);
    if (key == "balloon" && m_kind == kindName<ItemFitted>())
        m_fields.setChoices("item", FormPlan::itemsNotOn(*sheet, value("balloon")), false);
    if (key == "balloon" && m_kind == kindName<ItemRemoved>())
        m_fields.setChoices("item", FormPlan::items(*sheet, value("balloon")), false);
    if (key == "item" && m_kind == kindName<RequirementDone>())
        m_fields.setChoices("requirement", FormPlan::requirements(*sheet, value("item")), false);
    if ((key == "item" || key == "requirement") && m_kind == kindName<RequirementDone>())
        m_fields.setChoices("method", FormPlan::methods(*sheet, value("requirement")), false);
}

std::optional<Json> EntryForm::gathered() {
    Json object = {{"entry", m_kind}};
    bool good = true;
    m_fields.clearProblems();
    const auto fields = m_fields.fields();
    for (const auto& field : fields) {
        if (field.onlyWhenTouched && !field.touched && m_amends.empty())
            continue;
        if (field.onlyWhenTouched && !field.touched && !m_before.contains(field.key))
            continue;
        const auto value = field.json();
        if (!value) {
            m_fields.setProblem(field.key, Words::problem(value.error()));
            good = false;
        } else if (*value) {
            object[pointer(field.key)] = **value;
        } else if (field.required) {
            m_fields.setProblem(field.key, tr("This is needed."));
            good = false;
        }
    }
    for (const auto& [key, value] : m_given.items())
        if (!object.contains(key))
            object[key] = value;
    if (!good)
        return std::nullopt;
    return m_kind == kindName<ChecklistAdopted>() ? OwnLineForm::entry(std::move(object), m_before) : object;
}

Json EntryForm::asCorrection(const Json& gathered) const {
    Json with = Json::object();
    // The day, the writer and the note of the form belong to the entry that is mended.
    const auto before = entryFrom(m_before);
    const auto after = entryFrom(gathered);
    const auto now = after ? toJson(*after) : gathered;
    const auto was = before ? toJson(*before) : m_before;
    for (const auto& field : m_fields.fields()) {
        const auto key = topKey(field.key);
        const bool had = was.contains(key);
        const bool has = now.contains(key);
        if (has && (!had || was.at(key) != now.at(key)))
            with[key] = now.at(key);
        else if (had && !has)
            with[key] = nullptr;
    }
    return with;
}

void EntryForm::save() {
    if (!isOpen() || m_saving)
        return;
    m_problem.clear();
    auto object = gathered();
    if (!object) {
        m_problem = tr("Look at the fields that are marked.");
        emit changed();
        return;
    }
    house().habits.setPerson(m_fields.value("by"));
    if (m_kind == kindName<EntryVoided>()) {
        (*object)["voids"] = m_amends;
    } else if (!m_amends.empty()) {
        if (const auto whole = entryFrom(*object); !whole)
            return tell({whole.error()});
        auto with = asCorrection(*object);
        if (with.empty()) {
            m_problem = tr("Nothing was changed.");
            emit changed();
            return;
        }
        object = Json{{"entry", kindName<EntryCorrected>()},
                      {"replaces", m_amends},
                      {"with", std::move(with)},
                      {"on", outward(house().day.today())}};
        if (const auto by = outward(m_fields.value("by")); !by.empty())
            (*object)["by"] = by;
    }
    post(*object);
}

void EntryForm::post(const Json& object) {
    auto entry = entryFrom(object);
    if (!entry)
        return tell({entry.error()});
    m_saving = true;
    emit changed();
    const auto said = Sentences::of(*entry, *house().fleet.titles());
    hear(house().desk.ask([entry = *entry](Record& record) { return postOne(record, record, entry); }), this,
         [this, said, by = m_fields.value("by")](const Results<Receipt>& answer) {
             m_saving = false;
             if (!answer)
                 return tell(answer.error());
             m_kind.clear();
             emit changed();
             emit saved();
             house().notice.tellWritten(tr("Written: %1").arg(said), answer->ids, by);
             house().desk.written();
         });
}

void EntryForm::tell(const std::vector<Problem>& problems) {
    std::vector<Problem> others;
    for (auto problem : problems) {
        const auto key = problem.where.key;
        const auto& fields = m_fields.fields();
        const auto at = std::find_if(fields.begin(), fields.end(), [&](const FormField& field) {
            return field.key == key || (!key.empty() && field.key.ends_with("." + key)) || topKey(field.key) == key;
        });
        if (at == fields.end()) {
            others.push_back(std::move(problem));
            continue;
        }
        problem.where = {};
        m_fields.setProblem(std::string(at->key), Words::problem(problem));
    }
    m_problem = others.empty() ? tr("Look at the fields that are marked.") : Words::problems(others);
    emit changed();
}

void EntryForm::cancel() {
    m_kind.clear();
    emit changed();
}

QString EntryForm::title() const {
    if (!m_amends.empty() && m_kind != kindName<EntryVoided>())
        return tr("Correct: %1").arg(Sentences::kind(m_kind));
    return FormPlan::title(m_kind);
}

QString EntryForm::verb() const {
    if (!m_amends.empty() && m_kind != kindName<EntryVoided>())
        return tr("Post the correction");
    return FormPlan::verb(m_kind);
}

}
