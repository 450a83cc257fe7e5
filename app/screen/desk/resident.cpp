// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/resident.h"

#include "screen/desk/house.h"

#include <QQmlEngine>

namespace crownring::screen {

void Resident::moveInto(House& house) {
    m_house = &house;
    movedIn();
}

void Resident::classBegin() { moveInto(House::of(*qmlEngine(this))); }

}
