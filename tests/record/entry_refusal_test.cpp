// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry_json.h"
#include "record/json/strict_json.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <string>

Q_DECLARE_METATYPE(crownring::Code)

namespace entry_refusal_test {

using namespace crownring;
using namespace crownring::testing;

class EntryRefusalTest : public QObject {
    Q_OBJECT
private slots:
    void everyRefusalNamesItsCodeItsKeyAndItsMend_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<Code>("code");
        QTest::addColumn<QString>("key");
        const auto row = [](const char* name, Code code, const char* key, const std::string& line) {
            QTest::newRow(name) << QString::fromStdString(line).replace('\'', '"') << code << QString(key);
        };
        // A sound line of each kind, to which the rows below do one thing wrong. Quotes are written as apostrophes.
        const std::string on = "'on':'2024-05-01'";
        const auto item = [&](const std::string& more) {
            return "{'entry':'item.entered'," + on + ",'item':'B1','kind':'basket'" + more + "}";
        };
        const auto flight = [&](const std::string& more) {
            return "{'entry':'flight.logged'," + on + ",'balloon':'A','minutes':60" + more + "}";
        };
        const auto done = [&](const std::string& more) {
            return "{'entry':'requirement.done'," + on + ",'item':'B1','requirement':'annual'" + more + "}";
        };
        const auto reading = [&](const std::string& more) {
            return "{'entry':'reading.taken'," + on + ",'item':'B1','quantity':'grab-strength','unit':'N'" + more + "}";
        };
        row("on a basket and on an envelope", Code::BadValue, "place", reading(",'value':3,'place':'floor','gore':3"));
        row("no place of a basket", Code::BadValue, "place", reading(",'value':3,'place':'north'"));
        const auto adopted = [&](const std::string& more) {
            return "{'entry':'programme.adopted'," + on + ",'programme':'p'" + more + "}";
        };
        const auto event = [&](const std::string& more) { return "{'entry':'event.reported'," + on + more + "}"; };
        const auto corrected = [&](const std::string& with) {
            return "{'entry':'entry.corrected'," + on + ",'replaces':'e1','with':" + with + "}";
        };

        row("no JSON", Code::BadJson, "", "minutes 60");
        row("two objects on a line", Code::BadJson, "", flight("") + flight(""));
        row("cut off", Code::BadJson, "", flight("").substr(0, 40));
        row("a list", Code::BadJson, "", "[]");
        row("a number", Code::BadJson, "", "60");
        row("a key twice", Code::BadJson, "", flight(",'minutes':90"));
        row("a key twice further in", Code::BadJson, "", corrected("{'a':[{'b':1,'b':2}]}"));
        row("a comment", Code::BadJson, "", flight("//"));
        row("no UTF-8", Code::BadJson, "", flight(",'note':'\\ud800'"));

        row("no kind", Code::MissingKey, "entry", "{" + on + "}");
        row("an unknown kind", Code::UnknownKind, "entry", "{'entry':'flight.flown'," + on + "}");
        row("a kind that is no text", Code::BadValue, "entry", "{'entry':7," + on + "}");
        row("no day", Code::MissingKey, "on", "{'entry':'balloon.entered','balloon':'A'}");
        row("a day that does not exist", Code::BadDate, "on",
            "{'entry':'balloon.entered','on':'2023-02-30','balloon':'A'}");
        row("a time without zone", Code::BadDate, "time", flight(",'time':'06:45'"));
        row("an empty time", Code::BadDate, "time", flight(",'time':''"));
        row("an empty id", Code::BadValue, "id", flight(",'id':''"));
        row("a line end in an id", Code::BadValue, "id", flight(",'id':'a\\nb'"));
        row("a null character", Code::BadValue, "note", flight(",'note':'a\\u0000b'"));
        row("a misspelt key", Code::UnknownKey, "minuts", flight(",'minuts':60"));
        row("a key of another kind", Code::UnknownKey, "serial", flight(",'serial':'7'"));

