#include <boost/test/unit_test.hpp>
#include <opencv2/calib3d.hpp>

#include "card/calibration.h"
#include "card/plane.h"
#include "colour/colour.h"
#include "scene.h"

using namespace kempt;

namespace {

bool has(const card::Calibration& calibration, const std::string& code) {
    return std::any_of(calibration.findings.begin(), calibration.findings.end(),
                       [&](const Finding& finding) { return finding.code == code; });
}

// A random photo within what the finder must bear: scale, tilt, any turn and focal length, blur to the gate's limit.
test::Scene random_scene(cv::RNG& rng, uint64_t seed) {
    test::Scene scene;
    scene.px_per_mm = rng.uniform(12., 32.);
    const double k = scene.px_per_mm / 12;
    scene.size = {cvRound(1300 * k), cvRound(1150 * k)};
    scene.tilt_deg = rng.uniform(0., 30.);
    scene.tilt_towards_deg = rng.uniform(0., 360.);
    scene.turn_deg = rng.uniform(0., 360.);
    scene.focal_sides = rng.uniform(0.68, 2.2);
    scene.blur_px = rng.uniform(0.4, 0.4 / 2.563 * scene.px_per_mm);
    scene.noise_codes = rng.uniform(0.5, 5.);
    const double lamp = rng.uniform(0.2, 1.0);
    scene.lamp = {lamp, lamp * 0.95, lamp * rng.uniform(0.5, 1.0)};
    scene.tone = test::s_curve(rng.uniform(0., 0.8), rng.uniform(0., 0.08));
    const double angle = rng.uniform(0., 2 * CV_PI), x = std::cos(angle), y = std::sin(angle);
    const double depth = rng.uniform(0.2, 0.8), soft = rng.uniform(0.2, 6.), off = rng.uniform(-25., 25.);
    if (seed % 3 == 0)
        scene.unevenness = [=](cv::Point2d mm) {
            return 1 - depth / (1 + std::exp(-(x * (mm.x - 42) + y * (mm.y - 15) - off) / soft));
        };
    if (seed % 3 == 1)
        scene.unevenness = [=](cv::Point2d mm) { return std::exp(0.012 * (x * (mm.x - 42) + y * (mm.y - 15))); };
    scene.seed = seed;
    return scene;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(calibration)

// Issue 2: px/mm within 1 % and tilt within 2 degrees for 99 % of photos. 40 photos: none may miss.
BOOST_AUTO_TEST_CASE(scale_and_tilt_hold_over_random_photos) {
    cv::RNG rng(20261);
    int within_interval = 0;
    constexpr int photos = 40;
    for (uint64_t seed = 1; seed <= photos; ++seed) {
        const test::Scene scene = random_scene(rng, seed);
        const test::Shot shot = test::photograph(scene);
        const card::Calibration found = card::calibrate(shot.photo);
        BOOST_TEST_CONTEXT("photo " << seed << ", " << scene.px_per_mm << " px/mm, tilt " << scene.tilt_deg) {
            BOOST_REQUIRE(found.card_found);
            BOOST_CHECK_SMALL(found.px_per_mm / shot.px_per_mm - 1, 0.005);
            BOOST_CHECK_SMALL(found.tilt_deg - scene.tilt_deg, 1.9);
            BOOST_CHECK(!has(found, "card-partly-hidden"));
            const double blur = 2.563 * std::hypot(scene.blur_px, 0.29) / scene.px_per_mm;  // 0.29: a pixel's own width
            BOOST_CHECK_SMALL(found.edge_rise_mm / blur - 1, 0.25);
            within_interval += std::abs(found.px_per_mm - shot.px_per_mm) < 3 * found.px_per_mm_sd;
        }
    }
    BOOST_CHECK_GE(within_interval, photos * 9 / 10);
}

// OpenCV's own least squares on the true correspondences of the drawing (cv::findHomography, method 0).
BOOST_AUTO_TEST_CASE(homography_agrees_with_opencvs_solution_on_true_corners) {
    test::Scene scene;
    scene.tilt_deg = 22;
    scene.tilt_towards_deg = 70;
    scene.turn_deg = 15;
    scene.size = {2200, 1500};
    const test::Shot shot = test::photograph(scene);
    const card::Calibration found = card::calibrate(shot.photo);
    BOOST_REQUIRE(found.card_found);
    std::vector<cv::Point2d> mm, px;
    for (const cv::Point2d& c : card::card_marker_centres_mm)
        for (const double dx : {-5.0, 5.0})
            for (const double dy : {-5.0, 5.0}) {
                mm.emplace_back(c.x + dx, c.y + dy);
                px.push_back(card::apply(shot.px_from_mm, mm.back()));
            }
    const cv::Mat truth = cv::findHomography(px, mm, 0);
    const cv::Matx33d reference(truth.ptr<double>());
    for (const cv::Point2d& at : {cv::Point2d(300, 400), cv::Point2d(1100, 750), cv::Point2d(1900, 1100)}) {
        const cv::Point2d expected = card::apply(reference, at), got = card::mm_from_px(found, at);
        BOOST_CHECK_SMALL(cv::norm(expected - got), 0.02);
        BOOST_CHECK_SMALL(cv::norm(card::px_from_mm(found, got) - at), 1e-6);
        BOOST_CHECK_CLOSE(card::px_per_mm_at(found, at), 1 / card::local_scale(reference, at), 0.1);
    }
    BOOST_CHECK_LT(found.corner_rms_px, 0.2);
}

BOOST_AUTO_TEST_CASE(known_focal_length_gives_the_tilt_within_a_third_of_a_degree) {
    for (const double tilt : {0.0, 2.0, 4.0, 8.0}) {
        test::Scene scene;
        scene.size = {2000, 1400};
        scene.focal_sides = 0.7;
        scene.tilt_deg = tilt;
        scene.tilt_towards_deg = 40;
        const test::Shot shot = test::photograph(scene);
        card::CalibrationOptions options;
        options.focal_px = 0.7 * 2000;
        BOOST_CHECK_SMALL(card::calibrate(shot.photo, options).tilt_deg - tilt, 0.35);
    }
}

BOOST_AUTO_TEST_CASE(any_one_hidden_marker_is_noted_and_costs_little) {
    for (int hidden = 0; hidden < 4; ++hidden) {
        test::Scene scene;
        scene.size = {2200, 2200};
        scene.tilt_deg = 12;
        scene.turn_deg = 50.0 * hidden;
        scene.hidden_marker = hidden;
        const test::Shot shot = test::photograph(scene);
        const card::Calibration found = card::calibrate(shot.photo);
        BOOST_REQUIRE(found.card_found);
        BOOST_CHECK(has(found, "card-partly-hidden"));
        BOOST_CHECK_SMALL(found.px_per_mm / shot.px_per_mm - 1, 0.003);
        BOOST_CHECK_SMALL(found.tilt_deg - 12, 1.0);
    }
}

BOOST_AUTO_TEST_CASE(printer_scale_changes_every_length) {
    test::Scene scene;
    scene.size = {2200, 1500};
    const test::Shot shot = test::photograph(scene);
    card::CalibrationOptions stretched;
    stretched.printer_scale = 1.03;
    const card::Calibration plain = card::calibrate(shot.photo), found = card::calibrate(shot.photo, stretched);
    BOOST_CHECK_CLOSE(found.px_per_mm, plain.px_per_mm / 1.03, 1e-6);
    const cv::Point2d a(500, 600), b(1500, 800);
    BOOST_CHECK_CLOSE(cv::norm(card::mm_from_px(found, a) - card::mm_from_px(found, b)),
                      1.03 * cv::norm(card::mm_from_px(plain, a) - card::mm_from_px(plain, b)), 1e-6);
    BOOST_CHECK_CLOSE(card::px_per_mm_at(found, (a + b) / 2), card::px_per_mm_at(plain, (a + b) / 2) / 1.03, 1e-6);
}

BOOST_AUTO_TEST_CASE(sheet_is_found_and_its_paper_told_from_the_markers) {
    for (const card::Paper paper : {card::Paper::letter, card::Paper::a4}) {
        test::Scene scene;
        scene.sheet = paper;
        scene.size = {2400, 3200};
        scene.px_per_mm = 9;
        scene.tilt_deg = 8;
        const test::Shot shot = test::photograph(scene);
        const card::Calibration found = card::calibrate(shot.photo);
        BOOST_REQUIRE(found.sheet_found);
        BOOST_CHECK(!found.card_found);
        BOOST_CHECK_SMALL(found.px_per_mm / shot.px_per_mm - 1, 0.002);
        BOOST_CHECK_SMALL(found.tilt_deg - 8, 1.5);
        BOOST_CHECK(has(found, "light-not-measured"));
        BOOST_CHECK(!has(found, "card-missing"));
    }
}

BOOST_AUTO_TEST_CASE(a_sheet_says_by_its_markers_what_ground_it_has) {
    for (const card::Ground ground : {card::Ground::white, card::Ground::blue})
        for (const card::Paper paper : {card::Paper::letter, card::Paper::a4}) {
            test::Scene scene;
            scene.sheet = paper;
            scene.ground = ground;
            scene.size = {2400, 3200};
            scene.px_per_mm = 9;
            scene.tilt_deg = 5;
            const card::Calibration found = card::calibrate(test::photograph(scene).photo);
            BOOST_REQUIRE(found.sheet);
            BOOST_CHECK(found.sheet->ground == ground);
            BOOST_CHECK(found.sheet->paper == paper);
        }
}

BOOST_AUTO_TEST_CASE(photos_without_a_card_say_so) {
    Photo photo;
    photo.colour = colour::srgb_encoding();
    photo.pixels.create(900, 1200, CV_8UC3);
    cv::RNG rng(3);
    rng.fill(photo.pixels, cv::RNG::UNIFORM, 0, 255);
    for (const cv::Size size : {cv::Size(1200, 900), cv::Size(64, 64), cv::Size(3, 2)}) {
        Photo part = photo;
        part.pixels = photo.pixels(cv::Rect(cv::Point(0, 0), size)).clone();
        const card::Calibration found = card::calibrate(part);
        BOOST_CHECK(!found.card_found);
        BOOST_CHECK(!found.sheet_found);
        BOOST_CHECK(!found.light);
        BOOST_CHECK(has(found, "card-missing"));
        BOOST_CHECK_EQUAL(found.px_per_mm, 0);
    }
    BOOST_CHECK(has(card::calibrate(Photo{}), "card-missing"));
}

BOOST_AUTO_TEST_CASE(sixteen_bit_photos_calibrate_like_eight_bit_ones) {
    test::Scene scene;
    scene.size = {2200, 1500};
    const test::Shot shot = test::photograph(scene);
    Photo wide;
    wide.colour = colour::srgb_encoding(true);
    shot.photo.pixels.convertTo(wide.pixels, CV_16UC3, 257);
    const card::Calibration narrow_found = card::calibrate(shot.photo), wide_found = card::calibrate(wide);
    BOOST_REQUIRE(wide_found.card_found && wide_found.light);
    BOOST_CHECK_CLOSE(wide_found.px_per_mm, narrow_found.px_per_mm, 0.01);
    BOOST_CHECK_CLOSE(wide_found.light->gains[1], narrow_found.light->gains[1], 0.5);
}

BOOST_AUTO_TEST_CASE(two_points_give_a_scale_and_nothing_else) {
    const auto made = card::calibrate_two_points({100, 200}, {400, 600}, 25);
    BOOST_REQUIRE(made.ok());
    BOOST_CHECK_CLOSE(made->px_per_mm, 20, 1e-9);
    BOOST_CHECK_CLOSE(card::px_per_mm_at(*made, {50, 50}), 20, 1e-9);
    BOOST_CHECK_CLOSE(cv::norm(card::mm_from_px(*made, {100, 200}) - card::mm_from_px(*made, {400, 600})), 25, 1e-9);
    BOOST_CHECK(made->two_points && !made->light && made->tilt_deg == 0);
    BOOST_CHECK_CLOSE(made->px_per_mm_sd, 20 * std::sqrt(2.0) / 500, 1e-6);
    for (const auto& bad :
         {card::calibrate_two_points({1, 1}, {1, 1}, 50), card::calibrate_two_points({1, 1}, {100, 1}, 0),
          card::calibrate_two_points({1, 1}, {100, 1}, -3), card::calibrate_two_points({1, 1}, {std::nan(""), 1}, 3)}) {
        BOOST_REQUIRE(!bad.ok());
        BOOST_CHECK_EQUAL(bad.error().code, "scale-points-unusable");
    }
}

BOOST_AUTO_TEST_SUITE_END()
