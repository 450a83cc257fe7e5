// SPDX-License-Identifier: GPL-3.0-or-later

/// A date that crosses into JavaScript becomes a moment at UTC midnight and shows the day before west of Greenwich. The
/// trap is proven first, so that this test cannot pass by accident; then that what we hand over does not fall into it.

#include "screen/desk/day.h"
#include "test_class.h"

#include <QDate>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>
#include <QTimeZone>

namespace date_trap_test {

using namespace crownring;
using namespace crownring::screen;

class Naive : public QObject {
    Q_OBJECT
    Q_PROPERTY(QDate on READ on CONSTANT)
    Q_PROPERTY(QDateTime at READ at CONSTANT)
public:
    [[nodiscard]] QDate on() const { return {2024, 3, 1}; }
    [[nodiscard]] QDateTime at() const { return {QDate(2024, 3, 1), QTime(5, 30), QTimeZone(9 * 3600)}; }
};

class DateTrapTest : public QObject {
    Q_OBJECT

private:
    static QVariant shown(QObject& source, const char* expression) {
        QQmlEngine engine;
        QQmlComponent component(&engine);
        component.setData(
            QByteArray("import QtQml\nQtObject { required property QtObject source; property var shown: ") +
                expression + " }",
            QUrl());
        const std::unique_ptr<QObject> object(
            component.createWithInitialProperties({{QStringLiteral("source"), QVariant::fromValue(&source)}}));
        return object ? object->property("shown") : QVariant();
    }

private slots:
    void aQDateShowsTheDayBefore() {
        Naive naive;
        QCOMPARE(shown(naive, "source.on.getDate()").toInt(), 29);
    }

    void aMomentLosesItsZone() {
        Naive naive;
        const auto back = shown(naive, "source.at").toDateTime();
        QCOMPARE(back, naive.at()); // the same instant
        QCOMPARE(back.timeSpec(), Qt::LocalTime);
        QCOMPARE(back.time(), QTime(15, 30)); // of the day before, in New York
    }

    void ourDaysAreText() {
        Day day(*CivilDate::parse("2024-03-01"));
        QCOMPARE(shown(day, "source.asked").toString(), QStringLiteral("2024-03-01"));
        QCOMPARE(shown(day, "typeof source.asked").toString(), QStringLiteral("string"));
        QVERIFY(shown(day, "source.spoken").toString().contains(QStringLiteral("March 1")) ||
                shown(day, "source.spoken").toString().contains(QStringLiteral("1 March")));
        for (int at = 0; at < Day::staticMetaObject.propertyCount(); ++at) {
            const auto type = Day::staticMetaObject.property(at).metaType();
            QVERIFY(type != QMetaType::fromType<QDate>() && type != QMetaType::fromType<QDateTime>());
        }
    }
};

CROWNRING_TEST(DateTrapTest, QCoreApplication)

}

#include "date_trap_test.moc"
