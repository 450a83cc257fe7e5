// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads which programmes were adopted, whom they bind, and their documents: each document once, for they are long and
/// adopted again and again.

#include "registry/books.h"
#include "store/accounts/account.h"

#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

/// Documents by their digest.
using Documents = std::unordered_map<std::string, std::shared_ptr<const std::string>>;

class AdoptionReader {
public:
    explicit AdoptionReader(const Connection& connection);

    /// Dated on or before `on`, in the order of their stamps. @param known what was read before, and is added to
    [[nodiscard]] std::vector<AdoptedProgramme> read(CivilDate on, Documents& known);
    /// What was read last rests on, whatever the day.
    [[nodiscard]] const Account& account() const { return m_account; }
    /// The same without reading.
    [[nodiscard]] Account count();
    /// The document of the latest adoption of a programme; empty when there is none.
    [[nodiscard]] std::string latestDocument(const ProgrammeId& programme);

private:
    /// @throws StoreError where it is not what was adopted
    [[nodiscard]] std::string documentOf(const Stamp& stamp, const std::string& digest);

    Account m_account;
    Statement m_adoptions, m_document, m_latest;
};

}
