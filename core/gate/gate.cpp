// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/gate.h"

#include "gate/checks.h"

#include <array>
#include <iterator>

namespace crownring {

std::span<const Check> allChecks() {
    static constexpr std::array checks{
        Check{"what is signed leans on a record that can be read", askUnreadEntries},
        Check{"a programme is adopted with a document that can be read", askAdoptions},
        Check{"what is signed by is adopted, and confirmed by who may sign it", askWordings},
        Check{"a registration has the aircraft rules of one state", askRegimes},
        Check{"an inspection is opened with a visit and a checklist that can be read", askOpenings},
        Check{"a line that is settled is on the checklist", askSettledLines},
        Check{"nothing is added to an inspection that is closed", askClosedInspections},
        Check{"a release is supported by the record", askClosings},
        Check{"an inspection is accomplished by the lines of a checklist in force", askChecklists},
        Check{"a check flight that is done was flown", askCheckFlights},
        Check{"a release after incomplete maintenance says what is outstanding", askIncompleteReleases},
        Check{"a return to service is approved when the list is answered, by who may", askReturns},
        Check{"what an inspection accomplished is written with its signature", askAccomplishments},
        Check{"an airworthiness review is signed by who may, and expires as the rule gives", askReviews},
        Check{"a defect has a name of its own", askFindings},
        Check{"a defect is deferred and cleared on the item that it was found on", askDefectItems},
        Check{"a defect is deferred by who may", askDeferrals},
        Check{"a defect is called less than it was found by who may decide that", askGradings},
        Check{"what bars flight is put right by who may release that", askWhoClears},
        Check{"a defect is not cleared before it was found", askClearings},
        Check{"what a reading found is read again before it is rectified", askRereadings},
        Check{"what is put right of a reading is put right in its place", askRepairs},
        Check{"a test on a list of discrepancies is answered by its readings", askListedTests},
        Check{"a reading that failed is taken back by who may decide that", askReadingAmendments},
        Check{"a reading that failed is not judged anew but by who may decide that", askJudgedAnew},
        Check{"what grounds rests on is taken back by who may decide that", askGroundAmendments},
        Check{"what happened is not taken from an item but by who may decide that", askFallenEvents},
        Check{"what was overheated is not said to be another but by who may decide that", askHeatSaid},
        Check{"a registration that a balloon takes carries no other balloon", askRenamings},
        Check{"what is fitted is no part of itself, and not kept apart", askFittings},
        Check{"what was kept apart comes back with a release, what is condemned never", askItemStates},
        Check{"a cylinder is filled while its test is good", askFillings},
        Check{"what is named for the first time can be told apart by eye", askNewNames},
        Check{"people can be told apart by eye", askPersonNames},
        Check{"an event is written as it is known", askEvents},
        Check{"what was reported outside is an event of the record", askNotifiedEvents},
        Check{"a type is not written in two ways unasked", askTypeNames},
        Check{"a reading is in a unit of its quantity", askReadings},
        Check{"a reading is taken with an instrument for it", askInstruments},
        Check{"what is withdrawn is a release", askRevocations},
        Check{"who has a code of his own signs with it", askProofs},
        Check{"a code is replaced by who has it, or by another who says why", askSignatoryCodes},
        Check{"a directive is answered by who may, and by nothing else", askDirectives},
        Check{"what was answered to a directive is changed by who may answer it", askAmendedAnswers},
        Check{"an item is not said to be another so that a directive lets go of it", askLetGo},
        Check{"what was signed is not corrected into something else", askSignedWords},
    };
    return checks;
}

std::vector<Problem> refusalsOf(const Batch& batch, std::span<const Check> checks) {
    std::vector<Problem> refused;
    for (const auto& check : checks) {
        auto found = check.ask(batch);
        if (found)
            std::ranges::move(*found, std::back_inserter(refused));
        else
            refused.push_back(std::move(found.error()));
    }
    return refused;
}

}
