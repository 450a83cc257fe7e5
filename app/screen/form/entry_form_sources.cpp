// SPDX-License-Identifier: GPL-3.0-or-later

/// What a form begins from or takes in besides what is typed: a programme's file, a flight, photographs.

#include "answers/bench_file.h"
#include "answers/kit_at.h"
#include "exchange/text/whole_file.h"
#include "record/chain/chain.h"
#include "rules/due/defects.h"
#include "rules/programme/programme.h"
#include "screen/desk/house.h"
#include "screen/desk/item_choices.h"
#include "screen/desk/kept_photograph.h"
#include "screen/form/entry_form.h"
#include "screen/form/plans/event_form.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// Which programme it is, and of which serial numbers each of its requirements is.
QString aboutOf(const Programme& programme) {
    QStringList lines{
        EntryForm::tr("%1, revision %2 · %3")
            .arg(words::said(programme.title), inward(programme.revision), words::said(programme.source))};
    for (const auto& each : programme.requirements) {
        QStringList ranges;
        for (const auto& range : each.serials)
            ranges += Words::serials(range);
        if (!ranges.isEmpty())
            lines += EntryForm::tr("%1: %2").arg(words::said(each.title), ranges.join(EntryForm::tr(", ")));
    }
    if (lines.size() == 1)
        lines += EntryForm::tr("It is for all serial numbers.");
    return lines.join(u'\n');
}

struct FlownKit {
    JournalLine line;
    std::vector<ItemId> items;
};

Result<std::optional<FlownKit>> flownKit(Record& record, const EntryId& flight) {
    auto line = record.line(flight);
    if (!line)
        return tl::unexpected(line.error());
    const auto* flown = *line && !(*line)->unread ? std::get_if<FlightLogged>(&nowOf(**line).body) : nullptr;
    if (!flown)
        return std::optional<FlownKit>();
    auto kit =
        flown->kit ? Result<std::vector<ItemId>>(*flown->kit) : kitAt(record, flown->balloon, stampOf(nowOf(**line)));
    if (!kit)
        return tl::unexpected(kit.error());
    return std::optional(FlownKit{std::move(**line), std::move(*kit)});
}

struct ReadPhotograph {
    Picture picture;
    QString digest;
    QString small;
};

Result<ReadPhotograph> readPhotograph(const QUrl& file) {
    auto picture = photographFrom(file);
    if (!picture)
        return tl::unexpected(picture.error());
    auto small = smallPhotograph(*picture);
    auto digest = inward(hex(sha256(picture->bytes)));
    return ReadPhotograph{std::move(*picture), std::move(digest), std::move(small)};
}

}

void EntryForm::adopt(const QString& programme) {
    prepare(kindName<ProgrammeAdopted>(), {{}, {}, {}, outward(programme)});
    const auto sheet = house().fleet.sheet();
    for (const auto& text : shelf())
        if (const auto shelved = programmeFrom(text); shelved && shelved->id.text() == outward(programme))
            m_about = aboutOf(*shelved);
    for (const auto& each : sheet ? sheet->adoptions() : std::vector<Adoption>())
        if (each.programme->id.text() == outward(programme))
            m_about = aboutOf(*each.programme);
    announce();
}

void EntryForm::adoptFile(const QUrl& url) {
    const auto path = url.isLocalFile() ? url.toLocalFile() : url.toString();
    const auto text = wholeFile(outward(path));
    if (!text)
        return house().notice.tellTrouble(Words::problem(text.error()));
    const auto programme = programmeFrom(*text);
    if (!programme) {
        auto problem = programme.error();
        problem.where.file = QFileInfo(path).fileName().toStdString();
        return house().notice.tellTrouble(Words::problem(problem));
    }
    prepare(kindName<ProgrammeAdopted>(), {{}, {}, {}, programme->id.text()});
    m_about = aboutOf(*programme);
    m_writing.given["document"] = nlohmann::json::parse(*text);
    m_fields.setChoices("programme",
                        {{inward(programme->id.text()), words::said(programme->title), {}, -1, -1, false}});
    announce();
}

/// What was found, on what, and where it is fitted; its name only where it is open no more.
QString EntryForm::aboutDefect(const std::string& item, const std::string& defect) const {
    const auto sheet = house().fleet.sheet();
    const auto* facts = sheet ? sheet->item(ItemId(item)) : nullptr;
    const auto open = facts ? openDefects(*facts) : std::vector<OpenDefect>();
    const auto at = std::ranges::find_if(open, [&](const auto& each) { return each.found->defect.text() == defect; });
    if (at == open.end())
        return tr("%1 on %2").arg(inward(defect), inward(item));
    const auto on = joined({ItemChoices::name(*facts), facts->balloon ? inward(facts->balloon->text()) : QString(),
                            inward(facts->place), tr("found on %1").arg(inward(at->found->stamp.at.on().iso()))},
                           QStringLiteral(" · "));
    return tr("%1\n%2").arg(words::said(whatOf(*at->found)), on);
}

