// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Rules

PlaceCase {
    id: test
    name: "Rules"
    subject: page

    RulesPage {
        id: page
        anchors.fill: parent
        onAdopt: programme => test.adopted = programme
    }
    property string adopted: ""

    function test_aRequirementLeadsToItsProgramme() {
        page.showRequirement("us.annual");
        compare(page.place.programme, "us-14cfr");
        verify(page.place.bound.count > 0);
        verify(page.place.requirementSource.includes("91.409"));
    }
    function test_theShelfAndWhatIsInForce() {
        verify(page.place.programmes.count >= 6);
        page.showProgramme("part-ml-hot-air");
        verify(page.place.inForce);
        compare(page.place.requirements.count, 5);
    }
}