        row("an item without a name", Code::BadValue, "item",
            "{'entry':'item.entered'," + on + ",'item':'','kind':'basket'}");
        row("a name of 201 characters", Code::BadValue, "balloon",
            "{'entry':'balloon.entered'," + on + ",'balloon':'" + std::string(201, 'x') + "'}");
        row("an item of no kind", Code::BadValue, "kind",
            "{'entry':'item.entered'," + on + ",'item':'B1','kind':'gondola'}");
        row("made at no day", Code::BadDate, "made", item(",'made':'05/06'"));
        row("a serial number as a number", Code::BadValue, "serial", item(",'serial':123"));
        row("minus minutes brought forward", Code::BadQuantity, "brought_forward/minutes",
            item(",'brought_forward':{'minutes':-1}"));
        row("half a landing brought forward", Code::BadQuantity, "brought_forward/landings",
            item(",'brought_forward':{'landings':0.5}"));
        row("hours brought forward", Code::UnknownKey, "brought_forward/hours", item(",'brought_forward':{'hours':3}"));
        row("a number brought forward", Code::BadValue, "brought_forward", item(",'brought_forward':600"));
        row("operations as a text", Code::BadValue, "operations",
            "{'entry':'balloon.entered'," + on + ",'balloon':'A','operations':'x'}");
        row("an operation in capitals", Code::BadValue, "operations",
            "{'entry':'balloon.entered'," + on + ",'balloon':'A','operations':['Hire']}");
        row("an operation twice", Code::BadValue, "operations",
            "{'entry':'balloon.entered'," + on + ",'balloon':'A','operations':['a','a']}");
        row("fitted to nothing", Code::MissingKey, "to", "{'entry':'item.fitted'," + on + ",'item':'B1'}");
        row("fitted to a balloon and to an item", Code::MissingKey, "to",
            "{'entry':'item.fitted'," + on + ",'item':'B1','balloon':'A','to':'R1'}");
        row("taken off nothing", Code::MissingKey, "from", "{'entry':'item.removed'," + on + ",'item':'B1'}");
        row("no form of release", Code::BadValue, "release/form",
            "{'entry':'item.fitted'," + on + ",'item':'B1','to':'R1','release':{'form':'stamp','number':'1'}}");
        row("released into no service", Code::BadValue, "release",
            "{'entry':'item.state'," + on +
                ",'item':'B1','state':'laid-up','release':{'form':'easa-form-1','number':'1'}}");
        row("a balloon that is quarantined", Code::BadValue, "state",
            "{'entry':'balloon.state'," + on + ",'balloon':'A','state':'quarantined'}");
        row("filled beyond the brim", Code::BadQuantity, "level_percent",
            "{'entry':'cylinder.filled'," + on + ",'item':'C1','level_percent':101}");
        const auto use = [&](const std::string& more) { return "{'entry':'use.planned'," + on + more + "}"; };
        row("use planned for nothing", Code::MissingKey, "balloon", use(",'from':'2026-07-01','times':0"));
        row("use planned for two", Code::MissingKey, "balloon",
            use(",'balloon':'A','item':'E','from':'2026-07-01','times':0"));
        row("use planned at no pace", Code::MissingKey, "times", use(",'balloon':'A','from':'2026-07-01'"));
        row("use planned at two paces", Code::MissingKey, "times",
            use(",'balloon':'A','from':'2026-07-01','times':2,'flights_a_week':3"));
        row("less than no flight", Code::BadQuantity, "times", use(",'balloon':'A','from':'2026-07-01','times':-1"));
        row("a plan that ends before it begins", Code::BadValue, "to",
            use(",'balloon':'A','from':'2026-07-02','to':'2026-07-01','times':2"));
        row("a planned flight of no time", Code::BadQuantity, "minutes",
            "{'entry':'flight.planned'," + on + ",'balloon':'A','minutes':0}");
        const auto visit = [&](const std::string& more) {
            return "{'entry':'visit.planned'," + on + ",'balloon':'A','station':'S','from':'2026-07-02'" + more + "}";
        };
        row("a visit without an end", Code::MissingKey, "to", visit(""));
        row("a visit that ends before it begins", Code::BadValue, "to", visit(",'to':'2026-07-01'"));
        row("a visit that covers a thing twice", Code::BadValue, "covers/1/requirement",
            visit(",'to':'2026-07-02','covers':[{'item':'E','requirement':'r'},{'item':'E','requirement':'r'}]"));
        row("a stamp of two readings", Code::BadDate, "made",
            "{'entry':'item.entered'," + on + ",'item':'C1','kind':'cylinder','made':'05/06'}");
        row("nothing removed", Code::MissingKey, "item", "{'entry':'item.removed'," + on + ",'balloon':'A'}");

