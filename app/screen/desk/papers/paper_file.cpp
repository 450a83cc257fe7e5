// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/papers/paper_file.h"

#include "screen/desk/house.h"
#include "words/words.h"

#include <QRegularExpression>
#include <QStandardPaths>
#include <QtConcurrent>

namespace crownring::screen {

QUrl PaperFile::proposed(const QString& title) {
    static const QRegularExpression unfit(QStringLiteral("[/\\\\:*?\"<>|,\\s]+"));
    constexpr qsizetype longestName = 100;
    auto name = title;
    name = name.replace(unfit, QStringLiteral("-")).left(longestName);
    const auto folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QUrl::fromLocalFile(folder + u'/' + name + QStringLiteral(".pdf"));
}

void PaperFile::write(House& house, QObject* owner, paper::Document document, print::PageFormat format,
                      const QUrl& file) {
    const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    hear(QtConcurrent::run([document = std::move(document), format, path]() -> Result<void> {
             return print::writePdf(document, format, path.toStdString(), Replace::Asked);
         }),
         owner, [&house, path](const Result<void>& answer) {
             if (answer)
                 house.notice.tell(tr("Written: %1").arg(path));
             else
                 house.notice.tellTrouble(words::Words::problem(answer.error()));
         });
}

}
