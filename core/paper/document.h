// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is put on paper, as a plain tree: no renderer, no fonts, no page sizes. The app draws it to PDF; `toText`,
/// `toJson` and `csv` give the same for a terminal, a program and a spreadsheet. All texts are UTF-8 and stand as they
/// are printed.

#include "problem/speech.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace crownring::paper {

struct Heading {
    int level = 1; ///< 1 to 3
    std::string text;
    bool operator==(const Heading&) const = default;
};

enum class Emphasis { Plain, Strong, Quiet };

struct Paragraph {
    std::string text; ///< "\n" begins a new line
    Emphasis emphasis = Emphasis::Plain;
    bool operator==(const Paragraph&) const = default;
};

struct Fact {
    std::string label, value;
    bool operator==(const Fact&) const = default;
};

/// Labels with their values, in one or two columns, read down the first column and then the second.
struct Facts {
    std::vector<Fact> facts;
    int columns = 1;
    double labelShare = 0; ///< of a column's width, between 0 and 1; 0: as usual
    bool small = false;    ///< as notes are set
    double firstShare = 0; ///< of the width for the first of two columns; 0: half
    bool operator==(const Facts&) const = default;
};

enum class Align { Left, Right, Centre };

struct Column {
    std::string title;
    Align align = Align::Left;
    double share = 1; ///< of the width, against the shares of the others; above 0
    bool operator==(const Column&) const = default;
};

/// A row may have fewer cells than there are columns, or more: none is lost.
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows;
    std::string note; ///< under the table; empty: none
    bool operator==(const Table&) const = default;
};

/// Wording that a rule prescribes, to be signed as it stands.
struct Statement {
    std::string text;
    std::string source; ///< the rule that prescribes it; empty: not printed
    std::string note{}; ///< that stands with it in one piece: who had confirmed the wording
    bool operator==(const Statement&) const = default;
};

struct SignatureLine {
    std::string label;
    std::string value;   ///< empty: a rule to write on
    bool byHand = false; ///< room for a hand to sign
    bool operator==(const SignatureLine&) const = default;
};

/// Who signs, in which capacity, with which licence or certificate, when; never split over two pages.
struct Signature {
    std::string title;
    std::vector<SignatureLine> lines;
    bool operator==(const Signature&) const = default;
};

/// Passed and failed are told by a sign as well as by words, so that a copy in black and white says the same.
enum class PanelVerdict { Unjudged, Passed, Failed };

/// The reading of one panel.
struct Panel {
    int gore = 1;     ///< from 1 around
    int row = 1;      ///< from 1 at the mouth upward
    std::string text; ///< the figure alone; the unit stands in the legend
    PanelVerdict verdict = PanelVerdict::Unjudged;
    bool bound = false; ///< a load that was held: at least this much
    double shade = 0;   ///< from 0 (as paper) to 1 (darkest)
    bool operator==(const Panel&) const = default;
};

/// The unrolled envelope with its readings where they were taken. Panels outside the gores and rows are not lost: they
/// are listed under the map.
struct EnvelopeMapFigure {
    int gores = 0, rows = 0;
    std::vector<Panel> panels;
    std::vector<std::string> legend; ///< lines: the quantity with its unit, its limit, the conditions of the test
    std::string caption;
    bool operator==(const EnvelopeMapFigure&) const = default;
};

struct PageBreak {
    bool operator==(const PageBreak&) const = default;
};

enum class CheckMark { Open, Done, NotApplicable };

struct CheckLine {
    std::string text;
    std::string source; ///< where the line comes from
    CheckMark mark = CheckMark::Open;
    std::string finding;
    std::string by;      ///< who did it
    std::string items{}; ///< on which of them it was so; empty where it is no question
    bool operator==(const CheckLine&) const = default;
};

struct Checks {
    std::vector<CheckLine> lines;
    bool operator==(const Checks&) const = default;
};

/// To be cut out and hung on an item.
struct Label {
    std::string title;    ///< the item
    std::string subtitle; ///< what it is
    std::vector<Fact> facts;
    std::string status; ///< as large as the title: "released", "NOT RELEASED"; empty: it says nothing of that
    bool bars = false;  ///< told by a frame round the status too
    std::string note;
    std::string code{}; ///< what a machine reads off it; empty: nothing
    bool operator==(const Label&) const = default;
};

struct Labels {
    std::vector<Label> labels;
    bool operator==(const Labels&) const = default;
};

using Block =
    std::variant<Heading, Paragraph, Facts, Table, Statement, Signature, EnvelopeMapFigure, PageBreak, Checks, Labels>;

struct Document {
    std::string title, subtitle;
    std::string recordId; ///< of what the paper states; stands on every page
    std::string caution;  ///< stands on every page
    std::vector<Block> blocks;
    bool operator==(const Document&) const = default;
};

/// "open", "done", "n.a."
[[nodiscard]] std::string_view checkMarkName(CheckMark mark);
[[nodiscard]] std::string checkMarkText(CheckMark mark, const Speech& in);

/// "passed", "failed", or nothing.
[[nodiscard]] std::string_view verdictName(PanelVerdict verdict);
[[nodiscard]] std::string verdictText(PanelVerdict verdict, const Speech& in);

/// The figure as it is printed: "≥ 178" for a load that was held.
[[nodiscard]] std::string readingText(const Panel& panel);

[[nodiscard]] bool isOnMap(const EnvelopeMapFigure& map, const Panel& panel);

/// The number of columns that a table needs for its columns and for its longest row.
[[nodiscard]] std::size_t width(const Table& table);

/// Some line says on which items.
[[nodiscard]] bool namesItems(const Checks& checks);

/// The same as a table: gore, row, reading, verdict; line, items where any line names some, source, mark, finding, by.
[[nodiscard]] Table asTable(const EnvelopeMapFigure& map, const Speech& in);
[[nodiscard]] Table asTable(const Checks& checks, const Speech& in);

}
