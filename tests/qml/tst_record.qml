// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Record

PlaceCase {
    id: test
    name: "Record"
    subject: page

    RecordPage {
        id: page
        anchors.fill: parent
    }

    function test_theJournalAndAnEntry() {
        soonIs(page.place.journal, "count", 100);
        page.showEntry("enter-BRN-302");
        soon(() => page.place.entryText.includes("item.entered"));
    }
    function test_questionsAreListed() {
        page.leaf = 1;
        soon(() => page.place.ready);
        page.leaf = 0;
    }
    function test_verify() {
        page.leaf = 3;
        page.place.verify();
        soon(() => !page.place.verifying);
        verify(page.place.intact, page.place.verdict);
        page.leaf = 0;
    }
}
