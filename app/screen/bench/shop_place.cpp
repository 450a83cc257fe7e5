// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/shop_place.h"

#include "bench/checklist/checklist.h"
#include "bench/reading/instrument.h"
#include "bench/reading/series.h"
#include "bench/release/entitlement.h"
#include "bench/release/latest_word.h"
#include "measure/unit.h"
#include "screen/desk/day.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QLocale>

#include <algorithm>
#include <array>

namespace crownring::screen {

using namespace words;

namespace {

using Sections = std::array<std::vector<JournalLine>, 4>; ///< people, testers, types, lines

Result<Sections> toldOn(Record& record, CivilDate on) {
    constexpr std::array subjects{Subject::Person, Subject::Tester, Subject::Type, Subject::Checklist};
    Sections told;
    for (std::size_t at = 0; at < subjects.size(); ++at) {
        auto lines = record.told({subjects[at], {}, {}, on});
        if (!lines)
            return tl::unexpected(lines.error());
        told[at] = std::move(*lines);
    }
    return told;
}

QString inOneLine(const QStringList& parts) {
    QStringList said;
    for (const auto& part : parts)
        if (!part.isEmpty())
            said.push_back(part);
    return said.join(QStringLiteral(" · "));
}

QString untilWords(const std::optional<CivilDate>& until, CivilDate on) {
    if (!until)
        return ShopPlace::tr("without an end");
    const auto day = inward(until->iso());
    return *until < on ? ShopPlace::tr("ended %1").arg(day) : ShopPlace::tr("until %1").arg(day);
}

Choice row(const PersonEntitled& said, CivilDate on) {
    const auto capacity = capacityFrom(said.capacity);
    const auto as = capacity ? words::said(termOf(*capacity)) : inward(said.capacity);
    QStringList balloons;
    for (const auto& each : said.balloons)
        balloons.push_back(inward(each.text()));
    return {
        {},
        inward(said.person.text()),
        inOneLine({as, inward(said.licence), untilWords(said.until, on),
                   balloons.isEmpty() ? QString() : ShopPlace::tr("only %1").arg(balloons.join(QStringLiteral(", ")))}),
        -1,
        -1,
        !said.until || *said.until >= on};
}

QString measuresWords(const TesterCalibrated& said) {
    if (said.measures.empty())
        return ShopPlace::tr("what it measures is not said");
    const auto what = words::said(whatItMeasures(instrumentFrom(said)));
    const auto figure = [&](double bound) { return QLocale().toString(bound, 'g', 6); };
    const auto unit = inward(said.unit);
    return said.from && said.to ? ShopPlace::tr("%1, %2 to %3 %4").arg(what, figure(*said.from), figure(*said.to), unit)
           : said.to            ? ShopPlace::tr("%1, up to %2 %3").arg(what, figure(*said.to), unit)
                                : what;
}

Choice row(const TesterCalibrated& said, CivilDate on) {
    return {{},
            inward(said.tester.text()),
            inOneLine({inward(said.what), measuresWords(said), inward(said.station), inward(said.certificate),
                       untilWords(said.until, on)}),
            -1,
            -1,
            said.until >= on};
}

Choice row(const TypeDescribed& said, CivilDate) {
    const auto map =
        said.gores && said.rows ? ShopPlace::tr("%1 gores × %2 rows").arg(*said.gores).arg(*said.rows) : QString();
    return {{},
            ShopPlace::tr("%1, %2").arg(inward(said.type.text()), Words::kind(said.kind)),
            inOneLine({inward(said.manual), ShopPlace::tr("revision %1").arg(inward(said.revision)), map}),
            -1,
            -1,
            true};
}

Choice row(const LimitStated& said, CivilDate) {
    const auto* quantity = quantityNamed(said.quantity);
    const auto bound = [&](const std::optional<double>& figure, const QString& words) {
        if (!figure)
            return QString();
        const auto unit = quantity ? unitFor(*quantity, said.unit) : Result<const Unit*>(nullptr);
        return words.arg(unit && *unit ? inward(amountText(*figure, **unit))
                                       : QLocale().toString(*figure, 'g', 6) + u' ' + inward(said.unit));
    };
    const auto where = said.zone ? words::said(Term{Term::Of::Zone, std::string(zoneName(*said.zone))}) : QString();
    const auto along = said.conditions.direction ? inward(*said.conditions.direction) : QString();
    const auto places = said.places ? ShopPlace::tr("%1 readings").arg(*said.places) : QString();
    return {{},
            ShopPlace::tr("%1: %2").arg(inward(said.type.text()),
                                        quantity ? words::said(testedAs(seriesOf(said.quantity, said.conditions)))
                                                 : inward(said.quantity)),
            inOneLine({where, along, bound(said.least, ShopPlace::tr("at least %1")),
                       bound(said.most, ShopPlace::tr("at most %1")),
                       bound(said.proof, ShopPlace::tr("to be held: %1")), places, inward(said.source)}),
            -1,
            -1,
            true};
}

Choice row(const ChecklistAdopted& said, CivilDate) {
    const auto document = keptChecklist(said.document);
    if (!document)
        return {{}, inward(said.checklist.text()), Words::problem(document.error()), -1, -1, false};
    const auto& first = document->lines.front();
    const auto more = document->lines.size() - 1;
    return {{},
            more == 0 ? inward(first.title) : ShopPlace::tr("%1 and %2 more").arg(inward(first.title)).arg(more),
            inOneLine({inward(document->sections.front().title), inward(document->source)}),
            -1,
            -1,
            true};
}

/// Those that stand, each with its row.
template <class Said>
void addRows(const std::vector<JournalLine>& lines, CivilDate on, std::vector<Choice>& rows) {
    std::vector<std::pair<Said, Choice>> standing;
    for (const auto& line : lines)
        if (const auto* said = std::get_if<Said>(&nowOf(line).body)) {
            std::erase_if(standing, [&](const auto& earlier) { return takesThePlaceOf(*said, earlier.first); });
            auto made = row(*said, on);
            made.value = inward(line.entry.id.text());
            standing.emplace_back(*said, std::move(made));
        }
    for (auto& [said, made] : standing)
        rows.push_back(std::move(made));
}

template <class... Said>
std::vector<Choice> rowsOf(const std::vector<JournalLine>& lines, CivilDate on) {
    std::vector<Choice> rows;
    (addRows<Said>(lines, on, rows), ...);
    std::ranges::stable_sort(rows, {}, [](const Choice& each) { return std::pair(!each.chosen, each.label); });
    return rows;
}

}

void ShopPlace::movedIn() {
    connect(&house().desk, &RecordDesk::changed, this, &ShopPlace::askAgain);
    connect(&house().day, &Day::changed, this, &ShopPlace::askAgain);
    askAgain();
}

void ShopPlace::askAgain() {
    if (!house().desk.isOpen())
        return;
    const auto turn = ++m_turn;
    const auto on = house().day.date();
    hear(house().desk.ask([on](Record& record) -> Result<Sections> { return toldOn(record, on); }), this,
         [this, turn, on](const Result<Sections>& told) {
             if (turn != m_turn)
                 return;
             m_problem = told ? QString() : Words::problem(told.error());
             const auto& lines = told ? *told : Sections{};
             m_people.show(rowsOf<PersonEntitled>(lines[0], on));
             m_testers.show(rowsOf<TesterCalibrated>(lines[1], on));
             m_types.show(rowsOf<TypeDescribed, LimitStated>(lines[2], on));
             m_lines.show(rowsOf<ChecklistAdopted>(lines[3], on));
             emit listed();
         });
}

}
