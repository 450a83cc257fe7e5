// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/reading_said.h"

#include "registry/item_facts.h"

namespace crownring {

Argument inPlace(Argument what, const PanelPlace& place) {
    if (place.zone != Zone::Envelope)
        what =
            Phrase{ReadingPhrase::InZone, {std::move(what), Term{Term::Of::Zone, std::string(zoneName(place.zone))}}};
    if (place.basket)
        what = Phrase{ReadingPhrase::InZone,
                      {std::move(what), Term{Term::Of::Zone, std::string(basketPlaceName(*place.basket))}}};
    if (place.gore)
        what = Phrase{ReadingPhrase::InGore, {std::move(what), *place.gore}};
    if (place.row)
        what = Phrase{ReadingPhrase::InRow, {std::move(what), *place.row}};
    return what;
}

Argument whatOf(const DefectMark& found) {
    if (!found.what.empty())
        return found.what;
    return Phrase{ReadingPhrase::Failed,
                  {found.reading ? said(*found.reading) : Argument(Phrase{ReadingPhrase::AReading, {}})}};
}

Argument said(const ReadingTaken& reading) {
    const Term quantity{Term::Of::Quantity, reading.quantity};
    if (reading.below)
        return inPlace(Phrase{ReadingPhrase::Step, {quantity, reading.value, InUnit{*reading.below, reading.unit}}},
                       reading.place);
    return inPlace(Phrase{reading.held ? ReadingPhrase::Held : ReadingPhrase::Read,
                          {quantity, InUnit{reading.value, reading.unit}}},
                   reading.place);
}

}
