// From a photo to readings, refusals and overlay.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "painted.h"
#include "tone/level.h"
#include "tone/tone.h"

using namespace kempt;
using namespace kempt::test;

namespace {

cv::Vec3d two_tones(double s) {
    return s < 18 ? light(22, 5, 8) : light(46, 10, 26);
}

const Quantity* find(const tone::ToneReadings& readings, const std::string& name) {
    const auto at = std::find_if(readings.readings.begin(), readings.readings.end(),
                                 [&](const Quantity& q) { return q.name == name; });
    return at == readings.readings.end() ? nullptr : &*at;
}

std::string code_of(const tone::ToneReadings& readings, const std::string& name) {
    for (const Refusal& refusal : readings.refused)
        if (refusal.name == name) return refusal.code;
    return "";
}

std::string error_of(const Result<tone::ToneReadings>& result) {
    return result.ok() ? "" : result.error().code;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(measure)

BOOST_AUTO_TEST_CASE(a_painted_strand_gives_its_colours_line_and_overlay) {
    const Painted strand = paint(two_tones);
    const auto got = tone::measure_tone(strand.photo, strand.calibration, strand.line_px);
    BOOST_REQUIRE_MESSAGE(got.ok(), error_of(got));
    BOOST_REQUIRE((got->root && got->mid && got->end));
    BOOST_CHECK_LT(colour::ciede2000(*got->mid, {46, 10, 26}), 1.5);
    BOOST_CHECK_LT(colour::ciede2000(*got->end, {46, 10, 26}), 1.5);
    const double step = colour::ciede2000({22, 5, 8}, {46, 10, 26});
    BOOST_REQUIRE_EQUAL(got->lines.size(), 1U);
    const tone::Demarcation& line = got->lines[0];
    BOOST_CHECK_CLOSE(line.step, step, 8);
    BOOST_TEST((line.step_low <= step && step <= line.step_high));
    BOOST_CHECK_SMALL(line.at_mm - 18, 0.5);
    BOOST_TEST((line.at_low <= 18 && 18 <= line.at_high));
    BOOST_CHECK_LT(line.width_mm, 2);
    // 18 mm below the scalp, which is at the first click.
    BOOST_CHECK_SMALL(line.at_px.x - strand.line_px[0].x, 0.5);
    BOOST_CHECK_SMALL(line.at_px.y - (strand.line_px[0].y + 18 * 8), 4.0);

    // The root zone is 20 mm long: 18 of the first tone, 2 of the second.
    const Quantity* spread = find(*got, "tone_spread");
    BOOST_REQUIRE(spread);
    BOOST_TEST(spread->unit == "dE00");
    BOOST_TEST((spread->low < spread->value && spread->value < spread->high));
    BOOST_CHECK_SMALL(
        spread->value - std::max(colour::ciede2000(*got->root, *got->mid), colour::ciede2000(*got->root, *got->end)),
        1e-9);
    const Quantity* level = find(*got, "tone_level");
    BOOST_REQUIRE(level);
    BOOST_CHECK_SMALL(level->value - tone::level_of_lightness(46), 0.3);
    BOOST_TEST((level->high - level->low >= 2 * 0.9 && level->low >= 1 && level->high <= 10));

    BOOST_CHECK_SMALL(got->length_mm - 100, 0.3);
    BOOST_TEST(got->profile.size() == 100U);
    BOOST_TEST(got->path_px.size() == got->profile.size());
    BOOST_CHECK_SMALL(got->path_px[39].y - (strand.line_px[0].y + 39.5 * 8), 0.5);
    // The lane is a closed band of 10 mm around the line.
    BOOST_REQUIRE(got->lane_px.size() >= 8);
    const auto side = std::minmax_element(got->lane_px.begin(), got->lane_px.end(),
                                          [](const cv::Point2d& a, const cv::Point2d& b) { return a.x < b.x; });
    BOOST_CHECK_SMALL(side.second->x - side.first->x - 80, 1.0);
}

BOOST_AUTO_TEST_CASE(an_even_strand_has_no_line_and_hardly_any_spread) {
    PaintedOptions options;
    options.gradient_per_mm = {0, 0.002};
    const Painted strand = paint(
        [](double s) {
            const double shine = 0.05 * std::exp(-0.5 * std::pow((s - 50) / 15, 2));
            return light(30, 8, 14) + cv::Vec3d::all(shine);
        },
        options);
    const auto got = tone::measure_tone(strand.photo, strand.calibration, strand.line_px);
    BOOST_REQUIRE_MESSAGE(got.ok(), error_of(got));
    BOOST_TEST(got->lines.empty());
    BOOST_REQUIRE(find(*got, "tone_spread"));
    BOOST_CHECK_LT(find(*got, "tone_spread")->value, 2.0);
    BOOST_CHECK_LT(find(*got, "tone_spread")->low, 0.5);
    BOOST_REQUIRE(got->mid.has_value());
    BOOST_CHECK_LT(colour::ciede2000(*got->mid, {30, 8, 14}), 2.0);
}

BOOST_AUTO_TEST_CASE(a_white_lock_in_the_lane_widens_the_interval_by_what_the_lane_beside_it_would_read) {
    const auto spread_of = [](const PaintedOptions& options, double aside_mm) {
        const Painted strand = paint([](double s) { return s < 50 ? light(15, 3, 4) : light(45, 10, 25); }, options);
        auto line = strand.line_px;
        for (cv::Point2d& p : line) p.x += aside_mm * options.px_per_mm;
        const auto got = tone::measure_tone(strand.photo, strand.calibration, line);
        BOOST_REQUIRE_MESSAGE(got.ok(), error_of(got));
        BOOST_REQUIRE(find(*got, "tone_spread"));
        return *find(*got, "tone_spread");
    };
    PaintedOptions even, lock;
    lock.white_from_mm = -5;
    lock.white_to_mm = -3;
    const Quantity without = spread_of(even, 0), with = spread_of(lock, 0), beside = spread_of(lock, 5);
    // Two of ten millimetres are white: root and ends look nearer to each other than they do beside the lock.
    BOOST_TEST(beside.value - with.value > 4);
    BOOST_TEST(with.high > beside.value);
    BOOST_TEST(with.high - with.low > 2 * (without.high - without.low));
    BOOST_CHECK_CLOSE(beside.high - beside.low, without.high - without.low, 15);
}

BOOST_AUTO_TEST_CASE(mixed_hair_is_read_over_the_width_of_a_section_and_a_narrow_lock_of_it_over_its_own) {
    constexpr double white = 0.5, share = 0.3, lane_mm = 10, section_mm = 24;
    const cv::Vec3d dark = light(15, 3, 4), mixed = dark * (1 - share) + cv::Vec3d::all(white * share);
    const colour::Lab truth = colour::lab_from_linear_srgb(mixed);
    const auto width_mm = [](const tone::ToneReadings& got, const PaintedOptions& options) {
        const auto side = std::minmax_element(got.lane_px.begin(), got.lane_px.end(),
                                              [](const cv::Point2d& a, const cv::Point2d& b) { return a.x < b.x; });
        return (side.second->x - side.first->x) / options.px_per_mm;
    };
    tone::ToneOptions narrow;
    narrow.mixed_sd = 1e9;
    double error_wide = 0, error_narrow = 0;
    for (uint64_t seed = 1; seed <= 12; ++seed) {
        PaintedOptions options;
        options.white_share = share;
        options.px_per_mm = 12;
        options.seed = seed;
        const Painted strand = paint([&](double) { return dark; }, options);
        const auto got = tone::measure_tone(strand.photo, strand.calibration, strand.line_px),
                   before = tone::measure_tone(strand.photo, strand.calibration, strand.line_px, narrow);
        BOOST_REQUIRE((got.ok() && before.ok() && got->mid && before->mid));
        BOOST_CHECK_SMALL(width_mm(*got, options) - section_mm, 0.2);
        BOOST_CHECK_SMALL(width_mm(*before, options) - lane_mm, 0.2);
        error_wide += std::pow(got->mid->L - truth.L, 2) / 12;
        error_narrow += std::pow(before->mid->L - truth.L, 2) / 12;

        // The same hair as a lock of 11 mm, on dark and on white ground: what lies beside it is not read.
        options.half_mm = 5.5;
        for (const int ground : {40, 235}) {
            options.ground = static_cast<uchar>(ground);
            const Painted lock = paint([&](double) { return dark; }, options);
            const auto of_lock = tone::measure_tone(lock.photo, lock.calibration, lock.line_px);
            BOOST_REQUIRE(of_lock.ok());
            BOOST_CHECK_SMALL(width_mm(*of_lock, options) - lane_mm, 0.2);
        }
    }
    // 2.4 times as many fibres: errors of 0.65 of those before are to be expected.
    BOOST_TEST(std::sqrt(error_wide) < 0.8 * std::sqrt(error_narrow));
    const PaintedOptions even;
    const Painted strand = paint([&](double) { return dark; }, even);
    const auto got = tone::measure_tone(strand.photo, strand.calibration, strand.line_px);
    BOOST_REQUIRE(got.ok());
    BOOST_CHECK_SMALL(width_mm(*got, even) - lane_mm, 0.2);
}

BOOST_AUTO_TEST_CASE(errors_name_what_is_missing) {
    Painted strand = paint(two_tones);
    const auto measure = [&](const std::vector<cv::Point2d>& line) {
        return error_of(tone::measure_tone(strand.photo, strand.calibration, line));
    };
    BOOST_TEST(measure({}) == "line-too-short");
    BOOST_TEST(measure({strand.line_px[0]}) == "line-too-short");
    BOOST_TEST(measure({strand.line_px[0], strand.line_px[0]}) == "line-too-short");
    BOOST_TEST(measure({strand.line_px[0], strand.line_px[0] + cv::Point2d(0, 25 * 8)}) == "line-too-short");
    BOOST_TEST(measure({strand.line_px[0], {1e5, 10}}) == "line-outside");
    BOOST_TEST(measure({strand.line_px[0], {std::nan(""), 10}}) == "line-outside");
    tone::ToneOptions odd;
    odd.step_mm = 0;
    BOOST_TEST(error_of(tone::measure_tone(strand.photo, strand.calibration, strand.line_px, odd)) ==
               "options-invalid");

    card::Calibration dark = strand.calibration;
    dark.light.reset();
    BOOST_TEST(error_of(tone::measure_tone(strand.photo, dark, strand.line_px)) == "light-missing");
    const auto points = card::calibrate_two_points({0, 0}, {800, 0}, 100);
    BOOST_TEST(error_of(tone::measure_tone(strand.photo, *points, strand.line_px)) == "light-missing");
    BOOST_TEST(error_of(tone::measure_tone(strand.photo, {}, strand.line_px)) == "scale-missing");

    for (const double stop_at : {0.0, 0.5}) {
        const auto stopped = tone::measure_tone(
            strand.photo, strand.calibration, strand.line_px, {},
            [&](double fraction, std::string_view) { return fraction >= stop_at ? Go::stop : Go::on; });
        BOOST_TEST(error_of(stopped) == "cancelled");
    }
}

BOOST_AUTO_TEST_CASE(a_strand_that_cannot_be_read_is_refused_with_its_reason_and_still_drawn) {
    const auto refused = [&](const Painted& strand, const std::vector<cv::Point2d>& line) {
        const auto got = tone::measure_tone(strand.photo, strand.calibration, line);
        BOOST_REQUIRE_MESSAGE(got.ok(), error_of(got));
        BOOST_TEST(got->readings.empty());
        BOOST_TEST(got->lines.empty());
        BOOST_TEST(!got->lane_px.empty());
        BOOST_TEST(code_of(*got, "tone_spread") == code_of(*got, "tone_level"));
        for (const Refusal& refusal : got->refused) BOOST_TEST(refusal.text.back() == '.');
        return code_of(*got, "tone_spread");
    };
    const Painted strand = paint(two_tones);
    const double x = strand.line_px[0].x;
    BOOST_TEST(refused(strand, {{x, 60}, {x, strand.line_px[3].y}}) == "lane-over-card");
    BOOST_TEST(refused(strand, {{2, 320}, {2, 1000}}) == "lane-outside");

    PaintedOptions options;
    options.exposure = 3;
    BOOST_TEST(refused(paint([](double s) { return s < 50 ? light(70, 2, 10) : light(30, 5, 10); }, options),
                       strand.line_px) == "burnt-out");
    options.exposure = 0.02;
    options.noise_codes = 0;
    BOOST_TEST(refused(paint([](double) { return cv::Vec3d(3e-4, 3e-4, 3e-4); }, options), strand.line_px) ==
               "too-dark");
}

BOOST_AUTO_TEST_CASE(a_highlight_all_over_black_hair_is_refused_not_guessed) {
    // Twelve times the body's light in the middle and still seven times at the ends: the body cannot be known.
    const Painted strand = paint(
        [](double s) { return light(8, 1, 0) + cv::Vec3d::all(0.11 * std::exp(-0.5 * std::pow((s - 50) / 45, 2))); });
    const auto got = tone::measure_tone(strand.photo, strand.calibration, strand.line_px);
    BOOST_REQUIRE_MESSAGE(got.ok(), error_of(got));
    BOOST_TEST(code_of(*got, "tone_level") == "highlight-hides-colour");
    BOOST_TEST((!got->root.has_value() && !got->mid.has_value() && !got->end.has_value()));
    // Their differences may still be known; then the interval holds the truth, which is none.
    if (const Quantity* spread = find(*got, "tone_spread")) BOOST_CHECK_LT(spread->low, 0.5);
    BOOST_TEST(got->lines.empty());
}

BOOST_AUTO_TEST_SUITE_END()
