// Rendered panels: one of each kind of trouble. Accuracy proper is the benchmark's (docs/accuracy.md).
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "card/calibration.h"
#include "colour/colour.h"
#include "render/panel_tone.h"
#include "render/write_photo.h"
#include "tone/tone.h"

using namespace kempt;

namespace {

struct Case {
    render::ToneTruth truth;
    tone::ToneReadings got;
};

Case measured(uint64_t seed, int hair, int lines, render::PanelLight light, double step, double drift, double gloss) {
    render::TonePanelOptions options;
    options.panel.hair_colour = hair;
    options.panel.light = light;
    options.panel.gloss = gloss;
    options.panel.px_per_mm = 8;
    options.panel.length_mm = 90;
    options.lines = lines;
    options.step = step;
    options.drift = drift;
    static const render::CardPicture card = render::printed_card();
    const render::TonePanel panel = render::tone_panel(seed, seed + 1, card, options);
    const render::PanelShot shot = render::take(panel.panel);
    Case out;
    out.truth = render::tone_truth(panel, shot.truth);
    Photo photo;
    photo.pixels =
        cv::Mat(shot.shot.height, shot.shot.width, CV_8UC3, const_cast<uint8_t*>(shot.shot.rgb.data())).clone();
    photo.colour = panel.panel.scene.phone.display_p3 ? colour::display_p3_encoding() : colour::srgb_encoding();
    const auto calibration = card::calibrate(photo);
    BOOST_REQUIRE(calibration.light.has_value());
    std::vector<cv::Point2d> line;
    for (const auto& p : out.truth.line_px) line.emplace_back(p.x, p.y);
    auto got = tone::measure_tone(photo, calibration, line);
    BOOST_REQUIRE_MESSAGE(got.ok(), (got.ok() ? "" : got.error().code));
    out.got = std::move(*got);
    return out;
}

double off(const std::optional<colour::Lab>& got, render::V3 truth) {
    BOOST_REQUIRE(got.has_value());
    return colour::ciede2000(*got, {truth.x, truth.y, truth.z});
}

}  // namespace

BOOST_AUTO_TEST_SUITE(rendered)

BOOST_AUTO_TEST_CASE(a_line_of_demarcation_is_found_in_black_red_blonde_and_grey_hair_in_any_light) {
    const render::PanelLight lights[] = {render::PanelLight::warm, render::PanelLight::cool, render::PanelLight::dim,
                                         render::PanelLight::any};
    const int hairs[] = {0, 3, 4, 5};
    for (size_t k = 0; k < 4; ++k) {
        const Case one = measured(300 + k, hairs[k], 1, lights[k], 12, 0, 0.2);
        BOOST_REQUIRE_EQUAL(one.truth.lines.size(), 1U);
        BOOST_TEST_CONTEXT("hair " << hairs[k]) {
            BOOST_REQUIRE_EQUAL(one.got.lines.size(), 1U);
            BOOST_CHECK_SMALL(one.got.lines[0].at_mm - one.truth.lines[0].at_mm, 1.5);
            BOOST_CHECK_CLOSE(one.got.lines[0].step, one.truth.lines[0].step, 30);
        }
    }
}

BOOST_AUTO_TEST_CASE(sun_lightened_lengths_and_a_highlight_show_no_line) {
    for (uint64_t seed = 400; seed < 403; ++seed) {
        const Case one = measured(seed, static_cast<int>(seed % 5), 0, render::PanelLight::any, 0, 1, 0.3);
        BOOST_TEST(one.got.lines.empty());
    }
}

BOOST_AUTO_TEST_CASE(warm_and_cool_light_leave_the_same_colour) {
    for (const render::PanelLight light : {render::PanelLight::warm, render::PanelLight::cool}) {
        const Case one = measured(500, 2, 0, light, 0, 0, 0.1);
        BOOST_CHECK_LT(off(one.got.root, one.truth.root), 4.0);
        BOOST_CHECK_LT(off(one.got.mid, one.truth.mid), 4.0);
        BOOST_CHECK_LT(off(one.got.end, one.truth.end), 4.0);
    }
}

BOOST_AUTO_TEST_SUITE_END()
