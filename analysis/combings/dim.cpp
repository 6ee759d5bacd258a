#include "combings/dim.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "combings/lines.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

// All sizes in pixels of the halved picture: what is this dim loses little by it, and there is a quarter of it to sum.
constexpr int angles = 16, along = 31;      // derived: the ends of a sum half a step aside are 1.5 px off its line
constexpr float across_sd = 0.9f;           // of a strand: under 0.1 mm of hair, and the lens (4 to 9 px/mm)
constexpr float least = 2.2f, sure = 3.6f;  // SDs of a sum on paper: of a point of a line, and of one where it starts
// What must be reached the photo itself tells: noise and compression make bright lines as clear as dark ones. 1.65
// times what 95 % of them stay below: in 76 rendered photos (of seeds 31000-31360, most of grey, blonde and
// salt-and-pepper hair) 1460 mm of ways on strands passed it and 380 mm on none. Folds and strands that mirror the
// light are too few to move that quantile.
constexpr double usual_bright = 0.95, above_bright = 1.65, least_score = 9;
// A fold of the paper is a dark line beside a bright one, as clear as itself.
constexpr double fold_score = 9;
constexpr int fold_px = 20, core_px = 3;
constexpr double most_beside = 0.5;  // of a way along a strand or a fold
// The light of the paper is taken from cells of 32 px, of which those at the rim see what lies beyond: two of them at
// 10 px/mm or more, less the margin (derived).
constexpr double rim_mm = 4.5;
constexpr int rim_px = 7;
constexpr uchar nothing = 255;

float median_size(std::vector<float>& v) {
    return at_rank(v, 0.5) / 0.6745f;  // SD, of normal values
}

cv::Mat1f halved(const Darkness& darkness, cv::Rect box) {
    cv::Mat1f out(box.height / 2, box.width / 2);
    cv::parallel_for_(cv::Range(0, out.rows), [&](const cv::Range& range) {
        std::vector<float> a(static_cast<size_t>(box.width)), b(a.size());
        for (int y = range.start; y < range.end; ++y) {
            darkness.row(box.y + 2 * y, box.x, box.x + box.width, a.data());
            darkness.row(box.y + 2 * y + 1, box.x, box.x + box.width, b.data());
            for (int x = 0; x < out.cols; ++x) {
                const size_t k = 2 * static_cast<size_t>(x);
                out(y, x) = 0.25f * (a[k] + a[k + 1] + b[k] + b[k + 1]);
            }
        }
    });
    return out;
}

cv::Point2f half_from(cv::Point2f p, cv::Rect box) {
    return (p - cv::Point2f(box.tl()) - cv::Point2f(0.5f, 0.5f)) * 0.5f;
}

// Tiles inside the field.
cv::Mat1b looked_at(const Field& field, cv::Rect box, cv::Size size) {
    constexpr int tile = 8;
    cv::Mat1b out(size, static_cast<uchar>(0));
    for (int y = tile; y + 2 * tile < size.height; y += tile)
        for (int x = tile; x + 2 * tile < size.width; x += tile)
            if (field.inside_mm({box.x + 2.0 * x + tile, box.y + 2.0 * y + tile}) > rim_mm)
                out(cv::Rect(x, y, tile, tile)) = 1;
    return out;
}

// Less the paper's slow changes; cut off where a speck would outweigh a line; 0 where it is not looked at.
void flatten(cv::Mat1f& dark, const cv::Mat1b& seen) {
    std::vector<float> steps;
    for (int y = 3; y < dark.rows; y += 7)
        for (int x = 3; x < dark.cols; x += 5)
            if (seen(y, x)) steps.push_back(std::abs(dark(y, x) - dark(y, x - 2)));
    const float sd = median_size(steps) / std::sqrt(2.f);
    cv::Mat1f share, mean, weight;
    seen.convertTo(share, CV_32F);
    mean = dark.mul(share), weight = share;
    for (int k = 0; k < 3; ++k) {  // near a bell of SD 8.5: one box has an edge, which would look like a line
        cv::blur(mean, mean, {17, 17});
        cv::blur(weight, weight, {17, 17});
    }
    for (int y = 0; y < dark.rows; ++y)
        for (int x = 0; x < dark.cols; ++x)
            dark(y, x) =
                seen(y, x) ? std::clamp(dark(y, x) - mean(y, x) / std::max(1e-4f, weight(y, x)), -3 * sd, 3 * sd) : 0;
}

