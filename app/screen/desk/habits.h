// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the program remembers of its user between two starts: tones, who writes into each record, how what comes next
/// is looked at. It lives among the settings of the program's organisation; what was kept before it named one is taken
/// over once.

#include "screen/desk/mine.h"

#include <QHash>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Habits : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY changed FINAL)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY changed FINAL)
    /// The strip over what comes next is folded away.
    Q_PROPERTY(bool horizonFolded READ horizonFolded WRITE setHorizonFolded NOTIFY changed FINAL)

    /// Where the camera puts its pictures; empty: among the user's pictures.
    Q_PROPERTY(QString cameraFolder READ cameraFolder WRITE setCameraFolder NOTIFY changed FINAL)

    /// The desktop says when a balloon comes near what governs it.
    Q_PROPERTY(bool tellsLimits READ tellsLimits WRITE setTellsLimits NOTIFY changed FINAL)

    /// The balloons that are called one's own, in the record that is open; by registration.
    Q_PROPERTY(QStringList mine READ mine NOTIFY mineChanged FINAL)
    /// Lists show these and what is fitted to them, and nothing else.
    Q_PROPERTY(bool mineOnly READ mineOnly WRITE setMineOnly NOTIFY mineChanged FINAL)

public:
    /// @param remembered false: nothing is read or written (tests, pictures)
    explicit Habits(bool remembered, QObject* parent = nullptr);
    static Habits* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] bool dark() const { return m_dark; }
    void setDark(bool dark);
    [[nodiscard]] QString person() const { return m_person; }
    void setPerson(const QString& person);
    /// Who inspects at the bench of the record that is open: whoever fills a form elsewhere does not change it. After a
    /// start it is nobody until somebody says so: nothing is written in a name that nobody gave.
    [[nodiscard]] QString inspector() const { return m_inspector; }
    /// Who inspected there before this start, to be offered.
    [[nodiscard]] QString lastInspector() const { return m_lastInspector; }
    void setInspector(const QString& inspector);
    /// Whose instruments are used at that bench.
    [[nodiscard]] QString station() const { return m_station; }
    void setStation(const QString& station);
    /// Who writes and inspects, with whose instruments, and which balloons are one's own, is remembered for each record
    /// by itself: nobody writes into one in the name that another knows.
    void turnTo(const QString& record);
    [[nodiscard]] bool horizonFolded() const { return m_horizonFolded; }
    void setHorizonFolded(bool folded);
    [[nodiscard]] QString cameraFolder() const { return m_cameraFolder; }
    void setCameraFolder(const QString& folder);
    /// By what the list of what comes next is grouped: the name that the place gives it; empty until it was chosen.
    [[nodiscard]] QString grouping() const { return m_grouping; }
    void setGrouping(const QString& grouping);

    [[nodiscard]] bool tellsLimits() const { return m_tellsLimits; }
    void setTellsLimits(bool tells);
    /// What the desktop has said of the record that is open, as keys.
    [[nodiscard]] const QStringList& told() const { return m_told; }
    /// The latest of them are remembered.
    void setTold(QStringList told);
    /// Of the record that is open: what visits are planned with; empty until a file was chosen.
    [[nodiscard]] QString stationsFile() const { return m_stationsFile; }
    void setStationsFile(const QString& file);

    [[nodiscard]] const QStringList& mine() const { return m_mine; }
    Q_INVOKABLE bool isMine(const QString& balloon) const { return m_mine.contains(balloon); }
    Q_INVOKABLE void setMine(const QString& balloon, bool mine);
    [[nodiscard]] bool mineOnly() const { return m_mineOnly && !m_mine.isEmpty(); }
    void setMineOnly(bool only);
    /// What lists look at.
    [[nodiscard]] Mine looked() const;

signals:
    void changed();
    void mineChanged();

private:
    template <class Value>
    void keep(Value& have, const Value& next, const char* key);
    void remember(const QString& key, const QVariant& value) const;

    bool m_remembered;
    bool m_dark = false;
    QString m_record;
    bool m_horizonFolded = false;
    QString m_person;
    QString m_inspector;
    QString m_lastInspector;
    QHash<QString, QString> m_saidInspectors; ///< by record, since the start
    QString m_station;
    QString m_grouping;
    QString m_cameraFolder;
    bool m_tellsLimits = true;
    QStringList m_told;
    QString m_stationsFile;
    QStringList m_mine;
    bool m_mineOnly = false;
};

}
