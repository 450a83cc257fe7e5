// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What QML makes and what works with what all places share. QML's engine knows the house; in C++ it is handed over:
///
///     NextPlace place;
///     place.moveInto(house);
///
/// Who derives from it writes its whole name, by which the linter of QML finds it.

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

struct House;

class Resident : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ANONYMOUS
    Q_INTERFACES(QQmlParserStatus)

public:
    explicit Resident(QObject* parent = nullptr) : QObject(parent) {}

    /// Once, before anything else is asked of it.
    void moveInto(House& house);

    void classBegin() final;
    void componentComplete() override {}

protected:
    /// The house is there now: the place to listen and to look for the first time.
    virtual void movedIn() {}
    [[nodiscard]] House& house() const { return *m_house; }

private:
    House* m_house = nullptr;
};

}
