#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>

#include "app/report/example_model.h"
#include "app/report/pdf_tools.h"
#include "charts/chart_painter.h"
#include "report/report_pdf.h"

using namespace kempt;
using namespace kempt::report;

namespace {

QByteArray made(const Model& model, const Options& options, const QString& name) {
    const Result<QByteArray> pdf = report_pdf(model, options);
    BOOST_REQUIRE_MESSAGE(pdf.ok(), (pdf.ok() ? std::string() : pdf.error().sentence()));
    tools::keep_for_looking(name + QStringLiteral(".pdf"), *pdf);
    return *pdf;
}

// Blanks of a laid-out text made one, so that a sentence broken over lines can be found.
QString run_together(const QString& text) {
    return text.simplified();
}

bool holds(const QString& text, const char* part) {
    const bool found = text.contains(QString::fromUtf8(part));
    if (!found) BOOST_TEST_MESSAGE("missing: " << part << "\nin: " << text.toStdString());
    return found;
}

// No word on another word, none outside the printable page.
void check_words(const QByteArray& pdf) {
    for (const tools::PageWords& page : tools::words_of(pdf)) {
        const QRectF paper(QPointF(36, 20), page.size - QSizeF(72, 40));
        for (int i = 0; i < page.words.size(); ++i) {
            const tools::Word& word = page.words[i];
            BOOST_CHECK_MESSAGE(paper.contains(word.box),
                                "outside of the page " << word.page << ": " << word.text.toStdString());
            for (int j = i + 1; j < page.words.size(); ++j) {
                const QRectF both = word.box & page.words[j].box;
                const auto area = [](const QRectF& box) { return box.width() * box.height(); };
                // Boxes hold the font's ascent and descent: lines of different size may touch at those by a little.
                const bool apart = area(both) <= 0.2 * std::min(area(word.box), area(page.words[j].box));
                BOOST_CHECK_MESSAGE(apart, "page " << word.page << ": " << word.text.toStdString() << " overlaps "
                                                   << page.words[j].text.toStdString());
            }
        }
    }
}

}  // namespace

BOOST_AUTO_TEST_SUITE(report_pdf_file)

// ISO 19005-1:2005 (PDF/A-1): fonts embedded, output intent, XMP with part and conformance, no encryption, no
// transparency. Debian carries no checker of the whole standard; these are its points that a program like this can
// break.
BOOST_AUTO_TEST_CASE(carries_the_marks_of_pdf_a_1b) {
    const QByteArray pdf = made(example::six_visits(), {}, QStringLiteral("client-letter"));
    BOOST_CHECK(pdf.startsWith("%PDF-1.4"));
    BOOST_CHECK(pdf.contains("/OutputIntents"));
    BOOST_CHECK(pdf.contains("/GTS_PDFA1"));
    BOOST_CHECK(QRegularExpression(QStringLiteral("pdfaid:part(=\"|>)1")).match(QString::fromLatin1(pdf)).hasMatch());
    BOOST_CHECK(
        QRegularExpression(QStringLiteral("pdfaid:conformance(=\"|>)B")).match(QString::fromLatin1(pdf)).hasMatch());
    BOOST_CHECK(!pdf.contains("/Encrypt"));
    // Section 6.4: no soft mask but None, opacities of 1 only.
    BOOST_CHECK(!QRegularExpression(QStringLiteral("/SMask(?! */None)")).match(QString::fromLatin1(pdf)).hasMatch());
    BOOST_CHECK(!pdf.contains("/Interpolate true"));
    BOOST_CHECK(pdf.contains("/ID "));
    BOOST_CHECK(!pdf.contains("/JavaScript"));
    BOOST_CHECK(!pdf.contains("/EmbeddedFile"));
    BOOST_CHECK(!QRegularExpression(QStringLiteral("/(ca|CA) 0")).match(QString::fromLatin1(pdf)).hasMatch());
    const QStringList fonts =
        tools::run_on(pdf, QStringLiteral("pdffonts"), {}, {}).split(u'\n', Qt::SkipEmptyParts).mid(2);
    BOOST_CHECK_GE(fonts.size(), 3);
    // The columns at the end: embedded, subset, unicode, object and generation.
    for (const QString& font : fonts)
        BOOST_CHECK_MESSAGE(
            QRegularExpression(QStringLiteral(" yes +(yes|no) +yes +\\d+ +\\d+$")).match(font).hasMatch(),
            font.toStdString());
}

BOOST_AUTO_TEST_CASE(names_the_client_but_no_author) {
    const QByteArray pdf = made(example::six_visits(), {}, QStringLiteral("client-letter"));
    const QString info = tools::run_on(pdf, QStringLiteral("pdfinfo"), {}, {});
    BOOST_CHECK(holds(run_together(info), "Title: Condition report: Amara Lindqvist"));
    BOOST_CHECK(holds(run_together(info), "Creator: Kempt 0.1.0"));
    BOOST_CHECK(holds(info, "CreationDate:"));
    BOOST_CHECK(!info.contains(QStringLiteral("Author:")));
    BOOST_CHECK(!pdf.contains("/Author"));
    BOOST_CHECK(holds(info, "Encrypted:       no"));
}

