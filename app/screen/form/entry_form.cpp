// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/entry_form.h"

#include "acts/number_defects.h"
#include "record/entry_json.h"
#include "rules/due/defects.h"
#include "screen/desk/house.h"
#include "screen/form/plans/ahead_form.h"
#include "screen/form/plans/reading_form.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;

/// What was true then need not be what can be chosen today.
void offerWhatWas(FormField& field) {
    const bool choosable = field.kind == FormField::Kind::Choice || field.kind == FormField::Kind::OneOf;
    if (choosable && !field.value.isEmpty() &&
        std::ranges::find(field.choices, field.value, &Choice::value) == field.choices.end())
        field.choices.insert(field.choices.begin(), {field.value, field.value, {}, -1, -1, false});
    if (field.kind == FormField::Kind::Photographs)
        for (const auto& digest : field.value.split(u'\n', Qt::SkipEmptyParts))
            field.choices.push_back({digest, {}, QStringLiteral("image://record/") + digest, -1, -1, false});
}

bool countsHours(const DueRow& row) {
    return std::ranges::any_of(row.requirement->limits,
                               [](const Limit& limit) { return limit.clock == ClockName::Minutes; });
}

}

void EntryForm::movedIn() {
    m_code.moveInto(house());
    connect(&m_code, &OwnCode::changed, this, &EntryForm::showCode);
    connect(&house().fleet, &Fleet::changed, this, &EntryForm::askPapers);
    connect(&m_kit, &FlightKit::changed, this, [this] {
        m_fields.setQuestion("kit", m_kit.question());
        if (m_kit.undecided().isEmpty())
            m_fields.setProblem("kit", {});
        forgetTried();
        askAgainst();
    });
}

void EntryForm::begin(const QString& kind, const QString& balloon, const QString& item, const QString& requirement) {
    prepare(outward(kind), {outward(balloon), outward(item), outward(requirement), {}});
    announce();
    // An open defect is a row of the due list under a name of its own.
    if (const auto defect = defectOf(RequirementId(outward(requirement)));
        defect && m_writing.kind.starts_with("defect.")) {
        m_writing.given = {{"item", outward(item)}, {"defect", defect->text()}};
        m_about = aboutDefect(outward(item), defect->text());
        emit changed();
    } else if (m_writing.kind == kindName<DefectFound>())
        m_writing.given = {{"defect", unnumbered}};
}

void EntryForm::beginAtBench(const QString& kind, const QString& inspection, const QString& defect, const QString& item,
                             const QStringList& scope) {
    begin(kind, {}, item);
    if (!scope.isEmpty())
        offerOnly(scope);
    auto& given = m_writing.given = Json::object();
    if (!inspection.isEmpty()) {
        given["inspection"] = outward(inspection);
        m_fields.propose("by", house().habits.inspector());
        showCode();
    }
    if (!defect.isEmpty()) {
        given["defect"] = outward(defect);
        m_about = aboutDefect(outward(item), outward(defect));
        proposePlaceOf(ItemId(outward(item)), outward(defect));
        emit changed();
    } else if (m_writing.kind == kindName<DefectFound>()) {
        given["defect"] = unnumbered;
    }
    if (!item.isEmpty() && m_writing.kind.starts_with("defect."))
        given["item"] = outward(item);
}

void EntryForm::offerOnly(const QStringList& items) {
    auto fields = m_fields.fields();
    const auto field = std::ranges::find(fields, std::string_view("item"), &FormField::key);
    if (field == fields.end())
        return;
    std::erase_if(field->choices, [&](const Choice& each) { return !items.contains(each.value); });
    if (field->choices.size() <= mostAtOneLook)
        field->kind = FormField::Kind::OneOf;
    if (field->choices.size() == 1)
        field->value = field->choices.front().value;
    m_fields.show(std::move(fields));
    showPlace();
}

void EntryForm::beginWith(const QString& kind, const QString& item, const QVariantMap& given, const QString& about) {
    prepare(outward(kind), {{}, outward(item), {}, {}});
    m_about = about;
    auto fields = m_fields.fields();
    for (auto at = given.begin(); at != given.end(); ++at) {
        const auto field = std::ranges::find(fields, outward(at.key()), &FormField::key);
        const auto value = Json::parse(QJsonDocument(QJsonArray{QJsonValue::fromVariant(at.value())}).toJson());
        if (field != fields.end())
            field->take(value.at(0));
        else
            m_writing.given[outward(at.key())] = value.at(0);
    }
    m_fields.show(std::move(fields));
    announce();
}

