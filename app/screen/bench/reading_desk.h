// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Readings of one quantity on one item: taken by tapping the envelope map or by a figure, judged by the type's limits,
/// questioned when they look impossible, and saved one by one. A failing one brings a defect with it that bars flight.

#include "bench/reading/doubt.h"
#include "bench/release/asked_series.h"
#include "screen/bench/inspection_desk.h"
#include "screen/envelope/panel_model.h"
#include "screen/lists/choice_model.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class ReadingDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::InspectionDesk* desk READ desk WRITE setDesk NOTIFY changed FINAL REQUIRED)
    /// What is to be read: value: the quantity; label: that and the item; detail: "12 of 24"; number: still asked for
    Q_PROPERTY(crownring::screen::ChoiceModel* series READ series CONSTANT FINAL)
    /// Whose readings are taken: its place among the series, -1 for none.
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString limit READ limit NOTIFY changed
                   FINAL) ///< "at least 133.4 N: held at the proof load …" or what is missing
    /// With what the next reading is written: "by insp. A · grab 1 · held at 133.4 N · jaws 25 mm"
    Q_PROPERTY(QString terms READ terms NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL) ///< "12 of 24"
    Q_PROPERTY(bool placed READ placed NOTIFY changed FINAL)        ///< on the envelope map
    Q_PROPERTY(bool canHold READ canHold NOTIFY changed FINAL)
    Q_PROPERTY(bool stepped READ stepped NOTIFY changed FINAL) ///< asks for a second figure: "below"
    Q_PROPERTY(bool asksDirection READ asksDirection NOTIFY changed FINAL)
    Q_PROPERTY(bool asksTester READ asksTester NOTIFY changed FINAL)
    Q_PROPERTY(bool asksAirflow READ asksAirflow NOTIFY changed FINAL)
    Q_PROPERTY(bool asksJaw READ asksJaw NOTIFY changed FINAL)
    /// Held: a tap on the map takes the proof load as held there. Else a tap chooses the place for a figure.
    Q_PROPERTY(bool held READ held WRITE setHeld NOTIFY changed FINAL)
    Q_PROPERTY(QString proof READ proof WRITE setProof NOTIFY changed FINAL) ///< the load that is held, in `unit`
    Q_PROPERTY(QString direction READ direction WRITE setDirection NOTIFY changed FINAL) ///< "warp", "weft"
    Q_PROPERTY(QString unit READ unit WRITE setUnit NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* units READ units CONSTANT FINAL)
    Q_PROPERTY(QString tester READ tester WRITE setTester NOTIFY changed FINAL)
    Q_PROPERTY(QString pressure READ pressure WRITE setPressure NOTIFY changed FINAL) ///< Pa
    Q_PROPERTY(QString area READ area WRITE setArea NOTIFY changed FINAL)             ///< cm2
    Q_PROPERTY(QString jaw READ jaw WRITE setJaw NOTIFY changed FINAL)                ///< mm
    /// Instruments in calibration that fit. value, label: its name; detail: what it is, or that the record does not say
    /// what it measures
    Q_PROPERTY(crownring::screen::ChoiceModel* testers READ testers CONSTANT FINAL)
    /// Of the instrument at hand: that the record does not say what it measures; else empty.
    Q_PROPERTY(QString testerRemark READ testerRemark NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* zones READ zones CONSTANT FINAL) ///< the parts of an envelope
    Q_PROPERTY(crownring::screen::ChoiceModel* spots READ spots CONSTANT FINAL) ///< of a basket; none of anything else
    Q_PROPERTY(QString spot READ spot WRITE setSpot NOTIFY changed FINAL)       ///< "runner-2"; empty: not said
    Q_PROPERTY(QString zone READ zone WRITE setZone NOTIFY changed FINAL)       ///< "envelope", "parachute" …
    Q_PROPERTY(bool inZone READ inZone NOTIFY changed FINAL)                    ///< of panels that are on no map
    Q_PROPERTY(QString panel READ panel WRITE setPanel NOTIFY changed FINAL)    ///< there: its number, around
    Q_PROPERTY(QString seconds READ seconds WRITE setSeconds NOTIFY changed FINAL) ///< for which it is held
    Q_PROPERTY(QString dry READ dry WRITE setDry NOTIFY changed FINAL)             ///< "yes", "no" or not written
    Q_PROPERTY(QString side READ side WRITE setSide NOTIFY changed FINAL)       ///< "inside", "outside" or not written
    Q_PROPERTY(QString warmth READ warmth WRITE setWarmth NOTIFY changed FINAL) ///< degrees Celsius
    Q_PROPERTY(bool asksSeconds READ asksSeconds NOTIFY changed FINAL)
    Q_PROPERTY(bool asksWarmth READ asksWarmth NOTIFY changed FINAL)
    Q_PROPERTY(bool asksWay READ asksWay NOTIFY changed FINAL)         ///< how leaks were looked for
    Q_PROPERTY(QString way READ way WRITE setWay NOTIFY changed FINAL) ///< "soap", "pressure-decay" or not written
    /// What propane at rest presses at `warmth`, where the fuel presses what is read; empty where that is not written.
    Q_PROPERTY(QString pressed READ pressed NOTIFY changed FINAL)
    /// "C1: leak test of the cylinder …": what items without a type are not asked for; empty where each has one.
    Q_PROPERTY(QString notAsked READ notAsked NOTIFY changed FINAL)
    Q_PROPERTY(int gores READ gores NOTIFY changed FINAL)
    Q_PROPERTY(int rows READ rows NOTIFY changed FINAL)
    Q_PROPERTY(int gore READ gore NOTIFY changed FINAL) ///< the place for the next figure, 0 for none
    Q_PROPERTY(int row READ row NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::PanelModel* panels READ panels CONSTANT FINAL)
    /// Latest first. label: place and value; detail: judgement and reason; standing: 1 where it fails, else 5
    Q_PROPERTY(crownring::screen::ChoiceModel* taken READ taken CONSTANT FINAL)
    /// A figure that looks impossible, or one without test equipment, waits for an answer: `stand` keeps it, `letGo`
    /// does not.
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
    /// It is the equipment that is asked for.
    Q_PROPERTY(bool equipmentAsked READ isEquipmentAsked NOTIFY changed FINAL)
    /// Readings of the series whose equipment stands in the way of a release: none, out of calibration, for something
    /// else. `nameTester` writes the equipment at hand to them.
    Q_PROPERTY(int misnamed READ misnamed NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    explicit ReadingDesk(QObject* parent = nullptr);
    [[nodiscard]] InspectionDesk* desk() const { return m_desk; }
    void setDesk(InspectionDesk* desk);
    [[nodiscard]] ChoiceModel* series() { return &m_series; }
    [[nodiscard]] int current() const;
    void setCurrent(int at);
    [[nodiscard]] const AskedFor& reads() const { return m_reads; } ///< of no item where nothing is read
    /// To the first series that a line of the checklist asks for of an item; where there is none, nothing changes.
    Q_INVOKABLE void readFor(const QString& item, const QString& line);
    /// To the series and the place of the reading that found a defect, in this visit or before.
    Q_INVOKABLE void readAgain(const QString& defect);
    /// To the series of a reading of this visit; false where there is none.
    Q_INVOKABLE bool showReading(const QString& entry);
    Q_INVOKABLE void nameTester();
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString limit() const;
    [[nodiscard]] QString terms() const;
    [[nodiscard]] QString progress() const;
    [[nodiscard]] bool placed() const;
    [[nodiscard]] bool canHold() const;
    [[nodiscard]] bool stepped() const;
    [[nodiscard]] bool asksDirection() const;
    [[nodiscard]] bool asksTester() const;
    [[nodiscard]] bool needsTester() const; ///< its readings are released with one alone
    [[nodiscard]] bool asksAirflow() const;
    [[nodiscard]] bool asksJaw() const;
    [[nodiscard]] bool held() const { return m_held && canHold(); }
    void setHeld(bool held) { set(m_held, held); }
    [[nodiscard]] QString proof() const { return m_proof; }
    void setProof(const QString& proof) { set(m_proof, proof); }
    [[nodiscard]] QString direction() const { return m_direction; }
    void setDirection(const QString& direction) { set(m_direction, direction); }
    [[nodiscard]] QString unit() const { return m_unit; }
    /// The proof load is the same in the other unit.
    void setUnit(const QString& unit);
    [[nodiscard]] ChoiceModel* units() { return &m_units; }
    [[nodiscard]] QString tester() const { return m_tester; }
    void setTester(const QString& tester);
    [[nodiscard]] QString pressure() const { return m_pressure; }
    void setPressure(const QString& pressure) { set(m_pressure, pressure); }
    [[nodiscard]] QString area() const { return m_area; }
    void setArea(const QString& area) { set(m_area, area); }
    [[nodiscard]] QString jaw() const { return m_jaw; }
    void setJaw(const QString& jaw) { set(m_jaw, jaw); }
    [[nodiscard]] ChoiceModel* testers() { return &m_testers; }
    [[nodiscard]] QString testerRemark() const;
    [[nodiscard]] ChoiceModel* zones() { return &m_zones; }
    [[nodiscard]] ChoiceModel* spots() { return &m_spots; }
    [[nodiscard]] QString spot() const { return m_spot; }
    void setSpot(const QString& spot);
    [[nodiscard]] QString zone() const { return m_zone; }
    void setZone(const QString& zone);
    [[nodiscard]] bool inZone() const;
    [[nodiscard]] QString panel() const { return m_panel; }
    void setPanel(const QString& panel) { set(m_panel, panel); }
    [[nodiscard]] QString seconds() const { return m_seconds; }
    void setSeconds(const QString& seconds) { set(m_seconds, seconds); }
    [[nodiscard]] QString dry() const { return m_dry; }
    void setDry(const QString& dry) { set(m_dry, dry); }
    [[nodiscard]] QString side() const { return m_side; }
    void setSide(const QString& side) { set(m_side, side); }
    [[nodiscard]] QString warmth() const { return m_warmth; }
    void setWarmth(const QString& warmth) { set(m_warmth, warmth); }
    [[nodiscard]] bool asksSeconds() const;
    [[nodiscard]] bool asksWarmth() const;
    [[nodiscard]] bool asksWay() const;
    [[nodiscard]] QString way() const { return m_way; }
    void setWay(const QString& way) { set(m_way, way); }
    [[nodiscard]] QString pressed() const;
    [[nodiscard]] QString notAsked() const;
    [[nodiscard]] int gores() const;
    [[nodiscard]] int rows() const;
    [[nodiscard]] int gore() const { return m_gore; }
    [[nodiscard]] int row() const { return m_row; }
    [[nodiscard]] PanelModel* panels() { return &m_panels; }
    [[nodiscard]] ChoiceModel* taken() { return &m_taken; }
    [[nodiscard]] QString question() const { return m_question; }
    [[nodiscard]] bool isEquipmentAsked() const { return m_equipmentAsked; }
    [[nodiscard]] int misnamed() const { return static_cast<int>(misnamedReadings().size()); }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void tap(int gore, int row);
    /// A figure at the chosen place, or of the item; `below` only for a stepped indicator.
    Q_INVOKABLE void enter(const QString& value, const QString& below = {});
    /// Both figures of a stepped indicator are in one text, as in "110-116".
    Q_INVOKABLE bool saysBoth(const QString& value) const;
    /// The proof load was held: at the chosen place, or by the item.
    Q_INVOKABLE void hold();
    Q_INVOKABLE void stand();
    Q_INVOKABLE void letGo();
    /// The reading that would be handed over if the load at hand held; nothing where none is held.
    [[nodiscard]] std::optional<ReadingTaken> heldInHand() const;
    /// Takes back the latest reading of the series: it is voided.
    Q_INVOKABLE void takeBack();

signals:
    void changed();
    void saved(); ///< a reading was handed over: the field may be emptied

private:
    template <class Value>
    void set(Value& have, const Value& next) {
        have = next;
        emit changed();
    }
    void read(const AskedFor& of);
    [[nodiscard]] ReadingTaken inHand(double value, bool heldLoad) const;
    [[nodiscard]] ReadingCount count() const; ///< of the series at hand
    [[nodiscard]] const Quantity* quantity() const;
    [[nodiscard]] const ItemFacts* item() const;
    [[nodiscard]] std::vector<StatedLimit> limits() const;
    void showAll();
    void showSeries();
    void goOn();
    void showPanels();
    void chooseDefaults();
    void chooseTester();
    void showTesters();
    void forgetWritten(); ///< what was just taken and is in the record by now
    void showSpots();
    /// To the zone and the direction of the first limit that still asks for readings.
    void aim();
    [[nodiscard]] std::vector<LimitCount> limitCounts() const; ///< of the series at hand
    [[nodiscard]] std::optional<LimitCount> aimed() const;     ///< the limit that the next reading serves
    [[nodiscard]] TestCircumstances circumstances() const;
    [[nodiscard]] PanelPlace place() const; ///< of the next reading
    [[nodiscard]] QString placeMissing() const;
    void take(double value, bool held, std::optional<double> below);
    /// What is asked back of the reading that waits; where nothing is, it is written.
    void askBack();
    [[nodiscard]] QString doubtOf(const ReadingTaken& reading) const;
    void write(ReadingTaken reading);
    [[nodiscard]] std::vector<EntryId> misnamedReadings() const;
    /// To the place, the direction and the sizes of a reading.
    void aimAt(const ReadingTaken& reading);
    /// What the series at hand reads again, where no line asks for it.
    [[nodiscard]] std::vector<const ReadingTaken*> again() const;

    InspectionDesk* m_desk = nullptr;
    std::vector<AskedSeries> m_asked;
    ChoiceModel m_series;
    ChoiceModel m_units;
    ChoiceModel m_taken;
    ChoiceModel m_testers;
    ChoiceModel m_zones, m_spots;
    PanelModel m_panels;
    AskedFor m_reads;
    QString m_proof, m_direction, m_unit, m_tester, m_pressure, m_area, m_jaw;
    QString m_zone, m_spot, m_panel, m_seconds, m_dry, m_side, m_warmth, m_way;
    QString m_question, m_problem;
    std::optional<ReadingTaken> m_waiting; ///< for an answer to the question
    std::vector<PanelPlace> m_justTaken;   ///< and not yet answered for
    int m_gore = 0;
    int m_row = 0;
    bool m_equipmentAsked = false;
    bool m_withoutTester = false; ///< somebody stands by that for the series at hand
    bool m_goesOn = false;        ///< a reading was taken: when the series has enough, the next one comes
    bool m_held = true;
};

}