// Second derivative across a line of Gaussian width, of no sum.
cv::Mat1f across_kernel() {
    cv::Mat1f out(7, 1);
    for (int i = 0; i < 7; ++i) {
        const float v = static_cast<float>(i - 3) / across_sd;
        out(i, 0) = (1 - v * v) * std::exp(-0.5f * v * v);
    }
    out -= cv::sum(out)[0] / 7;
    return out;
}

struct Peak {
    cv::Point at;
    float z;  // SDs; below 0 a bright line
};

// Where the sums along one direction are highest across it.
std::vector<Peak> peaks_along(const cv::Mat1f& dark, const cv::Mat1b& allowed, double turn) {
    const double c = std::cos(turn), s = std::sin(turn), cx = dark.cols / 2.0, cy = dark.rows / 2.0;
    const cv::Size size(static_cast<int>(std::abs(dark.cols * c) + std::abs(dark.rows * s)) + 3,
                        static_cast<int>(std::abs(dark.cols * s) + std::abs(dark.rows * c)) + 3);
    const double tx = size.width / 2.0, ty = size.height / 2.0;
    cv::Mat1f turned, sums;
    cv::warpAffine(dark, turned, cv::Matx23d(c, s, tx - c * cx - s * cy, -s, c, ty + s * cx - c * cy), size,
                   cv::INTER_LINEAR, cv::BORDER_CONSTANT, 0);
    cv::blur(turned, sums, {along, 1});
    cv::sepFilter2D(sums, turned, CV_32F, cv::Mat1f::ones(1, 1), across_kernel());
    std::vector<float> sizes;
    for (int y = 5; y < turned.rows; y += 5)
        for (int x = 3; x < turned.cols; x += 7)
            if (turned(y, x) != 0) sizes.push_back(std::abs(turned(y, x)));
    const float sd = median_size(sizes), lowest = least * sd;
    std::vector<Peak> out;
    if (!(sd > 0)) return out;
    for (int y = 1; y + 1 < turned.rows; ++y) {
        const float *up = turned[y - 1], *row = turned[y], *down = turned[y + 1];
        for (int x = 0; x < turned.cols; ++x) {
            const float q = row[x];
            if (std::abs(q) < lowest || (q > 0 ? q < up[x] || q <= down[x] : q > up[x] || q >= down[x])) continue;
            const cv::Point at(cvRound(c * (x - tx) - s * (y - ty) + cx), cvRound(s * (x - tx) + c * (y - ty) + cy));
            if (at.x >= 0 && at.y >= 0 && at.x < dark.cols && at.y < dark.rows && allowed(at))
                out.push_back({at, q / sd});
        }
    }
    return out;
}

// The clearest line through each pixel, dark [0] and bright [1], strung together.
std::array<std::vector<Line>, 2> strung(const cv::Mat1f& dark, const cv::Mat1b& allowed, Work& work) {
    std::array<std::vector<Peak>, angles> peaks;
    cv::parallel_for_(cv::Range(0, angles), [&](const cv::Range& range) {
        for (int k = range.start; k < range.end && work.ok(); ++k)
            peaks[static_cast<size_t>(k)] = peaks_along(dark, allowed, CV_PI * k / angles);
    });
    std::array<std::vector<Line>, 2> out;
    for (int bright = 0; bright < 2 && work.go(); ++bright) {
        cv::Mat1f best(dark.size(), 0.f);
        cv::Mat1b angle(dark.size(), nothing);
        for (int k = 0; k < angles; ++k)
            for (const Peak& p : peaks[static_cast<size_t>(k)])
                if (const float z = bright ? -p.z : p.z; z > best(p.at))
                    best(p.at) = z, angle(p.at) = static_cast<uchar>(k);
        Ridges ridges;
        ridges.bounds = {0, 0, dark.cols, dark.rows};
        ridges.strip_rows = dark.rows;
        ridges.noise = 1;
        ridges.strips.resize(1);
        for (int y = 0; y < dark.rows; ++y)
            for (int x = 0; x < dark.cols; ++x)
                if (angle(y, x) != nothing) {
                    const double turn = CV_PI * angle(y, x) / angles;
                    ridges.strips[0].push_back({static_cast<float>(x), static_cast<float>(y),
                                                static_cast<float>(std::cos(turn)), static_cast<float>(std::sin(turn)),
                                                best(y, x), 1, 1, static_cast<uint16_t>(x), static_cast<uint16_t>(y)});
                }
        out[static_cast<size_t>(bright)] = string_lines(ridges, work, {sure, 10});
    }
    return out;
}

