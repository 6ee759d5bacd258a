#include "combings/faint.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "core/rank.h"

namespace kempt::combings {
namespace {

constexpr size_t shortest = 8;  // px: below it a line has no direction
// Nearer than the usual joins: only what lies in line is strung together, across gaps as long as the pieces.
constexpr JoinOptions in_line{
    .reach_px = 30, .long_reach_px = 60, .free_cost = 3, .torn_cost = 3, .whole_px = 8, .blank_cost = 0.03};
constexpr double above_chance = 1.15;  // times the best of the bright ways

double score_of(const Chain& c) {
    std::vector<float> own;
    for (const float s : c.strength)
        if (s > 0) own.push_back(s);
    return at_rank(own, 0.5) * std::sqrt(static_cast<double>(own.size()));
}

}  // namespace

std::vector<std::vector<cv::Point2f>> faint_ways(const std::vector<Line>& lines, const std::vector<Chain>& chains,
                                                 const Darkness& darkness, double least_px, double beside_px,
                                                 Work& work) {
    // Cells of 4 px that a strand passes near.
    constexpr int cell = 4;
    cv::Mat1b taken(darkness.size().height / cell + 1, darkness.size().width / cell + 1, static_cast<uchar>(0));
    for (const Chain& c : chains)
        for (size_t i = 0; i < c.at.size(); i += 3)
            cv::circle(taken, cv::Point(c.at[i] / cell), static_cast<int>(std::lround(beside_px / cell)), 255,
                       cv::FILLED);
    std::vector<Line> dark, bright;
    for (const Line& line : lines) {
        if (line.at.size() < shortest) continue;
        size_t beside = 0;
        for (const cv::Point2f& p : line.at) {
            const cv::Point q(p / cell);
            beside += q.x >= 0 && q.y >= 0 && q.x < taken.cols && q.y < taken.rows && taken(q) > 0;
        }
        if (2 * beside < line.at.size()) (line.sign > 0 ? dark : bright).push_back(line);
    }
    const auto strung = [&](const std::vector<Line>& of) {
        const std::vector<LineEnd> ends = ends_of(of, darkness);
        return chains_of(of, ends, join_ends(ends, darkness, in_line, work));
    };
    double chance = 0;
    for (const Chain& c : strung(bright)) chance = std::max(chance, score_of(c));
    std::vector<std::vector<cv::Point2f>> out;
    if (!work.ok()) return out;
    for (const Chain& c : strung(dark))
        if (static_cast<double>(c.at.size()) >= least_px && score_of(c) > above_chance * chance) out.push_back(c.at);
    return out;
}

}  // namespace kempt::combings
