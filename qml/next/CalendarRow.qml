// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// A row of the calendar on its months: a due as a hollow band with a mark where it is likely, a certain day as one mark, a
// visit as a solid block, which can be dragged. As a table the days stand in columns instead.
Line {
    id: row

    required property int index
    required property int sort // 0 a balloon with what comes first, 1 a due, 2 a visit
    required property string balloon
    required property string title
    required property string days
    required property string first
    required property string likely
    required property string last
    required property string entry
    required property double from
    required property double to
    required property double likelyAt
    required property bool byUse
    required property int standing
    required property string spoken

    required property CalendarDesk desk
    property bool phone: false
    property bool table: false
    property real labelWidth: 320

    readonly property bool visit: row.sort === 2
    readonly property bool moving: row.visit && row.desk.moving === row.entry

    signal moved(days: int)

    topPadding: row.phone ? Theme.snug : Theme.tight
    bottomPadding: row.topPadding
    height: (row.phone ? words.implicitHeight + (row.table ? 0 : 32) : Math.max(Theme.touch - 2 * Theme.tight, words.implicitHeight)) + 2 * row.topPadding
    Accessible.name: row.spoken
    Accessible.description: row.visit ? qsTr("Left and right move it by a day, with Shift by a week.") : ""

    contentItem: Item {
        GoreGauge {
            id: gauge
            anchors.verticalCenter: words.verticalCenter
            visible: !row.visit
            standing: row.standing
            used: 0.4
            decoration: true
        }
        Rectangle {
            anchors.centerIn: gauge
            visible: row.visit
            width: Theme.gauge
            height: Theme.gauge
            color: Theme.rattan
        }
        Column {
            id: words
            anchors.left: gauge.right
            anchors.leftMargin: Theme.gap
            width: row.phone ? parent.width - x : row.labelWidth - x
            Label {
                width: parent.width
                text: row.title
                font.bold: row.sort !== 1
                elide: Text.ElideRight
                maximumLineCount: 3
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.days
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
        }
        Row {
            visible: row.table && !row.phone
            x: row.labelWidth + Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            Repeater {
                model: [row.first, row.likely, row.last]
                Label {
                    required property string modelData
                    width: 120
                    text: modelData
                    Accessible.ignored: true
                }
            }
        }
        Item {
            id: strip
            x: row.phone ? 0 : row.labelWidth + Theme.gap
            y: row.phone ? words.height : 0
            width: parent.width - x
            height: row.phone ? 32 : parent.height
            visible: !row.table
            clip: true

            Repeater {
                model: row.desk.monthsAt
                Rectangle {
                    required property double modelData
                    x: Math.round(modelData * strip.width)
                    width: Theme.hair
                    height: strip.height
                    color: Theme.hairline
                }
            }
            Rectangle { // the day asked
                visible: row.desk.todayAt >= 0 && row.desk.todayAt < 1
                x: Math.round(row.desk.todayAt * strip.width)
                width: 2
                height: strip.height
                color: Theme.ink
            }
            Rectangle { // between these days
                visible: !row.visit && row.byUse && row.to > row.from
                x: Math.max(-2, row.from * strip.width)
                width: Math.min(strip.width + 2, row.to * strip.width) - x
                anchors.verticalCenter: parent.verticalCenter
                height: 16
                radius: Theme.radius
                color: Theme.shade
                border.width: 2
                border.color: Theme.standing(row.standing)
            }
            Rectangle { // likely then
                visible: !row.visit && row.likelyAt >= 0 && row.likelyAt < 1
                x: Math.round(row.likelyAt * strip.width) - 2
                width: 5
                height: 26
                anchors.verticalCenter: parent.verticalCenter
                color: Theme.standing(row.standing)
            }
            Rectangle {
                id: block
                objectName: "calendar.block"
                readonly property CalendarDesk desk: row.desk
                readonly property real begins: (row.moving ? row.desk.movingFrom : row.from) * strip.width
                readonly property real ends: (row.moving ? row.desk.movingTo : row.to) * strip.width
                visible: row.visit
                x: block.begins + (drag.active ? drag.activeTranslation.x : 0)
                width: Math.max(14, block.ends - block.begins)
                height: 28
                anchors.verticalCenter: parent.verticalCenter
                radius: Theme.radius
                color: row.moving ? Theme.sheet : Theme.rattan
                border.width: row.moving ? 3 : 0
                border.color: Theme.rattan
                DragHandler {
                    id: drag
                    target: null
                    yAxis.enabled: false
                    onActiveChanged: {
                        if (!drag.active)
                            row.moved(Math.round(drag.activeTranslation.x / strip.width * row.desk.days));
                    }
                }
            }
        }
    }
}
