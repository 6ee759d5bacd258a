#include <boost/test/unit_test.hpp>

#include "card/calibration.h"
#include "card/ramp.h"
#include "colour/colour.h"
#include "scene.h"

using namespace kempt;

namespace {

test::Scene flat_scene() {
    test::Scene scene;
    scene.size = {1700, 1200};
    scene.px_per_mm = 16;
    scene.turn_deg = 20;
    scene.tilt_deg = 10;
    return scene;
}

// What LightMap makes of a grey of the given true light (card's paper 1) under the scene's lamp and tone curve; between
// codes by a straight line. Device channels of the photo (no colour matrix for sRGB).
cv::Vec3d read_light(const test::Scene& scene, const card::LightMap& map, double light) {
    cv::Vec3d result;
    for (int c = 0; c < 3; ++c) {
        const double coded = colour::srgb_from_linear(light * scene.lamp[c]);
        const double code = 255 * (scene.tone ? scene.tone(coded) : coded);
        const auto low = static_cast<uchar>(std::min(code, 254.0));
        const auto high = static_cast<uchar>(low + 1);
        const float a = map.linear(cv::Vec3b(low, low, low))[c], b = map.linear(cv::Vec3b(high, high, high))[c];
        result[c] = a + (b - a) * (code - low);
    }
    return result;
}

bool has(const card::Calibration& calibration, const std::string& code) {
    return std::any_of(calibration.findings.begin(), calibration.findings.end(),
                       [&](const Finding& finding) { return finding.code == code; });
}

}  // namespace

BOOST_AUTO_TEST_SUITE(light)

