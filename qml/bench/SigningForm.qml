// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Bench

// How the inspection ends, who signs and as what, on which data, with which limitations.
Column {
    id: form

    required property ReleaseDesk release

    readonly property string standingOfSigner: {
        const people = form.release.people;
        const at = form.release.signerAt;
        return at < 0 || people.count === 0 ? "" : String(people.data(people.index(at, 0), ChoiceModel.DetailRole) ?? "");
    }

    spacing: Theme.gap

    Segments {
        id: outcomes
        width: parent.width
        readonly property int leftOut: form.release.mayBeListed ? 0 : 1 // what is no inspection has no list
        names: form.release.mayBeListed ? form.release.mayBeIncomplete ? [qsTr("Release"), qsTr("Discrepancies"), qsTr("Abandon"), qsTr("Incomplete")] : [qsTr("Release"), qsTr("Discrepancies"), qsTr("Abandon")]
                                        : form.release.mayBeIncomplete ? [qsTr("Release"), qsTr("Abandon"), qsTr("Incomplete")] : [qsTr("Release"), qsTr("Abandon")]
        codes: form.release.mayBeListed ? ["bench.outcome.release", "bench.outcome.discrepancies", "bench.outcome.abandon", "bench.outcome.incomplete"]
                                        : ["bench.outcome.release", "bench.outcome.abandon", "bench.outcome.incomplete"]
        current: form.release.outcome === 0 ? 0 : form.release.outcome - outcomes.leftOut
        onChosen: index => form.release.outcome = index === 0 ? 0 : index + outcomes.leftOut
    }
    Label {
        width: parent.width
        visible: form.release.outcome > 0
        text: form.release.outcome === 1 ? qsTr("The inspection ends with a signed list of what was found; nothing is released.") : form.release.outcome === 2 ? qsTr("The inspection ends without a release. What was written stays in the record.") : qsTr("Maintenance that cannot be completed yet, for want of a check flight for instance: what was done is released within the limitation that you name, what is open is listed, and the balloon is grounded for all else until the closing release. The visit stays open.")
        soft: true
    }
    Column {
        width: parent.width
        visible: form.release.outcome === 3 && form.release.optional.count > 0
        Label {
            text: qsTr("Outstanding besides what is open and required")
            font.bold: true
        }
        Repeater {
            model: form.release.optional
            TickRow {
                required property int index
                required property string value
                objectName: "bench.outstanding." + index
                width: form.width
                onClicked: form.release.toggleOutstanding(value)
            }
        }
    }
    Column {
        width: parent.width
        visible: form.release.outcome !== 2 // nothing is signed for
        spacing: Theme.tight
        Label {
            text: qsTr("Who signs")
            font.bold: true
            Accessible.ignored: true
        }
        ChoiceField {
            objectName: "bench.signer"
            width: parent.width
            name: qsTr("Who signs, and as what")
            empty: form.release.people.count === 0 ? qsTr("the record authorises nobody") : qsTr("choose …")
            model: form.release.people
            at: form.release.signerAt
            onPickedAt: at => form.release.signerAt = at
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: form.standingOfSigner
            soft: true
            font.pixelSize: Theme.textSmall
        }
    }
    Column {
        width: parent.width
        visible: form.release.outcome !== 2
        spacing: Theme.tight
        Label {
            text: qsTr("Data used, with revision: one a line")
            font.bold: true
            Accessible.ignored: true
        }
        TextBox {
            id: manuals
            objectName: "bench.manuals"
            width: parent.width
            name: qsTr("Data used, with revision")
            text: form.release.manuals
            onSaid: text => form.release.manuals = text
        }
    }
    Column {
        width: parent.width
        visible: form.release.outcome !== 2
        spacing: Theme.tight
        Label {
            text: qsTr("Limitations")
            font.bold: true
            Accessible.ignored: true
        }
        TextBox {
            id: limitations
            objectName: "bench.limitations"
            width: parent.width
            name: qsTr("Limitations")
            placeholderText: qsTr("none")
            text: form.release.limitations
            onSaid: text => form.release.limitations = text
        }
    }
    BoundsForm {
        width: parent.width
        visible: form.release.outcome === 3
        bounds: form.release.bounds
    }
    Connections {
        target: form.release
        function onChanged() {
            manuals.follow(form.release.manuals);
            limitations.follow(form.release.limitations);
        }
    }
}
