// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/due_model.h"
#include "screen/lists/choice_model.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>
#include <rapidcheck.h>

namespace list_base_test {

using namespace crownring::screen;

namespace {

/// Distinct values with small payloads, so that lists overlap.
std::vector<Choice> someRows() {
    const auto values = *rc::gen::unique<std::vector<int>>(rc::gen::inRange(0, 300));
    std::vector<Choice> rows;
    for (const int value : values)
        rows.push_back({QString::number(value), QString::number(value), {}, *rc::gen::inRange(0, 3), -1, false});
    return rows;
}

}

class ListBaseTest : public QObject {
    Q_OBJECT

private slots:
    void anyListBecomesAnyOther() {
        const bool good = rc::check("rows told to views are the rows held", [] {
            ChoiceModel model;
            QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
            for (int round = 0; round < 4; ++round) {
                const auto rows = someRows();
                model.show(rows);
                RC_ASSERT(model.choices() == rows);
            }
        });
        QVERIFY(good);
    }

    void aRoleIsCalledAsTheListCallsIt() {
        const QHash<int, QByteArray> names{
            {ChoiceModel::ValueRole, "value"},       {ChoiceModel::LabelRole, "label"},
            {ChoiceModel::DetailRole, "detail"},     {ChoiceModel::NumberRole, "number"},
            {ChoiceModel::StandingRole, "standing"}, {ChoiceModel::ChosenRole, "chosen"}};
        QCOMPARE(ChoiceModel().roleNames(), names);
        QCOMPARE(DueModel().roleNames().value(DueModel::StandingWordRole), QByteArray("standingWord"));
    }

    void aLongListIsExchangedInOneStretch() {
        std::vector<Choice> first;
        std::vector<Choice> second;
        for (int at = 0; at < 2000; ++at) {
            first.push_back({QString::number(at), {}, {}, -1, -1, false});
            second.push_back({QString::number(5000 - at), {}, {}, -1, -1, false});
        }
        ChoiceModel model;
        QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
        model.show(first);
        QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
        QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
        model.show(second);
        QCOMPARE(removed.size(), 1);
        QCOMPARE(reset.size(), 0);
        QCOMPARE(model.choices(), second);
    }

    void oneChangedRowIsToldAlone() {
        std::vector<Choice> rows;
        for (int at = 0; at < 10; ++at)
            rows.push_back({QString::number(at), {}, {}, 0, -1, false});
        ChoiceModel model;
        model.show(rows);
        QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
        QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
        rows[4].number = 7;
        model.show(rows);
        QCOMPARE(changed.size(), 1);
        QCOMPARE(changed[0][0].toModelIndex().row(), 4);
        QCOMPARE(changed[0][1].toModelIndex().row(), 4);
        QCOMPARE(inserted.size(), 0);
    }

    void aRowThatRisesMoves() {
        ChoiceModel model;
        model.show({{"a", {}, {}, 0, -1, false}, {"b", {}, {}, 0, -1, false}, {"c", {}, {}, 0, -1, false}});
        QSignalSpy moved(&model, &QAbstractItemModel::rowsMoved);
        QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
        model.show({{"c", {}, {}, 0, -1, false}, {"a", {}, {}, 0, -1, false}, {"b", {}, {}, 0, -1, false}});
        QCOMPARE(moved.size(), 1);
        QCOMPARE(removed.size(), 0);
        QCOMPARE(model.valueAt(0), QStringLiteral("c"));
    }
};

CROWNRING_TEST(ListBaseTest, QCoreApplication)

}

#include "list_base_test.moc"
