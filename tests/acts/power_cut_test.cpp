// SPDX-License-Identifier: GPL-3.0-or-later

/// The plug is pulled a thousand times while an inspector works: what the screen showed as saved is there, and nothing
/// is there by halves. A child process writes through the acts and tells each id when the act has returned; it is
/// killed at a random moment. Children are forked before QTest starts any thread.

#include "record/chain/chain.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtTest>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <csignal>
#include <random>
#include <set>
#include <thread>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// How often it is killed; CROWNRING_CUTS says another number (README of tests: 1,000).
const int cuts = qEnvironmentVariableIsSet("CROWNRING_CUTS") ? qEnvironmentVariableIntValue("CROWNRING_CUTS") : 400;
constexpr int cutsAnInspection = 20; ///< an inspection of a few hundred entries is a long one
constexpr char ready = '.';

struct Pipe {
    std::array<int, 2> ends{};
    Pipe() {
        if (pipe(ends.data()) != 0)
            throw std::runtime_error("no pipe");
    }
};

/// What becomes of one inspector: tells what is saved, until the lights go out.
class Inspector {
public:
    Inspector(const std::string& file, int round, int told)
        : m_record(Scratch::openedAt(file)), m_round(round), m_told(told),
          m_inspection("I-" + std::to_string(round / cutsAnInspection)) {}

    void work() {
        if (m_record->told({Subject::Inspection, m_inspection, {"inspection.opened"}, day("2026-06-01")})
                .value()
                .empty())
            write(R"({"entry":"inspection.opened","on":"2026-06-01","visit":"part-ml-inspection","items":["E1"])" +
                  about());
        tell(std::string(1, ready));
        for (int i = 0;; ++i) {
            const auto name = std::to_string(m_round) + "-" + std::to_string(i);
            write(R"({"entry":"line.settled","on":"2026-06-01","item":"E1","state":"done","line":"line )" + name + '"' +
                  about());
            // A reading that fails and its defect are one act.
            write(
                R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","unit":"N","value":120,"gore":3,"id":"reading )" +
                name + '"' + about() +
                R"({"entry":"defect.found","on":"2026-06-01","item":"E1","severity":"barring","what":"weak fabric","defect":"D )" +
                name + R"(","reading":"reading )" + name + '"' + about());
        }
    }

private:
    [[nodiscard]] std::string about() const { return R"(,"inspection":")" + m_inspection + "\"}\n"; }
    void write(const std::string& lines) {
        for (const auto& id : posted(*m_record, lines).ids)
            tell(id.text() + "\n");
    }
    void tell(const std::string& words) const {
        if (::write(m_told, words.data(), words.size()) != static_cast<ssize_t>(words.size()))
            _exit(2);
    }

    std::unique_ptr<Record> m_record;
    int m_round;
    int m_told;
    std::string m_inspection;
};

[[noreturn]] void beInspector(const std::string& file, int round, int told) {
    try {
        Inspector(file, round, told).work();
    } catch (const std::exception& error) {
        static_cast<void>(::write(STDERR_FILENO, error.what(), std::char_traits<char>::length(error.what())));
    }
    _exit(1);
}

/// Everything that was told over all rounds.
struct Storm {
    std::set<std::string> ids;
    int killedAtWork = 0; ///< children that lived until the kill
    int killedOpening = 0;
    double seconds = 0;
};

/// One inspector, killed after a while.
/// @param opening the kill does not wait until the record is open
void cutOnce(const std::string& file, int round, bool opening, std::chrono::microseconds after, Storm& told) {
    const Pipe pipe;
    const auto child = fork();
    if (child == 0) {
        close(pipe.ends[0]);
        beInspector(file, round, pipe.ends[1]);
    }
    close(pipe.ends[1]);
    std::string words;
    std::array<char, 4096> buffer{};
    const auto listen = [&] {
        const auto size = read(pipe.ends[0], buffer.data(), buffer.size());
        words.append(buffer.data(), static_cast<std::size_t>(std::max<ssize_t>(size, 0)));
        return size > 0;
    };
    // Open, and at work: the moment is counted from the first word that was told, so that a slow build is cut while it
    // writes too.
    const auto isAtWork = [&] {
        return words.find(ready) != std::string::npos && words.find('\n') != std::string::npos;
    };
    while (!opening && !isAtWork() && listen()) {
    }
    std::this_thread::sleep_for(after);
    kill(child, SIGKILL);
    int status = 0;
    waitpid(child, &status, 0);
    while (listen()) {
    }
    close(pipe.ends[0]);
    (opening ? told.killedOpening : told.killedAtWork) += WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL ? 1 : 0;
    std::string id;
    for (const char letter : words)
        if (letter == '\n')
            told.ids.insert(std::exchange(id, {}));
        else if (letter != ready)
            id += letter;
}

