// Shape of a strand against closed forms (reference values: standard geometry, computed with R and by hand).
#include <boost/test/unit_test.hpp>

#include "paths.h"
#include "pattern/pattern.h"

using namespace kempt;
using tests::Path;

namespace {

pattern::Shape required(const Path& path, double noise_mm) {
    auto shape = pattern::shape_of(path, noise_mm);
    BOOST_REQUIRE_MESSAGE(shape.ok(), "no shape: " << (shape.ok() ? "" : shape.error().what));
    return shape.value();
}

}  // namespace

BOOST_AUTO_TEST_SUITE(shape)

// R = c^2/(8 s) + s/2: chord 10, sagitta 1 give R = 13.0.
BOOST_AUTO_TEST_CASE(an_arc_of_chord_10_and_sagitta_1_has_a_radius_of_13) {
    const double half = std::asin(5.0 / 13);
    const Path arc = tests::even(
        tests::drawn([](double a) { return cv::Point2d(13 * std::sin(a), 13 * std::cos(a)); }, -half, half), 0.25);
    const double c = cv::norm(arc.back() - arc.front());
    BOOST_TEST(c == 10.0, boost::test_tools::tolerance(0.03));
    const pattern::Shape shape = required(arc, 0.001);
    BOOST_TEST(shape.curve_diameter_mm == 26.0, boost::test_tools::tolerance(0.005));
    // Circum-radius R = abc / (4 area) of first, middle and last point.
    const cv::Point2d a = arc.front(), b = arc[arc.size() / 2], e = arc.back();
    const double radius = cv::norm(a - b) * cv::norm(b - e) * cv::norm(a - e) / (2 * std::abs((b - a).cross(e - a)));
    BOOST_TEST(shape.curve_diameter_mm == 2 * radius, boost::test_tools::tolerance(0.005));
}

// Each wave as large as makes its arc 30 mm or a half of it: any stretch then spans whole waves.
BOOST_AUTO_TEST_CASE(sine_waves_have_the_arc_to_chord_of_the_elliptic_integral) {
    const struct {
        double amplitude, wave, ratio;  // in parts of each other
        int in_a_stretch;
    } cases[] = {{2.5, 40, 1.037505, 1}, {5, 30, 1.234255, 1}, {5, 20, 1.463695, 2}, {5, 10, 2.304893, 1}};
    for (const auto& [amplitude, wave, ratio, in_a_stretch] : cases) {
        const double mm = pattern::stretch_mm / in_a_stretch / (wave * ratio);
        const pattern::Shape shape =
            required(tests::even(tests::wave(mm * amplitude, mm * wave, 5 * in_a_stretch), 0.25), 0.001);
        BOOST_TEST(shape.wave_ratio == ratio, boost::test_tools::tolerance(0.004));
        BOOST_TEST(shape.arc_mm / shape.chord_mm == ratio, boost::test_tools::tolerance(0.004));
        // A half wave turns by 2 atan(2 pi A / lambda): mean |curvature| = 4 atan(..) / (lambda ratio).
        const double curvature = 4 * std::atan(2 * CV_PI * amplitude / wave) / (mm * wave * ratio);
        BOOST_TEST(shape.curve_diameter_mm == 2 / curvature, boost::test_tools::tolerance(0.015));
    }
}

// The chord of an arc s of a circle of diameter D is D sin(s / D).
BOOST_AUTO_TEST_CASE(arcs_of_circles_have_the_ratio_of_their_chords) {
    for (const double diameter : {24.0, 48.0, 96.0}) {
        const double chord = diameter * std::sin(pattern::stretch_mm / diameter);
        BOOST_TEST(
            required(tests::even(tests::circle(diameter, 70), 0.25), 0.001).wave_ratio == pattern::stretch_mm / chord,
            boost::test_tools::tolerance(0.003));
    }
}

