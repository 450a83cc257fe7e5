// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The directives of the record, and the page of one: whom it binds, of whom nobody knows, who is not bound and why;
/// several of them are ticked, to be answered for at once.

#include "answers/directives/book.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/directives/directive_model.h"
#include "screen/directives/held_model.h"

#include <QtQml/qqmlregistration.h>

#include <set>

namespace crownring::screen {

class DirectivesDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// What is not seen is not asked for: it is held against the whole fleet.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::DirectiveModel* directives READ directives CONSTANT FINAL)
    /// The entry of the one whose page it is; empty: none.
    Q_PROPERTY(QString entry READ entry NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)
    Q_PROPERTY(QString revision READ revision NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString applies READ applies NOTIFY changed FINAL)
    Q_PROPERTY(QString rule READ rule NOTIFY changed FINAL)
    Q_PROPERTY(QString source READ source NOTIFY changed FINAL)
    Q_PROPERTY(QString supersedes READ supersedes NOTIFY changed FINAL)
    /// It may still be answered: it is no history.
    Q_PROPERTY(bool answerable READ isAnswerable NOTIFY changed FINAL)
    /// 0 whom it binds, 1 of whom nobody knows, 2 who is not bound.
    Q_PROPERTY(int leaf READ leaf WRITE setLeaf NOTIFY changed FINAL)
    Q_PROPERTY(int bound READ bound NOTIFY changed FINAL)
    Q_PROPERTY(int unknown READ unknown NOTIFY changed FINAL)
    Q_PROPERTY(int notBound READ notBound NOTIFY changed FINAL)
    /// The items of the leaf.
    Q_PROPERTY(crownring::screen::HeldModel* held READ held CONSTANT FINAL)
    /// How many of the leaf are not answered yet.
    Q_PROPERTY(int open READ open NOTIFY changed FINAL)
    Q_PROPERTY(QStringList ticked READ ticked NOTIFY changed FINAL)

public:
    using Resident::Resident;

    Q_INVOKABLE void show(const QString& entry);
    /// The revision of that number that is in force, else the latest.
    Q_INVOKABLE void showNumber(const QString& number);
    Q_INVOKABLE void toggle(const QString& item);
    /// All of the leaf that are not answered yet; none where all of them are ticked.
    Q_INVOKABLE void tickOpen();

    [[nodiscard]] bool shown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] bool ready() const { return m_book != nullptr; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] DirectiveModel* directives() { return &m_directives; }
    [[nodiscard]] QString entry() const { return m_line ? m_entry : QString(); }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString number() const;
    [[nodiscard]] QString revision() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString applies() const;
    [[nodiscard]] QString rule() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] QString supersedes() const;
    [[nodiscard]] bool isAnswerable() const;
    [[nodiscard]] int leaf() const { return m_leaf; }
    void setLeaf(int leaf);
    [[nodiscard]] int bound() const { return m_line ? m_line->bound() : 0; }
    [[nodiscard]] int unknown() const { return count(DirectiveShare::Unknown); }
    [[nodiscard]] int notBound() const { return count(DirectiveShare::NotBound); }
    [[nodiscard]] HeldModel* held() { return &m_held; }
    [[nodiscard]] int open() const;
    [[nodiscard]] QStringList ticked() const;

signals:
    void changed();
    void shownChanged();

private:
    void movedIn() override;
    void follow();
    void ask();
    void look();
    void showHeld();
    [[nodiscard]] int count(DirectiveShare share) const { return m_line ? m_line->count(share) : 0; }
    [[nodiscard]] bool isOfLeaf(const DirectiveRow& row) const;
    /// Those of the leaf that nobody has answered yet.
    [[nodiscard]] std::vector<const DirectiveRow*> openRows() const;

    Sheet m_sheet; ///< for which the book was asked
    std::shared_ptr<const DirectiveBook> m_book;
    const DirectiveLine* m_line = nullptr; ///< in it
    QString m_entry;
    QString m_wanted; ///< a number to be shown once the book is there
    QString m_problem;
    DirectiveModel m_directives;
    HeldModel m_held;
    std::set<ItemId> m_ticked;
    int m_leaf = 0;
    int m_turn = 0;
    bool m_shown = false;
};

}