/// What has no proof yet, one after the other, until somebody leaves it.
void EntryForm::askPapers() {
    const auto sheet = house().fleet.sheet();
    if (!m_papersOf || isOpen() || !sheet || !sheet->card(*m_papersOf))
        return;
    const auto balloon = *std::exchange(m_papersOf, std::nullopt);
    const auto rows = sheet->rowsOf(balloon);
    const auto lacksProof = [](const DueRow* row) {
        return row->state.standing == Standing::Unproven && row->state.because == Because::Limits &&
               row->requirement->force == Force::Mandatory && !isOfTheRecord(*row);
    };
    auto next = std::ranges::find_if(rows, [&](const DueRow* row) { return lacksProof(row) && countsHours(*row); });
    if (next == rows.end())
        next = std::ranges::find_if(rows, lacksProof);
    if (next == rows.end())
        return;
    const auto& row = **next;
    prepare(kindName<RequirementDone>(), {balloon.text(), row.item->id.text(), row.requirement->id.text(), {}});
    m_papers = true;
    m_about = tr("What do the papers of %1 say? %2 was done last on which day, and at how many hours? Where they say "
                 "nothing, leave it: it stays unproven.")
                  .arg(inward(balloon.text()), words::said(row.requirement->title));
    auto fields = m_fields.fields();
    for (auto& field : fields)
        if (field.key == "clock.minutes" && countsHours(row)) {
            field.required = true;
            field.hint = tr("what the clock showed then: this requirement counts hours");
        } else if (field.key == "on") {
            field.value.clear();
        }
    m_fields.show(std::move(fields));
    announce();
}

void EntryForm::announce() {
    if (!isOpen())
        return;
    emit changed();
    for (const char* key : {"balloon", "-when", "-fresh", "quantity"})
        follow(key);
    showPlace();
    askPictures();
    askNames();
    askDirectives();
}

void EntryForm::prepare(std::string_view kind, const FormSubject& subject) {
    const auto sheet = house().fleet.sheet();
    if (!sheet || !FormPlan::known(kind))
        return;
    ++m_turn;
    m_writing = {.kind = std::string(kind)};
    m_amends.clear();
    m_mends.clear();
    m_tried = Json();
    m_read.clear();
    m_about.clear();
    m_problem.clear();
    m_follows.clear();
    m_kit.clear();
    m_pictures.clear();
    m_latestPictures.clear();
    m_reading = 0;
    m_sought = -1;
    m_touched = m_papers = false;
    m_papersOf.reset();
    m_known.reset();
    m_boundBy.reset();
    m_boundSaid.clear();
    ++m_boundTurn;
    const auto today = house().day.todayDate();
    auto fields = FormPlan::fields(kind, subject, *sheet);
    for (auto& field : fields) {
        const bool ofTheEntry = field.key == "on" && kind != kindName<ProgrammeAdopted>();
        if (ofTheEntry || field.kind == FormField::Kind::Made)
            field.notAfter = today;
        if (field.key == "on")
            field.value = inward((ofTheEntry ? std::min(house().day.date(), today) : house().day.date()).iso());
        if (field.key == "by")
            field.value = house().habits.person();
    }
    AheadForm::propose(kind, fields, house().day.date());
    m_fields.show({}); // a new form is new everywhere, also in what the fields remember
    m_fields.show(std::move(fields));
    askForCode(kind == kindName<ReleaseRevoked>() || kind == kindName<ReviewSigned>());
}

void EntryForm::correct(const QString& entry, const QString& key) {
    hear(house().desk.ask([id = EntryId(outward(entry))](Record& record) { return record.line(id); }), this,
         [this, key = outward(key)](const Result<std::optional<JournalLine>>& line) {
             if (line && *line && !(*line)->unread)
                 takeEntry(**line, key);
         });
}

void EntryForm::takeEntry(const JournalLine& line, const std::string& mends) {
    const auto& entry = nowOf(line);
    const auto object = toJson(entry);
    FormSubject subject;
    subject.balloon = object.value("balloon", std::string());
    subject.item = object.value("item", std::string());
    subject.requirement = object.value("requirement", std::string());
    subject.programme = object.value("programme", std::string());
    prepare(kindName(entry.body), subject);
    if (!isOpen())
        return;
    m_amends = entry.id.text();
    m_writing.before = object;
    m_about = Sentences::of(entry, *house().fleet.titles());
    if (!entry.by.empty())
        m_about = tr("%1. Written by %2.").arg(m_about, inward(entry.by));
    auto fields = m_fields.fields();
    for (auto& field : fields) {
        const auto at = pointerTo(field.key);
        if (field.key == "-when")
            field.value = entry.time ? QStringLiteral("at") : QString();
        else if (field.key == "-fresh")
            field.value = object.contains("brought_forward") ? QString() : QStringLiteral("true");
        else if (field.key == "by")
            field.value = house().habits.person(); // who corrects today, not who wrote then
        else if (object.contains(at))
            field.take(AheadForm::asAsked(field.key, object.at(at)));
        else if (field.key != "landings" && field.key != "inflations")
            field.value.clear();
        if (field.key == "-when")
            field.required = false;
        offerWhatWas(field);
    }
    if (kindName(entry.body) == kindName<DirectiveIssued>())
        DirectiveForm::take(fields, object);
    m_writing.given = unasked(object, fields);
    fields.push_back(plannedField("-why", tr("Why it is corrected"), FormField::Kind::Text, false,
                                  tr("asked where it is signed for")));
    m_fields.show(std::move(fields));
    m_mends = mends;
    need(mends);
    askForCode(false); // what was signed stays signed as it was
    announce();
}

