// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// How the forecasts of the last years did against what the tests found.
Column {
    id: block

    required property LotsDesk desk

    spacing: Theme.gap

    Heading {
        width: parent.width
        text: qsTr("How the forecasts did")
    }
    Label {
        width: parent.width
        text: block.desk.score !== "" ? block.desk.score : qsTr("Each half-year of the last years is forecast from what was known before it, and held against what the tests then found.")
    }
    PairList {
        width: parent.width
        rows: block.desk.bins
    }
    WorkBar {
        width: parent.width
        working: block.desk.scoring
        progress: block.desk.scored
        text: qsTr("Fitting the half-years …")
        onStop: block.desk.stop()
    }
    Button {
        objectName: "lots.score"
        visible: !block.desk.scoring && block.desk.score === ""
        text: qsTr("Look at the past forecasts")
        onClicked: block.desk.beginScore()
    }
}
