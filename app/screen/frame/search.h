// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The search from anywhere: registrations, items and serial numbers, requirements, and the journal with its people.

#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class Search : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    /// Value: "balloon:QE-OVA", "item:…", "requirement:…", "entry:…".
    Q_PROPERTY(crownring::screen::ChoiceModel* found READ found CONSTANT FINAL)
    Q_PROPERTY(bool nothing READ nothing NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString& words);
    [[nodiscard]] ChoiceModel* found() { return &m_found; }
    [[nodiscard]] bool nothing() const { return m_nothing; }
    /// Tells where to go: one of the signals below.
    Q_INVOKABLE void choose(const QString& value);

signals:
    void changed();
    void balloonChosen(const QString& balloon);
    void itemChosen(const QString& item);
    void requirementChosen(const QString& requirement);
    void entryChosen(const QString& entry);

private:
    void look();
    [[nodiscard]] std::vector<Choice> inTheFleet() const;

    ChoiceModel m_found;
    QString m_words;
    int m_turn = 0;
    bool m_nothing = false;
};

}
