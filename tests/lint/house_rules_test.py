#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Plants one offence after another in an orderly little tree and sees the right rule catch it."""
import pathlib
import tempfile
import unittest

import house_rules

LICENCE = "// SPDX-License-Identifier: GPL-3.0-or-later\n"
UNNAMED = "namespace {\n\nstruct Same {\n    int a;\n};\n\n}\n\n"
ORDERLY = {
    "core/problem/problem.h": LICENCE + '#include "problem/fault.h"\n',
    "core/problem/fault.h": LICENCE + "enum class Code {\n    BadDate,\n    BadUse,\n};\n"
                              "inline constexpr int codeCount = static_cast<int>(Code::BadUse) + 1;\n",
    "core/record/entry.h": LICENCE + '#include "problem/problem.h"\n#include <nlohmann/json.hpp>\n',
    "core/civil/civil_date.cpp": LICENCE + "#include <boost/date_time/gregorian/gregorian_types.hpp>\n",
    "core/store/journal.cpp": LICENCE + '#include "record/entry.h"\n#include <QSqlQuery>\n// SELECT id FROM entry\n',
    "app/screen/desk/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\ncrownring_module(desk)\n",
    "app/screen/next/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\ncrownring_module(next USES theme desk\n    LIBRARIES x)\n",
    "app/screen/next/next_view.cpp": LICENCE + '#include "record/entry.h"\n#include "screen/desk/day.h"\n#include <QGuiApplication>\n',
    "app/screen/desk/day.h": LICENCE,
    "app/screen/bench/bench_place.h": LICENCE,
    "app/screen/next/next_view.h": LICENCE,
    "app/program/house.h": LICENCE + '#include "screen/desk/day.h"\n',
    "app/print/pdf.h": LICENCE,
    "core/store/journal.h": LICENCE,
    "core/gate/check.h": LICENCE,
    "core/acts/post.h": LICENCE + '#include "gate/check.h"\n',
    "core/bench/reading/reading.h": LICENCE,
    "core/bench/release/release.h": LICENCE + '#include "bench/reading/reading.h"\n',
    "tests/gate/shop.h": LICENCE + '#include "store/journal.h"\n',
    "tests/gate/check_test.cpp": LICENCE + '#include "shop.h"\n#include "acts/post.h"\n\n' + UNNAMED + "class CheckTest {\n};\n",
    "tests/gate/other_test.cpp": LICENCE + UNNAMED,
    "qml/next/NextPage.qml": LICENCE + "import Crownring.Desk\nItem { }\n",
    "qml/theme/Theme.qml": LICENCE + 'QtObject { readonly property color paper: "#FAF7F0" }\n',
}


