// The phone's tone curve: code = lift + (1 - lift) B(w), w the sRGB-coded true light. See ramp.h.
#pragma once

#include <array>
#include <vector>

namespace kempt::card {

class ToneCurve {
  public:
    static constexpr int inner = 4;  // free coefficients of the Bernstein polynomial of degree 5
    // parameters: lift, then offsets of the inner coefficients from the straight line.
    explicit ToneCurve(const std::array<double, inner + 1>& parameters);
    [[nodiscard]] double code_from_true(double coded_true) const;
    // Inverse by table; below the lift 0, above the top 1 (continued straight so that derivatives do not vanish).
    [[nodiscard]] double true_from_code(double code) const;
    [[nodiscard]] double lift() const { return lift_; }

  private:
    double lift_;
    std::array<double, inner + 2> coefficients_;
    std::vector<double> codes_;  // at even steps of coded true light 0..1
};

}  // namespace kempt::card
