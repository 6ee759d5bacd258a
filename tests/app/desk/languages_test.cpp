// Spanish: complete, with the same placeholders, known sentences of the rooms below, and nothing cut on the main pages.
#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>
#include <boost/test/unit_test.hpp>
#include <cstdlib>

#include "card/gate.h"
#include "care/facts.h"
#include "care/home_care.h"
#include "care/rules.h"
#include "care/words.h"
#include "change/verdict.h"
#include "desk/client/client_page.h"
#include "desk/look/look.h"
#include "desk/settings/section.h"
#include "desk/settings/settings_dialog.h"
#include "desk/translations/language.h"
#include "desk/translations/said.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "desk/window/book_view.h"
#include "desk/window/page.h"
#include "domain/readings.h"
#include "domain/words.h"
#include "room.h"
#include "speech/speech.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

const QString folder = QStringLiteral("app/desk/translations/"), of_rooms = QStringLiteral("app/speech/");

struct Entry {
    QString context, source;
    QStringList words;
    bool unfinished = false, plural = false;
};

QVector<Entry> entries_of(const QString& path) {
    QFile file(path);
    BOOST_REQUIRE_MESSAGE(file.open(QIODevice::ReadOnly), "no " << path.toStdString());
    QXmlStreamReader xml(&file);
    QVector<Entry> all;
    QString context;
    Entry entry;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement()) {
            if (xml.name() == u"name") context = xml.readElementText();
            if (xml.name() == u"message") entry = {context, {}, {}, false, xml.attributes().value("numerus") == u"yes"};
            if (xml.name() == u"source") entry.source = xml.readElementText();
            if (xml.name() == u"numerusform") entry.words.append(xml.readElementText());
            if (xml.name() == u"translation") {
                entry.unfinished = xml.attributes().value("type") == u"unfinished";
                if (!entry.plural) entry.words.append(xml.readElementText());
            }
        } else if (xml.isEndElement() && xml.name() == u"message") {
            all.append(entry);
        }
    }
    BOOST_REQUIRE(!xml.hasError());
    return all;
}

QSet<QString> placeholders(const QString& words) {
    static const QRegularExpression place(QStringLiteral("%(?:L?[0-9]{1,2}|n)"));
    QSet<QString> found;
    auto one = place.globalMatch(words);
    while (one.hasNext()) found.insert(one.next().captured());
    return found;
}

void complete(const QString& path) {
    for (const Entry& entry : entries_of(path)) {
        const std::string where = (entry.context + ": " + entry.source).toStdString();
        BOOST_TEST(!entry.unfinished, "unfinished: " << where);
        for (const QString& words : entry.words) {
            BOOST_TEST(!words.isEmpty(), "empty: " << where);
            // In the singular a plural form may say "one" without the figure.
            if (!entry.plural)
                BOOST_TEST((placeholders(words) == placeholders(entry.source)),
                           where << " has other placeholders than " << words.toStdString());
            // Spaces that join it to what stands before or after.
            BOOST_TEST(words.startsWith(u' ') == entry.source.startsWith(u' '), where);
            BOOST_TEST(words.endsWith(u' ') == entry.source.endsWith(u' '), where);
        }
    }
}

void speak_now(Language language, double text_scale = 1) {
    LookChoice choice;
    choice.language = language;
    choice.text_scale = text_scale;
    look().apply(choice);
}

struct Spanish {
    Spanish() { speak_now(Language::spanish); }
    ~Spanish() { look().apply({}); }
};

// What the care rules, the tips, the facts and the families say, each once, in their order.
QStringList sayings_of_rules() {
    QStringList all;
    const auto add = [&all](const std::string& words) {
        const QString one = QString::fromStdString(words);
        if (!one.isEmpty() && !all.contains(one)) all.append(one);
    };
    for (const care::Caution& caution : care::built_in_rules()->always) add(caution.text);
    for (const care::Rule& rule : care::built_in_rules()->rules) {
        add(rule.reason);
        add(rule.remedy);
    }
    for (const care::Tip& tip : care::built_in_home_care()->tips) add(tip.text);
    for (const care::Family& family : care::families()) add(std::string(family.phrase));
    for (const care::Fact& fact : care::facts())
        add(QString::fromUtf8(fact.question.data(), static_cast<qsizetype>(fact.question.size()))
                .replace(u'%', QStringLiteral("%1"))
                .toStdString());
    return all;
}

