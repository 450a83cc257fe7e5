// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/lists/choice_sift.h"
#include "test_class.h"

#include <QtTest>

namespace choice_sift_test {

using namespace crownring::screen;

class ChoiceSiftTest : public QObject {
    Q_OBJECT

private:
    static std::vector<Choice> some() {
        const auto choice = [](const char* value, const char* label, const char* detail) {
            return Choice{QString::fromUtf8(value), QString::fromUtf8(label), QString::fromUtf8(detail), -1, -1, false};
        };
        return {choice("ENV-1", "Envelope ENV-1", "serial 77123 · Größe 105"),
                choice("ENV-10", "Envelope ENV-10", "in the pool"),
                choice("BSK-105", "Basket BSK-105", "on QE-OVA, left shed")};
    }
    static QStringList hits(ChoiceSift& sift) {
        QStringList found;
        for (const auto& choice : sift.hits()->choices())
            found += choice.value;
        return found;
    }

private slots:
    void anyPartFinds_data() {
        QTest::addColumn<QString>("sought");
        QTest::addColumn<QStringList>("found");
        const auto row = [](const char* sought, const QStringList& found) {
            QTest::newRow(sought) << QString::fromUtf8(sought) << found;
        };
        row("", {"ENV-1", "ENV-10", "BSK-105"});
        row("env", {"ENV-1", "ENV-10"});
        row("ENV-10", {"ENV-10"});
        row("env10", {"ENV-10"});
        row("env1", {"ENV-1", "ENV-10"});
        row("771", {"ENV-1"});
        row("grosse", {});
        row("große", {"ENV-1"});
        row("shed basket", {"BSK-105"});
        row("qeova", {"BSK-105"});
        row("105", {"ENV-1", "BSK-105"});
        row("nothing", {});
    }
    void anyPartFinds() {
        QFETCH(QString, sought);
        QFETCH(QStringList, found);
        ChoiceSift sift;
        sift.offer(some());
        sift.setSought(sought);
        QCOMPARE(hits(sift), found);
    }
    void itsWholeNameStandsFirst() {
        auto choices = some();
        std::swap(choices[0], choices[1]);
        ChoiceSift sift;
        sift.offer(choices);
        sift.setSought(QStringLiteral("env-1"));
        QCOMPARE(hits(sift), QStringList({"ENV-1", "ENV-10"}));
    }
    void moreThanAnybodyReadsIsCounted() {
        std::vector<Choice> many;
        for (int at = 0; at < 300; ++at)
            many.push_back({QString::number(at), QString::number(at), {}, -1, -1, false});
        ChoiceSift sift;
        sift.offer(many);
        QCOMPARE(sift.hits()->count(), static_cast<int>(ChoiceSift::mostShown));
        QCOMPARE(sift.more(), 300 - static_cast<int>(ChoiceSift::mostShown));
    }
};

CROWNRING_TEST(ChoiceSiftTest)

}

#include "choice_sift_test.moc"
