// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/reading_desk.h"

#include "measure/decimal_text.h"
#include "screen/bench/reading_rows.h"
#include "words/bench_sentences.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QRegularExpression>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

std::optional<double> figureFrom(const QString& text) { return parseDecimal(outward(text)); }

template <class AmountOf>
std::optional<AmountOf> amountFrom(const QString& text) {
    const auto figure = figureFrom(text);
    return figure ? std::optional(AmountOf(*figure)) : std::nullopt;
}

}

ReadingDesk::ReadingDesk(QObject* parent) : QObject(parent) {}

void ReadingDesk::setDesk(InspectionDesk* desk) {
    if (m_desk == desk)
        return;
    if (m_desk)
        disconnect(m_desk, nullptr, this, nullptr);
    m_desk = desk;
    if (m_desk) {
        connect(m_desk, &InspectionDesk::changed, this, &ReadingDesk::showAll);
        connect(m_desk, &InspectionDesk::inspectorChanged, this, &ReadingDesk::changed);
    }
    showAll();
}

int ReadingDesk::current() const {
    const auto* asked = among(m_asked, m_reads);
    return asked ? static_cast<int>(asked - m_asked.data()) : -1;
}

ReadingCount ReadingDesk::count() const {
    const auto* asked = among(m_asked, m_reads);
    return asked ? asked->count : ReadingCount{};
}

const Quantity* ReadingDesk::quantity() const { return quantityNamed(m_reads.quantity); }

const ItemFacts* ReadingDesk::item() const {
    return m_desk && m_desk->file() ? m_desk->file()->item(m_reads.item) : nullptr;
}

std::vector<StatedLimit> ReadingDesk::limits() const {
    const auto* of = item();
    auto limits = of ? m_desk->file()->limitsOf(*of) : std::vector<StatedLimit>{};
    std::erase_if(limits, [wanted = m_reads.quantity](const auto& limit) { return limit.quantity != wanted; });
    return limits;
}

void ReadingDesk::setCurrent(int at) {
    if (at >= 0 && at < static_cast<int>(m_asked.size()))
        read(AskedFor(m_asked[static_cast<std::size_t>(at)].of));
}

void ReadingDesk::readFor(const QString& item, const QString& line) {
    const auto asked = std::ranges::find_if(m_asked, [&](const AskedSeries& series) {
        return series.of.item == ItemId(outward(item)) && series.of.line == outward(line);
    });
    if (asked != m_asked.end())
        read(AskedFor(asked->of));
}

void ReadingDesk::read(const AskedFor& of) {
    if (m_reads == of)
        return;
    m_reads = of;
    letGo();
    m_problem.clear();
    m_gore = m_row = 0;
    m_justTaken.clear();
    m_goesOn = false;
    chooseDefaults();
    showAll();
}

QString ReadingDesk::title() const {
    return m_reads == AskedFor{}
               ? QString()
               : joined({BenchWords::quantity(m_reads.quantity), inward(m_reads.item.text())}, QStringLiteral(" · "));
}

QString ReadingDesk::limit() const {
    const auto found = limits();
    if (m_reads == AskedFor{})
        return {};
    if (found.empty())
        return tr(
            "The record holds no limit for this type. Enter what its manual states: kind of entry 'limit of a type'.");
    return limitsText(found);
}

QString ReadingDesk::terms() const {
    if (!m_desk || m_reads == AskedFor{})
        return {};
    QStringList terms{m_desk->inspector().trimmed().isEmpty() ? tr("by nobody yet")
                                                              : tr("by %1").arg(m_desk->inspector())};
    if (asksTester())
        terms += m_tester.isEmpty()         ? tr("no test equipment is chosen")
                 : testerRemark().isEmpty() ? m_tester
                                            : tr("%1 (what it measures is not said)").arg(m_tester);
    if (inZone())
        terms += words::said(Term{Term::Of::Zone, outward(m_zone)});
    if (held())
        terms += m_proof.isEmpty() ? tr("no proof load") : tr("held at %1 %2").arg(m_proof, m_unit);
    if (asksJaw())
        terms += m_jaw.isEmpty() ? tr("no width of the jaws") : tr("jaws %1 mm").arg(m_jaw);
    if (asksAirflow())
        terms += tr("%1 Pa on %2 cm²")
                     .arg(m_pressure.isEmpty() ? QStringLiteral("–") : m_pressure,
                          m_area.isEmpty() ? QStringLiteral("–") : m_area);
    return joined(terms, QStringLiteral(" · "));
}

QString ReadingDesk::progress() const { return item() ? progressText(count()) : QString(); }

