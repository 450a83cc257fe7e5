// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/directives/directives_desk.h"

#include "screen/desk/house.h"
#include "screen/directives/directive_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

bool isUnanswered(const DirectiveRow& row) {
    const auto share = shareOf(row);
    return share == DirectiveShare::Overdue || share == DirectiveShare::AtOnce || share == DirectiveShare::Open ||
           share == DirectiveShare::Unknown;
}

HeldItem heldFrom(const DirectiveRow& row, bool isAnswerable, bool isTicked) {
    const auto& item = *row.item;
    return {inward(item.id.text()),
            joined({Words::kind(item.kind), item.balloon ? inward(item.balloon->text()) : DirectivesDesk::tr("pool"),
                    item.serial ? inward(*item.serial) : QString()},
                   QStringLiteral(" · ")),
            words::said(whyOf(row)),
            DirectiveWords::done(row),
            DirectiveWords::word(row),
            DirectiveWords::standing(row),
            isAnswerable && shareOf(row) != DirectiveShare::NotBound,
            isTicked};
}

}

void DirectivesDesk::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &DirectivesDesk::follow);
    connect(&house().desk, &RecordDesk::opening, this, [this] {
        m_entry.clear();
        m_ticked.clear();
    });
}

void DirectivesDesk::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    emit shownChanged();
    follow();
}

void DirectivesDesk::follow() {
    if (m_shown && m_sheet != house().fleet.sheet())
        ask();
}

void DirectivesDesk::ask() {
    m_sheet = house().fleet.sheet();
    if (!m_sheet)
        return;
    using Answer = Result<std::shared_ptr<const DirectiveBook>>;
    hear(house().desk.ask([on = m_sheet->on()](Record& record) -> Answer { return directiveBook(record, on); }), this,
         [this, turn = ++m_turn](const Answer& book) {
             if (turn != m_turn)
                 return;
             m_problem = book ? QString() : Words::problem(book.error());
             m_line = nullptr;
             m_book = book ? *book : std::make_shared<const DirectiveBook>();
             look();
         });
}

void DirectivesDesk::look() {
    if (!m_book)
        return;
    std::vector<DirectiveEntry> entries;
    for (const auto& line : m_book->lines)
        entries.push_back({inward(line.issued.id.text()), DirectiveWords::name(line.issued.body),
                           inward(line.issued.body.title), DirectiveWords::about(line), DirectiveWords::counts(line),
                           line.count(DirectiveShare::Overdue) + line.count(DirectiveShare::AtOnce),
                           line.count(DirectiveShare::Unknown), DirectiveWords::standing(line)});
    m_directives.show(std::move(entries));
    if (!m_wanted.isEmpty()) {
        const auto of = std::ranges::find_if(m_book->lines, [this](const DirectiveLine& line) {
            return line.issued.body.directive.text() == outward(m_wanted);
        });
        if (of != m_book->lines.end())
            m_entry = inward(of->issued.id.text());
        m_wanted.clear();
    }
    const auto at = std::ranges::find(m_book->lines, EntryId(outward(m_entry)),
                                      [](const DirectiveLine& line) { return line.issued.id; });
    m_line = at == m_book->lines.end() ? nullptr : &*at;
    // What was answered meanwhile is not answered for again unasked.
    std::set<ItemId> kept;
    if (m_line)
        for (const auto* row : m_line->rows)
            if (m_ticked.contains(row->item->id) && isUnanswered(*row))
                kept.insert(row->item->id);
    m_ticked = std::move(kept);
    showHeld();
}

void DirectivesDesk::showHeld() {
    std::vector<HeldItem> held;
    if (m_line)
        for (const auto* row : m_line->rows)
            if (isOfLeaf(*row))
                held.push_back(heldFrom(*row, isAnswerable(), m_ticked.contains(row->item->id)));
    m_held.show(std::move(held));
    emit changed();
}

bool DirectivesDesk::isOfLeaf(const DirectiveRow& row) const {
    const auto share = shareOf(row);
    return m_leaf == 1   ? share == DirectiveShare::Unknown
           : m_leaf == 2 ? share == DirectiveShare::NotBound
                         : share < DirectiveShare::Unknown;
}

void DirectivesDesk::show(const QString& entry) {
    if (entry != m_entry) {
        m_ticked.clear();
        m_leaf = 0;
    }
    m_entry = entry;
    look();
}

void DirectivesDesk::showNumber(const QString& number) {
    m_wanted = number;
    m_ticked.clear();
    m_leaf = 0;
    look();
}

void DirectivesDesk::setLeaf(int leaf) {
    if (leaf == m_leaf)
        return;
    m_leaf = leaf;
    m_ticked.clear(); // what is out of sight is not answered for
    showHeld();
}

void DirectivesDesk::toggle(const QString& item) {
    const ItemId id(outward(item));
    if (m_ticked.erase(id) == 0)
        m_ticked.insert(id);
    showHeld();
}

std::vector<const DirectiveRow*> DirectivesDesk::openRows() const {
    std::vector<const DirectiveRow*> rows;
    if (m_line && isAnswerable())
        for (const auto* row : m_line->rows)
            if (isOfLeaf(*row) && isUnanswered(*row))
                rows.push_back(row);
    return rows;
}

int DirectivesDesk::open() const { return static_cast<int>(openRows().size()); }

void DirectivesDesk::tickOpen() {
    const auto rows = openRows();
    const bool all =
        std::ranges::all_of(rows, [this](const DirectiveRow* row) { return m_ticked.contains(row->item->id); });
    m_ticked.clear();
    if (!all)
        for (const auto* row : rows)
            m_ticked.insert(row->item->id);
    showHeld();
}

QStringList DirectivesDesk::ticked() const {
    QStringList items;
    if (m_line)
        for (const auto* row : m_line->rows) // in the order in which they are shown
            if (m_ticked.contains(row->item->id))
                items += inward(row->item->id.text());
    return items;
}

bool DirectivesDesk::isAnswerable() const { return m_line && m_line->life != DirectiveRow::Life::Superseded; }
QString DirectivesDesk::name() const { return m_line ? DirectiveWords::name(m_line->issued.body) : QString(); }
QString DirectivesDesk::number() const { return m_line ? inward(m_line->issued.body.directive.text()) : QString(); }
QString DirectivesDesk::revision() const { return m_line ? inward(m_line->issued.body.revision) : QString(); }
QString DirectivesDesk::title() const { return m_line ? inward(m_line->issued.body.title) : QString(); }
QString DirectivesDesk::applies() const {
    return m_line ? DirectiveWords::applies(m_line->issued.body.applies) : QString();
}
QString DirectivesDesk::rule() const { return m_line ? DirectiveWords::rule(m_line->issued.body) : QString(); }
QString DirectivesDesk::source() const { return m_line ? inward(m_line->issued.body.source) : QString(); }

QString DirectivesDesk::about() const {
    return m_line ? joined({DirectiveWords::about(*m_line), tr("issued in %1").arg(inward(m_line->issued.body.state))},
                           QStringLiteral(" · "))
                  : QString();
}

QString DirectivesDesk::supersedes() const {
    QStringList numbers;
    if (m_line)
        for (const auto& each : m_line->issued.body.supersedes)
            numbers += inward(each.text());
    return numbers.join(QStringLiteral(", "));
}

}
