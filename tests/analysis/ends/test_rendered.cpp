// Small rendered hems of all hair colours with known truth. Accuracy proper is the benchmark's (docs/accuracy.md).
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "colour/colour.h"
#include "pictures.h"
#include "render/hem.h"
#include "render/phone.h"

namespace {

using namespace kempt;

struct Case {
    Photo photo;
    card::Calibration calibration;
    std::vector<cv::Point2d> region_px;
    render::HemTruth truth;
};

// A page of 110 x 125 mm with a lock of 52 mm; the phone is kept plain, so that its tone curve is known.
Case hem(int colour, render::Ends ends, card::Ground ground = card::Ground::white) {
    render::SheetOptions options;
    options.hair_colour = colour;
    options.card = false;
    options.phone_strength = 0.3;
    options.tilt_max_deg = 4;
    options.quarter_turns = false;
    options.lint = 0;
    options.px_per_mm = 9;
    options.ground = ground;
    const auto seed = static_cast<uint64_t>(300 + colour);
    render::SheetScene scene = render::sheet_scene(seed, seed + 50, options);
    scene.size_mm = {110, 125};
    if (ground == card::Ground::blue) {
        scene.blue_mm = {-50, -50, 210, 225};
        scene.phone.exposure = 0.9 / scene.white.g;  // as if a card's light were known: paper is 1
    }
    scene.phone.lift = scene.phone.curve = 0;
    scene.phone.gamma = 1;
    scene.phone.display_p3 = false;
    scene.light.shadow_edge = false;
    render::HemHair hair;
    hair.width_mm = 52;
    hair.layers = 4;
    hair.seed = seed;
    hair.ends = ends;
    if (ends == render::Ends::shredded) {
        hair.own_sd_mm = 3, hair.lock_sd_mm = 3.5, hair.thinned_share = 0.5, hair.thinned_mm = 20, hair.pointed = 0.5;
    }
    render::HemLie lie;
    lie.u_mm = 55, lie.v_mm = 78;
    render::Camera& camera = scene.camera;
    camera.aim_mm = {55, 66};
    camera.width = static_cast<int>(102 * camera.px_per_mm);
    camera.height = static_cast<int>(104 * camera.px_per_mm);
    camera.turn_deg = 2;
    const render::SheetShot shot = render::take_sheet(scene, render::lay_hem(hair, lie, scene.hair, 76), 0.85);
    Case out;
    out.photo.pixels =
        cv::Mat(shot.photo.height, shot.photo.width, CV_8UC3, const_cast<uint8_t*>(shot.photo.rgb.data())).clone();
    out.photo.colour = colour::srgb_encoding();
    out.calibration = test::scale_of(camera.px_per_mm);
    // The plane as the camera has it: from four points of the page.
    const render::Projector projector(camera);
    std::vector<cv::Point2d> px;
    for (const auto& [u, v] : {std::pair(0.0, 0.0), {1.0, 0.0}, {0.0, 1.0}}) {
        const render::V2 p = projector.px_from({55 + 40 * u, 70 + 40 * v, 0});
        px.emplace_back(p.x, p.y);
    }
    const cv::Point2d a = (px[1] - px[0]) / 40, b = (px[2] - px[0]) / 40;
    const cv::Matx33d px_from_mm(a.x, b.x, px[0].x - 55 * a.x - 70 * b.x, a.y, b.y, px[0].y - 55 * a.y - 70 * b.y, 0, 0,
                                 1);
    out.calibration.mm_from_px = px_from_mm.inv();
    render::Rng hand(1);
    for (const render::V2& p : render::hem_region_px(scene, hair, lie, hand)) out.region_px.emplace_back(p.x, p.y);
    out.truth = render::hem_truth(scene, hair, lie, shot.cover);
    return out;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(rendered)

BOOST_AUTO_TEST_CASE(blunt_ends_of_every_colour_read_as_blunt_and_shredded_ones_as_shredded) {
    for (int colour = 0; colour < render::hair_colours; ++colour) {
        double before = 0;
        for (const auto ends : {render::Ends::blunt, render::Ends::shredded}) {
            const Case c = hem(colour, ends);
            const auto result = ends::measure_ends(c.photo, c.calibration, c.region_px);
            BOOST_REQUIRE(result);
            BOOST_TEST_CONTEXT(render::hair_names[colour]
                               << ", " << render::end_names[static_cast<size_t>(ends)] << ": " << c.truth.hem_unevenness
                               << " mm, " << c.truth.see_through << " % paper, " << c.truth.flyaway << " % flyaway") {
                const Quantity *uneven = test::find(*result, "hem_unevenness"),
                               *paper = test::find(*result, "see_through"), *fly = test::find(*result, "flyaway");
                BOOST_REQUIRE_MESSAGE(uneven && paper && fly,
                                      "refused: " << (result->refused.empty() ? "" : result->refused.front().code));
                BOOST_CHECK_SMALL(uneven->value - c.truth.hem_unevenness, 0.2 + 0.3 * c.truth.hem_unevenness);
                BOOST_CHECK_SMALL(paper->value - c.truth.see_through, 14.0);
                BOOST_CHECK_SMALL(fly->value - c.truth.flyaway, 4.0);
                BOOST_CHECK_GT(uneven->value, before);
                before = uneven->value + 1;
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(the_blue_sheet_is_known_by_its_colour_and_light_ends_are_read_on_it) {
    for (const int colour : {4, 5, 6}) {
        double before = -1;
        for (const auto ends : {render::Ends::blunt, render::Ends::shredded}) {
            const Case c = hem(colour, ends, card::Ground::blue);
            const auto result = ends::measure_ends(c.photo, c.calibration, c.region_px);
            BOOST_REQUIRE(result);
            BOOST_TEST_CONTEXT(render::hair_names[colour] << ": " << c.truth.hem_unevenness << " mm, "
                                                          << c.truth.see_through << " % paper") {
                const Quantity *uneven = test::find(*result, "hem_unevenness"),
                               *paper = test::find(*result, "see_through");
                BOOST_REQUIRE_MESSAGE(uneven && paper,
                                      "refused: " << (result->refused.empty() ? "" : result->refused.front().code));
                BOOST_CHECK_SMALL(uneven->value - c.truth.hem_unevenness, 0.2 + 0.3 * c.truth.hem_unevenness);
                BOOST_CHECK_SMALL(paper->value - c.truth.see_through, 14.0);
                BOOST_CHECK_GT(uneven->value, before);
                before = uneven->value + 1;
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(the_same_photo_gives_the_same_readings) {
    const Case c = hem(1, render::Ends::shredded);
    const auto one = ends::measure_ends(c.photo, c.calibration, c.region_px),
               two = ends::measure_ends(c.photo, c.calibration, c.region_px);
    BOOST_REQUIRE(one && two);
    BOOST_REQUIRE_EQUAL(one->readings.size(), two->readings.size());
    for (size_t i = 0; i < one->readings.size(); ++i) BOOST_CHECK_EQUAL(one->readings[i].value, two->readings[i].value);
}

BOOST_AUTO_TEST_SUITE_END()
