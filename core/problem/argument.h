// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a problem or another coded sentence is about: values, not words. `app/words/` says them as its language does.

#include "problem/fault.h"

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace crownring {

/// A word of the trade by its stable name; its language has another word for each.
struct Term {
    enum class Of : std::uint8_t { ItemKind, Quantity, Dimension, Direction, Zone, Visit, Capacity, LogColumn, Event };
    Of of = Of::ItemKind;
    std::string name; ///< as the record writes it: "envelope"
    bool operator==(const Term&) const = default;
};

/// A figure in a unit.
struct InUnit {
    double value = 0;
    std::string unit; ///< a symbol of `measure/unit.h`
    bool operator==(const InUnit&) const = default;
};

/// Days since 1970-01-01.
struct OnDay {
    std::int32_t number = 0;
    bool operator==(const OnDay&) const = default;
};

class Argument;

/// Arguments one after the other: "a, b, c", "a, b or c", "a, b and c".
struct Listed {
    enum class Joined : std::uint8_t { Comma, Or, And };
    std::vector<Argument> list;
    Joined joined = Joined::Comma;
    bool operator==(const Listed& other) const;
};

/// Phrases are what is not a problem by itself: a part of a sentence, a reason, a remark. Each family stands in the
/// room that speaks so, and its words in `app/words/phrases`.
enum class SchemaPhrase : std::uint8_t;    ///< rules/programme/schema_phrase.h
enum class DuePhrase : std::uint8_t;       ///< rules/due/due_phrase.h
enum class ReadingPhrase : std::uint8_t;   ///< registry/reading_phrase.h
enum class LimitPhrase : std::uint8_t;     ///< bench/reading/limit_phrase.h
enum class JudgedPhrase : std::uint8_t;    ///< bench/reading/judged_phrase.h
enum class DoubtPhrase : std::uint8_t;     ///< bench/reading/doubt_phrase.h
enum class BarredPhrase : std::uint8_t;    ///< bench/release/barred_phrase.h
enum class ContentPhrase : std::uint8_t;   ///< bench/release/content_phrase.h
enum class ReleasePhrase : std::uint8_t;   ///< bench/release/release_phrase.h
enum class SignedPhrase : std::uint8_t;    ///< bench/release/signed_phrase.h
enum class LogPhrase : std::uint8_t;       ///< exchange/log/log_phrase.h
enum class TrackPhrase : std::uint8_t;     ///< exchange/track/track_phrase.h
enum class LeftOutPhrase : std::uint8_t;   ///< answers/fabric/left_out_phrase.h
enum class VerdictPhrase : std::uint8_t;   ///< record/verdict_phrase.h
enum class SheetPhrase : std::uint8_t;     ///< sheets/sheet_phrase.h
enum class ReviewPhrase : std::uint8_t;    ///< sheets/review_phrase.h
enum class PaperPhrase : std::uint8_t;     ///< paper/paper_phrase.h
enum class ChecklistPhrase : std::uint8_t; ///< bench/checklist/checklist_phrase.h
enum class FlightPhrase : std::uint8_t;    ///< registry/flight_phrase.h
enum class ServicePhrase : std::uint8_t;   ///< registry/service_phrase.h

/// A fault stands for what it says, without its mend.
using PhraseCode =
    std::variant<Fault, SchemaPhrase, DuePhrase, ReadingPhrase, LimitPhrase, JudgedPhrase, DoubtPhrase, BarredPhrase,
                 ContentPhrase, ReleasePhrase, SignedPhrase, LogPhrase, TrackPhrase, LeftOutPhrase, VerdictPhrase,
                 SheetPhrase, ReviewPhrase, PaperPhrase, ChecklistPhrase, FlightPhrase, ServicePhrase>;

struct Phrase {
    PhraseCode code;
    std::vector<Argument> arguments;
    bool operator==(const Phrase& other) const;
};

/// One of: a text as somebody wrote it, a whole number, a figure, a figure in a unit, a day, a word of the trade,
/// a list of words, a phrase with arguments of its own.
class Argument {
public:
    using Value = std::variant<std::string, std::int64_t, double, InUnit, OnDay, Term, Listed, Phrase>;

    Argument() = default;
    Argument(std::string text) : m_value(std::move(text)) {}
    Argument(std::string_view text) : m_value(std::string(text)) {}
    Argument(const char* text) : m_value(std::string(text)) {}
    template <std::integral Number>
    requires(!std::same_as<Number, bool> && !std::same_as<Number, char>) Argument(Number number)
        : m_value(static_cast<std::int64_t>(number)) {}
    Argument(double figure) : m_value(figure) {}
    Argument(InUnit figure) : m_value(std::move(figure)) {}
    /// A figure of `measure/`.
    template <class Figure>
    requires requires(const Figure& figure) {
        { figure.value() } -> std::same_as<double>;
        { figure.unit().symbol } -> std::convertible_to<std::string_view>;
    }
    Argument(const Figure& figure)
        : m_value(InUnit{figure.value(), std::string(std::string_view(figure.unit().symbol))}) {}
    Argument(OnDay day) : m_value(day) {}
    Argument(Term term) : m_value(std::move(term)) {}
    Argument(Listed words) : m_value(std::move(words)) {}
    Argument(Phrase phrase) : m_value(std::move(phrase)) {}
    /// A civil date.
    template <class Day>
    requires requires(const Day& day) {
        { day.dayNumber() } -> std::same_as<std::int32_t>;
    }
    Argument(const Day& day) : m_value(OnDay{day.dayNumber()}) {}
    /// A name that must not be mixed with others: `ItemId`, `Registration` …
    template <class Name>
    requires requires(const Name& name) {
        { name.text() } -> std::same_as<const std::string&>;
    }
    Argument(const Name& name) : m_value(name.text()) {}

    [[nodiscard]] const Value& value() const { return m_value; }
    /// What somebody wrote; empty for all else.
    [[nodiscard]] const std::string& written() const {
        static const std::string nothing;
        const auto* text = std::get_if<std::string>(&m_value);
        return text ? *text : nothing;
    }
    bool operator==(const Argument&) const = default;

private:
    Value m_value;
};

/// In the order in which a sentence counts them: %1, %2 …; the first whole number is what its plural goes by.
using Arguments = std::vector<Argument>;

/// The names or words of a range.
template <class Range>
[[nodiscard]] Listed listed(const Range& range, Listed::Joined joined = Listed::Joined::Comma) {
    Listed all{{}, joined};
    for (const auto& each : range)
        all.list.emplace_back(each);
    return all;
}

inline bool Listed::operator==(const Listed& other) const { return list == other.list && joined == other.joined; }
inline bool Phrase::operator==(const Phrase& other) const { return code == other.code && arguments == other.arguments; }

}
