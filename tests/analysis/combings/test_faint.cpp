// A strand far fainter than the others is marked; bare paper and what lies beside a strand is not.
#include "combings/faint.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "combings/field.h"
#include "on_sheet.h"

using namespace kempt;
using namespace kempt::combings;

namespace {

constexpr int side_px = 700;

// Paper only: lines are given, the picture just tells that nothing dark lies between them.
Photo paper() {
    return photo_of_codes(cv::Mat(side_px, side_px, CV_8UC3, cv::Scalar::all(220)));
}

card::Calibration middle_of_sheet() {
    return part_of_sheet(11, {60, 90});
}

Line piece(cv::Point2f from, double degrees, int points, float sign, float strength) {
    Line line;
    const cv::Point2f d(static_cast<float>(std::cos(degrees * CV_PI / 180)),
                        static_cast<float>(std::sin(degrees * CV_PI / 180)));
    for (int i = 0; i < points; ++i) line.at.push_back(from + d * static_cast<float>(i));
    line.strength.assign(line.at.size(), strength);
    line.mass = strength, line.sign = sign, line.noise = true;
    return line;
}

// Pieces of 20 px, 12 px apart, in one line: a strand that noise tore.
std::vector<Line> torn_strand(float y) {
    std::vector<Line> lines;
    for (int i = 0; i < 8; ++i) lines.push_back(piece({60.f + 32.f * static_cast<float>(i), y}, 0, 20, 1, 0.01f));
    return lines;
}

std::vector<Line> chance(float sign, uint64_t seed) {
    std::vector<Line> lines;
    cv::RNG rng(seed);
    for (int i = 0; i < 60; ++i)
        lines.push_back(
            piece({rng.uniform(30.f, 660.f), rng.uniform(30.f, 660.f)}, rng.uniform(0.0, 360.0), 12, sign, 0.01f));
    return lines;
}

std::vector<std::vector<cv::Point2f>> ways(const std::vector<Line>& lines, const std::vector<Chain>& strands) {
    static const Photo photo = paper();
    const Field field(middle_of_sheet(), {}, 2);
    const Darkness darkness(photo, field);
    const Progress nobody;
    Work work(nobody, 100'000'000);
    return faint_ways(lines, strands, darkness, 88, 18, work);
}

}  // namespace

BOOST_AUTO_TEST_CASE(pieces_in_line_are_marked_as_one_way_among_pieces_of_chance) {
    std::vector<Line> lines = torn_strand(350);
    for (const float sign : {1.f, -1.f})
        for (const Line& line : chance(sign, sign > 0 ? 3 : 4)) lines.push_back(line);
    const auto found = ways(lines, {});
    BOOST_REQUIRE(found.size() == 1);
    BOOST_TEST(found[0].size() > 200);
    for (const cv::Point2f& p : found[0]) BOOST_TEST(std::abs(p.y - 350) < 3);
}

BOOST_AUTO_TEST_CASE(chance_alone_and_bright_pieces_mark_nothing) {
    std::vector<Line> lines = chance(1, 5);
    for (const Line& line : chance(-1, 5)) lines.push_back(line);
    BOOST_TEST(ways(lines, {}).empty());
    // Where bright pieces lie in line as well, dark ones in line mean no more than they do.
    lines = torn_strand(350);
    for (Line line : torn_strand(500)) line.sign = -1, lines.push_back(line);
    BOOST_TEST(ways(lines, {}).empty());
}

BOOST_AUTO_TEST_CASE(what_lies_beside_a_strand_is_its_shadow) {
    Chain strand;
    for (int x = 40; x < 400; ++x) strand.at.emplace_back(static_cast<float>(x), 340.f);
    strand.strength.assign(strand.at.size(), 0.1f);
    BOOST_TEST(ways(torn_strand(350), {strand}).empty());
    BOOST_TEST(ways(torn_strand(380), {strand}).size() == 1);
}
