// Rendered panels with known highlight. Accuracy proper is proven by the benchmark (docs/accuracy.md); these hold one
// panel of each hair colour to limits that a broken method cannot meet.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "panels.h"

namespace {

using namespace kempt;
using panels::Case;
using panels::find;
using panels::refusal;
using panels::small_panel;
using panels::taken;

}  // namespace

BOOST_AUTO_TEST_SUITE(rendered)

BOOST_AUTO_TEST_CASE(every_hair_colour_is_served_with_width_within_a_tenth_and_its_strength) {
    const double gloss[render::hair_colours] = {0.3, 0.3, 0.4, 0.4, 0.5, 0.5, 0.5};
    for (int hair = 0; hair < render::hair_colours; ++hair) {
        const Case c = taken(small_panel(300 + static_cast<uint64_t>(hair), hair, gloss[hair]));
        const auto result = shine::measure_shine(c.photo, c.calibration, c.region_px);
        BOOST_REQUIRE(result);
        BOOST_TEST_CONTEXT(render::hair_names[hair] << " hair, true width " << c.truth.width_mm << " mm, share "
                                                    << c.truth.surface_share) {
            for (const char* name : {"shine_contrast", "shine_width", "luster", "alignment"}) {
                const Quantity* q = find(*result, name);
                BOOST_REQUIRE_MESSAGE(q, name << " refused: " << refusal(*result, name));
                BOOST_CHECK_LE(q->low, q->value);
                BOOST_CHECK_GE(q->high, q->value);
            }
            BOOST_CHECK_CLOSE(find(*result, "shine_width")->value, c.truth.width_mm, 12);
            BOOST_CHECK_SMALL(find(*result, "shine_contrast")->value - c.truth.surface_share, 0.06);
            BOOST_CHECK_GT(find(*result, "alignment")->value, 0.85);
        }
    }
}

BOOST_AUTO_TEST_CASE(glossier_hair_reads_higher_on_the_same_head_dark_or_fair) {
    for (const int hair : {1, 4}) {
        double before = 0;
        for (const double gloss : {0.15, 0.3, 0.6}) {
            const Case c = taken(small_panel(310, hair, gloss));
            const auto result = shine::measure_shine(c.photo, c.calibration, c.region_px);
            BOOST_REQUIRE(result && find(*result, "shine_contrast"));
            BOOST_CHECK_GT(find(*result, "shine_contrast")->value, 1.1 * before);
            before = find(*result, "shine_contrast")->value;
        }
    }
}

BOOST_AUTO_TEST_CASE(a_rougher_cuticle_reads_wider) {
    double before = 0;
    for (const double rough : {5.0, 7.0, 9.5}) {
        render::Panel panel = small_panel(320, 2, 0.5);
        panel.scene.hair.roughness_deg = rough;
        const Case c = taken(panel);
        const auto result = shine::measure_shine(c.photo, c.calibration, c.region_px);
        BOOST_REQUIRE(result && find(*result, "shine_width"));
        BOOST_CHECK_GT(find(*result, "shine_width")->value, 1.1 * before);
        before = find(*result, "shine_width")->value;
    }
}

BOOST_AUTO_TEST_CASE(coloured_lamps_and_exposure_leave_the_readings_alone) {
    render::Panel panel = small_panel(330, 3, 0.4);
    panel.scene.light.colour = {1, 1, 1};
    const auto plain = taken(panel);
    panel.scene.light.colour = {1.25f, 1.f, 0.65f};
    panel.scene.phone.exposure = 0.55;
    const auto warm = taken(panel);
    const auto one = shine::measure_shine(plain.photo, plain.calibration, plain.region_px),
               two = shine::measure_shine(warm.photo, warm.calibration, warm.region_px);
    BOOST_REQUIRE(one && two && find(*one, "luster") && find(*two, "luster"));
    BOOST_CHECK_SMALL(find(*one, "shine_contrast")->value - find(*two, "shine_contrast")->value, 0.02);
    BOOST_CHECK_CLOSE(find(*one, "shine_width")->value, find(*two, "shine_width")->value, 5);
    BOOST_CHECK_CLOSE(find(*one, "luster")->value, find(*two, "luster")->value, 7);
}

