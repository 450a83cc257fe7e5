// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table/fabric_table.h"

#include "exchange/table/csv_table.h"
#include "exchange/text/plain_text.h"
#include "problem/faults/table_fault.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

namespace crownring {

namespace {

enum Column { Envelope, Lot, Fabric, Hours, Row, Dose, Load, Outcome, ColumnCount };
constexpr std::array<std::string_view, ColumnCount> columnNames{"envelope", "lot",  "fabric", "hours",
                                                                "row",      "dose", "load",   "outcome"};
constexpr double unbounded = std::numeric_limits<double>::max();

using Places = std::array<std::size_t, ColumnCount>; ///< in the file

struct Pull {
    int line = 0;
    std::string envelope, lot, fabric;
    double hours = 0, row = 1, dose = 0;
    Observation observed;
};

Result<Places> placesOf(const CsvTable& table, const std::string& file) {
    Places places{};
    if (table.rows.empty())
        return problem(TableFault::EmptyTable, {}, {file, 0, {}});
    const auto& heading = table.rows.front();
    for (std::size_t column = 0; column < ColumnCount; ++column) {
        const auto named = [&](const std::string& field) { return trimmed(field) == columnNames[column]; };
        const auto found = std::ranges::find_if(heading.fields, named);
        if (std::ranges::count_if(heading.fields, named) != 1)
            return problem(TableFault::ColumnNotOnce, {columnNames[column], listed(columnNames)},
                           {file, heading.line, std::string(columnNames[column])});
        places[column] = static_cast<std::size_t>(found - heading.fields.begin());
    }
    return places;
}

/// One row at a time; all that is wrong is gathered.
class PullReader {
public:
    PullReader(const Places& places, const std::string& file, std::vector<Problem>& problems)
        : m_places(places), m_file(file), m_problems(problems) {}

    std::optional<Pull> read(const CsvRow& row) {
        m_row = &row;
        const auto before = m_problems.size();
        Pull pull;
        pull.line = row.line;
        pull.envelope = text(Envelope);
        pull.lot = named(Lot);
        pull.fabric = named(Fabric);
        pull.hours = number(Hours, 0, unbounded);
        pull.dose = number(Dose, 0, unbounded);
        const bool isCoupon = pull.envelope.empty();
        pull.row = isCoupon ? 1 : number(Row, 0, 1);
        if (isCoupon && pull.hours + pull.dose > 0)
            refuse(Hours, TableFault::CouponHasFlown);
        const double load = number(Load, std::numeric_limits<double>::min(), unbounded);
        const auto outcome = text(Outcome);
        if (outcome != "held" && outcome != "broke")
            refuse(Outcome, TableFault::NeitherHeldNorBroke, {outcome});
        pull.observed = {outcome == "held" ? Seen::AtLeast : Seen::Exactly, std::log(load), 0};
        return m_problems.size() == before ? std::optional(std::move(pull)) : std::nullopt;
    }

private:
    std::string text(Column column) const {
        const auto place = m_places[column];
        return place < m_row->fields.size() ? std::string(trimmed(m_row->fields[place])) : std::string();
    }
    std::string named(Column column) {
        auto name = text(column);
        if (name.empty())
            refuse(column, TableFault::NotNamed, {columnNames[column]});
        return name;
    }
    double number(Column column, double least, double most) {
        const auto written = text(column);
        double value = 0;
        const auto end = written.data() + written.size();
        const auto [at, error] = std::from_chars(written.data(), end, value);
        if (error == std::errc() && at == end && std::isfinite(value) && value >= least && value <= most)
            return value;
        refuse(column, TableFault::NoFigureOfAPull, {written, columnNames[column]});
        return 1;
    }
    void refuse(Column column, TableFault fault, Arguments arguments = {}) {
        m_problems.push_back(
            Problem{fault, std::move(arguments), {m_file, m_row->line, std::string(columnNames[column])}});
    }

    const Places& m_places;
    const std::string& m_file;
    std::vector<Problem>& m_problems;
    const CsvRow* m_row = nullptr;
};

/// A slip of the decimal point, or another unit: far from the middle of its fabric's loads.
void refuseSlips(const std::vector<Pull>& pulls, const std::string& file, std::vector<Problem>& problems) {
    constexpr int farOff = 20; // new fabric to worn out is a factor of some 3 to 10
    std::map<std::string, std::vector<double>> loads;
    for (const auto& pull : pulls)
        loads[pull.fabric].push_back(pull.observed.low);
    for (auto& [fabric, all] : loads)
        std::ranges::nth_element(all, all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2));
    for (const auto& pull : pulls) {
        const auto& all = loads[pull.fabric];
        if (std::abs(pull.observed.low - all[all.size() / 2]) > std::log(farOff))
            problems.push_back(
                Problem{TableFault::LoadFarOff, {farOff}, {file, pull.line, std::string(columnNames[Load])}});
    }
}

/// The number of a name; a new name is put at the end.
template <class Key>
std::size_t numberOf(const Key& key, std::map<Key, std::size_t>& numbers) {
    return numbers.emplace(key, numbers.size()).first->second;
}

FabricTable gathered(const std::vector<Pull>& pulls) {
    FabricTable table;
    std::map<std::string, std::size_t> fabrics;
    std::map<std::string, std::size_t> envelopes;
    std::map<std::pair<std::string, std::string>, std::size_t> lots; // of fabric and lot
    std::map<std::pair<std::size_t, std::size_t>, std::size_t> sets; // of envelope and lot
    for (const auto& pull : pulls) {
        const auto fabric = numberOf(pull.fabric, fabrics);
        if (fabric == table.fabrics.size())
            table.fabrics.push_back(pull.fabric);
        const auto lot = numberOf({pull.fabric, pull.lot}, lots);
        if (lot == table.lots.size()) {
            table.lots.push_back(pull.lot);
            table.fleet.fabricOfLot.push_back(fabric);
        }
        if (pull.envelope.empty()) {
            table.fleet.coupons.push_back({lot, pull.observed});
            continue;
        }
        const auto envelope = numberOf(pull.envelope, envelopes);
        if (envelope == table.envelopes.size())
            table.envelopes.push_back(pull.envelope);
        const auto set = numberOf({envelope, lot}, sets);
        if (set == table.envelopeOfSet.size()) {
            table.envelopeOfSet.push_back(envelope);
            table.fleet.lotOfSet.push_back(lot);
            table.useOfSet.push_back({});
        }
        auto& use = table.useOfSet[set];
        use.hours = std::max(use.hours, pull.hours);
        use.dose = std::max(use.dose, pull.dose);
        table.fleet.readings.push_back({set, pull.hours, pull.row, pull.dose, pull.observed});
    }
    table.fleet.fabrics = table.fabrics.size();
    std::ranges::stable_sort(table.fleet.readings, {}, &SetReading::set);
    return table;
}

}

Results<FabricTable> readFabricTable(std::string_view bytes, const std::string& file) {
    const auto table = readCsv(bytes, file);
    if (!table)
        return tl::unexpected(std::vector<Problem>{table.error()});
    const auto places = placesOf(*table, file);
    if (!places)
        return tl::unexpected(std::vector<Problem>{places.error()});
    auto problems = table->badRows;
    std::vector<Pull> pulls;
    PullReader reader(*places, file, problems);
    for (std::size_t at = 1; at < table->rows.size(); ++at)
        if (auto pull = reader.read(table->rows[at]))
            pulls.push_back(std::move(*pull));
    refuseSlips(pulls, file, problems);
    if (!problems.empty())
        return tl::unexpected(std::move(problems));
    return gathered(pulls);
}

}
