// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/ahead/agenda_desk.h"

#include "answers/forecast/visit_outlook.h"
#include "measure/duration_text.h"
#include "screen/desk/due_model.h"
#include "words/ahead/visit_words.h"
#include "words/border.h"
#include "words/in_full.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// Whose words those are that count.
struct AgendaWords {
    Q_DECLARE_TR_FUNCTIONS(AgendaWords)
};

/// "Annual inspection, envelope ENV-101: 3 days past"
QString reasonText(const RigUpReason& reason, const PlannedFlight& flight) {
    const auto line = reasonLine(reason, flight);
    return AgendaDesk::tr("%1: %2").arg(line.title, line.text.isEmpty() ? line.word : line.text);
}

QString madeText(const MadeDue& made) {
    return AgendaDesk::tr("makes due: %1, %2 (%3)")
        .arg(said(made.after->requirement->title), DueTexts::where(*made.after), Words::standing(made.after->state));
}

AgendaLine lineOf(const AgendaFlight& flight, CivilDate on) {
    const auto& planned = flight.planned.flight;
    AgendaLine line{
        inward(flight.planned.at.id.text()),
        dayText(flight.planned.at.at.on(), on),
        AgendaDesk::tr("%1 · %2").arg(inward(planned.balloon.text()), Words::hours(planned.use.minutes.value())),
        {},
        {},
        false,
        flight.mayFly()};
    line.says = flight.kit.empty() ? AgendaDesk::tr("Nothing is fitted that could fly")
                : line.good        ? AgendaDesk::tr("By the record, nothing stands against it")
                                   : AgendaDesk::tr("By the record: no");
    if (flight.at)
        line.lines += AgendaDesk::tr("But its visit to %1 is planned for that day: %2")
                          .arg(inward(flight.at->station), daysText(flight.at->from, flight.at->to, on));
    if (flight.check)
        for (const auto& reason : flight.check->verdict.reasons)
            line.lines += reasonText(reason, {.use = planned.use});
    if (flight.check)
        for (const auto& use : flight.check->verdict.tolerances) {
            const auto told = toleranceLine(use, {.use = planned.use});
            line.lines += AgendaDesk::tr("%1: %2").arg(told.title, told.text);
        }
    line.lines.removeDuplicates();
    for (const auto& made : flight.makes)
        line.lines += madeText(made);
    return line;
}

AgendaLine lineOf(const VisitAhead& ahead, const VisitOutlook& outlook, CivilDate on) {
    AgendaLine line{
        inward(ahead.stated.id.text()),
        daysText(ahead.visit.from, ahead.visit.to, on),
        AgendaDesk::tr("%1 at %2").arg(inward(ahead.visit.balloon.text()), inward(ahead.visit.station)),
        AgendaWords::tr("Visit that covers %n requirements", nullptr, static_cast<int>(ahead.visit.covers.size())),
        {},
        true,
        true};
    line.lines = VisitWords::works(outlook.covers) + VisitWords::before(outlook.before);
    line.good =
        std::ranges::none_of(outlook.before, [](const LapsesBefore& each) { return each.how <= LapseChance::Likely; });
    return line;
}

}

AgendaDesk::~AgendaDesk() = default;

void AgendaDesk::movedIn() {
    connect(&house().one<AheadNow>(), &AheadNow::changed, this, &AgendaDesk::look);
    if (m_shown)
        house().one<AheadNow>().want(true);
    look();
}

void AgendaDesk::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    house().one<AheadNow>().want(shown);
    emit shownChanged();
    if (shown)
        look();
}

bool AgendaDesk::isRenewing() const { return house().one<AheadNow>().isRenewing(); }

QString AgendaDesk::problem() const { return house().one<AheadNow>().problem(); }

QString AgendaDesk::weekend() const {
    if (!m_sheet)
        return {};
    const auto& days = m_sheet->weekend;
    const auto last = dayText(days.back(), m_sheet->on);
    if (days.size() == 1)
        return last;
    const auto& first = days.front();
    return tr("%1 and %2")
        .arg(first.month() == days.back().month()
                 ? QLocale().toString(QDate(first.year(), first.month(), first.day()), QStringLiteral("ddd d"))
                 : dayText(first, m_sheet->on),
             last);
}

void AgendaDesk::look() {
    const auto& sheet = house().one<AheadNow>().sheet();
    if (sheet == m_sheet || !m_shown)
        return emit changed();
    m_sheet = sheet;
    showWeekend();
    std::vector<AgendaLine> lines;
    showVisits(lines);
    std::size_t visits = lines.size();
    std::vector<std::pair<CivilDate, AgendaLine>> inOrder;
    for (std::size_t i = 0; i < visits; ++i)
        inOrder.emplace_back(m_sheet->agenda.visits[i].visit.from, std::move(lines[i]));
    for (const auto& flight : m_sheet->agenda.flights)
        inOrder.emplace_back(flight.planned.at.at.on(), lineOf(flight, m_sheet->on));
    std::ranges::stable_sort(inOrder, {}, [](const auto& each) { return each.first; });
    lines.clear();
    for (auto& [day, line] : inOrder)
        lines.push_back(std::move(line));
    m_agenda.show(std::move(lines));
    std::vector<Choice> balloons;
    for (const auto& then : m_sheet->thatWeekend)
        balloons.push_back({inward(then.balloon.text()), inward(then.balloon.text()), {}, -1, -1, false});
    m_balloons.show(std::move(balloons));
    emit changed();
    suppose();
}

