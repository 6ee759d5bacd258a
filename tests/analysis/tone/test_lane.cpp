// The lane: its curve, its length, the fall of the light, what lies outside or under the card.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "painted.h"
#include "tone/lab_point.h"
#include "tone/lane.h"

using namespace kempt;
using namespace kempt::test;

BOOST_AUTO_TEST_SUITE(lane)

BOOST_AUTO_TEST_CASE(its_length_is_that_of_an_arc_through_few_points) {
    Painted flat = paint([](double) { return light(50, 5, 10); });
    // A quarter of a circle of 60 mm radius from five points: 94.25 mm; a chain of chords is 0.6 % shorter.
    std::vector<cv::Point2d> arc;
    for (int i = 0; i <= 4; ++i) {
        const double angle = i * CV_PI / 8;
        arc.push_back(card::px_from_mm(flat.calibration, {12 + 60 * std::sin(angle), 125 - 60 * std::cos(angle)}));
    }
    const auto straightened = tone::straighten_lane(flat.photo, flat.calibration, arc, 6, 30);
    BOOST_REQUIRE(straightened.ok());
    BOOST_CHECK_CLOSE(straightened->length_mm, 60 * CV_PI / 2, 0.35);
    // Its middle line stays on the circle, and its cross direction points to the centre.
    const auto& lane = *straightened;
    double most_off = 0, most_askew = 0;
    for (size_t i = 20; i + 20 < lane.centre_mm.size(); ++i) {
        const cv::Point2d out = lane.centre_mm[i] - cv::Point2d(12, 125);
        most_off = std::max(most_off, std::abs(std::hypot(out.x, out.y) - 60));
        most_askew = std::max(most_askew, 1 - std::abs(out.dot(lane.across_mm[i])) / 60);
    }
    BOOST_CHECK_LT(most_off, 0.1);
    BOOST_CHECK_LT(most_askew, 0.005);
}

BOOST_AUTO_TEST_CASE(places_along_and_aside_come_back_in_pixels) {
    const Painted flat = paint([](double) { return light(50, 5, 10); });
    const auto lane = tone::straighten_lane(flat.photo, flat.calibration, flat.line_px, 8, 30);
    BOOST_REQUIRE(lane.ok());
    const cv::Point2d at = lane->px(flat.calibration, 40, 0), aside = lane->px(flat.calibration, 40, 3);
    BOOST_CHECK_SMALL(at.x - flat.line_px[0].x, 0.1);
    BOOST_CHECK_SMALL(at.y - (flat.line_px[0].y + 40 * 8), 0.1);
    BOOST_CHECK_SMALL(std::abs(aside.x - at.x) - 24, 0.1);
}

BOOST_AUTO_TEST_CASE(light_that_falls_off_evenly_is_taken_out) {
    PaintedOptions options;
    options.gradient_per_mm = {0.001, -0.004};  // 40 % darker 100 mm further down
    options.lock_noise = 0;
    const Painted strand = paint([](double) { return light(60, 8, 20); }, options);
    const auto lane = tone::straighten_lane(strand.photo, strand.calibration, strand.line_px, 8, 30);
    BOOST_REQUIRE(lane.ok());
    // Up to 90 mm from the card's middle, which is 35 mm above the scalp.
    const auto mean = [&](double from_mm, double to_mm) {
        const cv::Scalar m =
            cv::mean(lane->light.rowRange(cvRound(from_mm * lane->rows_per_mm), cvRound(to_mm * lane->rows_per_mm)));
        return colour::lab_from_linear_srgb({m[0], m[1], m[2]});
    };
    BOOST_CHECK_SMALL(colour::ciede2000(mean(2, 10), {60, 8, 20}), 0.5);
    BOOST_CHECK_SMALL(colour::ciede2000(mean(44, 52), {60, 8, 20}), 0.5);
    // Beyond that the light is taken as no darker: 10 mm further it is, by less than half a step.
    BOOST_CHECK_LT(mean(90, 98).L, 60);
}

BOOST_AUTO_TEST_CASE(what_is_outside_or_under_the_card_is_known) {
    const Painted strand = paint([](double) { return light(50, 5, 10); });
    // Across the card from its upper edge down into the strand.
    const auto over =
        tone::straighten_lane(strand.photo, strand.calibration, {{40 + 42 * 8, 45}, {40 + 42 * 8, 40 + 90 * 8}}, 8, 30);
    BOOST_REQUIRE(over.ok());
    const int card_rows = cvRound(29 * over->rows_per_mm);
    BOOST_TEST(cv::countNonZero(over->state.rowRange(0, card_rows) == tone::Lane::under_card) ==
               card_rows * over->state.cols);
    // Along the photo's left edge half of the lane is outside.
    const auto edge = tone::straighten_lane(strand.photo, strand.calibration, {{0, 400}, {0, 1000}}, 8, 30);
    BOOST_REQUIRE(edge.ok());
    BOOST_CHECK_CLOSE(double(cv::countNonZero(edge->state == tone::Lane::outside)), double(edge->state.total()) / 2, 4);
}

BOOST_AUTO_TEST_CASE(colours_with_their_slopes_are_those_of_the_colour_room) {
    for (const cv::Vec3d& lab :
         {cv::Vec3d(8, 1, 0), cv::Vec3d(31, 8, 14), cv::Vec3d(43, 22, 27), cv::Vec3d(72, 3, 24)}) {
        const tone::LabPoint rgb = tone::rgb_point(lab);
        const cv::Vec3d theirs = colour::linear_srgb_from_lab({lab[0], lab[1], lab[2]});
        const tone::LabPoint back = tone::lab_point(rgb.value);
        for (int c = 0; c < 3; ++c) {
            BOOST_CHECK_SMALL(rgb.value[c] - theirs[c], 1e-5);
            BOOST_CHECK_SMALL(back.value[c] - lab[c], 1e-6);
        }
        // Slopes: each the other's inverse, and as differences say.
        const cv::Matx33d one = rgb.slope * back.slope;
        for (int i = 0; i < 3; ++i)
            for (int j = 0; j < 3; ++j) BOOST_CHECK_SMALL(one(i, j) - (i == j), 1e-6);
        for (int k = 0; k < 3; ++k) {
            cv::Vec3d moved = rgb.value;
            moved[k] += 1e-7;
            const cv::Vec3d by = (tone::lab_point(moved).value - back.value) * 1e7;
            for (int i = 0; i < 3; ++i) BOOST_CHECK_SMALL(by[i] - back.slope(i, k), 1e-3 * std::abs(by[i]) + 1e-2);
        }
    }
}

BOOST_AUTO_TEST_SUITE_END()
