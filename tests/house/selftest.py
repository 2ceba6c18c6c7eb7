# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
"""Each house check, shown a tree with one planted fault, finds it; shown the same tree without it, it finds nothing."""

import io
import subprocess
import tempfile
import unittest
from contextlib import redirect_stdout
from pathlib import Path

import built
import cpp
import desktop
import files
import format as layout
import packages
import sizes
import translations
import walls
import words

TOP = "// SPDX-FileCopyrightText: The Setfolio authors\n// SPDX-License-Identifier: MIT\n"
HASH_TOP = TOP.replace("//", "#")


class Tree(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.root = Path(folder.name)
        for module, header in (("QtCore", "QString"), ("QtGui", "QPainter"), ("QtWidgets", "QWidget")):
            self.write(f"build/qt/{module}/{header}", "")

    def write(self, path, text):
        (self.root / path).parent.mkdir(parents=True, exist_ok=True)
        (self.root / path).write_text(text, encoding="utf-8")

    def found(self, check, *arguments):
        with redirect_stdout(io.StringIO()):
            return check(self.root, *arguments)


class WallsStand(Tree):
    def found_in(self, path, line):
        self.write("core/a.h", TOP)
        self.write("ui/wording/b.h", TOP)
        self.write("ui/sheet/c.h", TOP)
        self.write(path, TOP + line + "\n")
        return self.found(walls.complaints, self.root / "build/qt")

    def test_includes_up_the_stairs_are_found(self):
        for path, line in (
            ("core/x.cpp", '#include "ui/sheet/c.h"'),
            ("core/x.cpp", '#include "ui/wording/b.h"'),
            ("ui/wording/x.cpp", '#include "ui/sheet/c.h"'),
            ("ui/table/x.cpp", '#include "app/d.h"'),
            ("core/x.cpp", "#include <QPainter>"),
            ("core/x.cpp", "#include <QtGui/QPainter>"),
            ("ui/wording/x.cpp", "#include <QPainter>"),
            ("ui/sheet/x.cpp", "#include <QWidget>"),
            ("core/x.cpp", '#include "a.h"'),
        ):
            with self.subTest(path=path, line=line):
                self.assertTrue(self.found_in(path, line))

    def test_includes_down_the_stairs_are_not(self):
        for path, line in (
            ("core/x.cpp", '#include "core/a.h"'),
            ("core/x.cpp", "#include <QString>"),
            ("core/x.cpp", "#include <vector>"),
            ("ui/sheet/x.cpp", '#include "ui/wording/b.h"'),
            ("ui/sheet/x.cpp", "#include <QPainter>"),
            ("ui/table/x.cpp", "#include <QWidget>"),
            ("ui/table/x.cpp", '#include "x.moc"'),
        ):
            with self.subTest(path=path, line=line):
                self.assertEqual(self.found_in(path, line), [])

    def test_what_comes_from_the_air_is_found_below_the_widgets(self):
        for line in (
            "auto t = QDateTime::currentDateTimeUtc();",
            "auto d = QDate::currentDate();",
            "auto l = QLocale::system();",
            "auto s = QLocale().toString(1);",
            "QLocale locale;",
            "auto u = QUuid::createUuid();",
            "    Q_OBJECT",
            "class A : public QObject {};",
            "auto e = qgetenv(name);",
        ):
            with self.subTest(line=line):
                self.assertTrue(self.found_in("ui/sheet/x.cpp", line))
                self.assertEqual(self.found_in("ui/sheet/x.cpp", "// " + line), [])

    def test_sentences_are_found_in_core_but_not_in_wording(self):
        self.assertTrue(self.found_in("core/x.cpp", 'auto s = tr("Set");'))
        (self.root / "core/x.cpp").unlink()
        self.assertEqual(self.found_in("ui/wording/x.cpp", 'auto s = QCoreApplication::translate("A", "Set");'), [])

    def test_a_library_linked_up_the_stairs_is_found(self):
        self.write("core/CMakeLists.txt", "target_link_libraries(core PUBLIC house Qt6::Core)")
        self.assertEqual(self.found(walls.complaints), [])
        for library in ("Qt6::Gui", "sheet", "Qt6::Widgets"):
            with self.subTest(library=library):
                self.write("core/CMakeLists.txt", f"target_link_libraries(core PUBLIC house Qt6::Core\n    {library})")
                self.assertTrue(self.found(walls.complaints))


class SizesHold(Tree):
    def function(self, lines, name="f"):
        return f"void {name}() {{\n" + "    step();\n" * (lines - 2) + "}\n"

    def short_ones(self, count):
        return "".join(self.function(5, f"short{number}") for number in range(count))

    def test_a_long_file_is_found(self):
        self.write("core/x.cpp", TOP + "\n" * 499)
        self.assertIn("core/x.cpp: 501 lines, 500 at most", self.found(sizes.complaints))

    def test_a_tree_of_which_more_than_a_tenth_is_longish_is_found(self):
        for number in range(20):
            self.write(f"core/f{number}.cpp", TOP + "\n" * (360 if number < 2 else 100))
        self.assertEqual(self.found(sizes.complaints), [])
        self.write("core/f2.cpp", TOP + "\n" * 360)
        self.assertTrue(self.found(sizes.complaints))

    def test_a_long_function_is_found(self):
        self.write("core/x.cpp", TOP + self.short_ones(19) + self.function(60))
        self.assertEqual(self.found(sizes.complaints), [])
        self.write("core/x.cpp", TOP + self.short_ones(19) + self.function(61))
        self.assertEqual(self.found(sizes.complaints), ["core/x.cpp:98: f has 61 lines, 60 at most"])

    def test_a_long_table_of_test_data_is_not(self):
        self.write("core/x.cpp", TOP + self.short_ones(19) + self.function(90, "A::rules_data"))
        self.assertEqual(self.found(sizes.complaints), [])

    def test_missing_licence_lines_are_found(self):
        for path, text in (("core/x.h", "#pragma once\n"), ("a/run", "#!/bin/sh\ntrue\n"), ("b/CMakeLists.txt", "\n")):
            with self.subTest(path=path):
                self.write(path, text)
                self.assertTrue(self.found(sizes.complaints))
                start = "#!/bin/sh\n" if path == "a/run" else ""
                self.write(path, start + (TOP if path.endswith(".h") else HASH_TOP))
                self.assertEqual(self.found(sizes.complaints), [])


class FunctionsAreRead(unittest.TestCase):
    def names(self, text):
        return [(name, length) for name, _, length in cpp.functions(text)]

    def test_members_lambdas_and_initializers(self):
        text = """
namespace setfolio {
struct Point { int x{0}; int y = 0; };
class A {
public:
    A() : m_a{1}, m_b{2} {
        start();
    }
    int size() const { return 1; }
};
A::A(int a)
    : m_a(a),
      m_b{a, {1, 2}} {
}
auto B::find(const QString& name) const -> std::optional<int> {
    const auto same = [&](int a) {
        return a == 1;
    };
    if (same(1)) {
        return std::nullopt;
    }
    const QString brace = QStringLiteral("{{ \\" { ");
    return Point{1, 2}.x;
}
const Table table = make({1, 2});
template <typename T> void each(T t) noexcept {
    for (int a : {1, 2}) {
        t(a);
    }
}
} // namespace setfolio {
"""
        expected = [("A", 3), ("size", 1), ("A::A", 2), ("B::find", 10), ("each", 5)]
        self.assertEqual(self.names(text), expected)

    def test_raw_strings_characters_and_macros(self):
        text = 'int f() {\n  char a = \'{\';\n  auto b = R"x({{{)x";\n  return 1\'000;\n}\n'
        text += "#define M(x) { x\nint g() {\n}\n"
        self.assertEqual(self.names(text), [("f", 5), ("g", 2)])


class AllIsBuilt(Tree):
    def test_files_and_tests_that_are_in_no_list_are_found(self):
        sources = "target_sources(core PRIVATE\n    a.cpp # b.cpp\n    sub.cpp)\n"
        self.write("core/CMakeLists.txt", sources + "setfolio_test(roster LIBS core)\nsetfolio_bench(b LIBS core)\n")
        for name in ("a.cpp", "tst_roster.cpp", "bench_b.cpp"):
            self.write(f"core/{name}", TOP)
        self.assertEqual(self.found(built.complaints), [])
        for name in ("b.cpp", "ub.cpp", "tst_rosters.cpp", "tst_a.cpp", "tst_b.cpp", "bench_roster.cpp"):
            with self.subTest(name=name):
                self.write(f"core/{name}", TOP)
                self.assertEqual(self.found(built.complaints), [f"core/{name} is not named in core/CMakeLists.txt"])
                (self.root / "core" / name).unlink()


class WordsAreKept(Tree):
    def test_each_forbidden_word_is_found(self):
        for text in ("see /root/x", "in /home/ann/x", "/tmp/x", "TODO later", "the jersey", "the away team",
                     "two timeouts", "both lineups"):
            with self.subTest(text=text):
                self.write("README.md", text)
                self.assertEqual(len(self.found(words.complaints)), 1)

    def test_allowed_ones_are_not(self):
        reminder = "TODO: split this because Qt 6.5 does it"
        self.write("README.md", f"two time-outs, a line-up, right away, {reminder}, core/tmp/x, $HOME/work/x")
        self.assertEqual(self.found(words.complaints), [])


class CataloguesAreWhole(Tree):
    def found_in(self, translation, source="%1 to serve"):
        message = f"<message><source>{source}</source>{translation}</message>"
        self.write("translations/setfolio_de.ts", f"<TS><context><name>a</name>{message}</context></TS>")
        return self.found(translations.complaints)

    def test_a_finished_sentence_is_not_found(self):
        self.assertEqual(self.found_in("<translation>Aufschlag %1</translation>"), [])
        plural = "<translation><numerusform>%n Satz</numerusform><numerusform>%n S</numerusform></translation>"
        self.assertEqual(self.found_in(plural, "%n set(s)"), [])

    def test_unfinished_empty_and_mismatched_ones_are(self):
        for translation in ("", "<translation/>", '<translation type="unfinished">Aufschlag %1</translation>',
                            "<translation>Aufschlag %2</translation>", "<translation>Aufschlag</translation>"):
            with self.subTest(translation=translation):
                self.assertEqual(len(self.found_in(translation)), 1)


class LayoutIsKept(Tree):
    def test_a_file_laid_out_otherwise_is_found(self):
        style = Path(__file__).resolve().parents[2] / ".clang-format"
        self.write(".clang-format", style.read_text(encoding="utf-8"))
        self.write("core/x.h", TOP + "\nint f(int* a);\n")
        try:
            self.assertEqual(self.found(layout.complaints), [])
        except files.Skip as reason:
            self.skipTest(str(reason))
        self.write("core/x.h", TOP + "\nint f( int *a );\n")
        self.assertTrue(self.found(layout.complaints))


class PackagesAreThere(Tree):
    def test_a_package_that_is_nowhere_is_found(self):
        self.write("packaging/debian-packages", "[build]\ncmake\n")
        try:
            self.assertEqual(self.found(packages.complaints), [])
        except files.Skip as reason:
            self.skipTest(str(reason))
        self.write("packaging/debian-packages", "[build]\ncmake\nno-such-package-anywhere\n")
        self.assertEqual(len(self.found(packages.complaints)), 1)


class TheDesktopIsTold(Tree):
    def test_a_broken_entry_and_a_second_kind_of_file_are_found(self):
        house = Path(__file__).resolve().parents[2] / "packaging"
        for kind in ("desktop", "metainfo.xml", "mime.xml"):
            name = f"packaging/{desktop.ID}.{kind}"
            self.write(name, (house.parent / name).read_text(encoding="utf-8"))
        try:
            self.assertEqual(self.found(desktop.complaints), [])
        except files.Skip as reason:
            self.skipTest(str(reason))
        entry = (self.root / f"packaging/{desktop.ID}.desktop").read_text(encoding="utf-8")
        for planted in (entry.replace("Terminal=false", "Terminal=no"), entry.replace("x-setfolio", "x-other")):
            self.write(f"packaging/{desktop.ID}.desktop", planted)
            self.assertTrue(self.found(desktop.complaints))


class FilesAreListed(Tree):
    def test_only_tracked_files_where_there_is_git(self):
        self.write("core/a.h", TOP)
        self.write("core/b.h", TOP)
        try:
            subprocess.run(["git", "init", "-q", self.root], check=True)
        except OSError as reason:
            self.skipTest(str(reason))
        subprocess.run(["git", "-C", self.root, "add", "core/a.h"], check=True)
        self.assertEqual(files.tracked(self.root), [Path("core/a.h")])

    def test_all_but_the_build_where_there_is_none(self):
        self.write("core/a.h", TOP)
        self.write("build/dev/b.h", TOP)
        self.assertEqual(files.tracked(self.root), [Path("core/a.h")])


if __name__ == "__main__":
    unittest.main()
