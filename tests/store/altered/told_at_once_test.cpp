// SPDX-License-Identifier: GPL-3.0-or-later

/// Whoever changes, deletes or adds a row behind due lists and rig-up checks round the program gets no other answer
/// from it: the same one, or that the record is not intact. Nobody has to ask for a verification first.

#include "problem/faults/store_fault.h"
#include "store/connection/connection.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtSql/QSqlError>
#include <QtSql/QSqlField>
#include <QtSql/QSqlQuery>
#include <QtSql/QSqlRecord>
#include <QtTest>

namespace told_at_once_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

void fill(Record& record) {
    posted(record,
           R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE","operations":["for-hire"]}
{"entry":"balloon.entered","id":"b2","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.entered","id":"i","on":"2024-01-01","item":"E1","kind":"envelope","type":"T","serial":"1","made":"2020-05"}
{"entry":"item.entered","id":"i2","on":"2024-01-01","item":"B1","kind":"basket","brought_forward":{"minutes":null}}
{"entry":"item.fitted","id":"t","on":"2024-01-02","item":"E1","balloon":"QE-TWO"}
{"entry":"item.fitted","id":"u","on":"2024-01-03","item":"E1","balloon":"QE-ONE"}
{"entry":"item.fitted","id":"u2","on":"2024-01-03","item":"B1","balloon":"QE-ONE"}
{"entry":"flight.logged","id":"f","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","id":"g","on":"2024-02-02","balloon":"QE-ONE","minutes":60,"kit":["E1"]}
{"entry":"requirement.done","id":"d","on":"2024-02-03","item":"E1","requirement":"annual","ref":"V1"}
{"entry":"requirement.done","id":"d2","on":"2024-02-04","item":"B1","requirement":"annual","clock":{"minutes":500}}
{"entry":"event.reported","id":"o","on":"2024-02-04","item":"E1","event":"over-temperature","temp_c":130}
{"entry":"event.reported","id":"o2","on":"2024-02-04","balloon":"QE-ONE","event":"hard-landing"}
{"entry":"defect.found","id":"x","on":"2024-02-05","item":"E1","defect":"tear","what":"a tear","severity":"minor"}
{"entry":"reading.taken","id":"r","on":"2024-02-06","item":"E1","quantity":"grab-strength","value":300,"unit":"N","gore":3,"row":2}
{"entry":"repair.made","id":"p","on":"2024-02-07","item":"E1","method":"patch","gore":3,"row":2}
{"entry":"fabric.stated","id":"s","on":"2024-02-07","item":"E1","lot":"L1"}
{"entry":"item.entered","id":"i3","on":"2024-01-01","item":"B2","kind":"basket"}
{"entry":"item.state","id":"st","on":"2024-02-07","item":"B2","state":"laid-up"}
{"entry":"balloon.entered","id":"b3","on":"2024-01-01","balloon":"QE-OLD"}
{"entry":"balloon.entered","id":"b4","on":"2024-01-01","balloon":"QE-NEW"}
{"entry":"balloon.renamed","id":"rn","on":"2024-02-07","balloon":"QE-OLD","to":"QE-NEW"}
{"entry":"programme.adopted","id":"a","on":"2024-02-08","everything":true,"programme":"part-ml-hot-air"})");
    // Not through the gate, which would ask for all that a release needs.
    const auto released = entriesFrom(
        R"({"entry":"person.entitled","id":"pa","on":"2024-01-01","person":"Ada Quill","capacity":"pilot-owner","licence":"BPL 4"}
{"entry":"inspection.opened","id":"io","on":"2024-02-02","inspection":"V1","visit":"us-special","items":["E1"]}
{"entry":"inspection.closed","id":"ic","on":"2024-02-03","inspection":"V1","outcome":"released","signatory":"Ada Quill"}
{"entry":"inspection.opened","id":"jo","on":"2024-02-02","inspection":"V2","visit":"us-special","items":["B1"]}
{"entry":"inspection.closed","id":"jc","on":"2024-02-04","inspection":"V2","outcome":"released","signatory":"Ada Quill"}
{"entry":"requirement.done","id":"jd","on":"2024-02-04","item":"B1","requirement":"hundred-hour","ref":"V2"}
{"entry":"release.revoked","id":"jr","on":"2024-02-05","by":"Ada Quill","inspection":"V2","reason":"the wrong basket"}
{"entry":"inspection.opened","id":"ko","on":"2024-02-02","inspection":"V3","visit":"us-annual","items":["E1","B1"]}
{"entry":"inspection.closed","id":"kc","on":"2024-02-06","inspection":"V3","outcome":"discrepancies","signatory":"Ada Quill"}
{"entry":"inspection.opened","id":"lo","on":"2024-02-02","inspection":"V4","visit":"us-annual","items":["B1"]}
{"entry":"inspection.closed","id":"lc","on":"2024-02-06","inspection":"V4","outcome":"discrepancies","signatory":"Ada Quill"}
{"entry":"requirement.done","id":"ld","on":"2024-02-06","item":"B1","requirement":"us.annual","ref":"V4"}
{"entry":"return.approved","id":"la","on":"2024-02-20","inspection":"V4","signatory":"Ada Quill","capacity":"repair-station"})",
        "released");
    if (!released)
        throw std::runtime_error(text(released.error().front()));
    if (const auto receipt = record.append(*released, "released"); !receipt)
        throw std::runtime_error(text(receipt.error().front()));
}

