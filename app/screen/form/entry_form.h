// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A form that becomes one entry: a new one, the correction of one, or the void of one. Fittings that belong to it are
/// written with it.

#include "answers/taken_name.h"
#include "record/journal.h"
#include "screen/form/fitting_plan.h"
#include "screen/form/flight_kit.h"
#include "screen/form/form_fields.h"
#include "screen/form/form_plan.h"
#include "screen/form/form_writing.h"
#include "screen/form/plans/directive_form.h"
#include "screen/signing/own_code.h"

#include <QUrl>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <map>

namespace crownring::screen {

class EntryForm : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::FormFields* fields READ fields CONSTANT FINAL)
    /// What flies, of a flight.
    Q_PROPERTY(crownring::screen::FlightKit* kit READ kit CONSTANT FINAL)
    /// What to choose from for the field that is sought for.
    Q_PROPERTY(crownring::screen::ChoiceSift* sift READ sift CONSTANT FINAL)
    /// The row that is sought for; -1: none.
    Q_PROPERTY(int sought READ sought NOTIFY changed FINAL)
    Q_PROPERTY(bool open READ isOpen NOTIFY changed FINAL)
    /// Somebody has written something into it.
    Q_PROPERTY(bool touched READ isTouched NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString verb READ verb NOTIFY changed FINAL)
    /// Saving signs now, which is never what a key does by default.
    Q_PROPERTY(bool signing READ isSigning NOTIFY changed FINAL)
    /// What is wrong with the entry as a whole.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// What follows from the entry once it is written, in words.
    Q_PROPERTY(QString follows READ follows NOTIFY changed FINAL)
    Q_PROPERTY(bool saving READ saving NOTIFY changed FINAL)
    /// A photograph is being read.
    Q_PROPERTY(bool reading READ reading NOTIFY changed FINAL)
    /// Pictures that were taken lately and lie at hand, for a field of photographs.
    Q_PROPERTY(QStringList latestPictures READ latestPictures NOTIFY changed FINAL)

public:
    using Resident::Resident;

    /// @param kind an entry kind; the other texts may be empty
    Q_INVOKABLE void begin(const QString& kind, const QString& balloon = {}, const QString& item = {},
                           const QString& requirement = {});
    /// An entry of an inspection; `defect` may be empty, then one that is found gets a name of its own.
    /// @param scope what is inspected: no other item is offered; empty where the entry is of no inspection
    Q_INVOKABLE void beginAtBench(const QString& kind, const QString& inspection, const QString& defect,
                                  const QString& item, const QStringList& scope = {});
    /// Asks which task of a pilot-owner's list the work is, where there are any; `value` of a choice is the line.
    Q_INVOKABLE void offerTasks(const crownring::screen::ChoiceModel* tasks);
    /// The work is a repair or a modification: whether it is minor or major is needed.
    Q_INVOKABLE void askGrade();
    /// Of a repair: the panel that it is made at is needed, for a reading found the defect there.
    /// @param place gore, row, zone; of what it names none of nothing is asked
    Q_INVOKABLE void askPlace(const QVariantMap& place);
    /// A finding on a line of an inspection becomes a defect: its words, its item and the place that they name.
    Q_INVOKABLE void beginFinding(const QString& inspection, const QString& item, const QString& line,
                                  const QString& finding, const QStringList& scope);
    /// @param given values by key of the entry: those of fields stand in them, the rest is written with the entry
    /// @param about said above the form
    Q_INVOKABLE void beginWith(const QString& kind, const QString& item, const QVariantMap& given,
                               const QString& about);
    /// What is done with many items at once: a batch of cylinders, an answer to a directive.
    /// @param given texts that no field asks for, by key of the entry
    /// @param about said above the form, before the items
    Q_INVOKABLE void beginFor(const QString& kind, const QStringList& items, const QVariantMap& given = {},
                              const QString& about = {});
    /// A defect that was found on a flight: its day, and what flew to choose from.
    Q_INVOKABLE void defectOfFlight(const QString& entry);
    /// An event of a flight: its day, its landing, its track.
    Q_INVOKABLE void eventOfFlight(const QString& entry);
    Q_INVOKABLE void adopt(const QString& programme);
    /// A programme or a bulletin that stands in a file: its text goes into the record.
    Q_INVOKABLE void adoptFile(const QUrl& file);
    /// @param key of the field that is to be mended: it is needed, and the keyboard goes there
    Q_INVOKABLE void correct(const QString& entry, const QString& key = {});
    Q_INVOKABLE void voidEntry(const QString& entry);
    Q_INVOKABLE void setValue(int row, const QString& value);
    /// The day in a field: so many days before today.
    Q_INVOKABLE void setDaysAgo(int row, int days);
    Q_INVOKABLE void toggle(int row, const QString& choice);
    /// A picture file becomes one of the photographs of a field; it is kept when the entry is written.
    Q_INVOKABLE void attach(int row, const QUrl& file);
    /// What is asked back about a field is so.
    Q_INVOKABLE void answer(int row);
    /// Offers what can be chosen in a field through `sift`; -1: no longer.
    Q_INVOKABLE void seek(int row);
    /// The row where the keyboard should stand first: what is needed and empty; of a correction the first figure.
    Q_INVOKABLE int firstRow() const;
    /// A correction is tried out first: what it moves is shown, and saving again posts it.
    Q_INVOKABLE void save();
    Q_INVOKABLE void cancel();
    /// Leaves the form for what a problem speaks of.
    Q_INVOKABLE void go(const QString& wayTo);
    Q_INVOKABLE void goToMarked();

    [[nodiscard]] FormFields* fields() { return &m_fields; }
    [[nodiscard]] FlightKit* kit() { return &m_kit; }
    [[nodiscard]] ChoiceSift* sift() { return &m_sift; }
    [[nodiscard]] int sought() const { return m_sought; }
    [[nodiscard]] bool isOpen() const { return !m_writing.kind.empty(); }
    [[nodiscard]] bool isTouched() const { return m_touched; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const { return m_about; }
    [[nodiscard]] QString verb() const;
    [[nodiscard]] bool isSigning() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] QString follows() const { return m_follows; }
    [[nodiscard]] bool saving() const { return m_saving; }
    [[nodiscard]] bool reading() const { return m_reading > 0; }
    [[nodiscard]] QStringList latestPictures() const { return m_latestPictures; }

