// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/fabric_reader.h"

#include <algorithm>
#include <limits>
#include <string>

namespace crownring {

namespace {

constexpr auto noItem = std::numeric_limits<std::int64_t>::max();
constexpr int mostPanels = 1000; // as entries may name them

std::string scoped(bool one, std::string columns, const char* table) {
    return "SELECT item_no, at, entry_id, " + std::move(columns) + " FROM " + table +
           (one ? " WHERE item_no = ?" : "") + " ORDER BY item_no, at, entry_id";
}

/// The number of a gore or of a row of panels.
std::optional<int> count(Statement& row) {
    const auto count = row.read<std::optional<int>>();
    if (count && (*count < 1 || *count > mostPanels))
        throw row.unread();
    return count;
}

/// A place on a basket, or a zone of an envelope; none is written of its body. What is on a basket has no gore.
void readPart(Statement& row, PanelPlace& place) {
    const auto written = row.read<std::optional<std::string>>();
    if (!written)
        return;
    if (const auto basket = basketPlaceFrom(*written); basket && !place.gore && !place.row)
        place.basket = basket;
    else if (const auto zone = zoneFrom(*written); zone && *zone != Zone::Envelope)
        place.zone = *zone;
    else
        throw row.unread();
}

void read(Statement& row, ReadingTaken& reading) {
    row.into(reading.quantity);
    reading.value = row.read<double>();
    reading.held = row.read<bool>();
    reading.below = row.read<std::optional<double>>();
    row.into(reading.unit);
    reading.place = {};
    reading.place.gore = count(row);
    reading.place.row = count(row);
    auto& conditions = reading.conditions;
    conditions.direction = row.read<std::optional<std::string>>();
    conditions.jaw = row.read<std::optional<Millimetres>>();
    conditions.pressure = row.read<std::optional<Pascals>>();
    conditions.area = row.read<std::optional<SquareCentimetres>>();
    row.into(reading.method);
    reading.inspection = row.read<std::optional<InspectionId>>();
    row.into(reading.line);
    reading.tester = row.read<std::optional<TesterId>>();
    reading.confirmed = row.read<bool>();
    readPart(row, reading.place);
}

void read(Statement& row, RepairMade& made) {
    row.into(made.method);
    made.place = {};
    made.place.gore = count(row);
    made.place.row = count(row);
    made.width = row.read<std::optional<Millimetres>>();
    made.height = row.read<std::optional<Millimetres>>();
    row.into(made.lot);
    made.defect = row.read<std::optional<DefectId>>();
    made.inspection = row.read<std::optional<InspectionId>>();
    readPart(row, made.place);
}

void read(Statement& row, FabricStated& stated) {
    row.into(stated.lot);
    row.into(stated.fabric);
    stated.firstGore = count(row);
    stated.lastGore = count(row);
    stated.firstRow = count(row);
    stated.lastRow = count(row);
}

}

/// Rows of one projection in the order of items; stands before the first row of the item that comes next.
template <class Body>
class FabricReader::Rows {
public:
    Rows(const Connection& connection, bool one, const char* columns, const char* table, Tally& tally)
        : m_statement(connection, scoped(one, columns, table).c_str()), m_tally(tally) {}

    template <class... Values>
    void start(const Values&... values) {
        m_statement.run(values...);
        step();
    }
    [[nodiscard]] std::int64_t item() const { return m_item; }
    /// All of `item` until the day's end, into the memory of the item before where that is large enough.
    void take(std::int64_t item, const ItemId& id, Moment end, std::vector<Stamped<Body>>& into) {
        std::size_t taken = 0;
        for (; m_item == item; step()) {
            const auto at = m_statement.read<Moment>();
            if (!(at < end))
                continue;
            if (taken == into.size())
                into.emplace_back();
            auto& [stamp, body] = into[taken++];
            stamp.at = at;
            stamp.id = m_statement.read<EntryId>();
            body.item = id;
            read(m_statement, body);
        }
        into.resize(taken);
    }

private:
    void step() {
        if (!m_statement.next()) {
            m_item = noItem;
            return;
        }
        m_tally.add(m_statement.digest());
        m_item = m_statement.read<std::int64_t>();
    }

    Statement m_statement;
    Tally& m_tally;
    std::int64_t m_item = noItem;
};

class FabricReader::Pass {
public:
    Pass(const Connection& connection, bool one)
        : m_readings(connection, one,
                     "quantity, value, held, below, unit, gore, panel_row, direction, jaw_mm, pressure_pa, area_cm2,"
                     " method, inspection, line, tester, confirmed, zone",
                     "reading", m_tally),
          m_repairs(connection, one, "method, gore, panel_row, width_mm, height_mm, lot, defect, inspection, zone",
                    "repair", m_tally),
          m_stated(connection, one, "lot, fabric, first_gore, last_gore, first_row, last_row", "fabric_stated",
                   m_tally) {}

    template <class... Item>
    Tally run(Names& names, Moment end, const Take& take, const Item&... one) {
        m_tally = {};
        m_readings.start(one...);
        m_repairs.start(one...);
        m_stated.start(one...);
        FabricHistory history;
        for (;;) {
            const auto item = std::min({m_readings.item(), m_repairs.item(), m_stated.item()});
            if (item == noItem)
                return m_tally;
            history.item = ItemId(names.text(item));
            m_readings.take(item, history.item, end, history.readings);
            m_repairs.take(item, history.item, end, history.repairs);
            m_stated.take(item, history.item, end, history.stated);
            if (!history.readings.empty() || !history.repairs.empty() || !history.stated.empty())
                take(history);
        }
    }

private:
    Tally m_tally;
    Rows<ReadingTaken> m_readings;
    Rows<RepairMade> m_repairs;
    Rows<FabricStated> m_stated;
};

FabricReader::FabricReader(const Connection& connection, Names& names) : m_connection(connection), m_names(names) {}

FabricReader::~FabricReader() = default;

Account FabricReader::readAll(CivilDate on, const Take& take) {
    m_names.readAll();
    return {Part::Fabric, Account::all, Pass(m_connection, false).run(m_names, Moment::endOf(on), take)};
}

Account FabricReader::readOne(std::int64_t item, CivilDate on, const Take& take) {
    if (!m_one)
        m_one = std::make_unique<Pass>(m_connection, true);
    return {Part::Fabric, item, m_one->run(m_names, Moment::endOf(on), take, item)};
}

}
