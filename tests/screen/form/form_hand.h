// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A hand that fills forms over a small record of its own, as "tester" on 2026-11-25.

#include "screen/demo_house.h"
#include "screen/form/asked_back.h"
#include "screen/form/entry_form.h"

#include <QSignalSpy>
#include <QTest>

#include <stdexcept>

namespace crownring::screen {

class FormHand {
public:
    FormHand() : m_demo(DemoHouse::Filled::Empty) {
        m_demo.house.habits.setPerson(QStringLiteral("tester"));
        if (!m_demo.ready())
            throw std::runtime_error(m_demo.house.desk.trouble().toStdString());
    }

    [[nodiscard]] House& house() { return m_demo.house; }
    [[nodiscard]] bool settled() { return m_demo.settled(); }

    static int rowOf(EntryForm& form, std::string_view key) {
        const auto& fields = form.fields()->fields();
        const auto at = std::ranges::find(fields, key, &FormField::key);
        return at == fields.end() ? -1 : static_cast<int>(at - fields.begin());
    }
    static void set(EntryForm& form, std::string_view key, const char* value) {
        form.setValue(rowOf(form, key), QString::fromUtf8(value));
    }
    static const FormField& field(EntryForm& form, std::string_view key) { return *form.fields()->field(key); }
    static QString problemAt(EntryForm& form, std::string_view key) { return field(form, key).problem; }
    static QString askedAt(EntryForm& form, std::string_view key) {
        return AskedBack::isOpen(field(form, key)) ? AskedBack::question(field(form, key)) : QString();
    }
    /// What is asked back is so.
    static void answer(EntryForm& form, std::string_view key) { form.answer(rowOf(form, key)); }

    /// False when nothing was written. A correction is saved twice: it is tried out first.
    bool save(EntryForm& form) {
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        if (!QTest::qWaitFor([&] { return !form.saving(); }, 20'000))
            return false;
        return !saved.isEmpty() && settled();
    }
    bool saveCorrection(EntryForm& form) {
        form.save();
        return QTest::qWaitFor([&] { return !form.saving(); }, 20'000) && form.isOpen() && save(form);
    }
    /// Waits until the form has asked the record what it must.
    bool asked(EntryForm& form) {
        bool there = false;
        hear(house().desk.ask([](Record&) { return true; }), &form, [&](bool) { there = true; });
        return QTest::qWaitFor([&] { return there; }, 20'000);
    }

    [[nodiscard]] const ItemFacts* item(const char* id) { return house().fleet.sheet()->item(ItemId(id)); }
    [[nodiscard]] std::int64_t minutesOf(const char* id) {
        const auto* facts = item(id);
        return facts && facts->clock.minutes ? facts->clock.minutes->value() : -1;
    }
    /// What an item's clock shows at the end of a day.
    [[nodiscard]] bool enterBalloon(const char* balloon) {
        In<EntryForm> form(house());
        form.begin(QStringLiteral("balloon.entered"));
        set(form, "balloon", balloon);
        set(form, "on", "2026-01-01");
        return save(form);
    }
    [[nodiscard]] bool enterItem(const char* item, const char* kind) {
        In<EntryForm> form(house());
        form.begin(QStringLiteral("item.entered"));
        set(form, "item", item);
        set(form, "kind", kind);
        if (std::string_view(kind) == "cylinder" || std::string_view(kind) == "hose")
            set(form, "made", "2020-05"); // as stamped
        set(form, "brought_forward.minutes", "100");
        set(form, "brought_forward.landings", "100");
        set(form, "brought_forward.inflations", "100");
        set(form, "on", "2026-01-01");
        return save(form);
    }
    [[nodiscard]] bool fit(const char* balloon, const char* item, const char* on = "2026-01-01") {
        In<EntryForm> form(house());
        form.begin(QStringLiteral("item.fitted"), QString::fromUtf8(balloon), QString::fromUtf8(item));
        set(form, "on", on);
        set(form, "-when", "before");
        return save(form);
    }
    /// A balloon with one of what it needs, each with 100 h before: B-ONE of E-1, K-1, R-1 and C-1.
    [[nodiscard]] bool rigOne() {
        return enterBalloon("B-ONE") && enterItem("E-1", "envelope") && enterItem("K-1", "basket") &&
               enterItem("R-1", "burner") && enterItem("C-1", "cylinder") && fit("B-ONE", "E-1") &&
               fit("B-ONE", "K-1") && fit("B-ONE", "R-1") && fit("B-ONE", "C-1");
    }

private:
    DemoHouse m_demo;
};

}
