// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Fabric

// The chart once more, twice as large and out of sight, for as long as it is being saved: enlarging what is on the screen
// would blur it, and its width is the window's.
Item {
    id: picture

    required property AgeingChart chart
    property url file

    visible: false

    function save(file: url) {
        picture.file = file;
        maker.active = true;
    }
    function take() {
        const drawn = maker.item as Item;
        const begun = drawn.grabToImage(result => {
            picture.chart.savePicture(result.image, picture.file);
            maker.active = false;
        });
        if (!begun) {
            picture.chart.tellNoPicture();
            maker.active = false;
        }
    }

    Loader {
        id: maker
        active: false
        sourceComponent: Rectangle {
            width: 2 * 1000
            height: drawing.height + 4 * Theme.wide
            color: Theme.paper
            AgeingDrawing {
                id: drawing
                x: 2 * Theme.wide
                y: 2 * Theme.wide
                width: parent.width - 4 * Theme.wide
                chart: picture.chart
                magnified: 2
            }
        }
        onLoaded: settled.restart()
    }
    // The chart sets its axes in the frame after.
    Timer {
        id: settled
        interval: 50
        onTriggered: picture.take()
    }
}
