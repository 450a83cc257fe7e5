// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The fleet on the day asked, for all places: asked once of the record as a whole, then again for what entries touch.
/// The due list comes first; what governs balloons follows a moment later, and only then is the sheet there.

#include "screen/desk/fleet_sheet.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Day;
class RecordDesk;

class Fleet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    Q_PROPERTY(bool asking READ asking NOTIFY askingChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ empty NOTIFY changed FINAL)

public:
    /// @pre both live longer
    Fleet(const Day& day, RecordDesk& desk);
    static Fleet* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] const Sheet& sheet() const { return m_sheet; } ///< null before the first answer
    /// The same, or the due list alone while what governs balloons is still asked for.
    [[nodiscard]] const Sheet& list() const { return m_list; }
    /// None before the first answer.
    [[nodiscard]] std::shared_ptr<const words::Titles> titles() const;
    [[nodiscard]] bool ready() const { return m_sheet != nullptr; }
    [[nodiscard]] bool asking() const { return m_asking; }
    [[nodiscard]] QString problem() const { return m_problem; }
    /// Nothing was entered up to the day asked.
    [[nodiscard]] bool empty() const;

signals:
    /// `list` is another one.
    void listed();
    /// `sheet` is another one; whether it only mends the one before, the sheet tells.
    void changed();
    void askingChanged();

private:
    void askAgain();
    void askWhole();
    void askMend();
    void forget();
    void take(const Sheet& sheet);
    void finish();
    void fail(const Problem& problem);
    void setAsking(bool asking);

    const Day& m_day;
    RecordDesk& m_desk;
    Sheet m_sheet;
    Sheet m_list;
    QString m_problem;
    int m_turn = 0;
    bool m_asking = false;
    bool m_again = false; ///< something was written meanwhile
    bool m_kept = false;  ///< the sheet is of the record that is open and the day asked
};

}
