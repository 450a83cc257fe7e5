// SPDX-License-Identifier: GPL-3.0-or-later

/// What the detail of a row says of an open defect, and what it offers to be done about it.

#include "screen/form/form_hand.h"
#include "screen/next/due_detail.h"
#include "test_class.h"

namespace due_detail_test {

using namespace crownring;
using namespace crownring::screen;

class DueDetailTest : public QObject {
    Q_OBJECT

    std::unique_ptr<FormHand> m_hand;

    /// Written down of the basket; the name of its row.
    [[nodiscard]] QString find(const char* severity) {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("defect.found"), QStringLiteral("B-ONE"));
        FormHand::set(form, "what", "a cracked frame");
        FormHand::set(form, "item", "K-1");
        FormHand::set(form, "severity", severity);
        FormHand::set(form, "on", "2026-11-10");
        if (!m_hand->save(form))
            return {};
        const auto open = openDefects(*m_hand->item("K-1"));
        return open.empty() ? QString() : QString::fromStdString(requirementOf(open.back().found->defect).text());
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
    }
    void cleanup() { m_hand.reset(); }

    void nobodyIsToldToDeferWhatGrounds() {
        const auto row = find("grounding");
        In<DueDetail> detail(m_hand->house());
        detail.show(QStringLiteral("K-1"), row);
        QVERIFY(detail.isDefect());
        QVERIFY(!detail.isDeferrable());
        QVERIFY2(detail.because().contains(QStringLiteral("Nobody defers it")), qPrintable(detail.because()));
    }

    void whatMayWaitIsDeferredFromItsRow() {
        const auto row = find("deferrable");
        In<DueDetail> detail(m_hand->house());
        detail.show(QStringLiteral("K-1"), row);
        QVERIFY(detail.isDeferrable());
        QVERIFY2(detail.because().contains(QStringLiteral("deferred by who may")), qPrintable(detail.because()));
        {
            In<EntryForm> entitled(m_hand->house());
            entitled.beginAtBench(QStringLiteral("person.entitled"), {}, {}, {});
            FormHand::set(entitled, "person", "insp. A");
            FormHand::set(entitled, "capacity", "independent-certifying-staff");
            FormHand::set(entitled, "licence", "L-A");
            FormHand::set(entitled, "on", "2026-01-01");
            QVERIFY2(m_hand->save(entitled), qPrintable(entitled.problem()));
        }
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("defect.deferred"), QStringLiteral("B-ONE"), QStringLiteral("K-1"), row);
        QVERIFY2(form.about().startsWith(QStringLiteral("a cracked frame")), qPrintable(form.about()));
        FormHand::set(form, "reason", "a spare is on its way");
        FormHand::set(form, "until", "2027-03-01");
        FormHand::set(form, "agreed_by", "insp. A");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        detail.show(QStringLiteral("K-1"), row);
        QTRY_COMPARE_WITH_TIMEOUT(detail.standing(), static_cast<int>(Reckoned::Deferred), 20'000);
    }
};

CROWNRING_TEST(DueDetailTest, QCoreApplication)

}

#include "due_detail_test.moc"
