// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// All that an inspection is judged by, as plain values: what was said on the bench, the facts of its items, who is
/// entitled to what, which tester is in calibration, and what the types' manuals state.

#include "bench/checklist/inspection.h"
#include "bench/reading/instrument.h"
#include "bench/reading/verdict.h"
#include "bench/release/entitlement.h"
#include "bench/wording/wording.h"
#include "record/journal.h"
#include "rules/standing/standing.h"

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

struct Calibration {
    TesterId tester;
    std::string what;
    CivilDate from;
    CivilDate until; ///< the last good day
    Instrument instrument;

    [[nodiscard]] bool covers(CivilDate day) const { return from <= day && day <= until; }
};

/// @param calibrations by stamp
[[nodiscard]] const Instrument* instrumentOn(std::span<const Calibration> calibrations, const TesterId& tester,
                                             CivilDate day);

/// What stands mandatory and lapsed, spent or unproven on what is inspected, and bars flight.
struct Excepted {
    ItemId item;
    RequirementId requirement;
    Argument title = "";
    Argument source = "";
    Standing standing = Standing::Lapsed;
    bool operator==(const Excepted&) const = default;
};

/// A mandatory directive in force that binds an item that is inspected, or may bind it, and is not answered or due
/// again.
struct OpenDirective {
    ItemId item;
    DirectiveId directive;
    std::string revision;
    std::string title;
    Standing standing = Standing::Lapsed;
    bool isUnknown = false; ///< whether it binds the item
    bool against = false;   ///< it bars flight: overdue, due before the next flight, or nobody knows
    bool operator==(const OpenDirective&) const = default;
};

struct Graded {
    PersonId by;
    std::string why;
    bool operator==(const Graded&) const = default;
};

/// What goes with an inspection of the work and is due with it.
struct GoesWith {
    Work work;
    Argument title = "";
    Argument source = "";
};

/// Something that was reported of items of the visit, and what of its work that made due.
struct VisitEvent {
    Occurrence event;
    std::vector<Work> madeDue;
};

struct BenchFile {
    CivilDate on; ///< the day asked
    Inspection inspection;
    std::vector<ItemFacts> items; ///< of what is inspected, at the end of that day, in the order of the opening
    std::string balloonTitle;
    std::string owner; ///< of the balloon, on that day
    std::string operatedBy;
    std::vector<std::string> operations; ///< of the balloon
    std::vector<Entitlement> entitlements;
    WordingBook wordings; ///< up to that day
    std::vector<Calibration> calibrations;
    std::vector<StatedLimit> limits; ///< of all types; the latest of each sort
    std::vector<TypeDescribed> types;
    std::map<RequirementId, Argument> titles; ///< of what its work asks, as adopted on that day
    std::vector<Work> tests;                  ///< of its work the tests of fabric (`isTestOfFabric`)
    std::vector<Work> owed;                   ///< on its items, what such a visit accomplishes
    std::vector<VisitEvent> events;           ///< that it answers, in the order of their stamps
    std::vector<GoesWith> goesWith;           ///< mandatory, by what was done before its day
    std::vector<Excepted> excepted; ///< once all that it accomplishes is done, in the order of the due list; once it
                                    ///< is closed, as it was signed
    /// In the order of the items and of their issue; what was answered in this visit is not among them.
    std::vector<OpenDirective> directives;
    std::vector<Work> answered; ///< of the list that it was closed with, by the day asked; defects by their rows' names
    /// Digests, of the defects that are open on the items or were found here and have any.
    std::map<DefectId, std::vector<std::string>> photographs;
    /// What the deferrals of defects that are open on the items say, whichever visit deferred them.
    std::map<DefectId, Said<DefectDeferred>> deferrals;
    /// The readings by which defects that are open on the items were found, whichever visit took them; while this one
    /// is open.
    std::map<DefectId, ReadingTaken> foundBy;
    /// What was written down as found in this visit and does not stand, with who took it out and why: all that was not
    /// taken back by who had found it, before anything was signed.
    std::vector<TakenOut> takenOut;
    /// Who decided that a defect that is open on the items is less than it was found to be, and why.
    std::map<DefectId, Graded> graded;
    /// As a release after incomplete maintenance found it, on its day; null where there was none.
    std::shared_ptr<const BenchFile> atIncomplete;
    std::vector<Problem> unsupported; ///< what would refuse the release that was signed, by what the record says now

