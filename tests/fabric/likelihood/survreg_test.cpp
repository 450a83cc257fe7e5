// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/drawn_readings.h"
#include "fabric/likelihood/censored_regression.h"
#include "test_class.h"

#include <QtCore/QProcess>
#include <QtCore/QTemporaryDir>
#include <QtTest>

#include <cmath>
#include <map>

namespace survreg_test {

using namespace crownring;

namespace {

using Figures = std::map<std::string, double>;

struct Fresh {
    CensoredSample sample;
    Scatter scatter = Scatter::Normal;
};

std::vector<Fresh> freshReadings() {
    Draws draws(1);
    return {
        {drawnReadings(40, draws)}, {drawnReadings(2000, draws)}, {drawnReadings(300, draws), Scatter::LeastExtreme}};
}

std::vector<Figures> fitsByR(const std::vector<Fresh>& all) {
    const QTemporaryDir folder;
    QStringList arguments{QStringLiteral("--vanilla"),
                          QStringLiteral(CROWNRING_SOURCE_DIR "/tests/fabric/likelihood/survreg.R")};
    for (const auto& [sample, scatter] : all) {
        QFile file(folder.filePath(QStringLiteral("%1.csv").arg(arguments.size())));
        if (file.open(QIODevice::WriteOnly))
            file.write(QByteArray::fromStdString(csvOf(sample)));
        arguments << file.fileName()
                  << (scatter == Scatter::Normal ? QStringLiteral("gaussian") : QStringLiteral("extreme"));
    }
    QProcess program;
    program.start(QStringLiteral("Rscript"), arguments);
    program.waitForFinished(120'000);
    std::vector<Figures> fits(all.size());
    for (const auto& line : program.readAllStandardOutput().split('\n'))
        if (const auto words = line.split(' '); words.size() == 3)
            fits.at(words[0].toUInt())[words[1].toStdString()] = words[2].toDouble();
    return fits;
}

Figures fitByUs(const Fresh& fresh) {
    const auto fit = fitCensored(fresh.sample, fresh.scatter).value();
    Figures figures{{"loglik", fit.logLikelihood}};
    const std::vector<std::string> names{"intercept", "hours", "row", "logsigma"};
    for (Eigen::Index at = 0; at < 4; ++at) {
        const auto& name = names[static_cast<std::size_t>(at)];
        figures[name] = at < 3 ? fit.coefficients[at] : fit.logSigma;
        figures["se_" + name] = std::sqrt(fit.covariance(at, at));
    }
    return figures;
}

/// What differs by more than a ten-millionth, of errors a millionth, of the log-likelihood 1e-8 in all.
QString differences(const Figures& ours, const Figures& theirs) {
    QString wrong;
    for (const auto& [name, figure] : ours) {
        const auto other = theirs.find(name);
        const double share = name.starts_with("se_") ? 1e-6 : 1e-7;
        if (other == theirs.end() ||
            std::abs(figure - other->second) > (name == "loglik" ? 1e-8 : share * std::abs(other->second)))
            wrong += QStringLiteral("%1 %2\n").arg(QString::fromStdString(name)).arg(figure, 0, 'g', 16);
    }
    return wrong;
}

}

/// Fresh data, fitted by survreg of R's package survival at the time of the test. Without R it fails.
class SurvregTest : public QObject {
    Q_OBJECT
private slots:
    void everyKindOfReadingIsThere() {
        for (const auto& fresh : freshReadings())
            for (const auto kind : {Seen::Exactly, Seen::AtLeast, Seen::AtMost, Seen::Between})
                QVERIFY(std::any_of(fresh.sample.observed.begin(), fresh.sample.observed.end(),
                                    [&](const Observation& observed) { return observed.seen == kind; }));
    }

    void agreesOnFreshReadings() {
        const auto fresh = freshReadings();
        const auto theirs = fitsByR(fresh);
        for (std::size_t at = 0; at < fresh.size(); ++at) {
            QVERIFY2(!theirs[at].empty(), "Rscript and the package survival are needed (Debian: r-cran-survival)");
            QCOMPARE(differences(fitByUs(fresh[at]), theirs[at]), QString());
        }
    }
};

CROWNRING_TEST(SurvregTest, QCoreApplication)

}

#include "survreg_test.moc"
