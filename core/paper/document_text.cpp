// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/document_text.h"

#include "paper/paper_phrase.h"
#include "paper/wrapping.h"

#include <algorithm>
#include <numeric>

namespace crownring::paper {

namespace {

constexpr std::size_t gap = 2; ///< between two columns
constexpr std::size_t narrowest = 4;

std::string joined(const std::vector<std::string>& lines, std::string_view indent = "") {
    std::string text;
    for (const std::string& line : lines)
        text.append(line.empty() ? "" : indent).append(line).append("\n");
    return text;
}

std::string padded(const std::string& text, std::size_t width, Align align) {
    const std::size_t blanks = width - std::min(width, letters(text));
    const std::size_t before = align == Align::Left ? 0 : align == Align::Right ? blanks : blanks / 2;
    return std::string(before, ' ') + text + std::string(blanks - before, ' ');
}

std::string withoutTrail(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line;
}

/// Columns laid side by side; the widest are narrowed until all fit.
class Grid {
public:
    Grid(const Table& table, std::size_t columns) : m_table(table), m_widths(width(table), 1) {
        for (std::size_t column = 0; column < m_widths.size(); ++column) {
            m_widths[column] = std::max<std::size_t>(letters(title(column)), 1);
            for (const auto& row : table.rows)
                if (column < row.size())
                    for (const std::string& line : wrapped(row[column], columns))
                        m_widths[column] = std::max(m_widths[column], letters(line));
        }
        narrow(columns);
    }

    std::string head() const {
        std::vector<std::string> titles, rules;
        for (std::size_t column = 0; column < m_widths.size(); ++column) {
            titles.push_back(title(column));
            rules.emplace_back(m_widths[column], '-');
        }
        return row(titles) + row(rules);
    }

    std::string row(const std::vector<std::string>& cells) const {
        std::vector<std::vector<std::string>> folded;
        std::size_t height = 1;
        for (std::size_t column = 0; column < cells.size(); ++column) {
            folded.push_back(wrapped(cells[column], m_widths[column]));
            height = std::max(height, folded.back().size());
        }
        std::string text;
        for (std::size_t line = 0; line < height; ++line) {
            std::string one;
            for (std::size_t column = 0; column < folded.size(); ++column)
                one +=
                    (column ? std::string(gap, ' ') : "") +
                    padded(line < folded[column].size() ? folded[column][line] : "", m_widths[column], align(column));
            text += withoutTrail(one) + "\n";
        }
        return text;
    }

private:
    std::string title(std::size_t column) const {
        return column < m_table.columns.size() ? m_table.columns[column].title : std::string();
    }
    Align align(std::size_t column) const {
        return column < m_table.columns.size() ? m_table.columns[column].align : Align::Left;
    }
    void narrow(std::size_t columns) {
        const auto total = [&] { return std::accumulate(m_widths.begin(), m_widths.end(), m_widths.size() * gap); };
        while (total() > columns + gap) {
            auto widest = std::max_element(m_widths.begin(), m_widths.end());
            if (*widest <= narrowest)
                return;
            --*widest;
        }
    }

    const Table& m_table;
    std::vector<std::size_t> m_widths;
};

/// One block as lines, each ended; nothing between blocks.
class Writer {
public:
    Writer(std::size_t columns, const Speech& in) : m_columns(columns), m_in(in) {}

