// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Things to choose from, sifted by what is typed: any part of a name, a serial number, a type or a place, in any order
/// of words; capitals, accents and marks do not matter. What stands first stays first.

#include "screen/lists/choice_model.h"

namespace crownring::screen {

class ChoiceSift : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by who offers a choice")
    Q_PROPERTY(crownring::screen::ChoiceModel* hits READ hits CONSTANT FINAL)
    Q_PROPERTY(QString sought READ sought WRITE setSought NOTIFY changed FINAL)
    /// How many more there are than are shown.
    Q_PROPERTY(int more READ more NOTIFY changed FINAL)

public:
    /// More than these nobody reads through.
    static constexpr std::size_t mostShown = 40;

    using QObject::QObject;

    /// Offers these; nothing is sought yet.
    void offer(std::vector<Choice> choices);
    [[nodiscard]] ChoiceModel* hits() { return &m_hits; }
    [[nodiscard]] QString sought() const { return m_sought; }
    void setSought(const QString& sought);
    [[nodiscard]] int more() const { return m_more; }

signals:
    void changed();

private:
    void sift();

    struct Offered {
        Choice choice;
        QString bare; ///< all that it is found by
    };
    std::vector<Offered> m_offered;
    ChoiceModel m_hits;
    QString m_sought;
    int m_more = 0;
};

}
