// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/record_pictures.h"

#include "screen/desk/record_desk.h"
#include "words/border.h"
#include "words/words.h"

#include <QImage>
#include <QMetaObject>
#include <QQuickTextureFactory>

namespace crownring::screen {

using namespace words;

namespace {

using PictureAnswer = Result<std::optional<Picture>>;

/// The engine keeps it until `finished` is said.
class Response : public QQuickImageResponse {
public:
    explicit Response(const QSize& wanted) : m_wanted(wanted) {}

    void answer(const PictureAnswer& picture) {
        if (!picture)
            m_error = Words::problem(picture.error());
        else if (!*picture)
            m_error = QStringLiteral("the record holds no such photograph");
        else
            take((*picture)->bytes);
        emit finished();
    }
    void giveUp() {
        m_error = QStringLiteral("there is no record");
        emit finished();
    }
    [[nodiscard]] QString errorString() const override { return m_error; }
    [[nodiscard]] QQuickTextureFactory* textureFactory() const override {
        return QQuickTextureFactory::textureFactoryForImage(m_image);
    }

private:
    void take(const std::string& bytes) {
        m_image = QImage::fromData(QByteArray::fromStdString(bytes));
        if (m_image.isNull())
            m_error = QStringLiteral("this photograph cannot be read");
        else if (m_wanted.isValid() && !m_wanted.isEmpty())
            m_image = m_image.scaled(m_wanted, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    }

    QSize m_wanted;
    QImage m_image;
    QString m_error;
};

}

QQuickImageResponse* RecordPictures::requestImageResponse(const QString& digest, const QSize& wanted) {
    auto* response = new Response(wanted);
    // This is asked on a thread of the engine; the desk is spoken to on its own.
    QMetaObject::invokeMethod(
        &m_desk,
        [response, &desk = m_desk, digest = outward(digest)] {
            desk.ask([digest](Record& record) -> PictureAnswer { return record.picture(digest); })
                .then([response](const PictureAnswer& picture) { response->answer(picture); })
                .onCanceled([response] { response->giveUp(); });
        },
        Qt::QueuedConnection);
    return response;
}

}
