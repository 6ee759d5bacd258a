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

BOOST_AUTO_TEST_CASE(counts_need_a_sharper_photo_than_coverage) {
    test::Scene scene = good_scene();
    scene.px_per_mm = 24;
    scene.size = {2500, 1700};
    for (const double rise : {0.13, 0.23, 0.35}) {
        scene.blur_px = rise / 2.563 * scene.px_per_mm;
        const card::GateReport report = judged(scene);
        BOOST_TEST_CONTEXT("rise " << rise) {
            BOOST_CHECK_NE(report.level, "refused");
            BOOST_CHECK_EQUAL(find(report, "too-soft-for-counts") != nullptr, rise > 0.18);
            BOOST_CHECK_EQUAL(card::against_counts(report) != nullptr, rise > 0.18);
            BOOST_CHECK(!card::against_lengths(report));
        }
    }
}

BOOST_AUTO_TEST_CASE(a_photo_out_of_focus_is_called_blurred_and_not_a_photo_without_a_card) {
    test::Scene scene = good_scene();
    scene.px_per_mm = 13.5;
    scene.size = {1300, 900};
    for (const double blur : {3.0, 4.0, 5.0, 6.0}) {
        scene.blur_px = blur;
        const card::GateReport report = judged(scene);
        BOOST_TEST_CONTEXT("blur " << blur) {
            BOOST_CHECK_EQUAL(report.level, "refused");
            BOOST_CHECK(!find(report, "card-missing"));
            BOOST_REQUIRE(find(report, "blurred"));
            BOOST_CHECK(find(report, "blurred")->level == Level::refused);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_photo_from_too_far_away_is_called_that_and_not_blurred) {
    card::Calibration calibration;
    calibration.card_found = true;
    calibration.px_per_mm = 3.3;
    calibration.edge_rise_mm = 0.67;  // 2.2 px: as sharp as its pixels allow
    const Photo photo;
    const card::GateReport far = card::judge(photo, calibration, {});
    BOOST_CHECK_EQUAL(far.findings.front().code, "too-coarse");
    BOOST_CHECK(!find(far, "blurred"));
    calibration.edge_rise_mm = 1.5;  // 5 px: that too
    BOOST_CHECK(find(card::judge(photo, calibration, {}), "blurred"));
}

BOOST_AUTO_TEST_CASE(edges_along_the_pixel_grid_are_as_sharp_as_slanted_ones) {
    test::Scene scene = good_scene();
    scene.tilt_deg = 0;
    scene.blur_px = 2;
    std::array<double, 2> rise{};
    for (const size_t slanted : {0u, 1u}) {
        scene.turn_deg = slanted ? 7 : 0;
        const test::Shot shot = test::photograph(scene);
        rise[slanted] = card::calibrate(shot.photo).edge_rise_mm;
    }
    BOOST_CHECK_CLOSE(rise[1], 2.563 * 2 / 20, 12);
    BOOST_CHECK_CLOSE(rise[0], rise[1], 12);
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
    for (const double scale : {2.0, 6.0, 14.0, 19.7, 19.85, 20.0, 25.0}) {
        calibration.px_per_mm = scale;
        const card::GateReport report = card::judge(photo, calibration, {});
        BOOST_TEST_CONTEXT("scale " << scale) {
            BOOST_CHECK_EQUAL(find(report, "too-coarse") != nullptr, scale == 2.0);
            BOOST_CHECK_EQUAL(card::against_lengths(report) != nullptr, scale == 6.0);
            BOOST_CHECK_EQUAL(find(report, "too-coarse-for-counts") != nullptr, scale > 4 && scale < 19.8);
            BOOST_CHECK_EQUAL(report.level == "refused", scale == 2.0);
            // Two points say nothing about sharpness, so counts do not stand on them.
            BOOST_CHECK_EQUAL(card::against_counts(report) != nullptr, scale > 4);
        }
    }
    // The scale at the hair decides, not that at the card.
    calibration.px_per_mm = 25;
    BOOST_CHECK(find(card::judge(photo, calibration, {}, card::default_gate_limits(), 14), "too-coarse-for-counts"));
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
    // Skin that a tone curve and JPEG keep a few codes below the top is burnt out all the same.
    photo.pixels.setTo(cv::Scalar(253, 251, 236));
    BOOST_CHECK(find(card::judge(photo, calibration, {}), "clipped"));
    photo.pixels.setTo(cv::Scalar(244, 240, 225));
    BOOST_CHECK(!find(card::judge(photo, calibration, {}), "clipped"));
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