double length_of(const Way& way) {
    double out = 0;
    for (size_t i = 1; i < way.size(); ++i) out += cv::norm(way[i] - way[i - 1]);
    return out;
}

// What all the sums along a line say together: they overlap, so that there are as many as its length holds `along`.
double score_of(const Line& line) {
    double sum = 0;
    for (const float z : line.strength) sum += z;
    return sum / static_cast<double>(line.strength.size()) * std::sqrt(1 + length_of(line.at) / along);
}

double quantile_of_scores(const std::vector<Line>& lines) {
    std::vector<double> scores;
    for (const Line& line : lines) scores.push_back(score_of(line));
    return at_rank(scores, usual_bright);
}

int angle_of(cv::Point2f d) {
    const auto k = static_cast<int>(std::lround(std::atan2(d.y, d.x) / CV_PI * angles));
    return (k % angles + angles) % angles;
}

// The directions of what lies near each pixel.
void draw(const Way& way, int width, cv::Mat1b& into) {
    constexpr size_t step = 6;
    for (size_t i = 0; i + 1 < way.size(); i += step) {
        const cv::Point2f p = way[i], q = way[std::min(way.size() - 1, i + step)];
        cv::line(into, cv::Point(p), cv::Point(q), angle_of(q - p), width);
    }
}

// Share of a line that runs along what was drawn.
double share_along(const Way& line, const cv::Mat1b& drawn) {
    size_t n = 0;
    for (size_t i = 0; i < line.size(); ++i) {
        const uchar there = drawn(cv::Point(line[i]));
        if (there == nothing) continue;
        const int apart = std::abs(there - angle_of(line[std::min(line.size() - 1, i + 4)] - line[i > 4 ? i - 4 : 0]));
        n += std::min(apart, angles - apart) <= 2;
    }
    return static_cast<double>(n) / static_cast<double>(line.size());
}

}  // namespace

std::vector<Way> dim_ways(const Darkness& darkness, const Field& field, const std::vector<Way>& strands,
                          const std::vector<Way>& marked, const DimOptions& options, Work& work) {
    std::vector<Way> out;
    cv::Rect box = field.bounds(darkness.size());
    box.width &= ~1, box.height &= ~1;
    if (box.width < 8 * along || box.height < 8 * along) return out;
    cv::Mat1f dark = halved(darkness, box);
    cv::Mat1b seen = looked_at(field, box, dark.size()), allowed, shadows(dark.size(), nothing),
              folds(dark.size(), nothing);
    cv::erode(seen, allowed, cv::Mat1b::ones(2 * rim_px + 1, 2 * rim_px + 1));
    const auto hide = [&](const Way& way) {
        std::vector<cv::Point> at;
        for (const cv::Point2f& p : way) at.emplace_back(half_from(p, box));
        cv::polylines(seen, at, false, 0, std::max(1, static_cast<int>(std::lround(options.beside_px))));
    };
    for (const Way& way : marked) hide(way);
    for (const Way& way : strands) {
        hide(way);
        Way half;
        for (const cv::Point2f& p : way) half.push_back(half_from(p, box));
        draw(half, static_cast<int>(std::lround(options.shadow_px)), shadows);
    }
    flatten(dark, seen);
    const auto [darker, brighter] = strung(dark, allowed, work);
    if (!work.ok()) return out;
    const double paper = above_bright * quantile_of_scores(brighter), enough = std::max(least_score, paper);
    for (const Line& line : brighter)
        if (score_of(line) > fold_score) draw(line.at, fold_px, folds);
    for (const Line& line : brighter)  // in line with a bright stretch is no fold: a strand that mirrors the light
        if (score_of(line) > fold_score)
            for (const cv::Point2f& p : line.at) cv::circle(folds, cv::Point(p), core_px / 2, nothing, cv::FILLED);
    for (const Line& line : darker) {
        if (score_of(line) < enough || 2 * length_of(line.at) < options.least_px ||
            share_along(line.at, shadows) > most_beside || share_along(line.at, folds) > most_beside)
            continue;
        Way way;
        for (const cv::Point2f& p : line.at) way.push_back(p * 2 + cv::Point2f(box.tl()) + cv::Point2f(0.5f, 0.5f));
        out.push_back(std::move(way));
    }
    return out;
}

}  // namespace kempt::combings
