// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_kinds.h"

namespace crownring::random {

rc::Gen<std::optional<PartRelease>> anyRelease() {
    return optionally(rc::gen::exec([] {
        return PartRelease{static_cast<ReleaseForm>(*rc::gen::inRange(0, releaseFormCount)),
                           "F" + std::to_string(*rc::gen::inRange(0, 99))};
    }));
}

namespace {

/// To a balloon mostly, else as a part of another item.
template <class Fitting>
rc::Gen<Fitting> anyFitting(const Names& names, std::optional<ItemId> Fitting::*carrier) {
    return rc::gen::exec([names, carrier] {
        Fitting body;
        body.item = *names.item;
        body.place = *anyText();
        if (*rc::gen::inRange(0, 3) == 0)
            body.*carrier = *names.item;
        else
            body.balloon = *names.balloon;
        return body;
    });
}

}

rc::Gen<Body> any(Of<ItemFitted>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        auto body = *anyFitting<ItemFitted>(names, &ItemFitted::to);
        body.release = *anyRelease();
        body.lot = *anyText();
        return body;
    });
}
rc::Gen<Body> any(Of<ItemRemoved>, const Names& names) {
    return rc::gen::cast<Body>(anyFitting<ItemRemoved>(names, &ItemRemoved::from));
}
rc::Gen<Body> any(Of<CylinderFilled>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        return CylinderFilled{*names.item, *rc::gen::element(1.0, 55.5, 80.0, 100.0)};
    });
}

namespace {

template <class Stated>
Stated anyState(int states) {
    Stated body;
    body.state = static_cast<ServiceState>(*rc::gen::inRange(0, states));
    if (body.state == ServiceState::Sold || body.state == ServiceState::Away)
        body.to = *anyText();
    return body;
}

}

rc::Gen<Body> any(Of<ItemState>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        auto body = anyState<ItemState>(serviceStateCount);
        body.item = *names.item;
        if (body.state == ServiceState::InService)
            body.release = *anyRelease();
        return body;
    });
}

rc::Gen<Body> any(Of<BalloonState>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        auto body = anyState<BalloonState>(balloonStateCount);
        body.balloon = *names.balloon;
        return body;
    });
}

rc::Gen<Body> any(Of<BalloonOwned>, const Names& names) {
    using B = BalloonOwned;
    return rc::gen::cast<Body>(
        rc::gen::build<B>(set(&B::balloon, names.balloon), set(&B::owner, saying()), set(&B::operatedBy, anyText())));
}

}
