// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/composition.h"

#include "print/label_row.h"
#include "print/map_figure.h"
#include "print/sheet.h"
#include "print/signature_box.h"
#include "print/statement_box.h"
#include "print/table_rows.h"
#include "print/text_line.h"
#include "print/typeface.h"

#include <algorithm>
#include <span>
#include <utility>

namespace crownring::print {

namespace {

constexpr std::size_t shortParagraph = 4; ///< lines that are not split

class Setter {
public:
    explicit Setter(QSizeF body) : m_body(body) {}

    Flow take() { return std::move(m_flow); }

    void title(const paper::Document& document) {
        heading(document.title, {typeFont(titleSize, Face::Bold), ink}, 0);
        if (!document.subtitle.empty())
            heading(document.subtitle, {typeFont(bodySize + 1), softInk}, points(3));
        m_gap = points(9);
    }

    void operator()(const paper::Heading& words) {
        const int level = std::clamp(words.level, 1, 3);
        const double size = level == 1 ? 13.5 : level == 2 ? 11.5 : bodySize;
        m_gap = std::max(m_gap, points(level == 1 ? 16 : 11));
        heading(words.text, {typeFont(size, Face::Bold), level == 1 ? accent : ink}, m_gap);
        m_gap = points(4);
    }

    void operator()(const paper::Paragraph& paragraph) {
        const bool quiet = paragraph.emphasis == paper::Emphasis::Quiet;
        const Face face = paragraph.emphasis == paper::Emphasis::Strong ? Face::Bold : Face::Regular;
        const TextLines lines = setText(
            paragraph.text, m_body.width(),
            {typeFont(quiet ? smallSize : bodySize, face), quiet ? softInk : ink, Qt::AlignLeft, quiet ? 1.15 : 1.25});
        double before = m_gap;
        for (std::size_t line = 0; line < lines.size(); ++line) {
            const bool last = line + 1 == lines.size();
            const bool keeps = !last && (lines.size() <= shortParagraph || line == 0 || line + 2 == lines.size());
            add({.piece = std::make_shared<TextLine>(lines[line]), .before = before, .keepsToNext = keeps});
            before = 0;
        }
        m_gap = points(6);
    }

    void operator()(const paper::Facts& facts) {
        rows([&](Flow& flow) { addFacts(flow, facts, m_body); });
    }
    void operator()(const paper::Table& table) {
        rows([&](Flow& flow) { addTable(flow, table, m_body); });
    }
    void operator()(const paper::Checks& checks) {
        rows([&](Flow& flow) { addChecks(flow, checks, m_body); });
    }

    void operator()(const paper::Statement& statement) {
        for (StatementBox& box : statementBoxes(statement, m_body.width(), m_body.height() * 0.6))
            boxed({.piece = std::make_shared<StatementBox>(std::move(box)), .keepsToNext = true});
    }
    void operator()(const paper::Signature& signature) {
        boxed({.piece = std::make_shared<SignatureBox>(signature, m_body.width())});
    }
    void operator()(const paper::Labels& labels) {
        const std::span all(labels.labels);
        for (std::size_t first = 0; first < all.size(); first += LabelRow::abreast)
            boxed({.piece = std::make_shared<LabelRow>(
                       all.subspan(first, std::min(LabelRow::abreast, all.size() - first)), m_body.width())});
    }
    void operator()(const paper::EnvelopeMapFigure& map) {
        const double most = m_body.height() - points(110); // title, subtitle and a line have room above it
        boxed({.piece = std::make_shared<MapFigure>(map, m_body.width(), most)});
    }

    void operator()(const paper::PageBreak&) {} // divides the document into its parts

private:
    void add(Slab slab) { m_flow.push_back(std::move(slab)); }

    void heading(const std::string& words, const TextStyle& style, double before) {
        for (const TextLine& line : setText(words, m_body.width(), style)) {
            add({.piece = std::make_shared<TextLine>(line), .before = before, .keepsToNext = true});
            before = 0;
        }
    }

    void boxed(Slab slab) {
        slab.before = std::max(m_gap, points(6));
        add(std::move(slab));
        m_gap = points(9);
    }

    template <class Function>
    void rows(const Function& fill) {
        Flow table;
        fill(table);
        if (table.empty())
            return;
        table.front().before += m_gap;
        for (Slab& slab : table)
            add(std::move(slab));
        m_gap = points(10);
    }

    QSizeF m_body;
    Flow m_flow;
    double m_gap = 0; ///< asked for under the last block
};

}

std::vector<Flow> compose(const paper::Document& document, QSizeF body) {
    std::vector<Flow> parts;
    Setter setter(body);
    setter.title(document);
    for (const paper::Block& block : document.blocks) {
        if (std::holds_alternative<paper::PageBreak>(block)) {
            parts.push_back(std::exchange(setter, Setter(body)).take());
            continue;
        }
        std::visit(setter, block);
    }
    parts.push_back(setter.take());
    return parts;
}

}
