// SPDX-License-Identifier: GPL-3.0-or-later

/// One of several hands on one record, as a program that has it open for long: what it remembers must stay what the
/// record says, whoever writes beside. Acts at random until its time is over or it is told to end, and prints the end
/// of the chain for each batch that was acknowledged. See hands.py.
///
///     crownring_hand RECORD WRITER SECONDS SEED

#include "acts/post.h"
#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "problem/faults/store_fault.h"
#include "record/chain/acknowledged.h"
#include "store/record_file.h"
#include "words/problem_words.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QElapsedTimer>
#include <QtCore/QThread>

#include <csignal>
#include <iostream>
#include <random>

using namespace crownring;

namespace {

const auto today = CivilDate::parse("2026-11-25").value();
volatile std::sig_atomic_t isToldToEnd = 0;

class Hand {
public:
    Hand(std::string location, const WriterId& writer, unsigned seed)
        : m_location(std::move(location)), m_writer(writer), m_dice(seed) {}

    /// @return false where something happened that must not
    bool act() {
        if (!m_record) {
            auto record = openRecord(m_location, OpenMode::Existing, m_writer);
            if (!record)
                return heard(record.error());
            m_record = std::move(*record);
        }
        switch (roll(0, 11)) {
        case 0:
            return asked(due(*m_record, {}, today));
        case 1:
            return asked(checkRigUp(*m_record, {item("E"), item("B"), item("U"), item("C")}, today, {}));
        case 2:
            if (roll(0, 20) == 0)
                return asked(m_record->rebuild());
            return asked(due(*m_record, {Registration(balloon()), {}}, today));
        case 3:
            if (roll(0, 10) == 0)
                m_record.reset();
            return true;
        default:
            return posted(entry());
        }
    }

private:
    int roll(int first, int last) { return std::uniform_int_distribution(first, last)(m_dice); }
    std::string balloon() { return "QE-" + std::to_string(roll(1, 5)); }
    ItemId item(const std::string& kind) { return ItemId(kind + std::to_string(roll(1, 5))); }
    std::string day() { return addDays(today, -roll(0, 400)).iso(); }

    std::string entry() {
        const auto start = [this](const char* kind) {
            return R"({"entry":")" + std::string(kind) + R"(","on":")" + day() + "\"";
        };
        const auto onBalloon = [this] { return R"(,"balloon":")" + balloon() + "\""; };
        const auto onItem = [](const ItemId& item) { return R"(,"item":")" + item.text() + "\""; };
        switch (roll(0, 8)) {
        case 0:
            return start("item.fitted") + onBalloon() + onItem(item(std::string(1, "EBUC"[roll(0, 3)]))) + "}";
        case 1:
            return start("requirement.done") + onItem(item("E")) + R"(,"requirement":"ml.inspection"})";
        case 2:
            return start("reading.taken") + onItem(item("E")) + R"(,"quantity":"grab-strength","value":)" +
                   std::to_string(roll(200, 400)) + R"(,"unit":"N","gore":3,"row":2})";
        case 3:
            if (!m_flights.empty())
                return start("entry.corrected") + R"(,"replaces":")" + flight() + R"(","with":{"minutes":)" +
                       std::to_string(roll(10, 120)) + "}}";
            [[fallthrough]];
        case 4:
            if (!m_flights.empty() && roll(0, 2) == 0)
                return start("entry.voided") + R"(,"voids":")" + flight() + R"(","reason":"never flown"})";
            [[fallthrough]];
        default: {
            auto text = start("flight.logged") + onBalloon() + R"(,"minutes":)" + std::to_string(roll(10, 120));
            if (roll(0, 3) == 0)
                text += R"(,"kit":[")" + item("E").text() + R"(",")" + item("B").text() + "\"]";
            return text + "}";
        }
        }
    }
    std::string flight() {
        return m_flights[static_cast<std::size_t>(roll(0, static_cast<int>(m_flights.size()) - 1))];
    }

    bool posted(const std::string& text) {
        const auto receipt = postText(*m_record, *m_record, text, {});
        if (!receipt)
            return heard(receipt.error().front());
        if (text.find("flight.logged") != std::string::npos)
            m_flights.push_back(receipt->ids.front().text());
        std::cout << acknowledgedText(*receipt->end) << "\n" << std::flush;
        return true;
    }
    template <class Answer>
    bool asked(const Answer& answer) {
        return answer ? true : heard(answer.error());
    }
    /// What may happen where others write, and where the server comes and goes.
    bool heard(const Problem& problem) {
        const bool away = problem.code() == Code::StoreBusy || problem.code() == Code::StoreUnopened ||
                          problem.fault == Fault(StoreFault::Lost) ||
                          problem.fault == Fault(StoreFault::CommitUnknown) ||
                          problem.fault == Fault(StoreFault::ChangedMeanwhile);
        if (!away && problem.code() != Code::CannotAmend) {
            std::cerr << words::line(problem).toStdString() << "\n";
            return false;
        }
        if (away)
            QThread::msleep(20);
        return true;
    }

    std::string m_location;
    WriterId m_writer;
    std::mt19937 m_dice;
    std::unique_ptr<Record> m_record;
    std::vector<std::string> m_flights;
};

}

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    if (argc != 5)
        return 2;
    Hand hand(argv[1], WriterId(argv[2]), static_cast<unsigned>(std::stoul(argv[4])));
    std::signal(SIGTERM, [](int) { isToldToEnd = 1; });
    QElapsedTimer clock;
    clock.start();
    const auto until = std::stoll(argv[3]) * 1000;
    while (isToldToEnd == 0 && clock.elapsed() < until)
        if (!hand.act())
            return 1;
    return 0;
}
