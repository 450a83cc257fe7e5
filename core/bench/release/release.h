// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// May this inspection be closed so, by this person, on this day? Pure: what it judges by is in the file. A release is
/// refused while anything that is required is missing, and each refusal says what would answer it and which rule asks.

#include "bench/release/bench_file.h"
#include "bench/release/release_text.h"
#include "problem/faults/release_fault.h"

#include <string>
#include <vector>

namespace crownring {

struct Signing {
    Outcome outcome = Outcome::Released;
    PersonId person;
    Capacity capacity = Capacity::IndependentCertifyingStaff;
    std::vector<std::string> manuals; ///< data used, with revision
    std::string limitations;
    CivilDate on;
    std::vector<std::string> outstanding{}; ///< with `Incomplete`: lines that are to be done besides the required ones
    FlownWithin within{};                   ///< with `Incomplete`
};

/// As it was signed. @pre somebody signed it
[[nodiscard]] Signing signingOf(const Said<InspectionClosed>& closed);

struct Refusal {
    enum class Kind {
        Closed,    ///< it is closed already
        LineOpen,  ///< a required line is neither done nor put down as not applicable
        NoReading, ///< a reading that is asked for is missing, or there are too few
        Fails,     ///< a reading fails and no cleared or open defect answers for it
        Undecided, ///< a reading decides nothing: a bound below the limit, another test, no limit known
        Doubtful,  ///< a reading that looks impossible and that nobody stands by
        Tester,    ///< taken without a tester, or with one out of calibration that day
        Defect,    ///< an open defect bars flight
        NoDefect,  ///< a list of discrepancies without a discrepancy
        Signatory, ///< the person is not entitled to this act on that day
        Content,   ///< the rule asks for something that was not given
        Order,     ///< dated before what it covers
        Excepted,  ///< what is lapsed, spent or unproven beside the work, where airworthiness is stated
        Scope,     ///< what is certified was not there, or was not inspected as the words would say
        Wording,   ///< nobody has confirmed what would be signed
    };
    Kind kind = Kind::LineOpen;
    ReleaseFault fault{};
    Arguments arguments{};
    std::string rule{};             ///< document and clause
    std::string line{};             ///< of the checklist, where it is about one
    std::optional<ItemId> item{};   ///< where it is about one
    std::optional<EntryId> entry{}; ///< the reading or the work that it is about, where it is about one
    bool operator==(const Refusal&) const = default;
};
[[nodiscard]] std::string_view refusalName(Refusal::Kind kind);
[[nodiscard]] Problem problemOf(const Refusal& refusal);

/// What stands in the way; empty when it may be closed so.
[[nodiscard]] std::vector<Refusal> refusals(const BenchFile& file, const Signing& signing);

/// It says that something may fly: a release, or one after incomplete maintenance.
[[nodiscard]] constexpr bool isRelease(Outcome outcome) {
    return outcome == Outcome::Released || outcome == Outcome::Incomplete;
}

/// The lines that are still to be done: the required ones, what an earlier release left outstanding, and `further` ones
/// that are open.
[[nodiscard]] std::vector<Outstanding> outstandingLines(const BenchFile& file,
                                                        std::span<const std::string> further = {});

/// A requirement that is not covered, as the paper names it.
[[nodiscard]] Argument exceptedText(const Excepted& each);
/// The same of all: what stands alike on several items is said once.
[[nodiscard]] std::vector<Argument> exceptedTexts(const std::vector<Excepted>& all);

/// Of what came to the visit that on which something was done; where nothing was yet, or maintenance stays incomplete,
/// that which is to be worked on.
[[nodiscard]] std::vector<ItemFacts> certifiedItems(const BenchFile& file, Outcome outcome);

/// What the release is composed of.
[[nodiscard]] ReleaseFacts releaseFacts(const BenchFile& file, const Signing& signing);
/// On whose behalf, and under which annex.
void setSigner(ReleaseFacts& facts, const Entitlement& held);

}