    [[nodiscard]] Visit visit() const;
    /// What is signed releases something: work on what is on no balloon does so where it came as a component.
    [[nodiscard]] bool releases() const { return inspection.opened.body.balloon || isOfComponents(visit()); }
    [[nodiscard]] const ItemFacts* item(const ItemId& id) const;
    /// The envelope that is inspected; null where there is none.
    [[nodiscard]] const ItemFacts* envelope() const;
    [[nodiscard]] const TypeDescribed* type(const ItemFacts& item) const;
    /// What the type's manual states for an item.
    [[nodiscard]] std::vector<StatedLimit> limitsOf(const ItemFacts& item) const;
    [[nodiscard]] bool isCalibrated(const TesterId& tester, CivilDate day) const;
    /// By the latest calibration of that day that says what it measures, else the latest; null where none covers it.
    [[nodiscard]] const Instrument* instrument(const TesterId& tester, CivilDate day) const;
};

/// What is said of a requirement of the work: its title, or its id where no programme in force has it.
[[nodiscard]] Argument titleOf(const BenchFile& file, const RequirementId& requirement);
/// The visit; of one that carries out other work the titles of that.
[[nodiscard]] Argument titleOfVisit(const BenchFile& file);

/// How one reading stands, for lists, maps and papers.
struct ReadingState {
    std::optional<Measured> measured; ///< absent: nothing that the bench knows
    Judgement judgement = Judgement::NoLimit;
    std::optional<Phrase> reason;
    std::optional<double> share;      ///< 1 at the limit, more is better
    std::optional<Phrase> limit;      ///< "at least 133.4 N"; nothing where there is none
    const Unit* unit = nullptr;       ///< that the manual states that limit in
    std::string source;               ///< of that limit
    Retired retires = Retired::Panel; ///< what a reading beyond it retires
};
[[nodiscard]] ReadingState stateOf(const BenchFile& file, const ReadingTaken& reading);
/// Held against the limits of its item's type and kind.
[[nodiscard]] ReadingState stateOf(const ReadingTaken& reading, std::span<const StatedLimit> limits);

/// A reading as papers say it: in the unit of the manual's limit that it is held against, whatever it was read in.
[[nodiscard]] ReadingTaken asTheManualStates(const BenchFile& file, const ReadingTaken& reading);

/// What was found, or which reading failed what limit.
[[nodiscard]] Argument whatOf(const BenchFile& file, const DefectFound& found);
/// What was found, or that a reading failed.
[[nodiscard]] Argument whatOf(const BenchFile& file, const DefectMark& found);

/// Of the same series at the same place of one item; where a quantity is read at places, an unstated one is no place.
[[nodiscard]] bool takesThePlaceOf(const ReadingTaken& later, const ReadingTaken& earlier);

/// Among readings of one quantity at one place of one item the latest speaks: a panel that failed was repaired and
/// pulled again. @return those that speak, by stamp
[[nodiscard]] std::vector<const Said<ReadingTaken>*> speakingReadings(const Inspection& inspection);

/// How many readings one limit of the type's manual asks for, at different places, and how many serve it: of its own
/// test and, where it names one, in its own direction. At least one.
struct LimitCount {
    const StatedLimit* limit = nullptr; ///< null: the line itself asks, and nothing is stated
    int taken = 0;
    int wanted = 0;
    [[nodiscard]] bool enough() const { return taken >= wanted; }
};
/// Each limit for itself: pulls along the warp do not serve the weft. @return in the order of `BenchFile::limits`;
/// where none is stated, what the line asks. The pointers are into `file`
[[nodiscard]] std::vector<LimitCount> limitCounts(const BenchFile& file, const ItemFacts& item,
                                                  const AskedReading& asked);

/// All of them together. Readings beyond what one limit asks do not serve another.
struct ReadingCount {
    int taken = 0;
    int wanted = 0;
    std::string source; ///< of the limit that asks for most; empty where the line itself asks
    [[nodiscard]] bool enough() const { return taken >= wanted; }
};
[[nodiscard]] ReadingCount readingCount(const BenchFile& file, const ItemFacts& item, const AskedReading& asked);

/// Of what is asked at least one was read, at all places and judged against each limit that is stated for it.
[[nodiscard]] bool isRead(const BenchFile& file, const ItemFacts& item, std::span<const AskedReading> asked);

/// "at least 127, below 132 °C": the tell-tale of the inspection; nothing when none was read.
[[nodiscard]] std::optional<Argument> highestTemperature(const BenchFile& file);

}
