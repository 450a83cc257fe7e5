// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/plan_desk.h"

#include "acts/plans/plan_visits.h"
#include "answers/plan/proven.h"
#include "problem/faults/use_fault.h"
#include "screen/next/ahead/agenda_model.h"
#include "screen/next/plan/stations_file.h"
#include "words/ahead/plan_words.h"
#include "words/border.h"
#include "words/words.h"

#include <algorithm>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

/// Whose words those are that count.
struct PlanDeskWords {
    Q_DECLARE_TR_FUNCTIONS(PlanDeskWords)
};

}

PlanDesk::~PlanDesk() = default;

void PlanDesk::movedIn() {
    connect(&m_work, &PlanWork::went, this, &PlanDesk::went);
    connect(&house().desk, &RecordDesk::opening, this, &PlanDesk::forget);
    connect(&house().desk, &RecordDesk::stateChanged, this, &PlanDesk::lookAtStations);
    connect(&house().desk, &RecordDesk::changed, this, &PlanDesk::overtake);
    connect(&house().day, &Day::changed, this, &PlanDesk::overtake);
    lookAtStations();
}

/// What is shown is of another record.
void PlanDesk::forget() {
    m_work.stop();
    m_wishes = {};
    m_problem.clear();
    leave();
    show(nullptr);
}

void PlanDesk::overtake() {
    m_overtaken = true;
    leave();
    showWishes();
    emit changed();
}

void PlanDesk::lookAtStations() {
    m_stationsText.clear();
    const auto file = stationsFileOf(house());
    if (file.isEmpty() || !house().desk.isOpen())
        return emit changed();
    auto stations = stationsIn(file);
    if (stations) {
        m_stations = std::move(*stations);
        m_stationsText = stationsText(file, m_stations);
        std::vector<Choice> places;
        for (const auto& station : m_stations.stations)
            places.push_back({inward(station.name), inward(station.name), {}, -1, -1, false});
        m_places.show(std::move(places));
    } else {
        m_problem = Words::problem(stations.error());
    }
    emit changed();
}

void PlanDesk::chooseStations(const QUrl& file) {
    const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    if (const auto stations = stationsIn(path); !stations)
        return house().notice.tellTrouble(Words::problem(stations.error()));
    m_work.stop();
    m_problem.clear();
    house().habits.setStationsFile(path);
    leave();
    show(nullptr);
    lookAtStations();
}

void PlanDesk::setMonths(int months) {
    m_months = std::clamp(months, 1, 36);
    emit changed();
}

void PlanDesk::setPercent(int percent) {
    m_percent = std::clamp(percent, 1, 99);
    emit changed();
}

QString PlanDesk::step() const {
    if (!m_work.isUnderWay())
        return {};
    const auto text =
        m_work.isReading() ? tr("Reading what is due, and how it is flown …") : tr("Choosing weeks and stations …");
    return tr("%1 %2 s").arg(text, QString::number(m_work.lasts()));
}

QString PlanDesk::writer() const { return house().habits.person(); }

bool PlanDesk::isWritable() const {
    return m_answer && !m_change.isNothing() && !m_overtaken && !m_saving && !house().desk.readOnly() &&
           m_triedText.isEmpty();
}

Result<PlanQuestion> PlanDesk::questionWith(const PlanWishes& wishes) {
    auto stations = stationsIn(stationsFileOf(house()));
    if (!stations)
        return tl::unexpected(stations.error());
    const auto on = house().day.date();
    return PlanQuestion{
        {on, m_months, std::min(on, house().day.todayDate()), m_percent / 100.0, std::move(*stations), wishes.pins},
        wishes.letGo};
}

void PlanDesk::plan() {
    leave();
    m_problem.clear();
    auto question = questionWith(m_wishes);
    if (!question) {
        m_problem = Words::problem(question.error());
        return show(nullptr);
    }
    m_overtaken = false;
    m_work.begin(house().desk, std::move(*question), [this](const PlanFound& found) {
        if (found && isProven((*found)->plan))
            return show(*found);
        m_problem = found ? PlanWords::unproven() : Words::problem(found.error());
        show(nullptr);
    });
    emit changed();
}

void PlanDesk::stop() {
    m_work.stop();
    leave();
}

void PlanDesk::show(std::shared_ptr<const PlanAnswer> answer) {
    m_answer = std::move(answer);
    const auto on = house().day.date();
    m_change = m_answer ? calendarChange(m_answer->plan, m_answer->already) : CalendarChange{};
    m_worth = m_answer ? PlanWords::worth(m_answer->plan, m_answer->question.asked.risk) : QStringList();
    m_notKept = m_answer ? notKeptLines(m_answer->plan) : QStringList();
    m_leftOut = m_answer ? leftOutLines(m_answer->plan) : QStringList();
    m_loose = m_answer ? looseLines(m_answer->already) : QStringList();
    m_changeLines = m_change.isNothing() ? QStringList() : changeLines(m_change);
    m_visits.show(m_answer ? planLines(*m_answer, m_wishes, on) : std::vector<PlanLine>());
    showWishes();
    emit changed();
}

void PlanDesk::showWishes() {
    std::vector<Choice> lines;
    for (std::size_t nth = 0; nth < m_wishes.pins.size(); ++nth)
        lines.push_back({QString::number(nth), m_wishes.said(nth), {}, -1, -1, false});
    for (std::size_t nth = 0; nth < m_wishes.letGo.size(); ++nth) {
        const auto& entry = m_wishes.letGo[nth];
        QString visit = inward(entry.text());
        if (m_answer)
            for (const auto& loose : m_answer->already.loose)
                if (loose.standing.entry == entry)
                    visit = PlanWords::named(loose.standing.visit);
        lines.push_back({QString::number(m_wishes.pins.size() + nth), tr("Let go: %1").arg(visit), {}, -1, -1, false});
    }
    m_wishLines.show(std::move(lines));
}

