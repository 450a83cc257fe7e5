// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/after_reading.h"

#include "screen/bench/bench_rows.h"
#include "words/bench_words.h"
#include "words/border.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

void AfterReading::setReader(ReadingDesk* reader) {
    if (m_reader == reader)
        return;
    m_reader = reader;
    if (m_reader)
        connect(m_reader, &ReadingDesk::changed, this, &AfterReading::follow);
    follow();
}

void AfterReading::follow() {
    auto* desk = m_reader ? m_reader->desk() : nullptr;
    if (m_desk != desk) {
        m_desk = desk;
        if (m_desk)
            connect(m_desk, &InspectionDesk::taken, this, &AfterReading::take);
    }
    if (const auto inspection = m_desk ? m_desk->inspection() : QString(); m_inspection != inspection) {
        m_inspection = inspection;
        m_latest.reset();
        m_onAll = false;
    }
    emit changed();
}

void AfterReading::setSettling(bool settling) {
    m_settling = settling;
    emit changed();
}

namespace {

/// The fuel system is put together and tested once: burner, hoses and cylinders (common practice, no source).
bool isOfAssembledTest(std::string_view quantity) {
    return quantity == "burner-leak-test" || quantity == "hose-leak-test" || quantity == "cylinder-leak-test";
}

bool isOneTest(const AskedFor& one, ItemKind oneKind, const AskedFor& other, ItemKind otherKind) {
    return one.quantity == other.quantity ? oneKind == otherKind
                                          : isOfAssembledTest(one.quantity) && isOfAssembledTest(other.quantity);
}

}

std::vector<AskedFor> AfterReading::othersOf(const AskedFor& of) const {
    const auto* file = m_desk ? m_desk->file().get() : nullptr;
    const auto* item = file ? file->item(of.item) : nullptr;
    if (!item || !m_desk->isOpen())
        return {};
    std::vector<AskedFor> others;
    for (const auto& [asked, count] : askedSeries(*file))
        if (const auto* other = file->item(asked.item); other && asked.item != of.item &&
                                                        isOneTest(of, item->kind, asked, other->kind) &&
                                                        count.taken < count.wanted)
            others.push_back(asked);
    return others;
}

std::vector<ReadingTaken> AfterReading::passingOnOthers(const ReadingTaken& reading) const {
    std::vector<ReadingTaken> passing;
    for (const auto& other : othersOf({reading.item, reading.line, reading.quantity})) {
        auto same = reading;
        same.item = other.item;
        same.line = other.line;
        same.quantity = other.quantity;
        if (const auto* gauge = same.tester ? m_desk->file()->instrument(*same.tester, m_desk->file()->on) : nullptr;
            gauge && !gauge->mayMeasure(same.quantity))
            same.tester.reset();
        if (stateOf(*m_desk->file(), same).judgement == Judgement::Passes)
            passing.push_back(std::move(same));
    }
    return passing;
}

std::vector<ReadingTaken> AfterReading::heldOnOthers() const {
    const auto held = m_reader && !m_reader->placed() ? m_reader->heldInHand() : std::nullopt;
    return held ? passingOnOthers(*held) : std::vector<ReadingTaken>{};
}

int AfterReading::alike() const {
    const auto others = static_cast<int>(heldOnOthers().size());
    return others == 0 ? 0 : others + 1;
}

QString AfterReading::alikeItems() const {
    const auto others = heldOnOthers();
    if (others.empty())
        return {};
    QStringList items{inward(m_reader->reads().item.text())};
    for (const auto& other : others)
        items += inward(other.item.text());
    return items.join(QStringLiteral(", "));
}

int AfterReading::others() const { return m_latest ? static_cast<int>(passingOnOthers(*m_latest).size()) : 0; }

QString AfterReading::latest() const { return m_latest ? BenchWords::value(*m_latest) : QString(); }

void AfterReading::takeOnAll() { m_onAll = true; }

void AfterReading::takeOnOthers() {
    if (!m_latest)
        return;
    std::vector<Body> bodies;
    for (auto& same : passingOnOthers(*m_latest))
        bodies.emplace_back(std::move(same));
    m_latest.reset();
    if (bodies.empty())
        return emit changed();
    m_desk->post(std::move(bodies));
    emit changed();
    emit tookOnOthers();
}

void AfterReading::take(const ReadingTaken& reading) {
    settle(reading);
    const auto* file = m_desk->file().get();
    const bool passes = file && stateOf(*file, reading).judgement == Judgement::Passes;
    // At a place of the envelope each reading is of its own.
    m_latest = passes && !reading.place.gore ? std::optional(reading) : std::nullopt;
    if (std::exchange(m_onAll, false))
        return takeOnOthers();
    emit changed();
}

namespace {

/// A test, or a figure that is read whatever the manual states: nothing else is looked at there.
bool isAllThatItAsks(const ChecklistLine& line) {
    return line.isTest() || std::ranges::any_of(line.readings, &AskedReading::required);
}

}

void AfterReading::settle(const ReadingTaken& reading) {
    if (!m_settling || !m_desk->isOpen())
        return;
    std::vector<Body> bodies;
    const auto& file = *m_desk->file();
    for (const auto& work : workLines(file.inspection, file.items)) {
        const bool asks = work.line && work.item && work.item->id == reading.item && !work.line->ownLook &&
                          work.line->required && work.state() == LineState::Open && isAllThatItAsks(*work.line) &&
                          std::ranges::find(work.line->readings, reading.quantity, &AskedReading::quantity) !=
                              work.line->readings.end();
        if (!asks || (work.settled && !work.settled->body.finding.empty()) || !isAnswered(file, work))
            continue;
        LineSettled line;
        if (work.settled)
            line = work.settled->body;
        line.inspection = file.inspection.id;
        line.line = work.line->id;
        line.item = work.item->id;
        line.state = LineState::Done;
        line.why.reset();
        line.page.clear();
        bodies.emplace_back(std::move(line));
    }
    m_desk->post(std::move(bodies));
}

}
