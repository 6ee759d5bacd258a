// The definitions on maps of cover that are exactly known.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <functional>

#include "ends/look.h"
#include "ends/perimeter.h"
#include "ends/shape.h"

namespace {

using namespace kempt::ends;

// 120 x 90 mm of cells, hair between x = 25 and 95 down to `hem`; each cell by its share.
cv::Mat map_of(
    const std::function<double(double x)>& hem,
    const std::function<double(double x, double y)>& cover = [](double, double) { return 1.0; }) {
    cv::Mat map(static_cast<int>(90 / cell_mm), static_cast<int>(120 / cell_mm), CV_32FC1, cv::Scalar(0));
    for (int j = 0; j < map.rows; ++j)
        for (int i = 0; i < map.cols; ++i) {
            const double x = (i + 0.5) * cell_mm, y = j * cell_mm;
            if (x < 25 || x > 95) continue;
            const double share = std::clamp((hem(x) - y) / cell_mm, 0.0, 1.0);
            map.at<float>(j, i) = static_cast<float>(share * cover(x, y));
        }
    return map;
}

CoverSums sums_of(const cv::Mat& map) {
    return CoverSums(map, cv::Mat(map.size(), CV_8UC1, cv::Scalar(255)), cell_mm);
}

double unevenness_of(const std::function<double(double x)>& hem) {
    return unevenness(find_shape(sums_of(map_of(hem)), {}));
}

}  // namespace

BOOST_AUTO_TEST_SUITE(shape)

BOOST_AUTO_TEST_CASE(clean_cuts_of_every_shape_are_even) {
    BOOST_CHECK_SMALL(unevenness_of([](double) { return 60.0; }), 0.02);
    BOOST_CHECK_SMALL(unevenness_of([](double x) { return 50 + 0.25 * (x - 25); }), 0.05);                 // slant
    BOOST_CHECK_SMALL(unevenness_of([](double x) { return 62 - 14 * std::pow((x - 60) / 35, 2); }), 0.1);  // U
    BOOST_CHECK_SMALL(unevenness_of([](double x) { return 62 - 0.45 * std::abs(x - 60); }), 0.15);         // V
    BOOST_CHECK_SMALL(unevenness_of([](double x) { return 62 - 0.4 * std::abs(x - 48); }), 0.15);  // V to one side
}

BOOST_AUTO_TEST_CASE(a_wave_reads_as_its_own_rms) {
    for (const double length : {8.0, 14.0, 20.0})
        for (const double height : {1.0, 3.0}) {
            // Over a column of 2 mm the wave is flattened by sin(a) / a, a = pi 2 / length. Of a wave of 20 mm the
            // perimeter itself follows a seventh.
            const double a = CV_PI * 2 / length, flat = std::sin(a) / a;
            BOOST_TEST_CONTEXT("wave of " << length << " mm, " << height << " mm high")
            BOOST_CHECK_CLOSE(unevenness_of([&](double x) { return 60 + height * std::sin(2 * CV_PI * x / length); }),
                              height * flat / std::sqrt(2.0), 17);
        }
}

BOOST_AUTO_TEST_CASE(steps_read_as_half_their_height) {
    const double value = unevenness_of([](double x) { return std::fmod(x, 10) < 5 ? 58.0 : 62.0; });
    BOOST_CHECK_CLOSE(value, 2.0, 12);
}

BOOST_AUTO_TEST_CASE(a_gap_between_locks_does_not_bend_the_perimeter) {
    // A V of 4 mm at its mouth, 12 mm deep, in a level cut.
    const auto hem = [](double x) { return 60 - 12 * std::max(0.0, 1 - std::abs(x - 52) / 2); };
    const HemShape s = find_shape(sums_of(map_of(hem)), {});
    BOOST_CHECK_SMALL(s.smooth.at(52) - 60, 0.5);
    BOOST_CHECK_SMALL(s.smooth.at(75) - 60, 0.1);
}

BOOST_AUTO_TEST_CASE(thin_ends_keep_their_hem_and_show_paper) {
    // 40 % of cover all the way down.
    const auto sums = sums_of(map_of([](double) { return 60.0; }, [](double, double) { return 0.4; }));
    const HemShape s = find_shape(sums, {});
    BOOST_CHECK_CLOSE(s.full_cover, 0.4, 1);
    BOOST_CHECK_SMALL(unevenness(s), 0.05);
    BOOST_CHECK_CLOSE(bare_share(sums, s, 20), 0.6, 1);
}

