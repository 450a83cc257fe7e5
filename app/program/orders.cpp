// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/orders.h"

#include "words/border.h"
#include "words/problem_words.h"

#include <QCommandLineParser>
#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <string_view>

namespace crownring {

using namespace words;

namespace {
QString tr(const char* text) { return QCoreApplication::translate("Program", text); }
}

bool asksForWords(std::span<const char* const> arguments) {
    constexpr std::array<std::string_view, 5> words{"-h", "--help", "--help-all", "-v", "--version"};
    return std::ranges::any_of(arguments,
                               [&](std::string_view each) { return std::ranges::find(words, each) != words.end(); });
}

bool asksForPicture(std::span<const char* const> arguments) {
    return std::ranges::any_of(arguments, [](std::string_view each) { return each.starts_with("--picture"); });
}

tl::expected<Orders, QString> ordersFrom(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(tr("Continued airworthiness of hot-air balloons. Crownring keeps records and "
                                        "computes; it never declares a balloon "
                                        "airworthy."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOption({QStringLiteral("record"), tr("The record to open or make: a file, or postgresql://…"),
                      QStringLiteral("FILE")});
    parser.addOption({QStringLiteral("demo"), tr("Open a new record with the demo fleet, thrown away at the end.")});
    parser.addOption({QStringLiteral("on"), tr("Answer for this day instead of today."), QStringLiteral("DATE")});
    parser.addOption({QStringLiteral("dark"), tr("Use the dark tones.")});
    parser.addOption({QStringLiteral("picture"), tr("Write a picture of a place and end."), QStringLiteral("FILE")});
    parser.addOption({QStringLiteral("force"), tr("Replace the picture's file if it is there.")});
    parser.addOption({QStringLiteral("place"),
                      tr("The place of the picture: next, rig-up, balloons, bench, rules or record."),
                      QStringLiteral("NAME"), QStringLiteral("next")});
    parser.addOption(
        {QStringLiteral("size"), tr("The size of the picture."), QStringLiteral("WxH"), QStringLiteral("1280x800")});
    parser.process(arguments);

    Orders orders;
    orders.record = parser.value(QStringLiteral("record"));
    orders.demo = parser.isSet(QStringLiteral("demo"));
    orders.dark = parser.isSet(QStringLiteral("dark"));
    if (orders.demo && !orders.record.isEmpty())
        return tl::unexpected(tr("--demo opens a record of its own: give either --demo or --record."));
    if (parser.isSet(QStringLiteral("on"))) {
        const auto on = CivilDate::parse(outward(parser.value(QStringLiteral("on"))));
        if (!on)
            return tl::unexpected(words::line(on.error()));
        orders.on = *on;
    }
    if (parser.isSet(QStringLiteral("picture"))) {
        const auto size = screen::sizeFrom(parser.value(QStringLiteral("size")));
        if (!size.isValid())
            return tl::unexpected(tr("--size is written as 1280x800, at least 360x640."));
        orders.picture =
            screen::PictureOrder{parser.value(QStringLiteral("picture")), parser.value(QStringLiteral("place")), size,
                                 parser.isSet(QStringLiteral("force"))};
    }
    return orders;
}

}
