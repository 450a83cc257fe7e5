// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record keeps few documents, and each of its answers rests on them: what a text says is read once.

#include "problem/problem.h"

#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <string_view>

namespace crownring {

/// What `read`, which looks at nothing but its text, made of the texts that it was last given. May be asked from
/// several threads; what is refused is read again.
template <class Document>
class ReadOnce {
public:
    using Read = Result<Document> (*)(std::string_view text);

    explicit ReadOnce(Read read) : m_read(read) {}

    [[nodiscard]] Result<std::shared_ptr<const Document>> operator()(std::string_view text) {
        const std::lock_guard lock(m_mutex);
        if (const auto found = m_documents.find(text); found != m_documents.end())
            return found->second;
        auto read = m_read(text);
        if (!read)
            return tl::unexpected(std::move(read.error()));
        if (m_documents.size() >= most)
            m_documents.clear();
        return m_documents.emplace(text, std::make_shared<const Document>(std::move(*read))).first->second;
    }

private:
    static constexpr std::size_t most = 64;

    Read m_read;
    std::mutex m_mutex;
    std::map<std::string, std::shared_ptr<const Document>, std::less<>> m_documents;
};

}