void AgendaDesk::showWeekend() {
    QStringList mayFly;
    m_mayNot.clear();
    m_whyNot.clear();
    for (const auto& then : m_sheet->thatWeekend) {
        const auto name = inward(then.balloon.text());
        if (then.flies.size() == m_sheet->weekend.size()) {
            mayFly += name;
            continue;
        }
        auto why = tr("nothing is fitted");
        if (then.check && !then.check->verdict.reasons.empty()) {
            const auto& reasons = then.check->verdict.reasons;
            const bool isWhole = reasons.front().kind != RigUpReason::Kind::Incomplete;
            why = isWhole ? reasonText(reasons.front(), {}) : tr("what is fitted is no whole balloon");
            if (isWhole && reasons.size() > 1)
                why = AgendaWords::tr("%1 (and %n more)", nullptr, static_cast<int>(reasons.size()) - 1).arg(why);
        }
        if (!then.flies.empty()) {
            mayFly += tr("%1 (only %2)").arg(name, dayText(then.flies.front(), m_sheet->on));
            why = tr("only %1: %2").arg(dayText(then.flies.front(), m_sheet->on), why);
        }
        m_mayNot += tr("%1: %2").arg(name, why);
        m_whyNot.emplace(then.balloon, why);
    }
    m_mayFly = mayFly.join(QStringLiteral(", "));
}

void AgendaDesk::showVisits(std::vector<AgendaLine>& lines) {
    m_nextVisit.clear();
    m_nextCovers.clear();
    const auto outlook = [&](const VisitAhead& ahead) {
        return outlookOf(ahead.visit, m_sheet->due.rows, m_sheet->bands, ahead.visit.from);
    };
    for (const auto& ahead : m_sheet->agenda.visits)
        lines.push_back(lineOf(ahead, outlook(ahead), m_sheet->on));
    if (m_sheet->planned.visits.empty())
        return;
    const auto& next = m_sheet->planned.visits.front();
    m_nextVisit = tr("%1 at %2, %3")
                      .arg(inward(next.visit.balloon.text()), inward(next.visit.station),
                           daysText(next.visit.from, next.visit.to, m_sheet->on));
    m_nextCovers = VisitWords::works(outlook(next).covers);
}

void AgendaDesk::setBalloon(const QString& balloon) {
    m_balloon = balloon;
    suppose();
}

void AgendaDesk::setDuration(const QString& duration) {
    m_duration = duration;
    suppose();
}

void AgendaDesk::setDay(const QString& day) {
    m_day = day;
    suppose();
}

void AgendaDesk::suppose() {
    const auto turn = ++m_turn;
    m_answer.clear();
    m_wrong.clear();
    m_understood.clear();
    m_makes.show({});
    emit supposedChanged();
    if (!m_sheet || m_balloon.isEmpty() || m_duration.trimmed().isEmpty())
        return;
    const auto minutes = parseDuration(outward(m_duration), BareNumber::Hours);
    auto on = Result<CivilDate>(m_sheet->weekend.front());
    if (!m_day.trimmed().isEmpty())
        on = CivilDate::parse(outward(m_day.trimmed()));
    if (!minutes || !on) {
        m_wrong = Words::problem(minutes ? on.error() : minutes.error());
        return emit supposedChanged();
    }
    const SupposedFlight flight{Registration(outward(m_balloon)), {*minutes, Landings(1), Inflations(1)}, *on, {}};
    m_understood = tr("%1 on %2").arg(inFull(*minutes), dayText(*on, m_sheet->on));
    emit supposedChanged();
    using Answer = Result<std::shared_ptr<const Supposed>>;
    hear(house().desk.ask([flight](Record& record) -> Answer {
        auto supposed = supposeFlights(record, {flight}, {flight.balloon, {}}, flight.on);
        if (!supposed)
            return tl::unexpected(supposed.error());
        return std::make_shared<const Supposed>(std::move(*supposed));
    }),
         this, [this, turn, flight](const Answer& answer) {
             if (turn != m_turn)
                 return;
             if (answer)
                 take(**answer, flight);
             else
                 m_wrong = Words::problem(answer.error());
             emit supposedChanged();
         });
}

void AgendaDesk::take(const Supposed& supposed, const SupposedFlight& flight) {
    const auto what = tr("If %1 flies %2 on %3")
                          .arg(inward(flight.balloon.text()), inFull(flight.use.minutes),
                               dayText(flight.on, m_sheet ? m_sheet->on : flight.on));
    const auto count = static_cast<int>(supposed.makes.size());
    m_answer = count == 0 ? tr("%1, nothing more is due by it.").arg(what)
                          : AgendaWords::tr("%1, %n requirements stand worse:", nullptr, count).arg(what);
    if (const auto against = m_whyNot.find(flight.balloon); against != m_whyNot.end())
        m_answer = tr("Against a flight, %1: %2. %3").arg(weekend(), against->second, m_answer);
    std::vector<ReasonLine> lines;
    for (const auto& made : supposed.makes)
        lines.push_back(noteLine(*made.after));
    m_makes.show(std::move(lines));
}

}
