// SPDX-License-Identifier: GPL-3.0-or-later

/// The line of every balloon of the demo fleet against its due list and clocks, read and weighed here once more by the
/// words of the contract alone, without the code under test.

#include "ctl/demo_record.h"
#include "test_class.h"

#include <QDate>
#include <QFile>
#include <QTemporaryDir>
#include <QtTest>

#include <map>

namespace balloons_call_test {

using namespace crownring::testing;
using nlohmann::json;

namespace {

const std::vector<std::string> worstFirst = {"spent", "lapsed", "unproven", "tolerance", "nearing", "clear", "closed"};

std::ptrdiff_t rankOf(const json& row) {
    return std::find(worstFirst.begin(), worstFirst.end(), row["standing"].get<std::string>()) - worstFirst.begin();
}

QDate dateOf(const json& text) {
    return QDate::fromString(QString::fromStdString(text.get<std::string>()), Qt::ISODate);
}

}

class BalloonsCallTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    json ctl(const QStringList& arguments) {
        const auto answer = answerOf(QStringLiteral(CROWNRINGCTL),
                                     QStringList{QStringLiteral("--record"), m_folder.filePath("r")} + arguments);
        return answer.code == 0 && !answer.out.isEmpty() ? json::parse(answer.out.toStdString()) : json();
    }

    /// Figures of an item at the end of a day; those that it came with where it came later, and when that was.
    struct Then {
        json figures;
        QDate on;
    };
    std::map<std::pair<std::string, QDate>, Then> m_known;
    std::map<std::string, json> m_entered;

    const Then& figuresOf(const std::string& item, const QDate& day) {
        const auto place = m_known.find({item, day});
        if (place != m_known.end())
            return place->second;
        const auto& entered = m_entered.at(item);
        const auto came = dateOf(entered["on"]);
        if (came <= day)
            return m_known[{item, day}] = {
                       ctl({"clock", QString::fromStdString(item), "--on", day.toString(Qt::ISODate), "--json"}), day};
        auto figures = json{{"minutes", 0}, {"landings", 0}, {"inflations", 0}};
        if (entered.contains("brought_forward"))
            figures.update(entered["brought_forward"]);
        return m_known[{item, day}] = {figures, came};
    }

    /// Days until a limit comes, at what the item was used in the last 24 months; none where that is never.
    std::optional<double> daysUntil(const json& limit, const std::string& item, const QDate& today) {
        if (limit["due"].is_null() || limit["left"].is_null())
            return std::nullopt;
        const auto clock = limit["clock"].get<std::string>();
        if (clock == "months" || clock == "days")
            return static_cast<double>(today.daysTo(dateOf(limit["due"])));
        if (clock == "inspections") // it comes with one, and has no day of its own
            return std::nullopt;
        const auto& then = figuresOf(item, today.addMonths(-24));
        const auto& now = figuresOf(item, today);
        if (then.figures[clock].is_null() || now.figures[clock].is_null())
            return std::nullopt;
        const auto used = now.figures[clock].get<double>() - then.figures[clock].get<double>();
        if (used <= 0)
            return std::nullopt;
        return std::floor(limit["left"].get<double>() * static_cast<double>(then.on.daysTo(today)) / used);
    }

private slots:
    void initTestCase() {
        const auto fleet = QStringLiteral(CROWNRING_SOURCE_DIR "/demo_data/fleet.jsonl");
        QVERIFY(copyDemoRecord(m_folder.filePath(QStringLiteral("r"))));
        QFile file(fleet);
        QVERIFY(file.open(QIODevice::ReadOnly));
        while (!file.atEnd())
            if (const auto entry = json::parse(file.readLine().toStdString()); entry["entry"] == "item.entered")
                m_entered.emplace(entry["item"], entry);
    }

    void theLineIsTheSoonestMandatoryRow_data() {
        // Each clock is a call of its own: one balloon in so many speaks for the others.
        QTest::addColumn<QString>("on");
        QTest::addColumn<std::size_t>("step");
        QTest::newRow("2026-11-25") << "2026-11-25" << std::size_t{3};
        QTest::newRow("2026-06-01") << "2026-06-01" << std::size_t{5};
    }
    void theLineIsTheSoonestMandatoryRow() {
        QFETCH(QString, on);
        QFETCH(std::size_t, step);
        const auto today = QDate::fromString(on, Qt::ISODate);
        const auto rows = ctl({"due", "--on", on, "--json"}).at("rows");
        const auto balloons = ctl({"balloons", "--on", on, "--json"}).at("balloons");
        QVERIFY(balloons.size() > 20);
        int ahead = 0;
        for (std::size_t i = 0; i < balloons.size(); i += step) {
            const auto& line = balloons[i];
            std::vector<json> binding;
            for (const auto& row : rows)
                if (row["balloon"] == line["balloon"] && row["force"] == "mandatory" && row["blocks"] == "flight" &&
                    row["required"] == true)
                    binding.push_back(row);
            const auto name = line["balloon"].get<std::string>();
            if (binding.empty()) {
                QVERIFY2(line["standing"] == "unproven" && line["item"].is_null(), name.c_str());
                continue;
            }
            const auto worst = std::min_element(binding.begin(), binding.end(),
                                                [](const json& a, const json& b) { return rankOf(a) < rankOf(b); });
            QVERIFY2(line["standing"] == (*worst)["standing"], name.c_str());
            if (line["standing"] != "clear" && line["standing"] != "nearing")
                continue;
            ++ahead;
            std::optional<double> soonest;
            std::optional<double> said;
            for (const auto& row : binding) {
                if (row["standing"] != line["standing"])
                    continue;
                const auto item = row["item"].get<std::string>();
                for (const auto& limit : row["limits"]) {
                    const auto days = daysUntil(limit, item, today);
                    if (days && (!soonest || *days < *soonest))
                        soonest = days;
                    if (row["item"] == line["item"] && row["requirement"] == line["requirement"] &&
                        limit["clock"] == line["governs"])
                        said = days;
                }
            }
            QVERIFY2(said == soonest, name.c_str());
        }
        QVERIFY(ahead > 0);
    }
    void oneBalloonMayBeAskedFor() {
        const auto all = ctl({"balloons", "--on", "2026-11-25", "--json"}).at("balloons");
        const auto name = all[3]["balloon"].get<std::string>();
        auto one =
            ctl({"balloons", "--on", "2026-11-25", "--balloon", QString::fromStdString(name), "--json"}).at("balloons");
        QCOMPARE(one.size(), std::size_t{1});
        QCOMPARE(one[0]["unsupported"], json::array()); // asked of one alone
        QCOMPARE(one[0]["unsupported_reviews"], json::array());
        one[0].erase("unsupported");
        one[0].erase("unsupported_reviews");
        QVERIFY(one[0] == all[3]);
        for (const auto* key : {"balloon", "title", "standing", "item", "requirement", "governs", "due", "left",
                                "items", "flights", "minutes"})
            QVERIFY2(one[0].contains(key), key);
    }
};

CROWNRING_TEST(BalloonsCallTest)

}

#include "balloons_call_test.moc"
