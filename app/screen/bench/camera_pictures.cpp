// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/camera_pictures.h"

#include "screen/desk/house.h"
#include "screen/desk/kept_photograph.h"

namespace crownring::screen {

namespace {

constexpr int looksEvery = 1000; ///< ms
constexpr int mostPictures = 24;

}

void CameraPictures::movedIn() {
    m_looks.setInterval(looksEvery);
    connect(&m_looks, &QTimer::timeout, this, &CameraPictures::look);
    connect(&house().habits, &Habits::changed, this, &CameraPictures::changed);
}

QString CameraPictures::folder() const { return house().habits.cameraFolder(); }

void CameraPictures::setWatching(bool watching) {
    if (watching == isWatching())
        return;
    if (watching) {
        m_looks.start();
        look();
    } else {
        m_looks.stop();
    }
    emit changed();
}

void CameraPictures::lookIn(const QUrl& folder) {
    house().habits.setCameraFolder(folder.isLocalFile() ? folder.toLocalFile() : QString());
    look();
}

void CameraPictures::look() {
    // On the record's thread, where nobody waits for the next frame.
    hear(house().desk.ask([day = house().day.todayDate(), folder = folder()](Record&) {
        return latestPictures(day, folder, mostPictures);
    }),
         this, [this](const QStringList& pictures) {
             if (pictures == m_pictures)
                 return;
             m_pictures = pictures;
             emit changed();
         });
}

}
