// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/verdict.h"

#include "problem/faults/store_fault.h"
#include "record/verdict_phrase.h"
#include "store/schema/schema_flaw.h"
#include "store/verify/pages.h"
#include "store/verify/projections.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

void doubt(Verdict& verdict, Phrase reason) {
    verdict.intact = false;
    verdict.reason = std::move(reason);
}

/// @param table what `ask` proves, which can be made anew
void verifyTable(const char* table, Verdict& verdict, const std::function<void()>& ask) {
    try {
        ask();
    } catch (const StoreError& error) {
        if (!isDamage(error.problem().fault))
            throw;
        doubt(verdict, {VerdictPhrase::Unreadable, {messageOf(error.problem())}});
        verdict.projection = table;
        verdict.rebuildMends = true;
    }
}

/// What stands on a journal whose chain holds.
void verifyAround(const Connection& connection, JournalTable& journal, Tallies& tallies, Verdict& verdict,
                  const std::function<bool(double)>& progress) {
    if (const auto part = schemaFlaw(connection))
        return doubt(verdict, {VerdictPhrase::SchemaDiffers, {*part}});
    if (const auto step = stepFlaw(connection))
        return doubt(verdict, {VerdictPhrase::StepDiffers, {*step}});
    if (const auto digest = pictureFlaw(connection))
        return doubt(verdict, {VerdictPhrase::PhotographDiffers, {*digest}});
    if (!tallies.picturesAreWhole())
        return doubt(verdict, {VerdictPhrase::PhotographsOther, {}});
    verifyTable("name", verdict, [&] { tallies.proveNames(); });
    if (!verdict.intact)
        return;
    const auto flaw = projectionFlaw(connection, journal, progress);
    if (!flaw)
        return verifyTable("tally", verdict, [&] { tallies.checkAll(); }); // by which answers tell at once
    doubt(verdict,
          {flaw->lacking ? VerdictPhrase::TableLacks : VerdictPhrase::TableHoldsMore, {flaw->table, flaw->row}});
    verdict.projection = flaw->table;
    verdict.rebuildMends = true;
    if (!flaw->entry.empty())
        verdict.behind = flaw->entry;
}

/// Else nothing can be said of it: who asked may not, or the server or the disk does not answer.
bool saysOfTheRecord(const StoreError& error) {
    constexpr std::array ofTheWay{StoreFault::RightsMissing, StoreFault::Lost,       StoreFault::NotOpened,
                                  StoreFault::DiskFull,      StoreFault::DiskFailed, StoreFault::SettingNotTaken};
    return error.code() != Code::StoreBusy &&
           std::ranges::none_of(ofTheWay, [&](StoreFault fault) { return error.is(fault); });
}

}

Verdict verdictOf(const Connection& connection, JournalTable& journal, Tallies& tallies,
                  const std::function<bool(double)>& progress) {
    Verdict verdict;
    const auto part = [&](double from, double to) -> std::function<bool(double)> {
        if (!progress)
            return {};
        return [&progress, from, to](double done) { return progress(from + (to - from) * done); };
    };
    try {
        if (const auto pages = pageFlaw(connection)) {
            doubt(verdict, *pages);
            return verdict;
        }
        verdict = journal.verify(part(0, 0.5));
        if (verdict.intact && !verdict.reason)
            verifyAround(connection, journal, tallies, verdict, part(0.5, 1));
        return verdict;
    } catch (const StoreError& error) {
        if (!saysOfTheRecord(error))
            throw;
        // What cannot be read is not what was written.
        doubt(verdict, {VerdictPhrase::Unreadable, {messageOf(error.problem())}});
        return verdict;
    }
}

}
