// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/revoke.h"

namespace crownring {

Results<Receipt> revoke(Journal& journal, Books& books, const Revoking& revoking, const SaidCode& said) {
    Entry entry;
    entry.on = revoking.on;
    entry.time = revoking.time;
    entry.by = revoking.by.text();
    entry.body = ReleaseRevoked{revoking.inspection, revoking.reason};
    return postSigned(journal, books, {{std::move(entry), 0}}, said);
}

}
