// The scale on which a reading's scatter is alike for small and large values: changes are judged on it.
#pragma once

#include <limits>

namespace kempt::change {

// The value x itself; its square root (shares and counts scatter with the root of what they tell: Bartlett 1936, J Roy
// Stat Soc Suppl 3:68-78, from memory); ln(z / (1 + z / straight_at)) with z = x - less; or -ln(less - x), for a share
// that scatters with what it lacks to all.
//   less: what a reading begins at besides its floor of chance (a straight strand's wave ratio is 1: what it has above
//   1 scatters with its size). straight_at: for a reading that scatters with its inverse besides (a nearly straight
//   strand's curvature has a floor of chance). Of a lack `less` is 1 and a floor of chance besides.
struct Scale {
    enum class Kind { value, root, logarithm, lack };
    Kind kind = Kind::value;
    double less = 0;
    double straight_at = std::numeric_limits<double>::infinity();
    double least = 0;                                       // no reading is below it
    double most = std::numeric_limits<double>::infinity();  // nor above it

    // The place on the scale; NaN where it holds no such value (a root below 0; z or less - x not above 0).
    [[nodiscard]] double of(double x) const;
    // The difference b - a, in the reading's unit, beyond which a and b lie further apart than d on the scale:
    // d itself, d (sqrt a + sqrt b), 2 sinh(d / 2) sqrt(z_a z_b (1 + z_a / s)(1 + z_b / s)), s = straight_at, or the
    // same of the lacks. Exact: at the limit |b - a| equals it. NaN where of() is.
    [[nodiscard]] double difference(double d, double a, double b) const;
    // The value that lies d above x on the scale, from `least` to `most`; on the logarithmic one z is at most ten times
    // that of x (where straight cannot be told).
    [[nodiscard]] double along(double x, double d) const;

    bool operator==(const Scale&) const = default;
};

}  // namespace kempt::change
