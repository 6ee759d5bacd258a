#include <boost/test/unit_test.hpp>
#include <opencv2/imgproc.hpp>

#include "card/gate.h"
#include "colour/colour.h"
#include "scene.h"

using namespace kempt;

namespace {

const Finding* find(const card::GateReport& report, const std::string& code) {
    for (const Finding& finding : report.findings)
        if (finding.code == code) return &finding;
    return nullptr;
}

test::Scene good_scene() {
    test::Scene scene;
    scene.px_per_mm = 20;
    scene.size = {2100, 1500};
    scene.tilt_deg = 5;
    return scene;
}

card::GateReport judged(const test::Scene& scene) {
    const test::Shot shot = test::photograph(scene);
    return card::judge(shot.photo, card::calibrate(shot.photo), {});
}

}  // namespace

BOOST_AUTO_TEST_SUITE(gate)

BOOST_AUTO_TEST_CASE(good_photo_is_good) {
    const card::GateReport report = judged(good_scene());
    BOOST_CHECK_EQUAL(report.level, "good");
    for (const Finding& finding : report.findings) BOOST_CHECK_MESSAGE(finding.level == Level::note, finding.text);
}

BOOST_AUTO_TEST_CASE(blur_warns_then_refuses) {
    test::Scene scene = good_scene();
    scene.blur_px = 0.25 / 2.563 * 20;
    const card::GateReport soft = judged(scene);
    BOOST_REQUIRE(find(soft, "blurred"));
    BOOST_CHECK(find(soft, "blurred")->level == Level::warning);
    BOOST_CHECK_EQUAL(soft.level, "usable");
    scene.blur_px = 0.5 / 2.563 * 20;
    const card::GateReport lost = judged(scene);
    BOOST_REQUIRE(find(lost, "blurred"));
    BOOST_CHECK(find(lost, "blurred")->level == Level::refused);
    BOOST_CHECK_EQUAL(lost.level, "refused");
    BOOST_CHECK_EQUAL(lost.findings.front().code, "blurred");  // worst first
}

BOOST_AUTO_TEST_CASE(movement_one_way_counts_as_blur) {
    // A hand that moves along one axis leaves the edges along it sharp.
    test::Scene scene = good_scene();
    scene.tilt_deg = 0;
    test::Shot shot = test::photograph(scene);
    cv::Mat moved;
    cv::blur(shot.photo.pixels, moved, {14, 1});
    shot.photo.pixels = moved;
    const card::Calibration found = card::calibrate(shot.photo);
    // A box of 14 px over codes is a ramp from black (0) to white (the lamp's 0.75 in green); its 10 and 90 % of light
    // lie at these shares of the ramp.
    const double white = colour::srgb_from_linear(0.75);
    const double share = (colour::srgb_from_linear(0.9 * 0.75) - colour::srgb_from_linear(0.1 * 0.75)) / white;
    BOOST_CHECK_CLOSE(found.edge_rise_mm, share * 14 / 20, 12);
}

BOOST_AUTO_TEST_CASE(tilt_and_gradient_warn) {
    test::Scene scene = good_scene();
    scene.tilt_deg = 26;
    BOOST_CHECK(find(judged(scene), "tilted"));
    scene.tilt_deg = 5;
    scene.unevenness = [](cv::Point2d mm) { return std::exp(0.015 * (mm.x - 60)); };
    const card::GateReport report = judged(scene);
    BOOST_CHECK(!find(report, "tilted"));
    BOOST_REQUIRE(find(report, "light-uneven"));
    BOOST_CHECK(find(report, "light-uneven")->level == Level::warning);
}

BOOST_AUTO_TEST_CASE(scale_decides_what_may_be_read) {
    card::Calibration calibration;
    calibration.two_points = true;
    const Photo photo;
    for (const double scale : {2.0, 14.0, 25.0}) {
        calibration.px_per_mm = scale;
        const card::GateReport report = card::judge(photo, calibration, {});
        BOOST_CHECK_EQUAL(find(report, "too-coarse") != nullptr, scale == 2.0);
        BOOST_CHECK_EQUAL(find(report, "too-coarse-for-counts") != nullptr, scale == 14.0);
        BOOST_CHECK_EQUAL(report.level == "refused", scale == 2.0);
    }
}

BOOST_AUTO_TEST_CASE(no_scale_at_all_is_refused_and_two_points_are_not) {
    Photo photo;
    photo.colour = colour::srgb_encoding();
    photo.pixels = cv::Mat(600, 800, CV_8UC3, cv::Scalar(120, 100, 90));
    const card::GateReport none = card::judge(photo, card::calibrate(photo), {});
    BOOST_CHECK_EQUAL(none.level, "refused");
    BOOST_REQUIRE(find(none, "scale-missing"));
    BOOST_CHECK(find(none, "card-missing"));
    const auto points = card::calibrate_two_points({100, 100}, {600, 100}, 25);
    BOOST_REQUIRE(points.ok());
    const card::GateReport two = card::judge(photo, *points, {});
    BOOST_CHECK_EQUAL(two.level, "usable");
    BOOST_CHECK(!find(two, "scale-missing"));
    BOOST_CHECK(find(two, "scale-from-two-points"));
}

BOOST_AUTO_TEST_CASE(clipping_counts_only_inside_the_region) {
    Photo photo;
    photo.colour = colour::srgb_encoding();
    photo.pixels = cv::Mat(600, 800, CV_8UC3, cv::Scalar(120, 100, 90));
    photo.pixels(cv::Rect(0, 0, 400, 600)).setTo(cv::Scalar(255, 255, 200));
    card::Calibration calibration;
    calibration.two_points = true;
    calibration.px_per_mm = 25;
    const card::GateReport inside = card::judge(photo, calibration, {{10, 10}, {390, 10}, {390, 590}, {10, 590}});
    BOOST_REQUIRE(find(inside, "clipped"));
    BOOST_CHECK(find(inside, "clipped")->level == Level::refused);
    BOOST_CHECK(!find(card::judge(photo, calibration, {{420, 10}, {790, 10}, {790, 590}, {420, 590}}), "clipped"));
    // One channel alone at the top (a red lip, a lamp's tint) is not clipping.
    photo.pixels.setTo(cv::Scalar(255, 100, 90));
    BOOST_CHECK(!find(card::judge(photo, calibration, {}), "clipped"));
}

BOOST_AUTO_TEST_CASE(every_finding_has_a_sentence_and_a_remedy) {
    test::Scene scene = good_scene();
    scene.tilt_deg = 28;
    scene.blur_px = 4;
    scene.hidden_marker = 1;
    scene.lamp = {0.9, 0.5, 0.2};
    const card::GateReport report = judged(scene);
    BOOST_CHECK_GE(report.findings.size(), 3u);
    for (const Finding& finding : report.findings) {
        BOOST_CHECK(!finding.code.empty());
        BOOST_CHECK(finding.text.ends_with("."));
        BOOST_CHECK(finding.remedy.ends_with("."));
    }
}

BOOST_AUTO_TEST_SUITE_END()
