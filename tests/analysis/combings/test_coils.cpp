// A coil whose turns lie in each other is followed from end to end; wide curls, shadows and what is no coil are not.
// Pictures are drawn here from their own formula, noise and all.
#include "combings/coils.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "combings/coil_track.h"
#include "on_sheet.h"

using namespace kempt;
using namespace kempt::combings;

namespace {

constexpr int side_px = 900;
constexpr double px_per_mm = 11;

struct Coil {
    double radius_px = 22, pitch_px = 26;
    double turns = 12;
    double tightens = 0, bends = 0;  // shares: of the radius by the end; radians of the axis by the end
    double lower_px = 0;             // where it begins
};

// A point each half pixel or closer.
std::vector<cv::Point2f> path_of(const Coil& coil) {
    std::vector<cv::Point2f> out;
    cv::Point2d axis(200, 450 + coil.lower_px);
    const int steps = static_cast<int>(coil.turns * 400);
    for (int k = 0; k <= steps; ++k) {
        const double t = k / 400.0, share = t / coil.turns, radius = coil.radius_px * (1 - coil.tightens * share),
                     heading = coil.bends * share;
        const cv::Point2d ahead(std::cos(heading), std::sin(heading)), side(-ahead.y, ahead.x);
        out.emplace_back(axis + ahead * (radius * std::cos(2 * CV_PI * t)) + side * (radius * std::sin(2 * CV_PI * t)));
        axis += ahead * (coil.pitch_px / 400);
    }
    return out;
}

double length(const std::vector<cv::Point2f>& path) {
    double out = 0;
    for (size_t i = 1; i < path.size(); ++i) out += cv::norm(path[i] - path[i - 1]);
    return out;
}

// Paper of code 200 with a noise of 3 codes, lines of SD 1 px and 60 codes on it.
Photo photo_of(const std::vector<std::vector<cv::Point2f>>& paths) {
    cv::Mat1f paper(side_px, side_px), ink(side_px, side_px, 0.f);
    cv::RNG rng(7);
    rng.fill(paper, cv::RNG::NORMAL, 200, 3);
    for (const auto& path : paths)
        for (const cv::Point2f& p : path)
            for (int y = static_cast<int>(p.y) - 5; y <= static_cast<int>(p.y) + 5; ++y)
                for (int x = static_cast<int>(p.x) - 5; x <= static_cast<int>(p.x) + 5; ++x) {
                    const double off =
                        std::pow(x - static_cast<double>(p.x), 2) + std::pow(y - static_cast<double>(p.y), 2);
                    ink(y, x) = std::max(ink(y, x), static_cast<float>(60 * std::exp(-0.5 * off)));
                }
    paper -= ink;
    return photo_of_grey(paper);
}

card::Calibration middle_of_sheet() {
    return part_of_sheet(px_per_mm, {45, 80});
}

struct Seen {
    Photo photo;
    Field field{middle_of_sheet(), {}, 2};
    Darkness darkness;
    explicit Seen(const std::vector<std::vector<cv::Point2f>>& paths)
        : photo(photo_of(paths)), darkness(photo, field) {}
};

// In the middle of the coil, as its formula has it.
CoilState state_of(const Coil& coil) {
    const double t = std::floor(coil.turns / 2), share = t / coil.turns, heading = coil.bends * share;
    CoilState out;
    out.at = path_of(coil)[static_cast<size_t>(t * 400)];
    out.radius_px = coil.radius_px * (1 - coil.tightens * share);
    out.phase = heading + CV_PI / 2;
    out.advance_px = cv::Point2d(std::cos(heading), std::sin(heading)) * (coil.pitch_px / (2 * CV_PI));
    return out;
}

double farthest(const std::vector<cv::Point2f>& from, const std::vector<cv::Point2f>& to) {
    double most = 0;
    for (const cv::Point2f& p : from) {
        double least = 1e9;
        for (const cv::Point2f& q : to) least = std::min(least, cv::norm(p - q));
        most = std::max(most, least);
    }
    return most;
}

const Progress nobody;

// Points a pixel apart, from one place of a path to another.
Chain chain_of(const std::vector<cv::Point2f>& path, double from, double to, const Seen& seen, const Bends& usual) {
    Chain out;
    const auto n = static_cast<double>(path.size() - 1);
    double along = 1;
    for (auto i = static_cast<size_t>(from * n); i <= static_cast<size_t>(to * n); ++i) {
        if (i > 0) along += cv::norm(path[i] - path[i - 1]);
        if (along < 1) continue;
        along -= 1;
        out.at.push_back(path[i]);
    }
    out.strength.assign(out.at.size(), 0.1f);
    auto inward = out.at;
    for (LineEnd& end : out.end) {
        end = end_of(inward, {}, usual, seen.darkness);
        std::reverse(inward.begin(), inward.end());
    }
    return out;
}

Chain strung(Chain a, const Chain& b) {
    a.at.insert(a.at.end(), b.at.begin(), b.at.end());
    a.strength.insert(a.strength.end(), b.strength.begin(), b.strength.end());
    a.end[1] = b.end[1];
    a.doubts = 1;
    return a;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(coils)

BOOST_AUTO_TEST_CASE(turns_that_lie_in_each_other_are_followed_from_end_to_end) {
    const Coil kinds[] = {{22, 40, 12, 0, 0}, {22, 22, 14, 0, 0.6}, {30, 30, 10, 0.4, -0.8}, {18, 20, 14, -0.5, 0}};
    for (const Coil& coil : kinds)
        BOOST_TEST_CONTEXT("radius " << coil.radius_px << " px, a turn each " << coil.pitch_px << " px") {
            const auto path = path_of(coil);
            const Seen seen({path});
            Work work(nobody, 100'000'000);
            const CoilTrack track = track_coil(state_of(coil), 1, 2 * length(path), seen.darkness, work);
            BOOST_TEST(track.ended[0]);
            BOOST_TEST(track.ended[1]);
            BOOST_TEST(length(track.at) == length(path), boost::test_tools::tolerance(0.02));
            BOOST_TEST(farthest(path, track.at) < 8);  // no turn left out
            BOOST_TEST(track.rode_px < 0.05 * length(path));
        }
}

BOOST_AUTO_TEST_CASE(travelled_the_other_way_it_is_the_same_coil) {
    CoilState on = state_of({}), back = on.back();
    const cv::Point2d v = on.velocity(), w = back.velocity();
    BOOST_TEST(cv::norm(v + w) < 1e-9);
    for (int k = 0; k < 20; ++k) step_on(on);
    CoilState home = on.back();
    for (int k = 0; k < 20; ++k) step_on(home);
    BOOST_TEST(cv::norm(home.at - back.at) < 0.3);  // of the 20 px, steps being a pixel only about
}

BOOST_AUTO_TEST_CASE(a_strand_in_wrong_pieces_becomes_one_again) {
    const Coil coil{22, 30, 12, 0, 0.3};
    const auto path = path_of(coil);
    const Seen seen({path});
    const Bends usual{static_cast<float>(1 / coil.radius_px), 2e-4f};
    // At one of its crossings the way was taken past three turns, which are left as a piece of their own.
    const std::vector<Chain> pieces = {
        strung(chain_of(path, 0, 0.39, seen, usual), chain_of(path, 0.66, 1, seen, usual)),
        chain_of(path, 0.4, 0.65, seen, usual)};
    std::vector<Chain> shadows;
    Work work(nobody, 100'000'000);
    const auto strands = retraced_coils(pieces, true, usual, px_per_mm, seen.darkness, shadows, work);
    BOOST_REQUIRE_EQUAL(strands.size(), 1u);
    BOOST_TEST(length(strands[0].at) == length(path), boost::test_tools::tolerance(0.02));
    BOOST_TEST(strands[0].doubts > 0);  // she is told that it was guessed at
    BOOST_TEST(shadows.empty());
}

BOOST_AUTO_TEST_CASE(among_strands_that_cross_it_the_pieces_of_one_become_one_and_the_other_stays) {
    const Coil coil{22, 34, 12, 0, 0}, other{22, 34, 12, 0, -0.9, 90};
    const auto path = path_of(coil), across = path_of(other);
    const Seen seen({path, across});
    const Bends usual{static_cast<float>(1 / coil.radius_px), 2e-4f};
    const std::vector<Chain> pieces = {
        chain_of(across, 0, 1, seen, usual),
        strung(chain_of(path, 0, 0.39, seen, usual), chain_of(path, 0.66, 1, seen, usual)),
        chain_of(path, 0.4, 0.65, seen, usual)};
    std::vector<Chain> shadows;
    Work work(nobody, 100'000'000);
    BOOST_TEST(retraced_coils(pieces, true, usual, px_per_mm, seen.darkness, shadows, work).size() == 3u);
    const auto strands = retraced_coils(pieces, false, usual, px_per_mm, seen.darkness, shadows, work);
    BOOST_REQUIRE_EQUAL(strands.size(), 2u);
    BOOST_TEST(length(strands[0].at) == length(path), boost::test_tools::tolerance(0.02));
    BOOST_TEST((strands[1].at == pieces[0].at));
}

BOOST_AUTO_TEST_CASE(lines_beside_the_strand_are_its_shadow) {
    const Coil coil{30, 60, 8, 0, 0};
    const auto path = path_of(coil);
    std::vector<cv::Point2f> shadow;
    for (size_t i = path.size() / 2; i < path.size() / 2 + 350; ++i)
        shadow.push_back(path[i] + cv::Point2f(3.5f, 3.5f));
    const Seen seen({path});
    const Bends usual{static_cast<float>(1 / coil.radius_px), 2e-4f};
    std::vector<Chain> pieces = {chain_of(path, 0, 1, seen, usual), chain_of(shadow, 0, 1, seen, usual)};
    pieces[0].doubts = 1;
    std::vector<Chain> shadows;
    Work work(nobody, 100'000'000);
    const auto strands = retraced_coils(pieces, true, usual, px_per_mm, seen.darkness, shadows, work);
    BOOST_TEST(strands.size() == 1u);
    BOOST_TEST(shadows.size() == 1u);
}

BOOST_AUTO_TEST_CASE(sure_strands_and_wide_curls_stay_as_they_were_traced) {
    const Coil coil{22, 40, 10, 0, 0};
    const auto path = path_of(coil);
    const Seen seen({path});
    std::vector<Chain> shadows;
    Work work(nobody, 100'000'000);
    const Bends tight{static_cast<float>(1 / coil.radius_px), 2e-4f}, wide{1.f / 150, 2e-4f};
    const std::vector<Chain> sure = {chain_of(path, 0, 1, seen, tight)};
    std::vector<Chain> doubted = sure;
    doubted[0].doubts = 3;
    for (const auto& [lines, usual] : {std::pair{sure, tight}, std::pair{doubted, wide}}) {
        const auto strands = retraced_coils(lines, true, usual, px_per_mm, seen.darkness, shadows, work);
        BOOST_REQUIRE_EQUAL(strands.size(), 1u);
        BOOST_TEST((strands[0].at == lines[0].at));
        BOOST_TEST(strands[0].doubts == lines[0].doubts);
    }
}

BOOST_AUTO_TEST_SUITE_END()
