// What shine must not say, and why it says so.
#include <boost/test/unit_test.hpp>
#include <opencv2/imgproc.hpp>

#include "panels.h"
#include "shine/light_signature.h"

namespace {

using namespace kempt;
using panels::Case;
using panels::find;
using panels::refusal;
using panels::small_panel;
using panels::taken;

// One photo for all that only needs a sound one.
const Case& sound() {
    static const Case made = taken(small_panel(400, 2, 0.4));
    return made;
}

std::vector<cv::Point2d> part_of_region(const Case& c, double from, double to) {
    const auto& r = c.region_px;
    return {r[0] + from * (r[3] - r[0]), r[1] + from * (r[2] - r[1]), r[1] + to * (r[2] - r[1]),
            r[0] + to * (r[3] - r[0])};
}

void check_light_refused(const Result<shine::ShineReadings>& result, const std::string& code) {
    BOOST_REQUIRE(result);
    for (const char* name : {"shine_contrast", "shine_width", "luster"}) {
        BOOST_CHECK(!find(*result, name));
        BOOST_CHECK_EQUAL(refusal(*result, name), code);
    }
    BOOST_CHECK(!result->light);
    for (const auto& r : result->refused) BOOST_CHECK_EQUAL(r.text.back(), '.');
}

}  // namespace

BOOST_AUTO_TEST_SUITE(refusals)

BOOST_AUTO_TEST_CASE(without_scale_or_light_there_is_no_shine) {
    const Case& c = sound();
    const auto none = shine::measure_shine(c.photo, {}, c.region_px);
    BOOST_REQUIRE(!none);
    BOOST_CHECK_EQUAL(none.error().code, "scale-missing");
    card::Calibration dark = c.calibration;
    dark.light.reset();
    const auto unlit = shine::measure_shine(c.photo, dark, c.region_px);
    BOOST_REQUIRE(!unlit);
    BOOST_CHECK_EQUAL(unlit.error().code, "light-missing");
    BOOST_CHECK(unlit.error().kind == ErrorKind::refused);
    const auto two_points = card::calibrate_two_points({0, 0}, {900, 0}, 100);
    BOOST_CHECK_EQUAL(shine::measure_shine(c.photo, *two_points, c.region_px).error().code, "light-missing");
}

BOOST_AUTO_TEST_CASE(regions_that_are_none_are_invalid) {
    const Case& c = sound();
    auto three = c.region_px, crossed = c.region_px, outside = c.region_px;
    three.pop_back();
    std::swap(crossed[1], crossed[2]);
    outside[0] = {-20, 10};
    BOOST_CHECK_EQUAL(shine::measure_shine(c.photo, c.calibration, three).error().code, "region-not-four-corners");
    BOOST_CHECK_EQUAL(shine::measure_shine(c.photo, c.calibration, crossed).error().code, "region-crosses");
    BOOST_CHECK_EQUAL(shine::measure_shine(c.photo, c.calibration, outside).error().code, "region-outside");
    BOOST_CHECK(shine::measure_shine(c.photo, c.calibration, outside).error().kind == ErrorKind::invalid);
}

BOOST_AUTO_TEST_CASE(a_small_region_is_refused) {
    const Case& c = sound();
    const auto result = shine::measure_shine(c.photo, c.calibration, part_of_region(c, 0.45, 0.55));
    BOOST_REQUIRE(result);
    BOOST_CHECK_EQUAL(refusal(*result, "shine_contrast"), "region-too-small");
    BOOST_CHECK_EQUAL(refusal(*result, "alignment"), "region-too-small");
}

BOOST_AUTO_TEST_CASE(half_a_highlight_is_refused) {
    const Case& c = sound();
    check_light_refused(shine::measure_shine(c.photo, c.calibration, part_of_region(c, 0.5, 1)), "highlight-cut");
}

BOOST_AUTO_TEST_CASE(dull_hair_has_no_highlight) {
    render::Panel panel = small_panel(410, 2, 0.0);
    panel.scene.hair.glint = 0;
    const Case c = taken(panel);
    check_light_refused(shine::measure_shine(c.photo, c.calibration, c.region_px), "no-highlight");
}

BOOST_AUTO_TEST_CASE(a_burnt_out_highlight_is_refused_and_the_fibres_still_read) {
    Case c = sound();
    c.photo.pixels = c.photo.pixels.clone();
    cv::Mat bright;
    c.photo.pixels.convertTo(bright, -1, 3.0);
    // The card stays as it was: only the hair is lit too strongly.
    std::vector<cv::Point> hair;
    for (const auto& p : c.region_px) hair.emplace_back(cvRound(p.x), cvRound(p.y));
    cv::Mat mask(c.photo.pixels.size(), CV_8UC1, cv::Scalar(0));
    cv::fillPoly(mask, std::vector<std::vector<cv::Point>>{hair}, cv::Scalar(255));
    bright.copyTo(c.photo.pixels, mask);
    const auto result = shine::measure_shine(c.photo, c.calibration, c.region_px);
    check_light_refused(result, "highlight-clipped");
    BOOST_CHECK(find(*result, "alignment"));
}

