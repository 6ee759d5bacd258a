// Which traced lines make up a strand, from lines that are made up.
#include <boost/test/unit_test.hpp>

#include <algorithm>

#include "paths.h"
#include "pattern/pieces.h"

using namespace kempt;
using pattern::Followed;
using tests::Path;

namespace {

// A line with the scatter that traced ones have.
combings::TracedStrand line(const Path& fine, unsigned seed) {
    combings::TracedStrand out;
    out.path_mm = tests::noisy(tests::even(fine, 0.25), 0.008, seed);
    out.path_px = out.path_mm;
    out.length_mm = tests::length_of(fine);
    return out;
}

// A coil of 8 mm that moves on 4 mm a turn, from one turn to another.
Path coil(double from_turn, double to_turn) {
    const double turn = 2 * CV_PI;
    return tests::drawn([=](double a) { return cv::Point2d(4 * std::cos(a) + 4 * a / turn, 4 * std::sin(a)); },
                        from_turn * turn, to_turn * turn);
}

combings::Traced traced(std::vector<combings::TracedStrand> lines) {
    combings::Traced out;
    std::sort(lines.begin(), lines.end(), [](const auto& a, const auto& b) { return a.length_mm > b.length_mm; });
    out.strands = std::move(lines);
    out.point_sd_mm = 0.008;
    out.px_per_mm = 1;
    return out;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(pieces)

BOOST_AUTO_TEST_CASE(a_line_alone_is_a_whole_strand) {
    const auto wholes = pattern::wholes_of(traced({line(coil(0, 5), 1)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 1u);
    BOOST_TEST((wholes[0].followed == Followed::whole));
    BOOST_TEST(wholes[0].arc_mm == tests::length_of(coil(0, 5)), boost::test_tools::tolerance(0.005));
}

BOOST_AUTO_TEST_CASE(a_torn_coil_keeps_its_diameter_and_has_no_sure_length) {
    const auto whole = pattern::wholes_of(traced({line(coil(0, 5), 1)}));
    const auto torn = pattern::wholes_of(traced({line(coil(0, 2.4), 1), line(coil(2.45, 5), 2)}));
    BOOST_REQUIRE_EQUAL(torn.size(), 1u);
    BOOST_TEST((torn[0].followed == Followed::unsure));
    BOOST_TEST(torn[0].pieces.size() == 2u);
    BOOST_TEST(torn[0].lines.size() == 2u);
    BOOST_TEST(torn[0].curve_diameter_mm() == whole[0].curve_diameter_mm(), boost::test_tools::tolerance(0.03));
    BOOST_TEST(torn[0].arc_mm == whole[0].arc_mm, boost::test_tools::tolerance(0.03));
}

BOOST_AUTO_TEST_CASE(a_strand_with_doubts_at_its_own_crossings_is_as_long_whichever_way_it_runs) {
    combings::TracedStrand own = line(coil(0, 5), 1);
    own.doubts = 1;
    own.doubts_px = {own.path_px[own.path_px.size() / 2]};
    const auto wholes = pattern::wholes_of(traced({own}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 1u);
    BOOST_TEST((wholes[0].followed == Followed::nearly));
    BOOST_TEST(wholes[0].guessed);
    BOOST_TEST(wholes[0].arc_mm == tests::length_of(coil(0, 5)), boost::test_tools::tolerance(0.005));
}

BOOST_AUTO_TEST_CASE(where_another_strand_passes_a_doubt_may_mix_the_two) {
    combings::TracedStrand own = line(coil(0, 5), 1);
    own.doubts = 1;
    own.doubts_px = {own.path_px[own.path_px.size() * 3 / 5]};
    const cv::Point2d at = own.doubts_px[0];
    const Path across = tests::drawn([=](double x) { return at + cv::Point2d(0.003 * x * x, x); }, -50, 50);
    const auto wholes = pattern::wholes_of(traced({own, line(across, 2)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 2u);
    for (const auto& whole : wholes) {
        const bool coiled = whole.wave_ratio > 1.5;
        BOOST_TEST((whole.followed == (coiled ? Followed::unsure : Followed::whole)));
    }
}

BOOST_AUTO_TEST_CASE(a_strand_whose_end_is_likely_torn_off_has_no_sure_length) {
    combings::TracedStrand torn = line(coil(0, 5), 1);
    torn.ahead_dark[1] = 1;
    const auto wholes = pattern::wholes_of(traced({torn, line(coil(20, 25), 2)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 2u);
    BOOST_TEST((wholes[0].followed == Followed::unsure) != (wholes[1].followed == Followed::unsure));
    for (const auto& whole : wholes) BOOST_TEST(!whole.pieces.empty());
}

BOOST_AUTO_TEST_CASE(strands_that_cross_stay_two) {
    const Path flat = tests::drawn([](double x) { return cv::Point2d(x, 0.002 * x * x); }, -40, 40);
    const Path steep = tests::drawn([](double x) { return cv::Point2d(5 + 0.003 * x * x, x); }, -40, 40);
    const auto wholes = pattern::wholes_of(traced({line(flat, 1), line(steep, 2)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 2u);
    for (const auto& whole : wholes) BOOST_TEST((whole.followed == Followed::whole));
}

// Straight, and rippled by the paper's grain: 0.03 mm, 3 mm long.
Path rippled(double length_mm) {
    return tests::drawn([](double x) { return cv::Point2d(x, 60 + 0.1 * x + 0.03 * std::sin(2 * CV_PI * x / 3)); }, 0,
                        length_mm);
}

BOOST_AUTO_TEST_CASE(a_crease_is_no_strand) {
    combings::TracedStrand to_the_rim = line(rippled(100), 2);
    to_the_rim.cut_off = true;
    for (const auto& crease : {to_the_rim, line(rippled(40), 2)}) {
        const auto wholes = pattern::wholes_of(traced({line(coil(0, 5), 1), crease}));
        BOOST_REQUIRE_EQUAL(wholes.size(), 1u);
        BOOST_TEST((wholes[0].followed == Followed::whole));
    }
}

BOOST_AUTO_TEST_CASE(a_rippled_line_as_long_as_the_strands_and_inside_the_field_may_be_a_faint_one) {
    const auto wholes = pattern::wholes_of(traced({line(coil(0, 5), 1), line(rippled(100), 2)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 2u);
    const auto& faint = wholes[0].pieces.empty() ? wholes[0] : wholes[1];
    BOOST_TEST((faint.followed == Followed::unsure));
    BOOST_TEST(faint.pieces.empty());
    BOOST_TEST(faint.arc_mm == 100, boost::test_tools::tolerance(0.01));
}

BOOST_AUTO_TEST_CASE(a_strand_pulled_straight_is_no_crease) {
    const Path taut = tests::drawn([](double x) { return cv::Point2d(x, 0.00005 * x * x); }, 0, 150);
    const auto wholes = pattern::wholes_of(traced({line(taut, 3)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 1u);
    BOOST_TEST((wholes[0].followed == Followed::whole));
    BOOST_TEST(wholes[0].arc_mm == 150.0, boost::test_tools::tolerance(0.002));
}

BOOST_AUTO_TEST_CASE(a_shadow_beside_a_strand_adds_nothing_to_it) {
    const Path hair = tests::wave(3, 60, 2);
    Path shadow;
    for (std::size_t i = 0; i < hair.size() / 2; ++i) shadow.push_back(hair[i] + cv::Point2d(0.3, 0.9));
    const auto wholes = pattern::wholes_of(traced({line(hair, 1), line(shadow, 2)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 1u);
    BOOST_TEST((wholes[0].followed == Followed::nearly));
    BOOST_TEST(wholes[0].arc_mm == tests::length_of(hair), boost::test_tools::tolerance(0.005));
}

BOOST_AUTO_TEST_CASE(along_another_line_a_wide_curl_goes_its_own_way_and_a_tight_one_is_gone_through_twice) {
    combings::TracedStrand wide = line(tests::wave(3, 60, 2), 1), tight = line(coil(0, 5), 2);
    wide.shared_mm = tight.shared_mm = 10;
    const auto alone = [](const combings::TracedStrand& one) { return pattern::wholes_of(traced({one})).at(0); };
    BOOST_TEST((alone(wide).followed == Followed::nearly));
    BOOST_TEST((alone(tight).followed == Followed::unsure));
}

BOOST_AUTO_TEST_CASE(a_kink_where_the_trace_went_astray_does_not_bend_the_strand) {
    const Path hair = tests::wave(3, 60, 2);
    Path astray = hair;  // hooks over to its shadow and back for its last 6 mm
    const cv::Point2d end = hair.back();
    for (int i = 0; i <= 2000; ++i) {
        const double a = CV_PI * i / 2000;
        astray.push_back(end + cv::Point2d(0.7 * std::sin(a), 0.7 - 0.7 * std::cos(a)));
    }
    for (int i = 0; i <= 5000; ++i) astray.push_back(end + cv::Point2d(-0.001 * i, 1.4));
    const auto right = pattern::wholes_of(traced({line(hair, 1)})),
               wrong = pattern::wholes_of(traced({line(astray, 1)}));
    BOOST_REQUIRE_EQUAL(wrong.size(), 1u);
    BOOST_TEST((wrong[0].followed == Followed::nearly));
    BOOST_TEST(wrong[0].curve_diameter_mm() == right[0].curve_diameter_mm(), boost::test_tools::tolerance(0.1));
}

BOOST_AUTO_TEST_CASE(a_trace_that_hops_to_the_shadow_and_back_tells_nothing_of_the_curl) {
    const Path wavering = tests::drawn(
        [](double x) {
            return cv::Point2d(x, 60 + 2 * std::sin(2 * CV_PI * x / 60) + 0.15 * std::sin(2 * CV_PI * x / 6));
        },
        0, 120);
    const auto wholes = pattern::wholes_of(traced({line(coil(0, 5), 1), line(wavering, 2)}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 2u);
    for (const auto& whole : wholes) {
        BOOST_TEST(whole.pieces.empty() == (whole.followed == Followed::nearly));
        BOOST_TEST(whole.wave_ratio > 1.0);
    }
    BOOST_TEST(wholes[0].pieces.empty() != wholes[1].pieces.empty());
}

BOOST_AUTO_TEST_CASE(a_strand_that_runs_under_the_card_has_no_sure_length) {
    combings::TracedStrand cut = line(coil(0, 5), 1);
    cut.cut_off = true;
    const auto wholes = pattern::wholes_of(traced({cut}));
    BOOST_REQUIRE_EQUAL(wholes.size(), 1u);
    BOOST_TEST((wholes[0].followed == Followed::unsure));
}

BOOST_AUTO_TEST_SUITE_END()