/// All that due lists and rig-up checks are made from. Of what is refused only that it is.
struct Answers {
    std::vector<std::vector<ItemFacts>> facts;
    std::vector<FabricHistory> fabric;
    std::vector<std::string> adoptions;
    std::vector<std::string> balloons;
    std::vector<Problem> refused;

    [[nodiscard]] bool sameAs(const Answers& other) const {
        return facts == other.facts && fabric == other.fabric && adoptions == other.adoptions &&
               balloons == other.balloons;
    }
};

Answers answersOf(Record& record, bool whole) {
    const auto on = day("2026-01-01");
    Answers answers;
    const auto keep = [&](auto& answer, auto take) {
        if (answer)
            take(*answer);
        else
            answers.refused.push_back(answer.error());
    };
    const auto scopes = whole ? std::vector<Scope>{{}}
                              : std::vector<Scope>{{{}, {ItemId("E1"), ItemId("B1")}},
                                                   {Registration("QE-ONE"), {}},
                                                   {Registration("QE-TWO"), {}}};
    for (const auto& scope : scopes) {
        auto facts = record.facts(scope, on);
        keep(facts, [&](auto& found) { answers.facts.push_back(found); });
    }
    std::vector<FabricHistory> fabric;
    auto told = record.fabric(scopes.front().items, on, [&](const FabricHistory& each) { fabric.push_back(each); });
    if (told)
        answers.fabric = fabric;
    else
        answers.refused.push_back(told.error());
    auto balloons = record.balloons(on);
    if (whole) // what is fitted they count, and the due list beside them proves
        keep(balloons, [&](auto& found) {
            for (const auto& each : found)
                answers.balloons.push_back(each.balloon.text() + each.title + std::to_string(each.flights) + " " +
                                           std::to_string(each.flown.minutes.value()));
        });
    auto adoptions = record.adoptions(on);
    keep(adoptions, [&](auto& found) {
        for (const auto& each : found)
            answers.adoptions.push_back(each.stamp.id.text() + each.programme.text() + each.digest + *each.document +
                                        std::to_string(each.bound.index()));
    });
    return answers;
}

const QStringList behind{"item_entered", "balloon_entered", "stay",       "kit_flight",    "done",
                         "occurrence",   "reading",         "repair",     "fabric_stated", "adoption",
                         "defect_mark",  "closing",         "revocation", "flown",         "service",
                         "renaming",     "opening",         "approval",   "name",          "tally"};

/// What the bench, the gate and the pages of an inspection are made from: entries told under a name or a sort, and what
/// amends them. Of what is refused only that it is.
struct ToldAnswers {
    QStringList told;
    std::vector<Problem> refused;
};

