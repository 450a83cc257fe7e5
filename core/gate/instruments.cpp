// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/bench_file.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/reading_fault.h"
#include "registry/reading_said.h"

#include <algorithm>

namespace crownring {

namespace {

Result<std::vector<Calibration>> calibrationsOf(Books& books, const TesterId& tester) {
    const auto told = books.told({Subject::Tester, tester.text(), {kindName<TesterCalibrated>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Calibration> calibrations;
    for (const auto& line : *told)
        if (const auto* stated = std::get_if<TesterCalibrated>(&nowOf(line).body))
            calibrations.push_back(
                {stated->tester, stated->what, nowOf(line).on, stated->until, instrumentFrom(*stated)});
    return calibrations;
}

/// Of an instrument that says what it measures. One that says nothing is accepted: so were all, before they could.
std::optional<Problem> unfit(std::span<const Calibration> calibrations, const ReadingTaken& reading, CivilDate on) {
    const auto* instrument = instrumentOn(calibrations, *reading.tester, on);
    const bool says =
        std::ranges::any_of(calibrations, [](const Calibration& each) { return each.instrument.saysWhat(); });
    if (!instrument)
        return says ? std::optional(Problem{
                          ReadingFault::OutOfCalibration, {said(reading), *reading.tester, on}, atKey("tester")})
                    : std::nullopt;
    const auto measured = measuredFrom(reading);
    if (!measured)
        return std::nullopt;
    switch (fitOf(*instrument, *measured)) {
    case InstrumentFit::OtherQuantity:
        return Problem{ReadingFault::MeasuresOther,
                       {said(reading), *reading.tester, whatItMeasures(*instrument)},
                       atKey("tester")};
    case InstrumentFit::BeyondRange:
        return Problem{ReadingFault::BeyondRange, {said(reading), *reading.tester}, atKey("tester")};
    case InstrumentFit::Fits:
    case InstrumentFit::NotSaid:
        break;
    }
    return std::nullopt;
}

}

Findings askInstruments(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ReadingTaken, TesterCalibrated>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        if (const auto* stated = std::get_if<TesterCalibrated>(&(*now)->body)) {
            if (auto problem = misstated(*stated))
                problems.push_back(asAmended(atLine(std::move(*problem), line), entry));
            continue;
        }
        const auto& reading = std::get<ReadingTaken>((*now)->body);
        if (!reading.tester)
            continue;
        const auto calibrations = calibrationsOf(batch.books, *reading.tester);
        if (!calibrations)
            return tl::unexpected(atLine(calibrations.error(), line));
        if (auto problem = unfit(*calibrations, reading, (*now)->on))
            problems.push_back(asAmended(atLine(std::move(*problem), line), entry));
    }
    return problems;
}

}
