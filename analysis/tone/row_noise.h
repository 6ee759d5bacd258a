// How the noise of neighbouring rows hangs together, and how far a single row may pull.
#pragma once

#include <cmath>

namespace kempt::tone {

// Rows a millimetre apart share their locks and gaps: lag-one correlation of what is left over on rendered panels of
// all hair colours, with the truth's lines taken out (calibrated, seeds 1000 and up).
inline constexpr double rho = 0.75;
inline constexpr double huber = 3.5;  // in noise, of a row's three channels together

// Whitens a row's values by those of the row before, if that was seen.
struct Whitener {
    bool chained = false;
    [[nodiscard]] double operator()(double here, double before) const {
        return chained ? (here - rho * before) / std::sqrt(1 - rho * rho) : here;
    }
};
inline double softened_square(double square) {
    const double size = std::sqrt(square);
    return size < huber ? square : huber * (2 * size - huber);
}

}  // namespace kempt::tone
