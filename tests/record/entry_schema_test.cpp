// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"
#include "record/entry_json.h"
#include "record/random_entries.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <map>

namespace entry_schema_test {

using namespace crownring;
using nlohmann::json;

namespace {

json schemaOf(std::string_view kind) {
    QFile file(QString(CROWNRING_SOURCE_DIR "/assets/schema/%1.schema.json")
                   .arg(QString::fromUtf8(kind.data(), qsizetype(kind.size()))));
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error("no schema of " + std::string(kind));
    return json::parse(file.readAll().toStdString());
}

const QSet<QString> ofEveryEntry{"entry", "id", "on", "time", "by", "note"};

/// The keys among the words of a sentence.
QSet<QString> wordsIn(const QString& sentence) {
    static const QRegularExpression gaps(QStringLiteral("[\\s,;\\[\\]]+"));
    const auto words = sentence.split(gaps, Qt::SkipEmptyParts);
    return QSet<QString>(words.begin(), words.end()) - QSet<QString>{"and", "one", "of", "or"};
}

class Schemas {
public:
    Schemas() {
        for (const auto kind : kindNames()) {
            const auto document = schemaOf(kind);
            valijson::SchemaParser().populateSchema(valijson::adapters::NlohmannJsonAdapter(document),
                                                    m_schemas[std::string(kind)]);
        }
    }
    [[nodiscard]] bool accept(const json& object) const {
        const auto schema = m_schemas.find(object.value("entry", ""));
        return schema != m_schemas.end() &&
               valijson::Validator().validate(schema->second, valijson::adapters::NlohmannJsonAdapter(object), nullptr);
    }

private:
    std::map<std::string, valijson::Schema> m_schemas;
};

/// Values that a key is likely not to take, and some that it might.
rc::Gen<json> oddValue() {
    return rc::gen::exec([]() -> json {
        return *rc::gen::elementOf(std::vector<json>{nullptr,
                                                     true,
                                                     false,
                                                     0,
                                                     1,
                                                     -1,
                                                     7,
                                                     200,
                                                     201,
                                                     1000,
                                                     1001,
                                                     10'080,
                                                     10'081,
                                                     10'000'000'000,
                                                     10'000'000'001,
                                                     0.5,
                                                     400.0,
                                                     -60.5,
                                                     1e12,
                                                     2e12,
                                                     "",
                                                     " ",
                                                     "x",
                                                     "E1",
                                                     "basket",
                                                     "hard-landing",
                                                     "Hard",
                                                     "a\nb",
                                                     "2024-02-29",
                                                     "2024-13-01",
                                                     "2016-05",
                                                     "06:45Z",
                                                     "6:45Z",
                                                     std::string(64, 'a'),
                                                     std::string(65, 'a'),
                                                     std::string(200, 'x'),
                                                     std::string(201, 'x'),
                                                     std::string(64, '0'),
                                                     json::array(),
                                                     json::array({"E1"}),
                                                     json::array({"E1", "E1"}),
                                                     json::array({"E1", "B1"}),
                                                     json::array({1}),
                                                     json::array({""}),
                                                     json::object(),
                                                     json{{"minutes", 5}},
                                                     json{{"minutes", nullptr}},
                                                     json{{"minutes", -5}},
                                                     json{{"hours", 5}},
                                                     json{{"id", "x"}},
                                                     json{{"note", nullptr}},
                                                     1e-6,
                                                     1e6,
                                                     1e-7,
                                                     1'000'001,
                                                     "warp",
                                                     "sold",
                                                     "laid-up",
                                                     "barring",
                                                     "abandoned",
                                                     json::array({std::string(64, '0')}),
                                                     json::array({" "}),
                                                     json::array({json{{"item", "E1"}, {"requirement", "r"}}}),
                                                     json::array({json{{"item", "E1"}}}),
                                                     json{{"entries", {"e"}}, {"digest", std::string(64, 'f')}}});
    });
}

std::string anyKeyOf(const json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.push_back(key);
    return *rc::gen::elementOf(keys);
}

/// Does one thing to an entry that may make it wrong.
void mutate(json& object) {
    static const std::vector<std::string> keys = {"id",
                                                  "time",
                                                  "by",
                                                  "note",
                                                  "item",
                                                  "kind",
                                                  "serial",
                                                  "type",
                                                  "made",
                                                  "brought_forward",
                                                  "balloon",
                                                  "title",
                                                  "operations",
                                                  "place",
                                                  "minutes",
                                                  "landings",
                                                  "inflations",
                                                  "kit",
                                                  "max_temp_c",
                                                  "tethered",
                                                  "take_off",
                                                  "track",
                                                  "requirement",
                                                  "clock",
                                                  "method",
                                                  "ref",
                                                  "programme",
                                                  "balloons",
                                                  "items",
                                                  "everything",
                                                  "document",
                                                  "digest",
                                                  "quantity",
                                                  "value",
                                                  "held_at",
                                                  "unit",
                                                  "gore",
                                                  "row",
                                                  "event",
                                                  "replaces",
                                                  "with",
                                                  "voids",
                                                  "reason",
                                                  "spelt_wrong",
                                                  "below",
                                                  "direction",
                                                  "jaw_mm",
                                                  "inspection",
                                                  "line",
                                                  "tester",
                                                  "confirmed",
                                                  "visit",
                                                  "work",
                                                  "checklist",
                                                  "state",
                                                  "to",
                                                  "photographs",
                                                  "finding",
                                                  "defect",
                                                  "what",
                                                  "severity",
                                                  "until",
                                                  "until_minutes",
                                                  "agreed_by",
                                                  "width_mm",
                                                  "part",
                                                  "release_document",
                                                  "outcome",
                                                  "signatory",
                                                  "capacity",
                                                  "manuals",
                                                  "seal",
                                                  "person",
                                                  "licence",
                                                  "manual",
                                                  "gores",
                                                  "least",
                                                  "most",
                                                  "proof",
                                                  "places",
                                                  "source"};
    switch (*rc::gen::inRange(0, 4)) {
    case 0:
        object.erase(anyKeyOf(object));
        break;
    case 1:
        object[*rc::gen::elementOf(keys)] = *oddValue();
        break;
    default:
        object[anyKeyOf(object)] = *oddValue();
        break;
    }
}

/// A schema cannot say which days exist, where the calendar begins, or which of two figures is the greater.
bool isBeyondASchema(const Problem& problem) {
    const auto& key = problem.where.key;
    return problem.code() == Code::BadDate || problem.fault == Fault(EntryFault::SameRegistration) ||
           (problem.code() == Code::BadValue &&
            (key == "below" || key == "least" || key == "first_gore" || key == "first_row"));
}

}

class EntrySchemaTest : public QObject {
    Q_OBJECT
private slots:
    void whatTheRecordWritesFitsItsSchema() {
        const Schemas schemas;
        QVERIFY(rc::check("an entry of any kind", [&] {
            const auto object = toJson(*random::anyEntry());
            if (!schemas.accept(object))
                RC_FAIL(object.dump());
        }));
    }