BOOST_AUTO_TEST_CASE(a_strand_that_falls_in_a_wide_bow_keeps_its_ratio) {
    // Waves of 8 mm along a straight line and along an arc of 300 mm.
    const auto bowed = [](double radius) {
        return tests::drawn(
            [=](double x) {
                const double across = std::sin(2 * CV_PI * x / 8), angle = x / radius;
                return cv::Point2d((radius + across) * std::sin(angle), (radius + across) * std::cos(angle));
            },
            0, 120);
    };
    const pattern::Shape straight = required(tests::even(bowed(1e5), 0.25), 0.001),
                         bow = required(tests::even(bowed(50), 0.25), 0.001);
    BOOST_TEST(bow.wave_ratio == straight.wave_ratio, boost::test_tools::tolerance(0.015));
    BOOST_TEST(bow.arc_mm / bow.chord_mm > 1.2 * straight.arc_mm / straight.chord_mm);
}

// Peak curvature of a sine is A (2 pi / lambda)^2; a short piece about the peak of a flat one has just that.
BOOST_AUTO_TEST_CASE(the_top_of_a_wave_is_as_curved_as_its_formula_says) {
    const Path top = tests::even(
        tests::drawn([](double x) { return cv::Point2d(x, 8 * std::cos(2 * CV_PI * x / 120)); }, -6, 6), 0.1);
    const double peak = 8 * std::pow(2 * CV_PI / 120, 2);
    BOOST_TEST(required(top, 0.001).curve_diameter_mm == 2 / peak, boost::test_tools::tolerance(0.06));
}

// A helix of diameter 10 mm and pitch 5 mm: curvature 0.1950591 /mm in space (1/curvature 5.12665 mm), stretched
// length over resting 6.362265. Seen along its axis it is a circle of 10 mm, so a coil that is not pressed quite flat
// reads 2.5 % narrower than it bends in space.
BOOST_AUTO_TEST_CASE(a_helix_seen_along_its_axis_reads_its_own_diameter) {
    const double r = 5, rise = 5 / (2 * CV_PI), curvature = r / (r * r + rise * rise);
    BOOST_TEST(curvature == 0.1950591, boost::test_tools::tolerance(1e-6));
    BOOST_TEST(std::hypot(2 * CV_PI * r, 5.0) / 5 == 6.362265, boost::test_tools::tolerance(1e-6));
    const pattern::Shape flat = required(tests::even(tests::circle(10, 62), 0.25), 0.001);
    BOOST_TEST(flat.curve_diameter_mm == 10.0, boost::test_tools::tolerance(0.002));
    BOOST_TEST(2 / curvature / flat.curve_diameter_mm == 1.0253, boost::test_tools::tolerance(0.002));
}

BOOST_AUTO_TEST_CASE(circles_of_3_to_100_mm_read_right_from_noisy_points) {
    for (const double diameter : {3.0, 6.0, 12.0, 25.0, 50.0, 100.0})
        for (const double noise : {0.01, 0.03, 0.05}) {
            double mean = 0, arc = 0;
            const int draws = 6;
            const Path clean = tests::even(tests::circle(diameter, 60), 0.5);
            for (int i = 0; i < draws; ++i) {
                const pattern::Shape one = required(tests::noisy(clean, noise, static_cast<unsigned>(i)), noise);
                mean += one.curve_diameter_mm / draws;
                arc += one.arc_mm / draws;
            }
            BOOST_TEST_CONTEXT("diameter " << diameter << " mm, noise " << noise << " mm") {
                BOOST_TEST(mean == diameter, boost::test_tools::tolerance(0.02));
                BOOST_TEST(arc == tests::length_of(tests::even(tests::circle(diameter, 60), 0.01)) - 0.25,
                           boost::test_tools::tolerance(0.02));
            }
        }
}

