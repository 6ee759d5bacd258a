// The smooth perimeter: the cut that was meant.
#pragma once

#include <vector>

namespace kempt::ends {

// A cubic spline with a knot every smooth_mm, and one bend (a change of slope) where it leaves the least residual, 15
// mm or more from the ends, through (u, v) by least squares with Huber's weights (P. J. Huber, Robust Statistics,
// 1981). A straight, slanted or rounded cut is held by the spline, a pointed one by the bend, so that each reads as
// even; a running mean or local line over the same 60 mm would round the point of a V and read 1 mm and more of
// unevenness off it. The weights keep gaps between locks and single long locks from drawing the curve off the cut.
// Beyond its ends the curve runs on straight.
class Perimeter {
  public:
    Perimeter() = default;
    // Needs eight points or more; all u within [from, to].
    Perimeter(const std::vector<double>& u, const std::vector<double>& v, double from_mm, double to_mm,
              double smooth_mm);
    // A straight line through the points, with the same weights: a first guess.
    [[nodiscard]] static Perimeter line(const std::vector<double>& u, const std::vector<double>& v, double from_mm,
                                        double to_mm);
    [[nodiscard]] double at(double u) const;

  private:
    void settle(const std::vector<double>& u, const std::vector<double>& v);
    void fit(const std::vector<double>& u, const std::vector<double>& v, const std::vector<double>& weight);
    [[nodiscard]] double inside(double u) const;
    double from_ = 0, to_ = 1;
    int spans_ = 1;
    bool straight_ = false;
    double bend_ = 0.5;  // as a share of the width
    std::vector<double> weights_;
};

}  // namespace kempt::ends
