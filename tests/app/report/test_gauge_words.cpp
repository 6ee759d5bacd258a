// The words on card and sheet have their place in either language: nothing printed is written over.
#include <boost/test/unit_test.hpp>

#include "app/report/pdf_tools.h"
#include "card/card_layout.h"
#include "report/gauge_pdf.h"

using namespace kempt;
using report::GaugeOptions;
using speech::Language;

namespace {

constexpr double mm_per_point = 25.4 / 72;  // by definition of the point

// Each word's box in mm.
QVector<QRectF> words_on(const GaugeOptions& options) {
    const auto pdf = report::gauge_pdf(options);
    BOOST_REQUIRE(pdf.ok());
    const auto pages = report::tools::words_of(*pdf);
    BOOST_REQUIRE(pages.size() == 1);
    QVector<QRectF> boxes;
    for (const auto& word : pages.front().words)
        boxes.append({word.box.topLeft() * mm_per_point, word.box.size() * mm_per_point});
    return boxes;
}

struct Strip {
    double top, bottom;
    const char* what;
};

void keep_clear_of(const QVector<QRectF>& words, const QVector<Strip>& strips, const std::string& where) {
    for (const QRectF& word : words)
        for (const Strip& strip : strips)
            BOOST_TEST(
                (word.bottom() <= strip.top || word.top() >= strip.bottom),
                where << ": a word from " << word.top() << " to " << word.bottom() << " mm lies on " << strip.what);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(gauge_words)

BOOST_AUTO_TEST_CASE(the_words_stay_clear_of_what_is_measured_in_english_and_in_spanish) {
    for (const Language language : {Language::english, Language::spanish})
        for (const card::Paper paper : {card::Paper::a4, card::Paper::letter})
            for (const double scale : {1.0, 1.02, 0.96}) {
                GaugeOptions options;
                options.paper = paper;
                options.printer_scale = scale;
                options.speech = speech::Speech(language);
                const std::string where = speech::code_of(language).toStdString() + " at " + std::to_string(scale);
                // Where gauge_pdf.cpp puts them: the card from 48 mm with cutting marks of 6 mm about it, its check
                // line 100 mm down, the words on cutting below 130.
                const double card_end = 48 + card::card_height_mm / scale;
                keep_clear_of(words_on(options), {{42, card_end + 6 / scale, "the card"}, {98, 102, "the check line"}},
                              where + ", card");
                options.kind = card::Kind::sheet;
                for (const card::Ground ground : {card::Ground::white, card::Ground::blue}) {
                    options.ground = ground;
                    // The strip between the upper markers; below it hair is laid.
                    const double strip_end = card::blue_area_mm(paper).y / scale;
                    keep_clear_of(words_on(options),
                                  {{13 / scale, 17 / scale, "the check line"}, {strip_end, 400, "where hair is laid"}},
                                  where + (ground == card::Ground::blue ? ", blue sheet" : ", sheet"));
                }
            }
}

BOOST_AUTO_TEST_SUITE_END()
