// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/whole_file.h"
#include "problem/faults/table_fault.h"
#include "problem/faults/use_fault.h"
#include "test_class.h"

#include <QtCore/QFile>
#include <QtCore/QTemporaryDir>
#include <QtTest>
#include <sys/stat.h>

#include <fstream>
#include <future>

namespace whole_file_test {

using namespace crownring;

/// What somebody names to be read is read whole, or is refused: it may have no end.
class WholeFileTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    [[nodiscard]] std::string at(const char* name) const {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    [[nodiscard]] std::string written(const char* name, const QByteArray& bytes) const {
        QFile file(QString::fromStdString(at(name)));
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
            throw std::runtime_error("no room");
        return at(name);
    }

private slots:
    void aFileIsReadToItsLastByte() {
        const QByteArray bytes("two\nlines\0and more", 18);
        QCOMPARE(wholeFile(written("some", bytes)).value(), bytes.toStdString());
        QCOMPARE(wholeFile(written("none", "")).value(), std::string());
        const QByteArray many(300'000, 'x');
        QCOMPARE(wholeFile(written("many", many), 300'000).value(), many.toStdString());
    }
    void whatIsNoFileIsNotRead() {
        QCOMPARE(wholeFile(at("absent")).error().fault, Fault(UseFault::FileUnreadable));
        for (const auto& named : {std::string("/dev/zero"), std::string("/dev/null"), at("")}) {
            QCOMPARE(wholeFile(named).error().fault, Fault(UseFault::NotAFile));
            QCOMPARE(wholeFile(named).error().where.file, named);
        }
    }
    void moreThanIsAskedForIsNotRead() {
        const auto refused = wholeFile(written("large", QByteArray(2 * 1024 * 1024 + 1, 'x')), 2 * 1024 * 1024).error();
        QCOMPARE(refused.fault, Fault(TableFault::TooLarge));
        QCOMPARE(text(refused), at("large") + ": too-large (2)");
        std::ifstream zero("/dev/zero", std::ios::binary);
        QCOMPARE(wholeStream(zero, "standard input", 1000).error().fault, Fault(TableFault::TooLarge));
    }
    void aPipeIsReadUntilItEnds() {
        const auto pipe = at("pipe");
        QCOMPARE(::mkfifo(pipe.c_str(), 0600), 0);
        const auto writing = std::async(std::launch::async, [&] { std::ofstream(pipe) << "through the pipe"; });
        QCOMPARE(wholeFile(pipe).value(), std::string("through the pipe"));
    }
};

CROWNRING_TEST(WholeFileTest, QCoreApplication)

}

#include "whole_file_test.moc"
