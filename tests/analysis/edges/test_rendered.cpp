// Rendered close-ups with known truth. Accuracy proper is proven by the benchmark (docs/accuracy.md); these hold one
// photo of each kind of trouble to limits that a broken method cannot meet.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "colour/colour.h"
#include "edges/edges.h"
#include "render/close_up.h"

namespace {

using namespace kempt;

struct Case {
    Photo photo;
    edges::EdgeMarks marks;
    card::Calibration calibration;
    render::Truth truth;
};

// A close-up without a card, scale known from two points.
Case shot(uint64_t seed, int skin, int hair, double px_per_mm, double density = 0) {
    render::CloseUpOptions options;
    options.skin_class = skin;
    options.hair_colour = hair;
    options.px_per_mm = px_per_mm;
    options.card = false;
    options.tilt_max_deg = 0.01;
    options.phone_strength = 0.3;
    options.quarter_turns = false;
    options.field_mm_x = 40;
    options.field_mm_y = 32;
    render::Scene scene = render::close_up(seed, seed + 1, {}, options);
    scene.x_from = -17;
    scene.x_to = 17;
    scene.edge_y = [](double) { return 0.0; };
    scene.phone.lift = scene.phone.curve = 0;
    scene.phone.gamma = 1;
    scene.phone.display_p3 = false;
    scene.light.shadow_edge = false;
    scene.growth.patches.clear();
    scene.growth.stray_outside = 0;
    scene.growth.shape = render::Shape::wavy;
    if (density > 0)
        scene.growth.density = density, scene.growth.edge_share = 0.3, scene.growth.full_depth_mm = 8,
        scene.growth.length_mean_mm = 30;
    scene.camera.aim_mm = {0, 8};
    render::Shot taken = render::take(scene);
    Case out;
    out.photo.pixels = cv::Mat(taken.height, taken.width, CV_8UC3, taken.rgb.data()).clone();
    out.photo.colour = colour::srgb_encoding();
    for (const auto& p : taken.truth.edge_px) out.marks.edge_line_px.emplace_back(p.x, p.y);
    out.marks.hair_side_px = {taken.truth.hair_side_px.x, taken.truth.hair_side_px.y};
    out.calibration = *card::calibrate_two_points({0, 0}, {100 * px_per_mm, 0}, 100);
    out.truth = taken.truth;
    return out;
}

const Quantity* find(const edges::EdgeReadings& all, const std::string& name) {
    for (const auto& q : all.readings)
        if (q.name == name) return &q;
    return nullptr;
}
std::string refusal(const edges::EdgeReadings& all, const std::string& name) {
    for (const auto& r : all.refused)
        if (r.name == name) return r.code;
    return "";
}

}  // namespace

BOOST_AUTO_TEST_SUITE(rendered)

BOOST_AUTO_TEST_CASE(coverage_is_read_on_dark_and_light_skin_with_dark_light_and_grey_hair) {
    struct Kind {
        int skin, hair;
        double limit;
    };
    for (const Kind kind : {Kind{0, 0, 5}, Kind{5, 0, 7}, Kind{1, 4, 8}, Kind{5, 5, 7}, Kind{3, 1, 6}, Kind{4, 4, 7}}) {
        const Case c = shot(1900 + static_cast<uint64_t>(kind.skin * 10 + kind.hair), kind.skin, kind.hair, 21, 0.7);
        const auto result = edges::measure_edges(c.photo, c.calibration, c.marks);
        BOOST_REQUIRE(result);
        BOOST_TEST_CONTEXT(render::skin_names[kind.skin] << " skin, " << render::hair_names[kind.hair]
                                                         << " hair, truth " << c.truth.edge_coverage) {
            const Quantity* q = find(*result, "edge_coverage");
            BOOST_REQUIRE(q);
            BOOST_CHECK_SMALL(q->value - c.truth.edge_coverage, kind.limit);
            BOOST_CHECK_LE(q->low, q->value);
            BOOST_CHECK_GE(q->high, q->value);
        }
    }
}

BOOST_AUTO_TEST_CASE(more_hair_reads_as_more_on_the_same_head) {
    double before = -1;
    for (const double density : {0.1, 0.3, 0.7, 1.6}) {
        const Case c = shot(77, 2, 0, 16, density);
        const auto result = edges::measure_edges(c.photo, c.calibration, c.marks);
        BOOST_REQUIRE(result && find(*result, "edge_coverage"));
        BOOST_CHECK_GT(find(*result, "edge_coverage")->value, before);
        before = find(*result, "edge_coverage")->value;
    }
}

BOOST_AUTO_TEST_CASE(counts_are_refused_when_coarse_and_in_a_closed_mat_while_coverage_stands) {
    const Case coarse = shot(31, 1, 0, 14, 0.3), mat = shot(32, 1, 0, 21, 2.6);
    const auto a = edges::measure_edges(coarse.photo, coarse.calibration, coarse.marks),
               b = edges::measure_edges(mat.photo, mat.calibration, mat.marks);
    BOOST_REQUIRE(a && b);
    BOOST_CHECK_EQUAL(refusal(*a, "edge_strands"), "too-coarse");
    BOOST_CHECK(find(*a, "edge_coverage"));
    BOOST_TEST_CONTEXT("line covered " << mat.truth.line_cover)
    BOOST_CHECK_EQUAL(refusal(*b, "length_density"), "closed-mat");
    BOOST_CHECK(find(*b, "edge_coverage"));
}

BOOST_AUTO_TEST_CASE(bald_skin_reads_as_bare_and_names_what_it_cannot_say) {
    const Case c = shot(41, 3, 0, 21, 0.0005);
    const auto result = edges::measure_edges(c.photo, c.calibration, c.marks);
    BOOST_REQUIRE(result && find(*result, "edge_coverage") && find(*result, "bare_length"));
    BOOST_CHECK_LT(find(*result, "edge_coverage")->value, 3);
    BOOST_CHECK_CLOSE(find(*result, "bare_length")->value, c.truth.length_mm, 6);
    BOOST_CHECK_EQUAL(refusal(*result, "fill_depth"), "nothing-to-fill-to");
}

BOOST_AUTO_TEST_CASE(the_same_photo_gives_the_same_readings) {
    const Case c = shot(51, 4, 1, 18, 0.6);
    const auto one = edges::measure_edges(c.photo, c.calibration, c.marks),
               two = edges::measure_edges(c.photo, c.calibration, c.marks);
    BOOST_REQUIRE(one && two);
    BOOST_REQUIRE_EQUAL(one->readings.size(), two->readings.size());
    for (size_t i = 0; i < one->readings.size(); ++i) BOOST_CHECK_EQUAL(one->readings[i].value, two->readings[i].value);
}

BOOST_AUTO_TEST_CASE(stopping_keeps_everything_and_says_so) {
    const Case c = shot(61, 4, 1, 18, 0.6);
    const auto result = edges::measure_edges(c.photo, c.calibration, c.marks, {}, false,
                                             [](double, std::string_view) { return Go::stop; });
    BOOST_REQUIRE(!result);
    BOOST_CHECK(result.error().kind == ErrorKind::cancelled);
}

BOOST_AUTO_TEST_CASE(without_a_scale_nothing_is_given_in_millimetres) {
    const Case c = shot(61, 4, 1, 18, 0.6);
    const auto result = edges::measure_edges(c.photo, {}, c.marks);
    BOOST_REQUIRE(!result);
    BOOST_CHECK_EQUAL(result.error().code, "scale-missing");
}

BOOST_AUTO_TEST_SUITE_END()