BOOST_AUTO_TEST_CASE(prints_every_figure_with_its_unit_and_interval) {
    const QString text = run_together(tools::text_of(made(example::six_visits(), {}, QStringLiteral("client-letter"))));
    for (const char* part : {"Amara Lindqvist",
                             "6 visits, 14 Jan 2026 to 8 Jul 2026",
                             "Prepared by Quiet Comb, Chair 2",
                             "41 % (39-44)",
                             "55 % (53-58)",
                             "+14.1 points",
                             "± 5.2 points",
                             "−1.31 mm",
                             "Improved",
                             "Worse",
                             "No detectable change",
                             "Not comparable",
                             "7.4 mm (6.9-7.9)",
                             "18 per cm (16-20)",
                             "larger than the smallest detectable change of 5.2 points",
                             "start 41 %, 14 Jan 2026",
                             "Now 55 % on 8 Jul 2026: 59 % of the way",
                             "target 65 %",
                             "Moisture treatment",
                             "again: 3",
                             "weighted kappa 0.71",
                             "The hair was wet, at the others dry.",
                             "strand test",
                             "patch test",
                             "See a doctor",
                             "Measuring is no diagnosis",
                             "Page 1 of",
                             "Before, 14 Jan 2026",
                             "After, 8 Jul 2026",
                             "measuring methods version 1",
                             "The figures in brackets",
                             "lying flat",
                             "largest difference"})
        BOOST_CHECK(holds(text, part));
    for (const char16_t ligature : {u'\uFB00', u'\uFB01', u'\uFB02'}) BOOST_CHECK(!text.contains(QChar(ligature)));
    BOOST_CHECK(!text.contains(QStringLiteral("SHA-256")));  // the record copy's part
}

BOOST_AUTO_TEST_CASE(has_no_text_over_text_or_off_the_page) {
    for (const Paper paper : {Paper::letter, Paper::a4})
        check_words(made(example::six_visits(), {Copy::record, paper, LengthUnit::millimetres},
                         paper == Paper::a4 ? QStringLiteral("record-a4") : QStringLiteral("record-letter")));
}

// PDF/A-1 knows no transparency: what is a wash on the screen would be a solid patch on paper, over the visits' points.
BOOST_AUTO_TEST_CASE(no_patch_of_the_chart_hides_its_points) {
    Model model = example::six_visits();
    model.pairs.clear();
    const QByteArray pdf = made(model, {}, QStringLiteral("no-pictures"));
    const QColor trend = charts::light_palette().trend;
    qint64 near_trend = 0;
    for (int page = 1; page <= tools::pages_of(pdf); ++page) {
        const QImage image = tools::picture_of(pdf, page);
        BOOST_REQUIRE(!image.isNull());
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor colour = image.pixelColor(x, y);
                near_trend += std::abs(colour.red() - trend.red()) + std::abs(colour.green() - trend.green()) +
                                  std::abs(colour.blue() - trend.blue()) <
                              12;
            }
    }
    BOOST_CHECK_GT(near_trend, 20);    // the line is there
    BOOST_CHECK_LT(near_trend, 2500);  // 50 dots an inch: three lines over 450 pixels, far less than a patch
}

BOOST_AUTO_TEST_CASE(comes_on_letter_and_on_a4_paper) {
    const auto size = [](Paper paper) {
        return tools::words_of(made(example::nothing_yet(), {Copy::client, paper, LengthUnit::millimetres},
                                    QStringLiteral("nothing")))
            .first()
            .size;
    };
    BOOST_CHECK_CLOSE(size(Paper::letter).width(), 612.0, 0.1);  // 8.5 x 11 in
    BOOST_CHECK_CLOSE(size(Paper::letter).height(), 792.0, 0.1);
    BOOST_CHECK_CLOSE(size(Paper::a4).width(), 595.28, 0.1);  // 210 x 297 mm (ISO 216)
    BOOST_CHECK_CLOSE(size(Paper::a4).height(), 841.89, 0.1);
}

BOOST_AUTO_TEST_CASE(gives_inches_when_they_are_asked_for) {
    const QString text = run_together(tools::text_of(made(
        example::six_visits(), {Copy::client, Paper::letter, LengthUnit::inches}, QStringLiteral("client-inches"))));
    BOOST_CHECK(holds(text, "0.29 in (0.27-0.31)"));  // 7.42 mm (6.9-7.9) by 25.4
    BOOST_CHECK(holds(text, "per in"));
    BOOST_CHECK(holds(text, "1/2 in"));  // the scale bar
    BOOST_CHECK(!text.contains(QStringLiteral("7.4 mm")));
}

