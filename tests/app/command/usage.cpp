#include "app/command/program.h"

using namespace kempt;
using tests::Program;
using tests::words;

BOOST_AUTO_TEST_SUITE(usage)

BOOST_AUTO_TEST_CASE(wrong_usage_exits_2_with_one_line_that_names_what_is_wrong) {
    const Program kempt;
    kempt.fails(2, {}, "help");
    kempt.fails(2, words("comb"), "comb");
    kempt.fails(2, words("plan"), "plan");
    kempt.fails(2, words("measure"), "PHOTO");
    kempt.fails(2, words("measure x.jpg"), "--marks");
    kempt.fails(2, words("measure x.jpg y.jpg --marks m.json"), "y.jpg");
    kempt.fails(2, words("measure x.jpg --marks"), "--marks");
    kempt.fails(2, words("measure x.jpg --marks m.json --loud"), "--loud");
    kempt.fails(2, words("measure x.jpg --marks m.json --json=1"), "--json");
    kempt.fails(2, words("measure x.jpg --marks m.json --printer-scale 3"), "0.9");
    kempt.fails(2, words("card --kind ruler --out x.pdf"), "ruler");
    kempt.fails(2, words("card --kind card"), "--out");
    kempt.fails(2, words("card --kind card --out x.png --png --px-per-mm many"), "many");
    kempt.fails(2, words("card --kind card --out x.png --png --px-per-mm 900"), "60");
    kempt.fails(2, words("card --kind card --out x.pdf --px-per-mm 12"), "--png");
    kempt.fails(2, words("client"), "add");
    kempt.fails(2, words("client dye b.kempt"), "add");
    kempt.fails(2, words("client erase b.kempt --client 1"), "--yes");
    kempt.fails(2, words("visit add b.kempt --client 1 --date tomorrow"), "tomorrow");
    kempt.fails(2, words("visit add b.kempt --client none --date 2026-01-01"), "none");
    kempt.fails(2, words("photo add b.kempt --visit 1 --view elbow x.jpg"), "elbow");
    kempt.fails(2, words("photo measure b.kempt"), "--photo");
    kempt.fails(2, words("grade add b.kempt --visit 1 --zone nape --quality edges --value 5"), "--value");
    kempt.fails(2, words("target add b.kempt --client 1 --view nape --reading beauty --value 5"), "beauty");
    kempt.fails(2, words("progress b.kempt"), "--client");
    kempt.fails(2, words("compare b.kempt --client 1 --view nape --from 1 --to 2"), "--out");
    kempt.fails(2, words("demo"), "--out");
    kempt.fails(2, words("help comb"), "comb");
    kempt.fails(2, words("service add b.kempt --client 1 --date 2026-03-01 --kind gloss --loud"), "kempt help service");
}

BOOST_AUTO_TEST_CASE(what_cannot_be_done_exits_1_with_one_line_and_leaves_nothing) {
    const Program kempt;
    kempt.write(QStringLiteral("text.jpg"), "no picture");
    kempt.write(QStringLiteral("m.json"), R"({"view": "nape", "edge_line": [[1, 1], [9, 1]], "hair_side": [5, 5]})");
    kempt.write(QStringLiteral("bad.json"), "{");
    kempt.write(QStringLiteral("not-a-book"), "hello");
    kempt.fails(1, words("measure none.jpg --marks m.json"), "none.jpg");
    kempt.fails(1, words("measure text.jpg --marks none.json"), "none.json");
    kempt.fails(1, words("measure text.jpg --marks bad.json"), "JSON");
    kempt.fails(1, words("measure text.jpg --marks m.json --json"), "");
    kempt.fails(1, words("client list none.kempt"), "none.kempt");
    kempt.fails(1, words("client list not-a-book"), "not-a-book");
    kempt.fails(1, words("check not-a-book --json"), "not-a-book");
    kempt.fails(1, words("restore b.kempt --from none.kempt"), "none.kempt");
    kempt.fails(1, words("card --kind card --out /proc/none/card.pdf"), "/proc/none");
    kempt.fails(1, words("demo --out d --samples ."), "scenario.json");
    BOOST_TEST(!QFileInfo::exists(kempt.folder.filePath(QStringLiteral("none.kempt"))));
}

BOOST_AUTO_TEST_CASE(help_and_version_answer_on_stdout) {
    const Program kempt;
    for (const char* line :
         {"help", "--help", "-h", "help measure", "measure --help", "client -h", "version", "--version"}) {
        const auto ran = kempt.done(words(line));
        BOOST_TEST(!ran.out.isEmpty());
    }
    const QByteArray all = kempt.done(words("help")).out;
    for (const char* name :
         {"card",     "measure", "demo", "client",  "visit",  "photo", "marks",  "grade",   "service", "target",
          "progress", "plan",    "due",  "compare", "report", "check", "backup", "restore", "export",  "desk"}) {
        BOOST_TEST(all.contains(name));
        BOOST_TEST(
            kempt.done({QStringLiteral("help"), QString::fromLatin1(name)}).out.contains("kempt " + QByteArray(name)));
    }
    BOOST_TEST(kempt.json(words("version")).contains(QStringLiteral("analysis")));
}

BOOST_AUTO_TEST_SUITE_END()
