// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_kinds.h"

namespace crownring::random {

namespace {

using rc::gen::set;

rc::Gen<std::string> wording() {
    return rc::gen::map(anyText(), [](const std::string& text) { return "y" + text; });
}

rc::Gen<std::string> digestOfWording() { return rc::gen::element(std::string(64, '1'), std::string(64, 'b')); }

}

rc::Gen<std::vector<ConfirmedText>> anyConfirmed(const Names& names) {
    return rc::gen::exec([names] {
        std::vector<ConfirmedText> confirmed;
        for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
            ConfirmedText each{{},         {},        *wording(), *digestOfWording(), *names.person,
                               *anyText(), *names.on, *wording()};
            if (*rc::gen::arbitrary<bool>())
                each.text = *anyName<TextId>();
            else
                each.checklist = *anyName<ChecklistId>();
            confirmed.push_back(std::move(each));
        }
        return confirmed;
    });
}

rc::Gen<Body> any(Of<TextAdopted>, const Names&) {
    using T = TextAdopted;
    return rc::gen::cast<Body>(rc::gen::build<T>(set(&T::text, anyName<TextId>()), set(&T::revision, wording()),
                                                 set(&T::title, anyText()), set(&T::body, wording()),
                                                 set(&T::source, anyText()), set(&T::organisation, wording())));
}

rc::Gen<Body> any(Of<TextConfirmed>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        TextConfirmed body;
        if (*rc::gen::arbitrary<bool>())
            body.text = *anyName<TextId>();
        else
            body.checklist = *anyName<ChecklistId>();
        body.revision = *wording();
        body.digest = *digestOfWording();
        body.against = *wording();
        body.confirmedBy = *names.person;
        body.capacity = *anySlug();
        body.licence = *anyText();
        return body;
    });
}

}
