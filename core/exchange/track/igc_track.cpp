// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/igc_track.h"

#include "exchange/text/plain_text.h"
#include "problem/faults/track_fault.h"

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <optional>

namespace crownring {

namespace {

std::optional<int> digits(std::string_view text) {
    int value = 0;
    if (!allDigits(text))
        return std::nullopt;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// HHMMSS as seconds of the day.
std::optional<int> secondOfDay(std::string_view text) {
    const auto hour = digits(text.substr(0, 2));
    const auto minute = digits(text.substr(2, 2));
    const auto second = digits(text.substr(4, 2));
    if (!hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 59)
        return std::nullopt;
    return (*hour * 60 + *minute) * 60 + *second;
}

/// DDMMmmm or DDDMMmmm with its letter: degrees, minutes, thousandths of a minute.
std::optional<double> angle(std::string_view text, std::size_t width, char positive, char negative) {
    const auto degrees = digits(text.substr(0, width));
    const auto thousandths = digits(text.substr(width, 5));
    const char letter = text[width + 5];
    if (!degrees || !thousandths || *thousandths >= 60'000 || (letter != positive && letter != negative))
        return std::nullopt;
    const double value = *degrees + *thousandths / 60'000.0;
    return letter == negative ? -value : value;
}

/// Five characters, metres; a minus sign may stand first.
std::optional<int> metres(std::string_view text) {
    const bool below = text.starts_with('-');
    const auto value = digits(below ? text.substr(1) : text);
    return value && below ? std::optional<int>(-*value) : value;
}

struct RawFix {
    Fix fix;
    int pressure = 0;
    int gnss = 0;
};

class TrackReader {
public:
    void readLine(std::string_view line) {
        if (line.empty())
            return;
        if (line.starts_with('B'))
            readFix(line);
        else if (line.starts_with('H'))
            readHeader(line);
        else if (line.front() < 'A' || line.front() > 'Z')
            ++m_track.otherLines;
    }

    [[nodiscard]] bool dated() const { return m_day.has_value(); }
    [[nodiscard]] std::size_t fixes() const { return m_raw.size(); }

    /// The track with one kind of altitude; nothing when no fix has any.
    std::optional<IgcTrack> finished() {
        const auto varied = [&](int RawFix::*altitude) {
            return std::any_of(m_raw.begin(), m_raw.end(), [&](const RawFix& raw) { return raw.*altitude != 0; });
        };
        m_track.pressureAltitude = varied(&RawFix::pressure);
        if (!m_track.pressureAltitude && !varied(&RawFix::gnss))
            return std::nullopt;
        for (const auto& raw : m_raw) {
            m_track.fixes.push_back(raw.fix);
            m_track.fixes.back().altitude = m_track.pressureAltitude ? raw.pressure : raw.gnss;
        }
        return std::move(m_track);
    }

private:
    /// The text behind the colon of "HFGIDGLIDERID:QE-HFC", or behind the three-letter code without one.
    static std::string headerText(std::string_view line) {
        const auto colon = line.find(':');
        return std::string(trimmed(line.substr(colon == std::string_view::npos ? 5 : colon + 1)));
    }

    void readHeader(std::string_view line) {
        if (line.size() < 5)
            return;
        const auto code = line.substr(2, 3);
        if (code == "DTE")
            readDate(line.substr(5));
        else if (code == "GID")
            m_track.balloon = headerText(line);
        else if (code == "PLT")
            m_track.pilot = headerText(line);
    }

    /// "DDMMYY" (HFDTE) or "DATE:DDMMYY,NN" (HFDTEDATE).
    void readDate(std::string_view text) {
        const auto from = text.find_first_of("0123456789");
        if (from == std::string_view::npos || text.size() < from + 6 || !allDigits(text.substr(from, 6)))
            return;
        text = text.substr(from, 6);
        const int year = *digits(text.substr(4, 2));
        const auto date = CivilDate::fromYearMonthDay(year + (year < 80 ? 2000 : 1900), *digits(text.substr(2, 2)),
                                                      *digits(text.substr(0, 2)));
        if (date && (!m_day || date->dayNumber() > *m_day)) {
            m_day = date->dayNumber();
            m_lastOfDay = -1;
        }
    }

    void readFix(std::string_view line) {
        constexpr std::size_t length = 35; // B HHMMSS DDMMmmmN DDDMMmmmE V PPPPP GGGGG
        if (!m_day)
            return;
        const auto raw = line.size() < length ? std::nullopt : fixFrom(line);
        if (!raw) {
            ++m_track.unreadable;
            return;
        }
        if (line[24] == 'V') {
            ++m_track.withoutPosition;
            return;
        }
        const int second = static_cast<int>(raw->fix.second);
        const bool nextDay = m_lastOfDay - second > secondsOfDay / 2;
        if (!nextDay && second <= m_lastOfDay) {
            ++m_track.unreadable;
            return;
        }
        *m_day += nextDay ? 1 : 0;
        m_lastOfDay = second;
        m_raw.push_back(*raw);
        m_raw.back().fix.second += *m_day * secondsOfDay;
    }

    static std::optional<RawFix> fixFrom(std::string_view line) {
        const auto second = secondOfDay(line.substr(1, 6));
        const auto latitude = angle(line.substr(7, 8), 2, 'N', 'S');
        const auto longitude = angle(line.substr(15, 9), 3, 'E', 'W');
        const auto pressure = metres(line.substr(25, 5));
        const auto gnss = metres(line.substr(30, 5));
        const bool validity = line[24] == 'A' || line[24] == 'V';
        if (!second || !latitude || !longitude || !pressure || !gnss || !validity || std::abs(*latitude) > 90 ||
            std::abs(*longitude) > 180)
            return std::nullopt;
        return RawFix{{*second, *latitude, *longitude, 0}, *pressure, *gnss};
    }

    IgcTrack m_track;
    std::vector<RawFix> m_raw;
    std::optional<std::int64_t> m_day;
    int m_lastOfDay = -1;
};

}

Result<IgcTrack> readIgc(std::string_view bytes, const std::string& file) {
    const auto text = plainText(bytes, file);
    if (!text)
        return tl::unexpected(text.error());
    TrackReader reader;
    for (std::string_view rest = text->utf8; !rest.empty();) {
        const auto end = rest.find_first_of("\r\n");
        reader.readLine(rest.substr(0, end));
        rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
    }
    constexpr std::size_t fewestFixes = 10;
    if (!reader.dated())
        return problem(TrackFault::NoDate, {}, {file, 0, {}});
    if (reader.fixes() < fewestFixes)
        return problem(TrackFault::TooFewFixes, {reader.fixes()}, {file, 0, {}});
    auto track = reader.finished();
    if (!track)
        return problem(TrackFault::NoAltitude, {}, {file, 0, {}});
    return std::move(*track);
}

}
