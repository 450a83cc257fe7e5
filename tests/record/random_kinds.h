// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A generator for each kind of entry; `anyEntry` asks each for its share, so a kind without one does not compile.

#include "record/random_names.h"

#include <type_traits>

namespace crownring::random {

template <class Said>
using Of = std::type_identity<Said>;

rc::Gen<Body> any(Of<ItemEntered>, const Names& names);
rc::Gen<Body> any(Of<BalloonEntered>, const Names& names);
rc::Gen<Body> any(Of<ItemFitted>, const Names& names);
rc::Gen<Body> any(Of<ItemRemoved>, const Names& names);
rc::Gen<Body> any(Of<FlightLogged>, const Names& names);
rc::Gen<Body> any(Of<RequirementDone>, const Names& names);
rc::Gen<Body> any(Of<ProgrammeAdopted>, const Names& names);
rc::Gen<Body> any(Of<ReadingTaken>, const Names& names);
rc::Gen<Body> any(Of<EventReported>, const Names& names);
rc::Gen<Body> any(Of<EntryCorrected>, const Names& names);
rc::Gen<Body> any(Of<EntryVoided>, const Names& names);
rc::Gen<Body> any(Of<InspectionOpened>, const Names& names);
rc::Gen<Body> any(Of<LineSettled>, const Names& names);
rc::Gen<Body> any(Of<DefectFound>, const Names& names);
rc::Gen<Body> any(Of<DefectDeferred>, const Names& names);
rc::Gen<Body> any(Of<DefectCleared>, const Names& names);
rc::Gen<Body> any(Of<RepairMade>, const Names& names);
rc::Gen<Body> any(Of<PartReplaced>, const Names& names);
rc::Gen<Body> any(Of<WorkPerformed>, const Names& names);
rc::Gen<Body> any(Of<ReleaseIncomplete>, const Names& names);
rc::Gen<Body> any(Of<BalloonOwned>, const Names& names);
rc::Gen<Body> any(Of<ReviewSigned>, const Names& names);
rc::Gen<Body> any(Of<SignatoryCode>, const Names& names);
/// Or none.
rc::Gen<std::optional<Proof>> anyProof();
rc::Gen<Body> any(Of<TextAdopted>, const Names& names);
rc::Gen<Body> any(Of<TextConfirmed>, const Names& names);
rc::Gen<Body> any(Of<InspectionClosed>, const Names& names);
rc::Gen<Body> any(Of<PersonEntitled>, const Names& names);
rc::Gen<Body> any(Of<TesterCalibrated>, const Names& names);
rc::Gen<Body> any(Of<TypeDescribed>, const Names& names);
rc::Gen<Body> any(Of<LimitStated>, const Names& names);
rc::Gen<Body> any(Of<ChecklistAdopted>, const Names& names);
rc::Gen<Body> any(Of<ReleaseRevoked>, const Names& names);
rc::Gen<Body> any(Of<ReturnApproved>, const Names& names);
rc::Gen<Body> any(Of<FabricStated>, const Names& names);
rc::Gen<Body> any(Of<ItemState>, const Names& names);
rc::Gen<Body> any(Of<BalloonState>, const Names& names);
rc::Gen<Body> any(Of<BalloonRenamed>, const Names& names);
rc::Gen<Body> any(Of<CylinderFilled>, const Names& names);
rc::Gen<Body> any(Of<DirectiveIssued>, const Names& names);
rc::Gen<Body> any(Of<DirectiveAnswered>, const Names& names);
rc::Gen<Body> any(Of<PartsListed>, const Names& names);
rc::Gen<Body> any(Of<UsePlanned>, const Names& names);
rc::Gen<Body> any(Of<FlightPlanned>, const Names& names);
rc::Gen<Body> any(Of<VisitPlanned>, const Names& names);
rc::Gen<Body> any(Of<EventNotified>, const Names& names);

/// Or none.
rc::Gen<std::optional<PartRelease>> anyRelease();

/// Who confirmed what was signed.
rc::Gen<std::vector<ConfirmedText>> anyConfirmed(const Names& names);

/// Which those of a history answer.
DirectiveIssued directiveOfTheCast();
/// What those of a history speak of: an inspection, two defects, a person and a directive.
std::vector<Body> castOfTheBench(const std::vector<ItemId>& items);

}
