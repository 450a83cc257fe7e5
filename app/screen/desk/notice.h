// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What has just happened, for ten seconds, with a way back. Undo voids the entries that were just written; the record
/// keeps both.

#include "record/journal.h"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <vector>

class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Day;
class RecordDesk;

class Notice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(bool shown READ shown NOTIFY changed FINAL)
    Q_PROPERTY(bool trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(bool undoable READ undoable NOTIFY changed FINAL)

public:
    /// @pre both live longer
    Notice(const Day& day, RecordDesk& desk);
    static Notice* create(QQmlEngine*, QJSEngine*);

    void tell(const QString& text);
    void tellWritten(const QString& text, const std::vector<EntryId>& written, const QString& by);
    void tellTrouble(const QString& text);

    Q_INVOKABLE void undo();
    Q_INVOKABLE void dismiss();

    [[nodiscard]] QString text() const { return m_text; }
    [[nodiscard]] bool shown() const { return !m_text.isEmpty(); }
    [[nodiscard]] bool trouble() const { return m_trouble; }
    [[nodiscard]] bool undoable() const { return !m_written.empty(); }

signals:
    void changed();

private:
    void show(const QString& text, bool trouble, std::vector<EntryId> written, const QString& by);

    const Day& m_day;
    RecordDesk& m_desk;
    QString m_text;
    QString m_by;
    bool m_trouble = false;
    std::vector<EntryId> m_written;
    QTimer m_timer;
};

}
