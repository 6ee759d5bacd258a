#include "tone/zones.h"

#include <algorithm>
#include <cmath>

#include "tone/level.h"
#include "tone/placing.h"

namespace kempt::tone {
namespace {

// What the model does not know, SD of a zone's L, a, b: how the strand bends away from the card's plane and so from the
// light, the coloured second highlight. Calibrated on rendered panels of all hair colours (seeds 1000 and up) so that
// the intervals hold the truth in about 95 %, before what hangs on the lane's place was told apart (placing.h).
constexpr double own_sd[3] = {1.2, 0.5, 0.7};
// A highlight hides a zone when the split leaves more than this open (CIEDE2000): errors of such zones were beyond 4
// in a third of the rendered panels, else in a twentieth (same calibration).
constexpr double hidden_sd = 3.0;
constexpr double z95 = 1.96;

colour::Lab as_lab(const cv::Vec3d& v) {
    return {v[0], v[1], v[2]};
}

double spread(const std::array<cv::Vec3d, 3>& lab) {
    const auto between = [&](size_t i, size_t j) { return colour::ciede2000(as_lab(lab[i]), as_lab(lab[j])); };
    return std::max({between(0, 1), between(1, 2), between(0, 2)});
}

// A standard deviation in L, a, b as a colour difference: away from the colour in each direction, added in squares.
double difference_sd(const cv::Vec3d& lab, const cv::Vec3d& sd) {
    double sum = 0;
    for (int c = 0; c < 3; ++c) {
        cv::Vec3d moved = lab;
        moved[c] += sd[c];
        sum += std::pow(colour::ciede2000(as_lab(lab), as_lab(moved)), 2);
    }
    return std::sqrt(sum);
}

}  // namespace

Zones zones_of(const StrandModel& model, const StrandFit& fit, const std::vector<cv::Vec3d>& body, double zone_share,
               double doubt) {
    Zones zones{};
    const Rows& rows = model.rows();
    const size_t n = fit.parameters.size();
    const auto zone_rows = rows_of_zones(rows, zone_share);
    cv::Mat1d by_parameter(9, static_cast<int>(n), 0.0);
    for (size_t z = 0; z < 3; ++z) {
        const double all = static_cast<double>(zone_rows[z].size());
        double seen = 0;
        for (const size_t i : zone_rows[z]) {
            if (!rows.usable[i]) continue;
            ++seen;
            zones.lab[z] += body[i];
            const StrandModel::Shares shares = model.body_shares(fit.parameters, rows.at_mm[i]);
            for (size_t c = 0; c < 3; ++c) {
                double* slope = by_parameter[static_cast<int>(3 * z + c)];
                for (size_t g = 0; g < 3; ++g) slope[3 * g + c] += shares[g];
                for (size_t k = 0; k < StrandModel::line_count(fit.parameters); ++k)
                    slope[StrandModel::fixed + StrandModel::each_line * k + c] += shares[3 + k];
            }
        }
        zones.seen[z] = seen > 0 && seen >= 0.5 * all;
        if (seen < 1) continue;
        zones.lab[z] *= 1 / seen;
        by_parameter.rowRange(static_cast<int>(3 * z), static_cast<int>(3 * z + 3)) *= 1 / seen;
    }
    const cv::Mat1d half(by_parameter * fit.covariance), whole(half * by_parameter.t());
    for (int i = 0; i < 9; ++i)
        for (int j = 0; j < 9; ++j) zones.open(i, j) = zones.covariance(i, j) = whole(i, j);
    for (size_t z = 0; z < 3; ++z) {
        cv::Vec3d sd;
        for (int c = 0; c < 3; ++c) {
            double& variance = zones.covariance(static_cast<int>(3 * z) + c, static_cast<int>(3 * z) + c);
            sd[c] = std::sqrt(std::max(0.0, variance));
            variance += std::pow(own_sd[c] * doubt, 2);
        }
        zones.highlight_sd[z] = difference_sd(zones.lab[z], sd);
        zones.told[z] = zones.seen[z] && zones.highlight_sd[z] <= hidden_sd;
    }
    return zones;
}

std::optional<Quantity> spread_of(const Zones& zones) {
    if (!zones.seen[0] || !zones.seen[1] || !zones.seen[2]) return std::nullopt;
    Quantity out{"tone_spread", spread(zones.lab), "dE00", 0, 0};
    cv::Matx<double, 9, 1> slope;
    for (int i = 0; i < 9; ++i) {
        // A wide step: where all three are alike the largest difference has no derivative.
        constexpr double step = 0.5;
        auto up = zones.lab, down = zones.lab;
        up[static_cast<size_t>(i / 3)][i % 3] += step;
        down[static_cast<size_t>(i / 3)][i % 3] -= step;
        slope(i) = (spread(up) - spread(down)) / (2 * step);
    }
    if ((slope.t() * zones.open * slope)(0) > hidden_sd * hidden_sd) return std::nullopt;
    const double variance = (slope.t() * zones.covariance * slope)(0);
    const double half = z95 * std::sqrt(std::max(0.0, variance));
    out.low = std::max(0.0, out.value - half);
    out.high = out.value + half;
    return out;
}

Quantity level_of(const Zones& zones) {
    const double lightness = zones.lab[1][0], half = z95 * std::sqrt(zones.covariance(3, 3));
    const double value = level_of_lightness(lightness);
    const double below = value - level_of_lightness(lightness - half),
                 above = level_of_lightness(lightness + half) - value;
    return {"tone_level", value, "level", std::max(1.0, value - std::hypot(below, level_doubt)),
            std::min(10.0, value + std::hypot(above, level_doubt))};
}

}  // namespace kempt::tone