signals:
    void changed();
    void saved();
    /// The first row that is wrong or asked about.
    void marked(int row);
    void balloonAsked(const QString& balloon);
    void itemAsked(const QString& item);

private:
    void movedIn() override;
    void prepare(std::string_view kind, const FormSubject& subject);
    /// It is open now.
    void announce();
    void askPapers();
    [[nodiscard]] std::optional<Registration> newPapers() const;
    void offerOnly(const QStringList& items);
    void follow(std::string_view key);
    void beginMany(const QString& kind, FormSubject subject, const QVariantMap& given, const QString& about);
    void followDirective(std::string_view key);
    void askDirectives();
    void offerKnown();
    void askBound();
    [[nodiscard]] bool isAct() const;
    void saveAct();
    void showPlace();
    void askHoursOfOthers();
    [[nodiscard]] QString aboutDefect(const std::string& item, const std::string& defect) const;
    /// Where a form asks for a panel: that of the reading which found the defect.
    void proposePlaceOf(const ItemId& item, const std::string& defect);
    void takeEntry(const JournalLine& line, const std::string& mends);
    void need(std::string_view key);
    [[nodiscard]] std::vector<std::string> keysOf(std::string_view within) const;
    void offerAlso(std::vector<Choice> choices);
    void askKit();
    void askAgainst();
    void askDay();
    void askPictures();
    void askNames();
    /// Of the photographs that are chosen those that the record is to keep.
    [[nodiscard]] std::vector<Picture> newPictures() const;
    void touch();
    void forgetTried();
    void takeDay(const FittingDay& day);
    [[nodiscard]] bool corrects() const { return !m_amends.empty() && m_writing.kind != kindName<EntryVoided>(); }
    [[nodiscard]] std::optional<Registration> balloonOf(std::string_view key) const;
    [[nodiscard]] std::optional<Moment> moment() const;
    /// What is written, in its order; nothing where the fields do not say it yet.
    [[nodiscard]] std::optional<std::vector<NumberedEntry>> entries();
    [[nodiscard]] std::optional<std::vector<NumberedEntry>> wholeBalloon(const nlohmann::json& gathered);
    [[nodiscard]] bool statesHours(nlohmann::json& other);
    void add(std::vector<NumberedEntry>& written, Entry entry) const;
    [[nodiscard]] std::optional<nlohmann::json> amended(nlohmann::json gathered);
    void tryOut(const std::vector<NumberedEntry>& entries);
    void post(const std::vector<NumberedEntry>& entries);
    [[nodiscard]] QString saidOf(const std::vector<NumberedEntry>& written) const;
    void tell(const std::vector<Problem>& problems);
    void tellTaken(const TakenName& taken);
    /// The field in which a name stands that is taken.
    [[nodiscard]] std::string keyNaming(const QString& name, bool isBalloon) const;
    void tellMarked();
    [[nodiscard]] static QString sentToMarked(bool one);
    /// What is signed is shown first, and saving again signs it.
    [[nodiscard]] bool isReadFirst() const;
    void readOut();
    /// A code is asked of who signs with this form.
    void askForCode(bool isSigned);
    void showCode();
    [[nodiscard]] bool lacksCode();

    FormFields m_fields;
    OwnCode m_code;
    FlightKit m_kit;
    ChoiceSift m_sift;
    FormWriting m_writing;
    std::string m_amends; ///< the entry that is corrected or voided
    std::string m_mends;  ///< the key of the field that the correction is for; empty: none
    QString m_about;
    QString m_problem;
    QString m_follows;
    QString m_read;         ///< what is signed, once it is shown
    nlohmann::json m_tried; ///< the correction whose consequences are shown
    int m_sought = -1;
    int m_turn = 0;    ///< of questions to the record
    int m_against = 0; ///< of questions what stands against a kit
    int m_reading = 0; ///< photographs
    QStringList m_latestPictures;
    std::shared_ptr<const DirectivesKnown> m_known; ///< for a form of directives, once it is asked
    std::optional<AppliesTo> m_boundBy;             ///< what was asked last
    QString m_boundSaid;                            ///< and what was answered
    int m_boundTurn = 0;
    std::map<QString, Picture> m_pictures; ///< by digest, not kept yet
    bool m_saving = false;
    bool m_signed = false; ///< what it writes is signed
    bool m_touched = false;
    std::optional<Registration> m_papersOf; ///< a new balloon, whose papers are asked for once the fleet knows it
    bool m_papers = false;                  ///< the form asks for them
};

}
