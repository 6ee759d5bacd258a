#include "change/scale.h"

#include <algorithm>
#include <cmath>

namespace kempt::change {
namespace {

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

}  // namespace

double Scale::of(double x) const {
    if (kind == Kind::value) return x;
    if (kind == Kind::root) return x >= 0 ? std::sqrt(x) : unknown;
    if (kind == Kind::lack) return x < less ? -std::log(less - x) : unknown;
    const double z = x - less;
    return z > 0 ? std::log(z / (1 + z / straight_at)) : unknown;
}

double Scale::difference(double d, double a, double b) const {
    if (kind == Kind::value) return d;
    if (kind == Kind::root) return d * (of(a) + of(b));
    if (kind == Kind::lack)
        return a < less && b < less ? 2 * std::sinh(d / 2) * std::sqrt((less - a) * (less - b)) : unknown;
    const double za = a - less, zb = b - less;
    if (!(za > 0 && zb > 0)) return unknown;
    return 2 * std::sinh(d / 2) * std::sqrt(za * zb * (1 + za / straight_at) * (1 + zb / straight_at));
}

double Scale::along(double x, double d) const {
    const auto within = [&](double to) { return std::min(most, std::max(least, to)); };
    if (kind == Kind::value) return within(x + d);
    if (kind == Kind::root) {
        const double to = std::max(0.0, of(x) + d);
        return within(to * to);
    }
    if (kind == Kind::lack) return within(less - (less - x) * std::exp(-d));
    const double z = x - less;
    const double inverse = (1 / z + 1 / straight_at) * std::exp(-d) - 1 / straight_at;
    return within(less + (inverse > 0.1 / z ? 1 / inverse : 10 * z));
}

}  // namespace kempt::change
