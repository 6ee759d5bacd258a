// Strands that were followed from both sides, or traced twice, are one; what only crosses or runs beside is not.
#include "combings/overlaps.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "combings/smooth.h"

using namespace kempt;
using namespace kempt::combings;

namespace {

const cv::Size photo(900, 700);
constexpr OverlapOptions options{4, 11, 400};

// Points a pixel apart from x0 to x1 along y = y0 + 30 sin(x / 90).
Chain along(int x0, int x1, double y0) {
    Chain c;
    for (int x = x0; x != x1; x += x1 > x0 ? 1 : -1)
        c.at.emplace_back(static_cast<float>(x), static_cast<float>(y0 + 30 * std::sin(x / 90.0)));
    c.strength.assign(c.at.size(), 1.f);
    c.end[0].at = c.at.front(), c.end[1].at = c.at.back();
    return c;
}

struct Joined {
    std::vector<Chain> chains, covered;
};
Joined join(std::vector<Chain> chains) {
    const Progress nobody;
    Work work(nobody, 1'000'000);
    Joined out;
    out.chains = join_overlaps(std::move(chains), photo, options, out.covered, work);
    return out;
}

}  // namespace

BOOST_AUTO_TEST_CASE(two_that_end_on_each_other_are_one_strand_whichever_way_they_were_traced) {
    for (const bool turned : {false, true})
        for (const double apart : {0.0, 2.0, 8.0}) {
            const Joined found =
                join({along(50, 420, 300), turned ? along(800, 360, 300 + apart) : along(360, 800, 300 + apart)});
            BOOST_REQUIRE(found.chains.size() == 1);
            BOOST_TEST(found.covered.empty());
            const auto &at = found.chains[0].at, &whole = along(50, 800, 300).at;
            BOOST_TEST(std::min(at.front().x, at.back().x) == 50);
            BOOST_TEST(std::max(at.front().x, at.back().x) > 795);
            const auto length = [](const std::vector<cv::Point2f>& path) { return arc_length(smoothed(path, 5, 4)); };
            BOOST_TEST(length(at) == length(whole), boost::test_tools::tolerance(0.012));
            BOOST_TEST(found.chains[0].strength.size() == at.size());
        }
}

BOOST_AUTO_TEST_CASE(a_part_that_lies_beside_a_longer_one_all_its_way_is_its_double) {
    const Joined found = join({along(50, 800, 300), along(300, 500, 306)});
    BOOST_REQUIRE(found.chains.size() == 1);
    BOOST_TEST(found.chains[0].at.size() == 750);
    BOOST_REQUIRE(found.covered.size() == 1);
    BOOST_TEST(found.covered[0].at.size() == 200);
}

BOOST_AUTO_TEST_CASE(strands_that_cross_or_lie_apart_stay_two) {
    BOOST_TEST(join({along(50, 800, 300), along(50, 800, 330)}).chains.size() == 2);
    Chain across;
    for (int y = 100; y < 600; ++y) across.at.emplace_back(400.f, static_cast<float>(y));
    across.strength.assign(across.at.size(), 1.f);
    across.end[0].at = across.at.front(), across.end[1].at = across.at.back();
    BOOST_TEST(join({along(50, 800, 300), across}).chains.size() == 2);
    // One that ends on the middle of another, which goes on both ways.
    Chain half = across;
    half.at.resize(200), half.strength.resize(200), half.end[1].at = half.at.back();
    BOOST_TEST(join({along(50, 800, 300), half}).chains.size() == 2);
    // Two that part from one line: they lie together for a while, and each goes on past the other's way.
    Chain parting = along(50, 400, 300);
    for (int x = 400; x < 700; ++x)
        parting.at.emplace_back(static_cast<float>(x),
                                parting.at[static_cast<size_t>(349)].y + 0.6f * static_cast<float>(x - 400));
    parting.strength.assign(parting.at.size(), 1.f), parting.end[1].at = parting.at.back();
    BOOST_TEST(join({along(50, 800, 300), parting}).chains.size() == 2);
}

BOOST_AUTO_TEST_CASE(a_thinned_path_keeps_its_ends_and_lies_within_its_miss) {
    std::vector<cv::Point2d> path;
    for (const cv::Point2f& p : along(50, 800, 300).at) path.emplace_back(p);
    const std::vector<cv::Point2d> few = thinned(path, 0.5);
    BOOST_TEST(few.size() < path.size() / 8);
    BOOST_TEST((few.front() == path.front() && few.back() == path.back()));
    for (const cv::Point2d& p : path) {
        double away = 1e9;
        for (size_t i = 1; i < few.size(); ++i) {
            const cv::Point2d d = few[i] - few[i - 1], w = p - few[i - 1];
            away = std::min(away, cv::norm(w - std::clamp(w.dot(d) / d.dot(d), 0.0, 1.0) * d));
        }
        BOOST_TEST(away <= 0.5);
    }
    BOOST_TEST(thinned({{1, 2}, {3, 4}}, 1).size() == 2);
}