bool ReadingDesk::placed() const { return quantity() && quantity()->traits.placed && !inZone(); }
bool ReadingDesk::canHold() const { return quantity() && quantity()->traits.held; }
bool ReadingDesk::stepped() const { return quantity() && quantity()->traits.stepped; }
bool ReadingDesk::asksDirection() const { return quantity() && quantity()->traits.direction; }
bool ReadingDesk::asksTester() const { return quantity() && (quantity()->traits.tester || quantity()->traits.gauge); }
bool ReadingDesk::needsTester() const { return quantity() && quantity()->traits.tester; }
bool ReadingDesk::asksAirflow() const { return quantity() && quantity()->traits.airflow; }
bool ReadingDesk::asksJaw() const { return quantity() && quantity()->traits.jaw; }

void ReadingDesk::showAll() {
    showSeries();
    goOn();
    forgetWritten();
    aim();
    showTesters();
    const bool here = m_desk && m_desk->file() && quantity();
    showPanels();
    m_taken.show(here ? takenRows(*m_desk->file(), m_reads.item, m_reads.quantity) : std::vector<Choice>{});
    emit changed();
}

void ReadingDesk::showSeries() {
    m_asked = m_desk && m_desk->file() ? askedSeries(*m_desk->file()) : std::vector<AskedSeries>{};
    if (!among(m_asked, m_reads)) {
        const auto first = m_asked.empty() ? AskedFor{} : m_asked.front().of;
        if (m_reads != first) {
            m_reads = first;
            chooseDefaults();
        }
    }
    m_series.show(seriesRows(m_asked, m_reads));
}

/// When a series has as many readings as are asked for, the next one that wants some comes by itself.
void ReadingDesk::goOn() {
    if (!m_goesOn || m_asked.empty())
        return;
    m_goesOn = false;
    const auto* next = nextSeries(m_asked, m_reads);
    if (!next || next->of == m_reads)
        return;
    m_reads = next->of;
    m_justTaken.clear();
    m_gore = m_row = 0;
    chooseDefaults();
    m_series.show(seriesRows(m_asked, m_reads));
}

void ReadingDesk::hold() {
    if (const auto missing = placeMissing(); !missing.isEmpty()) {
        m_problem = missing;
        emit changed();
        return;
    }
    const auto proof = figureFrom(m_proof);
    if (!proof) {
        m_problem = tr("Give the proof load that is held.");
        emit changed();
        return;
    }
    take(*proof, true, {});
}

void ReadingDesk::tap(int gore, int row) {
    m_gore = gore;
    m_row = row;
    m_problem.clear();
    if (!held()) {
        emit changed();
        return;
    }
    hold();
}

namespace {

/// "110-116", "110 116": the two figures of one text; empty where it holds another number of them.
QStringList twoFigures(const QString& text) {
    static const QRegularExpression pair(QStringLiteral("^\\s*([0-9.,]+)\\s*[-–… ]\\s*([0-9.,]+)\\s*$"));
    const auto found = pair.match(text);
    return found.hasMatch() ? QStringList{found.captured(1), found.captured(2)} : QStringList();
}

}

bool ReadingDesk::saysBoth(const QString& value) const { return stepped() && !twoFigures(value).isEmpty(); }

void ReadingDesk::enter(const QString& value, const QString& below) {
    if (below.trimmed().isEmpty() && saysBoth(value)) {
        const auto both = twoFigures(value);
        return enter(both.front(), both.back());
    }
    m_problem.clear();
    const auto figure = figureFrom(value);
    const auto upper = below.trimmed().isEmpty() ? std::optional<double>() : figureFrom(below);
    if (!figure || (!below.trimmed().isEmpty() && !upper)) {
        m_problem = tr("'%1' is no figure. Write it as 133.4.").arg(figure ? below : value);
        emit changed();
        return;
    }
    if (const auto missing = placeMissing(); !missing.isEmpty()) {
        m_problem = missing;
        emit changed();
        return;
    }
    take(*figure, false, upper);
}

ReadingTaken ReadingDesk::inHand(double value, bool heldLoad) const {
    ReadingTaken reading;
    reading.item = m_reads.item;
    reading.quantity = m_reads.quantity;
    reading.line = m_reads.line;
    reading.inspection = m_desk->file()->inspection.id;
    reading.value = value;
    reading.held = heldLoad;
    reading.unit = outward(m_unit);
    reading.place = place();
    if (asksDirection() && !m_direction.isEmpty())
        reading.conditions.direction = outward(m_direction);
    if (asksAirflow()) {
        reading.conditions.pressure = amountFrom<Pascals>(m_pressure);
        reading.conditions.area = amountFrom<SquareCentimetres>(m_area);
    }
    if (asksJaw())
        reading.conditions.jaw = amountFrom<Millimetres>(m_jaw);
    if (!m_tester.isEmpty())
        reading.tester = TesterId(outward(m_tester));
    reading.circumstances = circumstances();
    if (asksWay())
        reading.method = outward(m_way);
    return reading;
}

