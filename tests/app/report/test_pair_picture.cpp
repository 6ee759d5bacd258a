#include <QBuffer>
#include <QImageReader>
#include <boost/test/unit_test.hpp>

#include "app/report/example_model.h"
#include "app/report/pdf_tools.h"
#include "report/pair_picture.h"

using namespace kempt;
using namespace kempt::report;

namespace {

PairPicture example_pair(int width = 900, int height = 600) {
    PairPicture pair;
    pair.before = example::edge_picture(width, height, 0.3);
    pair.after = example::edge_picture(width, height, 0.8);
    pair.before_date = QDate(2026, 1, 14);
    pair.after_date = QDate(2026, 7, 8);
    pair.px_per_mm = 18.4;
    pair.title = QStringLiteral("left temple");
    pair.verdict = QStringLiteral("Edge coverage improved from 41 % to 55 %; 5.2 points can be detected.");
    return pair;
}

// Longest run of the bar's dark ink in a row below the pictures, in pixels.
int longest_dark_run(const QImage& image, int from_row) {
    int longest = 0;
    for (int y = from_row; y < image.height(); ++y) {
        int run = 0;
        for (int x = 0; x < image.width(); ++x) {
            run = qGray(image.pixel(x, y)) < 60 ? run + 1 : 0;
            longest = std::max(longest, run);
        }
    }
    return longest;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(pair_picture)

BOOST_AUTO_TEST_CASE(scale_bars_are_round_and_fit) {
    for (double room = 0.05; room < 900; room *= 1.07) {
        const ScaleBar metric = scale_bar_within(room, LengthUnit::millimetres);
        BOOST_CHECK_LE(metric.length_mm, room * (1 + 1e-6));
        BOOST_CHECK_GT(metric.length_mm, 0.39 * room);  // the steps are 1, 2, 5: never below two fifths
        BOOST_CHECK(metric.label == QStringLiteral("%1 mm").arg(metric.length_mm));
        const ScaleBar inch = scale_bar_within(room, LengthUnit::inches);
        BOOST_CHECK_LE(inch.length_mm, room);
    }
    BOOST_CHECK(scale_bar_within(13, LengthUnit::inches).label == QStringLiteral("1/2 in"));
    BOOST_CHECK_CLOSE(scale_bar_within(13, LengthUnit::inches).length_mm, 12.7, 1e-9);
    BOOST_CHECK_EQUAL(scale_bar_within(0, LengthUnit::millimetres).length_mm, 0);
    BOOST_CHECK_EQUAL(scale_bar_within(-1, LengthUnit::inches).length_mm, 0);
}

BOOST_AUTO_TEST_CASE(the_bar_is_as_long_as_its_label_says_in_the_pictures_own_scale) {
    const Result<QImage> image = paint_pair(example_pair());
    BOOST_REQUIRE(image.ok());
    // 900 px are 48.9 mm: half of that holds 20 mm, which are 368 px.
    BOOST_CHECK_LE(std::abs(longest_dark_run(*image, 700) - 368), 2);
}

BOOST_AUTO_TEST_CASE(both_photos_stand_side_by_side_unchanged) {
    PairPicture pair = example_pair(400, 300);
    pair.before.fill(QColor(200, 10, 10));
    pair.after.fill(QColor(10, 10, 200));
    const Result<QImage> image = paint_pair(pair);
    BOOST_REQUIRE(image.ok());
    qint64 red = 0, blue = 0;
    for (int y = 0; y < image->height(); ++y)
        for (int x = 0; x < image->width(); ++x) {
            red += image->pixel(x, y) == qRgb(200, 10, 10);
            blue += image->pixel(x, y) == qRgb(10, 10, 200);
        }
    // All but a seam of the frame, which is smoothed when it falls between pixels.
    BOOST_CHECK_GE(red, 398 * 298);
    BOOST_CHECK_LE(red, 400 * 300);
    BOOST_CHECK_GE(blue, 398 * 298);
    BOOST_CHECK_LE(blue, 400 * 300);
}

BOOST_AUTO_TEST_CASE(large_photos_are_reduced_and_the_scale_follows) {
    PairPicture pair = example_pair(3200, 1200);
    pair.px_per_mm = 32;
    pair.max_image_width_px = 800;
    const Result<QByteArray> png = pair_png(pair);
    BOOST_REQUIRE(png.ok());
    tools::keep_for_looking(QStringLiteral("pair-large.png"), *png);
    const QImage image = QImage::fromData(*png, "PNG");
    BOOST_CHECK_LT(image.width(), 2000);
    // 32 px/mm over 3200 px are 8 px/mm over 800: 8000 px a metre.
    BOOST_CHECK_LE(std::abs(image.dotsPerMeterX() - 8000), 1);
    BOOST_CHECK(!image.hasAlphaChannel());
}

BOOST_AUTO_TEST_CASE(narrow_small_and_half_missing_pairs_are_painted) {
    for (const auto& [name, size] :
         {std::pair{"tall", QSize(120, 700)}, {"tiny", QSize(8, 6)}, {"wide", QSize(1500, 60)}}) {
        const Result<QByteArray> png = pair_png(example_pair(size.width(), size.height()));
        BOOST_REQUIRE(png.ok());
        tools::keep_for_looking(QStringLiteral("pair-%1.png").arg(QLatin1String(name)), *png);
    }
    PairPicture half = example_pair();
    half.before = {};
    half.px_per_mm = 0;
    half.length = LengthUnit::inches;
    const Result<QByteArray> png = pair_png(half);
    BOOST_REQUIRE(png.ok());
    tools::keep_for_looking(QStringLiteral("pair-half.png"), *png);
    tools::keep_for_looking(QStringLiteral("pair.png"), *pair_png(example_pair()));
}

BOOST_AUTO_TEST_CASE(pairs_that_cannot_be_painted_are_errors) {
    PairPicture pair = example_pair();
    pair.after = pair.after.scaled(10, 10);
    BOOST_REQUIRE(!paint_pair(pair).ok());
    BOOST_CHECK(paint_pair(pair).error().code == "pair-invalid");
    pair.before = pair.after = {};
    BOOST_CHECK(!pair_png(pair).ok());
}

BOOST_AUTO_TEST_SUITE_END()
