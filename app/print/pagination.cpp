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

constexpr std::array<double, 5> smaller = {0.96, 0.92, 0.89, 6.0 / 7, 5.0 / 6};
constexpr double leastOfMany = 0.92; ///< of what has several pages anyway
constexpr double little = 0.5;       ///< of a page

bool goesOnByLittle(const std::vector<Page>& pages, double height) {
    if (pages.size() < 2)
        return false;
    const Placed& last = pages.back().back();
    return last.top + last.piece->height() * last.scale <= little * height;
}

std::vector<Page> scaled(std::vector<Page> pages, double scale) {
    for (Page& page : pages)
        for (Placed& placed : page) {
            placed.top *= scale;
            placed.scale *= scale;
        }
    return pages;
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
    std::vector<std::size_t> wanted; ///< pages of each part
    for (const auto& pages : parts)
        wanted.push_back(pages.size() - (goesOnByLittle(pages, body.height()) ? 1 : 0));
    for (const double scale : smaller) {
        std::vector<bool> goesOn;
        for (std::size_t part = 0; part < parts.size(); ++part)
            goesOn.push_back(parts[part].size() > wanted[part] && (wanted[part] == 1 || scale >= leastOfMany));
        if (std::find(goesOn.begin(), goesOn.end(), true) == goesOn.end())
            break;
        std::size_t part = 0;
        for (const Flow& flow : compose(document, body / scale)) {
            if (flow.empty() && part != 0)
                continue;
            if (goesOn[part])
                if (auto pages = paginate(flow, body.height() / scale); pages.size() <= wanted[part])
                    parts[part] = scaled(std::move(pages), scale);
            ++part;
        }
    }
    std::vector<Page> all;
    for (auto& pages : parts)
        std::move(pages.begin(), pages.end(), std::back_inserter(all));
    return all;
}

}
