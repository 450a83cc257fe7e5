// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/pagination.h"

#include "print/composition.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace crownring::print {

namespace {

class Stack {
public:
    explicit Stack(double height) : m_height(height), m_pages(1) {}

    void add(const Flow& flow) {
        for (auto first = flow.begin(); first != flow.end();) {
            auto last = first;
            while (last->keepsToNext && std::next(last) != flow.end())
                ++last;
            addRun(first, std::next(last));
            first = std::next(last);
        }
    }

    std::vector<Page> take() { return std::move(m_pages); }

private:
    void addRun(Flow::const_iterator first, Flow::const_iterator end) {
        double together = 0;
        for (auto slab = first; slab != end; ++slab)
            together += slab->before + slab->piece->height();
        if (m_y + together > m_height && together - first->before <= m_height)
            beginPage();
        for (; first != end; ++first)
            add(*first);
    }

    void add(const Slab& slab) {
        const double height = slab.piece->height();
        if (m_y + slab.before + height > m_height)
            beginPage();
        if (m_pages.back().empty() && slab.head)
            place(slab.head, 0);
        place(slab.piece, m_pages.back().empty() ? 0 : slab.before);
    }

    void beginPage() {
        if (!m_pages.back().empty())
            m_pages.emplace_back();
        m_y = 0;
    }

    void place(const PiecePtr& piece, double before) {
        const double scale = std::min(1.0, (m_height - m_y - before) / piece->height());
        m_pages.back().push_back({piece, m_y + before, scale});
        m_y += before + piece->height() * scale;
    }

    double m_height;
    double m_y = 0;
    std::vector<Page> m_pages;
};

constexpr std::array<double, 4> smaller = {0.96, 0.92, 0.89, 6.0 / 7};
constexpr double little = 0.5; ///< of a page

bool goesOnByLittle(const std::vector<Page>& pages, double height) {
    if (pages.size() != 2)
        return false;
    const Placed& last = pages.back().back();
    return last.top + last.piece->height() * last.scale <= little * height;
}

}

std::vector<Page> paginate(const Flow& flow, double height) {
    Stack stack(height);
    stack.add(flow);
    return stack.take();
}

std::vector<Page> setOnPages(const paper::Document& document, QSizeF body) {
    std::vector<std::vector<Page>> parts;
    for (const Flow& flow : compose(document, body))
        if (!flow.empty() || parts.empty())
            parts.push_back(paginate(flow, body.height()));
    const auto goesOn = [&](const auto& pages) { return goesOnByLittle(pages, body.height()); };
    for (const double scale : smaller) {
        if (std::none_of(parts.begin(), parts.end(), goesOn))
            break;
        auto part = parts.begin();
        for (const Flow& flow : compose(document, body / scale)) {
            if (flow.empty() && part != parts.begin())
                continue;
            if (goesOn(*part))
                if (auto pages = paginate(flow, body.height() / scale); pages.size() == 1) {
                    for (Placed& placed : pages.front()) {
                        placed.top *= scale;
                        placed.scale *= scale;
                    }
                    *part = std::move(pages);
                }
            ++part;
        }
    }
    std::vector<Page> all;
    for (auto& pages : parts)
        std::move(pages.begin(), pages.end(), std::back_inserter(all));
    return all;
}

}
