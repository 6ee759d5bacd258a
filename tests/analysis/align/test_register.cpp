// The registration core on made skin whose map is known: turn, shift, the bend of a round head, another light, hair
// that changed, and what cannot be done.
#include <boost/test/unit_test.hpp>

#include "align/register_skin.h"
#include "align/texture.h"
#include "analysis/align/made_skin.h"

using namespace kempt;
using align::Ground;

namespace {

constexpr double radian = CV_PI / 180;

// A straight line of 60 mm along y = 0, hair below it (y > 0), skin for 12 mm above.
const cv::Rect2d earlier_area(-40, -14, 80, 20), later_area(-62, -45, 124, 75);

std::vector<cv::Point2d> line() {
    std::vector<cv::Point2d> points;
    for (double x = -30; x <= 30; x += 1) points.emplace_back(x, 0);
    return points;
}

void only_skin(Ground& ground) {
    for (int j = 0; j < ground.weight.rows; ++j)
        if (const double y = ground.mm(0, j).y; y > -1.5 || y < -12) ground.weight.row(j).setTo(0);
}

// Strands across the hair's side of a ground, dark and different for every seed.
void add_hair(Ground& ground, const std::function<cv::Point2d(cv::Point2d)>& earlier_from_mm, unsigned seed) {
    const tests::MadeSkin strands(seed, 25);
    for (int j = 0; j < ground.layers.rows; ++j)
        for (int i = 0; i < ground.layers.cols; ++i) {
            const cv::Point2d p = earlier_from_mm(ground.mm(i, j));
            if (p.y > -0.5) ground.layers.at<cv::Vec2f>(j, i) = {strands(p)[0] - 1.5f, 0.2f};
        }
}

struct Known {
    double turn_deg = 0;
    cv::Vec2d shift;
    double tilt = 0;  // tan of the difference of tilts: the skin, a sphere of 90 mm, shows tilt * depth aside
    // Turned about the origin.
    [[nodiscard]] cv::Point2d later(cv::Point2d p) const {
        const double c = std::cos(turn_deg * radian), s = std::sin(turn_deg * radian),
                     depth = (p.x * p.x + (p.y + 15) * (p.y + 15)) / 180;
        return {c * p.x - s * p.y + shift[0] + tilt * depth, s * p.x + c * p.y + shift[1] - 0.5 * tilt * depth};
    }
    [[nodiscard]] cv::Point2d earlier(cv::Point2d q) const {
        cv::Point2d p(0, 0);  // Newton's steps without the tilt's slope: a tenth of the error is left by each
        for (int round = 0; round < (tilt != 0 ? 12 : 1); ++round) {
            const cv::Point2d off = q - later(p);
            const double c = std::cos(turn_deg * radian), s = std::sin(turn_deg * radian);
            p += cv::Point2d(c * off.x + s * off.y, -s * off.x + c * off.y);
        }
        return p;
    }
};

Result<align::Registered> laid(const tests::MadeSkin& before, const tests::MadeSkin& after, const Known& known,
                               const std::function<void(Ground&)>& change = {}) {
    Ground earlier = tests::ground_through(
        before, [](cv::Point2d p) { return p; }, earlier_area, 0.01, 1);
    only_skin(earlier);
    const auto back = [&](cv::Point2d q) { return known.earlier(q); };
    Ground later = tests::ground_through(after, back, later_area, 0.01, 2);
    if (change) change(later);
    return align::register_skin(earlier, later, line(), {});
}

double worst_error(const align::SkinMap& map, const Known& known) {
    double worst = 0;
    for (const cv::Point2d& p : line()) worst = std::max(worst, cv::norm(map(p) - known.later(p)));
    return worst;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(register_skin)

BOOST_AUTO_TEST_CASE(turn_and_shift_are_found_to_a_tenth_of_a_millimetre) {
    for (const Known& known : {Known{0, {0, 0}, 0}, Known{11, {-13, 9}, 0}, Known{-7.3, {17, -6.2}, 0}}) {
        const auto found = laid(tests::MadeSkin(1), tests::MadeSkin(1), known);
        BOOST_REQUIRE_MESSAGE(found.ok(), (found.ok() ? "" : found.error().sentence()));
        BOOST_TEST(worst_error(found->fit.map, known) < 0.1);
        BOOST_TEST(found->skin_share > 0.9);
        BOOST_TEST(found->evidence() > 5 * align::least_evidence);
    }
}

// 0.17 is 10 degrees: at the line's ends the skin lies 6 mm lower and shows 1 mm aside.
BOOST_AUTO_TEST_CASE(the_bend_of_a_round_head_under_a_tilted_camera_is_followed_and_a_rigid_map_is_not_enough) {
    const Known known{4, {6, 3}, 0.17};
    const auto found = laid(tests::MadeSkin(2), tests::MadeSkin(2), known);
    BOOST_REQUIRE(found.ok());
    BOOST_TEST(worst_error(found->fit.map, known) < 0.2);
    align::SkinMap stiff = found->fit.map;
    for (std::size_t k = 1; k < align::SkinMap::terms; ++k) stiff.bend[k] = {0, 0};
    BOOST_TEST(worst_error(stiff, known) > 0.5);
}

BOOST_AUTO_TEST_CASE(another_light_tone_and_shadow_do_not_matter) {
    const Known known{-3, {4, 8}, 0.1};
    const auto found = laid(tests::MadeSkin(3), tests::MadeSkin(3), known, [](Ground& later) {
        for (int j = 0; j < later.layers.rows; ++j)
            for (int i = 0; i < later.layers.cols; ++i) {
                cv::Vec2f& v = later.layers.at<cv::Vec2f>(j, i);
                const cv::Point2d p = later.mm(i, j);
                v[0] = 0.7f * v[0] - 0.8f + static_cast<float>(0.02 * p.x - (p.x > 10 ? 0.5 : 0));  // a hard shadow too
                v[1] = 1.2f * v[1] + 0.3f;
            }
    });
    BOOST_REQUIRE(found.ok());
    BOOST_TEST(worst_error(found->fit.map, known) < 0.15);
}

BOOST_AUTO_TEST_CASE(hair_that_changed_and_grew_outward_does_not_draw_the_map_with_it) {
    const Known known{5, {-8, 5}, 0};
    const auto found = laid(tests::MadeSkin(4), tests::MadeSkin(4), known, [&](Ground& later) {
        const auto shifted = [&](cv::Point2d q) { return known.earlier(q) + cv::Point2d(0, 2.5); };  // 2.5 mm outward
        add_hair(later, shifted, 99);
        align::leave_out_hairs(later);
    });
    BOOST_REQUIRE(found.ok());
    BOOST_TEST(worst_error(found->fit.map, known) < 0.2);
}

BOOST_AUTO_TEST_CASE(what_the_card_covers_is_not_compared) {
    const Known known{2, {3, -4}, 0};
    Ground earlier = tests::ground_through(
        tests::MadeSkin(5), [](cv::Point2d p) { return p; }, earlier_area, 0.01, 1);
    only_skin(earlier);
    Ground later = tests::ground_through(
        tests::MadeSkin(5), [&](cv::Point2d q) { return known.earlier(q); }, later_area, 0.01, 2);
    // The same print at the same place of both planes, as a card is: bold, and it would say "no shift".
    const auto print = [](Ground& ground) {
        const cv::Point2d at = ground.px({-30, -12});
        const cv::Rect face = cv::Rect(cvRound(at.x), cvRound(at.y), 240, 30) & cv::Rect({0, 0}, ground.weight.size());
        for (int i = 0; i < face.width; ++i) ground.layers(face).col(i).setTo(cv::Scalar(i / 12 % 2 ? -2 : 0, 0));
        ground.weight(face).setTo(0);
    };
    print(earlier);
    print(later);
    const auto found = align::register_skin(earlier, later, line(), {});
    BOOST_REQUIRE(found.ok());
    BOOST_TEST(worst_error(found->fit.map, known) < 0.15);
}

BOOST_AUTO_TEST_CASE(a_card_laid_upside_down_is_found_from_that_base) {
    const Known known{183, {10, -5}, 0};
    Ground earlier = tests::ground_through(
        tests::MadeSkin(6), [](cv::Point2d p) { return p; }, earlier_area, 0.01, 1);
    only_skin(earlier);
    const Ground later = tests::ground_through(
        tests::MadeSkin(6), [&](cv::Point2d q) { return known.earlier(q); }, later_area, 0.01, 2);
    const auto wrong = align::register_skin(earlier, later, line(), {});
    BOOST_TEST(!wrong.ok());
    align::RegisterOptions upside_down;
    upside_down.base_turn_rad = CV_PI;
    const auto found = align::register_skin(earlier, later, line(), upside_down);
    BOOST_REQUIRE(found.ok());
    BOOST_TEST(worst_error(found->fit.map, known) < 0.1);
}

BOOST_AUTO_TEST_CASE(skin_without_texture_another_persons_skin_and_too_little_skin_are_refused) {
    const auto plain = laid(tests::MadeSkin(7, 0.02), tests::MadeSkin(7, 0.02), {3, {2, 2}, 0});
    BOOST_REQUIRE(!plain.ok());
    BOOST_TEST(plain.error().code == "too-little-skin");
    BOOST_TEST(!plain.error().remedy.empty());
    for (uint32_t other = 20; other < 24; ++other) {
        const auto strangers = laid(tests::MadeSkin(7), tests::MadeSkin(other), {});
        BOOST_REQUIRE(!strangers.ok());
        BOOST_TEST(strangers.error().code == "too-little-skin");
    }
    const auto covered = laid(tests::MadeSkin(7), tests::MadeSkin(7), {3, {2, 2}, 0}, [](Ground& later) {
        later.weight.setTo(0);
        later.weight(cv::Rect(0, 0, 60, 30)).setTo(1);
    });
    BOOST_TEST(!covered.ok());
}

BOOST_AUTO_TEST_CASE(the_stated_uncertainty_grows_where_there_is_less_skin_and_holds_the_error) {
    const Known known{-4, {5, 5}, 0.1};
    const auto much = laid(tests::MadeSkin(8), tests::MadeSkin(8), known);
    const auto little = laid(tests::MadeSkin(8), tests::MadeSkin(8), known, [&](Ground& later) {
        for (int j = 0; j < later.weight.rows; ++j)
            for (int i = 0; i < later.weight.cols; ++i)
                if (known.earlier(later.mm(i, j)).x > -8) later.weight.at<float>(j, i) = 0;
    });
    BOOST_REQUIRE(much.ok());
    BOOST_REQUIRE(little.ok());
    const cv::Point2d far_end(30, 0);
    BOOST_TEST(align::uncertainty(little->fit, far_end) > 3 * align::uncertainty(much->fit, far_end));
    for (const auto* found : {&*much, &*little})
        for (const cv::Point2d& p : line())
            BOOST_TEST(cv::norm(found->fit.map(p) - known.later(p)) < 3 * align::uncertainty(found->fit, p) + 0.05);
}

BOOST_AUTO_TEST_CASE(it_stops_when_told_to) {
    Ground earlier = tests::ground_through(
        tests::MadeSkin(9), [](cv::Point2d p) { return p; }, earlier_area, 0.01, 1);
    only_skin(earlier);
    const Ground later = tests::ground_through(
        tests::MadeSkin(9), [](cv::Point2d p) { return p; }, later_area, 0.01, 2);
    int asked = 0;
    const auto whole = align::register_skin(earlier, later, line(), {}, [&](double, std::string_view) {
        ++asked;
        return Go::on;
    });
    BOOST_REQUIRE(whole.ok());
    BOOST_TEST(asked >= 4);
    for (int stop = 0; stop < asked; ++stop) {
        int step = 0;
        const auto stopped = align::register_skin(earlier, later, line(), {}, [&](double fraction, std::string_view) {
            BOOST_TEST((fraction >= 0 && fraction <= 1));
            return step++ == stop ? Go::stop : Go::on;
        });
        BOOST_REQUIRE(!stopped.ok());
        BOOST_TEST((stopped.error().kind == ErrorKind::cancelled));
    }
}

BOOST_AUTO_TEST_SUITE_END()
