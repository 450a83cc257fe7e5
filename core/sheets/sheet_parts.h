// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pieces that several papers share.

#include "bench/release.h"
#include "paper/document.h"

namespace crownring {

/// An empty paper with its title, record id and caution.
[[nodiscard]] paper::Document blankSheet(const BenchFile& file, const std::string& title);
/// What it was closed with; the day asked and nobody while it is open.
[[nodiscard]] Signing signingOf(const BenchFile& file);
[[nodiscard]] paper::Signature signatureOf(const BenchFile& file);
[[nodiscard]] std::string placeText(const PanelPlace& place);
/// "≥ 133.4 N", "98 N", "104 to below 110 °C"
[[nodiscard]] std::string valueText(const ReadingTaken& reading);
[[nodiscard]] std::string conditionsText(const TestConditions& conditions);
[[nodiscard]] std::string who(const std::string& by, CivilDate on);
/// What was found, and what has become of it up to the day of the file.
struct DefectLine {
    std::string item, what, severity, state;
    bool open = false;
    bool barring = false;
};
[[nodiscard]] std::vector<DefectLine> defectLines(const BenchFile& file);

}
