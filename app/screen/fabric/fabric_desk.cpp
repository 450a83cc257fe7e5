// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/fabric_desk.h"

#include "bench/reading/quantity.h"
#include "rules/due/fabric_rows.h"
#include "screen/desk/house.h"
#include "screen/fabric/fabric_fits.h"
#include "screen/fabric/fabric_marks.h"
#include "screen/fabric/fabric_words.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QLocale>
#include <QtConcurrent>

#include <cmath>

namespace crownring::screen {

using namespace words;

using State = FabricFits::State;

FabricFits& FabricDesk::fits() const { return house().one<FabricFits>(); }

void FabricDesk::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &FabricDesk::standingChanged);
    connect(&house().day, &Day::changed, this, &FabricDesk::look);
    connect(&house().desk, &RecordDesk::changed, this, &FabricDesk::look);
    connect(&fits(), &FabricFits::changed, this, [this] {
        foretell();
        emit workChanged();
    });
    connect(&fits(), &FabricFits::progressed, this, &FabricDesk::workChanged);
}

void FabricDesk::setEnvelope(const QString& envelope) {
    if (envelope == m_envelope)
        return;
    m_envelope = envelope;
    m_sight.reset();
    setHoursAhead(0);
    look();
}

void FabricDesk::setChannel(int channel) {
    if (channel == m_channel)
        return;
    m_channel = channel;
    look();
}

void FabricDesk::look() {
    const auto turn = ++m_turn;
    m_foretelling = false;
    if (m_envelope.isEmpty()) {
        m_sight.reset();
        show();
        return;
    }
    const auto channel = static_cast<std::size_t>(std::max(m_channel, 0));
    hear(house().desk.ask([envelope = ItemId(outward(m_envelope)), channel, on = house().day.date()](Record& record) {
        return fabricSight(record, envelope, channel, on);
    }),
         this, [this, turn](const Result<FabricSight>& sight) {
             if (turn == m_turn)
                 takeSight(sight);
         });
}

void FabricDesk::takeSight(const Result<FabricSight>& sight) {
    m_problem = sight ? QString() : Words::problem(sight.error());
    m_sight = sight ? std::make_shared<const FabricSight>(*sight) : nullptr;
    m_outlook.reset();
    if (m_sight)
        m_channel = static_cast<int>(m_sight->channel);
    show();
    begin();
}

void FabricDesk::begin() {
    if (m_sight && !m_sight->record().readings.empty())
        fits().ask(m_sight->fleet);
    foretell();
}

void FabricDesk::stop() { fits().stop(); }

void FabricDesk::foretell() {
    if (!m_sight || m_outlook || m_foretelling)
        return;
    const auto fit = fits().fit(m_sight->at());
    if (!fit)
        return;
    m_foretelling = true;
    const auto number = fit->record->numberOf(m_sight->of().id);
    hear(QtConcurrent::run([fit, number, ahead = m_sight->ahead] {
             return std::make_shared<const FabricOutlook>(fabricOutlook(*fit, number, ahead));
         }),
         this, [this, turn = m_turn](const std::shared_ptr<const FabricOutlook>& outlook) {
             if (turn != m_turn)
                 return;
             m_foretelling = false;
             m_outlook = outlook;
             show();
             emit workChanged();
         });
}

void FabricDesk::show() {
    const bool told = m_sight && m_outlook;
    m_answers.show(told ? FabricWords::answers(*m_sight, *m_outlook) : std::vector<Choice>{});
    m_sets.show(told ? FabricWords::sets(*m_sight, *m_outlook) : std::vector<Choice>{});
    m_pulls.show(told ? FabricWords::pulls(*m_sight, *m_outlook) : std::vector<Choice>{});
    m_chart.show(m_sight ? FabricMarks::curve(*m_sight, m_outlook.get()) : AgeingCurve{});
    showMap();
    emit changed();
    emit foretoldChanged();
    emit aheadChanged();
    emit standingChanged();
}

void FabricDesk::showMap() {
    if (!m_sight)
        m_panels.show({});
    else if (m_outlook && m_hoursAhead > 0)
        m_panels.show(FabricMarks::expected(*m_sight, *m_outlook, m_hoursAhead));
    else
        m_panels.show(FabricMarks::read(*m_sight));
}

void FabricDesk::setHoursAhead(double hours) {
    const double kept = std::clamp(hours, 0.0, FabricOutlook::mostAhead);
    if (kept == m_hoursAhead)
        return;
    m_hoursAhead = kept;
    showMap();
    emit aheadChanged();
}

