// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an entry of the bench is about, beside the projections of its own.

#include "record/entry.h"
#include "store/projection/names.h"

namespace crownring {

/// Calls `about(sort, name)` for each thing that the entry is to be found under.
template <class About>
struct Subjects {
    About about;

    void operator()(const ReadingTaken& body) const { maybe(NameSort::Inspection, body.inspection); }
    void operator()(const InspectionOpened& body) const {
        about(NameSort::Inspection, body.inspection.text());
        for (const auto& item : body.items)
            about(NameSort::Item, item.text());
        maybe(NameSort::Balloon, body.balloon);
    }
    void operator()(const LineSettled& body) const { about(NameSort::Inspection, body.inspection.text()); }
    void operator()(const DefectFound& body) const { defect(body); }
    void operator()(const DefectDeferred& body) const { defect(body); }
    void operator()(const DefectCleared& body) const { defect(body); }
    void operator()(const RepairMade& body) const { work(body); }
    void operator()(const PartReplaced& body) const { work(body); }
    void operator()(const InspectionClosed& body) const { about(NameSort::Inspection, body.inspection.text()); }
    void operator()(const PersonEntitled& body) const { about(NameSort::Person, body.person.text()); }
    void operator()(const TesterCalibrated& body) const { about(NameSort::Tester, body.tester.text()); }
    void operator()(const TypeDescribed& body) const { about(NameSort::Type, body.type.text()); }
    void operator()(const LimitStated& body) const { about(NameSort::Type, body.type.text()); }
    void operator()(const FabricStated& body) const { about(NameSort::Item, body.item.text()); }
    void operator()(const ChecklistAdopted& body) const { about(NameSort::Checklist, body.checklist.text()); }
    template <class Other>
    void operator()(const Other&) const {}

private:
    template <class What>
    void maybe(NameSort sort, const std::optional<Name<What>>& name) const {
        if (name)
            about(sort, name->text());
    }
    template <class OfDefect>
    void defect(const OfDefect& body) const {
        about(NameSort::Defect, body.defect.text());
        maybe(NameSort::Inspection, body.inspection);
    }
    template <class OfItem>
    void work(const OfItem& body) const {
        about(NameSort::Item, body.item.text());
        maybe(NameSort::Defect, body.defect);
        maybe(NameSort::Inspection, body.inspection);
    }
};

template <class About>
void eachSubject(const Entry& entry, About about) {
    std::visit(Subjects<About>{std::move(about)}, entry.body);
}

}
