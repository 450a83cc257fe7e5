// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/reading_refusals.h"

#include "bench/reading/doubt.h"
#include "registry/reading_phrase.h"
#include "registry/reading_said.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* europeanTools = "ML.A.402(b)(4)";
constexpr const char* judgedRule = "ML.A.801(a); 14 CFR 43.15(c)(1) (from memory)";

Argument readItem(const ReadingTaken& reading) { return Phrase{ReadingPhrase::OfItem, {said(reading), reading.item}}; }

/// One reading after the other.
class ReadingsAsked {
public:
    explicit ReadingsAsked(const BenchFile& file) : m_file(file) {}

    std::vector<Refusal> ask() && {
        for (const auto* reading : speakingReadings(m_file.inspection)) {
            m_reading = reading->id;
            askTester(*reading);
            askPlace(reading->body);
            askReading(*reading);
        }
        return std::move(m_refusals);
    }

private:
    void refuse(Refusal refusal) {
        refusal.entry = m_reading;
        m_refusals.push_back(std::move(refusal));
    }

    /// Whatever is read with an instrument of which the record knows the calibration.
    void askTester(const Said<ReadingTaken>& reading) {
        const auto& body = reading.body;
        const auto* quantity = quantityNamed(body.quantity);
        const bool isKnown = body.tester && std::ranges::any_of(m_file.calibrations, [&](const Calibration& each) {
                                 return each.tester == *body.tester;
                             });
        if (!isKnown && !(quantity && quantity->traits.tester))
            return;
        if (auto refusal =
                refusalOfTester(m_file, body.tester, reading.stamp.at.on(), readItem(body), {body.line, body.item}))
            refuse(std::move(*refusal));
        askInstrument(reading);
    }

    /// By what its calibration states; where it states nothing, nobody can tell, and papers say so.
    void askInstrument(const Said<ReadingTaken>& reading) {
        const auto& body = reading.body;
        const auto* instrument = body.tester ? m_file.instrument(*body.tester, reading.stamp.at.on()) : nullptr;
        const auto measured = measuredFrom(body);
        if (!instrument || !measured)
            return;
        const auto fit = fitOf(*instrument, *measured);
        const auto refuseAs = [&](ReleaseFault fault, Arguments arguments) {
            refuse({Refusal::Kind::Tester, fault, std::move(arguments), europeanTools, body.line, body.item});
        };
        if (fit == InstrumentFit::OtherQuantity)
            refuseAs(ReleaseFault::TesterMeasuresOther, {readItem(body), *body.tester, whatItMeasures(*instrument)});
        else if (fit == InstrumentFit::BeyondRange)
            refuseAs(ReleaseFault::TesterBeyondRange, {readItem(body), *body.tester});
    }

    /// Of a type whose gores and rows are described.
    void askPlace(const ReadingTaken& body) {
        const auto* item = m_file.item(body.item);
        const auto* type = item ? m_file.type(*item) : nullptr;
        if (!type)
            return;
        const auto beyond = [](const auto& at, const std::optional<int>& of) { return at && of && *at > *of; };
        if (beyond(body.place.gore, type->gores) ||
            (body.place.zone == Zone::Envelope && beyond(body.place.row, type->rows)))
            refuse({Refusal::Kind::NoReading,
                    ReleaseFault::NoSuchPlace,
                    {readItem(body), type->type},
                    type->manual,
                    body.line,
                    body.item});
    }

