// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// What releases rest on besides the balloons: people, testers, the types' manuals, and lines of one's own.
Scroll {
    id: pane

    property bool phone: false

    signal act(kind: string)
    signal correct(entry: string)

    readonly property alias shop: shop
    readonly property bool wide: pane.width >= 1.5 * Theme.phoneBelow
    readonly property real blockWidth: pane.wide ? Math.floor((flow.width - 2 * flow.spacing) / 3) : flow.width

    margin: pane.phone ? Theme.wide : Theme.broad
    onVisibleChanged: pane.contentY = 0

    ShopPlace { id: shop }

    Label {
        width: parent.width
        visible: text !== ""
        text: shop.problem
        color: Theme.ember
    }
    Flow {
        id: flow
        width: parent.width
        spacing: Theme.broad
        ShopBlock {
            width: pane.blockWidth
            title: qsTr("People")
            about: qsTr("Who may sign what, and until when. A release is refused to anybody else.")
            rows: shop.people
            verbs: [qsTr("Enter what a person is authorised to sign …")]
            codes: ["bench.shop.person"]
            onAsked: pane.act("person.entitled")
            onCorrect: entry => pane.correct(entry)
        }
        ShopBlock {
            width: pane.blockWidth
            title: qsTr("Test equipment")
            about: qsTr("A reading counts only if what it was taken with measures it and was in calibration on that day.")
            rows: shop.testers
            verbs: [qsTr("Enter a calibration …")]
            codes: ["bench.shop.tester"]
            onAsked: pane.act("tester.calibrated")
            onCorrect: entry => pane.correct(entry)
        }
        ShopBlock {
            width: pane.blockWidth
            title: qsTr("Our own lines")
            about: qsTr("They come in every checklist that is opened from their day on, behind the lines of their section.")
            rows: shop.lines
            verbs: [qsTr("Add a line …")]
            codes: ["bench.shop.line"]
            onAsked: pane.act("checklist.adopted")
            onCorrect: entry => pane.correct(entry)
        }
        ShopBlock {
            width: flow.width
            columns: pane.wide ? 2 : 1
            title: qsTr("Types and their limits")
            about: qsTr("What passes is said by the type's own manual. Without a limit a reading is kept, and is inconclusive.")
            rows: shop.types
            verbs: [qsTr("Enter a type …"), qsTr("Enter a limit …")]
            codes: ["bench.shop.type", "bench.shop.limit"]
            onAsked: index => pane.act(index === 0 ? "type.described" : "limit.stated")
            onCorrect: entry => pane.correct(entry)
        }
    }
}
