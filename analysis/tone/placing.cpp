#include "tone/placing.h"

#include <algorithm>

namespace kempt::tone {
namespace {

// Strips beside each other share their locks, so they differ by less than lanes do: the variance between visits of 270
// rendered pairs (seeds 60000-60279) grows by 1.65 times that of the strips, over all hair alike.
constexpr double shared_locks = 1.65;

}  // namespace

Body::Body(const StrandModel& model, const StrandModel::Parameters& parameters) {
    for (const double at : model.rows().at_mm) {
        const cv::Vec3d lab = model.body_lab(parameters, at);
        expected_.push_back({lab, rgb_point(lab).value, model.highlight_light(parameters, at)});
    }
}

cv::Vec3d Body::lab(size_t row, const cv::Vec3d& light) const {
    const Expected& expected = expected_[row];
    cv::Vec3d left = light;
    // Noise under a strong highlight may leave less than nothing.
    for (int c = 0; c < 3; ++c) left[c] = std::max(left[c] - expected.shine, 0.3 * std::max(expected.light[c], 1e-4));
    return lab_point(left).value;
}

std::array<std::vector<size_t>, 3> rows_of_zones(const Rows& rows, double zone_share) {
    const double ends[3][2] = {{0, zone_share}, {0.5 - zone_share / 2, 0.5 + zone_share / 2}, {1 - zone_share, 1}};
    std::array<std::vector<size_t>, 3> out;
    for (size_t i = 0; i < rows.at_mm.size(); ++i) {
        const double t = rows.at_mm[i] / rows.length_mm;
        for (size_t z = 0; z < 3; ++z)
            if (t >= ends[z][0] && t <= ends[z][1]) out[z].push_back(i);
    }
    return out;
}

cv::Matx<double, 9, 9> covariance_of_placing(const Rows& rows, const std::vector<StripRow>& strips, const Body& body,
                                             double zone_share) {
    constexpr size_t count = StripRow::strips;
    const auto zones = rows_of_zones(rows, zone_share);
    std::array<ZoneColours, count> without;  // without each strip
    for (int z = 0; z < 3; ++z) {
        double seen = 0;
        std::array<cv::Vec3d, count> lab;
        for (const size_t i : zones[static_cast<size_t>(z)]) {
            if (!rows.usable[i]) continue;
            cv::Vec3d light;
            double cells = 0;
            for (size_t k = 0; k < count; ++k) {
                light += strips[i].light[k];
                cells += strips[i].cells[k];
            }
            ++seen;
            for (size_t k = 0; k < count; ++k)
                lab[k] += body.lab(i, (light - strips[i].light[k]) * (1 / std::max(1.0, cells - strips[i].cells[k])));
        }
        if (seen < 1) continue;
        for (size_t k = 0; k < count; ++k)
            for (int c = 0; c < 3; ++c) without[k](3 * z + c) = lab[k][c] / seen;
    }
    ZoneColours mean;
    for (const auto& one : without) mean += one * (1.0 / count);
    cv::Matx<double, 9, 9> out;
    for (const auto& one : without) out += (one - mean) * (one - mean).t();
    return out * (shared_locks * (count - 1.0) / count);
}

ZoneColours seen_colours(const Rows& rows, const std::vector<StripRow>& strips, double zone_share, size_t from,
                         size_t to) {
    const auto zones = rows_of_zones(rows, zone_share);
    ZoneColours out;
    for (int z = 0; z < 3; ++z) {
        cv::Vec3d light;
        double cells = 0;
        for (const size_t i : zones[static_cast<size_t>(z)])
            for (size_t k = from; rows.usable[i] && k < to; ++k) {
                light += strips[i].light[k];
                cells += strips[i].cells[k];
            }
        if (cells < 1) continue;
        const cv::Vec3d lab = lab_point(light * (1 / cells)).value;
        for (int c = 0; c < 3; ++c) out(3 * z + c) = lab[c];
    }
    return out;
}

}  // namespace kempt::tone