    void theReaderTakesAnEntryExactlyWhenItsSchemaDoes() {
        const Schemas schemas;
        int taken = 0;
        int refused = 0;
        const auto ok = rc::check("an entry with up to three things changed", [&] {
            auto object = toJson(*random::anyEntry());
            for (int changes = *rc::gen::inRange(0, 4); changes > 0 && !object.empty(); --changes)
                mutate(object);
            const bool expected = object.contains("entry") && object["entry"].is_string() && schemas.accept(object);
            const auto read = entryFrom(object);
            if (read)
                ++taken;
            else
                ++refused;
            if (read.has_value() != expected && !(expected && isBeyondASchema(read.error())))
                RC_FAIL((read ? std::string("the reader alone takes ")
                              : text(read.error()) + " although its schema takes ") +
                        object.dump());
        });
        QVERIFY(ok);
        // Both answers must have been put to the test.
        QVERIFY2(taken > 25 && refused > 25, qPrintable(QString("%1 taken, %2 refused").arg(taken).arg(refused)));
    }

    void whatPeopleAreToldOfTheKeysIsWhatTheSchemaSays() {
        for (const auto& [kind, keys] :
             ofEachKind([]<class Said>() { return std::pair(Kind<Said>::name, Kind<Said>::keys); })) {
            const auto schema = schemaOf(kind);
            auto told = QString::fromUtf8(keys.data(), qsizetype(keys.size()));
            told.remove(QRegularExpression(QStringLiteral("\\[\\{.*?\\}\\]|\\{.*?\\}"))); // keys of inner objects
            const auto needed = wordsIn(told.section(u'[', 0, 0));
            const auto keysTold = wordsIn(told);
            QSet<QString> keysTaken;
            for (const auto& [key, value] : schema.at("properties").items())
                keysTaken += QString::fromStdString(key);
            for (const auto& key : schema.at("required"))
                if (!ofEveryEntry.contains(QString::fromStdString(key)))
                    QVERIFY2(needed.contains(QString::fromStdString(key)),
                             (std::string(kind) + " " + key.dump()).c_str());
            QCOMPARE(keysTold, keysTaken - ofEveryEntry);
        }
    }

    void schemasAreStandAloneAndRefuseUnknownKeys() {
        for (const auto kind : kindNames()) {
            const auto schema = schemaOf(kind);
            QCOMPARE(schema.at("additionalProperties").get<bool>(), false);
            QCOMPARE(schema.at("properties").at("entry").at("const").get<std::string>(), std::string(kind));
            QVERIFY(schema.dump().find("\"$ref\":\"http") == std::string::npos);
        }
    }
};

CROWNRING_TEST(EntrySchemaTest)

}

#include "entry_schema_test.moc"
