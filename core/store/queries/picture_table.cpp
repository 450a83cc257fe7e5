// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/picture_table.h"

namespace crownring {

PictureTable::PictureTable(const Connection& connection)
    : m_put(connection, "INSERT INTO picture (digest, media, bytes) VALUES (?, ?, ?) ON CONFLICT DO NOTHING"),
      m_find(connection, "SELECT media, bytes FROM picture WHERE digest = ?") {}

std::string PictureTable::keep(const Picture& picture) {
    auto digest = hex(sha256(picture.bytes));
    m_put.run(digest, picture.media, QByteArray::fromStdString(picture.bytes));
    return digest;
}

std::optional<Picture> PictureTable::find(const std::string& digest) {
    m_find.run(digest);
    if (!m_find.next())
        return std::nullopt;
    Picture picture;
    picture.media = m_find.read<std::string>();
    picture.bytes = m_find.read<QByteArray>().toStdString();
    return picture;
}

}