BOOST_AUTO_TEST_CASE(hair_at_the_black_level_is_refused) {
    Case c = taken(small_panel(420, 0, 0.3));
    cv::Mat darker;
    cv::subtract(c.photo.pixels, cv::Scalar::all(25), darker);
    std::vector<cv::Point> hair;
    for (const auto& p : c.region_px) hair.emplace_back(cvRound(p.x), cvRound(p.y));
    cv::Mat mask(c.photo.pixels.size(), CV_8UC1, cv::Scalar(0));
    cv::fillPoly(mask, std::vector<std::vector<cv::Point>>{hair}, cv::Scalar(255));
    darker.copyTo(c.photo.pixels, mask);
    check_light_refused(shine::measure_shine(c.photo, c.calibration, c.region_px), "black-level");
}

BOOST_AUTO_TEST_CASE(hair_that_runs_about_is_refused) {
    Case c = sound();
    c.photo.pixels = c.photo.pixels.clone();
    // Grain without direction in place of fibres, as of a brush cut from above.
    cv::RNG random(5);
    cv::Mat grain(c.photo.pixels.size(), CV_8UC1);
    random.fill(grain, cv::RNG::NORMAL, 90, 60);
    cv::GaussianBlur(grain, grain, {}, 1.5);
    cv::cvtColor(grain, c.photo.pixels, cv::COLOR_GRAY2RGB);
    const auto result = shine::measure_shine(c.photo, c.calibration, c.region_px);
    check_light_refused(result, "fibres-not-aligned");
    BOOST_REQUIRE(find(*result, "alignment"));
    BOOST_CHECK_LT(find(*result, "alignment")->value, 0.3);
}

BOOST_AUTO_TEST_CASE(stopping_is_an_error_that_says_so) {
    const Case& c = sound();
    for (const double at : {0.0, 0.5, 0.9}) {
        const auto result =
            shine::measure_shine(c.photo, c.calibration, c.region_px, {},
                                 [&](double f, std::string_view) { return f >= at ? Go::stop : Go::on; });
        BOOST_REQUIRE(!result);
        BOOST_CHECK(result.error().kind == ErrorKind::cancelled);
    }
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(light_set_up)

BOOST_AUTO_TEST_CASE(the_same_chair_and_lamps_are_comparable_and_others_are_not) {
    const Case& c = sound();
    const auto usual = shine::measure_shine(c.photo, c.calibration, c.region_px);
    BOOST_REQUIRE(usual && usual->light);
    render::Panel again = small_panel(400, 2, 0.4);
    again.scene.light.key = render::unit({0.22, -0.03, 1});
    const auto from = again.region_from_mm, to = again.region_to_mm;
    const Case repeat = taken(again);
    const auto second = shine::measure_shine(repeat.photo, repeat.calibration, repeat.region_px);
    BOOST_REQUIRE(second && second->light);
    BOOST_CHECK(!shine::light_differs(*usual->light, *second->light));
    // A lamp that stands 20 degrees lower throws the highlight a quarter of the region further down.
    again.scene.light.key = render::unit({0.2, 0.3, 1});
    again.region_from_mm = from, again.region_to_mm = to;
    const Case moved = taken(again);
    const auto third = shine::measure_shine(moved.photo, moved.calibration, moved.region_px);
    BOOST_REQUIRE(third);
    if (third->light) {
        const auto why = shine::light_differs(*usual->light, *third->light);
        BOOST_REQUIRE(why);
        BOOST_CHECK_EQUAL(why->back(), '.');
    } else {
        BOOST_CHECK_EQUAL(refusal(*third, "shine_contrast"), "highlight-cut");
    }
}

BOOST_AUTO_TEST_CASE(each_part_of_the_signature_speaks_for_itself) {
    const shine::LightSignature usual{0.01, 0.0, 0.5, 2};
    BOOST_CHECK(!shine::light_differs(usual, usual));
    BOOST_CHECK(shine::light_differs(usual, {0.01, 0.0, 0.8, 2}));
    BOOST_CHECK(shine::light_differs(usual, {0.01, 0.0, 0.5, 30}));
    BOOST_CHECK(shine::light_differs(usual, {0.15, 0.0, 0.5, 2}));
    BOOST_CHECK(!shine::light_differs(usual, {0.02, 0.01, 0.52, 4}));
}

BOOST_AUTO_TEST_CASE(small_differences_of_place_and_fall_are_weighed_together) {
    const shine::LightSignature usual{0.01, 0.0, 0.5, 2};
    // Each alone is within what lamps put back by eye do; together they are not.
    BOOST_CHECK(!shine::light_differs(usual, {0.01, 0.0, 0.67, 2}));
    BOOST_CHECK(!shine::light_differs(usual, {0.028, 0.014, 0.5, 2}));
    const auto why = shine::light_differs(usual, {0.028, 0.014, 0.67, 2});
    BOOST_REQUIRE(why);
    BOOST_CHECK(why == shine::light_differs({0.028, 0.014, 0.67, 2}, usual));
    // The sentence names what weighs more.
    BOOST_CHECK(why->find("falls off") != std::string::npos);
    BOOST_CHECK(shine::light_differs(usual, {0.01, 0.0, 0.8, 2})->find("another place") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
