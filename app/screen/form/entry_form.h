// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A form that becomes one entry: a new one, the correction of one, or the void of one.

#include "record/journal.h"
#include "screen/desk/resident.h"
#include "screen/form/form_field.h"
#include "screen/form/form_plan.h"

#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class EntryForm : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::FormFields* fields READ fields CONSTANT FINAL)
    Q_PROPERTY(bool open READ isOpen NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString verb READ verb NOTIFY changed FINAL)
    /// What is wrong with the entry as a whole.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool saving READ saving NOTIFY changed FINAL)

public:
    using Resident::Resident;

    /// @param kind an entry kind; the other texts may be empty
    Q_INVOKABLE void begin(const QString& kind, const QString& balloon = {}, const QString& item = {},
                           const QString& requirement = {});
    /// An entry of an inspection; `defect` may be empty, then one that is found gets a name of its own.
    Q_INVOKABLE void beginAtBench(const QString& kind, const QString& inspection, const QString& defect,
                                  const QString& item);
    /// @param given values by key of the entry: those of fields stand in them, the rest is written with the entry
    /// @param about said above the form
    Q_INVOKABLE void beginWith(const QString& kind, const QString& item, const QVariantMap& given,
                               const QString& about);
    Q_INVOKABLE void adopt(const QString& programme);
    Q_INVOKABLE void correct(const QString& entry);
    Q_INVOKABLE void voidEntry(const QString& entry);
    Q_INVOKABLE void setValue(int row, const QString& value);
    Q_INVOKABLE void toggle(int row, const QString& choice);
    Q_INVOKABLE void save();
    Q_INVOKABLE void cancel();

    [[nodiscard]] FormFields* fields() { return &m_fields; }
    [[nodiscard]] bool isOpen() const { return !m_kind.empty(); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const { return m_about; }
    [[nodiscard]] QString verb() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool saving() const { return m_saving; }

signals:
    void changed();
    void saved();

private:
    void open(std::string_view kind, const FormSubject& subject);
    void follow(std::string_view key);
    void takeEntry(const JournalLine& line);
    /// The entry's JSON from the fields; problems are put beside them.
    [[nodiscard]] std::optional<nlohmann::json> gathered();
    [[nodiscard]] nlohmann::json asCorrection(const nlohmann::json& gathered) const;
    void post(const nlohmann::json& object);
    void tell(const std::vector<Problem>& problems);

    FormFields m_fields;
    std::string m_kind;
    std::string m_amends;    ///< the entry that is corrected or voided
    nlohmann::json m_given;  ///< keys that no field asks for
    nlohmann::json m_before; ///< what a corrected entry says now
    QString m_about;
    QString m_problem;
    bool m_saving = false;
};

}
