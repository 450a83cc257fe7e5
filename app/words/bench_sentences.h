// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries of the bench as sentences of the trade.

#include "record/entry.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::words {

class BenchSentences {
    Q_DECLARE_TR_FUNCTIONS(BenchSentences)

public:
    /// "ENV-1024: grab-strength held at 133.4 N, gore 3, row 12"
    [[nodiscard]] static QString of(const ReadingTaken& e);
    [[nodiscard]] static QString of(const InspectionOpened& e);
    [[nodiscard]] static QString of(const LineSettled& e);
    [[nodiscard]] static QString of(const DefectFound& e);
    [[nodiscard]] static QString of(const DefectDeferred& e);
    [[nodiscard]] static QString of(const DefectCleared& e);
    [[nodiscard]] static QString of(const RepairMade& e);
    [[nodiscard]] static QString of(const PartReplaced& e);
    [[nodiscard]] static QString of(const WorkPerformed& e);
    [[nodiscard]] static QString of(const ReleaseIncomplete& e);
    [[nodiscard]] static QString of(const InspectionClosed& e);
    [[nodiscard]] static QString of(const ReleaseRevoked& e);
    [[nodiscard]] static QString of(const ReviewSigned& e);
    [[nodiscard]] static QString of(const SignatoryCode& e);
    [[nodiscard]] static QString of(const ReturnApproved& e);
    [[nodiscard]] static QString of(const PersonEntitled& e);
    [[nodiscard]] static QString of(const TesterCalibrated& e);
    [[nodiscard]] static QString of(const TypeDescribed& e);
    [[nodiscard]] static QString of(const LimitStated& e);
    [[nodiscard]] static QString of(const FabricStated& e);
    [[nodiscard]] static QString of(const ChecklistAdopted& e);
    [[nodiscard]] static QString of(const TextAdopted& e);
    [[nodiscard]] static QString of(const TextConfirmed& e);
    [[nodiscard]] static QString of(const DirectiveIssued& e);
    [[nodiscard]] static QString of(const DirectiveAnswered& e);
    [[nodiscard]] static QString of(const PartsListed& e);
    /// "not asked for by the manual (Manual 77, p. 4)"; nothing where the finding says it.
    [[nodiscard]] static QString why(WhyNot why, const std::string& page);
    /// "gore 3, row 12"; what is unknown is left out.
    [[nodiscard]] static QString place(const PanelPlace& place);
};

}
