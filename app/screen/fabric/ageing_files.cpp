// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/ageing_files.h"

#include "paper/csv.h"
#include "words/border.h"
#include "words/words.h"
#include "writing/write_out.h"

#include <QBuffer>
#include <QDir>
#include <QStandardPaths>

namespace crownring::screen {

using namespace words;

namespace {

QString kindText(ageing::Kind kind) {
    switch (kind) {
    case ageing::Kind::AtLeast:
        return AgeingFiles::tr("at least");
    case ageing::Kind::AtMost:
        return AgeingFiles::tr("at most");
    case ageing::Kind::Between:
        return AgeingFiles::tr("between");
    case ageing::Kind::Value:
        break;
    }
    return AgeingFiles::tr("value");
}

std::string figureInFile(double value) { return QString::number(value, 'g', 10).toStdString(); }

std::vector<std::string> rowOf(const AgeingReading& reading, const QString& unit) {
    const bool between = reading.kind == ageing::Kind::Between;
    return {outward(reading.day),
            figureInFile(reading.hours),
            outward(reading.place),
            outward(reading.lot),
            outward(kindText(reading.kind)),
            figureInFile(reading.value),
            between ? figureInFile(reading.upper) : std::string(),
            outward(unit),
            outward(reading.says),
            outward(reading.judgement),
            outward(reading.ofThisPlace ? AgeingFiles::tr("the same") : AgeingFiles::tr("another"))};
}

QString write(const QByteArray& bytes, const QUrl& file) {
    // The dialog asked before it gave the name of a file that is there.
    const auto written =
        writeOut(outward(pathOf(file)), {bytes.constData(), static_cast<std::size_t>(bytes.size())}, Replace::Asked);
    return written ? QString() : Words::problem(written.error());
}

}

QString pathOf(const QUrl& file) { return file.isLocalFile() ? file.toLocalFile() : file.toString(); }

QUrl proposedFile(const AgeingCurve& curve, const QString& ending) {
    QString name;
    for (const QChar letter : curve.title)
        name += letter.isLetterOrNumber() ? letter : u' ';
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    return QUrl::fromLocalFile(folder.filePath(name.simplified().replace(u' ', u'-') + u'.' + ending));
}

QByteArray tableText(const AgeingCurve& curve) {
    paper::Table table;
    for (const auto& title :
         {AgeingFiles::tr("day"), AgeingFiles::tr("hours flown"), AgeingFiles::tr("place"), AgeingFiles::tr("lot"),
          AgeingFiles::tr("kind"), AgeingFiles::tr("value"), AgeingFiles::tr("upper value"), AgeingFiles::tr("unit"),
          AgeingFiles::tr("reading"), AgeingFiles::tr("judgement"), AgeingFiles::tr("set of fabric")})
        table.columns.push_back({outward(title), paper::Align::Left, 1});
    for (const auto& reading : curve.readings)
        table.rows.push_back(rowOf(reading, curve.unit));
    return QByteArray::fromStdString(paper::csv(table));
}

QString writeTable(const AgeingCurve& curve, const QUrl& file) { return write(tableText(curve), file); }

QString writePicture(const QImage& picture, const QUrl& file) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    if (!picture.save(&bytes, "PNG"))
        return AgeingFiles::tr("There is no picture to be saved.");
    return write(bytes.data(), file);
}

}