        const auto limit = [&](const std::string& more) {
            return "{'entry':'limit.stated'," + on + ",'type':'T','kind':'envelope','quantity':'grab-strength'" +
                   ",'unit':'N','source':'manual'" + more + "}";
        };
        row("a limit that bounds nothing", Code::MissingKey, "least", limit(""));
        row("a least above the most", Code::BadValue, "least", limit(",'least':2,'most':1"));
        const auto closing = [&](const std::string& more) {
            return "{'entry':'inspection.closed'," + on + ",'inspection':'I','outcome':'released','signatory':'A'" +
                   more + "}";
        };
        row("a seal over nothing", Code::MissingKey, "seal/entries",
            closing(",'seal':{'digest':'" + std::string(64, '0') + "'}"));
        row("a signed clock of nothing", Code::MissingKey, "clocks/0/item", closing(",'clocks':[{'minutes':1}]"));
        row("a signed clock in hours", Code::BadQuantity, "clocks/0/minutes",
            closing(",'clocks':[{'item':'E','minutes':'1:00'}]"));

        const std::string approval = "{'entry':'return.approved'," + on + ",'inspection':'I'";
        row("a return that nobody approves", Code::MissingKey, "signatory", approval + ",'capacity':'mechanic'}");
        row("a return approved as nothing", Code::MissingKey, "capacity", approval + ",'signatory':'A'}");
        row("a return approved in words", Code::BadValue, "capacity",
            approval + ",'signatory':'A','capacity':'Repair Station'}");

        const auto code = [&](const std::string& salt, const std::string& key, const std::string& more = {}) {
            return "{'entry':'signatory.code'," + on + ",'signatory':'A','salt':'" + salt + "','key':'" + key + "'" +
                   more + "}";
        };
        const std::string salt(32, '0');
        const std::string key(64, 'a');
        row("a code written out", Code::BadValue, "key", code(salt, "basket wire 7"));
        row("a code without salt", Code::BadValue, "salt", code("", key));
        row("a key in capitals", Code::BadValue, "key", code(salt, std::string(64, 'A')));
        row("half a proof", Code::MissingKey, "proof/signature", code(salt, key, ",'proof':{'key':'" + key + "'}"));
        row("a proof by a name", Code::BadValue, "proof/key", closing(",'proof':{'key':'A','signature':'B'}"));

