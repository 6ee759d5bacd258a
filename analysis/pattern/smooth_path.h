// A smooth curve through noisy points of a strand: penalised cubic B-splines whose stiffness follows from the noise.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

namespace kempt::pattern {

struct CurvePoint {
    cv::Point2d at, first, second;  // mm, and derivatives by the curve's parameter
};

// Method: P-splines (Eilers and Marx 1996, Statistical Science 11:89-121) with a penalty on third differences, so that
// arcs are not bent open. Distance of the knots and penalty together minimise Mallows' Cp for the known noise, residual
// across / noise^2 + 2 x 1.4 degrees of freedom; the 1.4 against following noise that is not quite white is that of Kim
// and Gu 2004, J. R. Statist. Soc. B 66:337-356. Parameter: arc length, from a first pass.
class SmoothPath {
  public:
    // At least 5 points of which no two neighbours coincide; noise_mm > 0.
    SmoothPath(const std::vector<cv::Point2d>& path_mm, double noise_mm);
    // The same smoothing of other points at the same parameters (for the bootstrap). as many as there were.
    void refit(const std::vector<cv::Point2d>& path_mm);

    [[nodiscard]] CurvePoint at(double t) const;
    [[nodiscard]] double end() const { return end_; }                           // parameters run 0..end()
    [[nodiscard]] const std::vector<double>& parameters() const { return t_; }  // of the points
    [[nodiscard]] double knots_mm() const { return knot_; }

  private:
    struct Band {  // symmetric, half width 3: row i holds (i, i) .. (i, i + 3)
        std::vector<cv::Vec4d> rows;
    };
    // thirds: how often the penalty is narrowed down to two thirds of a range of two decades.
    void choose(const std::vector<cv::Point2d>& path, double noise_mm, int thirds);
    void lay_knots(double knot);
    void assemble(double penalty);
    void solve(const std::vector<cv::Point2d>& path);
    [[nodiscard]] double freedom() const;
    [[nodiscard]] double risk(const std::vector<cv::Point2d>& path, double noise_mm) const;

    double end_ = 0, knot_ = 1;
    std::vector<double> t_;
    Band normal_, factor_;  // of the points alone; Cholesky with the penalty
    std::vector<cv::Point2d> coefficients_;
};

}  // namespace kempt::pattern