void EntryForm::proposePlaceOf(const ItemId& item, const std::string& defect) {
    const auto sheet = house().fleet.sheet();
    const auto* facts = sheet ? sheet->item(item) : nullptr;
    const auto open = facts ? openDefects(*facts) : std::vector<OpenDefect>();
    const auto at = std::ranges::find_if(open, [&](const auto& each) { return each.found->defect.text() == defect; });
    if (at == open.end() || !at->found->reading)
        return;
    const auto& place = at->found->reading->place;
    if (place.gore)
        m_fields.propose("gore", QString::number(*place.gore));
    if (place.row)
        m_fields.propose("row", QString::number(*place.row));
}

void EntryForm::need(std::string_view key) {
    auto fields = m_fields.fields();
    const auto field = std::ranges::find(fields, key, &FormField::key);
    if (field == fields.end())
        return;
    field->required = true;
    if (field->kind == FormField::Kind::Choice || field->kind == FormField::Kind::OneOf)
        std::erase_if(field->choices, [](const Choice& each) { return each.value.isEmpty(); });
    m_fields.show(std::move(fields));
}

void EntryForm::askGrade() {
    if (isOpen() && m_writing.kind == kindName<WorkPerformed>())
        need("grade");
}

void EntryForm::askPlace(const QVariantMap& place) {
    if (!isOpen() || m_writing.kind != kindName<RepairMade>())
        return;
    for (auto at = place.begin(); at != place.end(); ++at) {
        const auto key = outward(at.key());
        m_fields.propose(key, at.value().toString());
        if (key != "zone")
            need(key);
    }
}

void EntryForm::offerTasks(const ChoiceModel* tasks) {
    const bool isWork = m_writing.kind == kindName<WorkPerformed>() || m_writing.kind == kindName<RepairMade>() ||
                        m_writing.kind == kindName<PartReplaced>();
    if (!isOpen() || !isWork || !tasks || tasks->choices().empty())
        return;
    auto fields = m_fields.fields();
    auto task = plannedField("line", tr("Which of the owner's tasks it is"), FormField::Kind::Choice, true,
                             tr("what is none of them, a pilot-owner does not release"));
    task.choices = tasks->choices();
    const auto item = std::ranges::find(fields, std::string_view("item"), &FormField::key);
    fields.insert(item == fields.end() ? item : item + 1, std::move(task));
    m_fields.show(std::move(fields));
    emit changed();
}

void EntryForm::beginFinding(const QString& inspection, const QString& item, const QString& line,
                             const QString& finding, const QStringList& scope) {
    beginAtBench(inward(kindName<DefectFound>()), inspection, {}, item, scope);
    if (!isOpen())
        return;
    m_writing.given["line"] = outward(line);
    m_fields.propose("what", finding);
    if (!item.isEmpty()) {
        m_fields.propose("item", item);
        showPlace();
    }
    // "gore 5, row 2", as the bench itself writes a place.
    for (const char* key : {"gore", "row"}) {
        const QRegularExpression place(QStringLiteral("\\b%1\\s*(\\d+)").arg(QLatin1String(key)),
                                       QRegularExpression::CaseInsensitiveOption);
        if (const auto at = place.match(finding); at.hasMatch())
            m_fields.propose(key, at.captured(1));
    }
    emit changed();
}

