// Synthetic profiles with known steps, drifts and highlights.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "painted.h"
#include "tone/level.h"
#include "tone/strand_fit.h"

using namespace kempt;
using kempt::test::light;

namespace {

// Body colour plus highlight at each millimetre, with noise as rows have: 0.75 of it carried on from the row before.
tone::Rows profile(double length_mm, const std::function<cv::Vec3d(double)>& body_lab,
                   const std::function<double(double)>& highlight, double noise, uint64_t seed) {
    tone::Rows rows;
    rows.length_mm = length_mm;
    cv::RNG rng(seed);
    cv::Vec3d left;
    for (int i = 0; i < static_cast<int>(length_mm); ++i) {
        const double s = i + 0.5;
        const cv::Vec3d lab = body_lab(s);
        for (int c = 0; c < 3; ++c)
            left[c] = 0.75 * left[c] + std::sqrt(1 - 0.75 * 0.75) * rng.gaussian(noise * (c ? 0.5 : 1));
        cv::Vec3d seen = tone::lab_point(light(lab[0], lab[1], lab[2]) + cv::Vec3d::all(highlight(s))).value + left;
        rows.at_mm.push_back(s);
        rows.lab.push_back(seen);
        rows.light.push_back(tone::rgb_point(seen).value);
        rows.usable.push_back(s > 1 && s < length_mm - 2);
    }
    return rows;
}

double share(double s, double at, double width_mm) {
    return 0.5 * std::erfc(-(s - at) * 2.5631 / width_mm / std::sqrt(2.0));
}
double hump(double s, double height, double at, double sd) {
    return height * std::exp(-0.5 * std::pow((s - at) / sd, 2));
}
double step_of(const cv::Vec3d& a, const cv::Vec3d& b) {
    return colour::ciede2000({a[0], a[1], a[2]}, {b[0], b[1], b[2]});
}

}  // namespace

BOOST_AUTO_TEST_SUITE(strand_model)

BOOST_AUTO_TEST_CASE(a_step_is_found_with_its_size_place_and_width) {
    const struct {
        cv::Vec3d from, to;
        double at, width;
    } steps[] = {{{18, 4, 6}, {38, 9, 20}, 14, 2},
                 {{30, 8, 14}, {36, 12, 22}, 47.3, 4},
                 {{62, 4, 22}, {74, 2, 12}, 71.8, 6},
                 {{70, 0, 4}, {58, 5, 12}, 33, 1}};
    uint64_t seed = 40;
    for (const auto& one : steps) {
        const tone::Rows rows = profile(
            100, [&](double s) { return one.from + (one.to - one.from) * share(s, one.at, one.width); },
            [](double s) { return hump(s, 0.05, 55, 22); }, 0.4, ++seed);
        tone::StrandModel model(rows);
        const tone::StrandFit fit = tone::fit_strand(model, 2);
        BOOST_REQUIRE_EQUAL(fit.lines.size(), 1U);
        const tone::FittedLine& line = fit.lines[0];
        BOOST_CHECK_SMALL(line.at_mm - one.at, 0.5);
        BOOST_CHECK_CLOSE(line.step, step_of(one.from, one.to), 12);
        BOOST_CHECK_LT(line.step_sd, 0.25 * line.step);
        BOOST_CHECK_LT(std::abs(std::log(line.width_mm / one.width)), std::log(1.7));
        // Uncertainty of the place: some tenths of a millimetre, and it holds the truth.
        BOOST_CHECK_LT(line.at_sd, 0.5);
        BOOST_CHECK_LT(std::abs(line.at_mm - one.at), 4 * line.at_sd + 0.05);
    }
}

BOOST_AUTO_TEST_CASE(two_lines_stand_apart_in_their_order) {
    const cv::Vec3d a(14, 3, 4), b(30, 10, 16), c(55, 8, 26);
    const tone::Rows rows = profile(
        110, [&](double s) { return a + (b - a) * share(s, 12, 2) + (c - b) * share(s, 60, 3); },
        [](double s) { return hump(s, 0.06, 40, 18); }, 0.4, 7);
    tone::StrandModel model(rows);
    const tone::StrandFit fit = tone::fit_strand(model, 2);
    BOOST_REQUIRE_EQUAL(fit.lines.size(), 2U);
    BOOST_CHECK_SMALL(fit.lines[0].at_mm - 12, 0.6);
    BOOST_CHECK_SMALL(fit.lines[1].at_mm - 60, 0.6);
    BOOST_CHECK_CLOSE(fit.lines[1].step, step_of(b, c), 10);
}

