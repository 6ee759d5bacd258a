// A small forward model of the colours along a strand: a body colour that drifts slowly and may step at lines of
// demarcation, and on top of it a highlight, a hump of light in the colour of the lamp (after the card: neutral). The
// dichromatic reflection model of Shafer 1985 (Color Res Appl 10:210-218), laid along the strand: the body part keeps
// its colour, the surface part is white, and on hair combed straight its place is a smooth hump (the surface lobe of a
// fibre is a Gaussian in angle, Marschner et al. 2003, and the head bends evenly).
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

#include "tone/lab_point.h"

namespace kempt::tone {

// What was seen: the mean light of the lane every step along the strand. Rows that could not be seen have weight 0.
struct Rows {
    std::vector<double> at_mm;
    std::vector<cv::Vec3d> light, lab;
    std::vector<char> usable;
    double length_mm = 0;
};

// Parameters in one vector: middle colour (3), drift over the length (3), bend (3), the highlight's log height, place
// and log SD (3), then for each line of demarcation its step in L, a, b, its place and the log of its width (5).
class StrandModel {
  public:
    static constexpr size_t fixed = 12, each_line = 5, highlight = 9;
    using Parameters = std::vector<double>;

    explicit StrandModel(const Rows& rows);

    // Least squares (Levenberg-Marquardt) on what is seen, in Lab, robust against single rows. Neighbouring rows share
    // their locks and gaps: their noise is taken as a first-order autoregression. Returns the cost: squares in units
    // of the noise plus those of the priors.
    double fit(Parameters& p, int most_rounds) const;
    // Gain (in cost, of a linear step) that another line at each row's place would bring.
    [[nodiscard]] std::vector<double> gain_of_line(const Parameters& p) const;
    // Noise of a row in L, a, b, from what is left over.
    void learn_noise(const Parameters& p);
    [[nodiscard]] const cv::Vec3d& noise() const { return noise_; }
    void set_noise(const cv::Vec3d& noise) { noise_ = noise; }

    [[nodiscard]] cv::Vec3d body_lab(const Parameters& p, double at_mm) const;
    [[nodiscard]] double highlight_light(const Parameters& p, double at_mm) const;
    // How much of each enters the body's colour there: 1, drift, bend, then each line's step.
    static constexpr size_t room_for_lines = 4;
    using Shares = std::array<double, 3 + room_for_lines>;
    [[nodiscard]] Shares body_shares(const Parameters& p, double at_mm) const;
    // Covariance of the parameters at the last fit's end (n x n).
    [[nodiscard]] cv::Mat1d covariance(const Parameters& p) const;
    [[nodiscard]] static size_t line_count(const Parameters& p) { return (p.size() - fixed) / each_line; }
    [[nodiscard]] const Rows& rows() const { return rows_; }

  private:
    struct Normal {
        cv::Mat1d h, g;
        double cost = 0;
    };
    [[nodiscard]] double cost(const Parameters& p) const;
    [[nodiscard]] Normal normal_equations(const Parameters& p) const;
    void row_residual(const Parameters& p, size_t row, cv::Vec3d& residual, double* jacobian) const;
    template <class Add>
    void for_each_prior(const Parameters& p, Add add) const;
    void hold_in_bounds(Parameters& p) const;

    const Rows& rows_;
    cv::Vec3d noise_{1.0, 0.5, 0.5};
};

}  // namespace kempt::tone
