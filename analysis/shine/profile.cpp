#include "shine/profile.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/rank.h"

namespace kempt::shine {

namespace {

constexpr int lane_count = 8;
// A row counts where this share of the region's usual width is inside.
constexpr double least_row_share = 0.6;
// A crest line turned further than this is no band across the fibres.
constexpr double most_turn = 0.6;   // tan of 31 degrees
constexpr double held_turn = 0.36;  // tan of 20 degrees
// Lanes further than this many median deviations from the middle one are left out: beyond any lane of 200 rendered
// panels, whose lanes differ by chance.
constexpr double stray_limit = 6;

// Value at a fractional row, repeated beyond the ends.
cv::Vec3d at(const std::vector<cv::Vec3d>& v, double row) {
    const double r = std::clamp(row, 0.0, static_cast<double>(v.size() - 1));
    const size_t i = std::min(v.size() - 2, static_cast<size_t>(r));
    const double t = r - static_cast<double>(i);
    return v[i] * (1 - t) + v[i + 1] * t;
}

double median(std::vector<double> v) {
    return at_rank(v, 0.5);
}

std::vector<double> smooth_luminance(const std::vector<cv::Vec3d>& light, int reach) {
    std::vector<double> sum(light.size() + 1, 0), out(light.size());
    for (size_t i = 0; i < light.size(); ++i) sum[i + 1] = sum[i] + luminance(light[i]);
    const int n = static_cast<int>(light.size());
    for (int i = 0; i < n; ++i) {
        const int a = std::max(0, i - reach), b = std::min(n, i + reach + 1);
        out[static_cast<size_t>(i)] = (sum[static_cast<size_t>(b)] - sum[static_cast<size_t>(a)]) / (b - a);
    }
    return out;
}

// Shift per column (tan of the turn) that makes the lanes' profiles agree best: their shapes, each over its own mean.
double find_turn(const std::vector<Lane>& lanes, double middle, int reach) {
    std::vector<std::vector<double>> shapes;
    for (const Lane& lane : lanes) {
        shapes.push_back(smooth_luminance(lane.light, reach));
        const double mean = std::accumulate(shapes.back().begin(), shapes.back().end(), 0.0) /
                            static_cast<double>(shapes.back().size());
        for (double& v : shapes.back()) v /= std::max(mean, 1e-9);
    }
    const int n = static_cast<int>(shapes.front().size());
    const double span = std::max(1.0, lanes.back().middle - lanes.front().middle);
    const auto disagreement = [&](double turn) {
        // Only rows that every shifted lane has.
        const int rim = static_cast<int>(std::ceil(0.5 * span * most_turn)) + 1;
        const int from = std::min(rim, n / 4), to = n - from;
        double sum = 0;
        for (int i = from; i < to; ++i) {
            double m = 0, q = 0;
            for (size_t k = 0; k < lanes.size(); ++k) {
                const double r = std::clamp(i + turn * (lanes[k].middle - middle), 0.0, n - 1.001);
                const int j = static_cast<int>(r);
                const auto& s = shapes[k];
                const double v =
                    s[static_cast<size_t>(j)] + (r - j) * (s[static_cast<size_t>(j + 1)] - s[static_cast<size_t>(j)]);
                m += v, q += v * v;
            }
            const double count = static_cast<double>(lanes.size());
            sum += q / count - m * m / (count * count);
        }
        // Held to the normal: a turn of 20 degrees must halve the disagreement to be believed.
        return sum / (to - from) * (1 + turn * turn / (held_turn * held_turn));
    };
    double best = 0, least = disagreement(0);
    for (double step = 0.1; step > 0.002; step *= 0.5)
        for (const double centre = best;
             const double turn : {centre - 2 * step, centre - step, centre + step, centre + 2 * step}) {
            if (std::abs(turn) > most_turn) continue;
            if (const double d = disagreement(turn); d < least) least = d, best = turn;
        }
    return best;
}

}  // namespace

Profile profile_of(const RegionLight& region) {
    Profile out;
    const Frame& frame = region.frame;
    out.step_mm = frame.step_mm;
    // Rows and columns that are mostly inside.
    std::vector<double> in_row(static_cast<size_t>(frame.rows));
    std::vector<int> in_column(static_cast<size_t>(frame.columns), 0);
    for (int j = 0; j < frame.rows; ++j)
        for (int i = 0; i < frame.columns; ++i)
            if (region.inside.at<uchar>(j, i)) in_row[static_cast<size_t>(j)] += 1, ++in_column[static_cast<size_t>(i)];
    if (in_row.empty()) return out;
    const double usual = median(in_row);
    int first = 0, last = frame.rows;
    while (first < last && in_row[static_cast<size_t>(first)] < least_row_share * usual) ++first;
    while (last > first && in_row[static_cast<size_t>(last - 1)] < least_row_share * usual) --last;
    int left = 0, right = frame.columns;
    while (left < right && in_column[static_cast<size_t>(left)] < 0.5 * (last - first)) ++left;
    while (right > left && in_column[static_cast<size_t>(right - 1)] < 0.5 * (last - first)) --right;
    if (last - first < 8 || right - left < lane_count) return out;
    out.first_row = first;

    std::vector<Lane> lanes;
    for (int k = 0; k < lane_count; ++k) {
        const int a = left + (right - left) * k / lane_count, b = left + (right - left) * (k + 1) / lane_count;
        Lane lane;
        lane.middle = 0.5 * (a + b - 1);
        cv::Vec3d before;
        for (int j = first; j < last; ++j) {
            cv::Vec3d sum;
            int n = 0;
            const auto* row = region.light.ptr<cv::Vec3f>(j);
            const uchar* in = region.inside.ptr<uchar>(j);
            for (int i = a; i < b; ++i)
                if (in[i]) sum += cv::Vec3d(row[i]), ++n;
            if (2 * n >= b - a) before = sum * (1.0 / n);
            lane.light.push_back(before);  // a gap at a slanting side repeats what lies beside it
        }
        // The same at the lane's beginning.
        size_t full = 0;
        while (full + 1 < lane.light.size() && luminance(lane.light[full]) <= 0) ++full;
        std::fill_n(lane.light.begin(), full, lane.light[full]);
        lanes.push_back(std::move(lane));
    }
    const double middle = 0.5 * (left + right - 1);
    const double turn = find_turn(lanes, middle, std::max(1, static_cast<int>(1 / frame.step_mm)));
    out.turn_deg = std::atan(turn) * 180 / 3.14159265358979;
    for (Lane& lane : lanes) {
        std::vector<cv::Vec3d> level(lane.light.size());
        for (size_t i = 0; i < level.size(); ++i)
            level[i] = at(lane.light, static_cast<double>(i) + turn * (lane.middle - middle));
        lane.light.swap(level);
    }
    // How far each lane's light strays from the median lane's, as a mean log ratio's size and shape together.
    const size_t n = lanes.front().light.size();
    std::vector<double> typical(n), stray(lanes.size(), 0);
    for (size_t i = 0; i < n; ++i) {
        std::vector<double> row;
        for (const Lane& lane : lanes) row.push_back(luminance(lane.light[i]));
        typical[i] = median(row);
    }
    for (size_t k = 0; k < lanes.size(); ++k)
        for (size_t i = 0; i < n; ++i)
            stray[k] += std::abs(std::log((luminance(lanes[k].light[i]) + 1e-3) / (typical[i] + 1e-3))) /
                        static_cast<double>(n);
    const double limit = stray_limit * std::max(0.02, median(stray));
    for (size_t k = 0; k < lanes.size(); ++k)
        if (stray[k] <= limit) out.lanes.push_back(std::move(lanes[k]));
    out.light.assign(n, {});
    for (const Lane& lane : out.lanes)
        for (size_t i = 0; i < n; ++i) out.light[i] += lane.light[i] * (1.0 / static_cast<double>(out.lanes.size()));
    return out;
}

}  // namespace kempt::shine
