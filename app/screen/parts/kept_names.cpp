// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/parts/kept_names.h"

#include "words/border.h"

#include <QTextLayout>

namespace crownring::screen {

bool isTorn(const QQuickItem& text) {
    const auto figure = [&](const char* name) { return text.property(name).toDouble(); };
    if (figure("lineCount") < 2)
        return false;
    const auto lines = text.property("text").toString().replace(u'\n', QChar::LineSeparator);
    const double width = text.width() - figure("leftPadding") - figure("rightPadding");
    QTextLayout layout(lines, text.property("font").value<QFont>());
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    bool found = false;
    for (auto line = layout.createLine(); line.isValid() && !found; line = layout.createLine()) {
        line.setLineWidth(width);
        const auto end = line.textStart() + line.textLength();
        found = end < lines.size() && lines.at(end - 1) == u'-' && !lines.at(end).isSpace();
    }
    layout.endLayout();
    return found;
}

void KeptNames::setOf(QQuickItem* of) {
    if (of == m_of || of == nullptr)
        return;
    m_of = of;
    // Those of a Text, whose class is nobody's to name.
    connect(of, SIGNAL(textChanged(QString)), this, SLOT(look()));
    connect(of, SIGNAL(lineCountChanged()), this, SLOT(look()));
    connect(of, SIGNAL(widthChanged()), this, SLOT(look()));
    emit ofChanged();
    look();
}

/// A binding of the text stays: what it says next is looked at again.
void KeptNames::look() {
    const auto text = m_of ? m_of->property("text").toString() : QString();
    if (text.contains(u'-') && !text.contains(QChar(0x2060)) && isTorn(*m_of))
        m_of->setProperty("text", words::unbroken(text));
}

}
