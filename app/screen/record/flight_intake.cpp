// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/record/flight_intake.h"

#include "exchange/text/whole_file.h"
#include "exchange/track/igc_flight.h"
#include "problem/faults/table_fault.h"
#include "screen/desk/day.h"
#include "screen/desk/fleet.h"
#include "screen/desk/habits.h"
#include "screen/desk/house.h"
#include "screen/desk/notice.h"
#include "screen/desk/record_desk.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QFileInfo>
#include <QStringList>
#include <QtConcurrent>

#include <algorithm>
#include <map>
#include <tuple>

namespace crownring::screen {

using namespace words;

/// What either kind of file becomes.
struct FlightIntake::Read {
    std::optional<Problem> refused;
    std::vector<FlightProposal> flights;
    std::vector<Problem> bad;
    std::vector<int> waiting; ///< lines
    std::vector<OpenChoice> open;
    std::vector<Phrase> remarks;
    std::vector<LogHeading> columns;
    std::optional<DateOrder> dateOrder;
};

namespace {

QString orderText(DateOrder order) {
    switch (order) {
    case DateOrder::DayMonthYear:
        return FlightIntake::tr("date, day first");
    case DateOrder::MonthDayYear:
        return FlightIntake::tr("date, month first");
    case DateOrder::YearMonthDay:
        return FlightIntake::tr("date, year first");
    }
    return {};
}

/// "Dauer: time aloft · Colour: not read"
QString columnsText(const std::vector<LogHeading>& columns, const std::optional<DateOrder>& order) {
    QStringList texts;
    for (const auto& each : columns) {
        const auto meaning = !each.meaning                               ? FlightIntake::tr("not read")
                             : *each.meaning == LogColumn::Date && order ? orderText(*order)
                                                                         : words::said(termOf(*each.meaning));
        texts += FlightIntake::tr("%1: %2").arg(inward(each.text), meaning);
    }
    return texts.isEmpty() ? QString() : FlightIntake::tr("Columns read as: %1").arg(texts.join(QStringLiteral(" · ")));
}

/// The format begins with the recorder's A record; a log begins with a heading.
bool isTrack(const QByteArray& bytes, const std::string& file) {
    return QString::fromStdString(file).endsWith(QStringLiteral(".igc"), Qt::CaseInsensitive) ||
           bytes.contains("\nHFDTE") || bytes.startsWith("HFDTE");
}

QString fateText(ProposalState state) {
    switch (state) {
    case ProposalState::New:
        return FlightIntake::tr("new");
    case ProposalState::AlreadyLogged:
        return FlightIntake::tr("in the record already");
    case ProposalState::TwiceInFile:
        return FlightIntake::tr("stands twice in the file");
    case ProposalState::UnknownBalloon:
        return FlightIntake::tr("balloon not in the record");
    case ProposalState::UnknownItem:
        return FlightIntake::tr("an item is not in the record");
    }
    return {};
}

IntakeLine lineOf(const JudgedProposal& judged, int at) {
    const auto& proposal = judged.proposal;
    const Entry entry{
        .id = {}, .on = proposal.on, .time = proposal.time, .by = {}, .note = {}, .body = proposal.flight};
    IntakeLine line;
    line.line = proposal.line > 0 ? proposal.line : at + 1;
    line.on = inward(proposal.on.iso());
    if (proposal.time)
        line.on += u' ' + inward(proposal.time->iso());
    line.text = Sentences::of(entry, {});
    line.fate = judged.entered ? FlightIntake::tr("balloon entered only on %1").arg(inward(judged.entered->iso()))
                : judged.unknown.empty() ? fateText(judged.state)
                                         : FlightIntake::tr("'%1' is not in the record").arg(inward(judged.unknown));
    if (!judged.written.empty())
        line.fate = FlightIntake::tr("%1, written %2").arg(line.fate, inward(judged.written));
    line.taken = judged.state == ProposalState::New;
    return line;
}

IntakeLine waitingLine(int at) {
    IntakeLine line;
    line.line = at;
    line.text = FlightIntake::tr("It is read once what is asked above is answered.");
    line.fate = FlightIntake::tr("waits");
    return line;
}

bool liesAhead(const Problem& problem) { return problem.fault == Fault(TableFault::LaterThanToday); }

/// "3 of a balloon that is not in the record": so many flights.
QString countText(ProposalState state, int count) {
    switch (state) {
    case ProposalState::UnknownBalloon:
        return FlightIntake::tr("%1 of a balloon that is not in the record").arg(count);
    case ProposalState::UnknownItem:
        return FlightIntake::tr("%1 with an item that is not in the record").arg(count);
    case ProposalState::TwiceInFile:
        return FlightIntake::tr("%1 twice in the file").arg(count);
    default:
        return FlightIntake::tr("%1 %2").arg(QString::number(count), fateText(state));
    }
}

}

FlightIntake::Read FlightIntake::readFlights(const QByteArray& bytes, const std::string& file,
                                             const FlightLogChoices& choices) {
    const std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    if (isTrack(bytes, file)) {
        auto track = previewTrack(text, file, choices.balloon);
        if (!track)
            return {.refused = track.error(),
                    .flights = {},
                    .bad = {},
                    .waiting = {},
                    .open = {},
                    .remarks = {},
                    .columns = {},
                    .dateOrder = {}};
        return {.refused = {},
                .flights = std::move(track->proposals),
                .bad = {},
                .waiting = {},
                .open = {},
                .remarks = std::move(track->remarks),
                .columns = {},
                .dateOrder = {}};
    }
    auto log = previewFlightLog(text, file, choices);
    return {.refused = std::move(log.refused),
            .flights = std::move(log.flights),
            .bad = std::move(log.badRows),
            .waiting = std::move(log.waiting),
            .open = std::move(log.open),
            .remarks = std::move(log.remarks),
            .columns = std::move(log.columns),
            .dateOrder = log.dateOrder};
}

void FlightIntake::openFile(const QUrl& url) {
    close();
    const auto path = url.isLocalFile() ? url.toLocalFile() : url.toString();
    m_file = QFileInfo(path).fileName();
    auto content = wholeFile(outward(path));
    if (!content) {
        m_problem = Words::problem(content.error());
        emit changed();
        return;
    }
    m_bytes = QByteArray::fromStdString(*content);
    m_choices = {};
    m_choices.notAfter = house().day.todayDate();
    showBalloons();
    read();
}

void FlightIntake::close() {
    ++m_turn;
    m_file.clear();
    m_bytes.clear();
    m_open.clear();
    m_judged.clear();
    m_problem.clear();
    m_remarks.clear();
    m_columns.clear();
    m_summary.clear();
    m_acceptable = 0;
    m_reading = false;
    m_rows.show({});
    emit changed();
}

void FlightIntake::datesAre(const QString& order) {
    m_choices.dateOrder = order == u"day-first"     ? DateOrder::DayMonthYear
                          : order == u"month-first" ? DateOrder::MonthDayYear
                                                    : DateOrder::YearMonthDay;
    read();
}

void FlightIntake::durationsAre(const QString& unit) {
    m_choices.bareDuration = unit == u"minutes" ? BareDuration::Minutes
                             : unit == u"hours" ? BareDuration::Hours
                                                : BareDuration::HoursPointMinutes;
    read();
}

void FlightIntake::temperaturesAre(const QString& unit) {
    m_choices.temperatureUnit = unit == u"celsius" ? TemperatureUnit::Celsius : TemperatureUnit::Fahrenheit;
    read();
}

void FlightIntake::fuelIs(const QString& unit) {
    m_choices.fuelUnit = amountUnitNamed(outward(unit));
    read();
}

void FlightIntake::loadsAre(const QString& unit) {
    m_choices.loadUnit = amountUnitNamed(outward(unit));
    read();
}

void FlightIntake::setBalloon(const QString& balloon) {
    m_choices.balloon = balloon.isEmpty() ? std::nullopt : std::optional(Registration(outward(balloon)));
    showBalloons();
    read();
}

QString FlightIntake::balloon() const { return m_choices.balloon ? inward(m_choices.balloon->text()) : QString(); }

void FlightIntake::setTimesAreUtc(bool utc) {
    if (utc == m_choices.timesAreUtc)
        return;
    m_choices.timesAreUtc = utc;
    read();
}

bool FlightIntake::asks(OpenChoice choice) const {
    return std::find(m_open.begin(), m_open.end(), choice) != m_open.end();
}

QString FlightIntake::verb() const {
    return m_acceptable == 1 ? tr("Log this flight") : tr("Log these %1 flights").arg(m_acceptable);
}

void FlightIntake::showBalloons() {
    std::vector<Choice> choices{{{}, tr("as the file says"), {}, -1, -1, !m_choices.balloon}};
    if (const auto sheet = house().fleet.sheet())
        for (const auto& card : sheet->balloons())
            choices.push_back({inward(card.balloon.text()), inward(card.balloon.text()), inward(card.title), -1, -1,
                               m_choices.balloon == card.balloon});
    m_balloons.show(std::move(choices));
}

void FlightIntake::read() {
    const auto turn = ++m_turn;
    m_reading = true;
    emit changed();
    hear(QtConcurrent::run([bytes = m_bytes, file = outward(m_file), choices = m_choices] {
             return readFlights(bytes, file, choices);
         }),
         this, [this, turn](const Read& read) {
             if (turn == m_turn)
                 judgeThem(read);
         });
}

void FlightIntake::judgeThem(const Read& read) {
    m_open = read.open;
    QStringList remarks;
    for (const auto& remark : read.remarks)
        remarks += words::said(remark);
    m_remarks = remarks.join(u'\n');
    m_columns = columnsText(read.columns, read.dateOrder);
    m_problem = read.refused ? Words::problem(*read.refused) : QString();
    auto flights = read.flights;
    if (const auto person = outward(house().habits.person()); !person.empty())
        for (auto& flight : flights)
            if (flight.by.empty())
                flight.by = person;
    hear(house().desk.ask([flights](Record& record) { return judge(record, flights); }), this,
         [this, turn = m_turn, read](const Result<std::vector<JudgedProposal>>& judged) {
             if (turn != m_turn)
                 return;
             m_reading = false;
             if (!judged)
                 m_problem = Words::problem(judged.error());
             take(judged ? *judged : std::vector<JudgedProposal>{}, read);
         });
}

void FlightIntake::take(std::vector<JudgedProposal> judged, const Read& read) {
    const auto& bad = read.bad;
    m_judged = std::move(judged);
    std::vector<IntakeLine> lines;
    std::map<ProposalState, int> counts;
    int early = 0;
    for (std::size_t at = 0; at < m_judged.size(); ++at) {
        lines.push_back(lineOf(m_judged[at], static_cast<int>(at)));
        ++(m_judged[at].entered ? early : counts[m_judged[at].state]);
    }
    for (const int at : read.waiting)
        lines.push_back(waitingLine(at));
    for (std::size_t at = 0; at < bad.size(); ++at) {
        IntakeLine line;
        line.line = bad[at].where.line;
        line.part = static_cast<int>(at) + 1;
        auto shown = bad[at];
        shown.where.file.clear();
        shown.where.line = 0;
        line.text = Words::problem(shown);
        line.fate = liesAhead(bad[at]) ? tr("lies in the future") : tr("cannot be read");
        line.bad = true;
        lines.push_back(std::move(line));
    }
    // What the user must look at stands first.
    std::stable_sort(lines.begin(), lines.end(), [](const IntakeLine& a, const IntakeLine& b) {
        return std::tuple(!a.bad, a.line) < std::tuple(!b.bad, b.line);
    });
    m_rows.show(std::move(lines));
    m_acceptable = m_open.empty() ? counts[ProposalState::New] : 0;
    QStringList parts;
    for (const auto& [state, count] : counts)
        if (count > 0)
            parts += countText(state, count);
    if (early > 0)
        parts += tr("%1 from before the balloon was entered").arg(early);
    if (!read.waiting.empty())
        parts += tr("%1 waiting for what is asked above").arg(read.waiting.size());
    const auto ahead = std::ranges::count_if(bad, liesAhead);
    if (ahead > 0)
        parts += tr("%1 in the future").arg(ahead);
    if (const auto unread = static_cast<std::ptrdiff_t>(bad.size()) - ahead; unread > 0)
        parts += tr("%1 cannot be read").arg(unread);
    m_summary = parts.isEmpty() ? tr("No flights found.") : parts.join(QStringLiteral(" · "));
    emit changed();
}

void FlightIntake::accept() {
    if (m_acceptable == 0 || m_reading)
        return;
    m_reading = true;
    emit changed();
    hear(house().desk.ask([judged = m_judged, file = outward(m_file)](Record& record) {
        return crownring::accept(record, record, judged, file);
    }),
         this, [this](const Results<Receipt>& receipt) {
             m_reading = false;
             if (!receipt) {
                 m_problem = Words::problems(receipt.error());
                 emit changed();
                 return;
             }
             const auto count = receipt->ids.size();
             const auto told = count == 1 ? tr("1 flight logged from %1").arg(m_file)
                                          : tr("%1 flights logged from %2").arg(QString::number(count), m_file);
             house().notice.tellWritten(told, receipt->ids, house().habits.person());
             close();
             emit accepted();
             house().desk.written();
         });
}

}
