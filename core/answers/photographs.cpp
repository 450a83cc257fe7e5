// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/photographs.h"

namespace crownring {

Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found) {
    const auto told =
        books.told({Subject::Defect, found.defect.text(), {kindName<DefectFound>()}, found.stamp.at.on()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* body = std::get_if<DefectFound>(&nowOf(line).body); body && line.entry.id == found.stamp.id)
            return body->photographs;
    return std::vector<std::string>();
}

}
