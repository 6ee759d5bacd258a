#include "edges/interval.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace kempt::edges {

namespace {

// Standard deviation of the method's error. Form: constant + share of what can go wrong; numbers fitted on rendered
// truth that the network was not trained on (tests/bench, calibration set), each with the line's length entering as
// sqrt(60 mm / length) on the part that averages out.
double method_sd(const std::string& name, double value, const Circumstances& at) {
    const double c = std::clamp(at.coverage, 0.0, 1.0), unsure = std::sqrt(c * (1 - c));
    const double faint = at.contrast > 0 ? std::clamp(14 / at.contrast, 0.3, 2.5) : 0.6;
    const double coarse = std::clamp(20 / at.px_per_mm, 0.7, 1.6), dim = at.light_known ? 1.0 : 1.3;
    const double length = std::sqrt(60 / std::clamp(at.length_mm, 10.0, 240.0));
    if (name == "edge_coverage") return 0.25 + (1.2 + 2.4 * faint * coarse) * unsure * dim * (0.7 + 0.3 * length);
    if (name == "edge_strands") return 0.12 * length + 0.07 * value * (0.6 + 0.4 * faint) * coarse * dim;
    if (name == "fill_depth") return 0.08 + 0.12 * faint * coarse * length + 0.02 * value;
    if (name == "bare_length") return 0.3 + 0.02 * at.length_mm * faint * (0.5 + unsure);
    if (name == "length_density") return 0.015 * length + 0.06 * value * (0.6 + 0.4 * faint) * coarse * dim;
    return 0;
}

}  // namespace

Quantity with_interval(const char* name, double value, const char* unit, const Circumstances& at) {
    const double scale = at.reading_slope * at.scale_sd_share, sd = std::hypot(method_sd(name, value, at), scale);
    const double half = 1.96 * sd;
    double low = std::max(0.0, value - half), high = value + half;
    const std::string kind = unit;
    if (kind == "%") high = std::min(100.0, high);
    if (std::string(name) == "bare_length") high = std::min(at.length_mm, high);
    return {name, value, unit, low, high};
}

}  // namespace kempt::edges
