// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is asked back before it is written: figures and days that are rather an error of writing than so.

#include "screen/form/form_field.h"

#include <QCoreApplication>

namespace crownring::screen {

class AskedBack {
    Q_DECLARE_TR_FUNCTIONS(AskedBack)

public:
    /// Of an item that is entered without the day or month of its making, where requirements count its age: cylinders
    /// and hoses carry it stamped.
    [[nodiscard]] static QString ofAge(std::string_view kind, std::string_view made);
    /// What is asked about the field as it stands; empty where nothing is.
    [[nodiscard]] static QString question(const FormField& field);
    /// Asked, and not answered with "it is so".
    [[nodiscard]] static bool isOpen(const FormField& field);
    /// What may have been meant instead: "90 min"; empty where there is nothing to offer.
    [[nodiscard]] static QString meant(const FormField& field);

private:
    [[nodiscard]] static QString ofDay(CivilDate day);
};

}
