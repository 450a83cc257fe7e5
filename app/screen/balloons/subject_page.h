// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The page of one balloon or one item: what it is, what is due on it, its items (a balloon's), its history.

#include "screen/balloons/item_model.h"
#include "screen/desk/due_model.h"
#include "screen/desk/journal_model.h"
#include "screen/desk/resident.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class SubjectPage : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Exactly one of the two is set.
    Q_PROPERTY(QString balloon READ balloon NOTIFY changed FINAL)
    Q_PROPERTY(QString item READ item NOTIFY changed FINAL)
    Q_PROPERTY(bool shown READ shown NOTIFY changed FINAL)
    /// In the record on the day asked.
    Q_PROPERTY(bool found READ found NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString clock READ clock NOTIFY changed FINAL)
    /// Of a balloon: the releases that were signed and that the record no longer supports.
    Q_PROPERTY(QString unsupported READ unsupported NOTIFY supportChanged FINAL)
    /// An item's balloon, or empty.
    Q_PROPERTY(QString fittedTo READ fittedTo NOTIFY changed FINAL)
    /// The envelope whose fabric belongs on the page: the item itself, or the one that is fitted; or empty.
    Q_PROPERTY(QString fabricOf READ fabricOf NOTIFY changed FINAL)
    /// Why it is out of service, and what that means; empty while it is in service.
    Q_PROPERTY(QString outOfService READ outOfService NOTIFY changed FINAL)
    /// Its rules know a review of its airworthiness; those of the United States have no such certificate.
    Q_PROPERTY(bool reviewed READ isReviewed NOTIFY changed FINAL)
    Q_PROPERTY(int standing READ standing NOTIFY changed FINAL)
    Q_PROPERTY(double used READ used NOTIFY changed FINAL)
    Q_PROPERTY(QString word READ word NOTIFY changed FINAL)
    Q_PROPERTY(QString left READ left NOTIFY changed FINAL)
    Q_PROPERTY(QString worst READ worst NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::ItemModel* items READ items CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::DueModel* dues READ dues CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::JournalModel* history READ history CONSTANT FINAL)

public:
    using Resident::Resident;

    Q_INVOKABLE void showBalloon(const QString& registration);
    Q_INVOKABLE void showItem(const QString& item);
    Q_INVOKABLE void clear();

    [[nodiscard]] QString balloon() const { return m_balloon; }
    [[nodiscard]] QString item() const { return m_item; }
    [[nodiscard]] bool shown() const { return !m_balloon.isEmpty() || !m_item.isEmpty(); }
    [[nodiscard]] bool found() const { return m_found; }
    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QString about() const { return m_about; }
    [[nodiscard]] QString clock() const { return m_clock; }
    [[nodiscard]] QString unsupported() const { return m_unsupported; }
    [[nodiscard]] QString fittedTo() const { return m_fittedTo; }
    [[nodiscard]] QString fabricOf() const { return m_fabricOf; }
    [[nodiscard]] QString outOfService() const { return m_outOfService; }
    [[nodiscard]] bool isReviewed() const { return m_reviewed; }
    [[nodiscard]] int standing() const { return m_worst.standing; }
    [[nodiscard]] double used() const { return m_worst.used; }
    [[nodiscard]] QString word() const { return m_worst.word; }
    [[nodiscard]] QString left() const { return m_worst.left; }
    [[nodiscard]] QString worst() const { return m_worst.title; }
    [[nodiscard]] ItemModel* items() { return &m_items; }
    [[nodiscard]] DueModel* dues() { return &m_dues; }
    [[nodiscard]] JournalModel* history() { return &m_history; }

signals:
    void changed();
    void supportChanged();

private:
    void movedIn() override;
    void look();
    void lookAtBalloon(const Sheet& sheet);
    void lookAtItem(const Sheet& sheet);
    void sayOut(const OutOfService& out);
    void askMeanwhile();
    void askHistory();
    void askSupport();
    void showUnsupported(const QStringList& said);

    QString m_balloon;
    QString m_item;
    bool m_found = false;
    QString m_title;
    QString m_about;
    QString m_clock;
    QString m_unsupported;
    QString m_fittedTo;
    QString m_fabricOf;
    QString m_outOfService;
    bool m_laidUp = false;
    bool m_reviewed = true;
    ItemLine m_worst;
    ItemModel m_items;
    DueModel m_dues;
    JournalModel m_history;
    int m_turn = 0;
};

}
