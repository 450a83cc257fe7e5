// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/any_history.h"
#include "rules/oracle.h"

using namespace crownring;
using namespace crownring::shed;

namespace {

void sameAs(const oracle::Answer& expected, const Assessment& state) {
    RC_ASSERT((std::string(standingText(state.standing)) == expected.standing));
    RC_ASSERT((state.governs == expected.governs));
    RC_ASSERT(((state.because == Because::NotRequired) == !expected.required));
    RC_ASSERT((state.limits.size() == expected.limits.size()));
    for (std::size_t i = 0; i < state.limits.size(); ++i) {
        const auto& limit = state.limits[i];
        const auto& other = expected.limits[i];
        RC_ASSERT((std::string(standingText(limit.standing)) == other.standing));
        RC_ASSERT((limit.last == other.last));
        RC_ASSERT((limit.due == other.due));
        RC_ASSERT((limit.left == other.left));
        RC_ASSERT((limit.toleranceLeft == other.toleranceLeft));
        RC_ASSERT((limit.share == other.share));
    }
}

}

/// Standing against a second, plain reading of the same design, on random programmes and histories.
class OracleTest : public QObject {
    Q_OBJECT
private slots:
    void twoReadingsAgree() {
        const bool agree = rc::check("standing is what the plain reading says", [] {
            const auto text = anyProgramme(false);
            RC_LOG(text);
            const auto programme = programmeFrom(text);
            RC_ASSERT((programme.has_value()));
            const Rules rules(programme->requirements);
            const Item item = anyItem(300);
            for (int i = 0; i < 4; ++i) {
                const auto today = anyDay();
                for (const auto& requirement : rules.all()) {
                    const auto state = assess(requirement, item, rules, today);
                    sameAs(oracle::ask(requirement, item, rules.all(), today), state);
                    RC_TAG(std::string(standingText(state.standing)));
                }
            }
        });
        QVERIFY(agree);
    }
};

QTEST_APPLESS_MAIN(OracleTest)
#include "oracle_test.moc"
