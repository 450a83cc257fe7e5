// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/obligations.h"
#include "rules/shed.h"
#include "test_class.h"

namespace obligations_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

std::shared_ptr<const Programme> programme(const char* id, const char* revision,
                                           std::vector<const char*> requirements) {
    auto made = std::make_shared<Programme>();
    made->id = ProgrammeId(id);
    made->revision = revision;
    for (const auto* requirement : requirements) {
        made->requirements.emplace_back();
        made->requirements.back().id = RequirementId(requirement);
    }
    return made;
}

class Adopted {
public:
    Adopted& add(Bound bound, std::shared_ptr<const Programme> programme) {
        const auto place = static_cast<std::int64_t>(m_adoptions.size());
        m_adoptions.push_back({{Moment(place), EntryId("a")}, std::move(bound), std::move(programme)});
        return *this;
    }
    Obligations obligations() { return Obligations(std::move(m_adoptions)); }

private:
    std::vector<Adoption> m_adoptions;
};

/// "annual@1 weighing@2": what is in force, with the revision of its programme.
QString inForce(const RequirementSet& set) {
    QStringList words;
    for (const auto& held : set.all())
        words << QString::fromStdString(held.requirement->id.text() + "@" + held.programme->revision);
    words.sort();
    return words.join(' ');
}

const ItemId envelope("ENV-1");
const Registration balloon("QE-ABC");
const Registration other("QE-XYZ");

}

/// Which requirements bind an item: a fold over the adoptions.
class ObligationsTest : public QObject {
    Q_OBJECT
private slots:
    void withoutAdoptionsNothingBinds() {
        const auto obligations = Adopted().obligations();
        QVERIFY(obligations.of(envelope, balloon).all().empty());
        QVERIFY(!obligations.of(envelope, balloon).find(RequirementId("annual")));
    }
    void aBalloonsProgrammeBindsWhatIsFittedToIt() {
        const auto obligations = Adopted().add(BoundBalloons{{balloon}}, programme("p", "1", {"annual"})).obligations();
        QCOMPARE(inForce(obligations.of(envelope, balloon)), QString("annual@1"));
        QCOMPARE(inForce(obligations.of(envelope, other)), QString());
        QCOMPARE(inForce(obligations.of(envelope, std::nullopt)), QString());
    }
    void anItemsProgrammeFollowsTheItem() {
        const auto obligations = Adopted().add(BoundItems{{envelope}}, programme("p", "1", {"annual"})).obligations();
        QCOMPARE(inForce(obligations.of(envelope, std::nullopt)), QString("annual@1"));
        QCOMPARE(inForce(obligations.of(envelope, other)), QString("annual@1"));
        QCOMPARE(inForce(obligations.of(ItemId("ENV-2"), other)), QString());
    }
    void everythingBindsThePoolToo() {
        const auto obligations = Adopted().add(BoundEverything{}, programme("p", "1", {"annual"})).obligations();
        QCOMPARE(inForce(obligations.of(envelope, std::nullopt)), QString("annual@1"));
    }
    void theLatestAdoptedRevisionHolds() {
        const auto obligations = Adopted()
                                     .add(BoundEverything{}, programme("p", "1", {"annual", "withdrawn"}))
                                     .add(BoundBalloons{{balloon}}, programme("p", "2", {"annual", "new"}))
                                     .obligations();
        QCOMPARE(inForce(obligations.of(envelope, balloon)), QString("annual@2 new@2"));
        QCOMPARE(inForce(obligations.of(envelope, other)), QString("annual@1 withdrawn@1"));
    }
    void anEarlierRevisionAdoptedLaterHolds() {
        const auto obligations = Adopted()
                                     .add(BoundEverything{}, programme("p", "2", {"annual"}))
                                     .add(BoundItems{{envelope}}, programme("p", "1", {"annual"}))
                                     .obligations();
        QCOMPARE(inForce(obligations.of(envelope, std::nullopt)), QString("annual@1"));
    }
    void theSameRequirementInTwoProgrammesIsThatOfTheLaterAdoption() {
        const auto obligations = Adopted()
                                     .add(BoundEverything{}, programme("p", "1", {"annual", "hoses"}))
                                     .add(BoundEverything{}, programme("q", "7", {"annual"}))
                                     .obligations();
        const auto& set = obligations.of(envelope, std::nullopt);
        QCOMPARE(inForce(set), QString("annual@7 hoses@1"));
        QCOMPARE(set.find(RequirementId("annual")), obligations.adoptions()[1].programme->requirements.data());
    }
    void onARigUpBothBalloonsBind() {
        const auto obligations = Adopted()
                                     .add(BoundBalloons{{balloon}}, programme("p", "1", {"annual"}))
                                     .add(BoundBalloons{{other}}, programme("q", "1", {"hundred"}))
                                     .obligations();
        QCOMPARE(inForce(obligations.of(envelope, balloon, other)), QString("annual@1 hundred@1"));
        QCOMPARE(inForce(obligations.of(envelope, balloon, balloon)), QString("annual@1"));
    }
    void boundTwiceByOneAdoptionIsBoundOnce() {
        const auto obligations =
            Adopted().add(BoundBalloons{{balloon, balloon}}, programme("p", "1", {"annual"})).obligations();
        QCOMPARE(inForce(obligations.of(envelope, balloon)), QString("annual@1"));
    }
    void itemsBoundAlikeShareTheirSet() {
        const auto obligations =
            Adopted().add(BoundBalloons{{balloon, other}}, programme("p", "1", {"annual"})).obligations();
        QCOMPARE(&obligations.of(envelope, balloon), &obligations.of(ItemId("BSK-1"), other));
    }
    void theyMayBeMoved() {
        auto first = Adopted().add(BoundBalloons{{balloon}}, programme("p", "1", {"annual"})).obligations();
        const auto& before = first.of(envelope, balloon);
        const auto second = std::move(first);
        QCOMPARE(&second.of(envelope, balloon), &before);
        QCOMPARE(inForce(second.of(envelope, Registration("QE-ABC"))), QString("annual@1"));
    }
};

CROWNRING_TEST(ObligationsTest)

}

#include "obligations_test.moc"
