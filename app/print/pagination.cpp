// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/pagination.h"

#include <algorithm>
#include <iterator>

namespace crownring::print {

namespace {

class Stack {
public:
    explicit Stack(double height) : m_height(height), m_pages(1) {}

    void add(const Flow& flow) {
        for (auto first = flow.begin(); first != flow.end();) {
            auto last = first;
            while (last->keepsToNext && std::next(last) != flow.end() && !std::next(last)->beginsPage)
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
        if (first->beginsPage || (m_y + together > m_height && together - first->before <= m_height))
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

}

std::vector<Page> paginate(const Flow& flow, double height) {
    Stack stack(height);
    stack.add(flow);
    return stack.take();
}

}
