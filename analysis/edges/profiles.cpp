#include "edges/profiles.h"

#include <algorithm>
#include <cmath>

#include "edges/stereology.h"

namespace kempt::edges {

namespace {

// A depth range on the map's rows with the share of the first and last row that it takes.
template <class Visit>
void each_row(const BandMaps& maps, double from_mm, double to_mm, Visit visit) {
    const double a = std::clamp((from_mm - maps.from_mm) / maps.cell_mm, 0.0, static_cast<double>(maps.cover.rows));
    const double b = std::clamp((to_mm - maps.from_mm) / maps.cell_mm, 0.0, static_cast<double>(maps.cover.rows));
    for (int j = static_cast<int>(a); j < std::min(maps.cover.rows, static_cast<int>(std::ceil(b))); ++j) {
        const double weight = std::min(b, j + 1.0) - std::max(a, static_cast<double>(j));
        if (weight > 0) visit(j, weight);
    }
}

}  // namespace

double mean_of(const cv::Mat& map, const BandMaps& maps, double from_mm, double to_mm) {
    double sum = 0, n = 0;
    each_row(maps, from_mm, to_mm, [&](int j, double weight) {
        const auto* v = map.ptr<float>(j);
        const auto* ok = maps.valid.ptr<uchar>(j);
        double row = 0;
        int count = 0;
        for (int i = 0; i < map.cols; ++i)
            if (ok[i]) row += v[i], ++count;
        sum += weight * row;
        n += weight * count;
    });
    return n > 0 ? sum / n : 0;
}

double valid_share(const BandMaps& maps, double from_mm, double to_mm) {
    double good = 0, all = 0;
    each_row(maps, from_mm, to_mm, [&](int j, double weight) {
        good += weight * cv::countNonZero(maps.valid.row(j));
        all += weight * maps.valid.cols;
    });
    return all > 0 ? good / all : 0;
}

std::vector<double> cover_by_depth(const BandMaps& maps, double depth_mm, double bin_mm) {
    std::vector<double> out;
    for (double d = 0; d + bin_mm <= depth_mm + 1e-9; d += bin_mm)
        out.push_back(std::clamp(mean_of(maps.cover, maps, d, d + bin_mm), 0.0, 1.0));
    return out;
}

namespace {
// Mean cover of each column of cells over the first depth_mm; NaN where nothing of it can be seen.
std::vector<double> columns(const BandMaps& maps, double depth_mm) {
    std::vector<double> sum(static_cast<size_t>(maps.cover.cols)), n(sum.size());
    each_row(maps, 0, depth_mm, [&](int j, double weight) {
        const auto* v = maps.cover.ptr<float>(j);
        const auto* ok = maps.valid.ptr<uchar>(j);
        for (size_t i = 0; i < sum.size(); ++i)
            if (ok[i]) sum[i] += weight * v[i], n[i] += weight;
    });
    for (size_t i = 0; i < sum.size(); ++i) sum[i] = n[i] > 0 ? sum[i] / n[i] : std::nan("");
    return sum;
}
}  // namespace

std::vector<double> cover_along(const BandMaps& maps, double depth_mm, double bin_mm) {
    const std::vector<double> column = columns(maps, depth_mm);
    const double length = maps.cell_mm * static_cast<double>(column.size());
    std::vector<double> out;
    for (double s = 0; s + bin_mm <= length + 1e-9; s += bin_mm) {
        const size_t a = static_cast<size_t>(s / maps.cell_mm),
                     b = std::min(column.size(), std::max(a + 1, static_cast<size_t>((s + bin_mm) / maps.cell_mm)));
        double sum = 0;
        int seen = 0;
        for (size_t i = a; i < b; ++i)
            if (!std::isnan(column[i])) sum += column[i], ++seen;
        out.push_back(seen > 0 ? std::clamp(sum / seen, 0.0, 1.0) : std::nan(""));
    }
    return out;
}

double length_per_area_of(const BandMaps& maps, double depth_mm) {
    return length_per_area(mean_of(maps.cross_mean, maps, 0, depth_mm));
}

std::optional<double> fill_depth(const std::vector<double>& by_depth, double bin_mm, double level) {
    const int n = static_cast<int>(by_depth.size());
    auto smooth = [&](int i) {
        double sum = 0;
        int count = 0;
        for (int k = std::max(0, i - 1); k <= std::min(n - 1, i + 1); ++k)
            sum += by_depth[static_cast<size_t>(k)], ++count;
        return sum / count;
    };
    double before = 0;
    for (int i = 0; i < n; ++i) {
        const double here = smooth(i);
        if (here >= level) {
            if (i == 0) return 0.0;
            const double t = (level - before) / std::max(1e-9, here - before);
            return (i - 0.5 + t) * bin_mm;
        }
        before = here;
    }
    return std::nullopt;
}

BareLength bare_length(const BandMaps& maps, const EdgeOptions& options, double share) {
    const std::vector<double> column = columns(maps, options.coverage_depth_mm);
    const int n = static_cast<int>(column.size()),
              half = std::max(0, static_cast<int>(std::lround(options.bare_column_mm / maps.cell_mm / 2 - 0.5)));
    BareLength bare;
    for (int i = 0; i < n; ++i) {
        double sum = 0;
        int count = 0;
        for (int k = std::max(0, i - half); k <= std::min(n - 1, i + half); ++k)
            if (const double here = column[static_cast<size_t>(k)]; !std::isnan(here)) sum += here, ++count;
        if (count == 0)
            bare.unseen_mm += maps.cell_mm;
        else if (sum / count < share)
            bare.mm += maps.cell_mm;
    }
    return bare;
}

}  // namespace kempt::edges
