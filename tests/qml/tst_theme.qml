// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Theme

// Contrast as WCAG 2.1 computes it: https://www.w3.org/TR/WCAG21/#dfn-contrast-ratio (formula from memory); text needs
// 4.5:1 (criterion 1.4.3), signs and edges 3:1 (criterion 1.4.11).
TestCase {
    name: "Theme"

    function channel(value) {
        return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
    function luminance(tone) {
        return 0.2126 * channel(tone.r) + 0.7152 * channel(tone.g) + 0.0722 * channel(tone.b);
    }
    function contrast(one, other) {
        const a = luminance(one);
        const b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }
    function test_theFormulaKnowsBlackAndWhite() {
        fuzzyCompare(contrast(Qt.color("black"), Qt.color("white")), 21, 0.001);
    }
    function test_textCanBeRead_data() {
        return [{tag: "light", dark: false}, {tag: "dark", dark: true}];
    }
    function test_textCanBeRead(data) {
        Theme.dark = data.dark;
        compare(Theme.textTones.length, Theme.grounds.length);
        for (let at = 0; at < Theme.textTones.length; ++at) {
            const ratio = contrast(Theme.textTones[at], Theme.grounds[at]);
            verify(ratio >= 4.5, data.tag + " pair " + at + ": " + ratio.toFixed(2));
        }
        for (let at = 0; at < Theme.standings.length; ++at)
            verify(contrast(Theme.standings[at], Theme.paper) >= 3, data.tag + " sign " + at + ": " + contrast(Theme.standings[at], Theme.paper).toFixed(2));
        verify(contrast(Theme.edge, Theme.sheet) >= 3);
        Theme.dark = false;
    }
    function test_theTonesOfTheLook() {
        Theme.dark = false;
        compare(String(Theme.paper), "#faf7f0");
        compare(String(Theme.ink), "#1b2330");
        compare(String(Theme.sky), "#2b6c99");
    }
    function test_sizesStandOnTheGrid() {
        for (const size of [Theme.tight, Theme.snug, Theme.gap, Theme.wide, Theme.broad, Theme.vast, Theme.touch, Theme.rail, Theme.bar])
            compare(size % 4, 0);
        verify(Theme.touch >= 44);
    }
}
