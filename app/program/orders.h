// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the command line asks of the screen program.

#include "civil/civil_date.h"
#include "program/picture.h"

#include <QStringList>
#include <tl/expected.hpp>

#include <optional>
#include <span>

namespace crownring {

struct Orders {
    QString record; ///< empty: the user's own, or the demo fleet
    bool demo = false;
    bool dark = false;
    std::optional<CivilDate> on;
    std::optional<screen::PictureOrder> picture;
};

/// Asked only for words (`--help`, `--version`): answered without a display.
[[nodiscard]] bool asksForWords(std::span<const char* const> arguments);
[[nodiscard]] bool asksForPicture(std::span<const char* const> arguments);

/// What it asks for, or why it makes no sense. Ends the program when it asks for words, or names no option.
/// @pre there is a QCoreApplication
[[nodiscard]] tl::expected<Orders, QString> ordersFrom(const QStringList& arguments);

}