BOOST_AUTO_TEST_CASE(record_copy_adds_every_reading_and_where_it_came_from) {
    const Model model = example::six_visits();
    const QString text =
        tools::text_of(made(model, {Copy::record, Paper::a4, LengthUnit::millimetres}, QStringLiteral("record-a4")));
    BOOST_CHECK(holds(text, "record copy"));
    for (const HistoryLine& line : model.history) BOOST_CHECK(text.contains(line.photo_sha256));
    BOOST_CHECK(holds(run_together(text), "Refused: the card is blurred."));
}

BOOST_AUTO_TEST_CASE(a_client_without_visits_still_gets_a_report_that_says_so) {
    const QByteArray pdf = made(example::nothing_yet(), {}, QStringLiteral("nothing"));
    const QString text = run_together(tools::text_of(pdf));
    BOOST_CHECK(holds(text, "No visits yet"));
    BOOST_CHECK(holds(text, "There is no reading that stands yet."));
    BOOST_CHECK(holds(text, "See a doctor"));
    BOOST_CHECK(!text.contains(QStringLiteral("Prepared by")));
    check_words(pdf);
}

BOOST_AUTO_TEST_CASE(care_is_printed_with_its_sources_and_alike_in_both_copies) {
    const Model model = example::six_visits();
    for (const Copy copy : {Copy::client, Copy::record}) {
        const QByteArray pdf = made(model, {copy, Paper::a4, LengthUnit::millimetres}, QStringLiteral("care"));
        check_words(pdf);
        const QString text = run_together(tools::text_of(pdf));
        for (const char* words : {"What this hair has been through",
                                  "Perhaps gloss of 11 May 2026 (18 mm to 20 mm)",
                                  "What came before the record is not known",
                                  "70 mm (52-87)",
                                  "What is planned",
                                  "Stop",
                                  "two weeks later",
                                  "Source: dermatology clinic leaflet on relaxers",
                                  "Check first (a stop may hang on the first 1)",
                                  "Ask how old the client is",
                                  "Put on: roots, up to 20 mm",
                                  "Keep off: mid-shaft, 52 mm to 250 mm",
                                  "0:00 to 2:00",
                                  "5 to 7.5",
                                  "beyond what is tolerated",
                                  "16:00",
                                  "no order of work is given",
                                  "Rinse off at once",
                                  "Care at home",
                                  "Sources: common practice, no source",
                                  "Next dates",
                                  "5 Aug 2026 to 19 Aug 2026",
                                  "has then grown anew",
                                  "from 20 mm to the ends; 20 min; strand test passed"})
            BOOST_CHECK_MESSAGE(text.contains(QString::fromUtf8(words), Qt::CaseInsensitive), words);
    }
    Model none = model;
    none.planned = {};
    none.hair.clear();
    none.home_care.clear();
    const QString text = run_together(tools::text_of(made(none, {}, QStringLiteral("no-care"))));
    for (const char* words : {"What is planned", "been through", "Care at home"})
        BOOST_CHECK_MESSAGE(!text.contains(QString::fromUtf8(words)), words);
}

BOOST_AUTO_TEST_CASE(missing_and_withheld_pictures_are_said) {
    Model model = example::six_visits();
    model.pairs[0].before = {};
    model.pairs[1].before = {};
    model.pairs[1].after = {};
    const QByteArray pdf = made(model, {}, QStringLiteral("missing-photos"));
    const QString text = run_together(tools::text_of(pdf));
    BOOST_CHECK(holds(text, "no picture"));
    BOOST_CHECK(holds(text, "There is no picture of this view that can be shown."));
    check_words(pdf);
    model.pictures_withheld =
        QStringLiteral("Pictures are left out: the client has not agreed to their leaving the book.");
    const QByteArray withheld = made(model, {}, QStringLiteral("withheld"));
    BOOST_CHECK(holds(run_together(tools::text_of(withheld)), "Pictures are left out"));
    BOOST_CHECK(!withheld.contains("/Subtype /Image"));
}

BOOST_AUTO_TEST_CASE(sixty_visits_run_over_numbered_pages_without_overlap) {
    const QByteArray pdf =
        made(example::many_visits(60), {Copy::record, Paper::letter, LengthUnit::millimetres}, QStringLiteral("sixty"));
    const int pages = tools::pages_of(pdf);
    BOOST_CHECK_GT(pages, 8);
    const QString text = tools::text_of(pdf);
    for (int page = 1; page <= pages; ++page)
        BOOST_CHECK(text.contains(QStringLiteral("Page %1 of %2").arg(page).arg(pages)));
    check_words(pdf);
    // The client's copy stays short: grades only first and latest, no list of readings.
    BOOST_CHECK_LT(tools::pages_of(made(example::many_visits(60), {}, QStringLiteral("sixty-client"))), pages);
}

