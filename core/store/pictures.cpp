// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/picture_table.h"
#include "store/sql_record.h"

namespace crownring {

Result<std::string> SqlRecord::keepPicture(const Picture& picture) {
    if (auto why = readOnlyReason())
        return tl::unexpected(std::move(*why));
    return withServer([&] {
        return guarded([&] {
            Writing transaction(*this);
            auto digest = PictureTable(*m_connection).keep(picture);
            tallies().settlePictures();
            transaction.commit();
            return digest;
        });
    });
}

Result<std::optional<Picture>> SqlRecord::picture(const std::string& digest) {
    return guarded([&] { return PictureTable(*m_connection).find(digest); });
}

}
