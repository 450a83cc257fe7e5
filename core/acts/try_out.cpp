// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/try_out.h"

#include "gate/gate.h"
#include "problem/faults/use_fault.h"

namespace crownring {

Results<void> tryOut(Journal& journal, Books& books, std::vector<NumberedEntry> entries,
                     const std::function<void()>& look) {
    bool looked = false;
    auto answer = journal.append(std::move(entries), {}, [&](std::span<const NumberedEntry> written) {
        auto refused = refusalsOf({journal, books, written});
        if (!refused.empty())
            return refused;
        look();
        looked = true;
        return std::vector{Problem{UseFault::OnlyTried}}; // a judge that refuses is what takes it back
    });
    if (looked)
        return {};
    return tl::unexpected(answer ? std::vector<Problem>{} : std::move(answer.error()));
}

}