// Rounding to whole pixels: SD across 1/sqrt(12) of a pixel.
BOOST_AUTO_TEST_CASE(circles_read_right_from_a_chain_of_pixels) {
    for (const double px_per_mm : {10.0, 12.0, 14.0})
        for (const double diameter : {3.0, 6.0, 12.0, 25.0, 50.0, 100.0}) {
            const Path chain = tests::in_pixels(tests::circle(diameter, 60), px_per_mm);
            const pattern::Shape one = required(chain, 0.29 / px_per_mm);
            BOOST_TEST_CONTEXT("diameter " << diameter << " mm at " << px_per_mm << " px/mm") {
                BOOST_TEST(tests::length_of(chain) > 61.5);  // the chain itself is too long
                BOOST_TEST(one.curve_diameter_mm == diameter, boost::test_tools::tolerance(0.03));
                BOOST_TEST(one.arc_mm == 60.0, boost::test_tools::tolerance(0.01));
            }
        }
}

BOOST_AUTO_TEST_CASE(waves_and_straight_strands_keep_length_and_ratio_under_noise) {
    const struct { double amplitude, wave; } cases[] = {{0, 20}, {1, 8}, {2, 12}, {3, 20}, {2, 30}};
    for (const auto& [amplitude, wave] : cases) {
        const Path fine = tests::wave(amplitude, wave, static_cast<int>(std::lround(80 / wave)));
        const pattern::Shape truth = required(tests::even(fine, 0.25), 0.001),
                             one = required(tests::noisy(tests::even(fine, 0.25), 0.03, 7), 0.03);
        BOOST_TEST_CONTEXT("amplitude " << amplitude << ", wave " << wave) {
            BOOST_TEST(one.arc_mm == tests::length_of(fine), boost::test_tools::tolerance(0.01));
            BOOST_TEST(one.wave_ratio == truth.wave_ratio, boost::test_tools::tolerance(0.01));
            if (amplitude > 0)
                BOOST_TEST(one.curve_diameter_mm == truth.curve_diameter_mm, boost::test_tools::tolerance(0.05));
            else
                BOOST_TEST(one.curve_diameter_mm > 400);
        }
    }
}

// A coil laid flat: loops that cross themselves, 5 mm across, moving on 2 mm a turn.
BOOST_AUTO_TEST_CASE(loops_that_cross_themselves_are_followed) {
    const double turn = 2 * CV_PI;
    const Path fine = tests::drawn(
        [=](double a) { return cv::Point2d(2.5 * std::cos(a) + 2 * a / turn, 2.5 * std::sin(a)); }, 0, 8 * turn);
    const pattern::Shape truth = required(tests::even(fine, 0.1), 0.001),
                         one = required(tests::noisy(tests::even(fine, 0.5), 0.03, 3), 0.03);
    BOOST_TEST(truth.arc_mm == tests::length_of(fine), boost::test_tools::tolerance(0.003));
    // The tangent turns once a turn, always the same way.
    BOOST_TEST(truth.curve_diameter_mm == 2 * tests::length_of(fine) / (8 * turn), boost::test_tools::tolerance(0.01));
    BOOST_TEST(one.curve_diameter_mm == truth.curve_diameter_mm, boost::test_tools::tolerance(0.02));
    BOOST_TEST(one.wave_ratio == truth.wave_ratio, boost::test_tools::tolerance(0.02));
}

BOOST_AUTO_TEST_CASE(short_and_broken_paths_are_refused) {
    const Path line = {{0, 0}, {3, 0}, {6, 0}, {9, 0}};
    BOOST_TEST(!pattern::shape_of(line, 0.01).ok());
    BOOST_TEST(!pattern::shape_of({}, 0.01).ok());
    BOOST_TEST(pattern::shape_of(tests::even(tests::circle(6, 9), 0.5), 0.01).error().code == "strand-too-short");
    BOOST_TEST(!pattern::shape_of(Path(50, {1, 1}), 0.01).ok());
}

BOOST_AUTO_TEST_SUITE_END()
