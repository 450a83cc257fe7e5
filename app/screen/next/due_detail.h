// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One due row with everything behind it: the requirement, its source, each limit with what it counts from, and why.

#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class DueDetail : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString item READ item WRITE setItem NOTIFY subjectChanged FINAL)
    Q_PROPERTY(QString requirement READ requirement WRITE setRequirement NOTIFY subjectChanged FINAL)
    Q_PROPERTY(bool found READ found NOTIFY changed FINAL)
    Q_PROPERTY(bool defect READ isDefect NOTIFY changed FINAL)         ///< the row is an open defect, no requirement
    Q_PROPERTY(bool deferrable READ isDeferrable NOTIFY changed FINAL) ///< a defect that somebody may put off
    Q_PROPERTY(bool list READ isList NOTIFY changed
                   FINAL) ///< the row is a list of discrepancies or an incomplete release, pending
    Q_PROPERTY(bool directive READ isDirective NOTIFY changed FINAL) ///< the row is a directive or bulletin
    Q_PROPERTY(QString directiveNumber READ directiveNumber NOTIFY changed FINAL)
    Q_PROPERTY(bool fabric READ isFabric NOTIFY changed FINAL) ///< the row is of readings of fabric
    Q_PROPERTY(QStringList photographs READ photographs NOTIFY photographsChanged FINAL) ///< digests, of a defect
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString where READ where NOTIFY changed FINAL)
    Q_PROPERTY(QString balloon READ balloon NOTIFY changed FINAL)
    Q_PROPERTY(QString source READ source NOTIFY changed FINAL)
    Q_PROPERTY(QString programme READ programme NOTIFY changed FINAL)
    Q_PROPERTY(QString rule READ rule NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note NOTIFY changed FINAL)
    Q_PROPERTY(QString because READ because NOTIFY changed FINAL)
    Q_PROPERTY(QString remark READ remark NOTIFY changed FINAL)
    Q_PROPERTY(int standing READ standing NOTIFY changed FINAL)
    Q_PROPERTY(QString standingWord READ standingWord NOTIFY changed FINAL)
    Q_PROPERTY(double used READ used NOTIFY changed FINAL)
    Q_PROPERTY(QString left READ left NOTIFY changed FINAL)
    Q_PROPERTY(QString due READ due NOTIFY changed FINAL)
    /// Each limit: what it counts, from what to what, what is left.
    Q_PROPERTY(crownring::screen::ChoiceModel* limits READ limits CONSTANT FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] QString item() const { return m_item; }
    void setItem(const QString& item);
    [[nodiscard]] QString requirement() const { return m_requirement; }
    void setRequirement(const QString& requirement);
    Q_INVOKABLE void show(const QString& item, const QString& requirement);

    [[nodiscard]] bool found() const { return m_row != nullptr; }
    [[nodiscard]] bool isDefect() const;
    [[nodiscard]] bool isDeferrable() const;
    [[nodiscard]] bool isList() const;
    [[nodiscard]] bool isFabric() const;
    [[nodiscard]] bool isDirective() const;
    [[nodiscard]] QString directiveNumber() const;
    [[nodiscard]] QStringList photographs() const { return m_photographs; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString where() const;
    [[nodiscard]] QString balloon() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] QString programme() const;
    [[nodiscard]] QString rule() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString because() const;
    [[nodiscard]] QString remark() const;
    [[nodiscard]] int standing() const;
    [[nodiscard]] QString standingWord() const;
    [[nodiscard]] double used() const;
    [[nodiscard]] QString left() const;
    [[nodiscard]] QString due() const;
    [[nodiscard]] ChoiceModel* limits() { return &m_limits; }

signals:
    void subjectChanged();
    void changed();
    void photographsChanged();

private:
    void movedIn() override;
    void look();
    void askPhotographs();
    void showPhotographs(const std::vector<std::string>& digests);

    QString m_item;
    QString m_requirement;
    Sheet m_sheet;
    const DueRow* m_row = nullptr;
    ChoiceModel m_limits;
    QStringList m_photographs;
    int m_turn = 0; ///< of questions to the record
};

}
