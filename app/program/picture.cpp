// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/picture.h"

#include "screen/desk/fleet.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/problem_words.h"
#include "writing/write_out.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTextStream>
#include <QThreadPool>
#include <QTimer>

namespace crownring::screen {

namespace {

/// After the fleet's answer the lists sift, the history is asked and the pages lay out.
constexpr int settleMs = 1500;

void end(int code, const QString& text) {
    QTextStream(stderr) << text << Qt::endl;
    QCoreApplication::exit(code);
}

void grab(QQuickWindow* window, const PictureOrder& order) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    window->grabWindow().save(&bytes, "PNG");
    const auto& png = bytes.data();
    const auto written = writeOut(order.file.toStdString(), {png.constData(), static_cast<std::size_t>(png.size())},
                                  order.force ? Replace::Asked : Replace::Never);
    if (!written)
        return end(2, words::line(written.error()));
    end(0, QCoreApplication::translate("Picture", "%1 written.").arg(order.file));
}

/// Pages ask the record, and a forecast takes its time: the picture is of what they say in the end.
void grabWhenAtRest(QQuickWindow* window, RecordDesk& desk, const PictureOrder& order) {
    hear(desk.ask([](Record&) { return true; }), window, [window, &desk, order](bool) {
        QTimer::singleShot(settleMs, window, [window, &desk, order] {
            if (QThreadPool::globalInstance()->activeThreadCount() > 0)
                grabWhenAtRest(window, desk, order);
            else
                QTimer::singleShot(settleMs, window, [window, order] { grab(window, order); });
        });
    });
}

}

QSize sizeFrom(const QString& text) {
    const auto parts = text.split(u'x');
    if (parts.size() != 2)
        return {};
    const QSize size(parts[0].toInt(), parts[1].toInt());
    return size.width() >= 360 && size.height() >= 640 ? size : QSize();
}

void takePicture(QQmlApplicationEngine& engine, House& house, const PictureOrder& order) {
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (window == nullptr)
        return end(2, QCoreApplication::translate("Picture", "There is no window."));
    window->resize(order.size);
    QObject::connect(&house.desk, &RecordDesk::stateChanged, window, [&desk = house.desk] {
        if (desk.state() == RecordDesk::State::Failed)
            end(2, desk.trouble());
    });
    QObject::connect(
        &house.fleet, &Fleet::changed, window,
        [window, &desk = house.desk, order] {
            const bool known = QMetaObject::invokeMethod(window, "showPlace", Q_ARG(QString, order.place));
            if (!known)
                return end(2, QCoreApplication::translate("Picture", "The window has no places."));
            QTimer::singleShot(settleMs, window, [window, &desk, order] { grabWhenAtRest(window, desk, order); });
        },
        Qt::SingleShotConnection);
}

}
