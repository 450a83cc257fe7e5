// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/terms.h"

#include "bench/checklist/visit.h"
#include "bench/release/entitlement.h"
#include "exchange/log/log_heading.h"
#include "measure/unit.h"
#include "record/kinds/item_kind.h"
#include "words/border.h"

#include <QCoreApplication>

#include <array>

namespace crownring::words {

namespace {

const char* wordOf(ItemKind kind) {
    switch (kind) {
    case ItemKind::Envelope:
        return QT_TRANSLATE_NOOP("Term", "envelope");
    case ItemKind::Basket:
        return QT_TRANSLATE_NOOP("Term", "basket");
    case ItemKind::Burner:
        return QT_TRANSLATE_NOOP("Term", "burner");
    case ItemKind::Cylinder:
        return QT_TRANSLATE_NOOP("Term", "cylinder");
    case ItemKind::Hose:
        return QT_TRANSLATE_NOOP("Term", "hose");
    case ItemKind::Instrument:
        return QT_TRANSLATE_NOOP("Term", "instrument");
    case ItemKind::Other:
        return QT_TRANSLATE_NOOP("Term", "other item");
    }
    return "";
}

const char* wordOf(Dimension dimension) {
    switch (dimension) {
    case Dimension::Force:
        return QT_TRANSLATE_NOOP("Term", "force");
    case Dimension::AirVelocity:
        return QT_TRANSLATE_NOOP("Term", "air velocity");
    case Dimension::Pressure:
        return QT_TRANSLATE_NOOP("Term", "pressure");
    case Dimension::Temperature:
        return QT_TRANSLATE_NOOP("Term", "temperature");
    case Dimension::TemperatureDifference:
        return QT_TRANSLATE_NOOP("Term", "temperature difference");
    case Dimension::Length:
        return QT_TRANSLATE_NOOP("Term", "length");
    case Dimension::Area:
        return QT_TRANSLATE_NOOP("Term", "area");
    case Dimension::Mass:
        return QT_TRANSLATE_NOOP("Term", "mass");
    case Dimension::Speed:
        return QT_TRANSLATE_NOOP("Term", "speed");
    case Dimension::Torque:
        return QT_TRANSLATE_NOOP("Term", "torque");
    case Dimension::Voltage:
        return QT_TRANSLATE_NOOP("Term", "voltage");
    case Dimension::Age:
        return QT_TRANSLATE_NOOP("Term", "age");
    case Dimension::Duration:
        return QT_TRANSLATE_NOOP("Term", "duration");
    case Dimension::Share:
        return QT_TRANSLATE_NOOP("Term", "share");
    case Dimension::Number:
        return QT_TRANSLATE_NOOP("Term", "number");
    }
    return "";
}

const char* wordOf(Visit visit) {
    switch (visit) {
    case Visit::PartMlInspection:
        return QT_TRANSLATE_NOOP("Term", "Annual or 100-hour inspection (Part-ML)");
    case Visit::PartMlSpecial:
        return QT_TRANSLATE_NOOP("Term", "Special inspection after an event (Part-ML)");
    case Visit::PartMlOwnerTasks:
        return QT_TRANSLATE_NOOP("Term", "Limited pilot-owner maintenance (Part-ML)");
    case Visit::UsAnnual:
        return QT_TRANSLATE_NOOP("Term", "Annual inspection (14 CFR 91.409(a))");
    case Visit::UsHundredHour:
        return QT_TRANSLATE_NOOP("Term", "100-hour inspection (14 CFR 91.409(b))");
    case Visit::UsSpecial:
        return QT_TRANSLATE_NOOP("Term", "Special inspection after an event (14 CFR)");
    case Visit::UsOwnerTasks:
        return QT_TRANSLATE_NOOP("Term", "Preventive maintenance (14 CFR Part 43, Appendix A(c))");
    case Visit::PartMlRepair:
        return QT_TRANSLATE_NOOP("Term", "Repair (Part-ML)");
    case Visit::PartMlRectification:
        return QT_TRANSLATE_NOOP("Term", "Rectification of defects (Part-ML)");
    case Visit::PartMlCompliance:
        return QT_TRANSLATE_NOOP("Term", "Compliance with a directive or bulletin (Part-ML)");
    case Visit::PartMlModification:
        return QT_TRANSLATE_NOOP("Term", "Modification (Part-ML)");
    case Visit::PartMlComponent:
        return QT_TRANSLATE_NOOP("Term", "Work on components off the aircraft (Part-ML)");
    case Visit::UsRepair:
        return QT_TRANSLATE_NOOP("Term", "Repair (14 CFR 43.9)");
    case Visit::UsRectification:
        return QT_TRANSLATE_NOOP("Term", "Rectification of defects (14 CFR 43.9)");
    case Visit::UsCompliance:
        return QT_TRANSLATE_NOOP("Term", "Compliance with a directive or bulletin (14 CFR 43.9)");
    case Visit::UsAlteration:
        return QT_TRANSLATE_NOOP("Term", "Alteration (14 CFR 43.9)");
    case Visit::UsComponent:
        return QT_TRANSLATE_NOOP("Term", "Work on components off the aircraft (14 CFR 43.9)");
    }
    return "";
}

const char* wordOf(Capacity capacity) {
    switch (capacity) {
    case Capacity::IndependentCertifyingStaff:
        return QT_TRANSLATE_NOOP("Term", "independent certifying staff");
    case Capacity::OrganisationCertifyingStaff:
        return QT_TRANSLATE_NOOP("Term", "certifying staff of an approved organisation");
    case Capacity::PilotOwner:
        return QT_TRANSLATE_NOOP("Term", "pilot-owner");
    case Capacity::Mechanic:
        return QT_TRANSLATE_NOOP("Term", "mechanic (A&P)");
    case Capacity::InspectionAuthorization:
        return QT_TRANSLATE_NOOP("Term", "mechanic (A&P) with inspection authorization");
    case Capacity::RepairStation:
        return QT_TRANSLATE_NOOP("Term", "repair station");
    case Capacity::Manufacturer:
        return QT_TRANSLATE_NOOP("Term", "manufacturer");
    case Capacity::PrivatePilot:
        return QT_TRANSLATE_NOOP("Term", "owner or operator, private pilot");
    case Capacity::AirworthinessReviewStaff:
        return QT_TRANSLATE_NOOP("Term", "airworthiness review staff of an approved organisation");
    case Capacity::ReviewAuthorisation:
        return QT_TRANSLATE_NOOP("Term", "independent certifying staff authorised to review");
    case Capacity::Authority:
        return QT_TRANSLATE_NOOP("Term", "competent authority");
    }
    return "";
}

const char* wordOf(LogColumn column) {
    switch (column) {
    case LogColumn::Balloon:
        return QT_TRANSLATE_NOOP("Term", "balloon");
    case LogColumn::Date:
        return QT_TRANSLATE_NOOP("Term", "date");
    case LogColumn::TakeOff:
        return QT_TRANSLATE_NOOP("Term", "take-off");
    case LogColumn::Landing:
        return QT_TRANSLATE_NOOP("Term", "landing");
    case LogColumn::Duration:
        return QT_TRANSLATE_NOOP("Term", "time aloft");
    case LogColumn::Landings:
        return QT_TRANSLATE_NOOP("Term", "landings");
    case LogColumn::Inflations:
        return QT_TRANSLATE_NOOP("Term", "inflations");
    case LogColumn::MaxTemperature:
        return QT_TRANSLATE_NOOP("Term", "highest envelope temperature");
    case LogColumn::FuelUsed:
        return QT_TRANSLATE_NOOP("Term", "fuel used");
    case LogColumn::Outside:
        return QT_TRANSLATE_NOOP("Term", "outside temperature");
    case LogColumn::Load:
        return QT_TRANSLATE_NOOP("Term", "load on board");
    case LogColumn::Tethered:
        return QT_TRANSLATE_NOOP("Term", "tethered");
    case LogColumn::Envelope:
        return QT_TRANSLATE_NOOP("Term", "envelope that flew");
    case LogColumn::Basket:
        return QT_TRANSLATE_NOOP("Term", "basket that flew");
    case LogColumn::Burner:
        return QT_TRANSLATE_NOOP("Term", "burner that flew");
    case LogColumn::Cylinders:
        return QT_TRANSLATE_NOOP("Term", "cylinders that flew");
    case LogColumn::Kit:
        return QT_TRANSLATE_NOOP("Term", "all that flew");
    case LogColumn::By:
        return QT_TRANSLATE_NOOP("Term", "who flew");
    case LogColumn::Note:
        return QT_TRANSLATE_NOOP("Term", "note");
    }
    return "";
}

struct Named {
    std::string_view name;
    const char* source;
};

/// Those of `allQuantities`, by their slugs.
constexpr std::array quantities{
    Named{"grab-strength", QT_TRANSLATE_NOOP("Term", "grab strength")},
    Named{"strip-strength", QT_TRANSLATE_NOOP("Term", "strip strength")},
    Named{"tear-strength", QT_TRANSLATE_NOOP("Term", "tear strength")},
    Named{"air-permeability", QT_TRANSLATE_NOOP("Term", "air permeability")},
    Named{"permeability-time", QT_TRANSLATE_NOOP("Term", "timed permeability")},
    Named{"tell-tale", QT_TRANSLATE_NOOP("Term", "tell-tale temperature")},
    Named{"crown-line-length", QT_TRANSLATE_NOOP("Term", "length of the crown line")},
    Named{"control-line-length", QT_TRANSLATE_NOOP("Term", "length of the control line")},
    Named{"vent-overlap", QT_TRANSLATE_NOOP("Term", "overlap of the vent")},
    Named{"flying-wire-length-difference", QT_TRANSLATE_NOOP("Term", "difference in length of the flying wires")},
    Named{"carabiner-wear", QT_TRANSLATE_NOOP("Term", "wear of the karabiner")},
    Named{"broken-strands", QT_TRANSLATE_NOOP("Term", "broken strands of the worst wire")},
    Named{"runner-thickness", QT_TRANSLATE_NOOP("Term", "thickness left of the runner")},
    Named{"wicker-break", QT_TRANSLATE_NOOP("Term", "longest broken stretch of wicker")},
    Named{"floor-thickness", QT_TRANSLATE_NOOP("Term", "thickness left of the floor")},
    Named{"rope-handle-diameter", QT_TRANSLATE_NOOP("Term", "diameter left of the rope handle")},
    Named{"wire-diameter", QT_TRANSLATE_NOOP("Term", "diameter left of the worst wire")},
    Named{"tape-joint-broken-stitches",
          QT_TRANSLATE_NOOP("Term", "broken stitches of the load tape at the crown ring")},
    Named{"burner-leak-test", QT_TRANSLATE_NOOP("Term", "leak test of the burner")},
    Named{"burner-pressure", QT_TRANSLATE_NOOP("Term", "fuel pressure at the burner")},
    Named{"fuel-pressure-gauge-error", QT_TRANSLATE_NOOP("Term", "error of the fuel pressure gauge")},
    Named{"hose-leak-test", QT_TRANSLATE_NOOP("Term", "leak test of the hose")},
    Named{"cylinder-leak-test", QT_TRANSLATE_NOOP("Term", "leak test of the cylinder")},
    Named{"relief-valve-age", QT_TRANSLATE_NOOP("Term", "age of the relief valve")},
    Named{"relief-valve-opening", QT_TRANSLATE_NOOP("Term", "opening pressure of the relief valve")},
    Named{"cylinder-dent-depth", QT_TRANSLATE_NOOP("Term", "depth of the deepest dent")},
    Named{"altimeter-error", QT_TRANSLATE_NOOP("Term", "error of the altimeter")},
    Named{"variometer-error", QT_TRANSLATE_NOOP("Term", "error of the variometer")},
    Named{"envelope-thermometer-error", QT_TRANSLATE_NOOP("Term", "error of the envelope thermometer")},
    Named{"battery-voltage", QT_TRANSLATE_NOOP("Term", "battery voltage")},
};

constexpr std::array directions{
    Named{"warp", QT_TRANSLATE_NOOP("Term", "warp")},
    Named{"weft", QT_TRANSLATE_NOOP("Term", "weft")},
};

/// Those of `knownEvents`, by their names.
constexpr std::array events{
    Named{"hard-landing", QT_TRANSLATE_NOOP("Term", "hard landing")},
    Named{"wire-contact", QT_TRANSLATE_NOOP("Term", "wire contact")},
    Named{"over-temperature", QT_TRANSLATE_NOOP("Term", "over-temperature")},
    Named{"immersion", QT_TRANSLATE_NOOP("Term", "immersion")},
    Named{"packed-wet", QT_TRANSLATE_NOOP("Term", "packed wet")},
    Named{"dragged", QT_TRANSLATE_NOOP("Term", "dragged, or into trees")},
    Named{"flame-contact", QT_TRANSLATE_NOOP("Term", "flame on the fabric")},
    Named{"coil-run-dry", QT_TRANSLATE_NOOP("Term", "coil run dry")},
    Named{"fire", QT_TRANSLATE_NOOP("Term", "fire, or near a cylinder")},
    Named{"mildew", QT_TRANSLATE_NOOP("Term", "mildew")},
    Named{"increased-fuel-use", QT_TRANSLATE_NOOP("Term", "increased fuel use")},
};

/// Of an envelope, by `zoneName`, and of a basket, by `basketPlaceName`.
constexpr std::array zones{
    Named{"floor", QT_TRANSLATE_NOOP("Term", "floor")},
    Named{"long-side-1", QT_TRANSLATE_NOOP("Term", "long side 1")},
    Named{"corner-1", QT_TRANSLATE_NOOP("Term", "corner 1")},
    Named{"short-side-1", QT_TRANSLATE_NOOP("Term", "short side 1")},
    Named{"corner-2", QT_TRANSLATE_NOOP("Term", "corner 2")},
    Named{"long-side-2", QT_TRANSLATE_NOOP("Term", "long side 2")},
    Named{"corner-3", QT_TRANSLATE_NOOP("Term", "corner 3")},
    Named{"short-side-2", QT_TRANSLATE_NOOP("Term", "short side 2")},
    Named{"corner-4", QT_TRANSLATE_NOOP("Term", "corner 4")},
    Named{"rim", QT_TRANSLATE_NOOP("Term", "rim")},
    Named{"partition", QT_TRANSLATE_NOOP("Term", "partition")},
    Named{"runner-1", QT_TRANSLATE_NOOP("Term", "runner 1")},
    Named{"runner-2", QT_TRANSLATE_NOOP("Term", "runner 2")},
    Named{"runner-3", QT_TRANSLATE_NOOP("Term", "runner 3")},
    Named{"runner-4", QT_TRANSLATE_NOOP("Term", "runner 4")},
    Named{"envelope", QT_TRANSLATE_NOOP("Term", "body of the envelope")},
    Named{"parachute", QT_TRANSLATE_NOOP("Term", "parachute vent")},
    Named{"turning-vent", QT_TRANSLATE_NOOP("Term", "turning vent")},
    Named{"mouth", QT_TRANSLATE_NOOP("Term", "mouth")},
};

template <class Table>
const char* sourceIn(const Table& table, std::string_view name) {
    for (const auto& each : table)
        if (each.name == name)
            return each.source;
    return nullptr;
}

template <class Known>
const char* wordOf(const std::optional<Known>& known) {
    return known ? wordOf(*known) : nullptr;
}

const char* wordOf(const Term& term) {
    switch (term.of) {
    case Term::Of::ItemKind:
        return wordOf(itemKindFrom(term.name));
    case Term::Of::Quantity:
        return sourceIn(quantities, term.name);
    case Term::Of::Dimension:
        return wordOf(dimensionFrom(term.name));
    case Term::Of::Direction:
        return sourceIn(directions, term.name);
    case Term::Of::Zone:
        return sourceIn(zones, term.name);
    case Term::Of::Visit:
        return wordOf(visitFrom(term.name));
    case Term::Of::Capacity:
        return wordOf(capacityFrom(term.name));
    case Term::Of::LogColumn:
        return wordOf(logColumnFrom(term.name));
    case Term::Of::Event:
        return sourceIn(events, term.name);
    }
    return nullptr;
}

}

QString term(const Term& term) {
    const auto* source = wordOf(term);
    return source ? QCoreApplication::translate("Term", source) : inward(term.name);
}

}
