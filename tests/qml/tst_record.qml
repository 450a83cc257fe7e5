// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Screen
import Crownring.Record

TestCase {
    name: "Record"
    when: windowShown
    width: 1200
    height: 800
    visible: true

    RecordPage {
        id: page
        anchors.fill: parent
    }

    function test_theJournalAndAnEntry() {
        tryCompare(page.place.journal, "count", 100);
        page.showEntry("enter-BRN-302");
        tryVerify(() => page.place.entryText.includes("item.entered"));
    }
    function test_questionsAreListed() {
        page.leaf = 1;
        tryVerify(() => page.place.ready);
        page.leaf = 0;
    }
    function test_verify() {
        page.leaf = 3;
        page.place.verify();
        tryVerify(() => !page.place.verifying, 60000);
        verify(page.place.intact, page.place.verdict);
        page.leaf = 0;
    }
}
