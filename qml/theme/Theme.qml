// SPDX-License-Identifier: GPL-3.0-or-later
pragma Singleton
import QtQuick

// All tones and sizes. Text is written in ink or inkSoft only; the tones of the standings colour signs, never words alone.
QtObject {
    id: theme

    property bool dark: false

    readonly property color paper: dark ? "#14181f" : "#faf7f0"
    readonly property color sheet: dark ? "#1d232d" : "#fffdf8"   // raised above the paper
    readonly property color shade: dark ? "#262d38" : "#f0eadd"   // pressed, chosen
    readonly property color ink: dark ? "#ece7da" : "#1b2330"
    readonly property color inkSoft: dark ? "#b3b7bf" : "#4d5766"
    readonly property color hairline: dark ? "#3a4250" : "#d9cfbb"
    readonly property color edge: dark ? "#7c8594" : "#8a8271"    // of fields and buttons, 3:1 on paper

    readonly property color sky: dark ? "#7fb8de" : "#2b6c99"
    readonly property color straw: dark ? "#e3b54a" : "#b98512"
    readonly property color rust: dark ? "#e88f55" : "#b4541a"
    readonly property color ember: dark ? "#f2847b" : "#b3261e"
    readonly property color soot: dark ? "#d5d8de" : "#16181d"
    readonly property color heather: dark ? "#bb9edb" : "#6c4a8e"
    readonly property color smoke: dark ? "#9aa3b0" : "#6b7280"
    readonly property color rattan: dark ? "#cdab79" : "#8a6a43"
    readonly property color skyInk: dark ? "#0f1720" : "#faf7f0"
    readonly property color mapWeak: dark ? "#27323f" : "#e2eaee"  // panels of the envelope map: at the limit
    readonly property color mapStrong: dark ? "#41627a" : "#7fa8c3" // and at twice the limit; ink is read on both
    readonly property color veil: "#66000000"                    // over what a sheet covers

    // In the order of the standings, worst first; then what is deferred and what is not required.
    readonly property list<color> standings: [soot, ember, heather, rust, straw, sky, smoke, rattan, smoke]

    // Of the envelope map: never read, at the limit, well above it, signs, failures, seams.
    readonly property list<color> mapTones: [sheet, mapWeak, mapStrong, ink, ember, edge]

    function standing(number: int): color {
        return number < 0 ? theme.smoke : theme.standings[number];
    }

    // Every pair of text and ground that is used, for the test of contrast.
    readonly property list<color> textTones: [ink, ink, ink, inkSoft, inkSoft, inkSoft, sky, sky, rattan, ember, ember, skyInk,
        ink, ink]
    readonly property list<color> grounds: [paper, sheet, shade, paper, sheet, shade, paper, sheet, paper, paper, sheet, sky,
        mapWeak, mapStrong]

    // A grid of 4.
    readonly property int hair: 1
    readonly property int tight: 4
    readonly property int snug: 8
    readonly property int gap: 12
    readonly property int wide: 16
    readonly property int broad: 24
    readonly property int vast: 32
    readonly property int touch: 44
    readonly property int radius: 4
    readonly property int rail: 96
    readonly property int bar: 60
    readonly property int gauge: 20
    readonly property int gaugeBig: 44

    readonly property int textSmall: 12
    readonly property int text: 14
    readonly property int textLarge: 16
    readonly property int textTitle: 20
    readonly property int textDisplay: 26

    // Below this width there is one column and a bar at the bottom.
    readonly property int phoneBelow: 760
    readonly property int swift: 120
}