void EntryForm::defectOfFlight(const QString& entry) {
    hear(house().desk.ask([id = EntryId(outward(entry))](Record& record) { return flownKit(record, id); }), this,
         [this](const Result<std::optional<FlownKit>>& kit) {
             if (!kit)
                 return house().notice.tellTrouble(Words::problem(kit.error()));
             const auto sheet = house().fleet.sheet();
             if (!*kit || !sheet)
                 return;
             const auto& flight = nowOf((*kit)->line);
             begin(inward(kindName<DefectFound>()), inward(std::get<FlightLogged>(flight.body).balloon.text()));
             if (!isOpen())
                 return;
             const auto told = Sentences::of((*kit)->line, *house().fleet.titles());
             m_about = tr("Its day and what flew are taken from this flight: %1. That it was found on it is written "
                          "in the note.")
                           .arg(told);
             m_fields.propose("note", tr("Found on the flight: %1").arg(told));
             std::vector<const ItemFacts*> flown;
             for (const auto& id : (*kit)->items)
                 if (const auto* item = sheet->item(id))
                     flown.push_back(item);
             std::ranges::stable_sort(flown, {}, &ItemFacts::kind); // the envelope first, as on the balloon's page
             std::vector<Choice> flew;
             for (const auto* item : flown)
                 flew.push_back(ItemChoices::of(*sheet, *item));
             if (!flew.empty())
                 m_fields.setChoices("item", std::move(flew));
             m_fields.propose("on", inward(flight.on.iso()));
             showPlace();
             // Not before the flight on which it was found.
             if (flight.time && *flight.time > crownring::Kind<DefectFound>::time)
                 m_writing.given["time"] = flight.time->iso();
             emit changed();
         });
}

void EntryForm::eventOfFlight(const QString& entry) {
    hear(house().desk.ask([id = EntryId(outward(entry))](Record& record) { return record.line(id); }), this,
         [this](const Result<std::optional<JournalLine>>& line) {
             if (!line)
                 return house().notice.tellTrouble(Words::problem(line.error()));
             const auto* flight = *line && !(*line)->unread ? std::get_if<FlightLogged>(&nowOf(**line).body) : nullptr;
             if (!flight)
                 return;
             begin(inward(kindName<EventReported>()), inward(flight->balloon.text()));
             if (!isOpen())
                 return;
             const auto told = Sentences::of(**line, *house().fleet.titles());
             m_about = tr("Its day, its landing and its track are taken from this flight: %1").arg(told);
             EventForm::takeFlight(m_fields, nowOf(**line));
             m_fields.propose("note", tr("On the flight: %1").arg(told));
             follow("balloon");
         });
}

void EntryForm::attach(int row, const QUrl& file) {
    if (row < 0 || row >= m_fields.count())
        return;
    ++m_reading;
    emit changed();
    // On the record's thread, where nobody waits for the next frame.
    hear(house().desk.ask([file](Record&) { return readPhotograph(file); }), this,
         [this, row, file, turn = m_turn](const Result<ReadPhotograph>& read) {
             if (turn != m_turn)
                 return;
             --m_reading;
             if (!read) {
                 m_fields.setProblem(m_fields.fields()[static_cast<std::size_t>(row)].key,
                                     Words::problem(read.error()));
             } else {
                 m_pictures.emplace(read->digest, read->picture);
                 m_fields.take(row, {read->digest, {}, read->small, -1, -1, false});
                 m_latestPictures.removeAll(file.toString(QUrl::FullyEncoded));
                 touch();
                 forgetTried();
             }
             emit changed();
         });
}

void EntryForm::askPictures() {
    const auto isOfPictures = [](const FormField& field) { return field.kind == FormField::Kind::Photographs; };
    if (std::ranges::none_of(m_fields.fields(), isOfPictures))
        return;
    hear(house().desk.ask([today = house().day.todayDate(), folder = house().habits.cameraFolder()](Record&) {
        return crownring::screen::latestPictures(today, folder);
    }),
         this, [this, turn = m_turn](const QStringList& pictures) {
             if (turn != m_turn)
                 return;
             m_latestPictures = pictures;
             emit changed();
         });
}

/// Who agrees to a deferral is one of those whom the record authorises to something.
void EntryForm::askNames() {
    if (!m_fields.field("agreed_by"))
        return;
    using Answer = Result<std::vector<Entitlement>>;
    hear(house().desk.ask(
             [on = house().day.todayDate()](Record& record) -> Answer { return entitlementsOn(record, on); }),
         this, [this, turn = m_turn](const Answer& entitlements) {
             if (turn != m_turn || !entitlements)
                 return;
             std::vector<Choice> names;
             for (const auto& each : *entitlements)
                 if (const auto name = inward(each.person.text());
                     std::ranges::find(names, name, &Choice::value) == names.end())
                     names.push_back(plainChoice(name, name));
             auto fields = m_fields.fields();
             std::ranges::find(fields, std::string_view("agreed_by"), &FormField::key)->choices = std::move(names);
             m_fields.show(std::move(fields));
             emit changed();
         });
}

std::vector<Picture> EntryForm::newPictures() const {
    const auto chosen = m_fields.value("photographs").split(u'\n', Qt::SkipEmptyParts);
    std::vector<Picture> pictures;
    for (const auto& [digest, picture] : m_pictures)
        if (chosen.contains(digest))
            pictures.push_back(picture);
    return pictures;
}

}