class HouseRules(unittest.TestCase):
    def offences(self, planted):
        """The names of the rules that object to the orderly tree with these files put over it."""
        with tempfile.TemporaryDirectory() as root:
            for name, text in {**ORDERLY, **planted}.items():
                path = pathlib.Path(root, name)
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_text(text, encoding="utf-8")
            tree = house_rules.Tree(root)
            return {rule.__name__ for rule in house_rules.RULES if list(rule(tree))}

    def catches(self, rule, name, line):
        self.assertIn(rule, self.offences({name: LICENCE + line + "\n"}), f"{name}: {line}")

    def test_order_is_left_alone(self):
        self.assertEqual(self.offences({}), set())

    def test_an_arrow_back(self):
        self.catches("arrows", "core/problem/more.cpp", '#include "record/entry.h"')
        self.catches("arrows", "core/record/more.cpp", '#include "store/journal.h"')
        self.catches("arrows", "core/record/more.cpp", '#include "screen/next/next_view.h"')
        self.catches("arrows", "core/record/more.cpp", '#include "problem/missing.h"')
        self.catches("arrows", "core/attic/more.cpp", '#include "problem/problem.h"')
        self.catches("arrows", "core/gate/more.cpp", '#include "acts/post.h"')
        self.catches("arrows", "core/exchange/more.cpp", '#include "acts/post.h"')
        self.catches("arrows", "app/attic/more.cpp", '#include "problem/problem.h"')
        self.catches("arrows", "app/screen/next/more.cpp", '#include "program/house.h"')
        self.catches("arrows", "app/words/more.cpp", '#include "screen/desk/day.h"')
        self.catches("arrows", "app/ctl/more.cpp", '#include "screen/desk/day.h"')
        self.catches("arrows", "app/words/more.cpp", '#include "print/pdf.h"')

    def test_tests_that_see_more_than_their_room(self):
        self.catches("arrows", "tests/record/more_test.cpp", '#include "store/journal.h"')
        self.catches("arrows", "tests/record/more_test.cpp", '#include "gate/shop.h"')
        self.catches("arrows", "tests/gate/more_test.cpp", '#include "screen/desk/day.h"')
        self.catches("arrows", "tests/gate/more_test.cpp", '#include "missing.h"')
        self.catches("arrows", "tests/attic/more_test.cpp", '#include "problem/problem.h"')

    def test_a_wall_with_a_hole(self):
        self.catches("walls", "app/screen/desk/more.cpp", '#include "screen/next/next_view.h"')
        self.catches("walls", "app/screen/next/more.cpp", '#include "screen/bench/bench_place.h"')
        self.catches("walls", "qml/next/More.qml", "import Crownring.Bench")

    def test_a_folder_that_includes_what_it_is_not_built_from(self):
        cmake = "# SPDX-License-Identifier: GPL-3.0-or-later\ncrownring_room({} SOURCES a.cpp\n    ROOMS {})\n"
        upper, lower = "core/rules/due/CMakeLists.txt", "core/rules/standing/CMakeLists.txt"
        header = {"core/rules/standing/a.h": LICENCE, "core/rules/programme/b.h": LICENCE}
        orderly = {**header, upper: cmake.format("rules/due", "rules/standing"), lower: cmake.format("rules/standing", "civil")}
        include = LICENCE + '#include "rules/{}"\n'
        self.assertNotIn("folders", self.offences({**orderly, "core/rules/due/c.cpp": include.format("standing/a.h")}))
        self.assertIn("folders", self.offences({**orderly, "core/rules/due/c.cpp": include.format("programme/b.h")}))
        self.assertIn("folders", self.offences({**orderly, lower: cmake.format("rules/standing", "rules/due")}))

    def test_a_library_out_of_its_room(self):
        self.catches("libraries", "core/rules/more.cpp", "#include <boost/date_time/gregorian/gregorian.hpp>")
        self.catches("libraries", "core/rules/more.cpp", "#include <Eigen/Dense>")
        self.catches("libraries", "core/civil/more.cpp", "#include <nlohmann/json.hpp>")
        self.catches("libraries", "core/rules/more.cpp", "#include <QString>")
        self.catches("libraries", "core/rules/more.cpp", "#include <QtCore/qstring.h>")
        self.catches("libraries", "core/exchange/more.cpp", "#include <QSqlQuery>")
        self.catches("libraries", "core/store/more.cpp", "#include <QImage>")
        self.catches("libraries", "core/store/more.cpp", "#include <QtGui/QColor>")
        self.catches("libraries", "app/screen/more.cpp", "#include <QSqlDatabase>")

    def test_sql_outside_the_store(self):
        self.catches("sql", "core/acts/more.cpp", 'run("SELECT id FROM entry");')
        self.catches("sql", "app/screen/more.cpp", 'run("INSERT INTO entry VALUES (1)");')
        self.catches("sql", "app/screen/more.cpp", "QSqlQuery query;")

    def test_a_javascript_date(self):
        for line in ("property var d: new Date()", "text: on.getDate()", 'text: Qt.formatDate(on, "d")', "text: on.toLocaleDateString()"):
            self.catches("qml_dates", "qml/next/More.qml", line)

    def test_a_colour_outside_the_theme(self):
        for line in ('color: "#fff"', "color: '#B3261E'", "color: Qt.rgba(1, 0, 0, 1)"):
            self.catches("qml_colours", "qml/next/More.qml", line)

    def test_a_context_property(self):
        self.catches("context_properties", "app/screen/main.cpp", 'engine.rootContext()->setContextProperty("record", &record);')

    def test_the_clock_of_the_machine(self):
        self.catches("clocks", "core/rules/more.cpp", "const auto today = QDate::currentDate();")
        self.catches("clocks", "core/civil/more.cpp", "std::chrono::system_clock::now();")

    def test_the_time_of_a_zone(self):
        self.catches("zones", "core/store/more.cpp", "QDateTime::currentDateTime().toString()")
        self.catches("zones", "app/screen/next/more.cpp", "const auto day = moment.toLocalTime().date();")

    def test_no_licence(self):
        for name in ("core/civil/more.h", "qml/next/More.qml", "tests/lint/more.py", "core/civil/CMakeLists.txt"):
            self.assertIn("licences", self.offences({name: "\n\nint a;\n"}), name)

    def test_a_name_in_another_manner(self):
        self.catches("names", "core/civil/CivilDate.h", "")
        self.catches("names", "qml/next/next_page.qml", "")
        self.catches("names", "core/civil/more.h", "class DateManager;")
        self.catches("names", "core/civil/more.h", "struct FlightData {")

    def test_a_file_without_end(self):
        self.catches("lengths", "core/civil/more.cpp", "\n" * house_rules.LONGEST)

    def test_a_crowd(self):
        for folder in ("app/ctl", "core/civil", "tests/civil"):
            many = {f"{folder}/call_{number}.cpp": LICENCE for number in range(house_rules.CROWD + 1)}
            self.assertIn("crowds", self.offences(many))

    def test_two_of_a_name_in_one_program(self):
        for kind in ("struct Twin", "class Twin : public QObject", "enum class Twin"):
            text = LICENCE + kind + " {\n    One,\n};\n"
            self.assertIn("twins", self.offences({"tests/gate/a_test.cpp": text, "tests/gate/b_test.cpp": text}))
            self.assertNotIn("twins", self.offences({"tests/gate/a_test.cpp": text, "tests/record/b_test.cpp": text}))

    def test_a_marker(self):
        self.catches("markers", "core/civil/more.cpp", "// TO" "DO later")

    def test_a_code_that_is_not_counted(self):
        self.catches("codes", "core/problem/fault.h", "enum class Code {\n    BadDate,\n    BadUse,\n    BadMood,\n};\n"
                     "inline constexpr int codeCount = static_cast<int>(Code::BadUse) + 1;")

    def test_a_sentence_in_core(self):
        for line in ('return problem(Code::BadUse, "no items to check", "");', 'label("Time in service");', 'text += " is open and";'):
            self.catches("sentences", "core/rules/more.cpp", line)
        self.catches("sentences", "core/store/more.cpp", 'refuse("the copy is damaged");')
        for line in ('run("SELECT at, entry_id FROM flight WHERE at < ?");', '// the copy is damaged', 'throw std::logic_error("no such kind");',
                     'rule = "ML.A.403(b) (from memory)";', 'words = "open, done, not-applicable";'):
            self.assertNotIn("sentences", self.offences({"core/store/more.cpp": LICENCE + line + "\n"}), line)

    def test_qml_that_reaches_out_or_puts_sentences_together(self):
        for line in ("width: parent.parent.width", 'text: qsTr("due on ") + day', 'text: day + qsTr(" days")'):
            self.catches("qml_manners", "qml/next/More.qml", line)

    def test_a_text_that_may_be_read_as_html(self):
        plain = "textFormat: Text.PlainText"
        for line in ("Text { text: row.name }", "T.Label { text: row.name }", "ToolTip { text: row.name }",
                     "contentItem: Text {\n    text: row.name\n}", f"Text {{\n    Text {{ {plain} }}\n}}",
                     'Item { ToolTip.text: row.name }', "Text { textFormat: Text.StyledText; text: row.name }",
                     f"Text {{ text: row.name }} // {plain}"):
            self.catches("qml_plain", "qml/next/More.qml", line)
        self.assertEqual(self.offences({"qml/next/More.qml": LICENCE + f"Text {{\n    id: it\n    {plain}\n    text: row.name\n}}\n"}),
                         set())

    def test_a_property_that_may_be_overridden(self):
        self.catches("properties", "app/screen/more.h", "Q_PROPERTY(int left READ left\n           NOTIFY changed)")


if __name__ == "__main__":
    unittest.main()