void EntryForm::voidEntry(const QString& entry) {
    prepare(kindName<EntryVoided>(), {});
    m_amends = outward(entry);
    m_about = tr("The entry stays in the journal and no longer counts.");
    announce();
    hear(house().desk.ask([id = EntryId(m_amends)](Record& record) { return record.line(id); }), this,
         [this, amends = m_amends](const Result<std::optional<JournalLine>>& line) {
             if (!line || !*line || amends != m_amends || !isOpen())
                 return;
             askForCode(std::holds_alternative<ReviewSigned>((*line)->entry.body));
             m_about = tr("It stays in the journal and no longer counts: %1")
                           .arg(Sentences::of(**line, *house().fleet.titles()));
             emit changed();
         });
}

void EntryForm::setValue(int row, const QString& value) {
    if (row < 0 || row >= m_fields.count())
        return;
    m_fields.setValue(row, value);
    touch();
    forgetTried();
    if (m_sought >= 0)
        seek(-1);
    follow(m_fields.fields()[static_cast<std::size_t>(row)].key);
}

void EntryForm::setDaysAgo(int row, int days) { setValue(row, inward(addDays(house().day.todayDate(), -days).iso())); }

void EntryForm::toggle(int row, const QString& choice) {
    if (row < 0 || row >= m_fields.count())
        return;
    m_fields.toggle(row, choice);
    askHoursOfOthers();
    if (DirectiveForm::known(m_writing.kind))
        followDirective(m_fields.fields()[static_cast<std::size_t>(row)].key);
    touch();
    forgetTried();
}

void EntryForm::forgetTried() {
    if (!m_read.isEmpty()) {
        m_read.clear();
        showCode();
    }
    if (m_tried.is_null())
        return;
    m_tried = Json();
    m_follows.clear();
    emit changed();
}

void EntryForm::answer(int row) {
    if (row < 0 || row >= m_fields.count())
        return;
    m_fields.answer(row);
    touch();
}

void EntryForm::seek(int row) {
    m_sought = row >= 0 && row < m_fields.count() ? row : -1;
    if (m_sought >= 0)
        m_sift.offer(m_fields.fields()[static_cast<std::size_t>(m_sought)].choices);
    emit changed();
}

int EntryForm::firstRow() const {
    const auto& fields = m_fields.fields();
    // What a form is about stands at its top, before others on which the same may be done.
    const bool ofItem = m_amends.empty() && m_writing.kind == kindName<RequirementDone>() && !m_papers;
    const bool ofReading = m_writing.kind == kindName<ReadingTaken>() && ReadingForm::wantsFigure(fields);
    const auto led = std::string_view(ofItem ? "item" : ofReading ? "value" : m_mends.c_str());
    if (const auto at = std::ranges::find(fields, led, &FormField::key);
        at != fields.end() && at->shown && (!ofItem || !at->value.isEmpty()))
        return static_cast<int>(at - fields.begin());
    const auto first = std::ranges::find_if(fields, [this](const FormField& field) {
        using Kind = FormField::Kind;
        const bool figure = field.kind == Kind::Duration || field.kind == Kind::Count || field.kind == Kind::Decimal;
        return field.shown && (corrects() ? figure : field.required && field.value.isEmpty());
    });
    return first == fields.end() ? 0 : static_cast<int>(first - fields.begin());
}

void EntryForm::go(const QString& wayTo) {
    cancel();
    const auto name = wayTo.section(u' ', 1);
    if (wayTo.startsWith(u"balloon "))
        emit balloonAsked(name);
    else
        emit itemAsked(name);
}

void EntryForm::goToMarked() {
    if (const auto row = m_fields.firstMarked(); row >= 0)
        emit marked(row);
}

void EntryForm::save() {
    if (!isOpen() || m_saving || reading())
        return;
    m_problem.clear();
    if (isAct())
        return saveAct();
    if (isReadFirst() && m_read.isEmpty())
        return readOut();
    const auto written = entries();
    if (!written || lacksCode()) {
        if (m_problem.isEmpty())
            tellMarked();
        emit changed();
        return;
    }
    if (!m_writing.given.contains("inspection")) // the bench has its own
        house().habits.setPerson(m_fields.value("by").trimmed());
    const auto said = toJson(written->back().entry);
    if (corrects() && said.at("with") != m_tried)
        tryOut(*written);
    else
        post(*written);
}

void EntryForm::cancel() {
    if (!isOpen())
        return;
    ++m_turn;
    m_writing.kind.clear();
    m_kit.clear();
    askForCode(false);
    emit changed();
}

QString EntryForm::title() const {
    return corrects() ? tr("Correct: %1").arg(Sentences::kind(m_writing.kind)) : FormPlan::title(m_writing.kind);
}

}