BOOST_AUTO_TEST_CASE(cover_that_fades_out_has_its_hem_at_half) {
    // Full until 40, none at 70: half at 55; above it 20 mm hold (15 x 0.25 + 5 x 0) / 20 of paper on average.
    const auto sums = sums_of(
        map_of([](double) { return 90.0; }, [](double, double y) { return std::clamp((70 - y) / 30, 0.0, 1.0); }));
    EndsOptions options;
    const HemShape s = find_shape(sums, options);
    // Full cover is that of 20-30 mm inside: 25-35 mm, all covered.
    BOOST_CHECK_CLOSE(s.full_cover, 1.0, 0.5);
    BOOST_CHECK_SMALL(s.smooth.at(60) - 55, 0.2);
    BOOST_CHECK_CLOSE(bare_share(sums, s, options.last_mm), 15 * 0.25 / 20, 3);
}

BOOST_AUTO_TEST_CASE(an_estimate_that_tells_half_cover_too_low_has_its_hem_where_it_tells_half) {
    // As above, but half cover (at 55) is told as 0.4: the estimate falls to 0.4 of the full there.
    const auto sums = sums_of(map_of([](double) { return 90.0; },
                                     [](double, double y) {
                                         const double c = std::clamp((70 - y) / 30, 0.0, 1.0);
                                         return c < 0.5 ? 0.8 * c : 0.4 + 1.2 * (c - 0.5);
                                     }));
    BOOST_CHECK_SMALL(find_shape(sums, {}, 0.4).smooth.at(60) - 55, 0.2);
    BOOST_CHECK_LT(find_shape(sums, {}).smooth.at(60), 53.5);
}

BOOST_AUTO_TEST_CASE(flyaway_is_the_share_of_hair_outside_the_silhouette) {
    cv::Mat map = map_of([](double) { return 60.0; });
    // 5 mm beside the left side 30 mm2, 5 mm beyond the hem 40 mm2; 35 mm beyond it more, which is too far off to
    // count.
    map(cv::Rect(cv::Point2i(80 - 12, 160), cv::Size2i(12, 40))).setTo(1);
    map(cv::Rect(cv::Point2i(200, 260), cv::Size2i(80, 8))).setTo(1);
    map(cv::Rect(cv::Point2i(200, 340), cv::Size2i(80, 8))).setTo(1);
    const auto sums = sums_of(map);
    const HemShape s = find_shape(sums, {});
    const Flyaway f = flyaway(sums, s);
    BOOST_CHECK_CLOSE(f.inside, 70 * 40.0, 2);
    BOOST_CHECK_CLOSE(f.outside, 30 + 40.0, 8);
    BOOST_CHECK_GT(f.seen, 0.98);
}

BOOST_AUTO_TEST_CASE(sides_follow_hair_that_hangs_aslant) {
    cv::Mat map(static_cast<int>(90 / cell_mm), static_cast<int>(120 / cell_mm), CV_32FC1, cv::Scalar(0));
    for (int j = 0; j < 240; ++j)
        for (int i = 0; i < map.cols; ++i)
            if (const double x = (i + 0.5) * cell_mm - 0.2 * j * cell_mm; x > 15 && x < 75) map.at<float>(j, i) = 1;
    const HemShape s = find_shape(sums_of(map), {});
    BOOST_CHECK_SMALL(s.left.slope + 0.2, 0.03);
    BOOST_CHECK_SMALL(s.right.slope + 0.2, 0.03);
    BOOST_CHECK_SMALL(s.left.at(0) - 27, 0.8);
    BOOST_CHECK_SMALL(s.right.at(0) - 87, 0.8);
}

BOOST_AUTO_TEST_CASE(what_was_not_seen_counts_for_nothing) {
    const cv::Mat map = map_of([](double) { return 60.0; }, [](double, double) { return 0.5; });
    cv::Mat valid(map.size(), CV_8UC1, cv::Scalar(255));
    valid(cv::Rect(200, 180, 24, 20)).setTo(0);
    const CoverSums sums(map, valid, cell_mm);
    BOOST_CHECK_CLOSE(bare_share(sums, find_shape(sums, {}), 20), 0.5, 1);
}

BOOST_AUTO_TEST_CASE(nothing_is_found_where_nothing_lies) {
    BOOST_CHECK(find_shape(sums_of(cv::Mat(360, 480, CV_32FC1, cv::Scalar(0))), {}).u.empty());
}

BOOST_AUTO_TEST_CASE(the_perimeter_runs_on_straight_beyond_its_ends) {
    std::vector<double> u, v;
    for (double x = 0; x <= 80; x += 0.5) u.push_back(x), v.push_back(30 + 0.1 * x);
    const Perimeter line(u, v, 0, 80, 60);
    BOOST_CHECK_SMALL(line.at(-20) - 28, 0.05);
    BOOST_CHECK_SMALL(line.at(100) - 40, 0.05);
}

BOOST_AUTO_TEST_SUITE_END()
