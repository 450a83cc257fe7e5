// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One inspection on the bench: its parts in the order in which one works, the lines of the part at hand, and every
/// line saved as it is settled. `savedAs` says what the record holds: it changes only when the record has answered.

#include "bench/release/bench_file.h"
#include "screen/bench/bench_rows.h"
#include "screen/bench/check_group_model.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace crownring::screen {

class InspectionDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString inspection READ inspection WRITE setInspection NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL) ///< empty while it is open
    Q_PROPERTY(QString since READ since NOTIFY changed FINAL) ///< what speaks against its signature by now, in lines
    Q_PROPERTY(bool abandoned READ isAbandoned NOTIFY changed FINAL)
    /// As `StateBox` shows it: 1 released, 2 abandoned, 3 a list, 4 withdrawn, 5 no longer supported, 6 a pending list
    Q_PROPERTY(int endedAs READ endedAs NOTIFY changed FINAL)
    /// On whose page the list waits that it was closed with; empty where none does.
    Q_PROPERTY(QString listedAt READ listedAt NOTIFY changed FINAL)
    Q_PROPERTY(bool withdrawable READ isWithdrawable NOTIFY changed FINAL) ///< a release that holds
    Q_PROPERTY(bool loaded READ loaded NOTIFY changed FINAL)
    Q_PROPERTY(bool open READ isOpen NOTIFY changed FINAL)
    /// Of work that is described is asked whether it is minor or major.
    Q_PROPERTY(bool graded READ isGradedVisit NOTIFY changed FINAL)
    /// label: section; detail: items and "4 of 12"; number: lines still open; chosen: at hand
    Q_PROPERTY(crownring::screen::ChoiceModel* parts READ parts CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::CheckLineModel* lines READ lines CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::CheckGroupModel* grid READ grid CONSTANT FINAL) ///< the same, each line once
    Q_PROPERTY(int partAt READ partAt WRITE setPartAt NOTIFY changed FINAL) ///< the row of `parts` at hand; -1: none
    Q_PROPERTY(QString partTitle READ partTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString partDetail READ partDetail NOTIFY changed FINAL) ///< "ENV-1012 · 4 of 13"
    Q_PROPERTY(int restOpen READ restOpen NOTIFY changed FINAL)         ///< lines that `settleRest` would settle
    Q_PROPERTY(int partOpen READ partOpen NOTIFY changed FINAL)         ///< open lines of the part at hand
    /// What it leaves alone of these, and why: "2 want a look of their own"
    Q_PROPERTY(QString restLeft READ restLeft NOTIFY changed FINAL)
    /// In work that is no inspection: of what nothing is asked, and why; else empty.
    Q_PROPERTY(QString untouched READ untouched NOTIFY changed FINAL)
    Q_PROPERTY(int linesOpen READ linesOpen NOTIFY changed FINAL) ///< required ones, in all parts
    Q_PROPERTY(int linesAll READ linesAll NOTIFY changed FINAL)
    /// value: id; label: what was found; detail: item and state; number: 1 where nobody may defer it, 2 where a
    /// reading found it, which is put right before it is cleared; standing: of its
    /// row; chosen: it bars flight
    Q_PROPERTY(crownring::screen::ChoiceModel* defects READ defects CONSTANT FINAL)
    Q_PROPERTY(int barring READ barring NOTIFY changed FINAL) ///< open defects that bar flight
    /// How many defects ground the balloon; of an inspection that ended with a list, how much of the list stands.
    Q_PROPERTY(QString defectsSaid READ defectsSaid NOTIFY changed FINAL)
    /// What stood on that list besides defects. label: what; detail: item, whether it is answered; chosen: it stands
    Q_PROPERTY(crownring::screen::ChoiceModel* listedBesides READ listedBesides CONSTANT FINAL)
    /// Digests by the name of a defect, of those that have any.
    Q_PROPERTY(QVariantMap defectPhotographs READ defectPhotographs NOTIFY changed FINAL)
    /// Repairs made and parts replaced. label: what; detail: where, who
    Q_PROPERTY(crownring::screen::ChoiceModel* repairs READ repairs CONSTANT FINAL)
    /// Testers in calibration on the day asked.
    Q_PROPERTY(crownring::screen::ChoiceModel* testers READ testers CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* items READ items CONSTANT FINAL)
    /// Of a visit of pilot-owner's tasks: these, with their rule; what is written of work says which it is.
    Q_PROPERTY(crownring::screen::ChoiceModel* ownerTasks READ ownerTasks CONSTANT FINAL)
    Q_PROPERTY(QStringList scope READ scope NOTIFY changed FINAL)      ///< the names of what is inspected
    Q_PROPERTY(QString savedAs READ savedAs NOTIFY savedChanged FINAL) ///< "58 entries saved"
    Q_PROPERTY(bool saving READ saving NOTIFY savedChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY savedChanged FINAL)
    /// Who writes at this bench; nothing is written while nobody is chosen.
    Q_PROPERTY(QString inspector READ inspector WRITE setInspector NOTIFY inspectorChanged FINAL)
    /// Names to choose from: who inspected here before, who wrote in this inspection, who is authorised to sign.
    Q_PROPERTY(QStringList inspectors READ inspectors NOTIFY changed FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] QString inspection() const { return m_inspection; }
    void setInspection(const QString& inspection);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] QString outcome() const;
    [[nodiscard]] QString since() const;
    [[nodiscard]] bool isAbandoned() const;
    [[nodiscard]] int endedAs() const;
    [[nodiscard]] QString listedAt() const;
    [[nodiscard]] bool isWithdrawable() const;
    [[nodiscard]] bool loaded() const { return m_file != nullptr; }
    [[nodiscard]] bool isOpen() const { return m_file && m_file->inspection.isOpen(); }
    [[nodiscard]] bool isGradedVisit() const { return m_file && isGraded(m_file->visit()); }
    [[nodiscard]] ChoiceModel* parts() { return &m_parts; }
    [[nodiscard]] CheckLineModel* lines() { return &m_lines; }
    [[nodiscard]] CheckGroupModel* grid() { return &m_grid; }
    [[nodiscard]] int partAt() const;
    void setPartAt(int at);
    [[nodiscard]] QString partTitle() const;
    [[nodiscard]] QString partDetail() const;
    [[nodiscard]] int restOpen() const;
    [[nodiscard]] int partOpen() const;
    [[nodiscard]] QString restLeft() const;
    [[nodiscard]] QString untouched() const;
    [[nodiscard]] int linesOpen() const { return m_linesOpen; }
    [[nodiscard]] int linesAll() const { return m_linesAll; }
    [[nodiscard]] QVariantMap defectPhotographs() const;
    [[nodiscard]] ChoiceModel* defects() { return &m_defects; }
    [[nodiscard]] QString defectsSaid() const;
    [[nodiscard]] ChoiceModel* listedBesides() { return &m_listedBesides; }
    [[nodiscard]] int barring() const { return m_barring; }
    [[nodiscard]] ChoiceModel* repairs() { return &m_repairs; }
    [[nodiscard]] ChoiceModel* testers() { return &m_testers; }
    [[nodiscard]] ChoiceModel* items() { return &m_items; }
    [[nodiscard]] ChoiceModel* ownerTasks() { return &m_ownerTasks; }
    [[nodiscard]] QStringList scope() const;
    [[nodiscard]] QString savedAs() const { return m_savedAs; }
    [[nodiscard]] bool saving() const { return m_pending > 0; }
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] QString inspector() const;
    void setInspector(const QString& inspector);
    [[nodiscard]] QStringList inspectors() const;
    /// Whose instruments are used at this bench: that of the last one that said so.
    [[nodiscard]] QString station() const;
    void setStation(const QString& station);

    /// @param row of `lines`; @param state 0 open, 1 done
    Q_INVOKABLE void settle(int row, int state);
    /// It does not apply. @param why 0 not fitted, 1 not asked for by the manual, 2 other; @param words the manual's
    /// page with 1, the reason with 2
    Q_INVOKABLE void leaveOut(int row, int why, const QString& words);
    Q_INVOKABLE void setFinding(int row, const QString& finding);
    Q_INVOKABLE void setTester(int row, const QString& tester);
    /// A picture file; it is kept in the record, at most 2,000 pixels wide or high.
    Q_INVOKABLE void addPhotograph(int row, const QUrl& file);
    /// Nothing was found on the open lines of the part at hand that ask for nothing but a look: they are done. What
    /// wants a look of its own, readings or test equipment, what is optional and what has a finding stays open.
    Q_INVOKABLE void settleRest();
    /// The next part with lines to be looked at; true when there is one.
    Q_INVOKABLE bool nextPart();
    /// Item and line of the first open line of the part at hand that waits for readings; empty: none does.
    Q_INVOKABLE QStringList awaited() const;
    /// The row of the first open line of the part at hand that wants a look of its own; -1: none.
    Q_INVOKABLE int nextLook() const;
    /// Goes to the part that holds this line. @param item empty: of any item; @return its row, -1: no such line
    Q_INVOKABLE int showLine(const QString& line, const QString& item = {});
    /// The item that an open defect is on; empty where there is no such defect.
    Q_INVOKABLE QString itemOfDefect(const QString& defect) const;
    /// A reading found it: it is read again.
    Q_INVOKABLE bool isReadAgain(const QString& defect) const;
    /// Where that reading was taken: gore, row, zone; what it names none of is left out.
    Q_INVOKABLE QVariantMap placeOfDefect(const QString& defect) const;

    [[nodiscard]] const std::shared_ptr<const BenchFile>& file() const { return m_file; }
    /// Posts entries of this inspection, all or none, on the day asked and at this minute, by the bench's inspector.
    void post(std::vector<Body> bodies);
    /// After the record was written to by others.
    void askAgain();
    /// Asks for the inspector.
    [[nodiscard]] static QString whoFirst();

