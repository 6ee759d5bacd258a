// Which ends are taken for torn ones. The strands are laid by hand; chances are only held against each other and
// against a half, for their figures are calibrated (torn.cpp).
#include "combings/torn.h"

#include <boost/test/unit_test.hpp>

using namespace kempt::combings;

namespace {

// Straight, a point every 0.25 mm, as clear as the others.
TracedStrand straight(cv::Point2d from, cv::Point2d to, double dark_first, double dark_last) {
    TracedStrand out;
    const double length = cv::norm(to - from);
    const int steps = static_cast<int>(length / 0.25);
    for (int i = 0; i <= steps; ++i) out.path_mm.push_back(from + (to - from) * (static_cast<double>(i) / steps));
    out.length_mm = length;
    out.share_of_usual = 1;
    out.ahead_dark[0] = dark_first, out.ahead_dark[1] = dark_last;
    out.touch_mm[0] = out.touch_mm[1] = touch_far_mm;
    return out;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(torn)

BOOST_AUTO_TEST_CASE(an_end_on_bare_paper_is_an_end) {
    const auto chance = torn_chances({straight({0, 0}, {100, 0}, 0, 0.1)});
    BOOST_TEST(chance[0][0] == 0);
    BOOST_TEST(chance[0][1] == 0);
}

BOOST_AUTO_TEST_CASE(two_dark_ends_that_face_each_other_are_torn) {
    const auto chance = torn_chances({straight({0, 0}, {60, 0}, 0, 1), straight({63, 0.3}, {120, 0.3}, 1, 0)});
    BOOST_TEST(chance[0][1] > 0.5);
    BOOST_TEST(chance[1][0] > 0.5);
    BOOST_TEST(chance[0][0] == 0);
    // Not where the other one turns its end away, or lies aside.
    const auto away = torn_chances({straight({0, 0}, {60, 0}, 0, 1), straight({120, 0.3}, {63, 0.3}, 1, 0)});
    BOOST_TEST(away[0][1] < chance[0][1]);
    const auto aside = torn_chances({straight({0, 0}, {60, 0}, 0, 1), straight({63, 30}, {120, 30}, 1, 0)});
    BOOST_TEST(aside[0][1] < chance[0][1]);
}

BOOST_AUTO_TEST_CASE(an_end_that_runs_along_another_strand_is_torn_sooner_than_one_that_meets_it_squarely) {
    const auto meets = [](cv::Point2d from) {
        auto one = straight(from, {50, 0}, 0, 1);
        one.touch_mm[1] = 0;
        return torn_chances({one, straight({0, 0.01}, {100, 0.01}, 0, 0)})[0][1];
    };
    BOOST_TEST(meets({10, 3}) > meets({50, 40}) + 0.2);
    BOOST_TEST(meets({50, 40}) < 0.5);
}

BOOST_AUTO_TEST_CASE(without_strands_there_are_no_chances) {
    BOOST_TEST(torn_chances({}).empty());
}

BOOST_AUTO_TEST_SUITE_END()
