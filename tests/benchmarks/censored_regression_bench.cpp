// SPDX-License-Identifier: GPL-3.0-or-later
/// One regression on the readings of 1,000 envelopes, 20 each, of which many only held: from asking for a program to
/// its answer on the screen, ours against survreg of R's package survival. Both read the same file and say the same
/// figures.
///
///     crownring_regression_bench                 compares; Rscript and the package survival must be there
///     crownring_regression_bench READINGS.csv    is our side of it
#include "fabric/drawn_readings.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QElapsedTimer>
#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <QtCore/QTemporaryDir>

#include <array>
#include <cstdlib>
#include <cstring>
#include <limits>

using namespace crownring;

namespace {

constexpr Eigen::Index envelopes = 1000;
constexpr Eigen::Index readingsOfEach = 20;
constexpr int turns = 9;

Observation observationFrom(double low, double high) {
    return std::isnan(low)    ? Observation{Seen::AtMost, 0, high}
           : std::isnan(high) ? Observation{Seen::AtLeast, low, 0}
           : low == high      ? Observation{Seen::Exactly, low, 0}
                              : Observation{Seen::Between, low, high};
}

CensoredSample sampleFrom(const char* file) {
    QFile source(QString::fromLocal8Bit(file));
    if (!source.open(QIODevice::ReadOnly))
        return {};
    const auto text = source.readAll();
    std::vector<std::array<double, 5>> rows;
    const char* at = std::strchr(text.constData(), '\n') + 1;
    while (*at != '\0')
        for (auto& figure : rows.emplace_back()) {
            char* end = nullptr;
            figure = std::strtod(at, &end);
            if (end == at) { // NA
                figure = std::numeric_limits<double>::quiet_NaN();
                end += 2;
            }
            at = end + 1;
        }
    CensoredSample sample{Eigen::MatrixXd::Ones(static_cast<Eigen::Index>(rows.size()), 3), {}, {}};
    for (const auto& [low, high, weight, hours, row] : rows) {
        sample.design.row(static_cast<Eigen::Index>(sample.observed.size())) << 1, hours, row;
        sample.observed.push_back(observationFrom(low, high));
        sample.weights.push_back(weight);
    }
    return sample;
}

int fitOnce(const char* file) {
    const auto fit = fitCensored(sampleFrom(file));
    if (!fit)
        return 1;
    for (const double coefficient : fit->coefficients)
        std::printf("%.10g ", coefficient);
    std::printf("%.10g ", fit->logSigma);
    for (const double variance : fit->covariance.diagonal())
        std::printf("%.10g ", std::sqrt(variance));
    std::printf("%.10g\n", fit->logLikelihood);
    return 0;
}

/// Seconds of the median turn; prints what the program said.
double medianSeconds(const QString& program, const QStringList& arguments) {
    std::vector<double> seconds;
    QByteArray said;
    for (int turn = 0; turn < turns; ++turn) {
        QElapsedTimer timer;
        QProcess process;
        timer.start();
        process.start(program, arguments);
        process.waitForFinished(-1);
        seconds.push_back(static_cast<double>(timer.nsecsElapsed()) * 1e-9);
        said = process.readAllStandardOutput();
        if (process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0)
            return std::numeric_limits<double>::quiet_NaN();
    }
    std::printf("%s\n", said.trimmed().constData());
    std::sort(seconds.begin(), seconds.end());
    return seconds[turns / 2];
}

}

int main(int argc, char** argv) {
    if (argc > 1)
        return fitOnce(argv[1]);
    const QCoreApplication application(argc, argv);
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("readings.csv")));
    if (!file.open(QIODevice::WriteOnly))
        return 1;
    Draws draws(1);
    file.write(QByteArray::fromStdString(csvOf(drawnReadings(envelopes * readingsOfEach, draws))));
    file.close();
    const double ours = medianSeconds(QCoreApplication::applicationFilePath(), {file.fileName()});
    const double theirs =
        medianSeconds(QStringLiteral("Rscript"),
                      {QStringLiteral("--vanilla"),
                       QStringLiteral(CROWNRING_SOURCE_DIR "/tests/benchmarks/survreg_once.R"), file.fileName()});
    std::printf("whole process, median of %d: ours %.4f s, survreg %.4f s, %.1f times\n", turns, ours, theirs,
                theirs / ours);
    return std::isnan(theirs / ours) ? 1 : 0;
}