BOOST_AUTO_TEST_CASE(drift_and_highlight_are_no_lines) {
    int lines = 0;
    for (uint64_t seed = 0; seed < 12; ++seed) {
        cv::RNG rng(seed + 100);
        const double height = std::exp(rng.uniform(std::log(0.01), std::log(0.25))), at = rng.uniform(10., 90.),
                     sd = rng.uniform(12., 35.), lighter = rng.uniform(0., 15.), power = rng.uniform(0.8, 2.);
        const cv::Vec3d root(rng.uniform(8., 65.), rng.uniform(0., 9.), rng.uniform(2., 20.));
        const tone::Rows rows = profile(
            100, [&](double s) { return root + cv::Vec3d(lighter, 0, 0.4 * lighter) * std::pow(s / 100, power); },
            [&](double s) { return hump(s, height, at, sd); }, 0.4, seed);
        tone::StrandModel model(rows);
        lines += static_cast<int>(tone::fit_strand(model, 2).lines.size());
    }
    BOOST_TEST(lines == 0);
}

BOOST_AUTO_TEST_CASE(body_and_highlight_come_apart_where_the_strand_leaves_the_highlight) {
    // Black, brown, red, blonde, grey; the highlight is up to eight times the body's light.
    for (const cv::Vec3d& body :
         {cv::Vec3d(9, 1, 0), cv::Vec3d(20, 5, 7), cv::Vec3d(36, 22, 26), cv::Vec3d(64, 4, 24), cv::Vec3d(72, 0, 4)}) {
        const tone::Rows rows = profile(
            110, [&](double) { return body; }, [](double s) { return hump(s, 0.08, 45, 14); }, 0.4, 5);
        tone::StrandModel model(rows);
        const tone::StrandFit fit = tone::fit_strand(model, 2);
        BOOST_TEST(fit.lines.empty());
        for (const double s : {10.0, 45.0, 100.0}) {
            const cv::Vec3d found = model.body_lab(fit.parameters, s);
            BOOST_CHECK_LT(step_of(found, body), 2.0);
            BOOST_CHECK_SMALL(model.highlight_light(fit.parameters, s) - hump(s, 0.08, 45, 14), 0.012);
        }
    }
}

BOOST_AUTO_TEST_CASE(rows_that_could_not_be_seen_are_bridged) {
    const cv::Vec3d a(20, 5, 7), b(40, 9, 20);
    tone::Rows rows = profile(
        100, [&](double s) { return a + (b - a) * share(s, 30, 2); }, [](double) { return 0.0; }, 0.3, 9);
    for (size_t i = 60; i < 72; ++i) rows.usable[i] = 0, rows.lab[i] = {99, 0, 0};
    tone::StrandModel model(rows);
    const tone::StrandFit fit = tone::fit_strand(model, 2);
    BOOST_REQUIRE_EQUAL(fit.lines.size(), 1U);
    BOOST_CHECK_SMALL(fit.lines[0].at_mm - 30, 0.5);
    for (size_t i = 8; i < 100; ++i) rows.usable[i] = 0;
    tone::StrandModel blind(rows);
    BOOST_TEST(tone::fit_strand(blind, 2).parameters.empty());
}

BOOST_AUTO_TEST_CASE(levels_lie_between_their_neighbours) {
    for (size_t i = 0; i < 10; ++i)
        BOOST_CHECK_CLOSE(tone::level_of_lightness(tone::lightness_of_level[i]), double(i + 1), 1e-9);
    BOOST_TEST(tone::level_of_lightness(2) == 1);
    BOOST_TEST(tone::level_of_lightness(95) == 10);
    BOOST_CHECK_CLOSE(tone::level_of_lightness(20.5), 3.5, 1e-9);
    for (double L = 5; L < 90; L += 0.5) BOOST_TEST(tone::level_of_lightness(L) <= tone::level_of_lightness(L + 0.5));
}

BOOST_AUTO_TEST_SUITE_END()
