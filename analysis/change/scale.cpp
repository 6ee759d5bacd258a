#include "change/scale.h"

#include <algorithm>
#include <cmath>

namespace kempt::change {

double Scale::of(double x) const {
    if (!logarithm) return x;
    const double z = x - less;
    return z > 0 ? std::log(z / (1 + z / straight_at)) : std::numeric_limits<double>::quiet_NaN();
}

double Scale::difference(double d, double a, double b) const {
    if (!logarithm) return d;
    const double za = a - less, zb = b - less;
    if (!(za > 0 && zb > 0)) return std::numeric_limits<double>::quiet_NaN();
    return 2 * std::sinh(d / 2) * std::sqrt(za * zb * (1 + za / straight_at) * (1 + zb / straight_at));
}

double Scale::along(double x, double d) const {
    if (!logarithm) return std::max(least, x + d);
    const double z = x - less;
    const double inverse = (1 / z + 1 / straight_at) * std::exp(-d) - 1 / straight_at;
    return std::max(least, less + (inverse > 0.1 / z ? 1 / inverse : 10 * z));
}

}  // namespace kempt::change
