// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/picture_table.h"
#include "store/sql_record.h"

namespace crownring {

Result<std::string> SqlRecord::keepPicture(const Picture& picture) {
    if (m_readOnlyReason)
        return tl::unexpected(*m_readOnlyReason);
    return withServer([&] {
        return guarded([&] {
            const Interrupted interrupted(*this);
            Transaction transaction(*m_connection);
            forgetWhatOthersWrote();
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
