// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/journal/journal_table.h"

#include "record/chain/recorded.h"

#include <algorithm>
#include <set>
#include <utility>

namespace crownring {

namespace {

#define WRITTEN_COLUMNS "e.entry_no, e.body, e.entry_id, e.kind, e.dated_on"
#define LINE_COLUMNS "w.writer_id, e.recorded_at, e.hash, " WRITTEN_COLUMNS
#define LINK_COLUMNS "e.sequence, p.hash, e.body"

QByteArray bytes(const Digest& digest) {
    return {reinterpret_cast<const char*>(digest.data()), static_cast<qsizetype>(digest.size())};
}

Digest digestFrom(const QByteArray& bytes) {
    Digest digest{};
    if (static_cast<std::size_t>(bytes.size()) == digest.size())
        std::copy(bytes.begin(), bytes.end(), digest.begin());
    return digest;
}

/// Reads the WRITTEN_COLUMNS.
Written writtenFrom(Statement& row) {
    Written written;
    written.number = row.read<std::int64_t>();
    auto body = row.read<std::string>();
    if (auto entry = entryFrom(body)) {
        written.entry = std::move(*entry);
        for (int beside = 0; beside < 3; ++beside)
            row.skip();
    } else {
        written.entry.id = row.read<EntryId>();
        written.unread = Unread{row.read<std::string>(), std::move(body), std::move(entry.error())};
        written.entry.on = CivilDate::parse(row.read<std::string>()).value_or(CivilDate());
    }
    return written;
}

/// Reads the LINK_COLUMNS behind a line. @throws StoreError where the line is not what was written
void prove(const JournalLine& line, const EntryId& asked, Statement& row) {
    const auto sequence = row.read<std::int64_t>();
    const auto previous = digestFrom(row.read<QByteArray>());
    const Link link{line.writer, static_cast<std::uint64_t>(sequence), line.recordedAt, previous};
    if (line.entry.id != asked || entryHash(link, row.read<std::string>()) != line.hash)
        throw StoreError(StoreFault::EntryAltered, {asked});
}

std::string textOf(const JournalLine& line) { return line.unread ? line.unread->text : canonicalText(line.entry); }

bool isAscii(const QString& word) {
    return std::all_of(word.begin(), word.end(), [](QChar each) { return each.unicode() < 128; });
}

/// What LIKE can tell on both engines. They fold the letters beyond ASCII differently or not at all, so such a letter
/// stands for anything there; `holdsAll` looks at it.
std::string patternOf(const QString& word) {
    QString pattern;
    for (const QChar each : word) {
        if (each == QLatin1Char('\\') || each == QLatin1Char('%') || each == QLatin1Char('_'))
            pattern += QLatin1Char('\\');
        pattern += each.unicode() < 128 ? each : QLatin1Char('%');
    }
    return (QLatin1Char('%') + pattern + QLatin1Char('%')).toStdString();
}

bool holdsAll(const std::string& body, const QStringList& words) {
    const auto folded = QString::fromStdString(body).toLower();
    return std::all_of(words.begin(), words.end(), [&](const QString& word) { return folded.contains(word); });
}

}

JournalTable::JournalTable(const Connection& connection)
    : m_connection(connection), m_lastNumber(connection, "SELECT COALESCE(MAX(entry_no), 0) FROM entry"),
      m_lastRecorded(connection, "SELECT e.recorded_at FROM writer w JOIN entry e ON e.writer_no = w.writer_no"
                                 " AND e.sequence = w.last_sequence WHERE w.writer_id = ?"),
      m_head(connection, "SELECT writer_no, last_sequence, last_hash FROM writer WHERE writer_id = ?"),
      m_putWriter(connection, "INSERT INTO writer (writer_no, writer_id, last_sequence, last_hash)"
                              " SELECT COALESCE(MAX(writer_no), 0) + 1, ?, 0, ? FROM writer"),
      m_setHead(connection, "UPDATE writer SET last_sequence = ?, last_hash = ? WHERE writer_no = ?"),
      m_put(connection, "INSERT INTO entry (entry_no, entry_id, kind, dated_on, writer_no, sequence, recorded_at, hash,"
                        " body) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_has(connection, "SELECT 1 FROM entry WHERE entry_id = ?"),
      m_holds(connection, "SELECT 1 FROM entry e JOIN writer w ON w.writer_no = e.writer_no"
                          " WHERE w.writer_id = ? AND e.sequence = ? AND e.hash = ?"),
      m_find(connection, "SELECT " WRITTEN_COLUMNS " FROM entry e WHERE e.entry_id = ?"),
      m_line(connection, "SELECT " LINE_COLUMNS ", " LINK_COLUMNS " FROM entry e JOIN writer w"
                         " ON w.writer_no = e.writer_no LEFT JOIN entry p ON p.writer_no = e.writer_no"
                         " AND p.sequence = e.sequence - 1 WHERE e.entry_id = ?"),
      m_each(connection, "SELECT " WRITTEN_COLUMNS " FROM entry e ORDER BY e.entry_no"),
      m_putAmendment(connection, "INSERT INTO amendment (target_id, entry_no) VALUES (?, ?)"),
      m_amendments(connection,
                   "SELECT a.entry_no, " LINE_COLUMNS ", " LINK_COLUMNS " FROM amendment a LEFT JOIN entry e"
                   " ON e.entry_no = a.entry_no LEFT JOIN writer w ON w.writer_no = e.writer_no"
                   " LEFT JOIN entry p ON p.writer_no = e.writer_no AND p.sequence = e.sequence - 1"
                   " WHERE a.target_id = ?"),
      m_heads(connection, "SELECT writer_no, writer_id, last_sequence, last_hash FROM writer"),
      m_verify(connection, "SELECT entry_no, entry_id, kind, dated_on, writer_no, sequence, recorded_at, hash, body"
                           " FROM entry ORDER BY entry_no") {}

std::string JournalTable::lastRecorded(const WriterId& writer) {
    m_lastRecorded.run(writer);
    auto recorded = m_lastRecorded.next() ? m_lastRecorded.read<std::string>() : std::string();
    m_lastRecorded.finish();
    return recorded;
}

void JournalTable::beginWriting(const WriterId& writer, const std::string& now) {
    m_writing = true;
    m_writer = writer;
    m_recordedAt = recordedAfter(lastRecorded(writer), now);
    m_lastNumber.run();
    m_lastNumber.next();
    m_number = m_lastNumber.read<std::int64_t>();
    m_lastNumber.finish();
    m_head.run(writer);
    if (!m_head.next()) {
        m_putWriter.run(writer, bytes(Digest{}));
        m_head.run(writer);
        m_head.next();
    }
    m_end.writerNo = m_head.read<std::int64_t>();
    m_end.sequence = m_head.read<std::int64_t>();
    m_end.hash = digestFrom(m_head.read<QByteArray>());
    m_head.finish();
}

std::int64_t JournalTable::write(const Entry& entry, const std::string& body) {
    const Link link{m_writer, static_cast<std::uint64_t>(m_end.sequence + 1), m_recordedAt, m_end.hash};
    const auto hash = entryHash(link, body);
    m_put.run(m_number + 1, entry.id, std::string(kindName(entry.body)), entry.on.iso(), m_end.writerNo,
              m_end.sequence + 1, m_recordedAt, bytes(hash), body);
    ++m_end.sequence;
    m_end.hash = hash;
    return ++m_number;
}

Acknowledged JournalTable::finishWriting() {
    m_setHead.run(m_end.sequence, bytes(m_end.hash), m_end.writerNo);
    return {m_writer, static_cast<std::uint64_t>(m_end.sequence), m_end.hash};
}

void JournalTable::forget() {
    m_writing = false;
    m_around.clear();
}

bool JournalTable::has(const EntryId& id) {
    m_has.run(id);
    const bool found = m_has.next();
    m_has.finish();
    return found;
}

bool JournalTable::holds(const Acknowledged& end) {
    if (!std::in_range<std::int64_t>(end.sequence))
        return false;
    m_holds.run(end.writer, static_cast<std::int64_t>(end.sequence), bytes(end.hash));
    const bool found = m_holds.next();
    m_holds.finish();
    return found;
}

std::optional<Written> JournalTable::find(const EntryId& id) {
    m_find.run(id);
    if (!m_find.next())
        return std::nullopt;
    auto written = writtenFrom(m_find);
    m_find.finish();
    return written;
}

JournalLine JournalTable::lineFrom(Statement& row) {
    JournalLine line;
    line.writer = row.read<WriterId>();
    line.recordedAt = row.read<std::string>();
    line.hash = digestFrom(row.read<QByteArray>());
    auto written = writtenFrom(row);
    line.number = written.number;
    line.entry = std::move(written.entry);
    line.unread = std::move(written.unread);
    return line;
}

void JournalTable::addState(JournalLine& line) {
    if (const auto known = m_around.find(line.entry.id); known != m_around.end())
        addState(line, known->second->tree.now(line.entry.id));
    else if (const auto amendments = amendmentsOf(line.entry.id); !amendments.empty())
        addState(line, amended(line.entry, amendments).entry);
}

void JournalTable::addState(JournalLine& line, const std::optional<Entry>& now) {
    line.voided = !now;
    if (!line.unread && now && *now != line.entry)
        line.current = now;
}

std::optional<JournalLine> JournalTable::line(const EntryId& id) {
    m_line.run(id);
    if (!m_line.next())
        return std::nullopt;
    auto line = lineFrom(m_line);
    prove(line, id, m_line);
    m_line.finish();
    addState(line);
    return line;
}

std::optional<JournalLine> JournalTable::root(const EntryId& id) {
    const auto amended = around(id);
    if (!amended)
        return std::nullopt;
    const auto& original = amended->tree.original().id;
    m_line.run(original);
    if (!m_line.next())
        throw StoreError(StoreFault::JournalLacks, {original});
    auto line = lineFrom(m_line);
    prove(line, original, m_line);
    m_line.finish();
    addState(line, amended->tree.now());
    return line;
}

std::optional<Entry> JournalTable::before(const EntryId& amendment) {
    const auto whole = around(amendment);
    if (!whole || whole->unread || whole->tree.original().id == amendment)
        return std::nullopt;
    AmendmentTree until(whole->tree.original());
    for (const auto& id : whole->tree.ids()) {
        if (id == amendment)
            break;
        until.add(whole->tree.said(id));
    }
    return until.now();
}

std::vector<JournalLine> JournalTable::lines(const JournalQuery& query) {
    std::string where = "e.entry_no < ?";
    const auto words = QString::fromStdString(query.text).toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const bool plain = std::all_of(words.begin(), words.end(), isAscii);
    for (qsizetype i = 0; i < words.size(); ++i)
        where += " AND lower(e.body) LIKE ? ESCAPE '\\'";
    if (query.kind)
        where += " AND e.kind = ?";
    const auto sql = "SELECT " LINE_COLUMNS " FROM entry e JOIN writer w ON w.writer_no = e.writer_no WHERE " + where +
                     " ORDER BY e.entry_no DESC LIMIT ?";
    Statement statement(m_connection, sql.c_str());
    statement.bind(query.before.value_or(INT64_MAX));
    for (const auto& word : words)
        statement.bind(patternOf(word));
    if (query.kind)
        statement.bind(*query.kind);
    statement.bind(plain ? std::int64_t{query.limit} : INT64_MAX);
    statement.runBound();
    std::vector<JournalLine> lines;
    while (std::ssize(lines) < query.limit && statement.next())
        if (auto line = lineFrom(statement); plain || holdsAll(textOf(line), words))
            lines.push_back(std::move(line));
    statement.finish();
    for (auto& each : lines)
        addState(each);
    return lines;
}

void JournalTable::each(const std::function<void(Written&&)>& take) {
    m_each.run();
    while (m_each.next())
        take(writtenFrom(m_each));
}

AccountBook& JournalTable::book() {
    if (!m_book)
        m_book.emplace(m_connection);
    return *m_book;
}

void JournalTable::noteAmendment(const EntryId& target, std::int64_t number) { m_putAmendment.run(target, number); }

std::vector<Entry> JournalTable::amendmentsOf(const EntryId& id) {
    std::map<std::int64_t, Entry> found;
    std::vector<EntryId> open{id};
    while (!open.empty()) {
        const auto target = std::move(open.back());
        open.pop_back();
        Tally account;
        m_amendments.run(target);
        while (m_amendments.next()) {
            account.add(amendmentDigest(target, m_amendments.read<std::int64_t>()));
            auto line = lineFrom(m_amendments);
            if (line.number == 0) // it is nothing of the journal, and in no account
                continue;
            prove(line, line.entry.id, m_amendments);
            if (line.unread)
                continue;
            auto amendment = line.entry.id;
            if (found.emplace(line.number, std::move(line.entry)).second) // a damaged table may lead round
                open.push_back(std::move(amendment));
        }
        if (!m_trusting && account != book().kept(Part::Amendments, accountOf(target)))
            throw StoreError(StoreFault::EntryAltered, {target});
    }
    std::vector<Entry> amendments;
    amendments.reserve(found.size());
    for (auto& [number, entry] : found)
        amendments.push_back(std::move(entry));
    return amendments;
}

AmendedEntry JournalTable::amendedBy(const EntryId& original) {
    auto written = find(original);
    if (!written)
        throw StoreError(StoreFault::JournalLacks, {original});
    AmendedEntry amended{written->number, std::move(written->unread), AmendmentTree(std::move(written->entry))};
    for (auto& amendment : amendmentsOf(original))
        amended.tree.add(std::move(amendment));
    return amended;
}

std::shared_ptr<AmendedEntry> JournalTable::around(const EntryId& id) {
    auto root = id;
    std::set<EntryId> passed;
    for (;;) {
        if (!passed.insert(root).second)
            throw StoreError(StoreFault::AmendsItself, {root});
        if (const auto known = m_around.find(root); known != m_around.end())
            return known->second;
        const auto written = find(root);
        if (!written)
            return nullptr;
        const auto target = written->unread ? std::nullopt : amends(written->entry);
        if (!target)
            break;
        root = *target;
    }
    auto amended = std::make_shared<AmendedEntry>(amendedBy(root));
    if (m_writing)
        for (const auto& member : amended->tree.ids())
            m_around.emplace(member, amended);
    return amended;
}

void JournalTable::amend(const Entry& amendment, const std::string& body, const std::shared_ptr<AmendedEntry>& around) {
    const auto target = *amends(amendment);
    const auto number = write(amendment, body);
    noteAmendment(target, number);
    Tally row;
    row.add(amendmentDigest(target, number));
    book().move(Part::Amendments, accountOf(target), row);
    around->tree.add(amendment);
    m_around.emplace(amendment.id, around);
}

}