QString FabricDesk::problem() const {
    if (!m_problem.isEmpty())
        return m_problem;
    const auto& fits = this->fits();
    return m_sight && !m_outlook && fits.state() == State::Failed ? fits.problem() : QString();
}

bool FabricDesk::isWorking() const {
    const auto state = fits().state();
    return m_sight && !m_outlook && (m_foretelling || state == State::Fitting);
}

bool FabricDesk::isStopped() const {
    return m_sight && !m_outlook && !m_foretelling && fits().state() == State::Stopped;
}

double FabricDesk::progress() const { return m_foretelling ? 1 : fits().progress(); }

QStringList FabricDesk::channels() const {
    QStringList names;
    if (m_sight)
        for (const auto& channel : m_sight->channels)
            names += BenchWords::quantity(channel.quantity);
    return names;
}

QString FabricDesk::work() const {
    if (!isWorking())
        return {};
    return tr("Fitting how the fabric of the fleet ages …");
}

const DueRow* FabricDesk::rowOfReadings() const {
    const auto& sheet = house().fleet.sheet();
    if (!sheet || !m_sight)
        return nullptr;
    for (const auto* row : sheet->rowsOf(m_sight->of().id))
        if (quantityOfFabric(row->requirement->id) == m_sight->at().quantity)
            return row;
    return nullptr;
}

QString FabricDesk::byReadings() const {
    const auto* row = rowOfReadings();
    return row ? tr("%1: %2").arg(Words::standing(row->state), words::said(row->requirement->note)) : QString();
}

bool FabricDesk::isBeyond() const {
    const auto* row = rowOfReadings();
    return row && (row->state.standing == Standing::Lapsed || row->state.standing == Standing::Spent);
}

QVariantMap FabricDesk::readingAt(int gore, int row) const {
    if (!m_sight)
        return {};
    const auto& conditions = m_sight->of().conditions;
    QVariantMap given{{QStringLiteral("quantity"), inward(m_sight->at().quantity)},
                      {QStringLiteral("unit"), inward(quantityNamed(m_sight->at().quantity)->unit)},
                      {QStringLiteral("gore"), gore},
                      {QStringLiteral("row"), row}};
    if (conditions.direction)
        given.insert(QStringLiteral("direction"), inward(*conditions.direction));
    if (conditions.jaw)
        given.insert(QStringLiteral("jaw_mm"), conditions.jaw->value());
    if (conditions.pressure)
        given.insert(QStringLiteral("pressure_pa"), conditions.pressure->value());
    if (conditions.area)
        given.insert(QStringLiteral("area_cm2"), conditions.area->value());
    return given;
}

QString FabricDesk::testSays() const {
    if (!m_sight)
        return {};
    const auto& direction = m_sight->of().conditions.direction;
    const auto test = FabricWords::channel(m_sight->at());
    return tr("Written down as %1, the test that the limit is stated for. Of another test write its own figures on the "
              "bench.")
        .arg(direction ? tr("%1, %2").arg(test, inward(*direction)) : test);
}

bool FabricDesk::isForetoldByReadings() const { return m_outlook && m_outlook->weakest().outlook.byReadings; }
QString FabricDesk::ground() const {
    return m_outlook ? FabricWords::ground(m_outlook->weakest().outlook.grounds) : QString();
}
QString FabricDesk::leftOut() const { return m_sight ? FabricWords::leftOut(*m_sight) : QString(); }
QString FabricDesk::fitted() const { return m_outlook ? FabricWords::fitted(*m_outlook) : QString(); }
int FabricDesk::gores() const { return m_sight ? m_sight->of().gores : 0; }
int FabricDesk::rows() const { return m_sight ? m_sight->of().rows : 0; }

QStringList FabricDesk::lots() const {
    QStringList names;
    if (m_sight)
        for (const auto lot : m_sight->lots())
            names += inward(m_sight->record().lots[lot]);
    return names;
}

QString FabricDesk::aheadSays() const {
    if (m_hoursAhead <= 0 || !m_sight)
        return tr("What was read, the latest at each place");
    const auto hours = QLocale().toString(std::round(m_hoursAhead), 'f', 0);
    const auto day = m_sight->ahead.dayAfter(Hours(m_hoursAhead));
    return day ? tr("What is expected in %1 h flown, about %2").arg(hours, inward(day->iso()))
               : tr("What is expected in %1 h flown").arg(hours);
}

}
