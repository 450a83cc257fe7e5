// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What follows from a reading: its line is settled with the last one that it asks for, and what was read may be the
/// same on the other items of its kind.

#include "screen/bench/reading_desk.h"

namespace crownring::screen {

class AfterReading : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::ReadingDesk* reader READ reader WRITE setReader NOTIFY changed FINAL REQUIRED)
    /// A test is done with its last reading, where all of them pass. A line that wants a look besides is not: it is
    /// left to who looks.
    Q_PROPERTY(bool settling READ isSettling WRITE setSettling NOTIFY changed FINAL)
    /// How many items the held load of the series at hand is asked of and would pass on, this one included; 0 unless
    /// there are others.
    Q_PROPERTY(int alike READ alike NOTIFY changed FINAL)
    /// Those items: "BRN-1, HSE-1, CYL-1"; empty unless there are others.
    Q_PROPERTY(QString alikeItems READ alikeItems NOTIFY changed FINAL)
    /// How many other items of its kind the latest reading is still asked of and would pass on.
    Q_PROPERTY(int others READ others NOTIFY changed FINAL)
    Q_PROPERTY(QString latest READ latest NOTIFY changed FINAL) ///< "2 mm"

public:
    using QObject::QObject;
    [[nodiscard]] ReadingDesk* reader() const { return m_reader; }
    void setReader(ReadingDesk* reader);
    [[nodiscard]] bool isSettling() const { return m_settling; }
    void setSettling(bool settling);
    [[nodiscard]] int alike() const;
    [[nodiscard]] QString alikeItems() const;
    [[nodiscard]] int others() const;
    [[nodiscard]] QString latest() const;

    /// The latest reading was the same on the others: one is written for each.
    Q_INVOKABLE void takeOnOthers();
    /// What is being handed over holds for the others too.
    Q_INVOKABLE void takeOnAll();

signals:
    void changed();
    void tookOnOthers();

private:
    void follow();
    void take(const ReadingTaken& reading);
    void settle(const ReadingTaken& reading);
    /// Items of the same kind that the same quantity is still asked of, with the line that asks; of a leak test all
    /// that is put together for it.
    [[nodiscard]] std::vector<AskedFor> othersOf(const AskedFor& of) const;
    /// The same reading on each of those where it passes. What passes on one may fail on another, by another type's
    /// manual: that brings a defect and is read by itself.
    [[nodiscard]] std::vector<ReadingTaken> passingOnOthers(const ReadingTaken& reading) const;
    [[nodiscard]] std::vector<ReadingTaken> heldOnOthers() const;

    ReadingDesk* m_reader = nullptr;
    InspectionDesk* m_desk = nullptr;
    QString m_inspection; ///< that is at hand
    std::optional<ReadingTaken> m_latest;
    bool m_settling = true;
    bool m_onAll = false;
};

}
