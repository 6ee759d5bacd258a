// The map's algebra and its robust fit.
#include <boost/test/unit_test.hpp>

#include "align/skin_map.h"

using namespace kempt;
using align::SkinMap;
using align::Tie;

namespace {

SkinMap about_the_line() {
    SkinMap map;
    map.low_mm = {-40, -15};
    map.high_mm = {40, 5};
    return map;
}

std::vector<Tie> ties_of(const SkinMap& truth, double sd_mm, cv::RNG& random) {
    std::vector<Tie> ties;
    for (double x = -36; x <= 36; x += 4)
        for (double y = -12; y <= 0; y += 4) {
            const cv::Point2d noise(random.gaussian(sd_mm), random.gaussian(sd_mm));
            ties.push_back({{x, y}, truth({x, y}) + noise, cv::Matx22d::eye() * (1 / (sd_mm * sd_mm)), 0.8, 1});
        }
    return ties;
}

double worst(const SkinMap& a, const SkinMap& b) {
    double most = 0;
    for (double x = -36; x <= 36; x += 3) most = std::max(most, cv::norm(a({x, 0}) - b({x, 0})));
    return most;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(skin_map)

BOOST_AUTO_TEST_CASE(turn_and_shift_come_back_exactly_from_two_places) {
    SkinMap truth;
    truth.turn_rad = 0.7;
    truth.shift_mm = {12, -5};
    truth.middle_mm = {3, 4};
    std::vector<Tie> two;
    for (const cv::Point2d& p : {cv::Point2d(0, 0), cv::Point2d(25, 9)})
        two.push_back({p, truth.rigid(p), cv::Matx22d::eye(), 1, 1});
    const SkinMap map = align::rigid_through(two, {-8, 2});
    for (const cv::Point2d& p : {cv::Point2d(1, 1), cv::Point2d(-40, 60)})
        BOOST_TEST(cv::norm(map.rigid(p) - truth.rigid(p)) < 1e-9);
}

BOOST_AUTO_TEST_CASE(beyond_the_box_the_bend_stays_as_it_is_at_its_rim) {
    SkinMap map = about_the_line();
    map.bend[1] = {0.02, 0};
    map.bend[5] = {0, 0.003};
    const cv::Point2d rim = map({40, 5}) - cv::Point2d(40, 5), far = map({400, 500}) - cv::Point2d(400, 500);
    BOOST_TEST(cv::norm(rim - far) < 1e-9);
    const cv::Mat grid = map.grid({-40, -15}, 2, {5, 5});
    const cv::Point2d there = map({-39, -14.5});
    BOOST_TEST(grid.at<cv::Vec2f>(1, 2)[0] == there.x, boost::test_tools::tolerance(1e-5));
    BOOST_TEST(grid.at<cv::Vec2f>(1, 2)[1] == there.y, boost::test_tools::tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(a_third_of_wrong_places_does_not_move_the_fit) {
    SkinMap truth = about_the_line();
    truth.turn_rad = 0.05;
    truth.shift_mm = {1.2, -0.8};
    truth.bend[3] = {0.0008, -0.0005};
    cv::RNG random(5);
    std::vector<Tie> ties = ties_of(truth, 0.1, random);
    const SkinMap start = about_the_line();
    const auto clean = align::fit(ties, start, 1);
    BOOST_TEST(worst(clean.map, truth) < 0.1);
    int spoilt = 0;
    for (std::size_t i = 0; i < ties.size(); i += 3, ++spoilt)
        ties[i].later_mm += cv::Point2d(random.uniform(-2.0, 2.0), random.uniform(-2.0, 2.0));
    const auto robust = align::fit(ties, start, 1);
    BOOST_TEST(worst(robust.map, truth) < 0.15);
    BOOST_TEST(robust.agreeing < 0.8);
    BOOST_TEST(robust.agreeing > 0.5);
    const auto naive = align::fit(ties, start, 1, true);  // every tie trusted
    BOOST_TEST(worst(naive.map, truth) > 0.2);
}

// Errors of the fit over many draws against what it says of itself.
BOOST_AUTO_TEST_CASE(the_uncertainty_is_that_of_the_errors) {
    SkinMap truth = about_the_line();
    truth.turn_rad = -0.03;
    truth.shift_mm = {0.4, 0.9};
    truth.bend[5] = {0.0005, 0.001};
    cv::RNG random(6);
    for (const double x : {0.0, 36.0}) {
        double square = 0, promised = 0;
        constexpr int draws = 200;
        for (int draw = 0; draw < draws; ++draw) {
            std::vector<Tie> ties = ties_of(truth, 0.2, random);
            const auto fitted = align::fit(ties, about_the_line(), 1);
            const cv::Point2d off = fitted.map({x, 0}) - truth({x, 0});
            square += off.dot(off) / 2 / draws;
            promised += std::pow(align::uncertainty(fitted, {x, 0}), 2) / draws;
        }
        const double ratio = std::sqrt(square / promised);
        BOOST_TEST_MESSAGE("at " << x << " mm: errors are " << ratio << " of what was promised");
        BOOST_TEST(ratio > 0.7);
        BOOST_TEST(ratio < 1.2);
    }
}

BOOST_AUTO_TEST_SUITE_END()