    void askReading(const Said<ReadingTaken>& reading) {
        const auto& body = reading.body;
        const auto state = stateOf(m_file, body);
        const auto read = readItem(body);
        if (state.measured && !body.confirmed)
            if (const auto* unit = unitNamed(body.unit, quantityNamed(body.quantity)->dimension))
                if (const auto question = doubt(*state.measured, *unit))
                    refuse({Refusal::Kind::Doubtful,
                            ReleaseFault::Doubtful,
                            {read, question->question},
                            {},
                            body.line,
                            body.item});
        if (state.measured && !body.confirmed)
            if (const auto* unit = unitNamed(body.unit, quantityNamed(body.quantity)->dimension))
                if (const auto far = farFromStated(*state.measured, *unit, limitsFor(body.item)))
                    refuse({Refusal::Kind::Doubtful, ReleaseFault::Doubtful, {read, *far}, {}, body.line, body.item});
        if (state.measured && !body.confirmed)
            if (const auto question = heldTooShort(body, *state.measured, limitsFor(body.item)))
                refuse({Refusal::Kind::Doubtful, ReleaseFault::Doubtful, {read, *question}, {}, body.line, body.item});
        if (state.judgement == Judgement::Fails && !isAnswered(reading))
            refuse(
                {Refusal::Kind::Fails, ReleaseFault::Fails, {read, *state.reason}, judgedRule, body.line, body.item});
        const bool nothing = state.judgement == Judgement::Undecided || state.judgement == Judgement::Incomparable ||
                             (state.judgement == Judgement::NoLimit && isAskedFor(body));
        if (nothing && !isDecidedBeside(reading))
            refuse({Refusal::Kind::Undecided,
                    state.judgement == Judgement::NoLimit ? ReleaseFault::NoLimitStated : ReleaseFault::DecidesNothing,
                    {read, *state.reason},
                    judgedRule,
                    body.line,
                    body.item});
    }

    [[nodiscard]] std::vector<StatedLimit> limitsFor(const ItemId& id) const {
        const auto* item = m_file.item(id);
        return item ? m_file.limitsOf(*item) : std::vector<StatedLimit>{};
    }

    /// Another reading of the quantity in the same place, by the test that the limit is stated for, decides.
    [[nodiscard]] bool isDecidedBeside(const Said<ReadingTaken>& reading) const {
        const auto& body = reading.body;
        return std::ranges::any_of(speakingReadings(m_file.inspection), [&](const auto* other) {
            const auto judgement = stateOf(m_file, other->body).judgement;
            return other->body.item == body.item && other->body.quantity == body.quantity && body.place.gore &&
                   other->body.place == body.place && other->body.conditions.direction == body.conditions.direction &&
                   (judgement == Judgement::Passes || judgement == Judgement::Fails);
        });
    }

    [[nodiscard]] bool isAskedFor(const ReadingTaken& body) const {
        return std::ranges::any_of(m_file.inspection.checklist.lines, [&](const ChecklistLine& line) {
            return std::ranges::any_of(line.readings, [&](const AskedReading& asked) {
                return asked.quantity == body.quantity && asked.required;
            });
        });
    }

    /// A defect was written down for it: cleared since, or refused as one that grounds.
    [[nodiscard]] bool isAnswered(const Said<ReadingTaken>& reading) const {
        return std::ranges::any_of(m_file.inspection.found, [&](const auto& found) {
            return found.body.reading == reading.id && found.body.item == reading.body.item;
        });
    }

    const BenchFile& m_file;
    EntryId m_reading; ///< that is asked about
    std::vector<Refusal> m_refusals;
};

}

std::optional<Refusal> refusalOfTester(const BenchFile& file, const std::optional<TesterId>& tester, CivilDate day,
                                       const Argument& what, const RefusedAt& at) {
    if (!tester)
        return Refusal{Refusal::Kind::Tester, ReleaseFault::NoTester, {what}, europeanTools, at.line, at.item};
    if (!file.isCalibrated(*tester, day))
        return Refusal{Refusal::Kind::Tester,
                       ReleaseFault::TesterNotCalibrated,
                       {what, *tester, day},
                       europeanTools,
                       at.line,
                       at.item};
    return std::nullopt;
}

std::vector<Refusal> refusalsOfReadings(const BenchFile& file) { return ReadingsAsked(file).ask(); }

}
