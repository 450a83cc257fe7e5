// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/problem.h"

#include <charconv>
#include <chrono>

namespace crownring {

namespace {

std::string padded(unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); }

std::string plain(const Arguments& arguments);

/// An argument as developers read it.
struct Plain {
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double figure) const {
        char room[32];
        return {room, std::to_chars(room, room + sizeof room, figure).ptr};
    }
    std::string operator()(const InUnit& figure) const { return (*this)(figure.value) + " " + figure.unit; }
    std::string operator()(OnDay day) const {
        const std::chrono::year_month_day date{std::chrono::sys_days{std::chrono::days{day.number}}};
        return std::to_string(static_cast<int>(date.year())) + "-" + padded(static_cast<unsigned>(date.month())) + "-" +
               padded(static_cast<unsigned>(date.day()));
    }
    std::string operator()(const Term& term) const { return term.name; }
    std::string operator()(const Listed& list) const {
        std::string all;
        for (const auto& each : list.list)
            all += (all.empty() ? "" : ", ") + std::visit(*this, each.value());
        return all;
    }
    std::string operator()(const Phrase& phrase) const { return "phrase" + plain(phrase.arguments); }
};

std::string plain(const Arguments& arguments) {
    std::string all;
    for (const auto& argument : arguments)
        all += (all.empty() ? "" : "; ") + std::visit(Plain{}, argument.value());
    return all.empty() ? all : " (" + all + ")";
}

}

std::string text(const Problem& problem) {
    std::string line;
    if (!problem.where.file.empty())
        line += problem.where.file + ":";
    if (problem.where.line > 0)
        line += (problem.where.file.empty() ? "line " : "") + std::to_string(problem.where.line) + ":";
    if (!line.empty())
        line += " ";
    if (!problem.where.key.empty())
        line += "key '" + problem.where.key + "': ";
    line += std::string(rowOf(problem.fault).name) + plain(problem.arguments);
    return problem.rule.empty() ? line : line + " [" + problem.rule + "]";
}

}
