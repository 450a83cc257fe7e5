// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The search from anywhere: registrations, items and serial numbers, requirements, inspections by their numbers, and
/// the journal with its people.

#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class Search : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    /// The value is a name or an id, of what is said by `What`.
    Q_PROPERTY(crownring::screen::ChoiceModel* found READ found CONSTANT FINAL)
    Q_PROPERTY(bool nothing READ nothing NOTIFY changed FINAL)
    /// Why a picture's tag led nowhere; empty where none was read, or it did.
    Q_PROPERTY(QString tagProblem READ tagProblem NOTIFY changed FINAL)
    Q_PROPERTY(bool readingTag READ isReadingTag NOTIFY changed FINAL)

public:
    enum class What { Balloon, Item, Requirement, Entry, Inspection };
    Q_ENUM(What)

    using Resident::Resident;
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString& words);
    [[nodiscard]] ChoiceModel* found() { return &m_found; }
    [[nodiscard]] bool nothing() const { return m_nothing; }
    /// Tells where to go from a row of what was found: one of the signals below. Without that row, nothing.
    Q_INVOKABLE void choose(int row);
    [[nodiscard]] QString tagProblem() const { return m_tagProblem; }
    [[nodiscard]] bool isReadingTag() const { return m_readingTag; }
    /// The item whose tag is on a picture is chosen; else `tagProblem` says why not.
    Q_INVOKABLE void readTag(const QUrl& picture);
    Q_INVOKABLE void forgetTag();

signals:
    void changed();
    void balloonChosen(const QString& balloon);
    void itemChosen(const QString& item);
    void requirementChosen(const QString& requirement);
    void entryChosen(const QString& entry);
    void inspectionChosen(const QString& inspection);

private:
    void look();
    [[nodiscard]] std::vector<Choice> inTheFleet() const;

    ChoiceModel m_found;
    QString m_words;
    int m_turn = 0;
    bool m_nothing = false;
    QString m_tagProblem;
    bool m_readingTag = false;
};

}
