// Small non-linear least squares (Levenberg-Marquardt with numeric derivatives) for problems of a dozen unknowns.
#pragma once

#include <functional>
#include <vector>

namespace kempt::card {

// Fills the residuals of the given parameters; always the same number of them.
using Residuals = std::function<void(const std::vector<double>& parameters, std::vector<double>& residuals)>;

struct Fit {
    std::vector<double> parameters;
    double sum_of_squares = 0;
};

// steps: size of the numeric derivative's step for each parameter.
[[nodiscard]] Fit least_squares(const Residuals& residuals, std::vector<double> start, const std::vector<double>& steps,
                                int most_rounds = 40);

}  // namespace kempt::card
