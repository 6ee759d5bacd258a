// The report in Spanish: whatever is drawn on its pages went through the dictionary and was found there. To see that,
// it is said in a made-up language whose dictionary has what the Spanish one has, with every letter turned to one that
// English does not know: what is still Latin on the pages is English, and would be in Spanish too.
#include <QPainter>
#include <QRegularExpression>
#include <boost/test/unit_test.hpp>

#include "charts/chart_painter.h"
#include "report/pair_picture.h"
#include "report/report_pages.h"
#include "report/report_pdf.h"
#include "speech/speech.h"
#include "text_recorder.h"
#include "whole_reports.h"
#include "work/report_parts.h"

using namespace kempt;
using speech::Language;
using speech::Speech;
using tests::TextRecorder;

namespace {

constexpr QChar other_letter(0x0436);  // of the Cyrillic alphabet

Speech made_up() {
    const Speech spanish(Language::spanish);
    return Speech(QLocale(QLocale::Spanish), [spanish](const QString& english) -> std::optional<QString> {
        if (!speech::known_sayings().contains(english) || !spanish.find(english)) return std::nullopt;
        QString out = english;
        for (qsizetype i = 0; i < out.size(); ++i)
            if (out[i].isLetter()) out[i] = other_letter;
        return out;
    });
}

// The Latin words left on a page, with what stands about them.
QStringList left_on(QString page, const QStringList& others) {
    for (const QString& theirs : others) {
        QString bare;
        for (const QChar letter : theirs)
            if (!letter.isSpace()) bare += letter;
        if (bare.isEmpty()) continue;
        page.remove(bare);
        // In the running line a long name ends in dots.
        if (bare.size() > 40)
            page.remove(QRegularExpression(QRegularExpression::escape(bare.left(20)) + QStringLiteral("[^…]*…")));
    }
    // Months are the locale's, one after the other at a chart's axis; letters of services stand above it; units are
    // everybody's.
    const QLocale locale(QLocale::Spanish);
    QStringList months;
    for (int month = 1; month <= 12; ++month)
        for (const auto form : {QLocale::LongFormat, QLocale::ShortFormat}) {
            QString name = locale.monthName(month, form);
            if (name.endsWith(u'.')) name.chop(1);
            months << name;
        }
    page.remove(
        QRegularExpression(QStringLiteral("(?<![A-Za-z])(?:de)?(?:%1)+(?:de)?(?![A-Za-z])").arg(months.join(u'|'))));
    page.remove(
        QRegularExpression(QStringLiteral("(?<![A-Za-z])(?:mm²|in²|mm|cm|in(?=/)|px|min|p|um)?(?:/mm²|/in²)?"
                                          "[A-H]{0,8}(?![A-Za-z])")));
    static const QRegularExpression latin(QStringLiteral("[A-Za-z]{2,}"));
    QStringList found;
    for (auto all = latin.globalMatch(page); all.hasNext();) {
        const auto one = all.next();
        found << page.mid(std::max<qsizetype>(0, one.capturedStart() - 12), one.capturedLength() + 40);
    }
    return found;
}

report::Options look(report::Copy copy, const Speech& speech, LengthUnit length = LengthUnit::millimetres) {
    report::Options options;
    options.copy = copy;
    options.paper = report::Paper::a4;
    options.length = length;
    options.speech = speech;
    return options;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(spanish_report)

BOOST_AUTO_TEST_CASE(no_english_is_left_on_any_page_of_the_reports_of_whole_books) {
    const Speech speech = made_up();
    qsizetype letters = 0;
    int telling = 0;
    QStringList told;
    for (const auto& one : tests::whole_reports())
        for (const auto copy : {report::Copy::client, report::Copy::record}) {
            // What is planned stands in both copies alike.
            if (!one.model.planned.services.isEmpty() && copy == report::Copy::record) continue;
            const auto length = one.name.endsWith("in inches") ? LengthUnit::inches : LengthUnit::millimetres;
            const auto pages = report::ReportPages::lay_out(std::make_shared<const report::Model>(one.model),
                                                            look(copy, speech, length));
            BOOST_REQUIRE(pages.ok());
            TextRecorder paper;
            QPainter painter(&paper);
            for (int page = 0; page < (*pages)->count(); ++page) (*pages)->paint(painter, page, 10);
            painter.end();
            letters += paper.text().count(other_letter);
            for (const QString& words : left_on(paper.text(), tests::words_of_others(one.model))) {
                if (told.contains(words)) continue;
                told << words;
                BOOST_TEST(false, one.name.toStdString() << ": English on a page: …" << words.toStdString());
            }
            telling += one.model.planned.findings.isEmpty() ? 0 : 1;
        }
    BOOST_TEST(letters > 100000);
    BOOST_TEST(telling > 0);
}

BOOST_AUTO_TEST_CASE(no_english_is_left_on_charts_and_pictures) {
    const Speech speech = made_up();
    QStringList told;
    for (const auto& one : tests::whole_reports()) {
        for (const report::Chart& chart : one.model.charts) {
            charts::ChartStyle style;
            style.font.setPixelSize(15);
            style.speech = speech;
            TextRecorder paper(96);
            QPainter painter(&paper);
            charts::paint(painter, chart.data, QRectF(0, 0, 700, 500), style);
            painter.end();
            QString all = paper.text();
            for (const QChar letter : charts::in_words(chart.data, speech))
                if (!letter.isSpace()) all += letter;
            BOOST_TEST(all.contains(other_letter));
            for (const QString& words : left_on(all, {}))
                if (!told.contains(words)) {
                    told << words;
                    BOOST_TEST(false, "English on a chart: …" << words.toStdString());
                }
        }
    }
}

BOOST_AUTO_TEST_CASE(the_spanish_pdf_has_spanish_words_and_all_of_the_cautions) {
    const Speech spanish(Language::spanish);
    for (const auto& one : tests::whole_reports()) {
        if (!one.model.planned.services.isEmpty()) continue;
        const auto pages = report::ReportPages::lay_out(std::make_shared<const report::Model>(one.model),
                                                        look(report::Copy::client, spanish));
        BOOST_REQUIRE(pages.ok());
        TextRecorder paper;
        QPainter painter(&paper);
        for (int page = 0; page < (*pages)->count(); ++page) (*pages)->paint(painter, page, 10);
        painter.end();
        for (const char* words : {"Informe de estado", "Precauciones",
                                  "Haga una prueba de mechón antes de un servicio "
                                  "químico, y una prueba de alergia con la antelación que pide el fabricante.",
                                  "Pare de inmediato si hay ardor, escozor o irritación",
                                  "Consulte a un médico ante una caída del cabello repentina o por zonas, dolor, "
                                  "cicatrices, llagas o cualquier enfermedad del cuero cabelludo.",
                                  "nunca dice que un servicio sea seguro",
                                  "Siga las instrucciones del fabricante y las "
                                  "normas locales de licencia"})
            BOOST_TEST(paper.text().contains(QString::fromUtf8(words).remove(u' ')), one.name.toStdString()
                                                                                         << ": " << words);
    }
}

BOOST_AUTO_TEST_SUITE_END()
