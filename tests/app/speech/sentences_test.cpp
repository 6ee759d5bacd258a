// Every sentence that a room below the windows can say has its Spanish: read from the sources themselves, so that a new
// one cannot be forgotten. KEMPT_WRITE_SAYINGS=1 writes the lists anew; their Spanish is then filled in said_es.ts.
#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cstdlib>

#include "source_sentences.h"
#include "speech/speech.h"

using namespace kempt;
using speech::Language;
using speech::Speech;

namespace {

bool writing() {
    return std::getenv("KEMPT_WRITE_SAYINGS") != nullptr;
}

void write_list(const QString& name, const QString& about, const QStringList& all) {
    QFile file(QStringLiteral("app/speech/said_%1.cpp").arg(name));
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(
        QStringLiteral("// %1, written by KEMPT_WRITE_SAYINGS=1 test_speech.\n// Do not edit.\n#include <QtGlobal>\n\n"
                       "#include \"speech/sayings.h\"\n\nnamespace kempt::speech {\n\n// clang-format off\n"
                       "const char* const said_%2[] = {\n")
            .arg(about, name)
            .toUtf8());
    for (QString words : all) {
        words.replace(u'\\', QStringLiteral("\\\\"))
            .replace(u'"', QStringLiteral("\\\""))
            .replace(u'\n', QStringLiteral("\\n"));
        file.write("    QT_TRANSLATE_NOOP(\"said\", \"" + words.toUtf8() + "\"),\n");
    }
    file.write("    nullptr};\n// clang-format on\n\n}  // namespace kempt::speech\n");
}

// What no stylist ever reads: the rules' file and the demo's are read from inside the program and by its developers,
// the command line stays English.
bool for_developers(const QString& file) {
    static const QStringList some{"app/speech/",
                                  "app/desk/",
                                  "app/command/",
                                  "app/main_",
                                  "analysis/care/records.cpp",
                                  "analysis/care/rules.cpp",
                                  "analysis/care/condition.cpp",
                                  "app/work/scenario.cpp",
                                  "app/work/demo_output.cpp",
                                  "app/work/real_photo.cpp",
                                  "app/pch_"};
    return std::any_of(some.begin(), some.end(), [&](const QString& one) { return file.startsWith(one); });
}

// Pieces that a sentence is made from whose middle is a word (rose, fell, is, are); the whole sentences are in the
// lists, and languages_test says each of them.
bool is_piece(const QString& words) {
    static const QStringList some{
        "%1%2, from %3 to %4; the smallest change these shots can show is %5.",
        "%1 went from %2 to %3, %4; that is within the %5 that these shots cannot tell from chance.",
        "No trend line: it takes %1 comparable visits, and there %2 %3."};
    return some.contains(words);
}

const QStringList rooms{"analysis", "app"};

QString with_figures(QString words) {
    static const QRegularExpression place(QStringLiteral("%[0-9]"));
    return words.replace(place, QStringLiteral("7"));
}

}  // namespace

BOOST_AUTO_TEST_SUITE(sentences)

BOOST_AUTO_TEST_CASE(strings_are_read_from_sources_with_what_is_joined_to_them) {
    QFile file(QStringLiteral("/tmp/kempt-strings-%1.cpp").arg(QCoreApplication::applicationPid()));
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(
        "// \"A comment.\"\nError f() { return invalid(\"a-code\", \"The \" + what(1, \"x\") + \" is \"\n "
        "\"missing.\", x ? \"Give one.\" "
        ": \"Give two.\"); }\nauto s = QStringLiteral(\"Wrote %1.\").arg(path) + std::string(\" Done now.\");\n");
    file.close();
    QStringList all;
    for (const auto& one : sources::strings_of(file.fileName())) all.append(one.words);
    file.remove();
    for (const char* words : {"a-code", "The %1 is missing.", "Give one.", "Give two.", "Wrote %1. Done now."})
        BOOST_TEST(all.contains(QString::fromUtf8(words)), words << " in " << all.join(" | ").toStdString());
    BOOST_TEST(!all.join(" ").contains("comment"));
}

BOOST_AUTO_TEST_CASE(what_report_charts_and_work_say_is_known) {
    QStringList all;
    for (const char* room : {"app/report", "app/charts", "app/work"})
        for (const QString& file : sources::files_below(room))
            for (const auto& one : sources::said_in(file))
                if (!all.contains(one.words)) all.append(one.words);
    BOOST_TEST(all.size() > 100);
    if (writing()) return write_list("report", "What app/report, app/charts and app/work give to say()", all);
    const Speech spanish(Language::spanish);
    for (const QString& words : all) {
        BOOST_TEST(speech::known_sayings().contains(words), "write the list anew: " << words.toStdString());
        BOOST_TEST(spanish.find(words).has_value(), "no Spanish: " << words.toStdString());
    }
}

BOOST_AUTO_TEST_CASE(every_sentence_of_the_rooms_below_the_windows_has_its_spanish) {
    const Speech spanish(Language::spanish);
    QStringList missing;
    int seen = 0;
    const QStringList lists = [] {
        QStringList before;
        for (const QString& file : {QString("app/speech/said_words.cpp"), QString("app/speech/said_sentences.cpp"),
                                    QString("app/speech/said_rules.cpp"), QString("app/speech/said_report.cpp")})
            for (const auto& one : sources::strings_of(file)) before.append(one.words);
        return before;
    }();
    for (const QString& room : rooms)
        for (const QString& file : sources::files_below(room)) {
            if (for_developers(file)) continue;
            for (const auto& one : sources::sentences_of(file)) {
                if (is_piece(one.words)) continue;
                ++seen;
                if (writing()) {
                    if (!lists.contains(one.words) && !missing.contains(one.words) &&
                        (!spanish.find(with_figures(one.words)) || speech::known_sayings().contains(one.words)))
                        missing.append(one.words);
                    continue;
                }
                BOOST_TEST(spanish.find(with_figures(one.words)).has_value(),
                           one.file.toStdString() << ":" << one.line << " stays English: " << one.words.toStdString());
            }
        }
    BOOST_TEST(seen > 500);
    if (writing()) write_list("errors", "Sentences of all rooms that no other list has", missing);
}

BOOST_AUTO_TEST_SUITE_END()