void write_sayings(const QStringList& all) {
    QFile file(of_rooms + "said_rules.cpp");
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(
        "// Written from the care rules, the tips for home, the facts and families by KEMPT_WRITE_SAYINGS=1 test_desk\n"
        "// --run_test=languages. Do not edit.\n#include <QtGlobal>\n\n#include \"speech/sayings.h\"\n\n"
        "namespace kempt::speech {\n\n// clang-format off\nconst char* const said_rules[] = {\n");
    for (QString words : all)
        file.write("    QT_TRANSLATE_NOOP(\"said\", \"" + words.replace(u'"', QStringLiteral("\\\"")).toUtf8() +
                   "\"),\n");
    file.write("    nullptr};\n// clang-format on\n\n}  // namespace kempt::speech\n");
}

// Sentences that end in a citation keep it: names of publications are not translated.
void known(const std::string& words) {
    BOOST_TEST(is_said(QString::fromStdString(words)), "stays English: " << words);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(languages)

BOOST_AUTO_TEST_CASE(every_entry_is_translated_and_has_the_placeholders_of_its_source) {
    complete(folder + "kempt_es.ts");
    complete(of_rooms + "said_es.ts");
    complete(folder + "kempt_en.ts");
}

// Strings that are newer than the file are told, not failed: they show in English until they are translated.
BOOST_AUTO_TEST_CASE(strings_that_the_file_does_not_have_yet_are_told) {
    QTemporaryDir passing;
    for (const auto& [file, sources] : {std::pair(folder + "kempt_es.ts", QStringList{"-I", "app", "app/desk"}),
                                        std::pair(of_rooms + "said_es.ts", QStringList{"app/speech"})}) {
        const QString copy = passing.filePath(QFileInfo(file).fileName());
        QFile::copy(file, copy);
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        QProcess lupdate;
        lupdate.start(QStringLiteral(KEMPT_LUPDATE), QStringList{"-silent", "-locations", "none", "-no-obsolete"} +
                                                         sources + QStringList{"-ts", copy});
        BOOST_REQUIRE(lupdate.waitForFinished(60000));
        for (const Entry& entry : entries_of(copy))
            BOOST_WARN_MESSAGE(!entry.unfinished, "not translated yet: " << entry.context.toStdString() << ": "
                                                                         << entry.source.toStdString());
        BOOST_TEST(entries_of(copy).size() > 500);
    }
}

BOOST_AUTO_TEST_CASE(everything_the_care_rules_say_is_known_to_the_translation) {
    const QStringList all = sayings_of_rules();
    if (std::getenv("KEMPT_WRITE_SAYINGS") != nullptr) write_sayings(all);
    for (const QString& words : all)
        BOOST_TEST(speech::known_sayings().contains(words),
                   "write it anew with KEMPT_WRITE_SAYINGS=1: " << words.toStdString());
}

BOOST_FIXTURE_TEST_CASE(findings_of_the_gate_are_said_in_spanish_with_their_figures, Spanish) {
    card::Calibration calibration;
    calibration.card_found = true;
    calibration.px_per_mm = 8.4;
    calibration.edge_rise_mm = 0.62;
    calibration.tilt_deg = 33;
    const Photo photo{};
    for (const double px_per_mm : {3.0, 8.4, 14.0, 25.0})
        for (const double rise : {0.0, 0.11, 0.25, 0.62}) {
            calibration.px_per_mm = px_per_mm;
            calibration.edge_rise_mm = rise;
            for (const auto& finding : card::judge(photo, calibration, {}).findings) {
                known(finding.text);
                known(finding.remedy);
            }
        }
    BOOST_TEST(said(std::string("The camera looks at the card at a slant of 33 degrees.")).toStdString() ==
               "La cámara mira la tarjeta con una inclinación de 33 grados.");
    const QString point = QLocale().decimalPoint();
    BOOST_TEST(said(std::string("With 14.2 pixels per mm single strands cannot be counted.")).toStdString() ==
               ("Con 14" + point + "2 píxeles por mm no se pueden contar hebras sueltas.").toStdString());
}

BOOST_FIXTURE_TEST_CASE(verdicts_are_said_in_spanish_for_every_reading, Spanish) {
    for (const QString& name : all_reading_names())
        for (const double later : {41.0, 40.0, 60.0, 20.0}) {
            change::VisitValue before, after;
            before.shots = {40, 40.5};
            after.shots = {later, later + 0.4};
            before.unit = after.unit = "mm";
            change::Wording wording;
            QString title = title_of_reading(name);
            title[0] = title[0].toUpper();
            wording.name = title.toStdString();
            wording.unit = "mm";
            const auto spread = change::spread_for(name.toStdString(), {}, {});
            known(change::judge(name.toStdString(), before, after, spread, wording).reason);
            after.shots.clear();
            known(change::judge(name.toStdString(), before, after, spread, wording).reason);
        }
}

BOOST_FIXTURE_TEST_CASE(words_of_the_trade_are_said_in_spanish, Spanish) {
    QStringList all = service_kinds() + head_sections() + strengths() + test_results() + hair_textures() +
                      heat_tools() + grade_qualities();
    for (const View view : all_views()) all.append(word_of(view));
    for (const QString& quality : grade_qualities())
        for (int step = 0; step <= 4; ++step) all.append(grade_anchor(quality, step).section(": ", 1));
    for (const QString& name : all_reading_names()) all << title_of_reading(name) << meaning_of_reading(name);
    for (const QString& words : all) known(words.toStdString());
    BOOST_TEST(said(std::string("lightening")).toStdString() == "decoloración");
}

BOOST_FIXTURE_TEST_CASE(what_nobody_translated_stays_as_it_is, Spanish) {
    BOOST_TEST(said(std::string("Nobody ever wrote this.")).toStdString() == "Nobody ever wrote this.");
    // A known sentence beside an unknown one is still said.
    BOOST_TEST(said(std::string("Nothing was changed. Nobody ever wrote this.")).toStdString() ==
               "No se cambió nada. Nobody ever wrote this.");
}

BOOST_FIXTURE_TEST_CASE(dates_and_figures_follow_the_language, Spanish) {
    BOOST_TEST(date_words(QDate(2026, 3, 12)).toStdString() == "12 de marzo de 2026");
    BOOST_TEST(QLocale().language() == QLocale::Spanish);
    BOOST_TEST(in_figures("12.5 mm (11.0-14.0)").toStdString() ==
               QString("12.5 mm (11.0-14.0)").replace('.', QLocale().decimalPoint()).toStdString());
    speak_now(Language::english);
    BOOST_TEST(date_words(QDate(2026, 3, 12)).toStdString() == "12 March 2026");
    BOOST_TEST(in_figures("12.5 mm").toStdString() == "12.5 mm");
}

BOOST_AUTO_TEST_SUITE_END()

namespace {

struct SpanishDesk : test::Desk {
    ~SpanishDesk() { look().apply({}); }
    [[nodiscard]] QVector<QPair<std::string, Place>> places() const {
        return {{"client", {Where::client, book.client}},
                {"visit", {Where::visit, book.client, book.first_visit}},
                {"photo", {Where::photo, book.client, book.first_visit, book.photo, View::left_temple}},
                {"compare", {Where::compare, book.client, 0, 0, View::left_temple}},
                {"report", {Where::report, book.client}},
                {"plan", {Where::plan, book.client}},
                {"grades", {Where::grades, book.client, book.first_visit}},
                {"hair and days", {Where::profile, book.client}}};
    }
    void each(const std::function<void(QWidget*, const std::string&)>& check) {
        for (const auto& [name, place] : places()) {
            if (!(place == window->book()->place())) go(place);
            for (int i = 0; i < 5; ++i) QApplication::processEvents();
            check(window.get(), name);
        }
    }
};

// Words that do not fit: a button or a label in one line that is narrower than its words, or a wrapped one that has a
// longer word than a line or more lines than it is high.
void nothing_is_cut(QWidget* root, const std::string& where) {
    constexpr int hair = 1;  // px, of rounding
    for (const QAbstractButton* button : root->findChildren<QAbstractButton*>())
        if (button->isVisibleTo(root) && !button->text().trimmed().isEmpty() && !button->inherits("PhotoTile"))
            BOOST_TEST(button->width() + hair >= button->minimumSizeHint().width(),
                       where << ": \"" << button->text().toStdString() << "\" has " << button->width() << " px of "
                             << button->minimumSizeHint().width());
    for (const QLabel* label : root->findChildren<QLabel*>()) {
        if (!label->isVisibleTo(root) || label->text().trimmed().isEmpty()) continue;
        const QFontMetrics metrics(label->font());
        int longest = 0;
        const QStringList parts =
            label->wordWrap() ? label->text().split(QRegularExpression("[\\s/-]")) : label->text().split(u'\n');
        for (const QString& part : parts) longest = std::max(longest, metrics.horizontalAdvance(part));
        BOOST_TEST(label->contentsRect().width() + hair >= longest, where << ": \"" << label->text().toStdString()
                                                                          << "\" has " << label->contentsRect().width()
                                                                          << " px of " << longest);
        if (label->wordWrap())
            BOOST_TEST(label->height() + hair >= label->heightForWidth(label->width()),
                       where << ": \"" << label->text().toStdString() << "\" is " << label->height() << " px high of "
                             << label->heightForWidth(label->width()));
    }
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(spanish_windows, SpanishDesk)

BOOST_AUTO_TEST_CASE(another_language_changes_the_open_page_at_once_and_back) {
    go({Where::client, book.client});
    const auto words_of_first = [this] {
        QStringList words;
        for (const QPushButton* button : page<ClientPage>()->findChildren<QPushButton*>())
            words.append(button->text().trimmed());
        return words;
    };
    BOOST_TEST(words_of_first().contains("New visit"));
    speak_now(Language::spanish);
    BOOST_TEST(test::wait_until([this] { return settled() && page<ClientPage>() != nullptr; }));
    BOOST_TEST((window->book()->place() == Place{Where::client, book.client}));
    BOOST_TEST(words_of_first().contains("Nueva visita"));
    speak_now(Language::english);
    BOOST_TEST(test::wait_until([this] { return settled() && page<ClientPage>() != nullptr; }));
    BOOST_TEST(words_of_first().contains("New visit"));
}

// A word of the trade that a page shows without having it said: known, and different in Spanish.
BOOST_AUTO_TEST_CASE(no_word_of_the_rooms_below_stays_english_on_a_page) {
    speak_now(Language::spanish);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    QStringList known = speech::known_sayings(), spanish;
    for (const QString& words : known) spanish.append(said(words));
    each([&](QWidget* root, const std::string& where) {
        QStringList shown;
        for (const QAbstractButton* one : root->findChildren<QAbstractButton*>()) shown.append(one->text());
        for (const QLabel* one : root->findChildren<QLabel*>()) shown.append(one->text());
        for (const QComboBox* one : root->findChildren<QComboBox*>())
            for (int i = 0; i < one->count(); ++i) shown.append(one->itemText(i));
        for (const QString& words : shown) {
            const QString plain = words.trimmed();
            const qsizetype at = known.indexOf(plain.left(1).toLower() + plain.mid(1));
            BOOST_TEST((at < 0 || spanish.contains(known[at])),
                       where << " shows \"" << plain.toStdString() << "\" in English");
        }
    });
}

// A name that is written from the right keeps its order and leaves that of the sentence alone (UAX 9).
BOOST_AUTO_TEST_CASE(names_from_the_right_do_not_turn_a_sentence_round) {
    const QString name = QStringLiteral("\u05e9\u05e8\u05d4 (Sarah Levi)");
    BOOST_TEST(QStringLiteral("%1, visit of today").arg(name).isRightToLeft());
    BOOST_TEST(!QStringLiteral("%1, visit of today").arg(name_within(name)).isRightToLeft());
    BOOST_TEST((name_within(QStringLiteral("Imani Castell")) == QStringLiteral("Imani Castell")));
    BOOST_TEST(shortened(name + name + name).contains(QStringLiteral("…")));
    BOOST_TEST((shortened(name).front() == QChar(0x2068)));
}

BOOST_AUTO_TEST_CASE(no_words_of_the_main_pages_are_cut_in_spanish) {
    speak_now(Language::spanish);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    each(nothing_is_cut);
}

BOOST_AUTO_TEST_CASE(no_words_of_the_main_pages_are_cut_in_spanish_at_the_largest_text) {
    speak_now(Language::spanish, 2.0);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    each([](QWidget* root, const std::string& where) { nothing_is_cut(root, where + " at 200 %"); });
}

BOOST_AUTO_TEST_CASE(no_words_of_the_settings_are_cut_in_spanish_at_either_size) {
    for (const double scale : {1.0, 2.0}) {
        speak_now(Language::spanish, scale);
        BOOST_TEST(test::wait_until([this] { return settled(); }));
        window->show_settings();
        auto* dialog = window->findChild<SettingsDialog*>();
        BOOST_TEST_REQUIRE(dialog != nullptr);
        for (Section* section : dialog->sections()) {
            section->set_open(true);
            for (int i = 0; i < 5; ++i) QApplication::processEvents();
            nothing_is_cut(dialog, "settings");
        }
        dialog->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

BOOST_AUTO_TEST_SUITE_END()