ToldAnswers toldBy(Record& record) {
    ToldAnswers answers;
    const auto keep = [&](const auto& lines, const QString& of) {
        if (!lines)
            return answers.refused.push_back(lines.error());
        for (const auto& line : *lines)
            answers.told += of + QString::fromStdString(line.entry.id.text() + " " + canonicalText(nowOf(line)) +
                                                        (line.voided ? " voided" : ""));
    };
    const std::vector<std::pair<Subject, const char*>> subjects{
        {Subject::Item, "E1"},       {Subject::Item, "B1"},          {Subject::Balloon, "QE-ONE"},
        {Subject::Inspection, "V1"}, {Subject::Inspection, "V2"},    {Subject::Inspection, "V3"},
        {Subject::Defect, "tear"},   {Subject::Person, "Ada Quill"}, {Subject::Type, "T"}};
    for (const auto& [subject, name] : subjects) {
        keep(record.told({subject, name, {}, day("2026-01-01")}), QString::fromUtf8(name));
        keep(record.told({subject, {}, {}, day("2026-01-01")}), QString::number(static_cast<int>(subject)));
    }
    keep(record.history({}, ItemId("E1"), day("2026-01-01"), 1000), QStringLiteral("history "));
    for (const auto* id : {"x", "r", "p", "s", "v", "w", "c", "co"})
        if (const auto line = record.line(EntryId(id)); !line)
            answers.refused.push_back(line.error());
        else if (*line)
            keep(Result<std::vector<JournalLine>>(std::vector{**line}), QStringLiteral("line "));
    return answers;
}

QString other(const QVariant& value) {
    if (value.isNull())
        return QStringLiteral("1");
    switch (value.typeId()) {
    case QMetaType::LongLong:
        return QString::number(value.toLongLong() + 1);
    case QMetaType::Double:
        return QString::number(value.toDouble() + 0.5);
    default:
        return QStringLiteral("'1%1'").arg(value.toString().replace(QLatin1Char('\''), QLatin1String("''")));
    }
}

QString literal(const QVariant& value) {
    if (value.isNull())
        return QStringLiteral("NULL");
    if (value.typeId() == QMetaType::QString)
        return QStringLiteral("'%1'").arg(value.toString().replace(QLatin1Char('\''), QLatin1String("''")));
    return value.toString();
}

/// Each single alteration of each row: of each column, the row deleted, the row doubled under another key.
QStringList alterations(const Scratch& scratch, const QStringList& tables) {
    QStringList statements;
    const Connection connection(scratch.file(), Access::ReadOnly);
    for (const auto& table : tables) {
        QSqlQuery rows(connection.database());
        rows.exec(QStringLiteral("SELECT * FROM ") + table);
        while (rows.next()) {
            const auto row = rows.record();
            QStringList where, names;
            for (int column = 0; column < row.count(); ++column) {
                names += row.fieldName(column);
                where += row.fieldName(column) + QStringLiteral(" IS ") + literal(row.value(column));
            }
            const auto here = QStringLiteral(" WHERE ") + where.join(QStringLiteral(" AND "));
            statements += QStringLiteral("DELETE FROM ") + table + here;
            for (int column = 0; column < row.count(); ++column) {
                statements +=
                    QStringLiteral("UPDATE %1 SET %2 = ").arg(table, names[column]) + other(row.value(column)) + here;
                auto values = names;
                for (int each = 0; each < row.count(); ++each)
                    values[each] = each == column ? other(row.value(each)) : literal(row.value(each));
                statements += QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
                                  .arg(table, names.join(QLatin1Char(',')), values.join(QLatin1Char(',')));
            }
        }
    }
    return statements;
}

class Guardless {
public:
    explicit Guardless(const std::string& file) : m_connection(file, Access::ReadWrite) {
        m_connection.run("PRAGMA foreign_keys = OFF");
        m_connection.run("PRAGMA ignore_check_constraints = ON");
    }
    /// @return false where the database itself refuses
    [[nodiscard]] bool tried(const QString& statement) const {
        QSqlQuery query(m_connection.database());
        return query.exec(statement);
    }

private:
    Connection m_connection;
};

}