std::optional<ReadingTaken> ReadingDesk::heldInHand() const {
    const auto proof = m_desk && m_desk->file() && held() ? figureFrom(m_proof) : std::nullopt;
    return proof ? std::optional(inHand(*proof, true)) : std::nullopt;
}

void ReadingDesk::take(double value, bool heldLoad, std::optional<double> below) {
    if (!m_desk || !m_desk->isOpen() || !quantity())
        return;
    if (m_desk->inspector().trimmed().isEmpty()) {
        m_problem = InspectionDesk::whoFirst();
        emit changed();
        return;
    }
    auto reading = inHand(value, heldLoad);
    reading.below = below;
    if (const auto measured = measuredFrom(reading); !measured) {
        m_problem = Words::problem(measured.error());
        emit changed();
        return;
    }
    m_waiting = std::move(reading);
    askBack();
}

QString ReadingDesk::doubtOf(const ReadingTaken& reading) const {
    const auto measured = measuredFrom(reading);
    const auto* unit = unitNamed(reading.unit, quantity()->dimension);
    if (!measured || !unit || reading.confirmed)
        return {};
    if (const auto question = doubt(*measured, *unit))
        return words::said(question->question);
    const auto* of = item();
    const auto far = of ? farFromStated(*measured, *unit, m_desk->file()->limitsOf(*of)) : std::nullopt;
    return far ? words::said(*far) : QString();
}

void ReadingDesk::askBack() {
    m_equipmentAsked = needsTester() && !m_waiting->tester && !m_withoutTester;
    m_question = m_equipmentAsked ? tr("No test equipment is chosen. What is read without it is not released.")
                                  : doubtOf(*m_waiting);
    if (m_question.isEmpty())
        return write(*std::exchange(m_waiting, std::nullopt));
    emit changed();
}

void ReadingDesk::stand() {
    if (!m_waiting || !m_desk || !m_desk->file())
        return;
    if (std::exchange(m_equipmentAsked, false)) {
        m_withoutTester = true;
        return askBack();
    }
    auto reading = *std::exchange(m_waiting, std::nullopt);
    reading.confirmed = !m_question.isEmpty();
    write(std::move(reading));
}

void ReadingDesk::write(ReadingTaken reading) {
    m_question.clear();
    const auto state = stateOf(*m_desk->file(), reading);
    if (placed())
        m_justTaken.push_back(reading.place);
    const auto* instrument = reading.tester ? m_desk->file()->instrument(*reading.tester, m_desk->file()->on) : nullptr;
    if (instrument && !instrument->station.empty())
        m_desk->setStation(inward(instrument->station));
    std::vector<Body> bodies;
    if (state.judgement == Judgement::Fails) {
        DefectFound found;
        found.item = reading.item;
        found.severity = Severity::Grounding;
        found.inspection = reading.inspection;
        found.line = reading.line;
        found.place = reading.place;
        bodies.push_back(std::move(found));
    }
    bodies.insert(bodies.begin(), std::move(reading));
    m_gore = m_row = 0;
    m_panel.clear();
    m_goesOn = true;
    if (state.judgement == Judgement::Fails)
        m_held = canHold(); // the next one is tried with the load that must hold
    m_desk->post(std::move(bodies));
    showPanels();
    emit saved();
    emit changed();
}

void ReadingDesk::letGo() {
    m_waiting.reset();
    m_equipmentAsked = false;
    m_question.clear();
    emit changed();
}

void ReadingDesk::takeBack() {
    if (m_taken.choices().empty() || !m_desk || !m_desk->isOpen())
        return;
    const auto& file = *m_desk->file();
    const EntryId id(outward(m_taken.choices().front().value));
    m_gore = m_row = 0;
    std::vector<Body> bodies{EntryVoided{id, std::string(voidReasonName(VoidReason::TakenBack))}};
    for (const auto& found : file.inspection.found)
        if (found.body.reading == id)
            bodies.push_back(EntryVoided{found.id, std::string(voidReasonName(VoidReason::ReadingTakenBack))});
    m_desk->post(std::move(bodies));
}

}