        row("a flight of no length", Code::BadQuantity, "minutes",
            "{'entry':'flight.logged'," + on + ",'balloon':'A','minutes':0}");
        row("a flight of eight days", Code::BadQuantity, "minutes",
            "{'entry':'flight.logged'," + on + ",'balloon':'A','minutes':11520}");
        row("a flight in decimal minutes", Code::BadQuantity, "minutes",
            "{'entry':'flight.logged'," + on + ",'balloon':'A','minutes':60.5}");
        row("a flight in words", Code::BadQuantity, "minutes",
            "{'entry':'flight.logged'," + on + ",'balloon':'A','minutes':'60'}");
        row("201 landings", Code::BadQuantity, "landings", flight(",'landings':201"));
        row("more than 64 bits", Code::BadQuantity, "landings", flight(",'landings':18446744073709551615"));
        row("an empty kit", Code::BadValue, "kit", flight(",'kit':[]"));
        row("an item twice in the kit", Code::BadValue, "kit", flight(",'kit':['E1','B1','E1']"));
        row("hotter than a flame may be", Code::BadQuantity, "max_temp_c", flight(",'max_temp_c':401"));
        row("tethered, perhaps", Code::BadValue, "tethered", flight(",'tethered':'yes'"));

        row("a take-off with a zone", Code::BadDate, "take_off", flight(",'take_off':'19:10Z'"));
        row("a track without a file", Code::MissingKey, "track/file", flight(",'track':{'skipped':2}"));
        row("a defect of nothing", Code::MissingKey, "what",
            "{'entry':'defect.found'," + on + ",'defect':'D','item':'B1','severity':'minor'}");
        const auto pictured = [&](const std::string& photographs) {
            return "{'entry':'defect.found'," + on +
                   ",'defect':'D','item':'B1','what':'torn','severity':'minor','photographs':" + photographs + "}";
        };
        const auto digest = "'" + std::string(64, 'a') + "'";
        row("a photograph by its file's name", Code::BadValue, "photographs", pictured("['torn.jpg']"));
        row("a list of no photographs", Code::BadValue, "photographs", pictured("[]"));
        row("one photograph twice", Code::BadValue, "photographs", pictured("[" + digest + "," + digest + "]"));

        row("a clock that states nothing", Code::BadValue, "clock/minutes", done(",'clock':{}"));
        row("an unknown figure stated", Code::BadQuantity, "clock/minutes", done(",'clock':{'minutes':null}"));
        row("a method of two words", Code::BadValue, "method", done(",'method':'proof test'"));
        row("adopted for nobody", Code::MissingKey, "balloons", adopted(""));
        row("adopted twice over", Code::MissingKey, "balloons", adopted(",'balloons':['A'],'everything':true"));
        row("adopted for everything: false", Code::BadValue, "everything", adopted(",'everything':false"));
        row("a digest of nothing", Code::BadValue, "digest", adopted(",'everything':true,'digest':'abc'"));
        row("a document that is a text", Code::BadValue, "document", adopted(",'everything':true,'document':'x'"));
        row("a reading of nothing", Code::MissingKey, "value", reading(""));
        row("a reading and a load", Code::MissingKey, "value", reading(",'value':1,'held_at':2"));
        row("a reading beyond all measure", Code::BadQuantity, "value", reading(",'value':1e13"));
        row("gore zero", Code::BadQuantity, "gore", reading(",'value':1,'gore':0"));
        row("a blank unit", Code::BadValue, "unit",
            "{'entry':'reading.taken'," + on + ",'item':'B1','quantity':'q','value':1,'unit':' '}");
        row("an event of nobody", Code::MissingKey, "balloon", event(",'event':'fire'"));
        row("an event of two", Code::MissingKey, "balloon", event(",'event':'fire','balloon':'A','item':'B1'"));
        row("an event without a word", Code::BadValue, "event", event(",'event':'','balloon':'A'"));

