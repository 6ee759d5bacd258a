// Drawn photos with known ends, and each refusal.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "pictures.h"

namespace {

using namespace kempt;
using test::Drawing;

constexpr double left = 27, right = 93;

// A closed mass from left to right down to hem(x).
Drawing mass(const std::function<double(double)>& hem) {
    Drawing d;
    d.hair = [=](double x, double y) { return x > left && x < right && y < hem(x); };
    return d;
}

ends::EndsReadings measured(const Drawing& d, bool light_known = true) {
    const auto result = ends::measure_ends(test::draw(d), test::scale_of(d.px_per_mm, light_known),
                                           test::region(3, 6, 117, 92, d.px_per_mm));
    BOOST_REQUIRE_MESSAGE(result.ok(), "no result");
    return *result;
}

double value(const ends::EndsReadings& all, const char* name) {
    const Quantity* q = test::find(all, name);
    BOOST_REQUIRE_MESSAGE(q, name << " refused: " << test::refusal(all, name));
    return q->value;
}

std::string code_of_all(const ends::EndsReadings& all) {
    BOOST_CHECK(all.readings.empty());
    BOOST_CHECK_EQUAL(all.refused.size(), 3u);
    return all.refused.empty() ? "" : all.refused.front().code;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(pictures)

BOOST_AUTO_TEST_CASE(a_blunt_cut_is_even_closed_and_without_flyaway) {
    const auto all = measured(mass([](double) { return 62.0; }));
    BOOST_CHECK_SMALL(value(all, "hem_unevenness"), 0.15);
    BOOST_CHECK_SMALL(value(all, "see_through"), 4.0);
    BOOST_CHECK_SMALL(value(all, "flyaway"), 1.0);
    for (const auto& q : all.readings) {
        BOOST_CHECK_LE(q.low, q.value);
        BOOST_CHECK_GE(q.high, q.value);
        BOOST_CHECK_GE(q.low, 0);
    }
}

BOOST_AUTO_TEST_CASE(slanted_round_and_pointed_cuts_are_even) {
    BOOST_CHECK_SMALL(value(measured(mass([](double x) { return 52 + 0.2 * (x - left); })), "hem_unevenness"), 0.2);
    BOOST_CHECK_SMALL(
        value(measured(mass([](double x) { return 64 - 12 * std::pow((x - 60) / 33, 2); })), "hem_unevenness"), 0.2);
    BOOST_CHECK_SMALL(value(measured(mass([](double x) { return 64 - 0.4 * std::abs(x - 60); })), "hem_unevenness"),
                      0.25);
}

BOOST_AUTO_TEST_CASE(waves_of_the_hem_read_as_their_rms) {
    for (const double height : {1.0, 2.5}) {
        const auto all = measured(mass([&](double x) { return 62 + height * std::sin(2 * CV_PI * x / 12); }));
        const double a = CV_PI * 2 / 12, truth = height * std::sin(a) / a / std::sqrt(2.0);
        BOOST_CHECK_SMALL(value(all, "hem_unevenness") - truth, 0.2);
        BOOST_CHECK_LE(test::find(all, "hem_unevenness")->low, truth);
        BOOST_CHECK_GE(test::find(all, "hem_unevenness")->high, truth);
    }
}

BOOST_AUTO_TEST_CASE(paper_between_locks_is_seen) {
    // From 40 mm on, 0.35 of every millimetre is paper; then a fifth. It lies in the strands' shadow. The hem runs
    // level.
    Drawing d = mass([](double) { return 62.0; });
    const auto closed = d.hair;
    d.hair = [=](double x, double y) { return closed(x, y) && (y < 40 || std::fmod(x, 1) < 0.65); };
    d.light = [=](double x, double y) { return closed(x, y) ? 0.6 : 1.0; };
    const double share = value(measured(d), "see_through");
    BOOST_CHECK_SMALL(share - 35, 10.0);
    d.hair = [=](double x, double y) { return closed(x, y) && (y < 40 || std::fmod(x, 1) < 0.8); };
    const double less = value(measured(d), "see_through");
    BOOST_CHECK_SMALL(less - 20, 10.0);
    BOOST_CHECK_LT(less, share - 5);
}

BOOST_AUTO_TEST_CASE(hair_that_stands_off_is_counted) {
    Drawing d = mass([](double) { return 62.0; });
    const auto closed = d.hair;
    // 20 lines of 0.5 x 12 mm below the hem: 120 mm2 outside of 66 x 40 mm2 inside.
    d.hair = [=](double x, double y) { return closed(x, y) || (x > 30 && x < 90 && y < 74 && std::fmod(x, 3) < 0.5); };
    const double share = value(measured(d), "flyaway");
    BOOST_CHECK_SMALL(share - 100 * 120 / (120 + 66 * 40.0), 2.0);
}

BOOST_AUTO_TEST_CASE(uneven_light_does_not_matter) {
    Drawing plain = mass([](double x) { return 62 + 1.5 * std::sin(2 * CV_PI * x / 15); }), lit = plain;
    // A third less light on one side, and somebody's shadow with a soft edge across the hem.
    lit.light = [](double x, double y) {
        const double q = std::clamp((0.7 * x + 0.7 * y - 85) / 12 + 0.5, 0.0, 1.0);
        return (1 - 0.003 * x) * (1 - 0.4 * q * q * (3 - 2 * q));
    };
    const auto a = measured(plain), b = measured(lit);
    BOOST_CHECK_SMALL(value(a, "hem_unevenness") - value(b, "hem_unevenness"), 0.15);
    BOOST_CHECK_SMALL(value(a, "see_through") - value(b, "see_through"), 3.0);
    BOOST_CHECK_SMALL(value(a, "flyaway") - value(b, "flyaway"), 1.0);
}

BOOST_AUTO_TEST_CASE(scale_depth_of_codes_and_turning_the_region_do_not_matter) {
    Drawing d = mass([](double x) { return 62 + 1.5 * std::sin(2 * CV_PI * x / 15); });
    const double once = value(measured(d), "hem_unevenness");
    d.sixteen_bit = true;
    BOOST_CHECK_SMALL(value(measured(d), "hem_unevenness") - once, 0.03);
    d.sixteen_bit = false;
    d.px_per_mm = 14;
    BOOST_CHECK_SMALL(value(measured(d), "hem_unevenness") - once, 0.15);
    d.px_per_mm = 10;
    // The region drawn 4 degrees askew.
    std::vector<cv::Point2d> askew = test::region(8, 12, 112, 88, 10);
    for (auto& p : askew) {
        const cv::Point2d q = p - cv::Point2d(600, 500);
        p = cv::Point2d(600, 500) + cv::Point2d(q.x * 0.99756 - q.y * 0.06976, q.x * 0.06976 + q.y * 0.99756);
    }
    const auto turned = ends::measure_ends(test::draw(d), test::scale_of(10), askew);
    BOOST_REQUIRE(turned);
    BOOST_CHECK_SMALL(value(*turned, "hem_unevenness") - once, 0.25);
}

BOOST_AUTO_TEST_CASE(the_overlay_lies_on_what_was_measured) {
    const auto all = measured(mass([](double) { return 62.0; }));
    BOOST_REQUIRE(!all.hem_px.empty() && !all.smooth_hem_px.empty());
    for (const auto& p : all.hem_px) BOOST_CHECK_SMALL(p.y - 620, 6.0);
    for (const auto& p : all.smooth_hem_px) BOOST_CHECK_SMALL(p.y - 620, 6.0);
    BOOST_CHECK_SMALL(all.smooth_hem_px.front().x - 10 * left, 12.0);
    BOOST_CHECK_SMALL(all.smooth_hem_px.back().x - 10 * right, 12.0);
    BOOST_REQUIRE_GT(all.silhouette_px.size(), 40u);
    // Cover: hair in the middle, paper beyond the hem.
    BOOST_REQUIRE(!all.cover.empty());
    const cv::Matx33d back = all.px_from_cover.inv();
    const auto at = [&](double x, double y) {
        const cv::Vec3d q = back * cv::Vec3d(x, y, 1);
        return static_cast<int>(all.cover.at<uchar>(cvRound(q[1] / q[2]), cvRound(q[0] / q[2])));
    };
    BOOST_CHECK_GT(at(600, 400), 230);
    BOOST_CHECK_LT(at(600, 750), 10);
    BOOST_CHECK_LT(at(150, 400), 10);
}

BOOST_AUTO_TEST_CASE(without_a_scale_or_with_a_bad_region_there_is_no_measuring) {
    const Photo photo = test::draw(mass([](double) { return 62.0; }));
    const auto region = test::region(3, 6, 117, 92, 10);
    BOOST_CHECK_EQUAL(ends::measure_ends(photo, {}, region).error().code, "scale-missing");
    const card::Calibration scale = test::scale_of(10);
    BOOST_CHECK_EQUAL(ends::measure_ends(photo, scale, {region[0], region[1], region[2]}).error().code,
                      "region-corners");
    BOOST_CHECK_EQUAL(ends::measure_ends(photo, scale, {region[0], region[2], region[1], region[3]}).error().code,
                      "region-crosses");
    BOOST_CHECK_EQUAL(ends::measure_ends(photo, scale, test::region(3, 6, 130, 92, 10)).error().code, "region-outside");
    const auto stopped = ends::measure_ends(
        photo, scale, region, {}, [](double done, std::string_view) { return done > 0.5 ? Go::stop : Go::on; });
    BOOST_CHECK(stopped.error().kind == ErrorKind::cancelled);
}

BOOST_AUTO_TEST_CASE(each_refusal_has_its_reason) {
    const Drawing plain = mass([](double) { return 62.0; });
    const Photo photo = test::draw(plain);
    const card::Calibration scale = test::scale_of(10);
    const auto with = [&](const std::vector<cv::Point2d>& region) { return *ends::measure_ends(photo, scale, region); };
    // Ten pixels called two millimetres.
    BOOST_CHECK_EQUAL(code_of_all(*ends::measure_ends(photo, test::scale_of(5), test::region(3, 6, 117, 92, 10))),
                      "too-coarse");
    BOOST_CHECK_EQUAL(code_of_all(with(test::region(40, 6, 70, 92, 10))), "too-narrow");
    // All in the hair: no paper anywhere.
    BOOST_CHECK_EQUAL(code_of_all(with(test::region(32, 6, 88, 56, 10))), "no-paper");
    // The sides see paper, the last side does not.
    BOOST_CHECK_EQUAL(code_of_all(with(test::region(3, 6, 117, 55, 10))), "ends-outside");
    // Upside down: hair at the last side, none at the first.
    const auto r = test::region(3, 6, 117, 92, 10);
    BOOST_CHECK_EQUAL(code_of_all(with({r[2], r[3], r[0], r[1]})), "no-hair-entering");
    BOOST_CHECK_EQUAL(code_of_all(with(test::region(3, 66, 117, 98, 10))), "no-hair");
    BOOST_CHECK_EQUAL(code_of_all(with(test::region(3, 42, 117, 92, 10))), "region-too-short");
    // Little paper beside and below: only what stands off is refused.
    const auto close = with(test::region(22, 6, 98, 70, 10));
    BOOST_CHECK_EQUAL(test::refusal(close, "flyaway"), "rim-outside");
    BOOST_CHECK(test::find(close, "hem_unevenness") && test::find(close, "see_through"));
    // A lock of 30 mm.
    Drawing narrow = plain;
    narrow.hair = [](double x, double y) { return x > 45 && x < 75 && y < 62; };
    BOOST_CHECK_EQUAL(code_of_all(measured(narrow)), "too-narrow");
    // White hair.
    Drawing white = plain;
    white.hair_albedo = {0.62, 0.62, 0.6};
    white.grain = 0.05;
    BOOST_CHECK_EQUAL(code_of_all(measured(white)), "hair-like-paper");
    for (const Refusal& refused : measured(white).refused) BOOST_CHECK_EQUAL(refused.text.back(), '.');
}

BOOST_AUTO_TEST_CASE(on_the_blue_sheet_bare_sheet_and_blue_hair_are_refused) {
    const cv::Vec3d blue(0.05, 0.12, 0.5);
    Drawing bare = mass([](double) { return -1.0; });
    bare.paper_albedo = blue;
    BOOST_CHECK_EQUAL(code_of_all(measured(bare)), "no-hair");
    Drawing as_blue = mass([](double) { return 62.0; });
    as_blue.paper_albedo = blue;
    as_blue.hair_albedo = blue;
    BOOST_CHECK_EQUAL(code_of_all(measured(as_blue)), "no-hair");
    Drawing white_hair = mass([](double) { return 62.0; });
    white_hair.paper_albedo = blue;
    white_hair.hair_albedo = {0.55, 0.53, 0.5};
    BOOST_CHECK_SMALL(value(measured(white_hair), "hem_unevenness"), 0.3);
}

BOOST_AUTO_TEST_CASE(separate_locks_have_no_hem) {
    Drawing d = mass([](double) { return 62.0; });
    // Every other 6 mm ends 26 mm higher.
    d.hair = [](double x, double y) { return x > left && x < right && y < (std::fmod(x, 12) < 6 ? 62 : 36); };
    const auto all = measured(d);
    BOOST_CHECK(test::refusal(all, "hem_unevenness") == "ends-in-locks" || value(all, "hem_unevenness") > 8);
}

BOOST_AUTO_TEST_SUITE_END()
