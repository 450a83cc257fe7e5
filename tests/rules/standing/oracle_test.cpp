// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/any_history.h"
#include "rules/standing/oracle.h"
#include "test_class.h"

#include <map>

namespace oracle_test {

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
        RC_ASSERT((lastOf(limit) == other.last));
        RC_ASSERT((dueOf(limit) == other.due));
        RC_ASSERT((leftOf(limit) == other.left));
        RC_ASSERT((toleranceLeftOf(limit) == other.toleranceLeft));
        RC_ASSERT((limit.share == other.share));
    }
}

}

/// Standing against a second, plain reading of the same design, on random programmes and histories.
class OracleTest : public QObject {
    Q_OBJECT
private slots:
    void twoReadingsAgree() {
        std::map<Standing, int> met;
        const bool agree = rc::check("standing is what the plain reading says", [&met] {
            const auto text = anyProgramme(false);
            RC_LOG(text);
            const Rules rules(programmeFrom(text).value().requirements);
            for (int i = 0; i < 50; ++i) {
                const Item item = anyItem(300);
                const auto today = anyDay();
                for (const auto& requirement : rules.all()) {
                    const auto state = assess(requirement, item, rules, today);
                    ++met[state.standing];
                    sameAs(oracle::ask(requirement, item, rules.all(), today), state);
                }
            }
        });
        QVERIFY(agree);
        QCOMPARE(met.size(), std::size_t{standingCount}); // the histories lead to every standing
    }
};

CROWNRING_TEST(OracleTest)

}

#include "oracle_test.moc"