BOOST_AUTO_TEST_CASE(every_number_of_visits_from_1_to_60_gives_whole_pages) {
    for (const int visits : {1, 2, 3, 4, 5, 8, 13, 21, 34, 47}) {
        Model model = example::many_visits(visits);
        model.pairs.clear();
        check_words(made(model, {Copy::record, Paper::a4, LengthUnit::millimetres}, QStringLiteral("some")));
    }
}

BOOST_AUTO_TEST_CASE(the_cautions_stand_together_on_one_page) {
    for (int visits = 1; visits <= 16; ++visits) {
        Model model = example::many_visits(visits);
        model.pairs.clear();
        model.charts.clear();
        int whole = 0;
        for (const QString& page : tools::text_of(made(model, {}, QStringLiteral("some"))).split(u'\f'))
            whole += page.contains(QStringLiteral("Cautions")) && page.contains(QStringLiteral("The nape is tender")) &&
                     page.contains(QStringLiteral("that a service is safe"));
        BOOST_CHECK_EQUAL(whole, 1);
    }
}

BOOST_AUTO_TEST_CASE(a_long_name_is_wrapped_and_the_running_line_shortened) {
    Model model = example::six_visits();
    model.client_name = QStringLiteral("Maria-Antonia de la Concepción Wolkenstein-Achterberg ").repeated(4).trimmed();
    const QByteArray pdf = made(model, {}, QStringLiteral("long-name"));
    check_words(pdf);
    BOOST_CHECK(holds(run_together(tools::text_of(pdf)), "Wolkenstein-Achterberg Maria-Antonia"));
    model.client_name = QString(300, u'w');
    check_words(made(model, {}, QStringLiteral("unbroken-name")));
}

BOOST_AUTO_TEST_CASE(right_to_left_names_keep_their_order) {
    Model model = example::six_visits();
    model.client_name = QStringLiteral("ليلى المنصور");
    const QByteArray arabic = made(model, {}, QStringLiteral("arabic"));
    check_words(arabic);
    model.client_name = QStringLiteral("נועה בן-דוד");
    const QByteArray hebrew = made(model, {}, QStringLiteral("hebrew"));
    check_words(hebrew);
    BOOST_CHECK(tools::run_on(hebrew, QStringLiteral("pdfinfo"), {}, {}).contains(model.client_name));
    // The reader gives each letter of it apart: the first is the one farthest right.
    double nun = 0, he = 0, bet = 0;
    const QVector<tools::PageWords> pages = tools::words_of(hebrew);
    for (const tools::Word& word : pages.first().words) {
        if (word.text == QStringLiteral("נ")) nun = word.box.center().x();
        if (word.text == QStringLiteral("ה")) he = word.box.center().x();
        if (word.text == QStringLiteral("ב")) bet = word.box.center().x();
    }
    BOOST_CHECK_GT(bet, 0);
    BOOST_CHECK_GT(he, bet);
    BOOST_CHECK_GT(nun, he);
}

BOOST_AUTO_TEST_CASE(names_with_markup_percent_signs_and_control_letters_do_no_harm) {
    Model model = example::six_visits();
    model.client_name = QStringLiteral("A & B <i>%1</i> \"quoted\"\nsecond\tline %2");
    const QByteArray pdf = made(model, {}, QStringLiteral("markup"));
    BOOST_CHECK(holds(run_together(tools::text_of(pdf)), "A & B <i>%1</i> \"quoted\" second line %2"));
    BOOST_CHECK(
        holds(tools::run_on(pdf, QStringLiteral("pdfinfo"), {QStringLiteral("-meta")}, {}), "A &amp; B &lt;i&gt;%1"));
}

BOOST_AUTO_TEST_CASE(a_client_without_a_name_is_an_error) {
    Model model = example::nothing_yet();
    model.client_name = QStringLiteral(" \n ");
    const Result<QByteArray> pdf = report_pdf(model);
    BOOST_REQUIRE(!pdf.ok());
    BOOST_CHECK(pdf.error().code == "client-without-name");
}

BOOST_AUTO_TEST_CASE(writes_whole_files_or_none) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("report.pdf"));
    BOOST_REQUIRE(write_report(example::nothing_yet(), {}, path).ok());
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    BOOST_CHECK(file.readAll().trimmed().endsWith("%%EOF"));
    const Status nowhere = write_report(example::nothing_yet(), {}, folder.filePath(QStringLiteral("none/report.pdf")));
    BOOST_REQUIRE(!nowhere.ok());
    BOOST_CHECK(nowhere.error().kind == ErrorKind::io);
    BOOST_CHECK(nowhere.error().code == "report-not-written");
}

BOOST_AUTO_TEST_SUITE_END()