void PlanDesk::hold(int row) {
    const auto* line = m_visits.line(row);
    if (!line || m_overtaken || !m_triedText.isEmpty())
        return;
    m_wishes.hold(line->place);
    show(m_answer);
}

void PlanDesk::letGo(int row) {
    const auto* line = m_visits.line(row);
    if (!line)
        return;
    auto wishes = m_wishes;
    std::erase_if(wishes.pins, [&](const VisitPin& pin) {
        return !pin.forbids && pin.balloon == line->place.balloon && pin.day == line->place.week;
    });
    if (line->entry)
        wishes.letGo.push_back(*line->entry);
    tryOut(std::move(wishes), tr("Let go: %1").arg(stayText(line->place, house().day.date())));
}

void PlanDesk::forbid(int row, bool anywhere) {
    const auto* line = m_visits.line(row);
    if (!line)
        return;
    auto wishes = m_wishes;
    wishes.forbid(line->place, anywhere);
    tryOut(std::move(wishes), tr("Without %1").arg(stayText(line->place, house().day.date())));
}

void PlanDesk::move(int row, int weeks, const QString& station) {
    const auto* line = m_visits.line(row);
    if (!line)
        return;
    const VisitPlace to{line->place.balloon, addDays(line->place.week, 7 * weeks),
                        station.isEmpty() ? line->place.station : outward(station)};
    if (to == line->place)
        return;
    auto wishes = m_wishes;
    wishes.move(line->place, to);
    const auto on = house().day.date();
    tryOut(std::move(wishes), tr("%1 instead of %2").arg(stayText(to, on), stayText(line->place, on)));
}

QString PlanDesk::weekOf(int row, int weeks) const {
    const auto* line = m_visits.line(row);
    if (!line)
        return {};
    const auto monday = addDays(line->place.week, 7 * weeks);
    return daysText(monday, addDays(monday, 4), house().day.date());
}

QString PlanDesk::stationOf(int row) const {
    const auto* line = m_visits.line(row);
    return line ? inward(line->place.station) : QString();
}

void PlanDesk::dropWish(int nth) {
    if (nth < 0 || static_cast<std::size_t>(nth) >= m_wishes.count())
        return;
    auto wishes = m_wishes;
    wishes.drop(static_cast<std::size_t>(nth));
    const auto what = m_wishLines.choices()[static_cast<std::size_t>(nth)].label;
    if (m_answer && !m_overtaken)
        return tryOut(std::move(wishes), tr("No longer: %1").arg(what));
    m_wishes = std::move(wishes);
    show(m_answer);
}

void PlanDesk::tryOut(PlanWishes wishes, const QString& what) {
    if (!m_answer || m_overtaken)
        return;
    leave();
    auto question = questionWith(wishes);
    if (!question)
        return house().notice.tellTrouble(Words::problem(question.error()));
    m_triedWishes = std::move(wishes);
    m_triedText = what;
    // What it was planned with is what it is compared with.
    question->asked.months = m_answer->question.asked.months;
    question->asked.risk = m_answer->question.asked.risk;
    m_work.begin(house().desk, std::move(*question), [this](const PlanFound& found) {
        if (found && isProven((*found)->plan)) {
            m_triedAnswer = *found;
            m_means = differenceLines(m_answer->plan, m_triedAnswer->plan, house().day.date());
        } else {
            m_means = {found ? PlanWords::unproven() : Words::problem(found.error())};
        }
        emit triedChanged();
        emit changed();
    });
    emit triedChanged();
    emit changed();
}

void PlanDesk::take() {
    if (!m_triedAnswer || m_overtaken)
        return;
    m_wishes = std::move(m_triedWishes);
    auto answer = std::move(m_triedAnswer);
    leave();
    show(std::move(answer));
}

void PlanDesk::leave() {
    if (m_triedText.isEmpty())
        return;
    m_work.stop();
    m_triedWishes = {};
    m_triedAnswer.reset();
    m_triedText.clear();
    m_means.clear();
    emit triedChanged();
    emit changed();
}

void PlanDesk::intoCalendar(const QString& by) {
    if (!isWritable() || by.trimmed().isEmpty())
        return;
    house().habits.setPerson(by.trimmed());
    m_saving = true;
    emit changed();
    using Written = Results<std::optional<Receipt>>; // nothing: the record says otherwise by now
    hear(house().desk.ask([answer = m_answer, change = m_change, on = house().day.todayDate(), by = outward(by),
                           reason = outward(tr("planned otherwise"))](Record& record) -> Written {
        const auto already = alreadyPlanned(record, answer->question.asked, answer->question.letGo);
        if (!already)
            return tl::unexpected(std::vector{already.error()});
        if (calendarChange(answer->plan, *already) != change)
            return std::optional<Receipt>();
        auto receipt = planVisits(record, record, change, on, by, reason);
        if (!receipt)
            return tl::unexpected(receipt.error());
        return std::optional(std::move(*receipt));
    }),
         this, [this](const Written& written) {
             m_saving = false;
             if (written && *written) {
                 const auto visits = static_cast<int>(m_change.added.size() + m_change.wider.size());
                 house().notice.tellWritten(
                     PlanDeskWords::tr("%n visits of the plan are in the calendar.", nullptr, visits), (*written)->ids,
                     writer());
                 m_wishes = {};
                 house().desk.written();
             } else {
                 house().notice.tellTrouble(written ? tr("Nothing was written: the record plans other visits by now. "
                                                         "Look for the plan again.")
                                                    : Words::problems(written.error()));
                 m_overtaken = m_overtaken || written.has_value();
             }
             emit changed();
         });
}

}