        row("a correction of nothing", Code::BadValue, "with", corrected("{}"));
        row("a correction that is a text", Code::BadValue, "with", corrected("'minutes'"));
        row("a correction of the id", Code::CannotAmend, "with/id", corrected("{'id':'e2'}"));
        row("a correction of the kind", Code::CannotAmend, "with/entry", corrected("{'entry':'item.fitted'}"));
        row("a correction that points elsewhere", Code::CannotAmend, "with/replaces", corrected("{'replaces':'e2'}"));
        const auto state = [&](const char* more) {
            return "{'entry':'item.state'," + on + ",'item':'B1'" + more + "}";
        };
        row("a state of nothing", Code::MissingKey, "state", state(""));
        row("a state that is none", Code::BadValue, "state", state(",'state':'retired'"));
        row("a buyer of what is laid up", Code::BadValue, "to", state(",'state':'laid-up','to':'a club'"));
        row("the registration that it has", Code::BadValue, "to",
            "{'entry':'balloon.renamed'," + on + ",'balloon':'A','to':'A'}");
        row("a renaming to nothing", Code::MissingKey, "to", "{'entry':'balloon.renamed'," + on + ",'balloon':'A'}");
        const auto confirmed = [&](const std::string& which, const std::string& against = "'a rule'") {
            return "{'entry':'text.confirmed'," + on + ",'revision':'1','digest':'" + std::string(64, 'a') +
                   "','confirmed_by':'P','capacity':'mechanic','against':" + against + which + "}";
        };
        row("a confirmation of nothing", Code::BadValue, "text", confirmed(""));
        row("a confirmation of two", Code::BadValue, "text", confirmed(",'text':'t','checklist':'c'"));
        row("a confirmation against nothing", Code::BadValue, "against", confirmed(",'text':'t'", "' '"));
        row("a wording of no organisation", Code::MissingKey, "organisation",
            "{'entry':'text.adopted'," + on + ",'text':'t','revision':'1','body':'b'}");
        row("a void without a reason", Code::BadValue, "reason",
            "{'entry':'entry.voided'," + on + ",'voids':'e1','reason':' '}");
    }
    void everyRefusalNamesItsCodeItsKeyAndItsMend() {
        QFETCH(QString, line);
        QFETCH(Code, code);
        QFETCH(QString, key);
        const auto entry = entryFrom(std::string_view(line.toStdString()));
        QVERIFY(!entry);
        QCOMPARE(QByteArray(codeName(entry.error().code()).data()), QByteArray(codeName(code).data()));
        QCOMPARE(QString::fromStdString(entry.error().where.key), key);
        QVERIFY2(isSaid(entry.error()), qPrintable(words::line(entry.error())));
    }

    void aNameOf200CharactersIsANameInAnyScript() {
        std::string name;
        for (int i = 0; i < 200; ++i)
            name += "Ж";
        QVERIFY(entryFrom(nlohmann::json{{"entry", "balloon.entered"}, {"on", "2024-05-01"}, {"balloon", name}}));
        QVERIFY(
            !entryFrom(nlohmann::json{{"entry", "balloon.entered"}, {"on", "2024-05-01"}, {"balloon", name + "Ж"}}));
    }

    void jsonThatIsNestedWithoutEndIsRefusedWithoutEndingTheProgram() {
        const std::string deep = std::string(200'000, '[') + std::string(200'000, ']');
        QCOMPARE(strictJson(deep).error().code(), Code::BadJson);
        QCOMPARE(strictJson("{\"a\":" + deep + "}").error().code(), Code::BadJson);
        const auto nested = [](int levels) {
            return std::string(std::size_t(levels), '[') + std::string(std::size_t(levels), ']');
        };
        QVERIFY(strictJson(nested(deepestJson)));
        QVERIFY(!strictJson(nested(deepestJson + 1)));
    }

    void aLongListOfNamesTakesNoLongTime() {
        nlohmann::json items = nlohmann::json::array();
        for (int i = 0; i < 100'000; ++i)
            items.push_back("item " + std::to_string(i));
        QElapsedTimer timer;
        timer.start();
        QVERIFY(entryFrom(nlohmann::json{
            {"entry", "programme.adopted"}, {"on", "2024-05-01"}, {"programme", "p"}, {"items", items}}));
        QVERIFY(timer.elapsed() < 5'000);
    }
};

CROWNRING_TEST(EntryRefusalTest)

}

#include "entry_refusal_test.moc"
