#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The rules of the house that a compiler does not check. Prints every offence; exits with 1 when there is one.

    house_rules.py ROOT

Each rule is a function from a tree of sources to offences; house_rules_test.py plants one of each and sees it caught.
"""
import collections
import pathlib
import re
import sys

from rooms import TESTS_ALSO, TESTS_OF, TOLD_TO_ALL_TESTS, known

# Libraries that stay in their rooms: what an include of them looks like, and where in core it may stand.
LIBRARIES = [
    ("Boost.Date_Time", r"boost/date_time", {"civil"}),
    ("Eigen", r"Eigen/", {"fabric", "forecast", "parts", "fleet"}),
    ("nlohmann json", r"nlohmann/", {"paper", "record", "rules", "bench", "sheets", "exchange", "answers", "acts", "store"}),
    ("valijson", r"valijson/", {"rules"}),
    ("libsodium", r"sodium", {"record", "trust"}),
    ("SQLite", r"sqlite3", {"store"}),
    ("Qt SQL", r"QtSql|QSql", {"store"}),
    ("Qt", r"Q[A-Z]|Qt[A-Z]|qt|q[a-z]+\.h", {"store", "exchange"}),
]
SCREEN = re.compile(r"Qt(Gui|Widgets|Quick|Qml|Charts|PrintSupport|Svg)\b|Q(Gui|Widget|Application|Window|Quick|Qml|Paint|Image|"
                    r"Pixmap|Color|Font|Icon|Pdf|Printer|Svg|Chart|TextDocument|Clipboard)")

ROOM = re.compile(r"crownring_(rooms?)\(\s*([\w/]+)([^)]*)\)")
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]')
SQL = re.compile(r"\bSELECT\b[^;]*\bFROM\b|\bINSERT INTO\b|\bDELETE FROM\b|\bCREATE (TABLE|INDEX)\b|\bUPDATE \w+ SET\b|QSqlQuery|"
                 r"QSqlDatabase")
QML_DATES = re.compile(r"new Date\(|\bDate\.now\(|\.get(Date|Month|FullYear|Day|Time)\(|Qt\.formatDate|\.toLocaleDate")
QML_COLOURS = re.compile(r"""["']#[0-9a-fA-F]{3,8}["']|Qt\.(rgba|hsla|hsva|lighter|darker|tint)\(""")
CLOCKS = re.compile(r"system_clock|currentDate\b|currentDateTime|currentMSecs|\btime\(\s*(nullptr|NULL|0)\s*\)|localtime|gmtime")
LOCAL_TIME = re.compile(r"currentDate\b|currentDateTime\b|toLocalTime|Qt::LocalTime|localtime|QTimeZone|SinceEpoch|mktime|current_zone")
ASKS_TODAY = {"app/program/machine_day.cpp", "app/ctl/call.cpp"}
EMPTY_NAMES = re.compile(r"\b(?:class|struct)\s+\w*(Manager|Helper|Utils?|Impl|Data)\b")
# Written so that this file does not hold the words itself.
MARKERS = re.compile(r"\b(TO" r"DO|FIX" r"ME|X" r"XX)\b")

SOURCES = {".h", ".cpp", ".qml", ".py", ".sh", ".sql", ".cmake"}
LONGEST = 400
CROWD = 32

KNOWN = known()


class Tree:
    """The sources of a checkout: path from its root, and lines."""

    def __init__(self, root):
        self.root = pathlib.Path(root)
        self.files = {}
        for top in ("app", "core", "qml", "tests", "assets", "demo_data", ".ci"):
            for path in sorted((self.root / top).rglob("*")):
                name = path.relative_to(self.root)
                if path.is_file() and self.is_source(path) and "corpus" not in name.parts:
                    self.files[name] = path.read_text(encoding="utf-8").splitlines()

    @staticmethod
    def is_source(path):
        return path.suffix in SOURCES or path.name == "CMakeLists.txt" or (path.parent.name == ".ci" and path.name == "run")

    def lines(self, *tops, suffixes=(".h", ".cpp")):
        """Path, line number and line of all sources under these folders."""
        for path, lines in self.files.items():
            if path.parts[0] in tops and path.suffix in suffixes:
                for number, line in enumerate(lines, 1):
                    yield path, number, line


def offence(path, number, words):
    return f"{path}:{number}: {words}"


def includes(tree, *tops):
    for path, number, line in tree.lines(*tops):
        if found := INCLUDE.match(line):
            yield path, number, found.group(1), found.group(2)


def line_of(path):
    """The line of tests/lint/rooms.py that a source belongs to, or that its tests do."""
    if path.parts[0] != "tests":
        return next((line for line in ("/".join(path.parts[:2]), path.parts[0]) if line in KNOWN), None)
    mirrored = path.parts[1] if len(path.parts) > 2 else ""
    return next((line for line in (f"core/{mirrored}", f"app/{mirrored}", TESTS_OF.get(mirrored)) if line in KNOWN), None)


def header_of(tree, path, header):
    """The file that a quoted include means, from the root of the tree: beside its source, or from where folders are named."""
    tops = ("core", "app", "tests") if path.parts[0] == "tests" else ("core", "app") if path.parts[0] == "app" else ("core",)
    places = [path.parent / header] + [pathlib.Path(top, header) for top in tops]
    return next((place for place in places if place in tree.files), None)


def quoted(tree, *tops):
    """Path, line number and header of all quoted includes but those that a build writes."""
    for path, number, mark, header in includes(tree, *tops):
        if mark == '"' and not header.endswith((".moc", ".inc")):
            yield path, number, header


def arrows(tree):
    """A source includes only what its room may know, and so do the tests of that room."""
    for path, number, header in quoted(tree, "core", "app", "tests"):
        room, there = line_of(path), header_of(tree, path, header)
        if room is None:
            yield offence(path, number, f"{path.parent} has no place in tests/lint/rooms.py")
        elif there is None:
            yield offence(path, number, f'there is no "{header}" for it')
        else:
            also = TESTS_ALSO.get(room, "").split() if path.parts[0] == "tests" else ()
            told = TOLD_TO_ALL_TESTS if path.parts[0] == "tests" else ()
            if line_of(there) not in KNOWN[room].union(told, *(KNOWN[each] for each in also)):
                yield offence(path, number, f"{path.parent} must not know {there.parent}")


def modules(tree):
    """What each module of the screen says that it uses: `crownring_module(next USES lists desk …)`."""
    uses = {}
    for path, lines in tree.files.items():
        if path.name == "CMakeLists.txt" and path.parts[0] in ("app", "qml"):
            for name, words in re.findall(r"^crownring_module\((\w+)([^)]*)\)", "\n".join(lines), re.M):
                said = re.search(r"\bUSES\b((?:\s+[a-z_]+)*)", words)
                uses[name] = {name} | set(said.group(1).split() if said else ())
    return uses


def walls(tree):
    """A folder of the screen knows those that it says it uses, in C++ and in QML."""
    uses = modules(tree)
    for path, number, header in quoted(tree, "app"):
        other = header.split("/")
        if path.parts[1] == other[0] == "screen" and other[1] not in uses.get(path.parts[2], ()):
            yield offence(path, number, f"the module {path.parts[2]} does not use {other[1]}")
    for path, number, line in tree.lines("qml", suffixes=(".qml",)):
        found = re.match(r"import Crownring\.(\w+)", line)
        if found and found.group(1).lower() not in uses.get(path.parts[1], ()):
            yield offence(path, number, f"the module {path.parts[1]} does not use {found.group(1)}")


def declared(tree):
    """What each folder of core says in its CMakeLists.txt that it is built from."""
    rooms = {}
    for path, lines in tree.files.items():
        if path.parts[0] == "core" and path.name == "CMakeLists.txt":
            for kind, name, words in ROOM.findall("\n".join(lines)):
                if kind == "rooms":
                    rooms[name] = [f"{name}/{folder}" for folder in words.split()]
                else:
                    part = re.search(r"\bROOMS\s+([\w/\s]+?)\s*(?:\b(?:SOURCES|(?:PRIVATE_)?LIBRARIES)\b|$)", words)
                    rooms[name] = part.group(1).split() if part else []
    return rooms


def below(rooms, start):
    """All that a folder is built from, by way of others too."""
    found, waiting = set(), list(rooms.get(start, []))
    while waiting:
        if (room := waiting.pop()) not in found:
            found.add(room)
            waiting += rooms.get(room, [])
    return found


def built_with(rooms, folder):
    """The target that a folder's files belong to: its own, or that of the nearest folder above that has one."""
    return next((name for count in range(len(folder), 0, -1) if (name := "/".join(folder[:count])) in rooms), "/".join(folder))


def folders(tree):
    """core: a folder includes only what it says that it is built from, and no folder is built from itself."""
    rooms = declared(tree)
    near = {name: {folder for room in of for folder in [room, *[f for f in rooms.get(room, []) if f.startswith(room + "/")]]}
            for name, of in rooms.items()}
    for path, number, mark, header in includes(tree, "core"):
        here, other = built_with(rooms, path.parts[1:-1]), built_with(rooms, header.split("/")[:-1])
        if mark == '"' and here in rooms and other and other != here and other not in near[here]:
            yield offence(path, number, f"{here} is not built from {other}")
    for name in rooms:
        if name in below(rooms, name):
            yield offence(f"core/{name}/CMakeLists.txt", 1, f"{name} is built from itself")


def libraries(tree):
    """Libraries stay in their rooms; nothing of a screen is in core."""
    for path, number, mark, header in includes(tree, "core"):
        if mark != "<":
            continue
        for name, pattern, rooms in LIBRARIES:
            if re.match(pattern, header):
                if path.parts[1] not in rooms:
                    yield offence(path, number, f"{name} must not be used in {path.parts[1]}")
                break
        if SCREEN.match(header):
            yield offence(path, number, f"<{header}> belongs to the app")
    for path, number, mark, header in includes(tree, "app"):
        if mark == "<" and re.match(r"boost/date_time|Eigen/|sqlite3|QtSql|QSql", header):
            yield offence(path, number, f"<{header}> must not be used in the app")


def sql(tree):
    """Only core/store speaks to the database."""
    for path, number, line in tree.lines("core", "app", "qml", suffixes=(".h", ".cpp", ".qml")):
        if path.parts[:2] != ("core", "store") and SQL.search(line):
            yield offence(path, number, "SQL outside core/store")


def qml_dates(tree):
    """A date that crosses into JavaScript may become another day; dates come to QML as texts."""
    for path, number, line in tree.lines("qml", "app", suffixes=(".qml",)):
        if QML_DATES.search(line):
            yield offence(path, number, "a JavaScript date")


def qml_colours(tree):
    """Colours stand in the Theme."""
    for path, number, line in tree.lines("qml", "app", suffixes=(".qml",)):
        if "Theme" not in path.stem and QML_COLOURS.search(line):
            yield offence(path, number, "a colour outside the Theme")


def context_properties(tree):
    """What QML sees has a type."""
    for path, number, line in tree.lines("app"):
        if "setContextProperty" in line:
            yield offence(path, number, "a context property")


def clocks(tree):
    """Today is an argument: only the store, which writes down when an entry came, asks the machine."""
    for path, number, line in tree.lines("core"):
        if path.parts[1] != "store" and path.name != "new_id.cpp" and CLOCKS.search(line):
            yield offence(path, number, "the clock of the machine")


def zones(tree):
    """Where today is asked of the machine a zone counts; everywhere else moments are UTC, so one zone tests all of it."""
    for path, number, line in [*tree.lines("core"), *tree.lines("app")]:
        if path.as_posix() not in ASKS_TODAY and LOCAL_TIME.search(line):
            yield offence(path, number, "the time of a zone")


def licences(tree):
    """Every source says its licence in its first line, or the second behind a #! line."""
    for path, lines in tree.files.items():
        if not any("SPDX-License-Identifier: GPL-3.0-or-later" in line for line in lines[:2]):
            yield offence(path, 1, "no SPDX line")


def names(tree):
    """Files are named in the manner of their language; no name says nothing."""
    for path in tree.files:
        if path.suffix in {".h", ".cpp", ".py"} and not re.fullmatch(r"_*[a-z0-9][a-z0-9_]*", path.stem):
            yield offence(path, 1, "not in snake_case")
        if path.suffix == ".qml" and not re.fullmatch(r"[A-Z][A-Za-z0-9]*|tst_[a-z0-9_]+", path.stem):
            yield offence(path, 1, "not in PascalCase")
    for path, number, line in tree.lines("core", "app"):
        if EMPTY_NAMES.search(line):
            yield offence(path, number, "a name that says nothing")


def lengths(tree):
    """A file has one subject."""
    for path, lines in tree.files.items():
        if len(lines) > LONGEST:
            yield offence(path, len(lines), f"more than {LONGEST} lines")


def crowds(tree):
    """A folder is seen at a glance."""
    count = collections.Counter(path.parent for path in tree.files if path.parts[0] in ("core", "app", "qml", "tests"))
    for folder, files in count.items():
        if files > CROWD:
            yield offence(folder, files, f"more than {CROWD} files")


def twins(tree):
    """The tests of a room are linked into one program: what they define for themselves alone is unnamed outside."""
    defined = {}
    for path, lines in tree.files.items():
        if path.parts[0] == "tests" and path.name.endswith("_test.cpp"):
            outside = re.sub(r"^namespace \{\n.*?\n\n\}$", "", "\n".join(lines), flags=re.M | re.S)
            for name in re.findall(r"^(?:class|struct|enum(?: class)?) (\w+)[^;]*?\{", outside, re.M):
                first = defined.setdefault((path.parts[1], name), path)
                if first != path:
                    yield offence(path, 1, f"{name} is also in {first}")


def markers(tree):
    """What is left to do is not left in a source."""
    for path, lines in tree.files.items():
        for number, line in enumerate(lines, 1):
            if MARKERS.search(line):
                yield offence(path, number, "a marker of work left undone")


def codes(tree):
    """codeCount counts to the last code, so that tests/words/every_code_test.cpp comes to every one."""
    header = "\n".join(tree.files.get(pathlib.Path("core/problem/fault.h"), []))
    block = re.search(r"enum class Code \{(.*?)\};", header, re.S)
    last = re.findall(r"^\s*(\w+),", block.group(1) if block else "", re.M)[-1:]
    if last != re.findall(r"codeCount = static_cast<int>\(Code::(\w+)\) \+ 1;", header):
        yield offence("core/problem/fault.h", 1, "codeCount does not count to the last code")


# A literal of core that says something in English, unless it is one of these.
SENTENCE = re.compile(r"[A-Za-z']{2,} [a-z']{2,}")
LITERAL = re.compile(r'"((?:[^"\\]|\\.)*)"|//.*')
SQL_WORDS = re.compile(r"\b(SELECT|FROM|WHERE|INSERT|UPDATE|DELETE|CREATE|DROP|ORDER BY|VALUES|UNION|JOIN|AND|SET|WINDOW|CAST|LOCK|PRAGMA)\b")
WORDS_OF_OTHERS = {
    "core/bench/release/owner_rule.cpp": "what the rules say, as read, each with its clause",
    "core/bench/release/release_text.cpp": "statements as 14 CFR and Part-ML prescribe them, and where they stand",
    "core/bench/release/statement.cpp": "what fills the places of a statement, in its language",
    "core/exchange/log/log_heading.cpp": "what people call the columns of their logs, in four languages",
    "core/record/kinds": "what stands under the keys of an entry, key by key", "core/record/kinds/parts": "the same", "core/record/kinds/directives": "the same", "core/record/kinds/plans": "the same",
    "core/registry/clock.cpp": "two figures as the projections of existing records hold them",
    "core/rules/programme/document_schema.cpp": "what the schema checker writes, to find the key that it means",
    "core/gate/gate.cpp": "what each check is called, for developers", "core/writing/target.cpp": "how a file of SQLite begins",
}


def sentences(tree):
    """core speaks in codes with arguments: sentences are made in app/words."""
    for path, number, line in tree.lines("core"):
        if str(path) in WORDS_OF_OTHERS or str(path.parent) in WORDS_OF_OTHERS or line.lstrip().startswith(("#include", "//")) or "throw std::" in line:
            continue
        for found in LITERAL.finditer(line):
            text = re.sub(r"\(from memory[^)]*\)", "", found.group(1) or "")
            if SENTENCE.search(text) and not (path.parts[1] == "store" and SQL_WORDS.search(text)):
                yield offence(path, number, f'"{found.group(1)}" is a sentence; core speaks in codes')


def qml_manners(tree):
    """A file of QML speaks to what it names, not to where it happens to stand; a sentence is translated whole."""
    for path, number, line in tree.lines("qml", "app", suffixes=(".qml",)):
        if "parent.parent" in line:
            yield offence(path, number, "parent.parent")
        if re.search(r"""\bqsTr\([^()]*\)\s*\+|\+\s*qsTr\(""", line):
            yield offence(path, number, "a sentence put together from pieces")


PLAIN = re.compile(r"\btextFormat:\s*Text(Edit)?\.PlainText\b")
SHOWS_TEXT = re.compile(r"(?<![\w.])(?:(?:T|Basic|Controls)\.(?:Label|ToolTip|TextArea)|Text|TextEdit|ToolTip)\s*\{")


def block(text, begin):
    """What stands between the brace before `begin` and its partner, without what stands in braces of its own."""
    depth, own = 0, []
    for letter in text[begin:]:
        depth += (letter == "{") - (letter == "}")
        if depth < 0:
            break
        if depth == 0:
            own.append(letter)
    return "".join(own)


def qml_plain(tree):
    """A name is text, whatever is in it: who shows text says that it is plain, and a tip is made of such a text."""
    for path, lines in tree.files.items():
        if path.suffix != ".qml":
            continue
        text = "\n".join(re.sub(r"//.*", "", line) for line in lines)
        for found in SHOWS_TEXT.finditer(text):
            if not PLAIN.search(block(text, found.end())):
                yield offence(path, text.count("\n", 0, found.start()) + 1, "a text that may be read as HTML")
        for found in re.finditer(r"\bToolTip\.(text|show)\b|\bStyledText\b|\b(Text|TextEdit)\.(RichText|AutoText|MarkdownText)\b", text):
            yield offence(path, text.count("\n", 0, found.start()) + 1, "a text that may be read as HTML")


def properties(tree):
    """What QML reads is FINAL or CONSTANT, so that its compiler need not look for an override."""
    for path, lines in tree.files.items():
        if path.parts[0] != "app" or path.suffix != ".h":
            continue
        text = "\n".join(lines)
        for found in re.finditer(r"Q_PROPERTY\(((?:[^()]|\([^()]*\))*)\)", text):
            if not re.search(r"\b(FINAL|CONSTANT)\b", found.group(1)):
                yield offence(path, text.count("\n", 0, found.start()) + 1, "a property that is neither FINAL nor CONSTANT")


RULES = [arrows, walls, folders, libraries, sql, qml_dates, qml_colours, context_properties, clocks, zones, licences, names,
         lengths, crowds, twins, markers, codes, sentences, qml_manners, qml_plain, properties]


def main(root):
    tree = Tree(root)
    if len(tree.files) < 10:
        sys.exit(f"no sources under {root}")
    offences = [f"{found} [{rule.__name__}]" for rule in RULES for found in rule(tree)]
    print(*offences, f"{len(tree.files)} sources, {len(RULES)} rules, {len(offences)} offences", sep="\n")
    return 1 if offences else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
