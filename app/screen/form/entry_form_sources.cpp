// SPDX-License-Identifier: GPL-3.0-or-later

/// A defect as a pilot writes it down: from the flight, with a photograph.

#include "answers/kit_at.h"
#include "record/chain/chain.h"
#include "screen/desk/house.h"
#include "screen/desk/item_choices.h"
#include "screen/desk/kept_photograph.h"
#include "screen/form/entry_form.h"
#include "words/border.h"
#include "words/sentences.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

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

void EntryForm::defectOfFlight(const QString& flight) {
    hear(house().desk.ask([id = EntryId(outward(flight))](Record& record) { return flownKit(record, id); }), this,
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
             m_about = tr("Found on this flight: %1").arg(Sentences::of((*kit)->line, *house().fleet.titles()));
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
             // Not before the flight on which it was found.
             if (flight.time && *flight.time > crownring::Kind<DefectFound>::time)
                 m_writing.given["time"] = flight.time->iso();
             emit changed();
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
    hear(house().desk.ask(
             [today = house().day.todayDate()](Record&) { return crownring::screen::latestPictures(today); }),
         this, [this, turn = m_turn](const QStringList& pictures) {
             if (turn != m_turn)
                 return;
             m_latestPictures = pictures;
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
