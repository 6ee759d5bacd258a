// The map from one card's plane to the other's: turn and shift, and a smooth bend about the edge line, because the head
// is round, the skin soft and the camera elsewhere.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

namespace kempt::align {

// Millimetres to millimetres. With (s, t) the place along and across the line in the earlier plane, held to the box
// that was fitted: later = rigid(p) + sum of bend[k] * term k. Terms: 1, s, t, s2, st, t2, s3, s2t.
struct SkinMap {
    static constexpr int terms = 8;
    double turn_rad = 0;
    cv::Vec2d shift_mm{0, 0};               // rigid(p) = R (p - middle) + middle + shift
    cv::Point2d middle_mm;                  // of the edge line
    cv::Vec2d along{1, 0};                  // direction of s in the earlier plane
    cv::Vec2d low_mm{0, 0}, high_mm{0, 0};  // the box in (s, t)
    std::array<cv::Vec2d, terms> bend{};

    [[nodiscard]] cv::Point2d operator()(cv::Point2d earlier_mm) const;
    [[nodiscard]] cv::Point2d rigid(cv::Point2d earlier_mm) const;
    [[nodiscard]] double across(cv::Point2d earlier_mm) const;  // t, not held to the box
    // Of the bend, at a place held to the box.
    [[nodiscard]] std::array<double, terms> values(cv::Point2d earlier_mm) const;
    // later - p for all pixels of a grid: CV_32FC2 of later millimetres.
    [[nodiscard]] cv::Mat grid(cv::Point2d origin_mm, double px_per_mm, cv::Size size) const;
};

// One place found again.
struct Tie {
    cv::Point2d earlier_mm, later_mm;
    cv::Matx22d information;  // inverse covariance of later_mm, 1/mm2
    double correlation = 0;
    double weight = 1;  // set by the fit: 0 when it disagrees with the others
};

struct Fit {
    SkinMap map;
    cv::Mat covariance;   // 16 x 16 of the bend's coefficients (x of all terms, then y), mm2
    double spread = 0;    // residuals against what the information promised, 1 when it tells the truth
    double agreeing = 0;  // weighted share of the ties that agree
};

// Least squares over the ties about `start`, iteratively reweighted (Tukey's biweight); a bend larger than round heads
// and tilted cameras make costs (priors in skin_map.cpp). `overlap` > 1: ties share pixels, so that they count for
// less. trusted: all ties count fully (anchors set by hand).
[[nodiscard]] Fit fit(std::vector<Tie>& ties, const SkinMap& start, double overlap, bool trusted = false);

// Turn and shift that lie nearest to two or more ties (Kabsch 1976 in two dimensions, no mirror), counted from
// middle_mm.
[[nodiscard]] SkinMap rigid_through(const std::vector<Tie>& ties, cv::Point2d middle_mm);

// Standard uncertainty of the map at a place, both axes together: sqrt((vx + vy) / 2), mm.
[[nodiscard]] double uncertainty(const Fit& fit, cv::Point2d earlier_mm);

}  // namespace kempt::align