signals:
    void changed();
    void savedChanged();
    void inspectorChanged();
    /// A reading was written here, and the file holds it.
    void taken(const crownring::ReadingTaken& reading);

private:
    void movedIn() override;
    void take(std::shared_ptr<const BenchFile> file);
    void name(DefectFound& found, const std::vector<NumberedEntry>& before) const;
    void goTo(const WorkPart& part);
    void showParts();
    void showLines();
    void showDefects();
    /// What was handed over last for a line of the part at hand, or what the record says of it.
    [[nodiscard]] std::optional<LineSettled> lineAt(int row) const;
    void settleAs(LineSettled line);
    /// Something was written down on it, or is being saved: it is no line on which nothing was found.
    [[nodiscard]] bool isFoundOn(const WorkLine& work) const;

    QString m_inspection;
    std::shared_ptr<const BenchFile> m_file;
    ChoiceModel m_parts;
    CheckLineModel m_lines;
    CheckGroupModel m_grid;
    ChoiceModel m_defects;
    ChoiceModel m_listedBesides;
    ChoiceModel m_repairs;
    ChoiceModel m_testers;
    ChoiceModel m_items;
    ChoiceModel m_ownerTasks;
    std::optional<WorkPart> m_part;
    QString m_savedAs;
    QString m_problem;
    QTimer m_others;                   ///< another inspector may be at work on the same record
    std::vector<LineSettled> m_handed; ///< not answered for yet
    int m_linesOpen = 0;
    int m_linesAll = 0;
    int m_barring = 0;
    int m_pending = 0;
    int m_turn = 0;
};

}