class ToldAtOnceTest : public QObject {
    Q_OBJECT
private slots:
    void whatStandsBesideTheJournalCannotBeChangedUnseen() {
        Scratch scratch;
        fill(*scratch.record);
        const auto before = answersOf(*scratch.record, true);
        const auto kitBefore = answersOf(*scratch.record, false);
        QVERIFY(before.refused.empty() && kitBefore.refused.empty());
        scratch.record.reset();
        const auto original = QString::fromStdString(scratch.beside("original"));
        QVERIFY(QFile::copy(QString::fromStdString(scratch.file()), original));
        int altered = 0, found = 0, same = 0;
        const auto statements = alterations(scratch, behind);
        QVERIFY(statements.size() > 300);
        for (const auto& statement : statements) {
            const auto file = QString::fromStdString(scratch.file());
            for (const auto* suffix : {"", "-wal", "-shm"})
                QFile::remove(file + QLatin1String(suffix));
            QVERIFY(QFile::copy(original, file));
            {
                const Guardless connection(scratch.file());
                if (!connection.tried(statement))
                    continue;
            }
            ++altered;
            scratch.reopen();
            for (const bool whole : {true, false}) {
                const auto after = answersOf(*scratch.record, whole);
                const auto& was = whole ? before : kitBefore;
                QVERIFY2(!after.refused.empty() || after.sameAs(was), qPrintable(statement));
                ++(after.refused.empty() ? same : found);
                for (const auto& problem : after.refused)
                    QVERIFY2(isDamage(problem.fault) || problem.code() == Code::UnknownReference ||
                                 problem.code() == Code::BadUse,
                             text(problem).c_str());
            }
            scratch.record.reset();
        }
        qInfo("%d alterations: of %d answers %d say that the record is not intact, %d are what they were", altered,
              found + same, found, same);
        QVERIFY(found > same);
    }
    void whatIsToldAndWhatAmendsItCannotBeChangedUnseen() {
        Scratch scratch;
        fill(*scratch.record);
        const auto amended = entriesFrom(
            R"({"entry":"type.described","id":"ty","on":"2024-01-01","type":"T","kind":"envelope","manual":"M 1","revision":"1","gores":12,"rows":8}
{"entry":"entry.corrected","id":"c","on":"2024-03-01","replaces":"x","with":{"what":"a long tear"},"note":"measured"}
{"entry":"entry.corrected","id":"co","on":"2024-03-01","replaces":"x","with":{"what":"a longer tear"},"note":"again"}
{"entry":"entry.voided","id":"v","on":"2024-03-01","voids":"p","reason":"another envelope"}
{"entry":"entry.voided","id":"w","on":"2024-03-02","voids":"v","reason":"this one after all"})",
            "amended");
        QVERIFY2(amended, amended ? "" : text(amended.error().front()).c_str());
        const auto receipt = scratch.record->append(*amended, "amended");
        QVERIFY2(receipt, receipt ? "" : text(receipt.error().front()).c_str());
        QVERIFY(scratch.record->verify().value().intact);
        const auto before = toldBy(*scratch.record);
        QVERIFY2(before.refused.empty(), before.refused.empty() ? "" : text(before.refused.front()).c_str());
        scratch.record.reset();
        const auto original = QString::fromStdString(scratch.beside("original"));
        QVERIFY(QFile::copy(QString::fromStdString(scratch.file()), original));
        int found = 0;
        const auto statements = alterations(scratch, {"told", "amendment", "tally"});
        QVERIFY(statements.size() > 200);
        for (const auto& statement : statements) {
            const auto file = QString::fromStdString(scratch.file());
            for (const auto* suffix : {"", "-wal", "-shm"})
                QFile::remove(file + QLatin1String(suffix));
            QVERIFY(QFile::copy(original, file));
            if (!Guardless(scratch.file()).tried(statement))
                continue;
            scratch.reopen();
            const auto after = toldBy(*scratch.record);
            QVERIFY2(!after.refused.empty() || after.told == before.told, qPrintable(statement));
            found += after.refused.empty() ? 0 : 1;
            for (const auto& problem : after.refused)
                QVERIFY2(isDamage(problem.fault), text(problem).c_str());
            scratch.record.reset();
        }
        QVERIFY(found > 150);
    }
    void aRowThatWasTakenAwayOfWhatIsToldIsMissedAfterAChangeOfOurs() {
        Scratch scratch;
        fill(*scratch.record);
        scratch.record.reset();
        QVERIFY(Guardless(scratch.file()).tried("DELETE FROM told WHERE entry_id = 'ko'"));
        scratch.reopen();
        const auto more = entriesFrom(
            R"({"entry":"line.settled","on":"2024-02-06","inspection":"V3","line":"burner","state":"done"})", "more");
        QVERIFY(scratch.record->append(*more, "more"));
        const auto told = scratch.record->told({Subject::Inspection, "V3", {}, day("2026-01-01")});
        QVERIFY(!told);
        QVERIFY(isDamage(told.error().fault));
        QVERIFY(scratch.record->rebuild());
        QCOMPARE(scratch.record->told({Subject::Inspection, "V3", {}, day("2026-01-01")}).value().size(), 3U);
        QVERIFY(scratch.record->verify().value().intact);
    }
    void whatIsNotIntactIsOnlyRead() {
        Scratch scratch;
        fill(*scratch.record);
        scratch.record.reset();
        QVERIFY(Guardless(scratch.file()).tried("DELETE FROM adoption"));
        scratch.reopen();
        QVERIFY(!scratch.record->readOnlyReason());
        QVERIFY(!scratch.record->adoptions(day("2026-01-01")));
        QVERIFY(scratch.record->readOnlyReason()->fault == Fault(StoreFault::NotIntact));
        const auto refused =
            problemsOf(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-SIX"})");
        QCOMPARE(refused.size(), 1U);
        QVERIFY(refused.front().fault == Fault(StoreFault::NotIntact));
        QVERIFY(scratch.record->rebuild());
        QVERIFY(!scratch.record->readOnlyReason());
        QCOMPARE(scratch.record->adoptions(day("2026-01-01")).value().size(), 1U);
        posted(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-SIX"})");
    }
    void aChangeOfOursDoesNotCoverOneRoundIt() {
        Scratch scratch;
        fill(*scratch.record);
        scratch.record.reset();
        QVERIFY(Guardless(scratch.file()).tried("DELETE FROM defect_mark"));
        scratch.reopen();
        const auto refused = problemsOf(
            *scratch.record, R"({"entry":"requirement.done","on":"2024-03-03","item":"E1","requirement":"annual"})");
        QCOMPARE(refused.size(), 1U);
        QVERIFY(refused.front().fault == Fault(StoreFault::SubjectNotIntact));
        QCOMPARE(refused.front().arguments.front().written(), std::string("E1"));
    }
    void aJournalThatWasAlteredIsNotMadeTheGround() {
        Scratch scratch;
        fill(*scratch.record);
        scratch.record.reset();
        {
            const Guardless connection(scratch.file());
            const auto guard = Connection(scratch.file(), Access::ReadOnly)
                                   .ask("SELECT sql FROM sqlite_master WHERE name = 'entry_is_never_changed'");
            QVERIFY(connection.tried("DROP TRIGGER entry_is_never_changed"));
            QVERIFY(connection.tried("UPDATE entry SET body = replace(body, '60', '16') WHERE entry_id = 'f'"));
            QVERIFY(connection.tried(guard));
        }
        scratch.reopen();
        const auto rebuilt = scratch.record->rebuild();
        QVERIFY(!rebuilt);
        QVERIFY(rebuilt.error().fault == Fault(StoreFault::JournalAltered));
        const auto line = scratch.record->line(EntryId("f"));
        QVERIFY(!line);
        QVERIFY(line.error().fault == Fault(StoreFault::EntryAltered));
    }
};

CROWNRING_TEST(ToldAtOnceTest, QCoreApplication)

}

#include "told_at_once_test.moc"
