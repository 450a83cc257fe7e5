// SPDX-License-Identifier: GPL-3.0-or-later

/// No line of a label ends inside a registration or a serial number. Where a text wraps is asked of Qt's own editor
/// beside it, which was told nothing of names.

#include "demo_window.h"
#include "test_class.h"

#include <QApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>

#include <memory>

namespace kept_names_test {

namespace {

constexpr const char* page = R"(
import QtQuick
import Crownring.Parts
Item {
    property string said: "Take QE-LAKE and G-OVEL to the shed"
    property alias label: label
    property alias plain: plain
    property alias editor: editor
    Label { id: label; objectName: "label"; text: parent.said }
    Text { id: plain; text: parent.said; width: label.width; font: label.font; wrapMode: Text.Wrap }
    TextEdit { id: editor; text: label.text; width: label.width; font: label.font; wrapMode: TextEdit.Wrap; textFormat: TextEdit.PlainText }
})";

/// The lines of the editor, as its own rectangles say where they end; without what joins.
QStringList linesOf(QObject& editor) {
    const auto text = editor.property("text").toString();
    QStringList lines;
    double top = -100;
    for (int at = 0; at < text.size(); ++at) {
        QRectF where;
        QMetaObject::invokeMethod(&editor, "positionToRectangle", Q_RETURN_ARG(QRectF, where), Q_ARG(int, at));
        if (where.top() > top + 1)
            lines += QString();
        top = where.top();
        lines.back() += text.at(at);
    }
    for (auto& line : lines)
        line = line.remove(QChar(0x2060)).trimmed();
    return lines;
}

}

class KeptNamesTest : public QObject {
    Q_OBJECT

    QQmlEngine m_engine;
    std::unique_ptr<QObject> m_page;

    [[nodiscard]] QObject& part(const char* name) { return *m_page->property(name).value<QObject*>(); }
    void narrow(double width) { part("label").setProperty("width", width); }

private slots:
    void init() {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&m_engine);
        component.setData(page, QUrl());
        m_page.reset(component.create());
        QVERIFY2(m_page, qPrintable(component.errorString()));
    }
    void atNoWidthALineEndsInARegistration() {
        int torn = 0;
        for (double width = 60; width < 320; width += 2) {
            init();
            narrow(width);
            for (const auto& line : linesOf(part("editor")))
                QVERIFY2(!line.endsWith(u'-'), qPrintable(QStringLiteral("%1: %2").arg(width).arg(line)));
            part("editor").setProperty("text", part("plain").property("text"));
            for (const auto& line : linesOf(part("editor")))
                torn += line.endsWith(u'-') ? 1 : 0;
        }
        QVERIFY2(torn > 5, qPrintable(QString::number(torn))); // which would have been
    }
    void whatFitsStaysAsItIsWritten() {
        narrow(2000);
        QCOMPARE(part("label").property("text"), m_page->property("said"));
    }
    void aNewTextIsLookedAtAgain() {
        narrow(90);
        m_page->setProperty("said", QStringLiteral("short"));
        QCOMPARE(part("label").property("text").toString(), QStringLiteral("short"));
        m_page->setProperty("said", QStringLiteral("now fly QE-OVEL and QE-LAKE"));
        for (const auto& line : linesOf(part("editor")))
            QVERIFY2(!line.endsWith(u'-'), qPrintable(line));
    }
};

CROWNRING_TEST(KeptNamesTest, QApplication)

}

#include "kept_names_test.moc"