BOOST_AUTO_TEST_CASE(ruffled_hair_reads_less_aligned) {
    render::Panel panel = small_panel(340, 2, 0.4);
    const Case sleek = taken(panel);
    panel.streaks_per_cm2 = 30, panel.streak_spread_deg = 40;
    const Case ruffled = taken(panel);
    const auto one = shine::measure_shine(sleek.photo, sleek.calibration, sleek.region_px),
               two = shine::measure_shine(ruffled.photo, ruffled.calibration, ruffled.region_px);
    BOOST_REQUIRE(one && two);
    BOOST_CHECK_LT(sleek.truth.alignment - ruffled.truth.alignment, 0.5);
    BOOST_CHECK_GT(find(*one, "alignment")->value, find(*two, "alignment")->value + 0.05);
}

BOOST_AUTO_TEST_CASE(the_overlay_lies_where_the_highlight_is) {
    const Case c = taken(small_panel(350, 1, 0.4));
    const auto result = shine::measure_shine(c.photo, c.calibration, c.region_px);
    BOOST_REQUIRE(result && find(*result, "shine_width"));
    BOOST_REQUIRE_GE(result->crest_px.size(), 2u);
    const cv::Point2d middle = result->crest_px[result->crest_px.size() / 2];
    BOOST_CHECK_SMALL(std::hypot(middle.x - c.truth.crest_px.x, middle.y - c.truth.crest_px.y), 4 * c.truth.px_per_mm);
    BOOST_CHECK_EQUAL(result->outline_px.size(), 4u);
    BOOST_REQUIRE_EQUAL(result->fibre_axis_px.size(), 2u);
    // Half the width to each side of the crest, and the crest between.
    BOOST_REQUIRE_GE(result->half_zone_px.size(), 4u);
    const size_t across = result->half_zone_px.size() / 2;
    const cv::Point2d first = result->half_zone_px[across / 2],
                      last = result->half_zone_px[result->half_zone_px.size() - 1 - across / 2];
    BOOST_CHECK_CLOSE(std::hypot(first.x - last.x, first.y - last.y) / c.calibration.px_per_mm,
                      find(*result, "shine_width")->value, 5);
    BOOST_CHECK_GT((middle - first).dot(last - middle), 0);
    BOOST_CHECK_EQUAL(result->total.size(), result->surface.size());
    BOOST_CHECK_GT(result->step_mm, 0);
}

BOOST_AUTO_TEST_CASE(the_region_may_be_drawn_from_any_corner_and_either_way_round) {
    const Case c = taken(small_panel(360, 3, 0.4));
    const auto plain = shine::measure_shine(c.photo, c.calibration, c.region_px);
    BOOST_REQUIRE(plain && find(*plain, "shine_contrast") && plain->light);
    std::vector<cv::Point2d> turned = c.region_px, reversed(c.region_px.rbegin(), c.region_px.rend());
    std::rotate(turned.begin(), turned.begin() + 1, turned.end());
    for (const auto& region : {turned, reversed}) {
        const auto other = shine::measure_shine(c.photo, c.calibration, region);
        BOOST_REQUIRE(other && find(*other, "shine_contrast"));
        BOOST_CHECK_SMALL(find(*plain, "shine_contrast")->value - find(*other, "shine_contrast")->value, 0.01);
        BOOST_CHECK_CLOSE(find(*plain, "shine_width")->value, find(*other, "shine_width")->value, 3);
        // The highlight lies the same way from one of the two ends.
        const double at = other->light->highlight_at;
        BOOST_CHECK_SMALL(
            std::min(std::abs(at - plain->light->highlight_at), std::abs(1 - at - plain->light->highlight_at)), 0.02);
    }
}

BOOST_AUTO_TEST_CASE(the_same_photo_gives_the_same_readings) {
    const Case c = taken(small_panel(370, 5, 0.5));
    const auto one = shine::measure_shine(c.photo, c.calibration, c.region_px),
               two = shine::measure_shine(c.photo, c.calibration, c.region_px);
    BOOST_REQUIRE(one && two);
    BOOST_REQUIRE_EQUAL(one->readings.size(), two->readings.size());
    for (size_t i = 0; i < one->readings.size(); ++i) BOOST_CHECK_EQUAL(one->readings[i].value, two->readings[i].value);
}

BOOST_AUTO_TEST_SUITE_END()
