<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AgendaPane</name>
    <message numerus="yes">
        <source>%n balloons more: call some your own to look at those.</source>
        <translation>
            <numerusform>%n balloon more: call some your own to look at those.</numerusform>
            <numerusform>%n balloons more: call some your own to look at those.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>AgendaWords</name>
    <message numerus="yes">
        <source>Visit that covers %n requirements</source>
        <translation>
            <numerusform>Visit that covers %n requirement</numerusform>
            <numerusform>Visit that covers %n requirements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 (and %n more)</source>
        <translation>
            <numerusform>%1 (and %n more)</numerusform>
            <numerusform>%1 (and %n more)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n requirements stand worse:</source>
        <translation>
            <numerusform>%1, %n requirement stands worse:</numerusform>
            <numerusform>%1, %n requirements stand worse:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchSentences</name>
    <message numerus="yes">
        <source>Inspection %1 opened: %2, %n items</source>
        <translation>
            <numerusform>Inspection %1 opened: %2, %n item</numerusform>
            <numerusform>Inspection %1 opened: %2, %n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Inspection %1 released after incomplete maintenance by %2: %n lines are outstanding; %3</source>
        <translation>
            <numerusform>Inspection %1 released after incomplete maintenance by %2: %n line is outstanding; %3</numerusform>
            <numerusform>Inspection %1 released after incomplete maintenance by %2: %n lines are outstanding; %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs</source>
        <translation>
            <numerusform>%n photograph</numerusform>
            <numerusform>%n photographs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Chooser</name>
    <message numerus="yes">
        <source>%n more: type on</source>
        <translation>
            <numerusform>%n more: type on</numerusform>
            <numerusform>%n more: type on</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ComponentForm</name>
    <message numerus="yes">
        <source>%n items: %1</source>
        <translation>
            <numerusform>%n item: %1</numerusform>
            <numerusform>%n items: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items sent to %1</source>
        <translation>
            <numerusform>%n item sent to %1</numerusform>
            <numerusform>%n items sent to %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items came back</source>
        <translation>
            <numerusform>%n item came back</numerusform>
            <numerusform>%n items came back</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 recorded as done on %n of them</source>
        <translation>
            <numerusform>%1 recorded as done on %n of them</numerusform>
            <numerusform>%1 recorded as done on %n of them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cylinders filled</source>
        <translation>
            <numerusform>%n cylinder filled</numerusform>
            <numerusform>%n cylinders filled</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Consequences</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DirectiveForm</name>
    <message numerus="yes">
        <source>It binds %n items.</source>
        <translation>
            <numerusform>It binds %n item.</numerusform>
            <numerusform>It binds %n items.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n items nobody knows.</source>
        <translation>
            <numerusform>Of %n item nobody knows.</numerusform>
            <numerusform>Of %n items nobody knows.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It does not bind %n items.</source>
        <translation>
            <numerusform>It does not bind %n item.</numerusform>
            <numerusform>It does not bind %n items.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::EventDesk</name>
    <message numerus="yes">
        <source>%n events may have to be reported; the first 72 hours end on %1</source>
        <translation>
            <numerusform>%n event may have to be reported; its 72 hours end on %1</numerusform>
            <numerusform>%n events may have to be reported; the first 72 hours end on %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FabricWords</name>
    <message numerus="yes">
        <source>%n tests, all held</source>
        <translation>
            <numerusform>%n test, all held</numerusform>
            <numerusform>%n tests, all held</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tests, %1 held</source>
        <translation>
            <numerusform>%n test, %1 held</numerusform>
            <numerusform>%n tests, %1 held</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not counted, %n readings: %1.</source>
        <translation>
            <numerusform>Not counted, %n reading: %1.</numerusform>
            <numerusform>Not counted, %n readings: %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FittingPlan</name>
    <message numerus="yes">
        <source>%n flights that are logged from that day on may be concerned.</source>
        <translation>
            <numerusform>%n flight that is logged from that day on may be concerned.</numerusform>
            <numerusform>%n flights that are logged from that day on may be concerned.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>InFull</name>
    <message numerus="yes">
        <source>%n hours</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Phrase</name>
    <message numerus="yes">
        <source>%n still stand</source>
        <translation>
            <numerusform>%n still stands</numerusform>
            <numerusform>%n still stand</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fixes skipped</source>
        <translation>
            <numerusform>%n fix skipped</numerusform>
            <numerusform>%n fixes skipped</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dates have a year of two digits, read as 1969 to 2068</source>
        <translation>
            <numerusform>%n date has a year of two digits, read as 1969 to 2068</numerusform>
            <numerusform>%n dates have a year of two digits, read as 1969 to 2068</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>lines %2</source>
        <translation>
            <numerusform>line %2</numerusform>
            <numerusform>lines %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>lines %2 …</source>
        <translation>
            <numerusform>line %2 …</numerusform>
            <numerusform>lines %2 …</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n reading</numerusform>
            <numerusform>%n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a text of 1 to %n characters</source>
        <translation>
            <numerusform>a text of 1 to %n character</numerusform>
            <numerusform>a text of 1 to %n characters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The signature covers %n entries of the record; digest %2.</source>
        <translation>
            <numerusform>The signature covers %n entry of the record; digest %2.</numerusform>
            <numerusform>The signature covers %n entries of the record; digest %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs in the record</source>
        <translation>
            <numerusform>%n photograph in the record</numerusform>
            <numerusform>%n photographs in the record</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::WearDesk</name>
    <message numerus="yes">
        <source>%1 each 100 h, at 95 % from %2 to %3, by %n readings</source>
        <translation>
            <numerusform>%1 each 100 h, at 95 % from %2 to %3, by %n reading</numerusform>
            <numerusform>%1 each 100 h, at 95 % from %2 to %3, by %n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings of unknown hours are left out</source>
        <translation>
            <numerusform>%n reading of unknown hours is left out</numerusform>
            <numerusform>%n readings of unknown hours are left out</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::OwnCode</name>
    <message numerus="yes">
        <source>At least %n character(s).</source>
        <translation>
            <numerusform>At least %n character.</numerusform>
            <numerusform>At least %n characters.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Problem</name>
    <message numerus="yes">
        <source>nest at most %n levels</source>
        <translation>
            <numerusform>nest at most %n level</numerusform>
            <numerusform>nest at most %n levels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at most %n characters</source>
        <translation>
            <numerusform>at most %n character</numerusform>
            <numerusform>at most %n characters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>1 to %n characters without control characters</source>
        <translation>
            <numerusform>1 to %n character without control characters</numerusform>
            <numerusform>1 to %n characters without control characters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>1 to %n characters on one line</source>
        <translation>
            <numerusform>1 to %n character on one line</numerusform>
            <numerusform>1 to %n characters on one line</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>this track has %n usable fixes (B records of validity A)</source>
        <translation>
            <numerusform>this track has %n usable fix (B records of validity A)</numerusform>
            <numerusform>this track has %n usable fixes (B records of validity A)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReadingRows</name>
    <message numerus="yes">
        <source>%n taken</source>
        <translation>
            <numerusform>%n taken</numerusform>
            <numerusform>%n taken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n reading</numerusform>
            <numerusform>%n readings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RigUpPage</name>
    <message numerus="yes">
        <source>%n more: write a part of a name, a serial or a type above.</source>
        <translation>
            <numerusform>%n more: write a part of its name, serial or type above.</numerusform>
            <numerusform>%n more: write a part of a name, a serial or a type above.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ServiceForm</name>
    <message numerus="yes">
        <source>From %1 on nothing is asked of %2: %n requirements leave the lists.</source>
        <translation>
            <numerusform>From %1 on nothing is asked of %2: %n requirement leaves the lists.</numerusform>
            <numerusform>From %1 on nothing is asked of %2: %n requirements leave the lists.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and the %n items fitted to it</source>
        <translation>
            <numerusform>%1 and the %n item fitted to it</numerusform>
            <numerusform>%1 and the %n items fitted to it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n requirements that bind only such operation are then not required.</source>
        <translation>
            <numerusform>%n requirement that binds only such operation is then not required.</numerusform>
            <numerusform>%n requirements that bind only such operation are then not required.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items go over to %1, each with its own clock and history.</source>
        <translation>
            <numerusform>%n item goes over to %1, with its own clock and history.</numerusform>
            <numerusform>%n items go over to %1, each with its own clock and history.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::BalloonModel</name>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n flights logged for the registration</source>
        <translation>
            <numerusform>%n flight logged for the registration</numerusform>
            <numerusform>%n flights logged for the registration</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fitted items are not in the record</source>
        <translation>
            <numerusform>%n fitted item is not in the record</numerusform>
            <numerusform>%n fitted items are not in the record</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::EntryForm</name>
    <message numerus="yes">
        <source>%1 is answered for %n items</source>
        <translation>
            <numerusform>%1 is answered for %n item</numerusform>
            <numerusform>%1 is answered for %n items</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::GroupModel</name>
    <message numerus="yes">
        <source>with it: %1 and %n more</source>
        <translation>
            <numerusform>with it: %1 and %n more</numerusform>
            <numerusform>with it: %1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n balloons</source>
        <translation>
            <numerusform>%n balloon</numerusform>
            <numerusform>%n balloons</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::InspectionDesk</name>
    <message numerus="yes">
        <source>%n defects ground the balloon and stand in the way of the release.</source>
        <translation>
            <numerusform>%n defect grounds the balloon and stands in the way of the release.</numerusform>
            <numerusform>%n defects ground the balloon and stand in the way of the release.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n defects ground the balloon.</source>
        <translation>
            <numerusform>%n defect grounds the balloon.</numerusform>
            <numerusform>%n defects ground the balloon.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n have a finding</source>
        <translation>
            <numerusform>%n has a finding</numerusform>
            <numerusform>%n have a finding</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries saved</source>
        <translation>
            <numerusform>%n entry saved</numerusform>
            <numerusform>%n entries saved</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::PoolDesk</name>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n items</source>
        <translation>
            <numerusform>%1 of %n item</numerusform>
            <numerusform>%1 of %n items</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::RecordPlace</name>
    <message numerus="yes">
        <source>All %n entries are as they were written.</source>
        <translation>
            <numerusform>The one entry is as it was written.</numerusform>
            <numerusform>All %n entries are as they were written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n entries are as they were written, but what was computed from them is not: %1.</source>
        <translation>
            <numerusform>The one entry is as it was written, but what was computed from it is not: %1.</numerusform>
            <numerusform>All %n entries are as they were written, but what was computed from them is not: %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>crownring::screen::SubjectPage</name>
    <message numerus="yes">
        <source>%1: %2, %n flights logged for it</source>
        <translation>
            <numerusform>%1: %2, %n flight logged for it</numerusform>
            <numerusform>%1: %2, %n flights logged for it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchRows</name>
    <message numerus="yes">
        <source>%n nobody has to settle</source>
        <translation>
            <numerusform>%n nobody has to settle</numerusform>
            <numerusform>%n nobody has to settle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are settled where they were done</source>
        <translation>
            <numerusform>%n is settled where it was done</numerusform>
            <numerusform>%n are settled where they were done</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are work to be carried out</source>
        <translation>
            <numerusform>%n is work to be carried out</numerusform>
            <numerusform>%n are work to be carried out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are done with test equipment</source>
        <translation>
            <numerusform>%n is done with test equipment</numerusform>
            <numerusform>%n are done with test equipment</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are flown, then settled</source>
        <translation>
            <numerusform>%n is flown, then settled</numerusform>
            <numerusform>%n are flown, then settled</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are settled by readings</source>
        <translation>
            <numerusform>%n is settled by readings</numerusform>
            <numerusform>%n are settled by readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n want a look of their own</source>
        <translation>
            <numerusform>%n wants a look of its own</numerusform>
            <numerusform>%n want a look of their own</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message numerus="yes">
        <source>and %n balloons more</source>
        <translation>
            <numerusform>and %n balloon more</numerusform>
            <numerusform>and %n balloons more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By the record, %n balloons are near a limit or past it</source>
        <translation>
            <numerusform>By the record, %n balloon is near a limit or past it</numerusform>
            <numerusform>By the record, %n balloons are near a limit or past it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanDeskWords</name>
    <message numerus="yes">
        <source>%n visits of the plan are in the calendar.</source>
        <translation>
            <numerusform>%n visit of the plan is in the calendar.</numerusform>
            <numerusform>%n visits of the plan are in the calendar.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanHead</name>
    <message numerus="yes">
        <source>%n months</source>
        <translation>
            <numerusform>%n month</numerusform>
            <numerusform>%n months</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanLineWords</name>
    <message numerus="yes">
        <source>New: %1, covers %n requirements</source>
        <translation>
            <numerusform>New: %1, covers %n requirement</numerusform>
            <numerusform>New: %1, covers %n requirements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Covers %n requirements more: %1</source>
        <translation>
            <numerusform>Covers %n requirement more: %1</numerusform>
            <numerusform>Covers %n requirements more: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message numerus="yes">
        <source>%n visits in %1 weeks from %2 cost %3, with what life is worth that is lost by doing things early.</source>
        <translation>
            <numerusform>%n visit in %1 weeks from %2 costs %3, with what life is worth that is lost by doing things early.</numerusform>
            <numerusform>%n visits in %1 weeks from %2 cost %3, with what life is worth that is lost by doing things early.</numerusform>
        </translation>
    </message>
</context>
</TS>