    std::string operator()(const Heading& heading) const {
        const auto lines = wrapped(heading.text, m_columns);
        std::size_t longest = 0;
        for (const std::string& line : lines)
            longest = std::max(longest, letters(line));
        return joined(lines) + std::string(longest, heading.level <= 1 ? '=' : '-') + "\n";
    }
    std::string operator()(const Paragraph& paragraph) const { return joined(wrapped(paragraph.text, m_columns)); }
    std::string operator()(const Facts& facts) const {
        std::vector<std::pair<std::string, std::string>> pairs;
        for (const Fact& fact : facts.facts)
            pairs.emplace_back(fact.label, fact.value);
        return pairsText(pairs);
    }
    std::string operator()(const Table& table) const {
        const Grid grid(table, m_columns);
        std::string text = grid.head();
        for (const auto& row : table.rows)
            text += grid.row(row);
        return table.note.empty() ? text : text + joined(wrapped(table.note, m_columns));
    }
    std::string operator()(const Statement& statement) const {
        std::string text = joined(wrapped(statement.text, m_columns - indent.size()), indent);
        if (!statement.source.empty())
            text += joined(wrapped("(" + statement.source + ")", m_columns - indent.size()), indent);
        return statement.note.empty() ? text : text + joined(wrapped(statement.note, m_columns));
    }
    std::string operator()(const Signature& signature) const {
        std::vector<std::pair<std::string, std::string>> pairs;
        for (const SignatureLine& line : signature.lines)
            pairs.emplace_back(line.label, line.value.empty() ? std::string(30, '_') : line.value);
        return (signature.title.empty() ? "" : joined(wrapped(signature.title, m_columns))) + pairsText(pairs);
    }
    std::string operator()(const EnvelopeMapFigure& map) const {
        std::string text = joined(wrapped(map.caption, m_columns));
        for (const std::string& line : map.legend)
            text += joined(wrapped(line, m_columns));
        return text + (*this)(asTable(map, m_in));
    }
    std::string operator()(const PageBreak&) const { return {}; }
    std::string operator()(const Checks& checks) const { return (*this)(asTable(checks, m_in)); }
    std::string operator()(const Labels& labels) const {
        std::string text;
        for (const Label& label : labels.labels) {
            std::vector<std::pair<std::string, std::string>> pairs;
            for (const Fact& fact : label.facts)
                pairs.emplace_back(fact.label, fact.value);
            text += (text.empty() ? "" : "\n") + (*this)(Heading{2, label.title}) +
                    joined(wrapped(label.subtitle, m_columns)) + pairsText(pairs) +
                    joined(wrapped(label.status, m_columns));
            if (!label.note.empty())
                text += joined(wrapped(label.note, m_columns));
            if (!label.code.empty())
                text += joined(wrapped("[" + label.code + "]", m_columns));
        }
        return text;
    }

private:
    static constexpr std::string_view indent = "  | ";

    std::string pairsText(const std::vector<std::pair<std::string, std::string>>& pairs) const {
        std::size_t longest = 0;
        for (const auto& [label, value] : pairs)
            longest = std::max(longest, letters(label));
        longest = std::min(longest, m_columns / 2);
        std::string text;
        for (const auto& [label, value] : pairs) {
            const auto left = wrapped(label, longest), right = wrapped(value, m_columns - longest - gap);
            for (std::size_t line = 0; line < std::max(left.size(), right.size()); ++line)
                text += withoutTrail(padded(line < left.size() ? left[line] : "", longest + gap, Align::Left) +
                                     (line < right.size() ? right[line] : "")) +
                        "\n";
        }
        return text;
    }

    std::size_t m_columns;
    const Speech& m_in;
};

}

std::string toText(const Document& document, const Speech& in, std::size_t columns) {
    const Writer writer(std::max<std::size_t>(columns, 24), in);
    std::string text = writer(Heading{1, document.title});
    if (!document.subtitle.empty())
        text += writer(Paragraph{document.subtitle, Emphasis::Plain});
    const auto record = document.recordId.empty()
                            ? std::string()
                            : writer(Facts{{{in.say(PaperPhrase::Record), document.recordId}}, 1});
    text += record;
    for (const Block& block : document.blocks)
        if (const std::string lines = std::visit(writer, block); !lines.empty())
            text += "\n" + lines;
    if (!document.caution.empty())
        text += "\n" + writer(Paragraph{document.caution, Emphasis::Plain});
    return text + record;
}

}
