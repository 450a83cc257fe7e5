// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The list of kinds, and what can be asked of an entry of any of them. Each answer is a fold over `Kind<…>`: nothing
/// is said of a kind here.

#include "record/kinds/amendments.h"
#include "record/kinds/defects.h"
#include "record/kinds/directives/directives.h"
#include "record/kinds/fabric.h"
#include "record/kinds/flights.h"
#include "record/kinds/inspections.h"
#include "record/kinds/items.h"
#include "record/kinds/parts/parts.h"
#include "record/kinds/plans/plans.h"
#include "record/kinds/programmes.h"
#include "record/kinds/readings.h"
#include "record/kinds/service.h"
#include "record/kinds/shop.h"
#include "record/kinds/signatures.h"
#include "record/kinds/subject.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace crownring {

template <EntryKind Said>
using Stated = Said;
template <class... Kinds>
using OneOf = std::variant<Stated<Kinds>...>;

/// What an entry says. New kinds stand at the end.
using Body =
    OneOf<ItemEntered, BalloonEntered, ItemFitted, ItemRemoved, FlightLogged, RequirementDone, ProgrammeAdopted,
          ReadingTaken, EventReported, EntryCorrected, EntryVoided, InspectionOpened, LineSettled, DefectFound,
          DefectDeferred, DefectCleared, RepairMade, PartReplaced, InspectionClosed, PersonEntitled, TesterCalibrated,
          TypeDescribed, LimitStated, ChecklistAdopted, FabricStated, ReleaseRevoked, ItemState, BalloonState,
          BalloonRenamed, ReturnApproved, WorkPerformed, ReleaseIncomplete, BalloonOwned, ReviewSigned, SignatoryCode,
          TextAdopted, TextConfirmed, CylinderFilled, DirectiveIssued, DirectiveAnswered, PartsListed, UsePlanned,
          FlightPlanned, VisitPlanned, EventNotified>;

/// The answers of `ask.operator()<Kind>()` for all kinds, in the order of `Body`.
template <class Ask>
auto ofEachKind(const Ask& ask) {
    return [&]<std::size_t... At>(std::index_sequence<At...>) {
        return std::vector{ask.template operator()<std::variant_alternative_t<At, Body>>()...};
    }
    (std::make_index_sequence<std::variant_size_v<Body>>());
}

/// "flight.logged" and so on, in the order of `Body`.
[[nodiscard]] const std::vector<std::string_view>& kindNames();
[[nodiscard]] std::string_view kindName(const Body& body);
template <EntryKind Said>
[[nodiscard]] constexpr std::string_view kindName() {
    return Kind<Said>::name;
}

/// The time of an entry that states none.
[[nodiscard]] TimeOfDay defaultTime(const Body& body);

struct Named {
    Subject subject;
    std::string name;
};

/// A name that must be in the record, and the key that speaks of it.
struct Mention {
    Named named;
    std::string_view key;
};
/// In the order of complaint.
[[nodiscard]] std::vector<Mention> mentions(const Body& body);

/// What it brings into the record, so that later entries may speak of it.
[[nodiscard]] std::optional<Named> broughtBy(const Body& body);

/// What it is found under, beside the projections of its own.
[[nodiscard]] std::vector<Named> toldUnder(const Body& body);

/// The inspection that it adds a word to.
[[nodiscard]] std::optional<InspectionId> inspectionOf(const Body& body);

/// Takes the keys of the kind named `kind`; a name that is of none is refused.
[[nodiscard]] Body readBody(ObjectReader& reader, std::string_view kind);
void writeBody(nlohmann::json& into, const Body& body);

}