BOOST_AUTO_TEST_CASE(tone_curves_of_another_family_are_undone) {
    struct Curve {
        double amount, lift;
    };
    for (const Curve& curve : {Curve{0, 0}, Curve{0, 0.08}, Curve{0.35, 0.03}, Curve{0.7, 0}, Curve{0.7, 0.06}}) {
        test::Scene scene = flat_scene();
        scene.tone = test::s_curve(curve.amount, curve.lift);
        const test::Shot shot = test::photograph(scene);
        const card::Calibration found = card::calibrate(shot.photo);
        BOOST_TEST_CONTEXT("amount " << curve.amount << " lift " << curve.lift) {
            BOOST_REQUIRE(found.light && found.light->curve_fitted);
            BOOST_CHECK_LT(found.light->ramp_residual, 0.008);
            const card::LightMap map(shot.photo, found);
            for (const double truth : {0.01, 0.03, 0.08, 0.2, 0.4, 0.6, 0.9}) {
                const cv::Vec3d read = read_light(scene, map, truth);
                // 3 % and a small step: about the just visible difference of lightness.
                for (int c = 0; c < 3; ++c) BOOST_CHECK_SMALL(read[c] - truth, 0.03 * truth + 0.003);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(curve_left_alone_would_err_by_a_sixth) {
    // The same S without its undoing: shows that the check above can fail.
    test::Scene scene = flat_scene();
    scene.tone = test::s_curve(0.7, 0.06);
    const test::Shot shot = test::photograph(scene);
    card::Calibration found = card::calibrate(shot.photo);
    BOOST_REQUIRE(found.light);
    found.light->curve_fitted = false;
    BOOST_CHECK_GT(std::abs(read_light(scene, card::LightMap(shot.photo, found), 0.2)[1] - 0.2), 0.2 / 6);
}

BOOST_AUTO_TEST_CASE(curve_is_found_under_a_gradient_and_a_shadow_edge) {
    const std::vector<std::function<double(cv::Point2d)>> lights{
        [](cv::Point2d mm) { return std::exp(0.01 * (mm.x - 42)); },
        [](cv::Point2d mm) { return std::exp(-0.01 * (mm.y - 15)); },
        [](cv::Point2d mm) { return mm.x + 0.7 * mm.y < 45 ? 0.45 : 1.0; }};
    for (size_t i = 0; i < lights.size(); ++i) {
        test::Scene scene = flat_scene();
        scene.tone = test::s_curve(0.5, 0.04);
        scene.unevenness = lights[i];
        const test::Shot shot = test::photograph(scene);
        const card::Calibration found = card::calibrate(shot.photo);
        BOOST_REQUIRE(found.light && found.light->curve_fitted);
        const card::LightMap map(shot.photo, found);
        // Ratios, for half of the card lies in shadow and what counts as mid-card is then a matter of taste.
        const double white = read_light(scene, map, 0.9)[1];
        for (const double truth : {0.03, 0.08, 0.2, 0.4})
            BOOST_CHECK_SMALL(read_light(scene, map, truth)[1] / white * 0.9 - truth, 0.04 * truth + 0.003);
        if (i < 2) {
            BOOST_CHECK_CLOSE(found.light->gradient_per_cm, 0.10, 10);
            BOOST_CHECK_GT(found.light->gradient_direction.dot(i == 0 ? cv::Vec2d(1, 0) : cv::Vec2d(0, -1)), 0.97);
            BOOST_CHECK_CLOSE(white, 0.9, 4);
        } else {
            BOOST_CHECK_GT(found.light->gradient_per_cm, 0.12);
        }
    }
}

BOOST_AUTO_TEST_CASE(clipped_paper_leaves_the_ramp_to_be_read_from_its_reversed_rows) {
    test::Scene scene = flat_scene();
    scene.lamp = {1.08, 1.06, 1.04};  // the paper burns out, the 0.9 patch does not
    scene.unevenness = [](cv::Point2d mm) { return std::exp(0.001 * (mm.x - 42)); };
    const test::Shot shot = test::photograph(scene);
    const card::Calibration found = card::calibrate(shot.photo);
    BOOST_REQUIRE(found.light && found.light->curve_fitted);
    const card::LightMap map(shot.photo, found);
    for (const double truth : {0.03, 0.2, 0.4})
        BOOST_CHECK_SMALL(read_light(scene, map, truth)[1] - truth, 0.06 * truth + 0.003);
}

BOOST_AUTO_TEST_CASE(gains_bring_the_white_patch_to_its_reflectance) {
    test::Scene scene = flat_scene();
    scene.lamp = {0.9, 0.7, 0.4};
    const test::Shot shot = test::photograph(scene);
    const card::Calibration found = card::calibrate(shot.photo);
    BOOST_REQUIRE(found.light);
    for (int c = 0; c < 3; ++c) BOOST_CHECK_CLOSE(found.light->gains[c], 1 / scene.lamp[c], 1.5);
}

BOOST_AUTO_TEST_CASE(display_p3_photos_read_neutral_and_keep_their_matrix) {
    test::Scene scene = flat_scene();
    scene.display_p3 = true;
    scene.lamp = {0.8, 0.7, 0.5};
    const test::Shot shot = test::photograph(scene);
    const card::Calibration found = card::calibrate(shot.photo);
    BOOST_REQUIRE(found.light);
    const card::LightMap map(shot.photo, found);
    cv::Vec3b codes;
    for (int c = 0; c < 3; ++c)
        codes[c] = cv::saturate_cast<uchar>(255 * colour::srgb_from_linear(0.3 * scene.lamp[c]));
    const cv::Vec3f grey = map.linear(codes);
    for (int c = 0; c < 3; ++c) BOOST_CHECK_SMALL(grey[c] - 0.3f, 0.012f);
    // A pure P3 red lies outside of sRGB: its green is below zero and is kept so.
    BOOST_CHECK_LT(map.linear(cv::Vec3b(200, 0, 0))[1], 0);
}

BOOST_AUTO_TEST_CASE(whole_pictures_and_single_codes_map_alike) {
    test::Scene scene = flat_scene();
    scene.display_p3 = true;
    const test::Shot shot = test::photograph(scene);
    const card::LightMap map(shot.photo, card::calibrate(shot.photo));
    const cv::Mat part = shot.photo.pixels(cv::Rect(300, 200, 50, 40));
    const cv::Mat light = map.linear(part);
    BOOST_REQUIRE_EQUAL(light.type(), CV_32FC3);
    for (int y = 0; y < part.rows; y += 7)
        for (int x = 0; x < part.cols; x += 7)
            BOOST_CHECK_SMALL(cv::norm(light.at<cv::Vec3f>(y, x) - map.linear(part.at<cv::Vec3b>(y, x))), 1e-6);
}

BOOST_AUTO_TEST_CASE(photos_without_a_card_map_by_their_own_encoding) {
    Photo photo;
    photo.colour = colour::srgb_encoding();
    photo.pixels = cv::Mat(8, 8, CV_8UC3, cv::Scalar(128, 64, 255));
    const cv::Vec3f light = card::LightMap(photo, card::Calibration{}).linear(cv::Vec3b(128, 64, 255));
    // sRGB decoding of 128 and 64: 0.21586050, 0.05126946 (IEC 61966-2-1, computed in reference A7).
    BOOST_CHECK_SMALL(light[0] - 0.2158605f, 1e-5f);
    BOOST_CHECK_SMALL(light[1] - 0.05126946f, 1e-5f);
    BOOST_CHECK_SMALL(light[2] - 1.f, 1e-5f);
}

BOOST_AUTO_TEST_CASE(tables_rise_and_start_near_zero) {
    test::Scene scene = flat_scene();
    scene.tone = test::s_curve(0.6, 0.05);
    const card::Calibration found = card::calibrate(test::photograph(scene).photo);
    BOOST_REQUIRE(found.light && found.light->curve_fitted);
    for (const std::vector<float>& table : found.light->light_from_photo) {
        BOOST_REQUIRE_EQUAL(table.size(), 1024u);
        BOOST_CHECK(std::is_sorted(table.begin(), table.end()));
        BOOST_CHECK_SMALL(table.front(), 0.005f);
        BOOST_CHECK_GT(table.back(), 1.f);
    }
}

BOOST_AUTO_TEST_CASE(ramp_that_no_curve_explains_is_a_finding) {
    test::Scene scene = flat_scene();
    // A filter with a fold: a darker grey comes out lighter than the next one.
    scene.tone = [](double code) { return code < 0.35 || code > 0.7 ? code : 1.05 - code; };
    const card::Calibration found = card::calibrate(test::photograph(scene).photo);
    BOOST_REQUIRE(found.card_found);
    BOOST_CHECK(!found.light || !found.light->curve_fitted);
    BOOST_CHECK(has(found, "ramp-not-fitted") || has(found, "card-light-unreadable"));
}

BOOST_AUTO_TEST_CASE(burnt_out_card_gives_no_light) {
    test::Scene scene = flat_scene();
    scene.lamp = {9, 9, 9};
    const card::Calibration found = card::calibrate(test::photograph(scene).photo);
    BOOST_REQUIRE(found.card_found);
    BOOST_CHECK(!found.light);
    BOOST_CHECK(has(found, "card-light-unreadable"));
}

BOOST_AUTO_TEST_CASE(strongly_coloured_light_is_a_finding) {
    test::Scene scene = flat_scene();
    scene.lamp = {0.9, 0.6, 0.2};
    BOOST_CHECK(has(card::calibrate(test::photograph(scene).photo), "light-coloured"));
    BOOST_CHECK(!has(card::calibrate(test::photograph(flat_scene()).photo), "light-coloured"));
}

BOOST_AUTO_TEST_SUITE_END()