Storm cutAThousandTimes(const std::string& file) {
    posted(*Scratch::openedAt(file), R"({"entry":"item.entered","on":"2026-01-01","item":"E1","kind":"envelope"})");
    std::mt19937 moments(20261125);
    std::uniform_int_distribution<int> microseconds(0, 12'000);
    Storm told;
    const auto start = std::chrono::steady_clock::now();
    for (int round = 0; round < cuts; ++round)
        cutOnce(file, round, round % 10 == 9, std::chrono::microseconds(microseconds(moments)), told);
    told.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    return told;
}

}

class PowerCutTest : public QObject {
    Q_OBJECT
public:
    PowerCutTest(std::string file, Storm told) : m_file(std::move(file)), m_told(std::move(told)) {}

private slots:
    void initTestCase() {
        m_record = Scratch::openedAt(m_file);
        const auto lines = m_record->lines({{}, {}, {}, 1'000'000}).value();
        for (const auto& line : lines)
            m_lines.emplace(line.entry.id.text(), line.entry);
        qInfo("%d cuts in %.1f s: %zu told, %zu in the record", cuts, m_told.seconds, m_told.ids.size(),
              m_lines.size());
    }
    void theyWereAtWork() {
        QCOMPARE(m_told.killedAtWork, cuts * 9 / 10);
        QCOMPARE(m_told.killedOpening, cuts / 10);
        QVERIFY(m_told.ids.size() > static_cast<std::size_t>(cuts));
    }
    void nothingThatWasToldIsLost() {
        for (const auto& id : m_told.ids)
            QVERIFY2(m_lines.contains(id), id.c_str());
    }
    void nothingIsThereByHalves() {
        std::set<std::string> readings;
        std::set<std::string> named;
        for (const auto& [id, entry] : m_lines)
            if (std::holds_alternative<ReadingTaken>(entry.body))
                readings.insert(id);
            else if (const auto* found = std::get_if<DefectFound>(&entry.body))
                named.insert(found->reading.value().text());
        QVERIFY(!readings.empty());
        QVERIFY(readings == named);
    }
    void theChainIsWhole() {
        const auto verdict = m_record->verify().value();
        QVERIFY2(verdict.intact, verdict.reason ? spoken(*verdict.reason).c_str() : "");
        QCOMPARE(verdict.entries, static_cast<std::int64_t>(m_lines.size()));
    }
    void theProjectionsAreThoseOfTheJournal() {
        const auto before = m_record->facts({}, day("2026-06-01")).value();
        const auto said = toldOfAll();
        QVERIFY(said.size() + 1 == m_lines.size()); // the item's own entry is no word of the bench
        QVERIFY(m_record->rebuild());
        QVERIFY(m_record->facts({}, day("2026-06-01")).value() == before);
        QVERIFY(toldOfAll() == said);
    }

private:
    [[nodiscard]] std::vector<std::string> toldOfAll() const {
        std::vector<std::string> ids;
        const auto lines = m_record->told({Subject::Inspection, {}, {}, day("2026-06-01")}).value();
        for (const auto& line : lines)
            ids.push_back(line.entry.id.text());
        return ids;
    }

    std::string m_file;
    Storm m_told;
    std::unique_ptr<Record> m_record;
    std::map<std::string, Entry> m_lines;
};

static int run(int count, char** arguments) {
    const QCoreApplication application(count, arguments);
    // What a killed process has written stays with the system, on whatever it lies; memory is the quickest.
    const QTemporaryDir folder(QDir(QStringLiteral("/dev/shm")).exists() ? QStringLiteral("/dev/shm/crownring-XXXXXX")
                                                                         : QDir::temp().filePath("crownring-XXXXXX"));
    const auto file = folder.filePath(QStringLiteral("test.crownring")).toStdString();
    PowerCutTest test(file, cutAThousandTimes(file));
    return QTest::qExec(&test, count, arguments);
}
CROWNRING_TEST_RUN(run)
#include "power_cut_test.moc"
